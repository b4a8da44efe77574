namespace CamPower.Checks;

/// <summary>Words that several rules on faults share.</summary>
internal static class FaultRuleText
{
    /// <summary>Why it is not certain to operate, after how it operates: an installation method is not stated.</summary>
    internal static string NotStated(Overcurrent fault) => fault.Opening.Verdict == OperatingVerdict.MayClear && fault.Missing.HasFlag(FaultData.InstallationMethod)
        ? " (installation method not stated)"
        : string.Empty;

    /// <summary>What the conductors do, after "the conductors".</summary>
    internal static string Withstand(Overcurrent fault) => fault.WithstandVerdict switch
    {
        WithstandVerdict.Stands => "withstand it",
        WithstandVerdict.HotterThanInService => "get hotter than their service limit",
        WithstandVerdict.DoesNotStand => "may not withstand it",
        WithstandVerdict.NoConductor => "do not carry it",
        _ => "may not withstand it: insulation, installation method or overload behavior is not stated",
    };
}
