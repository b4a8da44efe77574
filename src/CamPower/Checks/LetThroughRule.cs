using System.Collections.Generic;
using System.Linq;
using static System.FormattableString;

namespace CamPower.Checks;

/// <summary>A short whose let-through I²t, or lasting current, takes a conductor past the limit of its insulation.</summary>
/// <remarks>At the origin of each piece of cable the current is largest: a short just behind a place heats the cable that begins there.</remarks>
public sealed class LetThroughRule() : Rule("conductor-cannot-stand-let-through", Severity.Danger,
    "Before the protective device has operated, a short may take a conductor past the limit of its insulation.",
    "Use a smaller or faster protective device, or larger conductors.", Sources.AdiabaticWithstand)
{
    /// <inheritdoc/>
    public override IEnumerable<Finding> Check(Evidence evidence) =>
        from output in Require.NotNull(evidence, nameof(evidence)).Faults
        where output.Output.Protection is not null && !ReferenceEquals(output.Output.Protection, ProtectiveDevice.None)
        let worst = output.Shorts.FirstOrDefault(s => s.WithstandVerdict == WithstandVerdict.DoesNotStand)
        where worst is not null
        select Find(Subject.Of(output.Box, output.Output), Invariant(
            $"A short at {worst.Place} draws up to {worst.Largest!.Value.Amperes:0.0} A: {output.Output.Protection} {worst.Opening}. By then a conductor may be past the limit of its insulation."),
            remedy: RemedyOf(worst));

    private static string? RemedyOf(ShortCircuit fault) => fault is { LetThrough: JouleIntegral most, Withstand: not null }
        ? Invariant($"Use a smaller or faster protective device, or conductors that withstand {most.AmpereSquaredSeconds:G3} A²·s.")
        : null;
}
