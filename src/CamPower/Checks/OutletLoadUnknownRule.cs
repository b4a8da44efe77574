using System.Collections.Generic;
using System.Linq;
using CamPower.Mains;

namespace CamPower.Checks;

/// <summary>An outlet whose load is not known.</summary>
public sealed class OutletLoadUnknownRule() : Rule("outlet-load-unknown", Severity.Note,
    "What a box takes from its outlet is not known: its supply does not declare its efficiency and power factor up to its load.",
    "Take both from the data sheet of the supply, or measure the current at the outlet.", Sources.PowerFactor)
{
    /// <inheritdoc/>
    public override bool IsAboutWhatIsNotStated => true;

    /// <inheritdoc/>
    public override IEnumerable<Finding> Check(Evidence evidence) =>
        from outlet in Require.NotNull(evidence, nameof(evidence)).Outlets
        let unknown = outlet.InConditions.FirstOrDefault(c => !c.IsKnown)
        where unknown is not null
        select Find(Subject.Of(outlet.Outlet), $"{string.Join("; ", unknown.Draws.Where(d => d.Amperes is null))}.", condition: unknown.Condition);
}
