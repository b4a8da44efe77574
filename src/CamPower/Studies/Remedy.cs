using System.Collections.Generic;

namespace CamPower;

/// <summary>A change, or two together, that removes a finding, adds none and raises no severity: it was tried.</summary>
/// <remarks>Immutable. The changed site was assessed in every condition and checked against every rule.</remarks>
/// <example><code>Site repaired = found.Remedies[0].Site;</code></example>
public sealed class Remedy
{
    internal Remedy(IReadOnlyList<SiteChange> changes, Site site, IReadOnlyList<Finding> findings, PriceList prices)
    {
        Changes = changes;
        Site = site;
        Findings = findings;
        Unit = prices.Unit;
        foreach (SiteChange change in changes) Cost += change.Cost;
        CostText = prices.Text(Cost);
    }

    /// <summary>What to do: one change, or two where no single one does.</summary>
    public IReadOnlyList<SiteChange> Changes { get; }

    /// <summary>What all of it costs, in <see cref="Unit"/>.</summary>
    public double Cost { get; }

    /// <summary>What the cost is counted in, by the price list.</summary>
    public string Unit { get; }

    /// <summary>The site with the changes.</summary>
    public Site Site { get; }

    /// <summary>What the rules find on the changed site.</summary>
    public IReadOnlyList<Finding> Findings { get; }

    private string CostText { get; }

    /// <summary>The changes and their cost; never throws.</summary>
    public override string ToString() => $"{string.Join(" ", Changes)} ({CostText})";
}
