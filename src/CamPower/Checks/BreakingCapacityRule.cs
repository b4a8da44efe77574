using System.Collections.Generic;
using System.Linq;
using static System.FormattableString;

namespace CamPower.Checks;

/// <summary>A short that asks a protective device for more current than it interrupts safely.</summary>
public sealed class BreakingCapacityRule() : Rule("breaking-capacity-exceeded", Severity.Danger,
    "A short draws more than the protective device of its output interrupts safely: it may burst or go on burning.",
    "Use a device of a higher breaking capacity, or a supply that limits its current.", Sources.Iec60127BreakingCapacity)
{
    /// <inheritdoc/>
    public override IEnumerable<Finding> Check(Evidence evidence) =>
        from output in Require.NotNull(evidence, nameof(evidence)).Faults
        where output.Output.Protection?.BreakingCapacity is not null
        let worst = output.Shorts.Where(s => s.IsWithinBreakingCapacity == false).OrderByDescending(s => s.Largest!.Value.Amperes).FirstOrDefault()
        where worst is not null
        let capacity = output.Output.Protection!.BreakingCapacity!.Value
        select Find(Subject.Of(output.Box, output.Output),
            Invariant($"A short at {worst.Place} draws up to {worst.Largest!.Value.Amperes:0.0} A: {output.Output.Protection} interrupts {capacity.Amperes:0.0} A."),
            worst.Largest, capacity);
}
