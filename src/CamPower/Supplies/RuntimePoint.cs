using System;
using UnitsNet;

namespace CamPower;

/// <summary>How long an uninterruptible supply runs at a load, as its data sheet says.</summary>
/// <remarks>Immutable.</remarks>
/// <example><code>var half = new RuntimePoint(Power.FromWatts(150), Duration.FromMinutes(20));</code></example>
public sealed class RuntimePoint
{
    /// <summary>States a point.</summary>
    /// <param name="load">Power that it gives, above 0. [W]</param>
    /// <param name="runtime">How long it gives that power, above 0. [s]</param>
    /// <exception cref="ArgumentOutOfRangeException">A number is outside its range.</exception>
    public RuntimePoint(Power load, Duration runtime)
    {
        Watts = Require.Positive((double)load.Watts, nameof(load), "W");
        Seconds = Require.Positive(runtime.Seconds, nameof(runtime), "s");
        Load = load;
        Runtime = runtime;
    }

    /// <summary>Power that it gives. [W]</summary>
    public Power Load { get; }

    /// <summary>How long it gives that power. [s]</summary>
    public Duration Runtime { get; }

    internal double Watts { get; }

    internal double Seconds { get; }

    /// <summary>Load and runtime in the invariant culture; never throws.</summary>
    public override string ToString() => FormattableString.Invariant($"{Watts:G6} W for {Seconds / 60:G6} min");
}
