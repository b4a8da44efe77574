using System;
using UnitsNet;

namespace CamPower.Protection;

/// <summary>Factors of a curve over the temperature of the air around a protective device, and where the curve ends.</summary>
internal static class AmbientRange
{
    /// <summary>Whether the curve says anything of air of a temperature.</summary>
    internal static bool Covers(this ShareCurve<Temperature> curve, double celsius) => celsius >= curve.Lowest && celsius <= curve.Highest;

    /// <summary>The factor in air of a temperature; refused outside the curve. [1]</summary>
    internal static double FactorAtCelsius(this ShareCurve<Temperature> curve, double celsius, string parameter) => curve.ShareAt(celsius)
        ?? throw Require.OutOfRange(celsius, parameter, "°C", FormattableString.Invariant($"from {curve.Lowest} °C to {curve.Highest}"));

    /// <summary>The factor beyond the hot end as well, where it is at most that of the last point; null below the cold end, where nothing
    /// is known. [1]</summary>
    internal static double? MostFactorAt(this ShareCurve<Temperature> curve, double celsius) =>
        curve.ShareAt(Math.Min(celsius, curve.Highest));

    /// <summary>How far the air around a device is outside the curve; null where it is not.</summary>
    internal static ValidityBreach? BreachAt(this ShareCurve<Temperature> curve, double celsius, ProtectiveDevice device) =>
        curve.Covers(celsius) ? null
        : new ValidityBreach($"air around {device}", curve.Source
            ?? Sources.DeviceCarriesItsRating, Temperature.FromDegreesCelsius(celsius),
            Temperature.FromDegreesCelsius(celsius < curve.Lowest ? curve.Lowest : curve.Highest));
}
