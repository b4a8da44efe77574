using System;
using CamPower.Protection;
using CamPower.Supplies;

namespace CamPower.Faults;

/// <summary>One current that may flow in a fault, what the protective device does with it, and how long it heats what.</summary>
internal sealed class FaultCase
{
    // The time at which less current operates the device is found to so much of itself.
    private const double Converged = 1e-6;

    private readonly LimitedCurrent _current;
    private readonly CurrentSurge _surge;

    /// <param name="current">What flows when the supply has had its say.</param>
    /// <param name="surge">The most that output capacitors add.</param>
    /// <param name="device">The protective device.</param>
    /// <param name="currentFactor">Factor of the surroundings on the device's rated currents.</param>
    /// <param name="startCelsius">Temperature of the conductors when it begins, and of the air around them.</param>
    /// <param name="warming">How the conductors' warming lowers it; null where that is not asked.</param>
    internal FaultCase(LimitedCurrent current, CurrentSurge surge, ProtectiveDevice device, double currentFactor, double startCelsius,
        FaultWarming? warming = null)
    {
        OpeningTimes steady = OpeningOf(current, device, currentFactor);
        double least = double.PositiveInfinity;
        while (warming is not null && steady.Verdict == OperatingVerdict.Operates)
        {
            LimitedCurrent warm = warming.CurrentAfter(steady.LatestSeconds);
            OpeningTimes then = OpeningOf(warm, device, currentFactor);
            if (then.Verdict == OperatingVerdict.Operates && then.LatestSeconds <= steady.LatestSeconds * (1 + Converged)) break;
            steady = steady.Or(then);
            if (steady.Verdict != OperatingVerdict.Operates) least = warm.RmsAmperes;
        }

        Opening = OpeningTimes.EitherOf(steady, device.OpeningBySurge(surge, currentFactor));
        _current = Retried(current, device);
        _surge = surge;
        RmsAmperes = Math.Min(least, _current.RmsAmperes);
        StartCelsius = startCelsius;
        EndSeconds = double.IsInfinity(device.PauseSeconds) || Opening.Verdict != OperatingVerdict.Operates
            ? LatestEnd(current)
            : double.PositiveInfinity;
        LetThrough = IntegralTo(EndSeconds);
    }

    internal OpeningTimes Opening { get; }

    internal double StartCelsius { get; }

    /// <summary>When it is over for certain; infinite where nothing ends it. [s]</summary>
    internal double EndSeconds { get; }

    /// <summary>The most current once capacitors are discharged. [A]</summary>
    internal double PeakAmperes => _current.PeakAmperes;

    /// <summary>The least that heats the device: after the conductors have warmed, where that keeps it from being certain to operate.
    /// [A]</summary>
    internal double RmsAmperes { get; }

    /// <summary>Current that heats the conductors as long as it lasts: the RMS of pulses that repeat, the height of a single one.
    /// [A]</summary>
    internal double HeatingAmperes => double.IsInfinity(_current.PeriodSeconds) ? _current.PeakAmperes : _current.RmsAmperes;

    /// <summary>The most I²t until the fault has ended; infinite where nothing ends it. [A²·s]</summary>
    internal double LetThrough { get; }

    /// <summary>The most I²t until a time, what capacitors discharge included. A whole pulse counts as soon as it has begun.
    /// [A²·s]</summary>
    internal double IntegralTo(double seconds)
    {
        double inOnePulse = _current.PeakAmperes * _current.PeakAmperes * Math.Min(seconds, _current.PulseSeconds);
        double inAll = seconds <= _current.PulseSeconds ? inOnePulse : inOnePulse * Math.Ceiling(seconds / _current.PeriodSeconds);
        return inAll + _surge.IntegralTo(seconds);
    }

    private double LatestEnd(LimitedCurrent current) =>
        double.IsInfinity(current.PeriodSeconds) ? Math.Min(Opening.LatestSeconds, current.PulseSeconds) : Opening.LatestSeconds;

    // A device that tries again makes pulses of its own.
    private LimitedCurrent Retried(LimitedCurrent current, ProtectiveDevice device)
    {
        if (double.IsInfinity(device.PauseSeconds) || Opening.Verdict != OperatingVerdict.Operates) return current;
        double period = Opening.LatestSeconds + device.PauseSeconds;
        return new LimitedCurrent(
            current.PeakAmperes, current.PeakAmperes * Math.Sqrt(Opening.LatestSeconds / period), Opening.LatestSeconds, period);
    }

    // A first pulse may open it. Where that is not certain the pulses count by their RMS, from a whole period on; a supply
    // that shuts down gives one pulse and an RMS of zero.
    private static OpeningTimes OpeningOf(LimitedCurrent current, ProtectiveDevice device, double currentFactor)
    {
        OpeningTimes inPulse = device.OpeningAt(current.PeakAmperes, currentFactor);
        if (double.IsInfinity(current.PulseSeconds)) return inPulse;

        // A supply that shuts down may do so sooner than its sheet says at the longest: the device need not open before it.
        bool shutsDown = double.IsInfinity(current.PeriodSeconds);
        if (!shutsDown && inPulse.LatestSeconds <= current.PulseSeconds) return inPulse;

        OpeningTimes byRms = device.OpeningAt(current.RmsAmperes, currentFactor);
        if (inPulse.EarliestSeconds >= current.PulseSeconds) return Later(byRms.Verdict, byRms.EarliestSeconds);
        return Later(byRms.Verdict == OperatingVerdict.Operates
            ? OperatingVerdict.Operates
            : OperatingVerdict.MayOperate, inPulse.EarliestSeconds);

        OpeningTimes Later(OperatingVerdict verdict, double earliest) =>
            new(verdict, earliest, Math.Max(byRms.LatestSeconds, current.PeriodSeconds));
    }
}
