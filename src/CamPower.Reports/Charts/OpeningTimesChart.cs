using System;
using System.Collections.Generic;
using System.Linq;
using OxyPlot;
using OxyPlot.Axes;
using OxyPlot.Series;
using UnitsNet;
using static System.FormattableString;

namespace CamPower.Reports.Charts;

/// <summary>When a protective device opens against current, with the time limits of a fuse and the currents of faults.</summary>
internal static class OpeningTimesChart
{
    private const int Steps = 900;

    private const double Beyond = 5;

    internal static Chart Of(ProtectiveDevice device, Temperature ambient, IReadOnlyList<ShortCircuit> shorts)
    {
        double carried = device.CarriedCurrentAt(ambient)?.Amperes
            ?? throw new ArgumentException($"{device} never opens.", nameof(device));
        double[] faults = [.. shorts.SelectMany(EndsOf).Where(a => a > 0)];
        double from = Math.Min(carried, faults.DefaultIfEmpty(carried).Min()) / 1.25,
            to = Math.Max(12 * carried, faults.DefaultIfEmpty(0).Max() * 1.25);
        List<(double Amperes, OpeningTimes Opening)> swept = [.. Enumerable.Range(0, Steps + 1)
            .Select(i => from * Math.Pow(to / from, (double)i / Steps))
                .Select(a => (a, device.OpeningAt(ElectricCurrent.FromAmperes(a), ambient)))];
        List<DataPoint> latest =
            [.. swept.Where(x => x.Opening.Latest is not null).Select(x => new DataPoint(x.Amperes, x.Opening.Latest!.Value.Seconds))];
        List<DataPoint> earliest =
            [.. swept.Where(x => x.Opening.Earliest?.Seconds > 0).Select(x => new DataPoint(x.Amperes, x.Opening.Earliest!.Value.Seconds))];
        List<DataPoint> limits = [.. device is Fuse fuse ? TimeLimits(fuse, carried) : []];

        string title = Invariant($"Opening times of {device} at {ambient.DegreesCelsius:0.#} °C");
        double[] times = [.. latest.Concat(earliest).Concat(limits).Select(p => p.Y)];
        double shortest = times.DefaultIfEmpty(1).Min() / Beyond, longest = times.DefaultIfEmpty(1).Max() * Beyond;
        PlotModel model = ChartFrame.Of(title);
        model.Axes.Add(ChartFrame.LogAxis(AxisPosition.Bottom, "current (A)", from, to));
        model.Axes.Add(ChartFrame.LogAxis(AxisPosition.Left, "time (s)", shortest, longest));
        model.Legends.Add(ChartFrame.LegendBelow());
        if (latest.Count > 0) model.Series.Add(ChartFrame.Line(0, "has opened by then", Corners(latest), hasMarkers: false));
        if (earliest.Count > 0) model.Series.Add(ChartFrame.Line(1, "does not open before", Corners(earliest), hasMarkers: false));
        if (limits.Count > 0) model.Series.Add(ChartFrame.Points(3, "time limits of its standard", limits));
        foreach (LineSeries line in ChartFrame.Limits(
            Invariant($"carries {carried:0.##} A continuously"), [(new DataPoint(carried, shortest), new DataPoint(carried, longest))]))
        {
            model.Series.Add(line);
        }

        for (int i = 0; i < shorts.Count; i++) AddFault(model, i, shorts[i], shortest, longest);

        string words = Invariant($"It carries {carried:0.##} A continuously. ")
            + string.Join(" ", shorts.Select(s => $"{PlainText.Sentence(s.ToString())}."));
        return new Chart(title, words.TrimEnd(), model, ChartFrame.HeightWithLegend(model));
    }

    // What the supply does in overload may be known of one end only.
    private static double[] EndsOf(ShortCircuit fault) =>
        [.. new[] { fault.Smallest, fault.Largest ?? fault.Smallest }.Select(c => c.Amperes).Distinct()];

    private static IEnumerable<DataPoint> TimeLimits(Fuse fuse, double carried) => fuse.Characteristic.TimeLimits.SelectMany(
        limit => new[] { limit.NotBefore, limit.NotAfter }.OfType<Duration>()
            .Select(time => new DataPoint(limit.Multiple * carried, time.Seconds)));

    // Of a stretch at one time its two ends will do.
    private static IEnumerable<DataPoint> Corners(List<DataPoint> points) => points.Where((p, i) =>
        i == 0 || i == points.Count - 1 || !p.Y.Equals(points[i - 1].Y) || !p.Y.Equals(points[i + 1].Y));

    // A line from wall to wall at each end of its range of current.
    private static void AddFault(PlotModel model, int index, ShortCircuit fault, double shortest, double longest)
    {
        double[] ends = EndsOf(fault);
        LineSeries legend = ChartFrame.Line(
            index + 2, $"{fault.Place}: {string.Join(" to ", ends.Select(a => Invariant($"{a:0.0} A")))}", [], hasMarkers: false);
        model.Series.Add(legend);
        foreach (double amperes in ends.Where(a => a > 0))
        {
            LineSeries end = ChartFrame.Line(
                index + 2, string.Empty, [new DataPoint(amperes, shortest), new DataPoint(amperes, longest)], hasMarkers: false);
            end.RenderInLegend = false;
            model.Series.Add(end);
        }
    }
}
