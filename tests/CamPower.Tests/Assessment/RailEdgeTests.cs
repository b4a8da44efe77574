using System;
using System.Linq;
using CamPower.Sites;
using CamPower.Tests.Sites;
using UnitsNet;
using static CamPower.Tests.Sites.SmallSite;

namespace CamPower.Tests.Assessment;

/// <summary>A supply at its limit: who comes back, who starts on it, what it gives to charge with, and what an inrush leaves the others. All by hand, 12 V without tolerance.</summary>
public class RailEdgeTests
{
    // A heater of 2 Ω on a supply that holds 5 A rests at 10 V. A camera of 3 A beside it is off below its drop-out voltage; it turns on again at 9 V of those 10 V, and does not at 11 V.
    // Where it comes and goes, what counts is the 8 V at which it lets go.
    [Theory]
    [InlineData(8, 9, DeviceState.Restarting, 8)]
    [InlineData(10.5, 11, DeviceState.NeverUp, 10)]
    public void WhatLetGo_ComesBackWhereTheVoltageDoes(double dropOut, double turnOn, DeviceState state, double rests)
    {
        Site site = Star(Box(Limited(OverloadBehavior.ConstantCurrent(Amps(5)))), [Condition.Day(At())], (0, Camera(Ohms(2))), (0, Camera(Amperes(3), starting: Starts(turnOn, dropOut))));
        SiteAssessment assessment = site.Assess();
        Assert.Equal(rests, assessment.Boxes[0].Worst.SupplyVoltage!.Value.Volts, 1e-6);
        Assert.Equal(state, assessment.Devices[1].Worst.State);
        Assert.Equal(rests, assessment.Devices[0].Worst.Voltage.Volts, 1e-6);
    }

    // 8 W at 4 V, where it turns on at once by declaration, are 2 A of a limit of 1.5 A: it never gets past. A supply that shuts down leaves it dark, another lets it try again and again.
    [Theory]
    [InlineData(true, DeviceState.NeverUp)]
    [InlineData(false, DeviceState.Restarting)]
    public void WhatIsHeldDownAsItStarts_IsNotUp(bool shutsDown, DeviceState state)
    {
        OverloadBehavior overload = shutsDown ? OverloadBehavior.Shutdown(Amps(1.5), Duration.FromMilliseconds(50)) : OverloadBehavior.ConstantCurrent(Amps(1.5));
        var start = new Condition("start", LoadComponents.StartUp, At());
        DeviceInCondition found = Star(Box(Limited(overload, rise: 100)), [start], (0, Camera(Watts(8), starting: AtOnce(4, 3)))).Assess().Devices[0].Worst;
        Assert.Equal((state, StartVerdict.HeldDownBySupply), (found.State, found.Start));
    }

    // It folds back from 10 A to 2 A: 6 A at 6 V, where 3 A have turned on; 8 A at 9 V, where 2.5 A more have. That is closest.
    [Fact]
    public void AsItComesUp_OnlyWhatHasTurnedOnDraws()
    {
        Supply supply = Limited(OverloadBehavior.Foldback(Amps(10), Amps(2)), rise: 100);
        Judgment judged = Star(Box(supply), [Condition.Day(At())], (0, Camera(Amperes(3), starting: AtOnce(6, 5))), (0, Camera(Amperes(2.5), starting: AtOnce(9, 8))))
            .Assess().Boxes[0].Worst.StartingCurrent;
        Assert.Equal((Verdict.Holds, 5.5, 8), (judged.Verdict, ((ElectricCurrent)judged.Value!).Amperes, ((ElectricCurrent)judged.Limit!).Amperes));
    }

