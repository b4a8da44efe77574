using System.Linq;
using CamPower.Tests.Protection;
using UnitsNet;
using static CamPower.Tests.Faults.SmallFaultSite;
using static CamPower.Tests.Sites.SmallSite;

namespace CamPower.Tests.Faults;

/// <summary>A supply with a short at one output: at its limit, at its rating, pulled down by its own resistance, and what is not stated. All by hand, 12 V.</summary>
public class RailEdgeTests
{
    // 12 V / 1.5 Ω are 8 A, source included. Up to the 10 A of its rating a supply keeps its tolerance; with more than 2 A beside it (12 − V)/0.1 = V/1.4 + I: 3 A leave 10.92 V, 7.8 A.
    // Without a source resistance nothing is lost below the limit of 40 A: 12/1.4 A.
    [Theory]
    [InlineData(2, 0.1, 8)]
    [InlineData(3, 0.1, 117 / ((10 * 1.4) + 1))]
    [InlineData(3, null, 12 / 1.4)]
    public void BeyondItsRating_ASupplyLosesWhatItsResistanceTakes(double others, double? sourceOhms, double least)
    {
        ShortCircuit fault = ShortAt(Site(SmallFault.QuickActing(2), OverloadBehavior.ConstantCurrent(ElectricCurrent.FromAmperes(40)), 1.4, Camera(Amperes(others)), sourceOhms), "one");
        Assert.Equal(least, fault.Smallest.Amperes, 1e-6);
    }

    // The same 7.8 A are no pulses of a supply that pulses from 40 A on.
    [Fact]
    public void BelowItsLimit_ItDoesNotPulse()
    {
        OverloadBehavior pulses = OverloadBehavior.Hiccup(ElectricCurrent.FromAmperes(40), Duration.FromMilliseconds(30), Duration.FromSeconds(3));
        Assert.Equal(7.8, ShortAt(Site(SmallFault.QuickActing(2), pulses, 1.4, Camera(Amperes(3))), "one").Smallest.Amperes, 1e-6);
    }

    // 7.5 A and 1.5 A beside it are the 9 A of the limit: it does not pulse.
    [Fact]
    public void ExactlyItsLimit_IsKept()
    {
        ShortCircuit fault = ShortAt(Site(SmallFault.QuickActing(2), SharedSupplyTests.Behavior("hiccup"), 1.6, Camera(Amperes(1.5)), sourceOhms: null), "one");
        Assert.Equal(7.5, fault.Smallest.Amperes, 1e-9);
        Assert.Equal(SupplyState.StaysUp, fault.Supply.State);
    }

    // A device that holds 8 A at its 1 Ω until the voltage is below 8 V, and a heater of 2 Ω, on a supply that holds 9 A: 8 A and V/2 would rest at 2 V, where 1 Ω no more takes 8 A.
    // V/1 + V/2 = 9 A: 6 V.
    [Fact]
    public void ADeviceThatLimits_LimitsAboveItsKneeAlone()
    {
        var limit = new ElectronicLimit("limit", ElectricCurrent.FromAmperes(8), Ratio.Zero, Duration.FromMilliseconds(50), ElectricResistance.Zero, Volts(60));
        SupplyDuringFault rail = ShortAt(Site(limit, OverloadBehavior.ConstantCurrent(ElectricCurrent.FromAmperes(9)), 1, Camera(Ohms(2)), sourceOhms: null), "one").Supply;
        Assert.Equal(SupplyState.Dips, rail.State);
        Assert.Equal(6, rail.Voltage!.Value.Volts, 1e-6);
    }

    // 0.1 Ω of a supply whose limit of 40 A is far: 12 A into 0.9 Ω leave 10.8 V less what 1 A beside takes, (12 − V)/0.1 = V/0.9 + 1: 10.71 V. A device that does not say when it drops out, but accepts 2 V, goes on.
    // One that accepts 11 V gets too little; one that drops out at 5 V does not.
    [Fact]
    public void WhereNobodySaysWhenItDropsOut_TheRangeCounts()
    {
        const double Left = 119 / (10 + (1 / 0.9));
        SupplyDuringFault wide = Rail(Camera(Amperes(1)));
        Assert.Equal(SupplyState.StaysUp, wide.State);
        Assert.Equal(Left, wide.Voltage!.Value.Volts, 1e-6);
        SupplyDuringFault narrow = Rail(Camera(Amperes(1), Range(11, 13)));
        Assert.Equal(SupplyState.Dips, narrow.State);
        Assert.Equal("second", Assert.Single(narrow.BelowWindow).Name);
        Assert.Empty(Rail(Camera(Amperes(1), Range(11, 13), Starts(6, 5))).BelowWindow);

        static SupplyDuringFault Rail(Device second) => ShortAt(Site(SmallFault.QuickActing(2), OverloadBehavior.ConstantCurrent(ElectricCurrent.FromAmperes(40)), 0.9, second), "one").Supply;
    }

