using System;
using System.Collections.Generic;
using System.Linq;
using CamPower.Sites;

namespace CamPower.Faults;

/// <summary>Where what an output feeds may be shorted: at its terminals, at every joint and junction, wherever a piece of cable begins or
/// ends, over the real way.</summary>
/// <remarks>
/// A run that shares another's negative is shorted at its end alone: along it there is no second conductor to meet. Its current
/// goes back by that other way. What else flows there, and what a video shield carries, is left out: the loop never has less
/// resistance than is counted.
/// </remarks>
internal sealed class FeedPlaces
{
    private readonly Dictionary<string, SiteRun> _runs;
    private readonly ILookup<string, SiteRun> _after;
    private readonly Dictionary<string, FaultLoop> _ends = new(StringComparer.Ordinal);
    private readonly Dictionary<string, RunLoops> _loops = new(StringComparer.Ordinal);
    private readonly IReadOnlyList<FaultAir> _air;
    private readonly FaultLoop _terminals;

    internal FeedPlaces(FeedGroup group, IReadOnlyList<FaultAir> air)
    {
        _runs = group.Feeds.SelectMany(feed => feed.Runs).ToDictionary(run => run.To, StringComparer.Ordinal);
        _after = _runs.Values.Where(run => run.From.JunctionName is not null)
            .ToLookup(run => run.From.JunctionName!, StringComparer.Ordinal);
        _air = air;
        _terminals = FaultLoop.AtTerminals(air.Count);
    }

    /// <summary>The places of one of the group's outputs, each with the run that it is on; none for the terminals.</summary>
    internal IEnumerable<(FaultLoop Loop, SiteRun? Run, bool IsEnd)> Of(OutputFeed feed)
    {
        yield return (_terminals.EndingAt(_terminals.Place, FirstPieces(feed.Runs.Where(run => run.From.JunctionName is null))), null,
            false);
        foreach (SiteRun run in feed.Runs)
        {
            if (run.ReturnAt is null)
            {
                foreach (FaultLoop loop in Along(run).Within())
                {
                    yield return (loop.EndingAt($"{loop.Place} on the way to {run.To}", loop.Pieces), run, false);
                }
            }

            yield return (End(run.To).EndingAt(run.To, FirstPieces(_after[run.To])), run, true);
        }
    }

    private IReadOnlyList<FaultLoop> FirstPieces(IEnumerable<SiteRun> runs) =>
        [.. runs.Where(run => run.ReturnAt is null).SelectMany(run => Along(run).FirstPiece)];

    private RunLoops Along(SiteRun run)
    {
        if (!_loops.TryGetValue(run.To, out RunLoops? known))
        {
            _loops.Add(run.To, known = new RunLoops(Before(run), run.Run, run.InstallationMethod, _air));
        }

        return known;
    }

    private FaultLoop Before(SiteRun run) => run.From.JunctionName is string junction ? End(junction) : _terminals;

    private FaultLoop End(string junction)
    {
        if (_ends.TryGetValue(junction, out FaultLoop? known)) return known;
        SiteRun run = _runs[junction];
        FaultLoop end = run.ReturnAt is string shared
            ? Before(run).Then(run.Run, run.InstallationMethod, _air, End(shared).Back)
            : Along(run).End;
        return _ends[junction] = end;
    }
}
