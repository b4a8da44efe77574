using System;
using System.Collections.Generic;
using System.Linq;
using OxyPlot;
using OxyPlot.Axes;
using OxyPlot.Series;
using UnitsNet;
using UnitsNet.Units;
using static System.FormattableString;

namespace CamPower.Reports.Charts;

/// <summary>Volts along the way to a load or to several devices, with the windows that they accept.</summary>
internal static class VoltageAlongChart
{
    internal static Chart Of(RunResult result, VoltageRange? accepted)
    {
        var line = new VoltageAlongLine("load", result.Load.ToString(), result.Profile(), accepted);
        Length first = result.Run.Segments.First().OneWayLength;
        return Of("Volts along the run", [line], LengthScale.UnitOf(first), []);
    }

    internal static Chart Of(IReadOnlyList<DeviceInCondition> devices)
    {
        List<(DeviceInCondition Device, VoltageProfile? Profile)> all =
            [.. devices.Select(d => (d, d.State == DeviceState.WrongCurrent ? null : d.Profile()))];
        List<VoltageAlongLine> lines = [.. all.Where(x => x.Profile is not null)
            .Select(x => new VoltageAlongLine(
                x.Device.Device.Name, $"{x.Device.Device.Name}, {x.Device.Condition}", x.Profile!, x.Device.Accepted))];
        if (lines.Count == 0) throw new ArgumentException("None of these devices has a voltage along its runs.", nameof(devices));

        string title = devices.Count == 1
            ? $"Volts along the way to {devices[0].Device}"
            : Invariant($"Volts along the ways to {devices.Count} devices");
        Length first = lines[0].Profile.Points.Select(p => p.After).OfType<CableSegment>().First().OneWayLength;
        return Of(title, lines, LengthScale.UnitOf(first), all.Where(x => x.Profile is null)
            .Select(x => $"{x.Device.Device} has no voltage along its way in {x.Device.Condition} and is not drawn."));
    }

    private static Chart Of(string title, List<VoltageAlongLine> lines, LengthUnit unit, IEnumerable<string> missing)
    {
        string symbol = LengthScale.Symbol(unit);
        double farthest = lines.Max(l => l.Profile.Points[^1].Distance.As(unit)), width = farthest > 0 ? farthest * 1.02 : 1;
        List<(string Whose, VoltageRange Accepted)> windows =
            [.. lines.Where(l => l.Accepted is not null).Select(l => (l.Whose, l.Accepted!))];
        PlotModel model = ChartFrame.Of(title);
        model.Axes.Add(ChartFrame.Axis(AxisPosition.Bottom, $"distance from the supply, one way ({symbol})", 0, width));
        model.Axes.Add(VoltAxis.Holding(
            [.. lines.SelectMany(l => l.Profile.Points.Select(p => p.Voltage.Volts)),
            .. windows.SelectMany(w => new[] { w.Accepted.Lowest.Volts, w.Accepted.Highest.Volts })]));
        model.Legends.Add(ChartFrame.LegendBelow());
        for (int i = 0; i < lines.Count; i++)
        {
            IEnumerable<DataPoint> points = lines[i].Profile.Points.Select(p => new DataPoint(p.Distance.As(unit), p.Voltage.Volts));
            model.Series.Add(ChartFrame.Line(i, Invariant($"{lines[i].Label}: {lines[i].EndVolts:0.00} V"), points, hasMarkers: true));
        }

        foreach (LineSeries limit in WindowLimits.Of(windows, width)) model.Series.Add(limit);
        IEnumerable<string> words =
            lines.Select(l => Invariant($"{l.Label}: {l.Profile.Points[0].Voltage.Volts:0.00} V at the supply, ")
            + Invariant(
            $"{l.EndVolts:0.00} V after {l.Profile.Points[^1].Distance.As(unit):0.#} ")
                + Invariant($"{symbol}{(l.Accepted is null ? "" : $"; accepted is {l.Accepted}")}."));
        return new Chart(title, string.Join(" ", words.Concat(missing)), model, ChartFrame.HeightWithLegend(model));
    }
}
