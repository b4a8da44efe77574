using System;
using System.Collections.Generic;
using System.Linq;
using CamPower.Commissioning;

namespace CamPower.Evaluation;

/// <summary>How a diagnosis did on all cases of one manner and one sheet.</summary>
internal sealed class SheetScore
{
    internal const int Tenths = 10;

    private readonly Dictionary<(string True, string Said), int> _misses = [];

    internal int Scored { get; private set; }

    internal int First { get; private set; }

    internal int Three { get; private set; }

    internal int Sound { get; private set; }

    internal int Accused { get; private set; }

    internal int Pairs { get; private set; }

    internal int PairFirst { get; private set; }

    internal int PairBothInThree { get; private set; }

    internal int Unmoved { get; private set; }

    internal int UnmovedSaidSound { get; private set; }

    internal int UnmovedInThree { get; private set; }

    /// <summary>What the diagnosis itself expects of the scored cases: the sum of the probabilities of its first groups, and of its first
    /// three.</summary>
    internal double ExpectedFirst { get; private set; }

    internal double ExpectedThree { get; private set; }

    /// <summary>What the diagnosis itself expects of the sound sites that it accuses: the sum, over all cases that it calls faulty, of the
    /// probability that it leaves to a sound site.</summary>
    internal double ExpectedAccused { get; private set; }

    internal int[] Counts { get; } = new int[Tenths];

    internal double[] Stated { get; } = new double[Tenths];

    internal int[] True { get; } = new int[Tenths];

    internal IEnumerable<KeyValuePair<(string True, string Said), int>> Misses => _misses.OrderByDescending(m => m.Value);

    internal void Add(Case made, IReadOnlyList<ReadingPoint> sheet, Commissioning.Diagnosis found)
    {
        HashSet<GroupKey> truth = made.TrueKeys(sheet);
        foreach (CauseGroup group in found.Groups)
        {
            int tenth = Math.Min(Tenths - 1, (int)(group.Share * Tenths));
            Counts[tenth]++;
            Stated[tenth] += group.Share;
            if (truth.Contains(group.Key)) True[tenth]++;
        }

        if (found.Groups[0].Key != default) ExpectedAccused += found.Groups.Where(g => g.Key == default).Sum(g => g.Share);
        int rank = 0;
        while (rank < found.Groups.Count && !truth.Contains(found.Groups[rank].Key)) rank++;
        if (made.IsSound)
        {
            Sound++;
            if (rank > 0) Accused++;
            if (rank > 0) Miss("as designed", found.Groups[0]);
            return;
        }

        if (!made.Moves(sheet))
        {
            Unmoved++;
            if (found.Groups[0].Key == default) UnmovedSaidSound++;
            if (rank < 3) UnmovedInThree++;
            return;
        }

        if (made.Causes.Count > 1)
        {
            Pairs++;
            if (rank == 0) PairFirst++;
            if (truth.All(key => found.Groups.Take(3).Any(g => g.Key == key))) PairBothInThree++;
            return;
        }

        Scored++;
        if (rank == 0) First++;
        else Miss(CauseWords.NameOf(made.Causes[0].Cause), found.Groups[0]);
        if (rank < 3) Three++;
        ExpectedFirst += found.Groups[0].Share;
        ExpectedThree += Math.Min(1, found.Groups.Take(3).Sum(g => g.Share));
    }

    private void Miss(string truth, CauseGroup said)
    {
        (string, string) miss = (truth, CauseWords.NameOf(said.Causes[0]));
        _misses[miss] = (_misses.TryGetValue(miss, out int count) ? count : 0) + 1;
    }
}
