using System;
using System.Collections.Generic;
using System.Linq;
using CamPower.Conductors;
using static System.FormattableString;

namespace CamPower.Checks;

/// <summary>How large conductors must be to withstand a let-through I²t.</summary>
internal static class LargerConductors
{
    // Cable for power is sold in even gauges (common practice, no source).
    private static readonly WireSize[] EvenGauges = [.. Enumerable.Range(0, 13).Select(i => WireSize.Awg(24 - (2 * i)))];

    /// <summary>The size in words, after "use". The withstand k²S² grows with the square of the cross-section.</summary>
    /// <param name="output">The output that feeds them.</param>
    /// <param name="letThrough">What they must withstand.</param>
    /// <param name="withstood">What the weakest of them withstands.</param>
    /// <example>3041 A²·s where 22 AWG withstands 1400 A²·s: 1.47 times its cross-section, 20 AWG.</example>
    internal static string That(OutputFaults output, JouleIntegral letThrough, JouleIntegral withstood)
    {
        double times = Math.Sqrt(letThrough.AmpereSquaredSeconds / withstood.AmpereSquaredSeconds);
        List<Conductor> all = [.. output.Assessment.Feed.Runs.SelectMany(run => run.Run.Segments).SelectMany(s => s.Cable.Conductors)];
        bool areAlike = all.TrueForAll(c => c.Size == all[0].Size && c.Count == all[0].Count && c.Material == all[0].Material);
        return areAlike && Size(all[0].Size, times) is WireSize size
            ? $"conductors of {size} or larger"
            : Invariant($"conductors of {Math.Ceiling(times * 10) / 10:0.0} times the cross-section");
    }

    private static WireSize? Size(WireSize size, double times) =>
        (size.Series == WireSizeSeries.Awg ? EvenGauges : StandardSizes.In(size.Series))
            .Where(next => !Limits.IsBelow(next.SquareMeters, size.SquareMeters * times)).Select(next => (WireSize?)next).FirstOrDefault();
}
