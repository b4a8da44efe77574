using System;
using System.Collections.Generic;
using System.Linq;
using System.Threading;

namespace CamPower.Studies;

/// <summary>A site with some changes, solved and checked when it is asked.</summary>
internal sealed class Trial
{
    private readonly RuleSet _rules;
    private readonly Lazy<Evidence> _evidence;
    private readonly Lazy<IReadOnlyList<Finding>> _findings;
    private readonly Lazy<FindingPlaces> _places;
    private readonly Dictionary<string, TrimWindow> _windows = new(StringComparer.Ordinal);
    private readonly CancellationToken _cancellationToken;

    internal Trial(Site site, RuleSet rules, IReadOnlyList<SiteChange> changes, CancellationToken cancellationToken)
    {
        Site = site;
        Changes = changes;
        Cost = changes.Sum(change => change.Cost);
        _rules = rules;
        _cancellationToken = cancellationToken;
        _evidence = new Lazy<Evidence>(() => new Evidence(site.Assess(cancellationToken), cancellationToken));
        _findings = new Lazy<IReadOnlyList<Finding>>(() => rules.Check(_evidence.Value));
        _places = new Lazy<FindingPlaces>(() => new FindingPlaces(site, changes.Select(c => c.Twin).OfType<(string, string)>()));
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
            found.Any(f => string.Equals(f.Rule, finding.Rule, StringComparison.Ordinal) && Places.Of(f.About).Contains(place));
    }

    /// <summary>The findings that it has and the site before had not, and those that are more severe.</summary>
    internal IReadOnlyList<Finding> AddedSince(Trial before)
    {
        ILookup<(string, string), Severity> had = before.Findings.ToLookup(f => (f.Rule, before.Places.Of(f.About)[0]), f => f.Severity);
        return [.. Findings.GroupBy(f => (f.Rule, Place: Places.Of(f.About)[0])).Where(IsNew).SelectMany(alike => alike)];

        bool IsNew(IGrouping<(string Rule, string Place), Finding> alike)
        {
            Severity worst = alike.Max(f => f.Severity);
            Severity[] now = [.. alike.Select(f => f.Severity).OrderByDescending(s => s)];
            Severity[] then = [.. had[alike.Key].OrderByDescending(s => s)];
            bool isAsBefore = now.Length <= then.Length && now.Zip(then, (a, b) => a <= b).All(isNoWorse => isNoWorse);
            return !isAsBefore && !Places.Of(alike.First().About).Skip(1).Any(whole => had[(alike.Key.Rule, whole)].Any(s => s >= worst));
        }
    }

    /// <summary>The same with one more change.</summary>
    internal Trial With(SiteChange change) => new(change.ApplyTo(Site), _rules, [.. Changes, change], _cancellationToken);

    private IEnumerable<Finding> OfRule(string id)
    {
        Rule? rule = _rules.Rules.FirstOrDefault(r => string.Equals(r.Id, id, StringComparison.Ordinal));
        return rule?.Check(_evidence.Value) ?? [];
    }
}
