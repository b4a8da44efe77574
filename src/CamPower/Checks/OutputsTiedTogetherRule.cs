using System;
using System.Collections.Generic;
using System.Linq;
using UnitsNet;
using static System.FormattableString;

namespace CamPower.Checks;

/// <summary>The check of <see cref="Rules.OutputsTiedTogether"/>.</summary>
internal sealed class OutputsTiedTogetherRule() : Rule("outputs-tied-together", Severity.Danger,
    "Two outputs are joined. The supply of higher voltage feeds back into the other, and a fault is fed through both protective devices.",
    "Do not energize. Separate the outputs, and spread the devices over them.", Sources.CommonPractice, "outputs joined")
{
    public override IEnumerable<Finding> Check(Evidence evidence)
    {
        Site site = Require.NotNull(evidence, nameof(evidence)).Assessment.Site;
        return site.Ties.Select(tie => tie.IsWithinOneBox
            ? Find(Named(site, tie.OneBox, tie.OneOutput),
                Invariant($"It is joined to output {tie.OtherOutput} of the same box; a fault is fed through both protective devices."))
            : BackFeed(site, tie));
    }

    private Finding BackFeed(Site site, OutputTie tie)
    {
        SupplyOutput one = site.BoxNamed(tie.OneBox, nameof(tie)).Supply.Output;
        SupplyOutput other = site.BoxNamed(tie.OtherBox, nameof(tie)).Supply.Output;
        Subject about = Named(site, tie.OneBox, tie.OneOutput);
        string joined = Invariant($"It is joined to output {tie.OtherOutput} of {tie.OtherBox}");
        if (one.Kind != other.Kind) return Find(about, $"{joined}: AC and DC in one circuit.");
        double above = one.HighestVolts - other.LowestVolts, below = other.HighestVolts - one.LowestVolts;
        string higher = above >= below ? tie.OneBox : tie.OtherBox;
        return Find(about,
            Invariant($"{joined}. The supply of {higher} can be {Math.Max(above, below):0.##} V higher ") +
            "and feed back into the other supply.",
            ElectricPotential.FromVolts(Math.Max(above, below)), ElectricPotential.Zero);
    }

    private static Subject Named(Site site, string box, int output)
    {
        DistributionBox found = site.BoxNamed(box, nameof(box));
        return Subject.Of(found, found.Outputs[output - 1]);
    }
}
