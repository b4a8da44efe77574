using System.Collections.Generic;
using System.Linq;

namespace CamPower.Checks;

/// <summary>An output with no protective device, of which it is not certain that its conductors stand any short for ever.</summary>
/// <remarks>An adapter limits itself as a rule. Of one that does not declare how, <see cref="FaultsUnknownRule"/> speaks.</remarks>
public sealed class ProtectionMissingRule() : Rule("protection-missing", Severity.Danger,
    "An output is declared to have no protective device, and it is not certain that its conductors stand a short of any length.",
    "Protect the output by a fuse or a limit that the cable is chosen for.", Sources.OvercurrentProtection)
{
    /// <inheritdoc/>
    public override IEnumerable<Finding> Check(Evidence evidence) =>
        from output in Require.NotNull(evidence, nameof(evidence)).Faults.Outputs
        where ReferenceEquals(output.Output.Protection, ProtectiveDevice.None) && !(output.Box.IsAdapter && output.MissingForVerdict != FaultData.None)
        let worst = output.Shorts.FirstOrDefault(s => s.Fault.WithstandVerdict is not (WithstandVerdict.Stands or WithstandVerdict.NoConductor))
        where worst is not null
        select Find(Subject.Of(output.Box, output.Output),
            $"Nothing interrupts a short at {worst.Fault.Place}, and the conductors on the way {FaultRuleText.Withstand(worst.Fault)}.");
}
