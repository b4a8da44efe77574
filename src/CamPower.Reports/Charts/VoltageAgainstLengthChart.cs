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

/// <summary>Volts at a load against the length of its run, for several cables.</summary>
internal static class VoltageAgainstLengthChart
{
    private const int Steps = 60, Halvings = 30, MarkerEvery = 12;

    internal static Chart Of(
        IReadOnlyList<Cable> cables, Load load, ElectricPotential from, Temperature conductorAt, Length longest, VoltageRange? accepted)
    {
        if (cables.Count is 0 or > ChartFrame.MostSeries)
        {
            throw new ArgumentOutOfRangeException(
                nameof(cables), cables.Count, $"The chart takes from 1 to {ChartFrame.MostSeries} cables.");
        }

        LengthUnit unit = LengthScale.UnitOf(longest);
        string symbol = LengthScale.Symbol(unit);
        double end = longest.As(unit);
        if (!(end > 0) || double.IsInfinity(end))
        {
            throw new ArgumentOutOfRangeException(nameof(longest), longest, "The longest run must be above 0 and finite.");
        }

        string title = $"Volts at {load} against length";
        PlotModel model = ChartFrame.Of(title);
        List<List<DataPoint>> curves = [.. cables.Select(c => Curve(new VoltageAtLength(c, load, from, conductorAt, unit), end))];
        List<double> volts = [.. curves.SelectMany(c => c.Select(p => p.Y)), from.Volts];
        if (accepted is not null) volts.AddRange([accepted.Lowest.Volts, accepted.Highest.Volts]);
        model.Axes.Add(ChartFrame.Axis(AxisPosition.Bottom, $"length of the run, one way ({symbol})", 0, end));
        model.Axes.Add(VoltAxis.Holding(volts));
        model.Legends.Add(ChartFrame.LegendBelow());
        for (int i = 0; i < cables.Count; i++)
        {
            model.Series.Add(ChartFrame.Line(i, cables[i].Outgoing.ToString(), [], hasMarkers: true));
            AddCurve(model, i, curves[i], endsEarly: curves[i][^1].X < end);
        }

        if (accepted is not null)
        {
            foreach (LineSeries limit in WindowLimits.Of([(string.Empty, accepted)], end)) model.Series.Add(limit);
        }

        IEnumerable<string> words = cables.Select((c, i) => Invariant(
            $"{c}: {curves[i][^1].Y:0.00} V at {curves[i][^1].X:0.#} {symbol}{(curves[i][^1].X < end ? ", and no farther" : "")}."));
        string window = accepted is null ? string.Empty : $" Accepted is {accepted}.";
        return new Chart(title, Invariant(
            $"From {from.Volts:0.##} V, conductors at {conductorAt.DegreesCelsius:0.#} °C. {string.Join(" ", words)}{window}"), model,
            ChartFrame.HeightWithLegend(model));
    }

    // The end is where nothing balances any more: there the curve is vertical.
    private static List<DataPoint> Curve(VoltageAtLength at, double end)
    {
        var points = new List<DataPoint>();
        for (int i = 0; i <= Steps; i++)
        {
            double length = end * i / Steps;
            if (at.Volts(length) is double volts)
            {
                points.Add(new DataPoint(length, volts));
                continue;
            }

            points.Add(LastOf(at, points[^1].X, length));
            break;
        }

        return points;
    }

    private static DataPoint LastOf(VoltageAtLength at, double carried, double lost)
    {
        for (int halving = 0; halving < Halvings; halving++)
        {
            double middle = (carried + lost) / 2;
            if (at.Volts(middle) is null) lost = middle;
            else carried = middle;
        }

        return new DataPoint(carried, at.Volts(carried) ?? 0);
    }

    // The curve has few markers, begun at another place for each, so that they do not cover one another; a cross ends one that ends early.
    private static void AddCurve(PlotModel model, int index, List<DataPoint> points, bool endsEarly)
    {
        LineSeries curve = ChartFrame.Line(index, string.Empty, points, hasMarkers: false),
            marks = ChartFrame.Points(index, string.Empty, points.Where((_, i) => i % MarkerEvery == (4 + (2 * index)) % MarkerEvery));
        curve.RenderInLegend = marks.RenderInLegend = false;
        model.Series.Add(curve);
        model.Series.Add(marks);
        if (endsEarly) model.Series.Add(ChartFrame.Cross(points[^1]));
    }
}
