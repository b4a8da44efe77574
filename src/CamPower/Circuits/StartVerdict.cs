namespace CamPower;

/// <summary>Whether a device starts, and if not, which of the three reasons holds it back.</summary>
public enum StartVerdict
{
    /// <summary>Nothing was asked: the default value.</summary>
    Unknown,

    /// <summary>It starts and stays on.</summary>
    Starts,

    /// <summary>The unloaded voltage at its terminals is under its turn-on voltage: it never comes up.</summary>
    UnloadedBelowTurnOn,

    /// <summary>At its start power it settles under its drop-out voltage, or nowhere: it comes up and drops out again and again.</summary>
    SettlesBelowDropOut,

    /// <summary>It turns on under the unstable voltage and has no soft start declared: the draw pulls its own voltage down.</summary>
    TurnOnBelowUnstableVoltage,

    /// <summary>As its supply comes up, what the devices of the box draw from their turn-on voltages is more than the limit of the supply:
    /// it holds them all down.</summary>
    HeldDownBySupply,
}
