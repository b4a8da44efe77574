using System;
using System.Linq;
using CamPower.Tests.Protection;
using CamPower.Tests.Sites;
using UnitsNet;
using static CamPower.Tests.Faults.SmallFaultSite;
using static CamPower.Tests.Sites.SmallSite;

namespace CamPower.Tests.Faults;

/// <summary>The faults of whole sites. All by hand; 20 °C throughout unless said otherwise.</summary>
public class SiteFaultsTests
{
    private static readonly ElectricCurrent Nine = ElectricCurrent.FromAmperes(9);

    // Behind 0.1 Ω of source: 0.5 Ω to the hub, 0.7 Ω more to the mast: 12/0.6 = 20 A and 12/1.3 A. Before each joint's own resistance: 120 A and 20 A.
    [Fact]
    public void Places_FollowTheRealWay()
    {
        var site = new Site("site", [Condition.Day(SmallSite.At())], [Box(SmallFault.QuickActing(2), OverloadBehavior.Unlimited)],
            [Run(RunOrigin.Output(BoxName, 1), "hub", 0.5), Run(RunOrigin.Junction("hub"), "mast", 0.7), Run(RunOrigin.Junction("hub"), "gate", 0.3)],
            [new SiteDevice("mast camera", Twelve(8), "mast"), new SiteDevice("gate camera", Twelve(8), "gate")]);
        OutputFaults output = Assert.Single(site.Assess().StudyFaults());
        Assert.Equal(["terminals", "loop on the way to hub", "hub", "loop on the way to mast", "mast", "loop on the way to gate", "gate"], output.Shorts.Select(s => s.Place));
        double[] amperes = [.. output.Shorts.Select(s => s.Largest!.Value.Amperes)];
        Assert.All(new[] { 120, 120, 20, 20, 12 / 1.3, 20, 12 / 0.9 }.Zip(amperes), pair => Assert.Equal(pair.First, pair.Second, 1e-9));
        Assert.Equal(["mast camera"], output.Shorts[4].Devices.Select(d => d.Name));
        Assert.Empty(output.Shorts[2].Devices);
        Assert.Null(output.AtTerminals.Run);
        Assert.Equal("mast", output.Weakest.Place);
        Assert.Equal("gate", output.Shorts[6].Run!.To);
    }

    // The second run has no return of its own: out 0.35 Ω of its joint's pole, back over the first run's 0.25 Ω.
    [Fact]
    public void SharedReturn_GoesBackByTheOtherWay()
    {
        var site = new Site("site", [Condition.Day(SmallSite.At())], [Box(SmallFault.QuickActing(2), OverloadBehavior.Unlimited)],
            [Run(RunOrigin.Output(BoxName, 1), "one", 0.5), Run(RunOrigin.Output(BoxName, 2), "two", 0.7, returnAt: "one")],
            [new SiteDevice("first", Twelve(8), "one"), new SiteDevice("second", Twelve(8), "two")]);
        OutputFaults second = site.Assess().StudyFaults()[1];
        Assert.Equal(["terminals", "two"], second.Shorts.Select(s => s.Place));
        Assert.Equal(12 / (0.1 + 0.35 + 0.25), second.Weakest.Largest!.Value.Amperes, 1e-9);
    }

    // A supply that holds 9 A, 0.5 Ω shorted: 4.5 V without the other camera, which is off below 8 V. Its own draw cannot raise it.
    [Fact]
    public void Rail_InCurrentLimit_IsWhatTheShortLeaves()
    {
        SupplyDuringFault rail = ShortAt(TwoOutputs(SmallFault.QuickActing(2), OverloadBehavior.ConstantCurrent(Nine)), "one").Supply;
        Assert.Equal(SupplyState.Dips, rail.State);
        Assert.Equal(4.5, rail.Voltage!.Value.Volts, 1e-4);
        Assert.Equal(["second"], rail.Dark.Select(d => d.Name));
        Assert.Empty(rail.BelowWindow);
    }

