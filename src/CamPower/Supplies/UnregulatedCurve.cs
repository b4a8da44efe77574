using System;
using System.Collections.Generic;
using UnitsNet;
using static CamPower.DerivationStep;

namespace CamPower.Supplies;

/// <summary>The voltage of an unregulated supply against its current, between what two points of its data sheet leave open. SI
/// doubles.</summary>
/// <remarks>
/// A transformer, a rectifier and a capacitor. The curve through the open and the rated point is convex: the straight line through both is
/// the high side up to the rated current. The low side is the rectifier with an endless capacitor behind a resistance, the most convex of
/// such curves: it conducts for an angle of ±θ about each crest, V = Vo·cos θ and I = k·(sin θ - θ·cos θ), and k follows from the rated
/// point. Beyond the rated current the line is the low side. The ripple is a sawtooth, as large as the current: its half is √3 of its RMS.
/// </remarks>
internal sealed class UnregulatedCurve
{
    private const int Halvings = 60;

    private readonly double _openVolts, _ratedVolts, _ratedAmperes, _tolerance, _scale, _rippleShare;

    internal UnregulatedCurve(double openVolts, double ratedVolts, double ratedAmperes, double tolerance, double rippleShare)
    {
        _openVolts = openVolts;
        _ratedVolts = ratedVolts;
        _ratedAmperes = ratedAmperes;
        _tolerance = tolerance;
        _rippleShare = rippleShare;
        _scale = ratedAmperes / Flow(Math.Acos(ratedVolts / openVolts));
    }

    /// <summary>The highest it gives at a current, at the crest of the ripple; at least 0. [V]</summary>
    /// <param name="amperes">The current. [A]</param>
    /// <param name="lineShare">The mains over its nominal voltage; null for the top of its tolerance. [1]</param>
    internal double HighestAt(double amperes, double? lineShare = null) =>
        Math.Max(amperes > _ratedAmperes ? _ratedVolts : Line(amperes), 0) * (lineShare ?? (1 + _tolerance)) * (1 + Ripple(amperes));

    /// <summary>The lowest it gives at a current, in the valley of the ripple; at least 0. [V]</summary>
    /// <param name="amperes">The current. [A]</param>
    /// <param name="lineShare">The mains over its nominal voltage; null for the bottom of its tolerance. [1]</param>
    internal double LowestAt(double amperes, double? lineShare = null) =>
        Math.Max(amperes > _ratedAmperes ? Line(amperes) : _openVolts * Math.Cos(AngleAt(amperes)), 0)
            * (lineShare ?? (1 - _tolerance)) * Math.Max(1 - Ripple(amperes), 0);

    /// <summary>The current at which the line has a voltage: what it gives at least beyond its rated current. [A]</summary>
    internal double LineAmperesAt(double volts) =>
        Math.Max(0, (_openVolts - (volts / (1 - _tolerance))) * _ratedAmperes / (_openVolts - _ratedVolts));

    internal IEnumerable<DerivationStep> Steps(double amperes)
    {
        double angle = AngleAt(amperes), rated = Math.Acos(_ratedVolts / _openVolts);
        yield return new("Vh", "High side: the line through the open and the rated point", "Vo - (Vo - Vr)*I/Ir",
            @"V_h = V_o - (V_o - V_r)\,\frac{I}{I_r}",
            $"{Number(_openVolts)} - ({Number(_openVolts)} - {Number(_ratedVolts)})*{Number(amperes)}/{Number(_ratedAmperes)}",
            Line(amperes), "V", Sources.UnregulatedLine);
        yield return new("k", "Current of the rectifier over sin(theta) - theta*cos(theta), from the rated point",
            "Ir/(sin(tr) - tr*cos(tr))",
            @"k = \frac{I_r}{\sin\theta_r - \theta_r\cos\theta_r}",
            $"{Number(_ratedAmperes)}/({Number(Math.Sin(rated))} - {Number(rated)}*{Number(Math.Cos(rated))})", _scale, "A",
            Sources.CapacitorInput);
        yield return new("I", "The current at half the conduction angle that gives it", "k*(sin(theta) - theta*cos(theta))",
            @"I = k\,(\sin\theta - \theta\cos\theta)",
            $"{Number(_scale)}*({Number(Math.Sin(angle))} - {Number(angle)}*{Number(Math.Cos(angle))})", _scale * Flow(angle), "A",
            Sources.CapacitorInput);
        yield return new("Vl", "Low side: the crest at that angle", "Vo*cos(theta)", @"V_l = V_o\cos\theta",
            $"{Number(_openVolts)}*{Number(Math.Cos(angle))}", _openVolts * Math.Cos(angle), "V", Sources.CapacitorInput);
        yield return new("Vmax", "Highest, with the tolerance of the mains and the crest of the ripple", "Vh*(1 + t)*(1 + sqrt(3)*r)",
            @"V_{max} = V_h\,(1 + t)\,(1 + \sqrt{3}\,r)",
            $"{Number(Line(amperes))}*(1 + {Number(_tolerance)})*(1 + sqrt(3)*{Number(RippleShare(amperes))})", HighestAt(amperes), "V",
            Sources.UnregulatedLine);
        yield return new("Vmin", "Lowest, with the tolerance of the mains and the valley of the ripple", "Vl*(1 - t)*(1 - sqrt(3)*r)",
            @"V_{min} = V_l\,(1 - t)\,(1 - \sqrt{3}\,r)",
            $"{Number(_openVolts * Math.Cos(angle))}*(1 - {Number(_tolerance)})*(1 - sqrt(3)*{Number(RippleShare(amperes))})",
            LowestAt(amperes), "V", Sources.CapacitorInput);
    }

    private static double Flow(double angle) => Math.Sin(angle) - (angle * Math.Cos(angle));

    private double Line(double amperes) => _openVolts - ((_openVolts - _ratedVolts) * amperes / _ratedAmperes);

    private double RippleShare(double amperes) => _rippleShare * amperes / _ratedAmperes;

    private double Ripple(double amperes) => Math.Sqrt(3) * RippleShare(amperes);

    // The flow rises with the angle all the way to a right one.
    private double AngleAt(double amperes) => Bisection.LastHeld(0, Math.PI / 2, Halvings, angle => _scale * Flow(angle) <= amperes);
}
