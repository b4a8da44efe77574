using System;
using System.Linq;
using CamPower.Tests.Sites;
using UnitsNet;
using static CamPower.Tests.Sites.SmallSite;

namespace CamPower.Tests.Assessment;

/// <summary>
/// What a supply in its limit is held against: the voltage where it is shortest, the devices that draw there, the motors that may move.
/// By hand, 12 V without tolerance, rated for 5 A.
/// </summary>
public class RailAtItsLimitTests
{
    // Three resistances of 6 Ω and motors of 2 A, of which one moves: 3·V/6 + 2 A = 7.5 A at 11 V; at 12 V they would take 8 A.
    [Fact]
    public void ADippingSupply_BearsTheMotorsThatMove()
    {
        Device camera = Camera(new ComponentDraw(Ohms(6), motor: Amperes(2)), Range(5, 15));
        SiteAssessment found = Star(Box(Held(7.5)), [Condition.NightWithMotion(At(), 1)], (0, camera), (0, camera), (0, camera)).Assess();
        Assert.Equal(SupplyState.Dips, found.Boxes[0].Worst.SupplyState);
        Assert.Equal(11, found.Boxes[0].Worst.SupplyVoltage!.Value.Volts, 1e-6);
        Assert.All(found.Devices, d => Assert.Equal(11, d.Worst.Voltage.Volts, 1e-6));
    }

    // Two cameras of 1 A with motors of 2 A, one of which moves, and 24 W that let go at 9 V: 6 A of 5.5 A at 12 V. Without the 24 W
    // they are 4 A, and the rail is back at 12 V: above a turn-on voltage of 11.5 V, below one of 12.5 V that a higher setting would reach.
    [Theory]
    [InlineData(11.5, DeviceState.Restarting)]
    [InlineData(12.5, DeviceState.NeverUp)]
    public void WhatComesBack_IsWithoutTheMotorsThatStand(double turnOn, DeviceState state)
    {
        Device moving = Camera(new ComponentDraw(Amperes(1), motor: Amperes(2)), Range(2, 15));
        Site site = Star(Box(Held(5.5)), [Condition.NightWithMotion(At(), 1)],
            (0, moving), (0, moving), (0, Camera(Watts(24), Range(2, 15), Starts(turnOn, 9))));
        Assert.Equal(state, site.Assess().Devices[2].Worst.State);
    }

    // Foldback from 8 A to 1 A gives 4.5 A at 6 V and 6.25 A at 9 V. 36 W from 6 V take 6 A there and 4 A at 9 V, 27 W from 9 V 3 A more:
    // short by 1.5 A of 6 A at 6 V, and by 0.75 A of 7 A at 9 V. In any order it is the former that is told.
    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void AStart_IsToldWhereTheSupplyIsShortest(bool isLaterFirst)
    {
        (double, Device)[] cameras = [(0, Camera(Watts(36), starting: AtOnce(6, 5))), (0, Camera(Watts(27), starting: AtOnce(9, 8)))];
        Judgment start = Starting(OverloadBehavior.Foldback(Amps(8), Amps(1)), isLaterFirst ? [.. cameras.Reverse()] : cameras);
        Assert.Equal((6.0, 4.5), (Rounded(start.Value), Rounded(start.Limit)));
        Assert.Equal(Verdict.Violated, start.Verdict);
    }

    // Beside 24 W from 6 V a device that states no start draws from the lowest voltage that it accepts: 2 A from 5 V, not the 3 A from 8 V.
    [Fact]
    public void AStart_CountsWhatAcceptsTheVoltage()
    {
        Judgment start = Starting(OverloadBehavior.ConstantCurrent(Amps(7.5)),
            (0, Camera(Amperes(2), Range(5, 15))), (0, Camera(Amperes(3), Range(8, 15))), (0, Camera(Watts(24), starting: AtOnce(6, 5))));
        Assert.Equal((6.0, 7.5), (Rounded(start.Value), Rounded(start.Limit)));
    }

    // 9.6 W from 6 V behind 0.5 Ω have 3 + √(9 − 4.8) = 5.049 V there and take 1.901 A; behind 1 Ω nothing balances at 6 V, and they
    // count with the most that they ask for, 9.6 W at the 5 V at which they drop out.
    [Theory]
    [InlineData(0.5, 9.6 / 5.04939015)]
    [InlineData(1.0, 9.6 / 5)]
    public void AStart_IsSeenThroughTheCable(double ohms, double amperes)
    {
        Judgment start = Starting(OverloadBehavior.ConstantCurrent(Amps(1.5)), (ohms, Camera(Watts(9.6), starting: AtOnce(6, 5))));
        Assert.Equal(amperes, ((ElectricCurrent)start.Value!).Amperes, 1e-6);
    }

    private static Judgment Starting(OverloadBehavior overload, params (double Ohms, Device Device)[] cameras) =>
        Star(Box(Behaving(overload)), [Condition.Day(At())], cameras).Assess().Boxes[0].Worst.StartingCurrent;

    // Starts at once, and the supply takes 0.1 s to rise.
    private static Starting AtOnce(double turnOn, double dropOut) => new(Volts(turnOn), Volts(dropOut), true, Duration.Zero);

    private static Supply Held(double amperes) => Behaving(OverloadBehavior.ConstantCurrent(Amps(amperes)));

    private static Supply Behaving(OverloadBehavior overload) => new("supply",
        new DcOutput(Volts(12), Amps(5), Ratio.Zero, overload: overload, rise: Duration.FromSeconds(0.1)), Derating.GenericEnclosed);

    private static ElectricCurrent Amps(double amperes) => ElectricCurrent.FromAmperes(amperes);

    private static double Rounded(IQuantity? current) => Math.Round(((ElectricCurrent)current!).Amperes, 6);
}
