using System;
using UnitsNet;
using static CamPower.Tests.Protection.SmallDevices;

namespace CamPower.Tests.Protection;

/// <summary>An electronic limit. All by hand, from what its data sheet states.</summary>
public class ElectronicLimitTests
{
    // 1.5 A ± 10 %: up to 1.35 A nothing, from 1.65 A on within 50 ms, in between perhaps.
    [Theory]
    [InlineData(1.35, OperatingVerdict.DoesNotOperate, null)]
    [InlineData(1.36, OperatingVerdict.MayOperate, null)]
    [InlineData(1.64, OperatingVerdict.MayOperate, null)]
    [InlineData(1.65, OperatingVerdict.Operates, 0.05)]
    [InlineData(40, OperatingVerdict.Operates, 0.05)]
    public void Opening_FollowsTheToleranceOfItsLimit(double amperes, OperatingVerdict verdict, double? latest)
    {
        OpeningTimes opening = Limit().OpeningAt(Amperes(amperes), Room);
        Assert.Equal(verdict, opening.Verdict);
        Assert.Equal(latest, opening.Latest?.Seconds);
    }

    // It is no thermometer.
    [Fact]
    public void CarriedCurrent_IsTheLeastLimit_WhateverTheAir()
    {
        Assert.Equal(1.35, Limit().CarriedCurrentAt(Room)!.Value.Amperes, 1e-12);
        Assert.Equal(1.35, Limit().CarriedCurrentAt(Temperature.FromDegreesCelsius(70))!.Value.Amperes, 1e-12);
    }

    [Fact]
    public void WhatItsSheetStates_IsThere()
    {
        ElectronicLimit retrying = Limit(pause: 2), latched = Limit();
        Assert.False(retrying.IsLatched);
        Assert.Equal(2, retrying.RetriesAfter!.Value.Seconds);
        Assert.True(latched.IsLatched);
        Assert.Equal(0.04, latched.MinimumResistance.Ohms);
        Assert.Equal(0.04, latched.MaximumResistance.Ohms);
        Assert.Equal(30, latched.VoltageRating!.Value.Volts);
        Assert.Null(latched.BreakingCapacity);
        Assert.Equal((1.5, 0.1, 0.05), (latched.Limit.Amperes, latched.Tolerance.DecimalFractions, latched.OpensWithin.Seconds));
    }

    // The others: a fuse its rated current, a resettable fuse what it holds, S09-066: 0.80 at 40 °C; nothing limits what is not there.
    [Fact]
    public void CarriedCurrent_OfTheOtherDevices()
    {
        Temperature warm = Temperature.FromDegreesCelsius(40);
        Assert.Equal(2, SmallDevices.Fuse(FuseCharacteristic.IecQuickActing, 2).CarriedCurrentAt(warm)!.Value.Amperes, 1e-12);
        Assert.Equal(1.8, SmallDevices.Fuse(FuseCharacteristic.IecQuickActing, 2, rerating: Curve((20, 1), (60, 0.8))).CarriedCurrentAt(warm)!.Value.Amperes, 1e-12);
        Assert.Equal(0.88, Printed(1.10).CarriedCurrentAt(warm)!.Value.Amperes, 1e-12);
        Assert.Null(ProtectiveDevice.None.CarriedCurrentAt(warm));
        Assert.Throws<ArgumentOutOfRangeException>(() => Printed(1.10).CarriedCurrentAt(Temperature.FromDegreesCelsius(90)));
    }

    internal static ElectronicLimit Limit(double amperes = 1.5, double percent = 10, double seconds = 0.05, double ohms = 0.04, double volts = 30, double? pause = null) =>
        new("limit", Amperes(amperes), Ratio.FromPercent(percent), Duration.FromSeconds(seconds), ElectricResistance.FromOhms(ohms), ElectricPotential.FromVolts(volts),
            pause is double given ? Duration.FromSeconds(given) : null);
}
