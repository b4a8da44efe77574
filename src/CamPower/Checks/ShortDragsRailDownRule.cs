using System;
using System.Collections.Generic;
using System.Linq;
using UnitsNet;
using static System.FormattableString;

namespace CamPower.Checks;

/// <summary>A short at one output that takes the devices at other outputs down with it.</summary>
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
            "A short at one output takes the supply down for longer than devices at other outputs ride through.",
            "Use a faster device at each output, a supply that gives enough current to open it, or an electronic limit at each output.",
            CheckConstants.RideThrough.Source)
    {
        _seconds = Require.NotNegative(rideThrough.Seconds, nameof(rideThrough), "s");
        Limit = rideThrough;
    }

    /// <inheritdoc/>
    public override IQuantity? Limit { get; }

    /// <inheritdoc/>
    public override IEnumerable<Finding> Check(Evidence evidence) =>
        from output in Require.NotNull(evidence, nameof(evidence)).Faults.Outputs
        let worst = output.Shorts.Where(TakesOthersDown).OrderByDescending(s => s.Rail.Dark.Count).FirstOrDefault()
        where worst is not null
        select Find(Subject.Of(output.Box, output.Output),
            Invariant($"While a short at {worst.Fault.Place} lasts the supply {worst.Rail}, and at other outputs {string.Join(", ", worst.Rail.Dark)} {(worst.Rail.Dark.Count == 1 ? "goes" : "go")} dark; the protective device {worst.Fault.Opening}."),
            condition: worst.Rail.Condition);

    private bool TakesOthersDown(SiteShort fault) => fault.Rail.Dark.Count > 0
        && !(fault.Fault.Verdict == ClearingVerdict.Clears && fault.Fault.Opening.Latest is Duration latest && latest.Seconds <= _seconds);
}
