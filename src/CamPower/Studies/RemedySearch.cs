using System;
using System.Collections.Generic;
using System.Linq;
using System.Threading;
using UnitsNet;

namespace CamPower.Studies;

/// <summary>Tries changes to a site against its findings: each is a full assessment and check of the changed site.</summary>
internal sealed class RemedySearch
{
    private const int MostRemedies = 5, TrialsForPairs = 80;

    // What rounding alone brings nearer is not nearer.
    private const double LeastGain = 1e-6;

    private readonly PriceList _prices;
    private readonly Trial _site;
    private readonly Dictionary<string, Trial> _singles = new(StringComparer.Ordinal);

    internal RemedySearch(Trial site, PriceList prices)
    {
        _site = site;
        _prices = prices;
    }

    internal static IReadOnlyList<FindingRemedies> All(Site site, RuleSet rules, PriceList prices, CancellationToken cancellationToken)
    {
        var search = new RemedySearch(new Trial(site, rules, [], cancellationToken), prices);
        return Array.AsReadOnly([.. search._site.Findings.Where(IsForAChange).Select(search.For)]);
    }

    /// <summary>What can be tried against: something with a number, or that must be corrected. What is not stated is stated, not
    /// changed.</summary>
    private static bool IsForAChange(Finding finding) =>
        !finding.IsNotStated && (finding.Measured is not null || finding.Severity >= Severity.Failure);

    /// <summary>The cheapest trial that removes a finding and adds none of a severity or more: a single change, else two.</summary>
    internal Trial? Cheapest(Finding finding, Severity noneAddedFrom)
    {
        Trial? single = Changes(_site, finding).OrderBy(change => change.Cost).Select(Single)
            .FirstOrDefault(trial => Helps(trial, finding, noneAddedFrom));
        return single ?? Pairs(finding, noneAddedFrom, out _);
    }

    private FindingRemedies For(Finding finding)
    {
        bool isComplete = true;
        List<Trial> helping = [.. ChangeOptions.For(_site, finding, _prices)
            .Select(row => row.Select(Single).FirstOrDefault(trial => Helps(trial, finding, Severity.Note))).OfType<Trial>()];
        if (helping.Count == 0 && Pairs(finding, Severity.Note, out isComplete) is Trial pair) helping.Add(pair);
        return new FindingRemedies(finding, Array.AsReadOnly([.. helping.OrderBy(trial => trial.Cost).Take(MostRemedies)
            .Select(trial => new Remedy(trial.Changes, trial.Site, trial.Findings, _prices))]), isComplete);
    }

    private bool Helps(Trial trial, Finding finding, Severity noneAddedFrom) =>
        trial.IsWithout(finding, _site) && !trial.AddedSince(_site).Any(f => f.Severity >= noneAddedFrom);

    // The first of two must bring the finding nearer to its limit, or remove it at the price of another; the second is one against what is
    // left.
    private Trial? Pairs(Finding finding, Severity noneAddedFrom, out bool isComplete)
    {
        var pairs = new List<(double Cost, Trial First, SiteChange Second)>();
        foreach (SiteChange change in Changes(_site, finding))
        {
            Trial first = Single(change);
            if (LeftAfter(first, finding, noneAddedFrom) is not Finding left) continue;
            pairs.AddRange(Changes(first, left).Where(second => GoesWith(second, [change]))
                .Select(second => (first.Cost + second.Cost, first, second)));
        }

        isComplete = pairs.Count <= TrialsForPairs;
        return pairs.OrderBy(pair => pair.Cost).Take(TrialsForPairs).Select(pair => pair.First.With(pair.Second))
            .FirstOrDefault(trial => Helps(trial, finding, noneAddedFrom));
    }

    private Finding? LeftAfter(Trial first, Finding finding, Severity noneAddedFrom) => first.IsWithout(finding, _site)
        ? first.AddedSince(_site).FirstOrDefault(f => f.Severity >= noneAddedFrom)
        : Nearer(first, _site, finding);

    /// <summary>What is left of a finding after a change that brings it nearer to its limit; null where the change does not.</summary>
    internal static Finding? Nearer(Trial after, Trial before, Finding finding)
    {
        string place = before.Places.Of(finding.About)[0];
        Finding? left = after.Findings.FirstOrDefault(f =>
            string.Equals(f.Rule, finding.Rule, StringComparison.Ordinal)
            && after.Places.Of(f.About).Contains(place, StringComparer.Ordinal));
        return left is not null && ExcessOf(left) < ExcessOf(finding) * (1 - LeastGain) ? left : null;
    }

    /// <summary>Whether a change and those made before it are of different parts.</summary>
    internal static bool GoesWith(SiteChange change, IEnumerable<SiteChange> made) =>
        !made.Any(before => before.Parts.Intersect(change.Parts, StringComparer.Ordinal).Any());

    private IEnumerable<SiteChange> Changes(Trial trial, Finding finding) =>
        ChangeOptions.For(trial, finding, _prices).SelectMany(row => row);

    private Trial Single(SiteChange change)
    {
        if (!_singles.TryGetValue(change.Text, out Trial? trial)) _singles.Add(change.Text, trial = _site.With(change));
        return trial;
    }

    // How far a value is beyond its limit.
    private static double ExcessOf(Finding finding) => finding is { Measured: IQuantity found, Limit: IQuantity limit }
        ? Math.Abs(found.As(limit.Unit) - (double)limit.Value)
        : double.PositiveInfinity;
}
