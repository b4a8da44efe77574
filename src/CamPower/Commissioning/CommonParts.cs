using System.Collections.Generic;
using System.Linq;
using CamPower.Tolerance;

namespace CamPower.Commissioning;

/// <summary>What is uncertain and common to several units: the place of each in the vector that the evidence of all units is
/// about.</summary>
internal sealed class CommonParts
{
    private const int FirstBox = 4;

    private readonly Dictionary<int, int> _reels = [];

    internal CommonParts(Site site, UncertainParts parts)
    {
        foreach (Cable cable in site.Runs.SelectMany(r => r.Run.Segments).Select(s => s.Cable))
        {
            int reel = parts.ReelOf(cable);
            if (!_reels.ContainsKey(reel)) _reels.Add(reel, FirstBox + site.Boxes.Count + _reels.Count);
        }

        Count = FirstBox + site.Boxes.Count + _reels.Count;
    }

    internal int Count { get; }

    /// <summary>The temperature of all cables.</summary>
    internal static int Temperature => 0;

    /// <summary>By how much the meter errs in all readings of a kind.</summary>
    internal static int GainOf(MeterQuantity kind) => 1 + (int)kind;

    /// <summary>The voltage of a box.</summary>
    internal static int SupplyOf(int box) => FirstBox + box;

    /// <summary>The reels of cable: the place among the uncertain parts, and the one here.</summary>
    internal IEnumerable<KeyValuePair<int, int>> Reels => _reels;
}
