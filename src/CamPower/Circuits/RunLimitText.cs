using System;
using System.Globalization;
using UnitsNet;

namespace CamPower.Circuits;

/// <summary>Limits and values in words.</summary>
internal static class RunLimitText
{
    internal static string Of(BindingLimit limit) => limit switch
    {
        BindingLimit.LowestVoltage => "the lowest accepted voltage",
        BindingLimit.LargestDrop => "the largest accepted drop",
        BindingLimit.Collapse => "collapse",
        BindingLimit.TemperatureRange => "the materials' range of temperature",
        BindingLimit.SeriesEnd => "the end of the series of sizes",
        _ => "the end of what is calculated with",
    };

    /// <summary>A quantity at six significant digits, anything else as it prints itself.</summary>
    internal static string Of<T>(T value) where T : struct => value is IQuantity quantity
        ? FormattableString.Invariant($"{(double)quantity.Value:G6} ") + quantity.ToString("a", CultureInfo.InvariantCulture)
        : value.ToString() ?? string.Empty;
}
