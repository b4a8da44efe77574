using System;
using System.Linq;
using CamPower.Tests.Protection;
using UnitsNet;

namespace CamPower.Tests.Verdicts;

/// <summary>Cables and protective devices of which every number is declared.</summary>
internal static class Parts
{
    internal static InstallationMethod InItsOwnCable { get; } = InstallationMethod.InCableOrRaceway(currentCarryingConductors: 2);

    /// <summary>Re-rating of a fuse as its sheet may have it: the rating at 23 °C, 2 % less for 10 K more.</summary>
    private static ShareCurve<Temperature> FuseCurve { get; } =
        new ShareCurve<Temperature>(Point(-40, 1.126), Point(23, 1), Point(83, 0.88)).WithSource(new Citation("data sheet of the fuse, invented", CitationKind.Declared));

    internal static OverloadBehavior Holds(double amperes) => OverloadBehavior.ConstantCurrent(ElectricCurrent.FromAmperes(amperes));

    internal static OverloadBehavior ShutsDown(double amperes, double milliseconds = 100) =>
        OverloadBehavior.Shutdown(ElectricCurrent.FromAmperes(amperes), Duration.FromMilliseconds(milliseconds));

    internal static OverloadBehavior Pulses(double amperes) =>
        OverloadBehavior.Hiccup(ElectricCurrent.FromAmperes(amperes), Duration.FromMilliseconds(100), Duration.FromSeconds(1.5));

    internal static OverloadBehavior FoldsBack(double amperes, double atShort) =>
        OverloadBehavior.Foldback(ElectricCurrent.FromAmperes(amperes), ElectricCurrent.FromAmperes(atShort));

    internal static ElectronicLimit Electronic(double amperes) => new(FormattableString.Invariant($"electronic limit {amperes} A"),
        ElectricCurrent.FromAmperes(amperes), Ratio.FromPercent(10), Duration.FromMilliseconds(50), ElectricResistance.FromMilliohms(50),
        ElectricPotential.FromVolts(80), retriesAfter: Duration.FromSeconds(2));

    /// <summary>F to IEC 60127-2, high breaking capacity. By ratio its resistance falls and its melting integral grows with the square
    /// of the rating.</summary>
    internal static Fuse Quick(double amperes, double? melting = 0.5, double breaking = 1500) =>
        Of($"F{amperes}A", amperes, FuseCharacteristic.IecQuickActing, melting * amperes * amperes, breaking);

    /// <summary>A fuse of which nobody says what the air around it does.</summary>
    internal static Fuse Unrerated(double amperes) =>
        new($"F{amperes}A, no re-rating", ElectricCurrent.FromAmperes(amperes), FuseCharacteristic.IecQuickActing,
        ElectricPotential.FromVolts(250), ElectricCurrent.FromAmperes(1500), ElectricResistance.FromOhms(0.12 / amperes),
            JouleIntegral.FromAmpereSquaredSeconds(0.5), dcVoltageRating: ElectricPotential.FromVolts(63));

    internal static Fuse Lag(double amperes) => Of($"T{amperes}A", amperes, FuseCharacteristic.IecTimeLag, 5 * amperes * amperes, 1500);

    internal static Fuse UlFast(double amperes) =>
        Of($"UL fast {amperes} A", amperes, FuseCharacteristic.UlFast, 0.5 * amperes * amperes, 1000);

    internal static Fuse Blade(double amperes) =>
        Of($"blade {amperes} A", amperes, FuseCharacteristic.Blade, 2 * amperes * amperes, 1000, volts: 32, dcVolts: 32);

    internal static ResettableFuse Resettable(double holdAmperes) =>
        SmallDevices.Printed(holdAmperes);

    /// <summary>A resettable fuse of the 60 V class: trips at twice its hold current, timed at 8 A.</summary>
    internal static ResettableFuse Resettable60Volt(double holdAmperes, double seconds) => new(FormattableString.Invariant($"60 V, {holdAmperes} A"),
        ElectricCurrent.FromAmperes(holdAmperes), ElectricCurrent.FromAmperes(2 * holdAmperes), ElectricCurrent.FromAmperes(8), Duration.FromSeconds(seconds),
        ElectricResistance.FromOhms(0.07), ElectricResistance.FromOhms(0.31), ResettableFuse.GenericThermal, ElectricPotential.FromVolts(60),
        ElectricCurrent.FromAmperes(40));

    /// <summary>An electronic limit that stays open until somebody resets it.</summary>
    internal static ElectronicLimit Latched(double amperes) => new(FormattableString.Invariant($"latched limit {amperes} A"),
        ElectricCurrent.FromAmperes(amperes), Ratio.FromPercent(10), Duration.FromMilliseconds(50), ElectricResistance.FromMilliohms(50),
        ElectricPotential.FromVolts(80));

    internal static Fuse UlDelayed(double amperes) =>
        Of($"UL time-delay {amperes} A", amperes, FuseCharacteristic.UlTimeDelay, 5 * amperes * amperes, 1000);

    internal static Cable Pair(int awg, ConductorMaterial? material = null) =>
        Cable.Pair(WireSize.Awg(awg), Stranding.Solid, material ?? ConductorMaterial.AnnealedCopper, insulation: Insulation.Pvc70);

    internal static Cable MetricPair(double squareMillimeters) =>
        Cable.Pair(WireSize.SquareMillimeters(squareMillimeters), Stranding.IecClass2, ConductorMaterial.AnnealedCopper,
            insulation: Insulation.Pvc70);

    internal static Inrush Surge(double peak, double ampereSquaredSeconds) =>
        new(ElectricCurrent.FromAmperes(peak), JouleIntegral.FromAmpereSquaredSeconds(ampereSquaredSeconds));

    internal static Enclosure Steel(double width, double height, double depth, double sunlit = 0, double otherWatts = 0) => new(
        Length.FromMeters(width), Length.FromMeters(height), Length.FromMeters(depth), EnclosureWall.PaintedSteel, EnclosureFaces.OnWall,
        sunlit > 0 ? Area.FromSquareMeters(sunlit) : null, otherWatts > 0 ? Power.FromWatts(otherWatts) : null);

    private static Fuse Of(string name, double amperes, FuseCharacteristic kind, double? melting, double breaking, double volts = 250,
        double dcVolts = 63) =>
        new(name, ElectricCurrent.FromAmperes(amperes), kind,
        ElectricPotential.FromVolts(volts), ElectricCurrent.FromAmperes(breaking), ElectricResistance.FromOhms(0.12 / amperes),
        melting is double integral ? JouleIntegral.FromAmpereSquaredSeconds(integral) : null, FuseCurve,
        dcVoltageRating: ElectricPotential.FromVolts(dcVolts));

    private static SharePoint<Temperature> Point(double celsius, double factor) =>
        new(Temperature.FromDegreesCelsius(celsius), Ratio.FromDecimalFractions(factor));
}
