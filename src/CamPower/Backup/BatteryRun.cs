using System;
using System.Collections.Generic;
using CamPower.Backup;
using UnitsNet;

namespace CamPower;

/// <summary>A box on its battery from full to the end: what the voltage does, and which device drops out when.</summary>
/// <remarks>
/// Immutable. A device that drops out counts as off from then on, also where it restarts (<see cref="BatteryDropOut.ComesBack"/>). One
/// without a stated drop-out voltage counts as off below the lowest voltage that it accepts. The battery has its open-circuit voltage at
/// each state of charge, less the drop in its resistance.
/// </remarks>
public sealed class BatteryRun
{
    internal BatteryRun(
        DistributionBox box, IReadOnlyList<BatteryRunPoint> points, IReadOnlyList<BatteryDropOut> dropOuts, BatteryRunEnd end)
    {
        Box = box;
        Points = points;
        DropOuts = dropOuts;
        End = end;
    }

    /// <summary>The box.</summary>
    public DistributionBox Box { get; }

    /// <summary>The run from full to its end, in time.</summary>
    public IReadOnlyList<BatteryRunPoint> Points { get; }

    /// <summary>The devices that drop out before the end, in time.</summary>
    public IReadOnlyList<BatteryDropOut> DropOuts { get; }

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

    /// <summary>Box, first drop-out and end in the invariant culture; never throws.</summary>
    public override string ToString() =>
        FormattableString.Invariant($"{Box} on {Box.Battery!.Name}: {FirstInWords}; {EndInWords} after {Length.Hours:0.00} h");

    private string FirstInWords => DropOuts.Count > 0 ? DropOuts[0].ToString() : "all devices run to the end";

    private string EndInWords => End switch
    {
        BatteryRunEnd.LastDeviceOff => "the last device is off",
        BatteryRunEnd.CutOff => "the battery is cut off",
        _ => "the battery is empty",
    };
}
