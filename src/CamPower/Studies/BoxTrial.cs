using System;
using System.Collections.Generic;
using System.Linq;
using UnitsNet;

namespace CamPower.Studies;

/// <summary>Tries boxes of a catalogue in the place of one of a site.</summary>
internal sealed class BoxTrial(Site site, DistributionBox box, SizingPolicy policy)
{
    internal BoxChoice Choose(IEnumerable<DistributionBox> catalogue) => new(catalogue
        .OrderBy(b => b.Supply.Output.RatedAmperes).ThenBy(b => b.Outputs.Count)
        .Select(b => new BoxCandidate(b, ShortfallsOf(b).ToList().AsReadOnly()))
        .ToList().AsReadOnly());

    private IEnumerable<BoxShortfall> ShortfallsOf(DistributionBox candidate)
    {
        SupplyOutput wanted = box.Supply.Output, offered = candidate.Supply.Output;
        if (offered.Kind != wanted.Kind || !offered.NominalVolts.Equals(wanted.NominalVolts))
        {
            return [new BoxShortfall(BoxConstraint.Voltage, wanted.Nominal, offered.Nominal)];
        }

        bool canBeSet = (offered as DcOutput)?.Trim?.Contains(wanted.SetVolts) == true;
        Supply set = canBeSet ? candidate.Supply.SetTo(ElectricPotential.FromVolts(wanted.SetVolts)) : candidate.Supply;
        BoxAssessment solved = site.With(InItsPlace(candidate, set)).Assess().Boxes.Single(b => string.Equals(b.Box.Name, box.Name, StringComparison.Ordinal));
        return new[] { OutputsShort(candidate, solved), OutputTooWeak(candidate, solved), SupplyTooWeak(solved) }.OfType<BoxShortfall>();
    }

    // A box that declares an enclosure brings it; one that does not is taken to stand in that of the present box.
    private DistributionBox InItsPlace(DistributionBox candidate, Supply supply) =>
        candidate.Enclosure is Enclosure own ? box.With(supply).In(own) : box.With(supply);

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
        .Zip(candidate.Outputs.OrderByDescending(o => o.LimitAmperes), (used, output) => used.Worst.Amperes <= output.LimitAmperes
            ? null
            : new BoxShortfall(BoxConstraint.OutputLimit, used.Worst.Current, output.Limit, used.Worst.Condition))
        .FirstOrDefault(shortfall => shortfall is not null);

    private BoxShortfall? SupplyTooWeak(BoxAssessment solved)
    {
        BoxInCondition worst = solved.Worst;
        double needed = worst.Amperes / policy.LoadingShare;
        return needed <= worst.DeratedAmperes
            ? null
            : new BoxShortfall(BoxConstraint.Rating, ElectricCurrent.FromAmperes(needed), worst.DeratedRating, worst.Condition);
    }
}
