using UnitsNet;

namespace CamPower.Circuits;

/// <summary>A resistance between two nodes of a network: one conductor of a cable, a joint, a tie.</summary>
/// <remarks>Immutable; made by <see cref="DcNetworkBuilder"/>.</remarks>
internal sealed class NetworkBranch
{
    internal NetworkBranch(string name, string from, string to, double ohms)
    {
        Name = name;
        From = from;
        To = to;
        Ohms = ohms;
    }

    /// <summary>Its name, unique in the network.</summary>
    internal string Name { get; }

    /// <summary>Name of the node where its current counts as going in.</summary>
    internal string From { get; }

    /// <summary>Name of the node where its current counts as coming out.</summary>
    internal string To { get; }

    /// <summary>Its resistance: 0, or from 1 nΩ to 1 TΩ. [Ω]</summary>
    internal ElectricResistance Resistance => ElectricResistance.FromOhms(Ohms);

    internal double Ohms { get; }

    /// <summary>Name and ends; never throws.</summary>
    public override string ToString() => $"{Name}: {From} to {To}";
}
