using System.Collections.Generic;
using System.Linq;

namespace CamPower.Checks;

/// <summary>An output with no protective device, of which it is not certain that its conductors withstand any short continuously.</summary>
/// <remarks>A source that cannot exceed their ampacity protects them (IEC 60364-4-43, 436). An adapter limits itself as a rule: of one that does not state how, <see cref="FaultsUnknownRule"/> speaks.</remarks>
public sealed class ProtectionMissingRule() : Rule("protection-missing", Severity.Danger,
    "An output has no protective device, and it is not certain that its conductors withstand a short of any length.",
    "Protect the output by a fuse or a limit that the cable is chosen for.", Sources.OvercurrentProtection)
{
    /// <inheritdoc/>
    public override IEnumerable<Finding> Check(Evidence evidence) =>
        from output in Require.NotNull(evidence, nameof(evidence)).Faults
        where ReferenceEquals(output.Output.Protection, ProtectiveDevice.None) && !(output.Box.IsAdapter && output.MissingForVerdict != FaultData.None)
        let worst = output.Shorts.FirstOrDefault(s => s.WithstandVerdict is not (WithstandVerdict.Stands or WithstandVerdict.NoConductor))
        where worst is not null
        select Find(Subject.Of(output.Box, output.Output),
            $"Nothing interrupts a short at {worst.Place}. The conductors {FaultRuleText.Withstand(worst)}.");
}
