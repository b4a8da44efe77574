using System;
using System.Linq;
using UnitsNet;

namespace CamPower.Tests.Protection;

/// <summary>Fuses between their gates. The gates themselves are held by the reference rows.</summary>
public class FuseTests
{
    // By hand: the limit below gives the latest time, t2·(I2/I)², and 10 ms at the least (IEC 60269-1, from memory); the limit above the earliest. IEC 60127-2 F:
    // 1.5 (60 min to nothing), 2.1 (to 30 min), 2.75 (0.05 s to 2 s), 4 (0.01 s to 0.3 s), 10 (to 0.02 s). T: 2.1 (120 s), 4 (3 s). UL 248-14: 1.1, 1.35 (3600 s), 2 (120 s).
    [Theory]
    [InlineData("IEC F", 1.0, OperatingVerdict.DoesNotOperate, null, null)]
    [InlineData("IEC F", 1.01, OperatingVerdict.MayOperate, 3600.0, null)]
    [InlineData("IEC F", 1.6, OperatingVerdict.MayOperate, 0.05, null)]
    [InlineData("IEC F", 2.099, OperatingVerdict.MayOperate, 0.05, null)]
    [InlineData("IEC F", 2.5, OperatingVerdict.Operates, 0.05, 1800 * 0.84 * 0.84)]
    [InlineData("IEC F", 3.0, OperatingVerdict.Operates, 0.01, 2 * 7.5625 / 9)]
    [InlineData("IEC F", 8.0, OperatingVerdict.Operates, 0.0, 0.075)]
    [InlineData("IEC F", 12.5, OperatingVerdict.Operates, 0.0, 0.0128)]
    [InlineData("IEC F", 50.0, OperatingVerdict.Operates, 0.0, 0.01)]
    [InlineData("IEC T", 2.5, OperatingVerdict.Operates, 0.6, 120 * 0.84 * 0.84)]
    [InlineData("IEC T", 5.0, OperatingVerdict.Operates, 0.02, 1.92)]
    [InlineData("UL fast", 1.0, OperatingVerdict.DoesNotOperate, null, null)]
    [InlineData("UL fast", 1.05, OperatingVerdict.MayOperate, 14400.0, null)]
    [InlineData("UL fast", 1.2, OperatingVerdict.MayOperate, 0.0, null)]
    [InlineData("UL fast", 1.5, OperatingVerdict.Operates, 0.0, 2916.0)]
    [InlineData("UL slow", 1.5, OperatingVerdict.Operates, 5.0, 2916.0)]
    [InlineData("UL slow", 7.0, OperatingVerdict.Operates, 0.0, 480.0 / 49)]
    [InlineData("UL fast", 8.0, OperatingVerdict.Operates, 0.0, 7.5)]
    public void Opening_IsBoundedByTheLimits(string gates, double multiple, OperatingVerdict verdict, double? earliest, double? latest)
    {
        OpeningTimes opening = SmallDevices.Fuse(SmallDevices.Characteristic(gates), 2).OpeningAt(SmallDevices.Amperes(2 * multiple), SmallDevices.Room);
        Assert.Equal(verdict, opening.Verdict);
        Assert.Equal(earliest, opening.Earliest?.Seconds);
        Assert.Equal(latest ?? -1, opening.Latest?.Seconds ?? -1, 1e-12);
    }

    // A fast fuse of 2 A (UL 248-14) that interrupts 35 A: 120 s at 4 A are 1.567 s at 35 A, and above its breaking capacity nothing bounds it any lower.
    [Theory]
    [InlineData(20, 4.8)]
    [InlineData(35, 120 * 16 / 1225.0)]
    [InlineData(70, 120 * 16 / 1225.0)]
    public void AdiabaticBound_ReachesToTheBreakingCapacity(double amperes, double latest) => Assert.Equal(latest,
        SmallDevices.Fuse(FuseCharacteristic.UlFast, 2, breaking: 35).OpeningAt(SmallDevices.Amperes(amperes), SmallDevices.Room).Latest!.Value.Seconds, 1e-12);

    // What a limit states goes before the bound: 10 s at twice the rating would be 2.5 s at four times, where it is stated to stay closed for 4 s.
    [Fact]
    public void AdiabaticBound_NeverContradictsALimit()
    {
        var odd = new FuseCharacteristic("odd", SmallDevices.Amperes(0.5), SmallDevices.Amperes(5), new FuseTimeLimit(2, null, Duration.FromSeconds(10), SmallDevices.Sheet),
            new FuseTimeLimit(4, Duration.FromSeconds(4), Duration.FromSeconds(5), SmallDevices.Sheet));
        OpeningTimes opening = SmallDevices.Fuse(odd, 3).OpeningAt(SmallDevices.Amperes(12), SmallDevices.Room);
        Assert.Equal((4, 4), (opening.Earliest!.Value.Seconds, opening.Latest!.Value.Seconds));
    }

    // SAE J1284 and ISO 8820-3 type C, rows S09-034 to S09-039, from memory: 110 % 100 h; 135 % 0.75 to 600 s; 160 % 0.25 to
    // 50 s; 200 % 0.15 to 5 s; 350 % 0.08 to 0.5 s; 600 % 0.03 to 0.1 s.
    [Theory]
    [InlineData(1.1, 360000, double.PositiveInfinity)]
    [InlineData(1.35, 0.75, 600)]
    [InlineData(1.6, 0.25, 50)]
    [InlineData(2, 0.15, 5)]
    [InlineData(3.5, 0.08, 0.5)]
    [InlineData(6, 0.03, 0.1)]
    public void Blade_MeetsItsGates(double multiple, double earliest, double latest)
    {
        OpeningTimes opening = SmallDevices.Fuse(FuseCharacteristic.Blade, 7.5).OpeningAt(SmallDevices.Amperes(7.5 * multiple), SmallDevices.Room);
        Assert.Equal(earliest, opening.Earliest!.Value.Seconds, 1e-9 * earliest);
        double by = opening.Latest?.Seconds ?? double.PositiveInfinity;
        Assert.True(double.IsInfinity(latest) ? double.IsInfinity(by) : by <= latest * (1 + 1e-9) && by > 0.3 * latest);
    }

