using System;
using System.Globalization;
using UnitsNet;

namespace CamPower;

/// <summary>A length of cable in a run.</summary>
/// <remarks>Immutable. The current travels twice the one-way length.</remarks>
/// <example><code>var segment = new CableSegment(cable, oneWayLength: Length.FromFeet(120));</code></example>
public sealed class CableSegment : RunPart
{
    /// <summary>Describes a length of cable.</summary>
    /// <param name="cable">The cable.</param>
    /// <param name="oneWayLength">Length along the route, one way, at least 0. [any length unit]</param>
    /// <exception cref="ArgumentNullException"><paramref name="cable"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="oneWayLength"/> is negative or infinite.</exception>
    public CableSegment(Cable cable, Length oneWayLength)
    {
        Cable = Require.NotNull(cable, nameof(cable));
        double meters = Require.NotNegative(oneWayLength.Meters, nameof(oneWayLength), "m");
        OneWayLength = oneWayLength;
        OhmsAt20C = meters * (cable.Outgoing.OhmsPerMeterAt20C + cable.Return.OhmsPerMeterAt20C);
        OhmsPerKelvin = meters * (cable.Outgoing.OhmsPerMeterPerKelvin + cable.Return.OhmsPerMeterPerKelvin);
    }

    /// <summary>The cable.</summary>
    public Cable Cable { get; }

    /// <inheritdoc/>
    public override Length OneWayLength { get; }

    internal override double OhmsAt20C { get; }

    internal override double OhmsPerKelvin { get; }

    internal override double OutgoingOhmsAt(double celsius) => OneWayLength.Meters * Cable.Outgoing.OhmsPerMeterAt(celsius);

    internal override double ReturnOhmsAt(double celsius) => OneWayLength.Meters * Cable.Return.OhmsPerMeterAt(celsius);

    /// <summary>Length and cable in the invariant culture; never throws.</summary>
    public override string ToString() => $"{OneWayLength.ToString("s6", CultureInfo.InvariantCulture)} of {Cable}";
}
