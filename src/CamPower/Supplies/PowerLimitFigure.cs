using System;
using System.Globalization;
using CamPower.Supplies;
using UnitsNet;

namespace CamPower;

/// <summary>One number of an output against its limit in a table of power limits.</summary>
/// <remarks>Immutable. Least and most are what the declared data and the tolerance of the supply leave open.</remarks>
public sealed class PowerLimitFigure
{
    internal PowerLimitFigure(
        PowerLimitQuantity quantity, double least, double most, double limitAtLeast, double limitAtMost, Citation source)
    {
        bool exceeds = Limits.IsAbove(least, limitAtLeast);
        Quantity = quantity;
        Least = Of(quantity, least);
        Most = double.IsInfinity(most) ? null : Of(quantity, most);
        Limit = Of(quantity, exceeds ? limitAtLeast : limitAtMost);
        Source = source;
        Verdict = exceeds ? PowerLimitVerdict.Exceeds
            : Limits.IsAbove(most, limitAtMost) ? PowerLimitVerdict.Unknown
            : PowerLimitVerdict.WithinNumbers;
    }

    /// <summary>What it is, in words: "open-circuit voltage", "current", "apparent power".</summary>
    public string Name => Quantity switch
    {
        PowerLimitQuantity.OpenCircuitVoltage => "open-circuit voltage",
        PowerLimitQuantity.PeakVoltage => "peak voltage",
        PowerLimitQuantity.Current => "current",
        PowerLimitQuantity.ApparentPower => "apparent power",
        PowerLimitQuantity.DeviceRating => "overcurrent device",
        PowerLimitQuantity.DeviceOpening => "opening of the overcurrent device at 210 % of that",
        _ => "nameplate current",
    };

    internal PowerLimitQuantity Quantity { get; }

    /// <summary>The least that it may be: a voltage, a current, an apparent power or a time.</summary>
    public IQuantity Least { get; }

    /// <summary>The most that it may be, in the same quantity; null where nothing declared sets an end.</summary>
    public IQuantity? Most { get; }

    /// <summary>The limit: at the least voltage where it is exceeded, otherwise at the most, where limits are lower.</summary>
    public IQuantity Limit { get; }

    /// <summary>Where the limit comes from.</summary>
    public Citation Source { get; }

    /// <summary>Exceeds where even the least is above the limit, within the numbers where even the most is not, unknown between.</summary>
    public PowerLimitVerdict Verdict { get; }

    /// <summary>The number and its limit in the invariant culture; never throws.</summary>
    public override string ToString()
    {
        int decimals = Decimals();
        string least = Text(Least, decimals), most = Most is null ? "no known end" : Text(Most, decimals);
        string found = Verdict switch
        {
            PowerLimitVerdict.Exceeds => least,
            PowerLimitVerdict.WithinNumbers => most,
            _ => $"{least} to {most}",
        };
        return $"{Name} {found}, limit {Text(Limit, decimals)}";
    }

    // Two decimals of amperes, one of volt-amperes; more where a number would read like its limit.
    private int Decimals()
    {
        int decimals = Quantity == PowerLimitQuantity.ApparentPower ? 1 : 2;
        while (decimals < 9 && Verdict == PowerLimitVerdict.Exceeds && Text(Least, decimals) == Text(Limit, decimals)) decimals++;
        return decimals;
    }

    private static string Text(IQuantity quantity, int decimals) =>
        quantity.ToString(FormattableString.Invariant($"s{decimals}"), CultureInfo.InvariantCulture);

    private static IQuantity Of(PowerLimitQuantity quantity, double value) => quantity switch
    {
        PowerLimitQuantity.OpenCircuitVoltage or PowerLimitQuantity.PeakVoltage => ElectricPotential.FromVolts(value),
        PowerLimitQuantity.DeviceOpening => Duration.FromSeconds(value),
        PowerLimitQuantity.ApparentPower => ElectricApparentPower.FromVoltamperes(value),
        _ => ElectricCurrent.FromAmperes(value),
    };
}
