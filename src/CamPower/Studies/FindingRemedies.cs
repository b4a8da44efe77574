using System.Collections.Generic;
using System.Linq;

namespace CamPower;

/// <summary>A finding and what removes it, the cheapest first; none is an answer.</summary>
/// <remarks>Immutable.</remarks>
/// <example>
/// <code>
/// foreach (FindingRemedies found in site.FindRemedies(RuleSet.Standard, PriceList.Neutral)) Console.WriteLine(found);
/// </code>
/// </example>
public sealed class FindingRemedies
{
    internal FindingRemedies(Finding finding, IReadOnlyList<Remedy> remedies, bool isComplete)
    {
        Finding = finding;
        Remedies = remedies;
        IsComplete = isComplete;
    }

    /// <summary>The finding.</summary>
    public Finding Finding { get; }

    /// <summary>What removes it, the cheapest first; empty where nothing that is sold helps.</summary>
    public IReadOnlyList<Remedy> Remedies { get; }

    /// <summary>Whether all single changes, and all pairs where no single one helps, were tried; false where the limit of work came
    /// first.</summary>
    public bool IsComplete { get; }

    /// <summary>The cheapest remedy in words, or that there is none.</summary>
    public string Summary => Remedies.FirstOrDefault()?.ToString()
        ?? (IsComplete ? "Nothing in the price list helps." : "Nothing was found within the limit of work.");

    /// <summary>The finding and its cheapest remedy, or that there is none; never throws.</summary>
    public override string ToString() => $"{Finding.About}: {Finding.Rule}: {Summary}";
}
