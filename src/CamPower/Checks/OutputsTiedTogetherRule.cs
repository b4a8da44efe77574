using System;
using System.Collections.Generic;
using System.Linq;
using UnitsNet;
using static System.FormattableString;

namespace CamPower.Checks;

/// <summary>Outputs that somebody joined: two supplies in parallel, of which one feeds back into the other, or one output doubled.</summary>
/// <remarks>The voltage found is by how much the one may be above the other: the highest of the one less the lowest of the other.
/// Supplies that are made to work in parallel say so on their sheet; drop the rule for them.</remarks>
public sealed class OutputsTiedTogetherRule() : Rule("outputs-tied-together", Severity.Danger,
    "Two outputs are joined: the supply of the higher voltage feeds back into the other, and a fault is fed past both protective devices.",
    "Do not energize: separate them, and spread the devices over the outputs instead.", Sources.CommonPractice)
{
    /// <inheritdoc/>
    public override IEnumerable<Finding> Check(Evidence evidence)
    {
        Site site = Require.NotNull(evidence, nameof(evidence)).Assessment.Site;
        return site.Ties.Select(tie => tie.IsWithinOneBox
            ? Find(Named(site, tie.OneBox, tie.OneOutput), Invariant($"It is joined to output {tie.OtherOutput} of the same box: a fault is fed through both protective devices."))
            : BackFeed(site, tie));
    }

    private Finding BackFeed(Site site, OutputTie tie)
    {
        SupplyOutput one = site.BoxNamed(tie.OneBox, nameof(tie)).Supply.Output, other = site.BoxNamed(tie.OtherBox, nameof(tie)).Supply.Output;
        if (one.Kind != other.Kind) return Find(Named(site, tie.OneBox, tie.OneOutput), Invariant($"It is joined to {tie.OtherBox} output {tie.OtherOutput}: AC and DC in one circuit."));
        double above = one.HighestVolts - other.LowestVolts, below = other.HighestVolts - one.LowestVolts;
        return Find(Named(site, tie.OneBox, tie.OneOutput),
            Invariant($"It is joined to {tie.OtherBox} output {tie.OtherOutput}, and {(above >= below ? tie.OneBox : tie.OtherBox)} may be {Math.Max(above, below):0.##} V above the other and feed back into it."),
            ElectricPotential.FromVolts(Math.Max(above, below)), ElectricPotential.Zero);
    }

    private static Subject Named(Site site, string box, int output)
    {
        DistributionBox found = site.BoxNamed(box, nameof(box));
        return Subject.Of(found, found.Outputs[output - 1]);
    }
}
