using System.Collections.Generic;
using System.Linq;

namespace CamPower.Planning;

/// <summary>What a plan chooses: a box or none for each slot, and a run for each camera.</summary>
/// <param name="Offers">For each slot the number of the box, or -1 for none.</param>
/// <param name="Runs">For each camera its run; null for none, where a part of a plan is tried.</param>
internal sealed record PlanChoice(int[] Offers, RunOption?[] Runs)
{
    /// <summary>The runs from a slot, in the order of the cameras.</summary>
    internal IEnumerable<RunOption> RunsFrom(BoxSlot slot) => Runs.OfType<RunOption>().Where(run => run.Slot == slot.Index);

    /// <summary>What it costs without what was given.</summary>
    internal double CostIn(PlanningCase planned) =>
        planned.Slots.Where(slot => Offers[slot.Index] >= 0).Sum(slot => slot.Offers[Offers[slot.Index]].Cost)
        + Runs.Sum(run => run?.Cost ?? 0);
}
