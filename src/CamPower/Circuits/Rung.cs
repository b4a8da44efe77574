namespace CamPower.Circuits;

/// <summary>One loop of a ladder: which node feeds it, and through what resistance.</summary>
internal readonly struct Rung(int parent, double ohms)
{
    /// <summary>Index of the node that feeds it, or -1 for the source.</summary>
    internal readonly int Parent = parent;

    /// <summary>Loop resistance from there. [Ω]</summary>
    internal readonly double Ohms = ohms;
}