    // A fuse whose rating is 0.8 in 60 °C air meets the gate of 2.1 × 2 A at 3.36 A there, and halfway up, at 40 °C, at 3.78 A.
    [Theory]
    [InlineData(20, 4.2)]
    [InlineData(40, 3.78)]
    [InlineData(60, 3.36)]
    public void Ambient_RatesTheWholeCharacteristic(double celsius, double gateAmperes)
    {
        Fuse fuse = SmallDevices.Fuse(FuseCharacteristic.IecQuickActing, 2, rerating: SmallDevices.Curve((20, 1), (60, 0.8)));
        Temperature ambient = Temperature.FromDegreesCelsius(celsius);
        Assert.Equal(1800, fuse.OpeningAt(SmallDevices.Amperes(gateAmperes), ambient).Latest!.Value.Seconds, 1e-6);
        Assert.Null(fuse.OpeningAt(SmallDevices.Amperes(gateAmperes * 0.999), ambient).Latest);
    }

    // 4.5 A²s at 30 A is 5 ms; beyond the last gate nothing else says how fast it may be. It never contradicts a gate.
    [Fact]
    public void MeltingIntegral_BoundsTheEarliestTime()
    {
        Fuse fuse = SmallDevices.Fuse(FuseCharacteristic.IecQuickActing, 2, meltingIntegral: 4.5);
        Assert.Equal(0.005, fuse.OpeningAt(SmallDevices.Amperes(30), SmallDevices.Room).Earliest!.Value.Seconds, 1e-12);
        Fuse odd = SmallDevices.Fuse(FuseCharacteristic.IecQuickActing, 2, meltingIntegral: 1e6);
        OpeningTimes bounded = odd.OpeningAt(SmallDevices.Amperes(30), SmallDevices.Room);
        Assert.Equal(0.01, bounded.Earliest!.Value.Seconds);
        Assert.Equal(0.01, bounded.Latest!.Value.Seconds);
    }

    // More current never opens later and never makes the verdict worse, at any step of 0.7 %, in every characteristic.
    [Theory]
    [InlineData("IEC F", 2)]
    [InlineData("IEC F small", 0.1)]
    [InlineData("IEC T", 6.3)]
    [InlineData("IEC T small", 0.05)]
    [InlineData("UL fast", 20)]
    [InlineData("UL slow", 3)]
    [InlineData("blade", 3)]
    public void MoreCurrent_NeverOpensLater(string gates, double rated) => AssertMonotone(SmallDevices.Fuse(SmallDevices.Characteristic(gates), rated, meltingIntegral: rated), rated);

    [Fact]
    public void MoreCurrent_NeverTripsLater() => Assert.All(ResettableFuse.Generic16Volt, f => AssertMonotone(f, f.HoldCurrent.Amperes));

    private static void AssertMonotone(ProtectiveDevice device, double rated)
    {
        double[] currents = [.. Enumerable.Range(0, 800).Select(i => rated * 0.5 * Math.Pow(1.007, i))];
        OpeningTimes[] openings = [.. currents.Select(c => device.OpeningAt(SmallDevices.Amperes(c), SmallDevices.Room))];
        Assert.All(openings.Zip(openings.Skip(1)), pair =>
        {
            Assert.True(pair.Second.Verdict >= pair.First.Verdict);
            Assert.True((pair.Second.Earliest?.Seconds ?? double.PositiveInfinity) <= (pair.First.Earliest?.Seconds ?? double.PositiveInfinity));
            Assert.True((pair.Second.Latest?.Seconds ?? double.PositiveInfinity) <= (pair.First.Latest?.Seconds ?? double.PositiveInfinity));
            Assert.True((pair.First.Earliest?.Seconds ?? double.PositiveInfinity) <= (pair.First.Latest?.Seconds ?? double.PositiveInfinity));
        });
        Assert.Equal(OperatingVerdict.DoesNotOperate, openings[0].Verdict);
        Assert.Equal(OperatingVerdict.Operates, openings[^1].Verdict);
    }

    [Theory]
    [InlineData(1.0, "does not open")]
    [InlineData(1.6, "may open, not before 50 ms")]
    [InlineData(3.0, "opens within 1.68 s (10 ms at the earliest)")]
    [InlineData(20.0, "opens within 10 ms")]
    public void Opening_ReadsAsTheTradeSaysIt(double multiple, string words) =>
        Assert.Equal(words, SmallDevices.Fuse(FuseCharacteristic.IecQuickActing, 2).OpeningAt(SmallDevices.Amperes(2 * multiple), SmallDevices.Room).ToString());

    [Fact]
    public void NoDevice_NeverOperates()
    {
        Assert.Equal(OperatingVerdict.DoesNotOperate, ProtectiveDevice.None.OpeningAt(SmallDevices.Amperes(1e6), SmallDevices.Room).Verdict);
        Assert.Null(ProtectiveDevice.None.BreakingCapacity);
        Assert.Equal("no protective device", ProtectiveDevice.None.ToString());
    }
}