    // A camera that drops out at 2 V only stays on: V/0.5 + I = 9 with I = 12/(V − 0.5·I): 3.5 V? By hand: V = 4.5 − I/2, and
    // (V − I/2)·I = 12 gives I² − 4.5·I + 12 = 0, which has no root: it cannot stay on at any voltage.
    [Fact]
    public void Rail_WithAHungryNeighbor_HasNoBalanceWithIt()
    {
        SupplyDuringFault rail = ShortAt(TwoOutputs(SmallFault.QuickActing(2), OverloadBehavior.ConstantCurrent(Nine), otherDropOut: 2), "one").Supply;
        Assert.Equal(["second"], rail.Dark.Select(d => d.Name));
        Assert.Equal(4.5, rail.Voltage!.Value.Volts, 0.01);
    }

    // 20 A held: V = 10 − I/2 over the short, and (V − I/2)·I = 12: I² − 10·I + 12 = 0, I = 5 − √13 = 1.3944 A, V = 9.3028 V; the camera has 8.6056 V.
    // One that drops out at 8.7 V lets go at 8.7 + 0.5·12/8.7 = 9.3897 V: there the supply has the upper hand again.
    [Theory]
    [InlineData(8, true, 0, 0)]
    [InlineData(8.7, true, 1, 0)]
    [InlineData(8, false, 0, 1)]
    public void Rail_BalancesWithWhatStaysOn(double dropOut, bool declaresDropOut, int dark, int below)
    {
        Site site = TwoOutputs(SmallFault.QuickActing(2), OverloadBehavior.ConstantCurrent(ElectricCurrent.FromAmperes(20)), dropOut, declaresDropOut);
        SupplyDuringFault rail = ShortAt(site, "one").Supply;
        Assert.Equal(dark == 1 ? 9.39 : 9.3028, rail.Voltage!.Value.Volts, dark == 1 ? 0.01 : 1e-3);
        Assert.Equal((dark, below), (rail.Dark.Count, rail.BelowWindow.Count));
    }

    // Up to its limit the supply holds its voltage; beyond it a hiccup or a shutdown takes everybody down; a battery behind 0.1 Ω sags.
    [Fact]
    public void Rail_FollowsTheOverloadBehavior()
    {
        Assert.Equal(SupplyState.StaysUp, State(OverloadBehavior.ConstantCurrent(ElectricCurrent.FromAmperes(30))));
        Assert.Equal(SupplyState.Pulses, State(OverloadBehavior.Hiccup(Nine, Duration.FromMilliseconds(50), Duration.FromSeconds(1))));
        Assert.Equal(SupplyState.Off, State(OverloadBehavior.Shutdown(Nine, Duration.FromMilliseconds(50))));
        Assert.Equal(SupplyState.Unknown, State(null));

        // 24 A through 0.5 Ω would be 12 V: (12 − V)/0.1 = V/0.5 + I leaves 12 − 0.1·(2V + I) = V. With I ≈ 1.33 A V ≈ 9.89 V.
        SupplyDuringFault sagging = ShortAt(TwoOutputs(SmallFault.QuickActing(2), OverloadBehavior.Unlimited), "one").Supply;
        Assert.Equal(SupplyState.Dips, sagging.State);
        double volts = sagging.Voltage!.Value.Volts, other = 10 * (12 - volts - (volts / 5));
        Assert.Equal(12, (volts - (0.5 * other)) * other, 1e-3);

        static SupplyState State(OverloadBehavior? overload) => ShortAt(TwoOutputs(SmallFault.QuickActing(2), overload), "one").Supply.State;
    }

