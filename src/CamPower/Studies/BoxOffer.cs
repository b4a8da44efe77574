using System;
using System.Collections.Generic;
using System.Linq;
using System.Threading;
using CamPower.Assessment;
using CamPower.Sites;

namespace CamPower.Studies;

/// <summary>A box of a catalog that may feed a part of what a box of a site feeds, with that part solved from its supply.</summary>
internal sealed class BoxOffer
{
    private readonly BoxTrial _trial;
    private readonly Site _site;
    private readonly DistributionBox _inPlace;
    private readonly AirOfBoxes[] _air;
    private readonly FeedGroup[] _groups;

    // Each by itself.
    private readonly SolvedOutput[][] _parts;

    internal BoxOffer(BoxTrial trial, Site site, DistributionBox box, DistributionBox candidate)
    {
        _trial = trial;
        _site = site.With(trial.InItsPlace(candidate));
        Box = trial.Placed(candidate);
        _inPlace = _site.BoxNamed(box.Name, nameof(box));
        _air = AirOfBoxes.AroundBoxes(site);
        _groups = [.. PartsOf(_site, box.Name)];
        _parts = Array.ConvertAll(_groups, part => OutputsIn(InConditions(part)).ToArray());
    }

    /// <summary>The box, its supply set.</summary>
    internal DistributionBox Box { get; }

    /// <summary>Number of parts.</summary>
    internal int Count => _parts.Length;

    /// <summary>How many outputs of the site's box each part has.</summary>
    internal int OutputsOf(int part) => _parts[part].Length;

    /// <summary>What hangs together behind a box and cannot be divided: most often one output.</summary>
    internal static IEnumerable<FeedGroup> PartsOf(Site site, string boxName) =>
        site.Feeds.Where(group => group.Feeds.Any(feed => string.Equals(feed.Box.Name, boxName, StringComparison.Ordinal)));

    /// <summary>Whether it will do for some parts together.</summary>
    internal bool CanFeed(IEnumerable<int> parts) => !_trial.ShortfallsOf(Box, Feeding(parts)).Any();

    /// <summary>Whether it will do for some parts together, or for them with others: more load warms a box in which its supply is too cold
    /// to run, and is worse in every other way.</summary>
    internal bool MayFeed(IEnumerable<int> parts)
    {
        BoxAssessment solved = Feeding(parts);
        return _trial.ShortfallsOf(Box, solved)
            .All(shortfall => shortfall.Constraint == BoxConstraint.Rating && solved.Worst.ColdestAir.IsViolated);
    }

    /// <summary>The box as it feeds some parts, in every condition; the outputs are those of the site's box.</summary>
    internal BoxAssessment Feeding(IEnumerable<int> parts) =>
        SiteSolver.AssessBox(_site, Box, [.. Together([.. parts]).OrderBy(o => o.Output.Number)]);

    // What is on a transformer together decides what each of it takes.
    private IEnumerable<SolvedOutput> Together(int[] parts)
    {
        if (_inPlace.Supply.Output is not AcOutput) return parts.SelectMany(part => _parts[part]);
        GroupInCondition[][] fed = Array.ConvertAll(parts, part => InConditions(_groups[part]));
        SiteSolver.SolveAlternating(_inPlace, fed, CancellationToken.None);
        return fed.SelectMany(OutputsIn);
    }

    private GroupInCondition[] InConditions(FeedGroup part) =>
        SiteSolver.InConditions(part, _site, _air, _ => RailVolts.Lowest, _ => RailVolts.Highest);

    private IEnumerable<SolvedOutput> OutputsIn(GroupInCondition[] part) =>
        SolvedOutput.AllOf(part).Where(o => ReferenceEquals(o.Box, _inPlace));

    /// <summary>What a part takes at least: with every motor at rest. [A]</summary>
    internal double LeastAmperes(int part, int condition) => _parts[part].Sum(o => o.AmperesAtRestIn(condition));

    /// <summary>Whether two parts are the same in every number.</summary>
    internal bool AreAlike(int a, int b) => _parts[a].Length == _parts[b].Length
        && _parts[a].Zip(_parts[b], (one, other) => one.IsLike(other)).All(alike => alike);

    /// <summary>The most that its supply may deliver, however much on it warms its enclosure. [A]</summary>
    internal double MostAmperes(int condition)
    {
        BoxInCondition unloaded = SiteSolver.AssessBox(_site, Box, []).InConditions[condition];
        return Box.Supply.MostAmperesFrom(unloaded.SupplyCelsius, unloaded.Condition.LineVolts, _site.AltitudeMeters);
    }
}
