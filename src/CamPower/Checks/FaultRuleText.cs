namespace CamPower.Checks;

/// <summary>Words that several rules on faults share.</summary>
internal static class FaultRuleText
{
    /// <summary>Why it is not certain to open where that is for want of a declared laying, after how it opens.</summary>
    internal static string Undeclared(Overcurrent fault) => fault.Opening.Verdict == ClearingVerdict.MayClear && fault.Missing.HasFlag(FaultData.Laying)
        ? ": nobody declares how the cable lies, and so how much its warming takes of the current"
        : string.Empty;

    /// <summary>What the conductors do, after "the conductors on the way".</summary>
    internal static string Withstand(Overcurrent fault) => fault.WithstandVerdict switch
    {
        WithstandVerdict.Stands => "stand it",
        WithstandVerdict.HotterThanInService => "get hotter than they may be in service",
        WithstandVerdict.DoesNotStand => "may not stand it",
        WithstandVerdict.NoConductor => "are none",
        _ => "may or may not stand it: what their insulation stands, how they lie or what the supply does is not declared",
    };
}
