using System.Collections.Generic;
using System.Linq;
using CamPower.Faults;

namespace CamPower.Checks;

/// <summary>A box of which too little is declared to say what a short does.</summary>
public sealed class FaultsUnknownRule() : Rule("faults-unknown", Severity.Caution,
    "Nobody declares what protects an output, what its supply does in overload, or what the protective device does at the temperature of the box: no rule on faults can speak of it.",
    "Take the protective device and the overload behaviour from the data sheets; where a sheet says nothing, ask its maker.", Sources.OvercurrentProtection)
{
    /// <inheritdoc/>
    public override bool IsAboutWhatIsNotStated => true;

    /// <inheritdoc/>
    public override IEnumerable<Finding> Check(Evidence evidence) =>
        from box in Require.NotNull(evidence, nameof(evidence)).Faults.Outputs.GroupBy(output => output.Box)
        let unknown = box.Where(output => output.MissingForVerdict != FaultData.None).ToList()
        where unknown.Count > 0
        let missing = unknown.Aggregate(FaultData.None, (all, output) => all | output.MissingForVerdict)
        select Find(unknown.Count == 1 ? Subject.Of(box.Key, unknown[0].Output) : Subject.Of(box.Key), $"What a short does there is not known: nobody declares {FaultDataText.Words(missing)}.");
}
