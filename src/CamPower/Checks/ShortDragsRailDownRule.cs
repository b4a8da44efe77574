using System;
using System.Collections.Generic;
using System.Linq;
using UnitsNet;
using static System.FormattableString;

namespace CamPower.Checks;

/// <summary>A short at one output that takes the devices at other outputs down with it, or gives them less than they accept.</summary>
/// <remarks>A Caution where the protective device is certain to operate within a minute, for they are dark for that time, and where the shorted output has none,
/// for they hang on one adapter then; a Failure where nothing is certain to end it. When it ends is not known where something is not stated: a Caution.</remarks>
public sealed class ShortDragsRailDownRule : Rule
{
    private readonly double _seconds;

    /// <summary>The rule with the common 20 ms that a device is taken to ride through.</summary>
    public ShortDragsRailDownRule()
        : this(Duration.FromMilliseconds(CheckConstants.RideThrough.Value))
    {
    }

    /// <summary>The rule with a time of your own.</summary>
    /// <param name="rideThrough">How long a device goes without its supply and stays up, at least 0. [s]</param>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="rideThrough"/> is negative, or not finite.</exception>
    public ShortDragsRailDownRule(Duration rideThrough)
        : base("short-drags-rail-down", Severity.Caution,
            "A short at one output takes the supply down for longer than devices at other outputs ride through: they go dark, or get less than they accept.",
            "Put an electronic limit on each output that leaves the supply below its own limit, or use a supply that gives enough current for the device to operate.",
            CheckConstants.RideThrough.Source)
    {
        _seconds = Require.NotNegative(rideThrough.Seconds, nameof(rideThrough), "s");
        Limit = rideThrough;
    }

    /// <inheritdoc/>
    public override IQuantity? Limit { get; }

    /// <inheritdoc/>
    public override IEnumerable<Finding> Check(Evidence evidence) =>
        from box in Require.NotNull(evidence, nameof(evidence)).Faults.Outputs.GroupBy(output => output.Box)
        where box.Key.Supply.Output.Overload is not null && box.Key.Outputs.Count > 1
        let culprits = box.Select(output => (output, worst: output.Shorts.Where(TakesOthersDown).OrderByDescending(s => SeverityOf(output, s.Fault)).ThenByDescending(s => Taken(s.Rail)).FirstOrDefault()))
            .Where(x => x.worst is not null).ToList()
        where culprits.Count > 0
        let first = culprits.OrderByDescending(x => SeverityOf(x.output, x.worst!.Fault)).ThenByDescending(x => Taken(x.worst!.Rail)).First()
        select Find(Subject.Of(box.Key),
            Invariant($"During a short at {first.worst!.Fault.Place} of output {first.output.Output.Number} the supply {first.worst.Rail}, and at other outputs {Devices(first.worst.Rail)}. {Ending(first.worst.Fault)} So do shorts at {culprits.Count} of its {box.Count()} used outputs."),
            condition: first.worst!.Rail.Condition, severity: SeverityOf(first.output, first.worst.Fault));

    private static Severity SeverityOf(OutputFaults output, ShortCircuit fault)
    {
        if (fault.Verdict == OperatingVerdict.None || ReferenceEquals(output.Output.Protection, ProtectiveDevice.None)) return Severity.Caution;
        bool endsSoon = fault.Verdict == OperatingVerdict.Clears && !(fault.Opening.Latest is Duration latest && latest.Seconds > CheckConstants.LongestDark.Value);
        return endsSoon ? Severity.Caution : Severity.Failure;
    }

    private static int Taken(RailDuringFault rail) => rail.Dark.Count + rail.BelowWindow.Count;

    // Of a device that declares no drop-out voltage it is known only that it gets less than it accepts.
    private static string Devices(RailDuringFault rail)
    {
        string dark = Invariant($"{rail.Dark.Count} {(rail.Dark.Count == 1 ? "device goes" : "devices go")} dark");
        string below = Invariant($"{rail.BelowWindow.Count} {(rail.BelowWindow.Count == 1 ? "device gets" : "devices get")} less than accepted");
        if (rail.BelowWindow.Count == 0) return dark;
        return rail.Dark.Count == 0 ? below : $"{dark} and {below}";
    }

    private static string Ending(ShortCircuit fault) => fault.Verdict == OperatingVerdict.None
        ? "When it ends is not known."
        : $"The protective device {fault.Opening}.";

    private bool TakesOthersDown(SiteShort fault) => Taken(fault.Rail) > 0
        && !(fault.Fault.Verdict == OperatingVerdict.Clears && fault.Fault.Opening.Latest is Duration latest && latest.Seconds <= _seconds);
}
