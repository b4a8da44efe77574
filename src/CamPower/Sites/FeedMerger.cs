using System;
using System.Collections.Generic;
using System.Linq;

namespace CamPower.Sites;

/// <summary>Puts outputs into groups as junctions of theirs turn out to be joined.</summary>
internal sealed class FeedMerger
{
    private readonly IReadOnlyList<OutputFeed> _feeds;
    private readonly Dictionary<string, int> _feedOf = new(StringComparer.Ordinal);
    private readonly int[] _group;

    internal FeedMerger(IReadOnlyList<OutputFeed> feeds)
    {
        _feeds = feeds;
        _group = [.. Enumerable.Range(0, feeds.Count)];
        for (int i = 0; i < feeds.Count; i++)
        {
            foreach (SiteRun run in feeds[i].Runs) _feedOf[run.To] = i;
        }
    }

    /// <summary>The name of the box behind a junction.</summary>
    internal string BoxBehind(string junction) => _feeds[_feedOf[junction]].Box.Name;

    /// <summary>The outputs behind two junctions belong together.</summary>
    internal void Join(string oneJunction, string otherJunction)
    {
        int from = _group[_feedOf[oneJunction]], into = _group[_feedOf[otherJunction]];
        int kept = Math.Min(from, into), gone = Math.Max(from, into);
        for (int i = 0; i < _group.Length; i++)
        {
            if (_group[i] == gone) _group[i] = kept;
        }
    }

    /// <summary>The groups, each in the order of its outputs.</summary>
    internal IEnumerable<IReadOnlyList<OutputFeed>> Merged() => _feeds
        .Select((feed, i) => (feed, group: _group[i]))
        .GroupBy(x => x.group)
        .Select(g => (IReadOnlyList<OutputFeed>)[.. g.Select(x => x.feed)]);
}
