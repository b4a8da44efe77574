using System;
using CamPower.Conductors;
using CamPower.Supplies;

namespace CamPower.Faults;

/// <summary>One current that may flow in a fault, and what the protective device does with it.</summary>
internal sealed class FaultCase
{
    private readonly LimitedCurrent _current;
    private readonly double _endSeconds;

    internal FaultCase(LimitedCurrent current, ProtectiveDevice device, double currentFactor)
    {
        _current = current;
        Opening = OpeningOf(current, device, currentFactor);
        bool endsByItself = double.IsInfinity(current.PeriodSeconds);
        _endSeconds = endsByItself ? Math.Min(Opening.LatestSeconds, current.PulseSeconds) : Opening.LatestSeconds;
    }

    internal OpeningTimes Opening { get; }

    internal double PeakAmperes => _current.PeakAmperes;

    internal double RmsAmperes => _current.RmsAmperes;

    /// <summary>The most I²t until the fault has ended; infinite where nothing ends it. [A²·s]</summary>
    internal double LetThrough => IntegralTo(_endSeconds);

    internal WithstandVerdict WithstandOf(double ampereSquaredSeconds)
    {
        double longest = ConductorConstants.LongestAdiabatic.Value;
        if (IntegralTo(Math.Min(_endSeconds, longest)) > ampereSquaredSeconds) return WithstandVerdict.DoesNotStand;
        return _endSeconds <= longest ? WithstandVerdict.Stands : WithstandVerdict.OutsideAdiabaticModel;
    }

    // A whole pulse counts as soon as it has begun.
    private double IntegralTo(double seconds)
    {
        double inOnePulse = _current.PeakAmperes * _current.PeakAmperes * Math.Min(seconds, _current.PulseSeconds);
        return seconds <= _current.PulseSeconds ? inOnePulse : inOnePulse * Math.Ceiling(seconds / _current.PeriodSeconds);
    }

    // A first pulse may open it. Where that is not certain the pulses count by their RMS, from a whole period on; a supply
    // that shuts down gives one pulse and an RMS of zero.
    private static OpeningTimes OpeningOf(LimitedCurrent current, ProtectiveDevice device, double currentFactor)
    {
        OpeningTimes inPulse = device.OpeningAt(current.PeakAmperes, currentFactor);
        if (inPulse.LatestSeconds <= current.PulseSeconds || double.IsInfinity(current.PulseSeconds)) return inPulse;

        OpeningTimes byRms = device.OpeningAt(current.RmsAmperes, currentFactor);
        if (inPulse.EarliestSeconds >= current.PulseSeconds) return Later(byRms.Verdict, byRms.EarliestSeconds);
        return Later(byRms.Verdict == ClearingVerdict.Clears ? ClearingVerdict.Clears : ClearingVerdict.MayClear, inPulse.EarliestSeconds);

        OpeningTimes Later(ClearingVerdict verdict, double earliest) =>
            new(verdict, earliest, Math.Max(byRms.LatestSeconds, current.PeriodSeconds));
    }
}
