using System;
using System.Collections.Generic;
using System.Linq;
using UnitsNet;

namespace CamPower.Tests.Protection;

/// <summary>Protective devices that several tests need, with round numbers.</summary>
internal static class SmallDevices
{
    internal static readonly Temperature Room = Temperature.FromDegreesCelsius(20);

    internal static readonly Citation Sheet = new("data sheet of a test", CitationKind.Declared);

    internal static FuseCharacteristic Characteristic(string name) => name switch
    {
        "IEC F" => FuseCharacteristic.IecQuickActing,
        "IEC F small" => FuseCharacteristic.IecQuickActingTo100Milliamperes,
        "IEC T" => FuseCharacteristic.IecTimeLag,
        "IEC T small" => FuseCharacteristic.IecTimeLagTo100Milliamperes,
        "UL fast" => FuseCharacteristic.UlFast,
        "UL slow" => FuseCharacteristic.UlTimeDelay,
        "blade" => FuseCharacteristic.Blade,
        _ => throw new ArgumentException($"'{name}' is no characteristic.", nameof(name)),
    };

    internal static Fuse Fuse(FuseCharacteristic gates, double amperes, double? meltingIntegral = null, ShareCurve<Temperature>? rerating = null,
        double breaking = 1500, double volts = 250, double ohms = 0, double? dcVolts = double.PositiveInfinity) =>
        new("fuse", Amperes(amperes), gates, ElectricPotential.FromVolts(volts), Amperes(breaking), ElectricResistance.FromOhms(ohms),
            meltingIntegral is double given ? JouleIntegral.FromAmpereSquaredSeconds(given) : null, rerating,
            dcVolts is double direct ? ElectricPotential.FromVolts(Math.Min(direct, volts)) : null);

    internal static ResettableFuse Typical(double hold) => ResettableFuse.Generic16Volt.Single(f => Math.Abs(f.HoldCurrent.Amperes - hold) < 1e-9);

    /// <summary>A resettable fuse as a data sheet of the 16 V class prints it: reference rows S09-043 to S09-060. All trip at twice their hold current,
    /// are timed at 8 A, and stand 16 V.</summary>
    internal static ResettableFuse Printed(double hold)
    {
        (double seconds, double least, double greatest) = PrintedRows[hold];
        return new ResettableFuse(FormattableString.Invariant($"printed resettable fuse, {hold:0.00} A"), Amperes(hold), Amperes(2 * hold), Amperes(8), Duration.FromSeconds(seconds),
            ElectricResistance.FromOhms(least), ElectricResistance.FromOhms(greatest), ResettableFuse.GenericThermal, ElectricPotential.FromVolts(16));
    }

    // Hold current: longest time to trip at 8 A, minimum and maximum resistance.
    internal static IReadOnlyDictionary<double, (double Seconds, double Least, double Greatest)> PrintedRows { get; } = new Dictionary<double, (double, double, double)>
    {
        [0.90] = (1.2, 0.070, 0.180),
        [1.10] = (2.3, 0.050, 0.140),
        [1.35] = (4.5, 0.040, 0.120),
        [1.60] = (9.0, 0.030, 0.110),
        [1.85] = (10.0, 0.030, 0.090),
        [2.50] = (40.0, 0.020, 0.060),
    };

    internal static ResettableFuse Resettable(double hold = 1, double trip = 2, double timed = 8, double seconds = 2, double least = 0.05, double greatest = 0.15,
        double? trippedWatts = null) => new("resettable", Amperes(hold), Amperes(trip), Amperes(timed), Duration.FromSeconds(seconds), ElectricResistance.FromOhms(least),
        ElectricResistance.FromOhms(greatest), ResettableFuse.GenericThermal, ElectricPotential.FromVolts(16), Amperes(40),
        trippedWatts is double watts ? Power.FromWatts(watts) : null);

    internal static ShareCurve<Temperature> Curve(params (double Celsius, double Factor)[] points) => new ShareCurve<Temperature>(
        [.. points.Select(p => new SharePoint<Temperature>(Temperature.FromDegreesCelsius(p.Celsius), Ratio.FromDecimalFractions(p.Factor)))]).WithSource(Sheet);

    internal static ElectricCurrent Amperes(double amperes) => ElectricCurrent.FromAmperes(amperes);
}
