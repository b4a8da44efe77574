namespace CamPower.Supplies;

/// <summary>Current into a fault after the supply limits it: pulses of one height, or a steady current.</summary>
/// <remarks>A steady current is one pulse without end.</remarks>
internal readonly struct LimitedCurrent(double peakAmperes, double rmsAmperes, double pulseSeconds, double periodSeconds)
{
    internal double PeakAmperes => peakAmperes;

    internal double RmsAmperes => rmsAmperes;

    internal double PulseSeconds => pulseSeconds;

    /// <summary>From one pulse to the next; infinite where there is no next one.</summary>
    internal double PeriodSeconds => periodSeconds;

    internal static LimitedCurrent Steady(double amperes) => new(amperes, amperes, double.PositiveInfinity, double.PositiveInfinity);
}
