using System.Collections.Generic;
using System.Linq;
using CamPower.Mains;

namespace CamPower.Checks;

/// <summary>A receptacle whose load is not known.</summary>
public sealed class ReceptacleLoadUnknownRule() : Rule("receptacle-load-unknown", Severity.Note,
    "What a box takes from its receptacle is not known: its supply does not declare its efficiency and power factor up to its load.",
    "Take both from the data sheet of the supply, or measure the current at the receptacle.", Sources.PowerFactor)
{
    /// <inheritdoc/>
    public override bool IsAboutWhatIsNotStated => true;

    /// <inheritdoc/>
    public override IEnumerable<Finding> Check(Evidence evidence) =>
        from receptacle in Require.NotNull(evidence, nameof(evidence)).Receptacles
        let unknown = receptacle.InConditions.FirstOrDefault(c => !c.IsKnown)
        where unknown is not null
        select Find(Subject.Of(receptacle.Receptacle), $"{string.Join("; ", unknown.Draws.Where(d => d.Amperes is null))}.", condition: unknown.Condition);
}
