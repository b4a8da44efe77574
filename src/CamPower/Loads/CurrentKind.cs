namespace CamPower;

/// <summary>Direct or alternating current.</summary>
public enum CurrentKind
{
    /// <summary>Direct current.</summary>
    Dc,

    /// <summary>Alternating current; voltages are RMS.</summary>
    Ac,
}
