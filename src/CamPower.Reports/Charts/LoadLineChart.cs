using System;
using System.Collections.Generic;
using System.Linq;
using OxyPlot;
using OxyPlot.Axes;
using UnitsNet;
using static System.FormattableString;

namespace CamPower.Reports.Charts;

/// <summary>The load line of a run and the current of its load, with the points where they meet.</summary>
internal static class LoadLineChart
{
    private const int Steps = 120;

    internal static Chart Of(RunResult result)
    {
        Load load = result.Load;
        double source = result.SourceVoltage.Volts, ohms = result.LoopResistance.Ohms;
        if (!(ohms > 0)) throw new ArgumentException("The run has no resistance: its load line is upright.", nameof(result));

        const string Title = "The load line and the operating points";
        double most = source / ohms * 1.1;
        PlotModel model = ChartFrame.Of(Title);
        model.Axes.Add(ChartFrame.Axis(AxisPosition.Bottom, "voltage at the load (V)", 0, source * 1.02));
        model.Axes.Add(ChartFrame.Axis(AxisPosition.Left, "current (A)", 0, most));
        model.Legends.Add(ChartFrame.LegendBelow());
        model.Series.Add(ChartFrame.Line(
            0, Invariant($"what {ohms:0.###} Ω lets through"), [new DataPoint(0, source / ohms), new DataPoint(source, 0)],
            hasMarkers: false));
        model.Series.Add(ChartFrame.Line(1, $"what {load} takes", Taken(load, source, most), hasMarkers: false));
        string words = Invariant($"From {source:0.##} V over {ohms:0.###} Ω the load of {load} {Meet(model, result)}");
        return new Chart(Title, words, model, ChartFrame.HeightWithLegend(model));
    }

    // Where the load takes more than the chart shows, its curve begins at the top.
    private static IEnumerable<DataPoint> Taken(Load load, double source, double most) => Enumerable.Range(1, Steps)
        .Select(i => source * i / Steps)
        .Select(volts => new DataPoint(volts, load.CurrentAt(ElectricPotential.FromVolts(volts)).Amperes))
        .SkipWhile(p => p.Y > most);

    private static string Meet(PlotModel model, RunResult result)
    {
        if (!result.TryGetOperatingPoint(out OperatingPoint point))
        {
            return "takes more than the run lets through at any voltage: no operating point. "
                + Invariant($"The run carries at most {(double)(result.MaximumPower?.Watts ?? 0):0.##} W of constant power.");
        }

        double settled = point.Voltage.Volts, unstable = result.UnstableVoltage.Volts;
        model.Series.Add(ChartFrame.Point(
            Invariant($"settles at {settled:0.00} V, {point.Current.Amperes:0.00} A"), new DataPoint(settled, point.Current.Amperes),
            isFilled: true));
        string words = Invariant($"settles at {settled:0.00} V and {point.Current.Amperes:0.00} A.");
        if (!(unstable > 0)) return words;

        double there = (result.SourceVoltage.Volts - unstable) / result.LoopResistance.Ohms;
        model.Series.Add(ChartFrame.Point(
            Invariant($"balances, but does not last: {unstable:0.00} V, {there:0.00} A"), new DataPoint(unstable, there), isFilled: false));
        return words + Invariant(
            $" The power balances at {unstable:0.00} V too, but that does not last: below it the load pulls its own voltage down.");
    }
}
