using System;
using System.Collections.Generic;
using System.Linq;
using OxyPlot;
using OxyPlot.Series;

namespace CamPower.Reports.Charts;

/// <summary>The ends of accepted windows on a chart of volts.</summary>
internal static class WindowLimits
{
    /// <summary>Lines at the lowest and the highest voltage of each window, from wall to wall; whose it is where they differ.</summary>
    internal static IReadOnlyList<LineSeries> Of(IReadOnlyList<(string Whose, VoltageRange Accepted)> windows, double width)
    {
        var different = windows.GroupBy(w => w.Accepted.ToString(), StringComparer.Ordinal).ToList();
        return [.. different.SelectMany(same => ChartFrame.Limits(
            $"accepted: {same.Key}{(different.Count == 1 ? string.Empty : " by " + string.Join(", ", same.Select(w => w.Whose)))}",
            new[] { same.First().Accepted.Lowest.Volts, same.First().Accepted.Highest.Volts }.Select(
                v => (new DataPoint(0, v), new DataPoint(width, v)))))];
    }
}