    // 5 A for 10 ms are 0.05 C. A rail that rises in 20 ms draws that out to 2.5 A, one that rises in 1 ms does not: two of them against a supply that is off within 5 ms above 3 A.
    // Within 30 ms they have charged.
    [Theory]
    [InlineData(20, 5, 5.0)]
    [InlineData(1, 5, 10.0)]
    [InlineData(20, 30, null)]
    public void WhatCharges_IsDrawnOutByTheRise(double rise, double pulse, double? amperes)
    {
        Supply supply = Limited(OverloadBehavior.Shutdown(Amps(3), Duration.FromMilliseconds(pulse)), rise: rise);
        var charging = new Device("model", DeviceKind.Camera, new ComponentDraw(Amperes(0.5)), Wide, inrush: new Inrush(Amps(5), Duration.FromMilliseconds(10)));
        Finding? found = Rules.StartBeyondSupplyLimit.Check(new Evidence(Star(Box(supply), [Condition.Day(At())], (0, charging), (0, charging)).Assess())).SingleOrDefault();
        Assert.Equal(amperes, ((ElectricCurrent?)found?.Measured)?.Amperes);
    }

    // One of two motors behind an output moves: 2 × 0.2 A and 0.3 A, though the other output of the common negative has but one motor.
    [Fact]
    public void OneMotorOfEachOutput_Moves()
    {
        Device moving = Camera(new ComponentDraw(Amperes(0.2), motor: Amperes(0.3)));
        Site site = new("site", [new Condition("motion", LoadComponents.Motor, At(), motorsMoving: 1)], [Box()],
            [new SiteRun(RunOrigin.Output(BoxName, 1), "one", Runs.OfOhms(0.1)), new SiteRun(RunOrigin.Output(BoxName, 2), "two", Runs.OfOhms(0.1), returnAt: "one")],
            [new SiteDevice("first", moving, "one"), new SiteDevice("second", moving, "two"), new SiteDevice("third", moving, "two")]);
        Assert.Equal([0.5, 0.7], site.Assess().Boxes[0].Outputs.Select(o => Math.Round(o.Worst.Current.Amperes, 9)));
    }

    // Nobody says whether a supply that shuts down from 8 A on does so while either charges: of its own start a device knows nothing either, but the other's is enough.
    [Fact]
    public void AnotherUnknownInrush_LeavesItUnknown()
    {
        var charging = new Device("model", DeviceKind.Camera, new ComponentDraw(Amperes(0.5)), Wide, starting: Starts(9, 8), inrush: new Inrush(Amps(9), Duration.FromMilliseconds(2)));
        DistributionBox box = Box(Limited(OverloadBehavior.Shutdown(Amps(8), Duration.FromSeconds(1))));
        Assert.Equal(Verdict.Unknown, Shared(0.1, box, [Condition.Day(At())], charging, charging).Assess().Devices[0].Worst.DuringInrush.Verdict);
        Assert.Equal(default, Shared(0.1, box, [Condition.Day(At())], charging).Assess().Devices[0].Worst.DuringInrush);
    }

    // A limit of 2 A holds the inrush of one output, beside 0.5 A of the other of the common negative: 2.5 A of 3 A, and the voltage stays.
    [Fact]
    public void BesideAnInrushThatIsHeld_TheOthersOfItsNegativeCountOnce()
    {
        var limit = new ElectronicLimit("limit", Amps(2), Ratio.Zero, Duration.FromMilliseconds(50), ElectricResistance.Zero, Volts(60));
        var charging = new Device("model", DeviceKind.Camera, new ComponentDraw(Amperes(0.5)), Wide, inrush: new Inrush(Amps(8), Duration.FromMilliseconds(2)));
        Site site = new("site", [Condition.Day(At())], [Box(Limited(OverloadBehavior.ConstantCurrent(Amps(3))), protection: limit)],
            [new SiteRun(RunOrigin.Output(BoxName, 1), "one", Runs.OfOhms(0.1)), new SiteRun(RunOrigin.Output(BoxName, 2), "two", Runs.OfOhms(0.1), returnAt: "one")],
            [new SiteDevice("runs", Camera(Amperes(0.5), starting: Starts(9, 8)), "one"), new SiteDevice("charges", charging, "two")]);
        Assert.Equal(Verdict.Holds, site.Assess().Devices[0].Worst.DuringInrush.Verdict);
    }

