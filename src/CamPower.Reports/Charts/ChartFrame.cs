using System;
using System.Collections.Generic;
using System.Globalization;
using System.Linq;
using OxyPlot;
using OxyPlot.Axes;
using OxyPlot.Legends;
using OxyPlot.Series;

namespace CamPower.Reports.Charts;

/// <summary>The frame that all charts share.</summary>
internal static class ChartFrame
{
    internal const double Width = 460, Height = 290, LegendLine = 18;

    /// <summary>Share of the width that a label of a row may take.</summary>
    private const double RowLabelRoom = 120;

    private const double TitleRoom = Width - 30, LegendRoom = Width - 92, SymbolLength = 30;

    private const double TextSize = 12, TitleSize = 14, LineThickness = 1.8, LimitThickness = 2.4, MarkerSize = 4;

    private const double TickRoom = 42;

    private const string Font = "Verdana, DejaVu Sans, Arial, sans-serif";

    // Dark on white, and told apart also by those who see fewer colors; the style of the line and the marker differ with each.
    private static readonly OxyColor[] Colors =
    [
        OxyColor.FromRgb(0, 0, 0), OxyColor.FromRgb(0, 92, 160), OxyColor.FromRgb(168, 64, 0),
        OxyColor.FromRgb(0, 105, 75), OxyColor.FromRgb(125, 45, 110), OxyColor.FromRgb(90, 80, 0),
    ];

    // Lengths of dashes and gaps in widths of the line; the first is solid.
    private static readonly double[]?[] Dashes = [null, [5, 2.5], [6, 2, 1.2, 2], [9, 3], [6, 2, 1.2, 2, 1.2, 2], [2.5, 2.5]];

    private static readonly double[] LimitDashes = [1, 1.2];

    private static readonly MarkerType[] Markers = [MarkerType.Circle, MarkerType.Square, MarkerType.Triangle, MarkerType.Diamond];

    /// <summary>Number of series that can be told apart: by line and marker, marker filled or hollow.</summary>
    internal const int MostSeries = 12;

    private static readonly OxyColor LimitColor = OxyColor.FromRgb(176, 0, 32);

    internal static PlotModel Of(string title) => new()
    {
        Title = TextRoom.Fitted(title, TitleRoom, TitleSize, FontWeights.Bold),
        TitleFontSize = TitleSize,
        TitleHorizontalAlignment = TitleHorizontalAlignment.CenteredWithinView,
        DefaultFont = Font,
        DefaultFontSize = TextSize,
        Culture = CultureInfo.InvariantCulture,
        Background = OxyColors.White,
        PlotAreaBorderColor = OxyColors.Black,
        PlotMargins = new OxyThickness(double.NaN),
        Padding = new OxyThickness(6, 10, 18, 6),
    };

    internal static LinearAxis Axis(AxisPosition position, string title, double from, double to) =>
        Dressed(new LinearAxis(), position, title, from, to);

    internal static LogarithmicAxis LogAxis(AxisPosition position, string title, double from, double to) =>
        Dressed(new LogarithmicAxis { UseSuperExponentialFormat = false }, position, title, from, to);

    /// <summary>The line of a series of its own style, with a marker at each of its points, or at none.</summary>
    internal static LineSeries Line(int index, string title, IEnumerable<DataPoint> points, bool hasMarkers)
    {
        var line = new LineSeries
        {
            Title = TextRoom.Fitted(title, LegendRoom, TextSize),
            Color = ColorOf(index),
            Dashes = Dashes[index % Dashes.Length],
            StrokeThickness = LineThickness,
        };
        if (hasMarkers) Mark(line, index);
        line.Points.AddRange(points);
        return line;
    }

    /// <summary>The marker of a series, without a line.</summary>
    internal static LineSeries Points(int index, string title, IEnumerable<DataPoint> points)
    {
        LineSeries series = Line(index, title, points, hasMarkers: true);
        series.LineStyle = LineStyle.None;
        series.Color = OxyColors.Transparent;
        return series;
    }

