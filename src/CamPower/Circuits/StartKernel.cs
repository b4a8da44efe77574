namespace CamPower.Circuits;

/// <summary>The three ways of not starting, on SI doubles: the one place where a start is judged.</summary>
internal static class StartKernel
{
    /// <summary>Judges a device by its unloaded voltage, 0 where that is not known, the one where it settles, and whether it climbs there
    /// from its turn-on voltage.</summary>
    internal static StartVerdict Judge(double unloadedVolts, double settledVolts, Starting starting, bool climbs)
    {
        if (unloadedVolts > RunKernel.NoOperatingPoint && unloadedVolts < starting.TurnOnVolts) return StartVerdict.UnloadedBelowTurnOn;
        if (settledVolts < starting.DropOutVolts) return StartVerdict.SettlesBelowDropOut;
        return climbs ? StartVerdict.Starts : StartVerdict.TurnOnBelowUnstableVoltage;
    }

    /// <summary>Whether a device gets from its turn-on voltage to where it settles whatever the circuit gives on the way: with a soft
    /// start, or by sinking.</summary>
    internal static bool NeedsNoClimb(double settledVolts, Starting starting) =>
        starting.HasSoftStart == true || (settledVolts > RunKernel.NoOperatingPoint && settledVolts <= starting.TurnOnVolts);
}
