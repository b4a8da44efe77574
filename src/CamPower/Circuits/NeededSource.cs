using System;

namespace CamPower.Circuits;

/// <summary>The load voltages that a needed source voltage must reach, the highest of which decides. [V]</summary>
/// <param name="Ohms">Loop resistance of the run. [Ω]</param>
/// <param name="AcceptedVolts">Lowest voltage accepted, or 0.</param>
/// <param name="VoltsAtDrop">Lowest voltage at which the drop is accepted, or 0.</param>
/// <param name="CollapseVolts">Below this the run collapses; 0 where it does not.</param>
/// <param name="SourceVolts">The source voltage that leaves the load the highest of the three; infinite where none does.</param>
internal sealed record NeededSource(double Ohms, double AcceptedVolts, double VoltsAtDrop, double CollapseVolts, double SourceVolts)
{
    internal double LoadVolts => Highest(AcceptedVolts, VoltsAtDrop, CollapseVolts);

    internal BindingLimit Limit => AcceptedVolts >= VoltsAtDrop && AcceptedVolts >= CollapseVolts ? BindingLimit.LowestVoltage
        : VoltsAtDrop >= CollapseVolts ? BindingLimit.LargestDrop
        : BindingLimit.Collapse;

    internal static NeededSource Of(RunQuestion question)
    {
        Load load = question.Load;
        VoltageLimit accepted = question.Accepted;
        double ohms = question.Run.OhmsAt(question.DegreesCelsius);
        double atDrop = accepted.LimitsDrop ? RunLimitKernel.VoltsAtDrop(ohms, load, accepted.LargestDropShare) : 0;
        double collapse = RunLimitKernel.CollapseVoltsBySource(ohms, load);
        double highest = Highest(accepted.LowestVolts, atDrop, collapse);
        double source = double.IsInfinity(highest) ? highest : RunLimitKernel.SourceVoltsAt(ohms, highest, load);
        return new NeededSource(ohms, accepted.LowestVolts, atDrop, collapse, source);
    }

    private static double Highest(double a, double b, double c) => Math.Max(a, Math.Max(b, c));
}
