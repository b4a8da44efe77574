using System.Collections.Generic;
using System.Linq;

namespace CamPower.Planning;

/// <summary>What a plan chooses: a box or none for each slot, and a run for each camera.</summary>
/// <param name="Offers">For each slot the number of the box, or -1 for none.</param>
/// <param name="Runs">For each camera its run.</param>
internal sealed record PlanChoice(int[] Offers, RunOption[] Runs)
{
    internal IEnumerable<RunOption> RunsFrom(BoxSlot slot) => Runs.Where(run => run.Slot == slot.Index);

    internal double CostIn(PlanningCase planned) =>
        planned.Slots.Where(slot => Offers[slot.Index] >= 0).Sum(slot => slot.Offers[Offers[slot.Index]].Cost) + Runs.Sum(run => run.Cost);
}
