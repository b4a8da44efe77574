using System;
using System.Collections.Generic;
using System.Linq;
using CamPower.Protection;
using static System.FormattableString;

namespace CamPower.Checks;

/// <summary>A model asked for something outside the range in which it was held against other figures, or in which anything is known.</summary>
/// <remarks>
/// The temperature inside an enclosure; what a conductor thinner or thicker than published currents carries, and how warm it gets in a fault
/// that lasts; what a protective device carries in air beyond its ambient curve. Of an enclosure there is an answer all the
/// same, and of a thinner conductor the bound that it carries no more than the thinnest that is known; otherwise there is none, and the rules that would need it say nothing.
/// </remarks>
public sealed class ValueOutsideValidatedRangeRule() : Rule("value-outside-validated-range", Severity.Caution,
    "A model was asked for something outside the range in which it was held against other figures: its answer is a rough one, or there is none.",
    "Take the answer as a rough one and measure on site; where there is none, take the value from the data sheet or the local code.", Sources.ValidatedRange)
{
    /// <inheritdoc/>
    public override IEnumerable<Finding> Check(Evidence evidence)
    {
        SiteAssessment assessment = Require.NotNull(evidence, nameof(evidence)).Assessment;
        return Enclosures(assessment).Concat(assessment.Site.Runs.SelectMany(Conductors)).Concat(assessment.Boxes.SelectMany(Devices));
    }

    // Boxes of one cabinet have one enclosure, and the first speaks for it.
    private IEnumerable<Finding> Enclosures(SiteAssessment assessment) =>
        from boxes in assessment.Boxes.GroupBy(b => (object?)b.Box.Cabinet ?? b.Box)
        let box = boxes.First()
        from breaches in BreachesOf(box).GroupBy(b => b.Breach.What, StringComparer.Ordinal)
        let isEverywhere = breaches.Count() == box.InConditions.Count
        select Find(box.Box.Cabinet is Cabinet cabinet ? Subject.Of(cabinet) : Subject.Of(box.Box), breaches.First().Breach, isEverywhere ? null : breaches.First().Condition);

    private static IEnumerable<(Condition Condition, ValidityBreach Breach)> BreachesOf(BoxAssessment box) =>
        from inCondition in box.InConditions
        where inCondition.Heat is not null
        from breach in inCondition.Heat!.Breaches
        select (inCondition.Condition, breach);

    private IEnumerable<Finding> Conductors(SiteRun run) =>
        from breaches in run.Run.Segments.Where(s => s.OneWayLength.Meters > 0).SelectMany(s => s.Cable.Conductors)
            .Select(conductor => ConductorCapacity.BreachOf(run, conductor)).OfType<ValidityBreach>().GroupBy(b => b.What, StringComparer.Ordinal)
        select Find(Subject.Of(run), breaches.First());

    // One device at several outputs of a box is one finding, in the condition in which it is farthest out.
    private IEnumerable<Finding> Devices(BoxAssessment box) =>
        from alike in box.Outputs.Where(o => o.Output.Protection?.Ambient is not null).GroupBy(o => o.Output.Protection!)
        let farthest = (
            from inCondition in box.InConditions
            where !inCondition.IsInsideUnknown
            let breach = alike.Key.Ambient!.BreachAt(inCondition.SupplyCelsius, alike.Key)
            where breach is not null
            orderby Math.Abs(inCondition.SupplyCelsius - Celsius.Of((UnitsNet.Temperature)breach.Limit!)) descending
            select (inCondition.Condition, Breach: breach)).FirstOrDefault()
        where farthest.Breach is not null
        select Find(alike.Count() == 1 ? Subject.Of(box.Box, alike.First().Output) : Subject.Of(box.Box), farthest.Breach, farthest.Condition);

    private Finding Find(Subject about, ValidityBreach breach, Condition? condition = null) => Find(about, $"{breach}.", breach.Value, breach.Limit, condition);
}
