namespace CamPower.Circuits;

/// <summary>The three ways of not starting, on SI doubles.</summary>
internal static class StartKernel
{
    /// <summary>Judges a device behind a source of unloaded voltage and loop resistance.</summary>
    internal static StartVerdict Judge(double unloadedVolts, double ohms, Load atStart, Starting starting)
    {
        if (unloadedVolts < starting.TurnOnVolts) return StartVerdict.UnloadedBelowTurnOn;

        double settled = RunKernel.LoadVolts(unloadedVolts, ohms, atStart);
        if (settled < starting.DropOutVolts) return StartVerdict.SettlesBelowDropOut;

        return starting.SoftStart != SoftStart.Yes && starting.TurnOnVolts < RunKernel.UnstableVolts(unloadedVolts, ohms, atStart, settled)
            ? StartVerdict.TurnOnBelowUnstableVoltage
            : StartVerdict.Starts;
    }
}
