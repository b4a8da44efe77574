using System;
using System.Collections.Generic;
using System.Linq;
using OxyPlot;
using OxyPlot.Axes;
using OxyPlot.Series;
using static System.FormattableString;

namespace CamPower.Reports.Charts;

/// <summary>One row for each used output and one for the supply; in it a marker for each condition, at its share of the limit.</summary>
internal static class OutputLoadChart
{
    private const double RowHeight = 14, LaneHeight = 5, LeastPercent = 120, Around = 80, Spread = 0.62;

    internal static Chart Of(BoxAssessment box)
    {
        string title = $"Load of {box.Box}";
        List<LoadBar> rows = [.. box.Outputs.Select(LoadBar.Of), LoadBar.Of(box)];
        List<string> conditions = [.. box.InConditions.Select(c => c.Condition.Name)];
        List<string> words = [.. rows.Select(r => r.InWords())];

        PlotModel model = ChartFrame.Of(title);
        double most = Math.Max(LeastPercent, rows.SelectMany(r => r.Percents).OfType<double>().DefaultIfEmpty(0).Max() * 1.05);
        model.Axes.Add(ChartFrame.Axis(AxisPosition.Bottom, "share of the limit (%)", 0, most));
        model.Axes.Add(ChartFrame.Rows([.. rows.Select(r => r.Label)]));
        model.Legends.Add(ChartFrame.LegendBelow());
        for (int c = 0; c < conditions.Count; c++)
        {
            // The rows count from the top; in a row each condition has a lane of its own.
            double lane = conditions.Count > 1 ? Spread * ((double)c / (conditions.Count - 1) - 0.5) : 0;
            IEnumerable<DataPoint> points = rows.Select((r, i) => (r, i)).Where(x => x.r.Percents[c] is not null)
                .Select(x => new DataPoint(x.r.Percents[c] ?? 0, x.i + lane));
            model.Series.Add(ChartFrame.Points(c, conditions[c], points));
        }

        foreach (LineSeries limit in ChartFrame.Limits("limit", [(new DataPoint(100, -0.5), new DataPoint(100, rows.Count - 0.5))]))
        {
            model.Series.Add(limit);
        }

        return new Chart(title, string.Join(" ", words), model, Around + ((RowHeight + (LaneHeight * conditions.Count)) * rows.Count)
            + ChartFrame.LegendHeight(model));
    }
}
