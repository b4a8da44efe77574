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
    private readonly string _window = string.Empty;

    /// <summary>Draws a run.</summary>
    /// <param name="result">What the run gives.</param>
    /// <param name="scale">The unit of its length.</param>
    /// <param name="window">What the camera accepts, or null where nothing of it is drawn.</param>
    /// <param name="kept">A run to draw beside it, or null.</param>
    public ProfileDrawing(RunResult result, LengthScale scale, VoltageRange? window = null, RunResult? kept = null)
    {
        _sourceVolts = result.SourceVoltage.Volts;
        _scale = scale;
        _length = scale.In(result.OneWayLength);
        double longest = Math.Max(_length, kept is RunResult other ? scale.In(other.OneWayLength) : 0);
        double highest = new[] { _sourceVolts, window?.Highest.Volts ?? 0, kept?.SourceVoltage.Volts ?? 0 }.Max();
        Frame = new ChartFrame(longest > 0 ? longest : 1, highest * Headroom);
        Supply = Level(_sourceVolts);
        if (window is not null)
        {
            Accepted = [(Level(window.Lowest.Volts), window.Lowest.Volts), (Level(window.Highest.Volts), window.Highest.Volts)];
            _window = $" The camera accepts {Shown.Window(result, window)}.";
        }

        if (kept is RunResult before && before.HasOperatingPoint) Kept = Frame.Path(PointsOf(before));
        if (!result.TryGetOperatingPoint(out OperatingPoint point)) return;

        LoadVolts = point.Voltage.Volts;
        List<(double, double)> along = [.. PointsOf(result)];
        Along = Frame.Path(along);
        Lost = Frame.Path([(0, _sourceVolts), .. along, (_length, _sourceVolts)]) + " Z";
    }

    public ChartFrame Frame { get; }

    /// <summary>Path of the supply's voltage, level along the run.</summary>
    public string Supply { get; }

    /// <summary>Path of the voltage along the run, or null without an operating point.</summary>
    public string? Along { get; }

    /// <summary>Path of the voltage along the run that is kept, or null.</summary>
    public string? Kept { get; }

    /// <summary>Paths of the lowest and the highest voltage that the camera accepts, with the volts; empty without a window.</summary>
    public IReadOnlyList<(string Path, double Volts)> Accepted { get; } = [];

    /// <summary>Outline of what is lost, between the two.</summary>
    public string? Lost { get; }

    /// <summary>Where the load is, across.</summary>
    public double End => Frame.X(_length > 0 ? _length : Frame.Across);

    /// <summary>Voltage at the load, or null without an operating point.</summary>
    public double? LoadVolts { get; }

    /// <summary>What the drawing shows, for those who do not see it.</summary>
    public string Description => (LoadVolts is double volts
        ? $"The voltage falls evenly from {Shown.Volts(_sourceVolts)} at the supply to {Shown.Volts(volts)} at the load, {Shown.Number(_length)} {_scale.Symbol} away."
        : "There is no operating point, so no voltage along the run settles.") + _window;

    private IEnumerable<(double, double)> PointsOf(RunResult result) => result.Profile().Points.Select(p => (_scale.In(p.Distance), p.Voltage.Volts));

    private string Level(double volts) => Frame.Path([(0, volts), (Frame.Across, volts)]);
}
