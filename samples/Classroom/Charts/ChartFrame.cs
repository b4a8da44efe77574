using System;
using System.Collections.Generic;
using System.Globalization;
using System.Linq;

namespace Classroom.Charts;

/// <summary>A chart's plot area in the drawing's own units, and the way from values to places in it.</summary>
public sealed class ChartFrame(double across, double up)
{
    public const double Width = 380, Height = 270, Left = 46, Right = 368, Top = 22, Bottom = 226;

    private const int MostTicks = 6;

    private static readonly int[] RoundMultiples = [1, 2, 5, 10];

    /// <summary>The value at the right end; the left end is 0.</summary>
    public double Across { get; } = across;

    /// <summary>The value at the upper end; the lower end is 0.</summary>
    public double Up { get; } = up;

    public IReadOnlyList<double> AcrossTicks => TicksTo(Across);

    public IReadOnlyList<double> UpTicks => TicksTo(Up);

    public double X(double value) => Left + (value / Across * (Right - Left));

    public double Y(double value) => Bottom - (value / Up * (Bottom - Top));

    /// <summary>A path through points given as values.</summary>
    public string Path(IEnumerable<(double Across, double Up)> points) =>
        string.Join(' ', points.Select((p, i) => $"{(i == 0 ? 'M' : 'L')}{Text(X(p.Across))},{Text(Y(p.Up))}"));

    /// <summary>A coordinate as it is written into the drawing.</summary>
    public static string Text(double coordinate) => coordinate.ToString("0.##", CultureInfo.InvariantCulture);

    /// <summary>0 and the multiples of 1, 2 or 5 times a power of ten up to the end, at most six of them.</summary>
    private static double[] TicksTo(double end)
    {
        double decade = Math.Pow(10, Math.Floor(Math.Log10(end / (MostTicks - 1))));
        double step = RoundMultiples.Select(m => m * decade).First(s => end / s < MostTicks);
        return [.. Enumerable.Range(0, MostTicks).Select(i => i * step).TakeWhile(v => v <= end)];
    }
}