    // 20 A, less than the 30 A held, take 2 V in the 0.1 Ω of the source: with the other camera off (12 − V)/0.1 = V/0.5 leaves 10 V. A camera that
    // drops out at 9.5 V lets go at 9.5 + 0.5·12/9.5 = 10.13 V; one that drops out at 8 V stays on: V = 10 - I/12 and (V - I/2)·I = 12 give I = 1.2983 A and 9.8918 V.
    [Theory]
    [InlineData(9.5, SupplyState.Dips, 10)]
    [InlineData(8, SupplyState.StaysUp, 9.8918)]
    public void Rail_SagsByTheSourceResistanceBelowTheLimit(double dropOut, SupplyState state, double volts)
    {
        SupplyDuringFault rail = ShortAt(TwoOutputs(SmallFault.QuickActing(2), OverloadBehavior.ConstantCurrent(ElectricCurrent.FromAmperes(30)), dropOut), "one").Supply;
        Assert.Equal(state, rail.State);
        Assert.Equal(volts, rail.Voltage!.Value.Volts, 1e-3);
        Assert.Equal(state == SupplyState.Dips ? 1 : 0, rail.Dark.Count);
    }

    // 14.5 m of 0.5 mm² are 1.0 Ω: 12/0.764 = 15.7 A at -40 °C while the other takes 0.1 A, and 12/1.157 = 10.4 A at 60 °C while it takes 3 A: 16 A hold both.
    // 14 A hold the summer alone, and it is the winter's short that takes the other down.
    [Theory]
    [InlineData(16, SupplyState.StaysUp)]
    [InlineData(14, SupplyState.Off)]
    public void Rail_IsThatOfTheFaultsOwnCondition(double limit, SupplyState state)
    {
        Condition[] conditions = [Condition.Day(SmallSite.At(cable: -40)), Condition.Night(SmallSite.At(cable: 60))];
        var site = new Site("site", conditions, [Box(SmallFault.QuickActing(2), OverloadBehavior.Shutdown(ElectricCurrent.FromAmperes(limit), Duration.FromMilliseconds(50)), sourceOhms: null)],
            [new SiteRun(RunOrigin.Output(BoxName, 1), "one", new CableRun(SmallFault.Pair(0.5), Length.FromMeters(14.5))), Run(RunOrigin.Output(BoxName, 2), "two", 0)],
            [new SiteDevice("first", Camera(Amperes(0.1)), "one"), new SiteDevice("second", Camera(new ComponentDraw(Amperes(0.1), infrared: Amperes(2.9))), "two")]);
        SupplyDuringFault rail = ShortAt(site, "one").Supply;
        Assert.Equal(state, rail.State);
        if (state == SupplyState.Off) Assert.Equal("day", rail.Condition.Name);
    }

    // An electronic limit of at most 1.65 A keeps the fault from the supply: 1.65 A and the other camera's 1.04 A are less than 9 A.
    [Fact]
    public void Rail_BehindAnElectronicLimit_StaysUp()
    {
        ShortCircuit fault = ShortAt(TwoOutputs(ElectronicLimitTests.Limit(), OverloadBehavior.ConstantCurrent(Nine)), "one");
        Assert.Equal(SupplyState.StaysUp, fault.Supply.State);
        Assert.Empty(fault.Supply.Dark);
        Assert.Equal(OperatingVerdict.Operates, fault.Verdict);
    }

    [Fact]
    public void Undeclared_IsNamedAndNotGuessed()
    {
        OutputFaults output = TwoOutputs(device: null).Assess().StudyFaults()[0];
        Assert.All(output.Shorts, s => Assert.Equal(OperatingVerdict.None, s.Verdict));
        Assert.True(output.Missing.HasFlag(FaultData.Protection | FaultData.Overload));
        Assert.All(output.InConditions, c => Assert.False(c.MayTrip));
    }

