using System;
using System.Collections.Generic;
using System.Linq;
using static System.FormattableString;

namespace CamPower.Planning;

/// <summary>What keeps a plan from costing less, found by trying what is cheaper in its place.</summary>
internal sealed class PlanBindings(PlanningCase planned, PlanCheck check)
{
    // What saves less is a rounding error.
    private const double LeastSaving = 1e-6;

    /// <summary>For each box the next cheaper one; for each camera the next cheaper cable, and the cheapest run from another box.</summary>
    internal IEnumerable<PlanBinding> Of(PlanChoice choice) =>
    [
        .. planned.Slots.Where(slot => choice.Offers[slot.Index] >= 0).Select(slot => OfBox(choice, slot)).OfType<PlanBinding>(),
        .. choice.Runs.OfType<RunOption>().SelectMany(run => new[] { OfCable(choice, run), OfPlace(choice, run) }).OfType<PlanBinding>(),
    ];

    /// <summary>Why there is no plan: cameras that no run can feed, or too few outputs.</summary>
    internal IEnumerable<PlanBinding> OfNone()
    {
        PlanBinding[] lost = [.. Enumerable.Range(0, planned.Question.Cameras.Count)
            .Where(i => planned.Options.All(o => o.Camera != i)).Select(OfLost)];
        return lost.Length > 0 ? lost : [OfTooLittle()];
    }

    private PlanBinding OfLost(int number)
    {
        PlannedCamera camera = planned.Question.Cameras[number];
        BoxSlot? nearest = planned.Slots.Where(slot => camera.MetersFrom(slot.Place) is not null)
            .OrderBy(slot => camera.MetersFrom(slot.Place)).FirstOrDefault();
        Cable? largest = planned.CablesFor(camera).MaxBy(cable => cable.Outgoing.Size);
        if (nearest is null || largest is null || nearest.Offers.Count == 0)
        {
            return new PlanBinding(Subject(camera), "no run", null, "No box, no cable or no route is stated for it.");
        }

        // Of the boxes the one that objects least is the one that was nearest to being enough.
        Finding finding = nearest.Offers.Select(offer => planned.TrialOf(camera, nearest, offer, largest)!.Objections)
            .OrderBy(objections => objections.Count).First()[0];
        return new PlanBinding(Subject(camera),
            Invariant($"{camera.MetersFrom(nearest.Place):0.#} m of {largest} from {nearest.Name}, the nearest place"), null,
            finding.Message, finding);
    }

    private PlanBinding OfTooLittle()
    {
        int most = planned.Slots.Sum(slot => slot.Offers.Select(offer => offer.UsableOutputs).DefaultIfEmpty().Max());
        int needed = planned.Question.Cameras.Count;
        string reason = most < needed
            ? Invariant($"They have {most} usable outputs at most; {needed} are needed.")
            : "Each camera can be fed, but not all of them together.";
        return new PlanBinding(new Subject(SubjectKind.Site, planned.Question.Name), "the largest boxes at all places", null, reason);
    }

    private PlanBinding? OfBox(PlanChoice choice, BoxSlot slot)
    {
        OfferedBox chosen = slot.Offers[choice.Offers[slot.Index]];
        int cheaper = Enumerable.Range(0, slot.Offers.Count).Where(o => slot.Offers[o].Cost < chosen.Cost - LeastSaving)
            .OrderByDescending(o => slot.Offers[o].Cost).FirstOrDefault(-1);
        if (cheaper < 0) return null;
        OfferedBox other = slot.Offers[cheaper];
        return Binding(new Subject(SubjectKind.Box, slot.Name), other.Box.Name, chosen.Cost - other.Cost, slot, cheaper,
            [.. choice.RunsFrom(slot)]);
    }

    private PlanBinding? OfCable(PlanChoice choice, RunOption run)
    {
        PlannedCamera camera = planned.Question.Cameras[run.Camera];
        if (camera.Cable is not null) return null;
        BoxSlot slot = planned.Slots[run.Slot];
        int offer = choice.Offers[slot.Index];
        (Cable Cable, RunTrial Trial)[] cheaper =
        [
            .. planned.Question.Cables.Select(cable => (cable, planned.TrialOf(camera, slot, slot.Offers[offer], cable)!))
                .Where(x => x.Item2.Cost < run.Cost - LeastSaving).OrderByDescending(x => x.Item2.Cost).Take(1),
        ];
        if (cheaper.Length == 0) return null;
        RunOption other = run with { Cable = cheaper[0].Cable, Cost = cheaper[0].Trial.Cost, Draws = cheaper[0].Trial.Draws };
        return Binding(Subject(camera), other.Cable.ToString(), run.Cost - other.Cost, slot, offer,
            [.. choice.RunsFrom(slot).Select(r => ReferenceEquals(r, run) ? other : r)]);
    }

    private PlanBinding? OfPlace(PlanChoice choice, RunOption run)
    {
        RunOption? other = planned.Options.Where(o => o.Camera == run.Camera && o.Slot != run.Slot && o.Cost < run.Cost - LeastSaving
            && o.Offers.Contains(choice.Offers[o.Slot])).MinBy(o => o.Cost);
        if (other is null) return null;
        BoxSlot slot = planned.Slots[other.Slot];
        return Binding(Subject(planned.Question.Cameras[run.Camera]),
            Invariant($"{other.Length.Meters:0.#} m of {other.Cable} from {slot.Name}"),
            run.Cost - other.Cost, slot, choice.Offers[slot.Index], [.. choice.RunsFrom(slot), other]);
    }

    // Null where nothing speaks against it: the plan is then not proven least.
    private PlanBinding? Binding(
        Subject about, string alternative, double saves, BoxSlot slot, int offer, IReadOnlyCollection<RunOption> runs)
    {
        OfferedBox box = slot.Offers[offer];
        if (runs.Count > box.UsableOutputs)
        {
            return new PlanBinding(about, alternative, saves,
                Invariant($"Of its {box.Box.Outputs.Count} outputs {box.UsableOutputs} may be used; {runs.Count} are needed."));
        }

        Finding? finding = check.ObjectionsTo(slot, offer, runs).FirstOrDefault();
        return finding is null ? null : new PlanBinding(about, alternative, saves, finding.Message, finding);
    }

    private static Subject Subject(PlannedCamera camera) => new(SubjectKind.Device, camera.Name);
}
