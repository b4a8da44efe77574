using System.Collections.Generic;
using System.Linq;

namespace CamPower.Checks;

/// <summary>A device whose leads were seen or measured to be reversed, on direct current.</summary>
public sealed class ReversedPolarityRule() : Rule("reversed-polarity", Severity.Danger,
    "The leads of a device on direct current are reversed: it may be destroyed at once, or short its output through its protection diode.",
    "Do not energize: swap the leads, measure the polarity at the plug, and connect the device then.", Sources.CommonPractice)
{
    /// <inheritdoc/>
    public override IEnumerable<Finding> Check(Evidence evidence) => Require.NotNull(evidence, nameof(evidence)).Assessment.Devices
        .Where(d => d.Device.LeadsReversed && d.Box.Supply.Output is DcOutput)
        .Select(d => Find(Subject.Of(d.Device), $"Its leads from {Subject.Of(d.Box, d.Output)} are reversed."));
}
