using System;
using System.Collections.Generic;
using System.Linq;
using CamPower;
using Classroom.Bench;

namespace Classroom.Charts;

/// <summary>The voltage along the run, from the supply to the load.</summary>
public sealed class ProfileDrawing
{
    private const double Headroom = 1.1;

    private readonly double _sourceVolts, _length;
    private readonly LengthScale _scale;

    public ProfileDrawing(RunResult result, LengthScale scale)
    {
        _sourceVolts = result.SourceVoltage.Volts;
        _scale = scale;
        _length = scale.In(result.OneWayLength);
        Frame = new ChartFrame(_length > 0 ? _length : 1, _sourceVolts * Headroom);
        Supply = Frame.Path([(0, _sourceVolts), (Frame.Across, _sourceVolts)]);
        if (!result.TryGetOperatingPoint(out OperatingPoint point)) return;

        LoadVolts = point.Voltage.Volts;
        List<(double, double)> along = [.. result.Profile().Points.Select(p => (scale.In(p.Distance), p.Voltage.Volts))];
        Along = Frame.Path(along);
        Lost = Frame.Path([(0, _sourceVolts), .. along, (_length, _sourceVolts)]) + " Z";
    }

    public ChartFrame Frame { get; }

    /// <summary>Path of the supply's voltage, level along the run.</summary>
    public string Supply { get; }

    /// <summary>Path of the voltage along the run, or null without an operating point.</summary>
    public string? Along { get; }

    /// <summary>Outline of what is lost, between the two.</summary>
    public string? Lost { get; }

    /// <summary>Voltage at the load, or null without an operating point.</summary>
    public double? LoadVolts { get; }

    /// <summary>What the drawing shows, for whoever does not see it.</summary>
    public string Description => LoadVolts is double volts
        ? $"The voltage falls evenly from {Shown.Volts(_sourceVolts)} at the supply to {Shown.Volts(volts)} at the load, {Shown.Number(_length)} {_scale.Symbol} away."
        : "There is no operating point, so no voltage along the run settles.";
}
