using System;

namespace CamPower.Protection;

/// <summary>A current that dies away exponentially toward a steady one: capacitors that discharge, or charge. SI doubles.</summary>
/// <remarks>
/// i(t) = I + (Î − I)·e^(−t/τ). Without capacitance, or where the capacitors have nothing to give, it is <see cref="None"/>.
/// Source: <see cref="Sources.CapacitorDischarge"/>.
/// </remarks>
internal readonly struct CurrentSurge
{
    private readonly double _steadyAmperes, _farads, _volts, _ohms;

    private CurrentSurge(double steadyAmperes, double farads, double volts, double ohms, double timeConstant)
    {
        _steadyAmperes = steadyAmperes;
        _farads = farads;
        _volts = volts;
        _ohms = ohms;
        TimeConstant = timeConstant;
    }

    internal static CurrentSurge None { get; }

    /// <summary>Time constant of what dies away. [s]</summary>
    internal double TimeConstant { get; }

    /// <summary>The largest current, at the first moment; infinite where no resistance limits it. [A]</summary>
    internal double PeakAmperes => _farads > 0 ? _steadyAmperes + (_volts / _ohms) : 0;

    /// <summary>I²t that it adds to that of the steady current; infinite where no resistance limits it. [A²·s]</summary>
    internal double Integral => IntegralTo(double.PositiveInfinity);

    /// <summary>Capacitors that discharge into a loop, beside a source.</summary>
    /// <param name="farads">The capacitance, at least 0. [F]</param>
    /// <param name="volts">What they are charged to. [V]</param>
    /// <param name="ohms">Resistance of the loop outside the source, at least 0. [Ω]</param>
    /// <param name="sourceOhms">Resistance through which the source recharges them; infinite where it is in current limit. [Ω]</param>
    /// <param name="steadyAmperes">The current that remains. [A]</param>
    internal static CurrentSurge Discharge(double farads, double volts, double ohms, double sourceOhms, double steadyAmperes)
    {
        double above = volts - (steadyAmperes * ohms);
        if (!(farads > 0) || !(above > 0)) return None;

        // A source that is not in current limit shortens the discharge: less capacitance would last as long in the loop alone.
        double together = double.IsInfinity(sourceOhms) ? ohms : ohms * sourceOhms / (ohms + sourceOhms);
        return new CurrentSurge(steadyAmperes, farads * (ohms > 0 ? together / ohms : 1), above, ohms, farads * together);
    }

    /// <summary>What it adds to the I²t of the steady current until a time. [A²·s]</summary>
    internal double IntegralTo(double seconds)
    {
        if (!(_farads > 0) || !(seconds > 0)) return 0;
        double decay = seconds / TimeConstant;
        double squared = _farads * _volts * _volts / (2 * _ohms) * (1 - Math.Exp(-2 * decay));
        return squared + (2 * _steadyAmperes * _farads * _volts * (1 - Math.Exp(-decay)));
    }
}
