using System;
using System.Linq;
using CamPower.Supplies;
using CamPower.Tests.Protection;
using UnitsNet;
using static CamPower.Tests.Supplies.LimitedOutputs;

namespace CamPower.Tests.Supplies;

/// <summary>Numbers of supplies and boxes of which none is 1, 0 or equal to another. All by hand.</summary>
public class SupplyNumbersTests
{
    // 7 K for every 1000 m above 1500 m: 8.4 K at 2700 m.
    [Fact]
    public void Altitude_CountsFromItsStart()
    {
        var derating = new AltitudeDerating(Length.FromMeters(1500), TemperatureDelta.FromKelvins(7));
        Assert.Equal(8.4, derating.RiseAt(Length.FromMeters(2700)).Kelvins, 1e-9);
        Assert.Equal(0, derating.RiseAt(Length.FromMeters(1400)).Kelvins);
        Assert.Equal("7 K for every 1000 m above 1500 m", derating.ToString());
    }

    // Half of its rating at -20 °C, all of it from 10 °C to 50 °C, 40 % at 70 °C; a low line leaves 80 %; 5 K for every 1000 m above 2000 m.
    // From 60 °C on at 3000 m: 65 °C, (1 + 3 × 0.4)/4 = 55 %. From -30 °C on somewhere all of it.
    [Theory]
    [InlineData(-30, 200, 3000, 1)]
    [InlineData(50, 200, 0, 1)]
    [InlineData(60, 200, 0, 0.7)]
    [InlineData(60, 200, 3000, 0.55)]
    [InlineData(60, 100, 3000, 0.44)]
    [InlineData(71, 200, 0, 0)]
    public void LargestShare_IsThatOfAnyWarmerAir(double celsius, double line, double meters, double share) =>
        Assert.Equal(share, Sheet.LargestShareFrom(celsius, line, meters), 1e-9);

    // 2·(0.25 × 0.125 + 0.25 × 0.5 + 0.125 × 0.5) = 0.4375 m² are all that the sun can shine on.
    [Theory]
    [InlineData(0.4375, true)]
    [InlineData(0.438, false)]
    public void TheSun_ShinesOnNoMoreThanThereIs(double squareMeters, bool isPossible)
    {
        if (isPossible) Assert.Equal(squareMeters, Steel(squareMeters).SunlitArea!.Value.SquareMeters);
        else Assert.Throws<ArgumentOutOfRangeException>("sunlitArea", () => Steel(squareMeters));
    }

    [Fact]
    public void AnEnclosure_SaysItsSizeAndWhetherAirPasses()
    {
        Assert.Equal($"250 × 500 × 125 mm, {EnclosureWall.PaintedSteel}", Steel(0.1).ToString());
        Assert.Equal($"250 × 500 × 125 mm, {EnclosureWall.PaintedSteel}, ventilated", Steel(0.1, isVentilated: true).ToString());
    }

    // 12 V that hold 7 A behind 0.4 Ω. Up to its rating a supply keeps its voltage: rated 7 A it gives at least 84 VA; rated 5 A 7·(12 − 2.8) = 64.4 VA.
    [Theory]
    [InlineData(7, 84)]
    [InlineData(5, 64.4)]
    public void BeyondItsRating_ItsResistanceCounts(double rated, double voltAmperes)
    {
        var supply = new DcOutput(Volts(12), Amps(rated), Ratio.Zero, sourceResistance: ElectricResistance.FromOhms(0.4), overload: OverloadBehavior.ConstantCurrent(Amps(7)));
        var delivered = new OutputDelivery(supply, new BoxOutput(1, Amps(9), ProtectiveDevice.None));
        Assert.Equal(7, delivered.LeastAmperes, 1e-9);
        Assert.Equal(voltAmperes, delivered.LeastVoltAmperes, 1e-9);
        Assert.Equal(64.4, delivered.MostVoltAmperes, 1e-9);
    }

    // A resettable fuse caps what an output delivers by the current of its test, if it has tripped there by the 5 s of the soonest measurement (IEC 62368-1, from memory).
    [Theory]
    [InlineData(4.9, 7.5)]
    [InlineData(5, 7.5)]
    [InlineData(5.1, 11)]
    public void AResettableFuse_CapsByItsTest(double seconds, double most)
    {
        var supply = new DcOutput(Volts(12), Amps(10), Ratio.Zero, overload: OverloadBehavior.ConstantCurrent(Amps(11)));
        ResettableFuse fuse = SmallDevices.Resettable(hold: 1.3, trip: 2.6, timed: 7.5, seconds: seconds);
        var delivered = new OutputDelivery(supply, new BoxOutput(1, Amps(2), fuse));
        Assert.Equal((1.3, most), (delivered.LeastAmperes, delivered.MostAmperes));
    }

    private static Derating Sheet { get; } = new(
        new ShareCurve<Temperature>(At(-20, 0.5), At(10, 1), At(50, 1), At(70, 0.4)),
        new ShareCurve<ElectricPotential>(new(Volts(100), Ratio.FromPercent(80)), new(Volts(200), Ratio.FromPercent(100))), AltitudeDerating.Generic);

    private static SharePoint<Temperature> At(double celsius, double share) => new(Temperature.FromDegreesCelsius(celsius), Ratio.FromDecimalFractions(share));

    private static Enclosure Steel(double sunlit, bool isVentilated = false) => new(Length.FromMeters(0.25), Length.FromMeters(0.5), Length.FromMeters(0.125),
        EnclosureWall.PaintedSteel, EnclosureFaces.OnWall, Area.FromSquareMeters(sunlit), isVentilated: isVentilated);
}
