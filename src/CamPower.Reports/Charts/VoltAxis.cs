using System;
using System.Collections.Generic;
using System.Linq;
using OxyPlot.Axes;

namespace CamPower.Reports.Charts;

/// <summary>The axis of volts, with room above and below for labels.</summary>
internal static class VoltAxis
{
    private const double Room = 0.14, LeastShare = 0.02;

    internal static LinearAxis Holding(IReadOnlyCollection<double> volts)
    {
        double low = volts.Min(), high = volts.Max();
        double room = Room * Math.Max(high - low, LeastShare * Math.Abs(high));
        return ChartFrame.Axis(AxisPosition.Left, "voltage (V)", low - room, high + room);
    }
}
