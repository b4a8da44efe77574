using System;
using System.Collections.Generic;
using System.Linq;
using UnitsNet;

namespace CamPower.Studies;

/// <summary>Tries boxes of a catalog in the place of one of a site.</summary>
internal sealed class BoxTrial(Site site, DistributionBox box, SizingPolicy policy)
{
    internal BoxChoice Choose(IEnumerable<DistributionBox> catalog) => new(catalog
        .OrderBy(b => b.Supply.Output.RatedAmperes).ThenBy(b => b.Outputs.Count)
        .Select(b => new BoxCandidate(b, ShortfallsOf(b).ToList().AsReadOnly()))
        .ToList().AsReadOnly());

    // Set as the present one where its trim range allows.
    private Supply SupplyOf(DistributionBox candidate)
    {
        double wanted = box.Supply.Output.SetVolts;
        bool canBeSet = (candidate.Supply.Output as DcOutput)?.Trim?.Contains(wanted) == true;
        return canBeSet ? candidate.Supply.WithSetPoint(ElectricPotential.FromVolts(wanted)) : candidate.Supply;
    }

    /// <summary>Reason against a candidate for any load: its voltage or its kind of current.</summary>
    internal BoxShortfall? WrongVoltage(DistributionBox candidate)
    {
        SupplyOutput wanted = box.Supply.Output, offered = candidate.Supply.Output;
        return offered.Kind == wanted.Kind && offered.NominalVolts.Equals(wanted.NominalVolts)
            ? null
            : new BoxShortfall(BoxConstraint.Voltage, wanted.Nominal, offered.Nominal);
    }

    /// <summary>The box of the site with a candidate's supply, and with what else of it warms: the enclosure, and what protects the
    /// outputs.</summary>
    /// <remarks>A candidate that declares no enclosure is taken to be where the present box is, beside its neighbors of a
    /// cabinet.</remarks>
    internal DistributionBox InItsPlace(DistributionBox candidate)
    {
        var solved = new DistributionBox(box.Name, SupplyOf(candidate), box.Outputs.Select(o =>
            new BoxOutput(o.Number, o.Limit, candidate.Outputs[Math.Min(o.Number, candidate.Outputs.Count) - 1].Protection)),
                box.Terminals);
        return solved.InPlaceOf(candidate.Enclosure is null ? box : candidate);
    }

    /// <summary>A candidate where the present box is: its supply set, in the enclosure and at the receptacle of that one where it declares
    /// none.</summary>
    internal DistributionBox Placed(DistributionBox candidate)
    {
        DistributionBox placed = candidate.With(SupplyOf(candidate));
        if (placed.Enclosure is null && box.Enclosure is Enclosure enclosure) placed = placed.WithEnclosure(enclosure);
        return placed.Receptacle is null && box.Receptacle is Receptacle receptacle ? placed.WithReceptacle(receptacle) : placed;
    }

    /// <summary>What speaks against a candidate that feeds certain outputs, solved with it in the place of the box.</summary>
    internal IEnumerable<BoxShortfall> ShortfallsOf(DistributionBox candidate, BoxAssessment solved) =>
        new[] { OutputsShort(candidate, solved), OutputTooWeak(candidate, solved), SupplyTooWeak(solved),
            ProtectionTooWeak(candidate, solved), InsideUnknown(solved) }.OfType<BoxShortfall>();

    private IEnumerable<BoxShortfall> ShortfallsOf(DistributionBox candidate) => WrongVoltage(candidate) is BoxShortfall wrong
        ? [wrong]
        : ShortfallsOf(candidate, site.With(InItsPlace(candidate))
            .Assess().Boxes.Single(b => string.Equals(b.Box.Name, box.Name, StringComparison.Ordinal)));

    private BoxShortfall? OutputsShort(DistributionBox candidate, BoxAssessment solved)
    {
        int needed = policy.OutputsFor(solved.Outputs.Count);
        return needed <= candidate.Outputs.Count
            ? null
            : new BoxShortfall(BoxConstraint.Outputs, Scalar.FromAmount(needed), Scalar.FromAmount(candidate.Outputs.Count));
    }

    // If the largest current on the strongest output and so on down the line will not do, no other order will.
    private static BoxShortfall? OutputTooWeak(DistributionBox candidate, BoxAssessment solved) => solved.Outputs
        .OrderByDescending(o => o.Worst.Amperes)
        .Zip(candidate.Outputs.OrderByDescending(o => o.LimitAmperes), (used, output) => !used.Worst.LimitOf(output).IsViolated
            ? null
            : new BoxShortfall(BoxConstraint.OutputLimit, used.Worst.Current, output.Limit, used.Worst.Condition))
        .FirstOrDefault(shortfall => shortfall is not null);

    // In the order in which outputs are wired where they differ. What a finding says of a condition or of the start of all counts here too.
    private static BoxShortfall? ProtectionTooWeak(DistributionBox candidate, BoxAssessment solved) => solved.Outputs
        .OrderByDescending(o => o.Worst.Amperes)
        .Zip(candidate.Outputs.OrderByDescending(o => o.LimitAmperes), (used, output) => Tripping(used, output, solved))
        .SelectMany(tripping => tripping)
        .OrderByDescending(shortfall => ((ElectricCurrent)shortfall.Needed).Amperes / ((ElectricCurrent)shortfall.Has).Amperes)
        .FirstOrDefault();

    private static IEnumerable<BoxShortfall> Tripping(OutputAssessment used, BoxOutput output, BoxAssessment solved)
    {
        for (int c = 0; c < solved.InConditions.Count; c++)
        {
            var protection = ProtectionInCondition.Of(output, used, used.InConditions[c], solved.InConditions[c]);
            if (protection.MayTrip)
            {
                yield return new BoxShortfall(
                    BoxConstraint.Protection, protection.Current, protection.Carried!.Value, protection.Condition);
            }

            Inrush? switched = used.SwitchedInrushIn(protection.Condition, protection.Current.Amperes);
            if (protection.Start?.IsViolated == true) yield return ByInrush(used.Inrush!);
            if (protection.Switching?.IsViolated == true) yield return ByInrush(switched!);

            BoxShortfall ByInrush(Inrush inrush) => new(BoxConstraint.Protection, inrush.Peak, protection.Carried
                ?? ElectricCurrent.FromAmperes(output.Protection!.CarriedAmperes(currentFactor: 1)), protection.Condition);
        }
    }

    private static BoxShortfall? InsideUnknown(BoxAssessment solved)
    {
        BoxInCondition? unknown = solved.InConditions.Where(c => c.IsInsideUnknown || c.IsInsideAtLeast).OrderByDescending(c => c.Amperes)
            .FirstOrDefault();
        if (unknown is null) return null;
        Supply supply = solved.Box.Supply;
        return new BoxShortfall(BoxConstraint.InsideTemperature, Ratio.FromPercent(100 * unknown.Amperes / supply.Output.RatedAmperes),
            Ratio.FromPercent(100 * (supply.Input?.Efficiency?.Highest ?? 0)), unknown.Condition);
    }

    private BoxShortfall? SupplyTooWeak(BoxAssessment solved)
    {
        BoxInCondition worst = solved.Worst;
        return policy.IsKeptBy(worst)
            ? null
            : new BoxShortfall(BoxConstraint.Rating, ElectricCurrent.FromAmperes(worst.Amperes / policy.LoadingShare), worst.DeratedRating,
                worst.Condition);
    }
}
