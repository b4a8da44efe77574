using System;
using System.Collections.Generic;
using System.Linq;
using CamPower.Sites;

namespace CamPower.Faults;

/// <summary>Where what an output feeds may be shorted: at its terminals, at every joint, at every junction, over the real way.</summary>
/// <remarks>
/// A run that shares another's negative is shorted at its end alone: along it there is no second conductor to meet. Its current
/// goes back by that other way. What else flows there, and what a video shield carries, is left out: less resistance than
/// there is is never taken for granted.
/// </remarks>
internal sealed class FeedPlaces
{
    private readonly Dictionary<string, SiteRun> _runs;
    private readonly Dictionary<string, FaultLoop> _ends = new(StringComparer.Ordinal);
    private readonly FaultConditions _conditions;

    internal FeedPlaces(FeedGroup group, FaultConditions conditions)
    {
        _runs = group.Feeds.SelectMany(feed => feed.Runs).ToDictionary(run => run.To, StringComparer.Ordinal);
        _conditions = conditions;
    }

    /// <summary>The places of one of the group's outputs, each with the run that it is on; none for the terminals.</summary>
    internal IEnumerable<(FaultLoop Loop, SiteRun? Run, bool IsEnd)> Of(OutputFeed feed)
    {
        yield return (FaultLoop.Terminals, null, false);
        foreach (SiteRun run in feed.Runs)
        {
            if (run.ReturnAt is null)
            {
                foreach (FaultLoop loop in FaultPlaces.Joints(Before(run), run.Run, run.Laying, _conditions))
                {
                    yield return (loop.EndingAt($"{loop.Place} on the way to {run.To}"), run, false);
                }
            }

            yield return (End(run.To), run, true);
        }
    }

    private FaultLoop Before(SiteRun run) => run.From.JunctionName is string junction ? End(junction) : FaultLoop.Terminals;

    private FaultLoop End(string junction)
    {
        if (_ends.TryGetValue(junction, out FaultLoop? known)) return known;
        SiteRun run = _runs[junction];
        FaultLoop end = run.ReturnAt is string shared
            ? Before(run).Then(run.Run, run.Laying, _conditions, End(shared).Back)
            : FaultPlaces.End(Before(run), run.Run, run.Laying, _conditions);
        return _ends[junction] = end.EndingAt(junction);
    }
}
