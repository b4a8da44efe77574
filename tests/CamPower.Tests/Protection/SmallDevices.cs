using System;
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

    internal static ResettableFuse Generic(double hold) => ResettableFuse.Generic16Volt.Single(f => Math.Abs(f.HoldCurrent.Amperes - hold) < 1e-9);

    internal static ResettableFuse Resettable(double hold = 1, double trip = 2, double timed = 8, double seconds = 2, double least = 0.05, double greatest = 0.15,
        double? trippedWatts = null) => new("resettable", Amperes(hold), Amperes(trip), Amperes(timed), Duration.FromSeconds(seconds), ElectricResistance.FromOhms(least),
        ElectricResistance.FromOhms(greatest), ResettableFuse.GenericThermal, ElectricPotential.FromVolts(16), Amperes(40),
        trippedWatts is double watts ? Power.FromWatts(watts) : null);

    internal static ShareCurve<Temperature> Curve(params (double Celsius, double Factor)[] points) => new ShareCurve<Temperature>(
        [.. points.Select(p => new SharePoint<Temperature>(Temperature.FromDegreesCelsius(p.Celsius), Ratio.FromDecimalFractions(p.Factor)))]).WithSource(Sheet);

    internal static ElectricCurrent Amperes(double amperes) => ElectricCurrent.FromAmperes(amperes);
}