    // Conditions of -10 °C and 60 °C: 1 + 0.00393·(T − 20) of the copper, and a quarter more of the resettable fuse's in 45 °C. The device is in boxes of 5 °C and 45 °C: a resettable fuse of 1.1 A
    // holds 1.259 A and 0.825 A, and 12 W take 1.0 A and more: in the warm box it may trip.
    [Fact]
    public void Temperatures_AreThoseOfTheConditions()
    {
        Condition[] conditions = [Condition.Day(SmallSite.At(cable: 60, box: 45)), Condition.Night(SmallSite.At(cable: -10, box: 5))];
        var run = new CableRun(SmallFault.Pair(0.5), Length.FromMeters(10));
        var site = new Site("site", conditions, [Box(SmallDevices.Printed(1.10), OverloadBehavior.Unlimited)], [new SiteRun(RunOrigin.Output(BoxName, 1), "one", run)],
            [new SiteDevice("first", Camera(Watts(12)), "one")]);
        OutputFaults output = site.Assess().StudyFaults()[0];
        double ohms = 2 * 10 / 58.0 / 0.5;
        Assert.Equal(12 / (0.1 + 0.05 + (ohms * (1 - (0.00393 * 30)))), output.Weakest.Largest!.Value.Amperes, 1e-9);
        Assert.Equal(12 / (0.1 + (0.14 * 1.25) + (ohms * (1 + (0.00393 * 40)))), output.Weakest.Smallest.Amperes, 1e-9);
        Assert.Equal([true, false], output.InConditions.Select(c => c.MayTrip));
        Assert.Equal(0.825, output.InConditions[0].Carried!.Value.Amperes, 1e-9);
    }

    // A fuse to UL 248-14 carries 1.1 times its rating for 4 h: a condition of 2 h does not open it.
    [Theory]
    [InlineData(2, false)]
    [InlineData(5, true)]
    public void NuisanceTrip_NeedsTheTime(double hours, bool mayTrip)
    {
        var night = new Condition("night", LoadComponents.None, SmallSite.At(), duration: Duration.FromHours(hours));
        var site = new Site("site", [night], [Box(SmallDevices.Fuse(FuseCharacteristic.UlFast, 1), OverloadBehavior.Unlimited)], [Run(RunOrigin.Output(BoxName, 1), "one", 0)],
            [new SiteDevice("first", Camera(Amperes(1.05)), "one")]);
        ProtectionInCondition condition = site.Assess().StudyFaults()[0].InConditions[0];
        Assert.Equal(mayTrip, condition.MayTrip);
        Assert.Equal(1.05, condition.ShareOfRating!.Value.DecimalFractions, 1e-12);
    }

    // Twice the output's 2 A through everything that it feeds: 4 A on a fuse F of 2 A may last for ever.
    [Fact]
    public void Overload_IsAMultipleOfTheOutputsLimit()
    {
        OutputFaults fed = TwoOutputs(SmallFault.QuickActing(2), OverloadBehavior.Unlimited).Assess().StudyFaults()[0];
        Overload overload = fed.OverloadOf(2 * fed.Output.Limit);
        Assert.Equal(4, overload.Drawn.Amperes, 1e-12);
        Assert.Equal(OperatingVerdict.MayOperate, overload.Verdict);
        Quantities.Refusal.AssertNames(() => TwoOutputs(null).Assess().StudyFaults()[0].OverloadOf(ElectricCurrent.Zero), "current", "0 A");
    }

    // A device outside its ambient curve says nothing, and so does the study; but hotter than the curve it carries at most what it does
    // at the end, 0.35 of 1.10 A at 85 °C.
    [Theory]
    [InlineData(90, 0.385)]
    [InlineData(-45, null)]
    public void ABoxOutsideTheDevicesCurve_GivesNoVerdict(double boxCelsius, double? carried)
    {
        var site = new Site("site", [Condition.Day(SmallSite.At(box: boxCelsius))], [Box(SmallDevices.Printed(1.10), OverloadBehavior.Unlimited)], [Run(RunOrigin.Output(BoxName, 1), "one", 0)],
            [new SiteDevice("first", Camera(Watts(12)), "one")]);
        OutputFaults output = site.Assess().StudyFaults()[0];
        Assert.True(output.Missing.HasFlag(FaultData.DeviceTemperature));
        Assert.All(output.Shorts, s => Assert.Equal(OperatingVerdict.None, s.Verdict));
        Assert.Equal(carried, output.InConditions[0].Carried is ElectricCurrent found ? Math.Round(found.Amperes, 9) : null);
    }

    [Fact]
    public void NoAssessment_IsRefused() => Assert.Throws<ArgumentNullException>(() => SiteQuestions.StudyFaults(null!));
}
