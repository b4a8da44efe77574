using System;
using System.Collections.Generic;
using System.Linq;
using System.Threading;
using UnitsNet;

namespace CamPower.Planning;

/// <summary>A question made ready to be solved: the slots, the boxes that each may have, and the runs that may feed each camera.</summary>
internal sealed class PlanningCase
{
    private readonly RunTrials _trials;

    internal PlanningCase(PlanningQuestion question, CancellationToken cancellationToken)
    {
        Question = question;
        Rules = question.Rules.With(CamPower.Rules.SupplyAboveHeadroomPolicy(question.Sizing.Loading));
        _trials = new RunTrials(question, Rules);
        Slots = SlotsOf(question, Rules, cancellationToken);
        Options = [.. OptionsOf(cancellationToken)];
    }

    internal PlanningQuestion Question { get; }

    /// <summary>The rules, that of headroom with the share of the policy.</summary>
    internal RuleSet Rules { get; }

    internal IReadOnlyList<BoxSlot> Slots { get; }

    internal IReadOnlyList<RunOption> Options { get; }

    /// <summary>A camera alone on a box of a slot; null where there is no route.</summary>
    internal RunTrial? TrialOf(PlannedCamera camera, BoxSlot slot, OfferedBox offer, Cable cable) =>
        camera.MetersFrom(slot.Place) is double meters ? _trials.Of(camera, meters, offer.Box, cable) : null;

    /// <summary>The cables of which a camera may get one.</summary>
    internal IReadOnlyList<Cable> CablesFor(PlannedCamera camera) => camera.Cable is Cable given ? [given] : Question.Cables;

    private static BoxSlot[] SlotsOf(PlanningQuestion question, RuleSet rules, CancellationToken cancellationToken)
    {
        var capacity = new BoxCapacity(question, rules);
        var known = new Dictionary<(DistributionBox, Enclosure?), (DistributionBox Box, double[] Most)>();
        var slots = new List<BoxSlot>();
        foreach (BoxPlace place in question.Places)
        {
            OfferedBox[] offers = [.. (place.Box is DistributionBox given ? [given] : question.Boxes).Select(Offered)];
            int count = place.Box is null ? place.MostBoxes : 1;
            for (int n = 1; n <= count; n++) slots.Add(new BoxSlot(slots.Count, place, NameOf(place, n), offers));

            OfferedBox Offered(DistributionBox box)
            {
                cancellationToken.ThrowIfCancellationRequested();
                OfferedBox offer = OfferedBox.At(place, box, question);
                if (!known.TryGetValue((box, place.Enclosure), out (DistributionBox Box, double[] Most) same))
                {
                    same = (offer.Box, [.. question.Conditions.Select(c => capacity.MostAmperes(offer.Box, c))]);
                    known.Add((box, place.Enclosure), same);
                }

                // What differs by its receptacle alone is the same box to what is behind it.
                return offer with { MostAmperes = same.Most, BehindOutputs = same.Box };
            }
        }

        return [.. slots];
    }

    private static string NameOf(BoxPlace place, int number) =>
        number == 1 ? place.Name : FormattableString.Invariant($"{place.Name} {number}");

    private IEnumerable<RunOption> OptionsOf(CancellationToken cancellationToken) =>
        from camera in Enumerable.Range(0, Question.Cameras.Count)
        from slot in Slots
        where Question.Cameras[camera].MetersFrom(slot.Place) is not null
        from cable in CablesFor(Question.Cameras[camera])
        from option in OptionsOf(camera, slot, cable, cancellationToken)
        select option;

    // Boxes from which the run draws the same are one option.
    private List<RunOption> OptionsOf(int number, BoxSlot slot, Cable cable, CancellationToken cancellationToken)
    {
        cancellationToken.ThrowIfCancellationRequested();
        PlannedCamera camera = Question.Cameras[number];
        double meters = camera.MetersFrom(slot.Place)!.Value;
        var options = new List<RunOption>();
        for (int o = 0; o < slot.Offers.Count; o++)
        {
            RunTrial trial = _trials.Of(camera, meters, slot.Offers[o].BehindOutputs, cable);
            if (trial.Objections.Count > 0) continue;
            int same = options.FindIndex(option => option.Draws.IsLike(trial.Draws));
            if (same >= 0) options[same] = options[same] with { Offers = [.. options[same].Offers, o] };
            else options.Add(new RunOption(number, slot.Index, cable, Length.FromMeters(meters), CostOf(camera, trial), trial.Draws, [o]));
        }

        return options;
    }

    // A run that lies already costs nothing.
    private static double CostOf(PlannedCamera camera, RunTrial trial) => camera.Cable is null ? trial.Cost : 0;
}
