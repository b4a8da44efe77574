namespace CamPower.Circuits;

/// <summary>The three ways of not starting, on SI doubles.</summary>
internal static class StartKernel
{
    /// <summary>Judges a device behind a source of unloaded voltage and loop resistance, where its load settles at a voltage.</summary>
    internal static StartVerdict Judge(double unloadedVolts, double ohms, Load atStart, double settled, Starting starting)
    {
        if (unloadedVolts < starting.TurnOnVolts) return StartVerdict.UnloadedBelowTurnOn;
        if (settled < starting.DropOutVolts) return StartVerdict.SettlesBelowDropOut;

        return starting.SoftStart != SoftStart.Yes && starting.TurnOnVolts < RunKernel.UnstableVolts(unloadedVolts, ohms, atStart, settled)
            ? StartVerdict.TurnOnBelowUnstableVoltage
            : StartVerdict.Starts;
    }
}
