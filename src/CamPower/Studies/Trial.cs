using System;
using System.Collections.Generic;
using System.Linq;
using System.Threading;
using CamPower.Assessment;
using UnitsNet;

namespace CamPower.Studies;

/// <summary>A site with some changes, solved and checked when it is asked.</summary>
internal sealed class Trial
{
    // What a change moves by a hundredth or two is no new harm.
    private const double FartherOut = 1.05;

    private readonly RuleSet _rules;
    private readonly Lazy<Evidence> _evidence;
    private readonly Lazy<IReadOnlyList<Finding>> _findings;
    private readonly Lazy<FindingPlaces> _places;
    private readonly Dictionary<string, TrimWindow> _windows = new(StringComparer.Ordinal);
    private readonly CancellationToken _cancellationToken;

    internal Trial(Site site, RuleSet rules, IReadOnlyList<SiteChange> changes, CancellationToken cancellationToken)
    {
        Site = Converters.Unsolved(site);
        Changes = changes;
        Cost = changes.Sum(change => change.Cost);
        _rules = rules;
        _cancellationToken = cancellationToken;
        _evidence = new Lazy<Evidence>(() => new Evidence(Site.Assess(cancellationToken), cancellationToken));
        _findings = new Lazy<IReadOnlyList<Finding>>(() => rules.Check(_evidence.Value));
        _places = new Lazy<FindingPlaces>(() => new FindingPlaces(Site, changes.Select(c => c.Twin).OfType<(string, string)>()));
    }

    internal Site Site { get; }

    /// <summary>The changes, in the order in which they were made.</summary>
    internal IReadOnlyList<SiteChange> Changes { get; }

    internal double Cost { get; }

    internal IReadOnlyList<Finding> Findings => _findings.Value;

    internal SiteAssessment Assessment => _evidence.Value.Assessment;

    internal FindingPlaces Places => _places.Value;

    internal TrimWindow WindowOf(DistributionBox box)
    {
        if (!_windows.TryGetValue(box.Name, out TrimWindow? window))
        {
            _windows.Add(box.Name, window = Site.TrimWindowOf(box.Name, _cancellationToken));
        }

        return window;
    }

    /// <summary>Whether nothing is left of a finding of the site as it was. Its rule is asked first: that takes far less.</summary>
    internal bool IsWithout(Finding finding, Trial before)
    {
        string place = before.Places.Of(finding.About)[0];
        return !StillThere(OfRule(finding.Rule)) && !StillThere(Findings);

        bool StillThere(IEnumerable<Finding> found) =>
            found.Any(f => string.Equals(f.Rule, finding.Rule, StringComparison.Ordinal)
                && Places.Of(f.About).Contains(place, StringComparer.Ordinal));
    }

    /// <summary>The findings that it has and the site before had not, and those that are more severe.</summary>
    internal IReadOnlyList<Finding> AddedSince(Trial before)
    {
        ILookup<(string, string), Finding> had = before.Findings.ToLookup(f => (f.Rule, before.Places.Of(f.About)[0]));
        return [.. Findings.GroupBy(f => (f.Rule, Place: Places.Of(f.About)[0])).Where(IsNew).SelectMany(alike => alike)];

        bool IsNew(IGrouping<(string Rule, string Place), Finding> alike)
        {
            Severity worst = alike.Max(f => f.Severity);
            Severity[] now = [.. alike.Select(f => f.Severity).OrderByDescending(s => s)];
            Severity[] then = [.. had[alike.Key].Select(f => f.Severity).OrderByDescending(s => s)];
            bool isAsBefore = now.Length <= then.Length && now.Zip(then, (a, b) => a <= b).All(isNoWorse => isNoWorse);
            if (isAsBefore) return IsFartherOut(alike, had[alike.Key]);
            List<Finding> ofWhole = [.. Places.Of(alike.First().About).Skip(1).SelectMany(whole => had[(alike.Key.Rule, whole)])];
            return !ofWhole.Exists(f => f.Severity >= worst) || IsFartherOut(alike, ofWhole);
        }
    }

    // A finding that was there already may hide that a part is now far worse off.
    private static bool IsFartherOut(IEnumerable<Finding> now, IEnumerable<Finding> then) =>
        now.Max(ExcessOf) > then.Select(ExcessOf).DefaultIfEmpty(0).Max() * FartherOut;

    // How far what was found is beyond what is allowed, as a ratio; 0 where that is no ratio of amounts.
    private static double ExcessOf(Finding finding)
    {
        if (finding.Measured is not IQuantity measured || finding.Limit is not IQuantity limit || measured is Temperature) return 0;
        double found = (double)measured.Value, allowed = limit.As(measured.Unit);
        return found > 0 && allowed > 0 ? Math.Max(found / allowed, allowed / found) : 0;
    }

    /// <summary>The same with one more change.</summary>
    internal Trial With(SiteChange change) => new(change.ApplyTo(Site), _rules, [.. Changes, change], _cancellationToken);

    private IEnumerable<Finding> OfRule(string id)
    {
        Rule? rule = _rules.Rules.FirstOrDefault(r => string.Equals(r.Id, id, StringComparison.Ordinal));
        return rule?.Check(_evidence.Value) ?? [];
    }
}