    /// <summary>A limit: dotted lines from wall to wall under one name.</summary>
    internal static IEnumerable<LineSeries> Limits(string title, IEnumerable<(DataPoint From, DataPoint To)> lines)
    {
        bool isFirst = true;
        foreach ((DataPoint from, DataPoint to) in lines)
        {
            var limit = new LineSeries { Title = TextRoom.Fitted(title, LegendRoom, TextSize), Color = LimitColor, Dashes = LimitDashes,
                StrokeThickness = LimitThickness, RenderInLegend = isFirst };
            limit.Points.AddRange([from, to]);
            isFirst = false;
            yield return limit;
        }
    }

    /// <summary>One point, filled or hollow, under its own name.</summary>
    internal static LineSeries Point(string title, DataPoint at, bool isFilled)
    {
        LineSeries point = Points(0, title, [at]);
        point.MarkerSize = MarkerSize + 1;
        point.MarkerFill = isFilled ? point.MarkerStroke : OxyColors.White;
        return point;
    }

    /// <summary>Room for the chart and for a line of the legend for each thing that it names.</summary>
    internal static double HeightWithLegend(PlotModel model) => Height + LegendHeight(model);

    internal static double LegendHeight(PlotModel model) => LegendLine * model.Series.Count(s => s.RenderInLegend);

    internal static Legend LegendBelow() => new()
    {
        LegendPlacement = LegendPlacement.Outside,
        LegendPosition = LegendPosition.BottomCenter,
        LegendOrientation = LegendOrientation.Vertical,
        LegendFontSize = TextSize,
        LegendSymbolLength = SymbolLength,
        LegendLineSpacing = 8,
    };

    /// <summary>A cross at a point: nothing comes after it.</summary>
    internal static LineSeries Cross(DataPoint at)
    {
        var cross = new LineSeries { LineStyle = LineStyle.None, MarkerType = MarkerType.Cross, MarkerSize = MarkerSize
            + 1, MarkerStroke = OxyColors.Black, MarkerStrokeThickness = LineThickness, RenderInLegend = false };
        cross.Points.Add(at);
        return cross;
    }

    /// <summary>As much of a name as fits beside a row.</summary>
    internal static string RowLabel(string name) => TextRoom.Fitted(name, RowLabelRoom, TextSize);

    /// <summary>Names beside rows that count from the top.</summary>
    internal static CategoryAxis Rows(IReadOnlyList<string> labels)
    {
        CategoryAxis axis = Dressed(new CategoryAxis(), AxisPosition.Left, string.Empty, -0.5, labels.Count - 0.5);
        axis.MajorGridlineStyle = LineStyle.None;
        axis.ExtraGridlines = [.. Enumerable.Range(0, Math.Max(0, labels.Count - 1)).Select(i => i + 0.5)];
        axis.ExtraGridlineColor = OxyColor.FromRgb(215, 215, 215);
        axis.StartPosition = 1;
        axis.EndPosition = 0;
        axis.GapWidth = 0;
        axis.Labels.AddRange(labels);
        return axis;
    }

    private static OxyColor ColorOf(int index) => Colors[index % Colors.Length];

    private static void Mark(LineSeries line, int index)
    {
        bool isHollow = index % MostSeries >= Colors.Length;
        line.MarkerType = Markers[index % Markers.Length];
        line.MarkerSize = MarkerSize;
        line.MarkerStroke = ColorOf(index);
        line.MarkerStrokeThickness = LineThickness;
        line.MarkerFill = isHollow ? OxyColors.White : ColorOf(index);
    }

    internal static T Dressed<T>(T axis, AxisPosition position, string title, double from, double to)
        where T : Axis
    {
        axis.Position = position;
        axis.Title = title;
        axis.Minimum = from;
        axis.Maximum = to;
        axis.MajorGridlineStyle = LineStyle.Solid;
        axis.MajorGridlineColor = OxyColor.FromRgb(215, 215, 215);
        axis.MinorTickSize = 0;
        axis.TickStyle = TickStyle.Outside;
        axis.AxisTitleDistance = 12;
        axis.IntervalLength = TickRoom;
        axis.IsZoomEnabled = false;
        axis.IsPanEnabled = false;
        return axis;
    }
}
