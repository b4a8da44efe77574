using System;
using System.Collections.Generic;
using System.Globalization;
using System.Linq;

namespace CamPower.Files;

/// <summary>What was found in many sites: by severity, by rule, and the worst sites.</summary>
/// <remarks>Grows with what is added, but in memory only by rules and up to the worst sites that it keeps. For one thread. The same
/// sites in the same order give the same summary.</remarks>
/// <example>
/// <code>
/// var summary = new FleetSummary(worst: 10);
/// foreach (CheckedSite site in Fleet.Check(documents, RuleSet.Standard)) summary.Add(site);
/// foreach (FleetRule rule in summary.Rules) Console.WriteLine(rule);
/// </code>
/// </example>
public sealed class FleetSummary
{
    private readonly int _most;

    private readonly List<CheckedSite> _worst = [];

    private readonly Dictionary<string, FleetRule> _rules = new(StringComparer.Ordinal);

    private readonly long[] _sites = new long[4];

    /// <summary>Makes an empty summary.</summary>
    /// <param name="worst">How many of the worst sites it keeps, from 0 to 10,000. Default: 100.</param>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="worst"/> is outside its range.</exception>
    public FleetSummary(int worst = 100)
    {
        if (worst is < 0 or > 10_000)
        {
            throw new ArgumentOutOfRangeException(
                nameof(worst), worst.ToString(CultureInfo.InvariantCulture), "worst must be from 0 to 10000.");
        }

        _most = worst;
    }

    /// <summary>How many sites were added, checked or not.</summary>
    public long Sites { get; private set; }

    /// <summary>How many of them were not checked. Nothing is known of them.</summary>
    public long NotChecked { get; private set; }

    /// <summary>How many checked sites have no finding at all.</summary>
    public long WithoutFindings { get; private set; }

    /// <summary>What each rule found, the most severe first, then that of the most sites, then by name.</summary>
    public IReadOnlyList<FleetRule> Rules =>
    [
        .. _rules.Values.OrderByDescending(r => r.Severity).ThenByDescending(r => r.Sites).ThenBy(r => r.Rule, StringComparer.Ordinal),
    ];

    /// <summary>The worst sites, worst first: by dangers, then failures, then cautions; alike ones in the order in which they came.
    /// Sites without any of these are not among them.</summary>
    public IReadOnlyList<CheckedSite> Worst => _worst.AsReadOnly();

    /// <summary>How many sites have findings of a severity and none that is more severe.</summary>
    /// <param name="severity">The severity.</param>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="severity"/> is none of the four.</exception>
    public long WorstAt(Severity severity) => Enum.IsDefined(severity)
        ? _sites[(int)severity]
        : throw new ArgumentOutOfRangeException(nameof(severity), severity, "severity must be one of the four.");

    /// <summary>Adds a site.</summary>
    /// <param name="site">The site.</param>
    /// <exception cref="ArgumentNullException"><paramref name="site"/> is null.</exception>
    public void Add(CheckedSite site)
    {
        ArgumentNullException.ThrowIfNull(site);
        Sites++;
        if (!site.IsChecked) NotChecked++;
        else if (site.Findings.Count == 0) WithoutFindings++;
        else AddFindings(site);
    }

    /// <summary>The counts in one line, in the invariant culture; never throws.</summary>
    public override string ToString() =>
        FormattableString.Invariant($"{Sites} {(Sites == 1 ? "site" : "sites")}: {WorstAt(Severity.Danger)} with danger, ")
        + FormattableString.Invariant($"{WorstAt(Severity.Failure)} with failures, {WorstAt(Severity.Caution)} with cautions, ")
        + FormattableString.Invariant($"{WorstAt(Severity.Note) + WithoutFindings} with notes at most, {NotChecked} not checked");

    private void AddFindings(CheckedSite site)
    {
        Severity most = site.Findings.Max(f => f.Severity);
        _sites[(int)most]++;
        foreach (IGrouping<string, Finding> found in site.Findings.GroupBy(f => f.Rule, StringComparer.Ordinal))
        {
            if (!_rules.TryGetValue(found.Key, out FleetRule? rule)) _rules.Add(found.Key, rule = new FleetRule(found.Key));
            rule.Add(found.Max(f => f.Severity), found.Count());
        }

        if (most > Severity.Note) Keep(site);
    }

    private void Keep(CheckedSite site)
    {
        if (_worst.Count == _most && (_most == 0 || CheckedSite.WorseFirst(_worst[^1], site) <= 0)) return;
        int place = _worst.Count;
        while (place > 0 && CheckedSite.WorseFirst(_worst[place - 1], site) > 0) place--;
        _worst.Insert(place, site);
        if (_worst.Count > _most) _worst.RemoveAt(_most);
    }
}
