using System;
using System.Linq;
using CamPower.Protection;
using UnitsNet;
using static CamPower.Tests.Protection.SmallDevices;

namespace CamPower.Tests.Protection;

/// <summary>Numbers of protective devices of which none is 1, 0 or equal to another. All by hand.</summary>
public class DeviceNumbersTests
{
    // In air in which its currents are four fifths: 1.6 A of 2 A, 2.4 A of 3 A, and what is stated at 7.5 A at 6 A.
    [Fact]
    public void AFactorOfTheAir_ScalesEveryCurrent()
    {
        ResettableFuse fuse = Resettable(hold: 2, trip: 3, timed: 7.5);
        Assert.Equal(1.6, fuse.CarriedAmperes(0.8), 1e-12);
        Assert.Equal(2.4, fuse.CertainAmperes(0.8), 1e-12);
        Assert.Equal(6, Assert.Single(fuse.StepsAt(0.8)), 1e-12);
        Fuse quick = Fuse(FuseCharacteristic.IecQuickActing, 2);
        Assert.Equal(1.6, quick.CarriedAmperes(0.8), 1e-12);
        Assert.Equal(2.1 * 1.6, quick.CertainAmperes(0.8), 1e-12);
        Assert.Equal(new[] { 2.1, 2.75, 4, 10 }.Select(m => Math.Round(1.6 * m, 9)), quick.StepsAt(0.8).Select(s => Math.Round(s, 9)));
    }

    // 144 V²/4R are 1.6 W at 22.5 Ω.
    [Theory]
    [InlineData(22.4, true)]
    [InlineData(22.6, false)]
    public void ATrippedFuse_IsKeptHotByTheMostPower(double ohms, bool stays) =>
        Assert.Equal(stays, Resettable(trippedWatts: 1.6).StaysTripped(ElectricPotential.FromVolts(12), ElectricResistance.FromOhms(ohms)));

    // IEC 60127-2, L: 35 A or ten times the rated current.
    [Theory]
    [InlineData(5, 50)]
    [InlineData(2, 35)]
    public void LowBreakingCapacity_IsTheLargerOfTwo(double rated, double amperes) => Assert.Equal(amperes, CamPower.Fuse.IecLowBreakingCapacity(Amperes(rated)).Amperes, 1e-12);

    // Not stated, the re-rating of a fuse is 1 at 23 °C (IEC 60127, from memory), up to a fifth less in warmer and more in colder air (common practice).
    [Theory]
    [InlineData(8.0, new[] { 1, 1.2 })]
    [InlineData(23.0, new[] { 1.0 })]
    [InlineData(37.0, new[] { 0.8, 1 })]
    [InlineData(null, new[] { 0.8, 1.2 })]
    public void UnstatedRerating_HasTwoEnds(double? celsius, double[] factors) =>
        Assert.Equal(factors, Fuse(FuseCharacteristic.IecQuickActing, 2).FactorsIn(celsius).Select(f => Math.Round(f, 12)));

    // 2 mF at 10 V through 1 Ω are 0.1 A²s. A fuse F of 1 A withstands (2.75² − 2.1²)·0.05 = 0.158 A²s, of 0.8 A 0.64 of that: 0.101 A²s; of 0.78 A 0.096 A²s.
    [Theory]
    [InlineData(0.8, OperatingVerdict.DoesNotOperate)]
    [InlineData(0.78, OperatingVerdict.MayOperate)]
    [InlineData(1.3, OperatingVerdict.DoesNotOperate)]
    public void ADischarge_IsHeldAgainstTheRatingInItsAir(double factor, OperatingVerdict verdict) => Assert.Equal(verdict,
        Fuse(FuseCharacteristic.IecQuickActing, 1).OpeningBySurge(CurrentSurge.Discharge(2e-3, 10, 1, double.PositiveInfinity, 0), factor).Verdict);

    // Capacitors that are not there, or hold no more than the steady current leaves, discharge nothing.
    [Theory]
    [InlineData(0, 3)]
    [InlineData(1e-3, 12)]
    [InlineData(1e-3, 13)]
    public void NothingToDischarge_IsNoSurge(double farads, double steadyAmperes) =>
        Assert.Equal(0, CurrentSurge.Discharge(farads, 12, 1, double.PositiveInfinity, steadyAmperes).PeakAmperes);

    // 4 A open a fuse F of 1 A for certain in 0.3 s: 4.8 A²s. 4.96 A²s are 103 % of that.
    [Fact]
    public void WhatOpensItForCertain_IsAShareOfThat()
    {
        Judgment judged = Fuse(FuseCharacteristic.IecQuickActing, 1).JudgeInrush(4, 4.96, 1);
        Assert.Equal(Verdict.Violated, judged.Verdict);
        Assert.Equal(4.96 / 4.8, ((Ratio)judged.Value!).DecimalFractions, 1e-9);
    }

    [Fact]
    public void Or_HasTheWidestTimes_EitherOfTheSoonest()
    {
        OpeningTimes one = new(OperatingVerdict.Operates, 0.2, 3), other = new(OperatingVerdict.Operates, 0.5, 7), perhaps = new(OperatingVerdict.MayOperate, 0.4, double.PositiveInfinity);
        Assert.Equal(new OpeningTimes(OperatingVerdict.Operates, 0.2, 7), other.Or(one));
        Assert.Equal(new OpeningTimes(OperatingVerdict.MayOperate, 0.2, double.PositiveInfinity), one.Or(perhaps));
        Assert.Equal(new OpeningTimes(OperatingVerdict.Operates, 0.4, 7), OpeningTimes.EitherOf(perhaps, other));
    }

    // Equal are times that agree in verdict, earliest and latest.
    [Fact]
    public void Equality_TakesAllThree()
    {
        OpeningTimes times = new(OperatingVerdict.Operates, 0.2, 3);
        Assert.True(times == new OpeningTimes(OperatingVerdict.Operates, 0.2, 3));
        Assert.Equal(times.GetHashCode(), new OpeningTimes(OperatingVerdict.Operates, 0.2, 3).GetHashCode());
        Assert.All(new OpeningTimes[] { new(OperatingVerdict.MayOperate, 0.2, 3), new(OperatingVerdict.Operates, 0.1, 3), new(OperatingVerdict.Operates, 0.2, 4) }, o => Assert.True(times != o));
    }

    // What is exactly at an end is allowed, or not, as its documentation says.
    [Fact]
    public void Ends_BelongWhereTheirDocumentationPutsThem()
    {
        var limit = new FuseTimeLimit(1000, Duration.FromSeconds(0.2), Duration.FromSeconds(0.3), Sheet);
        Assert.Equal(1000, limit.Multiple);
        Assert.Equal(3, new FuseCharacteristic("one", Amperes(3), Amperes(3), limit).RatedTo.Amperes);
        Assert.Throws<ArgumentOutOfRangeException>("notAfter", () => new FuseTimeLimit(5, Duration.FromSeconds(0.3), Duration.FromSeconds(0.3), Sheet));
        Assert.True(new TerminalRange(WireSize.Awg(14), WireSize.Awg(14)).Accepts(WireSize.Awg(14)));
    }
}
