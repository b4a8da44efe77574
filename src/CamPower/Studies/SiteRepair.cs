using System;
using System.Collections.Generic;
using System.Linq;

namespace CamPower;

/// <summary>A set of changes after which no Danger and no Failure is left on a site, as cheap as was found.</summary>
/// <remarks>Immutable. Cautions and notes may be left, and may be new: <see cref="Findings"/> has them.</remarks>
/// <example>
/// <code>
/// SiteRepair repair = site.CheapestRepair(RuleSet.Standard, PriceList.Neutral);
/// foreach (SiteChange change in repair.Changes) Console.WriteLine(change);
/// </code>
/// </example>
public sealed class SiteRepair
{
    private readonly PriceList _prices;

    internal SiteRepair(IReadOnlyList<SiteChange> changes, Site site, IReadOnlyList<Finding> findings, bool isComplete, PriceList prices)
    {
        Changes = changes;
        Site = site;
        Findings = findings;
        IsComplete = isComplete;
        Cost = changes.Sum(change => change.Cost);
        Left = [.. findings.Where(f => f.Severity >= Severity.Failure)];
        Unit = prices.Unit;
        _prices = prices;
    }

    /// <summary>What to do; empty where nothing needs to be done, or nothing helps.</summary>
    public IReadOnlyList<SiteChange> Changes { get; }

    /// <summary>What all of it costs, in <see cref="Unit"/>.</summary>
    public double Cost { get; }

    /// <summary>What the cost is counted in, by the price list.</summary>
    public string Unit { get; }

    /// <summary>The site with the changes.</summary>
    public Site Site { get; }

    /// <summary>What the rules find on the changed site.</summary>
    public IReadOnlyList<Finding> Findings { get; }

    /// <summary>Those of severity Danger or Failure that are left, because no change in the price list removes them.</summary>
    public IReadOnlyList<Finding> Left { get; }

    /// <summary>Whether every cheaper set was tried in which each change helps a finding; false where work ended first.</summary>
    public bool IsComplete { get; }

    /// <summary>The changes and their cost, in words; never throws.</summary>
    public override string ToString()
    {
        string left = Left.Count == 0
            ? string.Empty
            : $" Still to do by hand: {string.Join("; ", Left.Select(f => $"{f.About}: {f.Title}"))}.";
        return Changes.Count == 0
            ? $"{(Left.Count == 0 ? "No change is needed." : "No change in the price list removes what is left.")}{left}"
            : $"{string.Join(" ", Changes)} ({_prices.Text(Cost)}{(IsComplete ? "" : ", a cheaper set may exist")}){left}";
    }
}