    // A battery of 5 A behind 0.25 Ω: 8 A of an input of 1.5 Ω, and 6 W behind 1 Ω: (12 − V)/0.25 = V/1.5 + 6/v with v = (V + √(V² − 24))/2.
    [Fact]
    public void ANeighborOfConstantPower_TakesMoreInTheDip()
    {
        var output = new DcOutput(Volts(12), Amps(5), Ratio.Zero, overload: OverloadBehavior.Unlimited, sourceResistance: ElectricResistance.FromOhms(0.25));
        var charging = new Device("model", DeviceKind.Camera, new ComponentDraw(Amperes(0.5)), Wide, inrush: new Inrush(Amps(8), Duration.FromMilliseconds(2)));
        Judgment judged = Star(Box(new Supply("supply", output, Derating.GenericEnclosed)), [Condition.Day(At())], (1, Camera(Watts(6), starting: Starts(9, 8))), (0, charging))
            .Assess().Devices[0].Worst.DuringInrush;
        double low = 8, high = 12;
        for (int i = 0; i < 60; i++)
        {
            double middle = (low + high) / 2;
            if (((12 - middle) / 0.25) > (middle / 1.5) + (6 / AtCamera(middle))) low = middle;
            else high = middle;
        }

        Assert.Equal(AtCamera(low), ((ElectricPotential)judged.Value!).Volts, 1e-6);

        static double AtCamera(double volts) => (volts + Math.Sqrt((volts * volts) - 24)) / 2;
    }

    // 15 A of a supply that holds 5.5 A: three cameras of 6 W are off below 8.5 V, and the input of 12 V / 15 A = 0.8 Ω takes all of 5.5 A: 4.4 V. 4 ms of 15 A are then 10.9 ms.
    [Theory]
    [InlineData(10, Verdict.Violated)]
    [InlineData(11, Verdict.Holds)]
    public void NeighborsThatLetGo_LeaveAllToTheInrush(double holdUp, Verdict verdict)
    {
        Device small = Camera(Watts(6), starting: new Starting(Volts(9.5), Volts(8.5), softStart: true, holdUp: Duration.FromMilliseconds(holdUp)));
        var big = new Device("model", DeviceKind.Camera, new ComponentDraw(Watts(10)), Wide, inrush: new Inrush(Amps(15), Duration.FromMilliseconds(4)));
        Judgment judged = Star(Box(Limited(OverloadBehavior.ConstantCurrent(Amps(5.5)))), [Condition.Day(At())], (0, small), (0, small), (0, small), (0, big))
            .Assess().Devices[0].Worst.DuringInrush;
        Assert.Equal(verdict, judged.Verdict);
        Assert.Equal(4 * 12 / 4.4, ((Duration)judged.Value!).Milliseconds, 1e-6);
    }

    // A fuse that states no re-rating carries its rating in colder air than that of its tests, 23 °C (IEC 60127, from memory); what it carries at 37 °C is not known.
    [Theory]
    [InlineData(8, Verdict.Holds)]
    [InlineData(23, Verdict.Holds)]
    [InlineData(37, Verdict.Unknown)]
    public void AFuseOfUnstatedRerating_IsKnownUpToItsReference(double celsius, Verdict verdict)
    {
        Site site = Star(Box(protection: Protection.SmallDevices.Fuse(FuseCharacteristic.IecQuickActing, 2)), [Condition.Day(At(box: celsius))], (0, Camera(Amperes(0.7))));
        Assert.Equal(verdict, site.Assess().Boxes[0].Outputs[0].Worst.OfProtection.Verdict);
    }

    private static Starting AtOnce(double turnOn, double dropOut) => new(Volts(turnOn), Volts(dropOut), softStart: false, delay: Duration.Zero);

    private static Supply Limited(OverloadBehavior overload, double? rise = null) => new("supply", new DcOutput(Volts(12), Amps(10), Ratio.Zero, overload: overload,
        rise: rise is double ms ? Duration.FromMilliseconds(ms) : null), Derating.GenericEnclosed);

    private static ElectricCurrent Amps(double amperes) => ElectricCurrent.FromAmperes(amperes);
}
