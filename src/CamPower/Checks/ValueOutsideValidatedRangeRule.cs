using System;
using System.Collections.Generic;
using System.Linq;
using CamPower.Protection;
using static System.FormattableString;

namespace CamPower.Checks;

/// <summary>The check of <see cref="Rules.ValueOutsideValidatedRange"/>.</summary>
internal sealed class ValueOutsideValidatedRangeRule() : Rule("value-outside-validated-range", Severity.Caution,
    "A model is used outside the range in which it was compared with other figures. Its answer is rough, or it gives no answer.",
    "Treat what is calculated from it as rough, and measure on site. Where nothing is calculated, use the data sheet or the local code.",
    Sources.ValidatedRange, "calculation outside its checked range")
{
    public override IEnumerable<Finding> Check(Evidence evidence)
    {
        SiteAssessment assessment = Require.NotNull(evidence, nameof(evidence)).Assessment;
        return Enclosures(assessment).Concat(assessment.Site.Runs.Where(HasBreach).SelectMany(Conductors))
            .Concat(assessment.Boxes.SelectMany(ProtectiveDevices));
    }

    // Boxes of one cabinet have one enclosure, and the first speaks for it.
    private IEnumerable<Finding> Enclosures(SiteAssessment assessment) =>
        from boxes in assessment.Boxes.GroupBy(b => (object?)b.Box.Cabinet ?? b.Box)
        let box = boxes.First()
        from breaches in BreachesOf(box).GroupBy(b => b.Breach.What, StringComparer.Ordinal)
        let isEverywhere = breaches.Count() == box.InConditions.Count
        let about = box.Box.Cabinet is Cabinet cabinet ? Subject.Of(cabinet) : Subject.Of(box.Box)
        select Find(about, breaches.First().Breach, isEverywhere ? null : breaches.First().Condition);

    // Where the supply would take twice the rise in every condition, a rough answer will do.
    private static IEnumerable<(Condition Condition, ValidityBreach Breach)> BreachesOf(BoxAssessment box) =>
        from inCondition in box.InConditions
        where inCondition.Heat is not null && box.InConditions.Any(c => c.Heat is { Breaches.Count: > 0 } && !c.TakesTwiceTheRise)
        from breach in inCondition.Heat!.Breaches
        select (inCondition.Condition, breach);

    private static bool HasBreach(SiteRun run)
    {
        foreach (CableSegment segment in run.Run.Segments)
        {
            if (ConductorCapacity.BreachOf(run, segment.Cable, segment.Cable.Outgoing) is not null) return true;
            if (ConductorCapacity.BreachOf(run, segment.Cable, segment.Cable.Return) is not null) return true;
        }

        return false;
    }

    private IEnumerable<Finding> Conductors(SiteRun run) =>
        from breaches in run.Run.Segments.Where(s => s.OneWayLength.Meters > 0).SelectMany(s => s.Cable.Conductors
                .Select(conductor => ConductorCapacity.BreachOf(run, s.Cable, conductor))).OfType<ValidityBreach>()
            .GroupBy(b => b.What, StringComparer.Ordinal)
        select Find(Subject.Of(run), breaches.First());

    // One protective device at several outputs of a box is one finding, in the condition in which it is farthest out.
    private IEnumerable<Finding> ProtectiveDevices(BoxAssessment box) =>
        from alike in box.Outputs.Where(o => o.Output.Protection?.Ambient is not null).GroupBy(o => o.Output.Protection!)
        let farthest = (
            from inCondition in box.InConditions
            where !inCondition.IsInsideUnknown
            let breach = alike.Key.Ambient!.BreachAt(inCondition.SupplyCelsius, alike.Key)
            where breach is not null
            orderby Math.Abs(inCondition.SupplyCelsius - Celsius.Of((UnitsNet.Temperature)breach.Limit!)) descending
            select (inCondition.Condition, Breach: breach)).FirstOrDefault()
        where farthest.Breach is not null
        let about = alike.Count() == 1 ? Subject.Of(box.Box, alike.First().Output) : Subject.Of(box.Box)
        select Find(about, farthest.Breach, farthest.Condition);

    private Finding Find(Subject about, ValidityBreach breach, Condition? condition = null) =>
        Find(about, $"{Rules.Capitalized(breach.ToString())}.", breach.Value, breach.Limit, condition);
}
