using System;
using System.Collections.Generic;
using System.Linq;
using CamPower.Backup;
using UnitsNet;

namespace CamPower;

/// <summary>A box on its battery from full to the end: what the voltage does, and which device drops out when.</summary>
/// <remarks>
/// Immutable. A device that drops out counts as off from then on, also where it restarts (<see cref="BatteryDropOut.ComesBack"/>). One
/// without a stated drop-out voltage counts as off below the lowest voltage that it accepts. The battery has its open-circuit voltage at
/// each state of charge, less what it loses under load. A protective device that may open is taken to stay closed:
/// <see cref="Outputs"/> tells.
/// </remarks>
public sealed class BatteryRun
{
    private readonly Lazy<BatteryRun?> _ifRestartsDraw;

    internal BatteryRun(DistributionBox box, IReadOnlyList<BatteryRunPoint> points, BatteryRunEnd end,
        IReadOnlyList<BatteryDropOut> dropOuts, IReadOnlyList<BatteryDropOut> belowAccepted, IReadOnlyList<OutputOnBattery> outputs,
        Func<BatteryRun?> ifRestartsDraw)
    {
        Box = box;
        Points = points;
        End = end;
        DropOuts = dropOuts;
        BelowAccepted = belowAccepted;
        Outputs = outputs;
        _ifRestartsDraw = new Lazy<BatteryRun?>(ifRestartsDraw);
    }

    /// <summary>The box.</summary>
    public DistributionBox Box { get; }

    /// <summary>The run from full to its end, in time.</summary>
    public IReadOnlyList<BatteryRunPoint> Points { get; }

    /// <summary>The devices that drop out before the end, in time.</summary>
    public IReadOnlyList<BatteryDropOut> DropOuts { get; }

    /// <summary>The devices that have less voltage than they accept before they drop out, each from when on, in time.</summary>
    public IReadOnlyList<BatteryDropOut> BelowAccepted { get; }

    /// <summary>The outputs in use, with the most that each carries.</summary>
    public IReadOnlyList<OutputOnBattery> Outputs { get; }

    /// <summary>The same run if the devices that restart again and again draw all the time; null where none does. What happens lies between
    /// the two.</summary>
    public BatteryRun? IfRestartsDraw => _ifRestartsDraw.Value;

    /// <summary>What ends it.</summary>
    public BatteryRunEnd End { get; }

    /// <summary>Time until the last device is off. [h]</summary>
    public Duration Length => Points[Points.Count - 1].After;

    /// <summary>Time until the first device is off. [h]</summary>
    public Duration ToFirstDropOut => DropOuts.Count > 0 ? DropOuts[0].After : Length;

    /// <summary>The time until the first device is off against the time wanted.</summary>
    /// <param name="wanted">The time for which every device must run, at least 0. [h]</param>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="wanted"/> is outside its range.</exception>
    /// <example><code>bool overnight = run.Lasts(Duration.FromHours(14)).Verdict == Verdict.Holds;</code></example>
    public Judgment Lasts(Duration wanted)
    {
        double seconds = Require.NotNegative(wanted.Seconds, nameof(wanted), "s");
        return Judgment.AtLeast(ToFirstDropOut.Seconds, seconds, seconds, s => Duration.FromHours(s / Battery.SecondsAnHour));
    }

    /// <summary>The most that the battery gives. [A]</summary>
    internal double MostAmperes => Points.Max(p => p.Amperes);

    /// <summary>The shortest time until the last device is off. [s]</summary>
    internal double ShortestSeconds => Math.Min(Length.Seconds, IfRestartsDraw?.Length.Seconds ?? double.PositiveInfinity);

    /// <summary>The length, with both ends where a device restarts again and again. [h]</summary>
    internal string LengthInWords
    {
        get
        {
            string shortest = FormattableString.Invariant($"{ShortestSeconds / Battery.SecondsAnHour:0.0} h"),
                longest = FormattableString.Invariant($"{Length.Hours:0.0} h");
            return shortest.Equals(longest, StringComparison.Ordinal) ? $"after {longest}" : $"after {shortest} to {longest}";
        }
    }

    /// <summary>Box, first drop-out and end in the invariant culture; never throws.</summary>
    public override string ToString() =>
        FormattableString.Invariant($"{Box} on {Box.Battery!.Name}: {FirstInWords}; {EndInWords} {LengthInWords}");

    private string FirstInWords => DropOuts.Count > 0 ? DropOuts[0].ToString() : "all devices run to the end";

    private string EndInWords => End switch
    {
        BatteryRunEnd.LastDeviceOff => "the last device is off",
        BatteryRunEnd.CutOff => "the battery is cut off",
        _ => "the battery is empty",
    };
}
