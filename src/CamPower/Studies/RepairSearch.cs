using System;
using System.Collections.Generic;
using System.Linq;
using System.Threading;

namespace CamPower.Studies;

/// <summary>The cheapest set of changes after which no Danger and no Failure is left: finding by finding first, then every cheaper set as
/// far as the limit of work goes.</summary>
internal sealed class RepairSearch
{
    private const int MostTrials = 400;

    private readonly PriceList _prices;
    private readonly CancellationToken _cancellationToken;
    private readonly HashSet<string> _helpless = new(StringComparer.Ordinal);

    private RepairSearch(PriceList prices, CancellationToken cancellationToken)
    {
        _prices = prices;
        _cancellationToken = cancellationToken;
    }

    internal static SiteRepair Of(Site site, RuleSet rules, PriceList prices, CancellationToken cancellationToken)
    {
        var search = new RepairSearch(prices, cancellationToken);
        var start = new Trial(site, rules, [], cancellationToken);
        Trial found = search.WithoutIdleChanges(start, search.OneByOne(start));
        Trial? cheaper = search.Cheaper(start, found.Cost, out bool isComplete);
        Trial best = cheaper ?? found;
        return new SiteRepair(best.Changes, best.Site, best.Findings, isComplete, prices);
    }

    private Trial OneByOne(Trial start)
    {
        Trial trial = start;
        while (Open(trial) is Finding finding)
        {
            Trial? better = new RemedySearch(trial, _prices).Cheapest(finding, Severity.Failure);
            if (better is null) _helpless.Add(KeyOf(trial, finding));
            else trial = better;
        }

        return trial;
    }

    // A change that a later one made needless goes.
    private Trial WithoutIdleChanges(Trial start, Trial found)
    {
        foreach (SiteChange idle in found.Changes.Where(c => c.Twin is null).OrderByDescending(c => c.Cost))
        {
            Trial without = found.Changes.Where(c => !ReferenceEquals(c, idle)).Aggregate(start, (trial, change) => trial.With(change));
            if (Open(without) is null) found = without;
        }

        return found;
    }

    // Sets in the order of their cost, each with one more change against its worst finding: the first that has none is the cheapest.
    private Trial? Cheaper(Trial start, double cost, out bool isComplete)
    {
        var waiting = new SortedDictionary<(double Cost, int Number), Trial> { [(0, 0)] = start };
        var known = new HashSet<string>(StringComparer.Ordinal);
        var idle = new HashSet<string>(StringComparer.Ordinal);
        int trials = 0;
        isComplete = true;
        while (waiting.Count > 0)
        {
            KeyValuePair<(double, int), Trial> cheapest = waiting.First();
            waiting.Remove(cheapest.Key);
            Trial trial = cheapest.Value;
            if (Open(trial) is not Finding finding) return trial;
            foreach (SiteChange change in ChangeOptions.For(trial, finding, _prices).SelectMany(row => row))
            {
                // A saving that rounding could make is none.
                if (trial.Cost + change.Cost >= cost * (1 - 1e-9) || !RemedySearch.GoesWith(change, trial.Changes)) continue;
                string against = $"{KeyOf(trial, finding)}: {change.Text}";
                if (idle.Contains(against)) continue;
                Trial next = trial.With(change);
                if (!known.Add(KeyOf(next))) continue;
                isComplete = ++trials <= MostTrials;
                if (!isComplete) return null;
                if (Helps(next, trial, finding)) waiting.Add((next.Cost, trials), next);
                else idle.Add(against);
            }
        }

        return null;
    }

    // What neither removes a finding nor brings it nearer to its limit is not tried against it again.
    private static bool Helps(Trial next, Trial trial, Finding finding) =>
        next.IsWithout(finding, trial) || RemedySearch.Nearer(next, trial, finding) is not null;

    private Finding? Open(Trial trial)
    {
        _cancellationToken.ThrowIfCancellationRequested();
        return trial.Findings.FirstOrDefault(f => f.Severity >= Severity.Failure && !_helpless.Contains(KeyOf(trial, f)));
    }

    private static string KeyOf(Trial trial, Finding finding) => $"{finding.Rule} {trial.Places.Of(finding.About)[0]}";

    private static string KeyOf(Trial trial) => string.Join(" ", trial.Changes.Select(c => c.Text).OrderBy(t => t, StringComparer.Ordinal));
}
