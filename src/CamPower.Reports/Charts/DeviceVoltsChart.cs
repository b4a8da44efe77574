using System.Collections.Generic;
using System.Linq;
using CamPower.Reports.Sections;
using OxyPlot;
using OxyPlot.Axes;
using OxyPlot.Series;
using static System.FormattableString;

namespace CamPower.Reports.Charts;

/// <summary>Chart of the voltages that each device of a box may see, lowest to highest over all conditions, against what it accepts;
/// least margin first.</summary>
internal static class DeviceVoltsChart
{
    private const double RowHeight = 20, Around = 80, WindowThickness = 9, RangeThickness = 3, Spare = 0.5;
    private static readonly OxyColor Window = OxyColor.FromRgb(190, 205, 190), OutOfWindow = OxyColor.FromRgb(139, 0, 0);

    internal static Chart Of(BoxAssessment box, IEnumerable<DeviceAssessment> devices)
    {
        string title = $"Volts at the devices of {box.Box}";
        List<DeviceVolts> rows =
            [.. devices.Where(d => d.Worst.State != DeviceState.WrongCurrent).Select(DeviceVolts.Of).OrderBy(d => d.Margin)];
        PlotModel model = ChartFrame.Of(title);
        double low = rows.Select(r => r.LeftEnd).DefaultIfEmpty(0).Min() - Spare,
            high = rows.Select(r => r.RightEnd).DefaultIfEmpty(0).Max() + Spare;
        model.Axes.Add(ChartFrame.Axis(AxisPosition.Bottom, "V", low, high));
        model.Axes.Add(ChartFrame.Rows([.. rows.Select(r => ChartFrame.RowLabel(r.Label))]));
        model.Legends.Add(ChartFrame.LegendBelow());
        Add(model, "accepted", Window, WindowThickness, rows.Select((r, i) => (r.AcceptedLow, r.AcceptedHigh, i)));
        Add(model, "lowest to highest over all conditions", OxyColors.Black, RangeThickness, rows.Select((r, i) => (r, i))
            .Where(x => x.r.IsInside).Select(x => (x.r.Lowest, x.r.Highest, x.i)));
        Add(model, "leaves what is accepted", OutOfWindow, RangeThickness, rows.Select((r, i) => (r, i))
            .Where(x => x.r.IsUp && !x.r.IsInside).Select(x => (x.r.Lowest, x.r.Highest, x.i)));
        foreach ((DeviceVolts row, int i) in rows.Select((r, i) => (r, i)).Where(x => !x.r.IsUp))
        {
            model.Series.Add(ChartFrame.Cross(new DataPoint(row.AcceptedLow, i)));
        }

        return new Chart(title, string.Join(" ", rows.Select(r => r.InWords())), model, Around + (RowHeight * rows.Count)
            + ChartFrame.LegendHeight(model));
    }

    // A short piece for each row; one name in the legend for all of them.
    private static void Add(PlotModel model, string title, OxyColor color, double thickness,
        IEnumerable<(double From, double To, int Row)> pieces)
    {
        bool isFirst = true;
        foreach ((double from, double to, int row) in pieces)
        {
            var piece = new LineSeries { Title = title, Color = color, StrokeThickness = thickness, RenderInLegend = isFirst,
                LineJoin = LineJoin.Miter };
            piece.Points.AddRange([new DataPoint(from, row), new DataPoint(to, row)]);
            model.Series.Add(piece);
            isFirst = false;
        }
    }
}
