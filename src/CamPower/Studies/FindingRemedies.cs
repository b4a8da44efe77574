using System.Collections.Generic;

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

    /// <summary>The cheapest remedy in words; where there is none, that, and what the rule says to do.</summary>
    public string Summary => Remedies.Count > 0
        ? Remedies[0].ToString()
        : $"{(IsComplete ? "No priced change removes this." : "The search stopped at its limit and found nothing.")} {Finding.Remedy}";

    /// <summary>The finding and its cheapest remedy, or that there is none; never throws.</summary>
    public override string ToString() => $"{Finding.About}: {Finding.Title}: {Summary}";
}
