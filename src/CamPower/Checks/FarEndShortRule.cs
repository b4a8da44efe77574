using System.Collections.Generic;
using System.Linq;
using static System.FormattableString;

namespace CamPower.Checks;

/// <summary>A short somewhere on what an output feeds that its protective device does not clear for certain.</summary>
public sealed class FarEndShortRule() : Rule("far-end-short-does-not-clear", Severity.Failure,
    "A short at the end of what an output feeds draws too little for its protective device to open for certain, and the supply does not end it either.",
    "Use a smaller or faster device, a thicker cable, or a supply that shuts down on overload.", Sources.OvercurrentProtection)
{
    /// <inheritdoc/>
    public override IEnumerable<Finding> Check(Evidence evidence) =>
        from output in Require.NotNull(evidence, nameof(evidence)).Faults.Outputs
        where output.Output.Protection is not null && !ReferenceEquals(output.Output.Protection, ProtectiveDevice.None)
        let worst = output.Shorts.Where(s => DoesNotClear(s.Fault)).OrderBy(s => s.Fault.Smallest.Amperes).FirstOrDefault()
        where worst is not null
        select Find(Subject.Of(output.Box, output.Output),
            Invariant($"A short at {worst.Fault.Place} draws as little as {worst.Fault.Smallest.Amperes:0.00} A: {output.Output.Protection} {worst.Fault.Opening}{FaultRuleText.Undeclared(worst.Fault)}. The conductors on the way {FaultRuleText.Withstand(worst.Fault)}."),
            worst.Fault.Smallest);

    // A device that is asked for more than its rating is another rule's; so is one that lasts for a known time.
    private static bool DoesNotClear(ShortCircuit fault) => fault.Opening.Verdict is ClearingVerdict.DoesNotClear or ClearingVerdict.MayClear && fault.LetThrough is null;
}