    // One of two says it, and drops out below what it gets; the other does not, and gets less than it accepts.
    [Fact]
    public void OfTwo_OneThatDoesNotSayIsEnoughToAsk()
    {
        Site site = new("site", [Condition.Day(At())], [Box(SmallFault.QuickActing(2), OverloadBehavior.ConstantCurrent(ElectricCurrent.FromAmperes(40)), outputs: 3)],
            [.. Enumerable.Range(1, 3).Select(n => Run(RunOrigin.Output(BoxName, n), $"{n}", n == 1 ? 0.9 : 0))],
            [new SiteDevice("first", Camera(Amperes(0.1)), "1"), new SiteDevice("says", Camera(Amperes(0.5), Range(11, 13), Starts(6, 5)), "2"),
                new SiteDevice("does not", Camera(Amperes(0.5), Range(11, 13)), "3")]);
        SupplyDuringFault rail = ShortAt(site, "1").Supply;
        Assert.Equal("does not", Assert.Single(rail.BelowWindow).Name);
        Assert.Empty(rail.Dark);
    }

    // What a supply does in overload is not stated, or it has no limit and no resistance that is: nothing is known of its voltage, nor of who is dark.
    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void WhatTheSupplyDoes_MayBeUnknown(bool isUnlimited)
    {
        SupplyDuringFault rail = ShortAt(Site(SmallFault.QuickActing(2), isUnlimited ? OverloadBehavior.Unlimited : null, 0.9, Twelve(8), sourceOhms: null), "one").Supply;
        Assert.Equal(SupplyState.Unknown, rail.State);
        Assert.Null(rail.Voltage);
        Assert.Empty(rail.Dark);
    }

    // A resettable fuse whose curve ends at -40 °C: in a box of -50 °C nothing is known of it, whatever it does in the other condition.
    [Fact]
    public void OneConditionOutsideTheCurve_IsEnoughForNoVerdict()
    {
        Site site = Site(SmallDevices.Printed(1.10), OverloadBehavior.Unlimited, 1, Camera(Amperes(0.1)), conditions: [Condition.Day(At()), Condition.Night(At(box: -50))]);
        ShortCircuit fault = ShortAt(site, "one");
        Assert.True(fault.Missing.HasFlag(FaultData.DeviceTemperature));
        Assert.Equal(OperatingVerdict.None, fault.Verdict);
    }

    // An enclosure around a supply of unknown efficiency: how warm its protective devices get is not known.
    [Fact]
    public void AnEnclosureOfUnknownWarmth_LeavesTheDeviceUnknown()
    {
        var steel = new Enclosure(Length.FromMeters(0.3), Length.FromMeters(0.4), Length.FromMeters(0.15), EnclosureWall.PaintedSteel, EnclosureFaces.OnWall);
        Site free = Site(SmallDevices.Printed(1.10), OverloadBehavior.Unlimited, 1, Camera(Amperes(0.1))),
            enclosed = new("site", free.Conditions, [free.Boxes[0].WithEnclosure(steel)], free.Runs, free.Devices);
        Assert.False(ShortAt(free, "one").Missing.HasFlag(FaultData.DeviceTemperature));
        Assert.True(ShortAt(enclosed, "one").Missing.HasFlag(FaultData.DeviceTemperature));
    }

    private static Site Site(ProtectiveDevice device, OverloadBehavior? overload, double ohms, Device second, double? sourceOhms = 0.1, Condition[]? conditions = null) => new(
        "site", conditions ?? [Condition.Day(At())], [Box(device, overload, sourceOhms: sourceOhms)],
        [Run(RunOrigin.Output(BoxName, 1), "one", ohms), Run(RunOrigin.Output(BoxName, 2), "two", 0)],
        [new SiteDevice("first", Camera(Amperes(0.1)), "one"), new SiteDevice("second", second, "two")]);
}
