using System;
using System.Linq;
using UnitsNet;

namespace CamPower.Tests.Protection;

public class ResettableFuseTests
{
    // Reference rows S09-061 to S09-070, common practice, from memory: factor on the hold current. Between 50 and 60 °C by hand.
    [Theory]
    [InlineData(-40, 1.56)]
    [InlineData(-20, 1.37)]
    [InlineData(0, 1.18)]
    [InlineData(20, 1.00)]
    [InlineData(30, 0.90)]
    [InlineData(40, 0.80)]
    [InlineData(50, 0.70)]
    [InlineData(52, 0.68)]
    [InlineData(60, 0.60)]
    [InlineData(70, 0.50)]
    [InlineData(85, 0.35)]
    public void HoldAndTrip_FallWithTheAirAround(double celsius, double factor)
    {
        ResettableFuse fuse = SmallDevices.Printed(1.10);
        Temperature ambient = Temperature.FromDegreesCelsius(celsius);
        Assert.Equal(1.10 * factor, fuse.HoldCurrentAt(ambient).Amperes, 1e-12);
        Assert.Equal(2.20 * factor, fuse.TripCurrentAt(ambient).Amperes, 1e-12);
        Assert.Equal(factor, ResettableFuse.GenericThermal.ShareAt(ambient)!.Value.DecimalFractions, 1e-12);
    }

    // A supply in current limit at 2 A need not trip a 1.1 A device in a cool box; in air of 40 °C its trip current is 1.76 A.
    [Theory]
    [InlineData(20, 1.10, OperatingVerdict.DoesNotOperate)]
    [InlineData(20, 1.11, OperatingVerdict.MayOperate)]
    [InlineData(20, 2.00, OperatingVerdict.MayOperate)]
    [InlineData(40, 2.00, OperatingVerdict.Operates)]
    [InlineData(40, 0.87, OperatingVerdict.DoesNotOperate)]
    [InlineData(40, 0.89, OperatingVerdict.MayOperate)]
    public void Verdict_IsThatOfAThermometer(double celsius, double amperes, OperatingVerdict verdict) => Assert.Equal(verdict,
        SmallDevices.Printed(1.10).OpeningAt(SmallDevices.Amperes(amperes), Temperature.FromDegreesCelsius(celsius)).Verdict);

    // It trips for certain above its trip current, but the sheet bounds the time from 8 A on only.
    [Fact]
    public void TimeToTrip_IsKnownFromTheTestCurrentOn()
    {
        ResettableFuse fuse = SmallDevices.Printed(1.10);
        OpeningTimes between = fuse.OpeningAt(SmallDevices.Amperes(5), SmallDevices.Room);
        Assert.Equal(OperatingVerdict.Operates, between.Verdict);
        Assert.Null(between.Latest);
        Assert.Equal(2.3, fuse.OpeningAt(SmallDevices.Amperes(8), SmallDevices.Room).Latest!.Value.Seconds);
    }

    // Above its test current 2 s at 8 A are 0.5 s at 16 A, and at its 40 A 0.08 s; above those nothing bounds it any lower. In air of 0 °C its currents are
    // 1.18 times those of its sheet, and so is the test current: 9.44 A for 2 s, 0.696 s at 16 A.
    [Theory]
    [InlineData(20, 7.99, null)]
    [InlineData(20, 16, 0.5)]
    [InlineData(20, 40, 0.08)]
    [InlineData(20, 80, 0.08)]
    [InlineData(0, 9.43, null)]
    [InlineData(0, 9.45, 2 * 9.44 * 9.44 / 9.45 / 9.45)]
    [InlineData(0, 16, 2 * 0.59 * 0.59)]
    public void AdiabaticBound_StartsAtTheTestCurrentInItsAir(double celsius, double amperes, double? latest) => Assert.Equal(latest ?? -1,
        SmallDevices.Resettable().OpeningAt(SmallDevices.Amperes(amperes), Temperature.FromDegreesCelsius(celsius)).Latest?.Seconds ?? -1, 1e-9);

    // Maximum power transfer, 12 V: 100 Ω deliver 0.36 W, 36 Ω 1 W, 20 Ω 1.8 W. A device that needs 1 W.
    [Theory]
    [InlineData(100, false)]
    [InlineData(36.001, false)]
    [InlineData(36, true)]
    [InlineData(20, true)]
    [InlineData(0, true)]
    public void StaysTripped_WhileTheRestOfTheLoopKeepsItHot(double ohms, bool stays) => Assert.Equal(stays,
        SmallDevices.Resettable(trippedWatts: 1).StaysTripped(ElectricPotential.FromVolts(12), ElectricResistance.FromOhms(ohms)));

    [Fact]
    public void StaysTripped_IsUnknownWithoutATrippedPower() =>
        Assert.Null(SmallDevices.Resettable().StaysTripped(ElectricPotential.FromVolts(12), ElectricResistance.FromOhms(20)));

    // By hand: 1 W behind 12 V and 20 Ω is 0.1 A (10 V across it, 2 V across the 20 Ω); behind nothing 1/12 A; at the most
    // power, 36 Ω, half the voltage: 6 V and 1/6 A. Behind more it resets.
    [Theory]
    [InlineData(20, 0.1)]
    [InlineData(0, 1.0 / 12)]
    [InlineData(36, 1.0 / 6)]
    [InlineData(40, null)]
    public void TrippedCurrent_IsThatOfItsPower(double ohms, double? amperes) => Assert.Equal(amperes ?? -1,
        SmallDevices.Resettable(trippedWatts: 1).TrippedCurrent(ElectricPotential.FromVolts(12), ElectricResistance.FromOhms(ohms))?.Amperes ?? -1, 1e-9);

    [Fact]
    public void TrippedCurrent_IsUnknownWithoutATrippedPower() =>
        Assert.Null(SmallDevices.Resettable().TrippedCurrent(ElectricPotential.FromVolts(12), ElectricResistance.FromOhms(20)));

    // The typical figures are rounded to the careful side of every printed row: no smaller resistance new in the print, none greater after a
    // trip, and none that takes longer at 5 times the hold current, where the I²t of the printed time is spent by then.
    [Fact]
    public void Typical_IsOnTheCarefulSideOfEveryPrintedRow()
    {
        Assert.Equal(SmallDevices.PrintedRows.Keys, ResettableFuse.Generic16Volt.Select(f => f.HoldCurrent.Amperes));
        Assert.All(ResettableFuse.Generic16Volt, typical =>
        {
            double hold = typical.HoldCurrent.Amperes;
            (double seconds, double least, double greatest) = SmallDevices.PrintedRows[hold];
            Assert.Equal((2 * hold, 5 * hold), (typical.TripCurrent.Amperes, typical.TestCurrent.Amperes));
            Assert.InRange(typical.MinimumResistance.Ohms, least / 2, least);
            Assert.InRange(typical.MaximumResistance.Ohms, greatest, greatest * 1.5);
            Assert.True(seconds * Math.Pow(8 / (5 * hold), 2) <= typical.LongestTimeToTrip.Seconds);
        });
    }

    [Fact]
    public void Printed_TellsItsResistanceAndVoltageAndNoMaximumCurrent()
    {
        // Reference row S09-048: 0.050 to 0.140 Ω.
        ResettableFuse fuse = SmallDevices.Printed(1.10);
        Assert.Equal(0.050, fuse.MinimumResistance.Ohms);
        Assert.Equal(0.140, fuse.MaximumResistance.Ohms);
        Assert.Equal(16, fuse.VoltageRating!.Value.Volts);
        Assert.Null(fuse.BreakingCapacity);
    }
}
