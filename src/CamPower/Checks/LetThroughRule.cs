using System.Collections.Generic;
using System.Linq;
using static System.FormattableString;

namespace CamPower.Checks;

/// <summary>A short whose let-through, or lasting current, the conductors on the way may not stand.</summary>
public sealed class LetThroughRule() : Rule("conductor-cannot-stand-let-through", Severity.Danger,
    "Before the protective device has cleared a short, a conductor on the way may reach the limit of its insulation.",
    "Use a smaller or faster device, or a thicker cable.", Sources.AdiabaticWithstand)
{
    /// <inheritdoc/>
    public override IEnumerable<Finding> Check(Evidence evidence) =>
        from output in Require.NotNull(evidence, nameof(evidence)).Faults.Outputs
        where output.Output.Protection is not null && !ReferenceEquals(output.Output.Protection, ProtectiveDevice.None)
        let worst = output.Shorts.FirstOrDefault(s => s.Fault.WithstandVerdict == WithstandVerdict.DoesNotStand)
        where worst is not null
        select Find(Subject.Of(output.Box, output.Output), Invariant(
            $"A short at {worst.Fault.Place} draws up to {worst.Fault.Largest!.Value.Amperes:0.0} A; {output.Output.Protection} {worst.Fault.Opening}, and by then a conductor on the way may have reached the limit of its insulation."));
}
