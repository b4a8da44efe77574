using System;
using System.Collections.Generic;
using System.Linq;
using CamPower;
using Classroom.Bench;
using UnitsNet;

namespace Classroom.Charts;

/// <summary>The load line: the current that the run can bring against the voltage at its end, and the current that the load draws.</summary>
public sealed class LoadLineDrawing
{
    private const int CurvePoints = 60;
    private const double Headroom = 1.15, LabelHeight = 20, LabelGap = 10;

    private readonly double _sourceVolts;
    private readonly Load _load;

    public LoadLineDrawing(RunResult result)
    {
        _sourceVolts = result.SourceVoltage.Volts;
        _load = result.Load;
        double ohms = result.LoopResistance.Ohms, atSource = _load.CurrentAt(result.SourceVoltage).Amperes;
        double intoShort = ohms > 0 ? _sourceVolts / ohms : 0;
        double most = Math.Max(intoShort, Headroom * atSource);
        Frame = new ChartFrame(_sourceVolts, most > 0 ? most : 1);
        Brings = Frame.Path([(0, intoShort > 0 ? intoShort : Frame.Up), (_sourceVolts, intoShort > 0 ? 0 : Frame.Up), (_sourceVolts, 0)]);
        Draws = Frame.Path(LoadCurve());
        if (!result.TryGetOperatingPoint(out OperatingPoint point)) return;

        Upper = (point.Voltage.Volts, point.Current.Amperes);
        double unstable = result.UnstableVoltage.Volts;
        if (unstable > 0) Lower = (unstable, _load.CurrentAt(result.UnstableVoltage).Amperes);
    }

    public ChartFrame Frame { get; }

    /// <summary>Path of what the run can bring.</summary>
    public string Brings { get; }

    /// <summary>Path of what the load draws.</summary>
    public string Draws { get; }

    /// <summary>Volts and amperes of the upper, stable root, or null without an operating point.</summary>
    public (double Volts, double Amperes)? Upper { get; }

    /// <summary>Volts and amperes of the lower root, or null where there is none: without constant power, or below what can be drawn.</summary>
    public (double Volts, double Amperes)? Lower { get; }

    /// <summary>Right end and foot of the upper root's label: below both lines, or, where the axis leaves no room, above the root.</summary>
    public (double X, double Y) UpperLabel
    {
        get
        {
            double x = Frame.X(Upper!.Value.Volts), y = Frame.Y(Upper.Value.Amperes);
            return ChartFrame.Bottom - y > LabelHeight ? (x - LabelGap, y + LabelHeight - 2) : (ChartFrame.Right, y - LabelGap);
        }
    }

    /// <summary>Left end and foot of the lower root's label: above both lines, which fall to the right of it.</summary>
    public (double X, double Y) LowerLabel
    {
        get
        {
            double x = Frame.X(Lower!.Value.Volts), y = Frame.Y(Lower.Value.Amperes);
            return (x + LabelGap, Math.Max(ChartFrame.Top + LabelGap, y - (LabelGap / 2)));
        }
    }

    /// <summary>What the drawing shows, for those who do not see it.</summary>
    public string Description
    {
        get
        {
            string falls = $"What the run can bring falls in a straight line from {Shown.Amperes(Frame.Up)} at 0 V to nothing at {Shown.Volts(_sourceVolts)}.";
            if (Upper is not { } upper) return falls + " What the load draws stays above it everywhere: the two never meet, and there is no operating point.";
            string meets = $" It meets what the load draws at {Shown.Volts(upper.Volts)} and {Shown.Amperes(upper.Amperes)}, the upper root, which is stable";
            return falls + meets + (Lower is { } lower ? $", and at {Shown.Volts(lower.Volts)} and {Shown.Amperes(lower.Amperes)}, the lower root, which does not last." : ".");
        }
    }

    private IEnumerable<(double Volts, double Amperes)> LoadCurve()
    {
        // A load of constant power leaves the drawing upwards where its voltage gets low.
        double lowest = (double)_load.PowerComponent.Watts / Frame.Up;
        double ratio = lowest > 0 ? Math.Pow(_sourceVolts / lowest, 1.0 / CurvePoints) : 0;
        return Enumerable.Range(0, CurvePoints + 1)
            .Select(i => lowest > 0 ? lowest * Math.Pow(ratio, i) : _sourceVolts * Math.Max(i, 1e-6) / CurvePoints)
            .Select(v => (v, _load.CurrentAt(ElectricPotential.FromVolts(v)).Amperes));
    }
}
