using System;
using System.Linq;
using CamPower.Tests.Sites;
using UnitsNet;
using static CamPower.Tests.Sites.SmallSite;

namespace CamPower.Tests.Assessment;

/// <summary>What the inrush of one camera does to another that runs. By hand; 12 V without tolerance.</summary>
public class InrushDipTests
{
    // 8 A of 12 V is an input of 1.5 Ω. Behind the common 1 Ω, beside 0.5 A: (12 − V)/1 = V/1.5 + 0.5, V = 11.5·1.5/2.5 = 6.9 V. Under 8 V, and with 4.6 A instead of 8 A
    // the 2 ms are 3.478 ms. Above 6 V it does not matter how long.
    [Theory]
    [InlineData(6, null, Verdict.Holds)]
    [InlineData(8, null, Verdict.Unknown)]
    [InlineData(8, 3.4, Verdict.Violated)]
    [InlineData(8, 3.5, Verdict.Holds)]
    public void ANeighborOnTheSameRun_IsPulledDown(double dropOut, double? holdUp, Verdict verdict)
    {
        Duration? held = holdUp is double ms ? Duration.FromMilliseconds(ms) : null;
        Device running = Camera(Amperes(0.5), starting: new Starting(Volts(9), Volts(dropOut), softStart: true, holdUp: held));
        Judgment judged = Shared(1, running, Charging()).Assess().Devices[0].Worst.DuringInrush;
        Assert.Equal(verdict, judged.Verdict);
        if (dropOut == 6) Assert.Equal(6.9, ((ElectricPotential)judged.Value!).Volts, 1e-9);
        if (holdUp is not null) Assert.Equal(2 * 8 / 4.6, ((Duration)judged.Value!).Milliseconds, 1e-9);
        Assert.Equal(verdict == Verdict.Unknown, judged.NotStated is not null);
    }

    // On another output only the source is common: 8 A and 0.5 A from a battery of 5 A behind 0.25 Ω: (12 − V)/0.25 = V/1.5 + 0.5, V = 47.5/4.6667 = 10.1786 V.
    // One that holds its voltage up to 9 A gives it all; one that shuts down from 8 A may do so within 2 ms.
    [Fact]
    public void AnotherOutput_HasTheDipOfTheSource()
    {
        Assert.Equal(47.5 / (4 + (1 / 1.5)), Volts(OverloadBehavior.Unlimited)!.Value, 1e-7);
        Assert.Equal(12, Volts(OverloadBehavior.ConstantCurrent(ElectricCurrent.FromAmperes(9)))!.Value, 1e-9);
        Assert.Null(Volts(OverloadBehavior.Shutdown(ElectricCurrent.FromAmperes(8), Duration.FromSeconds(1))));

        static double? Volts(OverloadBehavior overload)
        {
            var output = new DcOutput(SmallSite.Volts(12), ElectricCurrent.FromAmperes(5), Ratio.Zero, overload: overload, sourceResistance: ElectricResistance.FromOhms(0.25));
            Site site = Star(Box(new Supply("supply", output, Derating.GenericEnclosed)), [Condition.Day(At())], (0, Camera(Amperes(0.5), starting: Starts(9, 8))), (0, Charging()));
            return (site.Assess().Devices[0].Worst.DuringInrush.Value as ElectricPotential?)?.Volts;
        }
    }

    // Its own illuminators switched on at night: 1.5 Ω beside its 0.5 A behind 1 Ω, the same 6.9 V at its own terminals; by day they stay off.
    [Theory]
    [InlineData(3.4, Verdict.Violated)]
    [InlineData(3.5, Verdict.Holds)]
    public void AComponentSwitchedOn_PullsDownItsOwnTerminals(double holdUp, Verdict verdict)
    {
        var switching = new Device("model", DeviceKind.Camera, new ComponentDraw(Amperes(0.5)), dcInput: Wide, starting: new Starting(Volts(9), Volts(8), softStart: true, holdUp: Duration.FromMilliseconds(holdUp)),
            switchedInrush: new Inrush(ElectricCurrent.FromAmperes(8), Duration.FromMilliseconds(2)));
        DeviceAssessment device = Single(1, switching, null, Condition.Day(At()), Condition.Night(At())).Assess().Devices[0];
        Assert.Equal(default, device.InConditions[0].DuringInrush);
        Assert.Equal(verdict, device.InConditions[1].DuringInrush.Verdict);
        Assert.Equal(2 * 8 / 4.6, ((Duration)device.InConditions[1].DuringInrush.Value!).Milliseconds, 1e-9);
    }

    // An electronic limit of 2 A lets no more of it pass: 2.5 A are held by 3 A. What else hangs on that output has nothing meanwhile: 8 A for 2 ms at 2 A are 8 ms.
    [Fact]
    public void AnElectronicLimit_KeepsTheInrushFromTheOthers()
    {
        var limit = new ElectronicLimit("limit", ElectricCurrent.FromAmperes(2), Ratio.Zero, Duration.FromMilliseconds(50), ElectricResistance.Zero, Volts(60));
        var output = new DcOutput(Volts(12), ElectricCurrent.FromAmperes(3), Ratio.Zero, overload: OverloadBehavior.ConstantCurrent(ElectricCurrent.FromAmperes(3)));
        DistributionBox box = Box(new Supply("supply", output, Derating.GenericEnclosed), protection: limit);
        Device running = Camera(Amperes(0.5), starting: new Starting(Volts(9), Volts(8), softStart: true, holdUp: Duration.FromMilliseconds(10)));
        Judgment apart = Star(box, [Condition.Day(At())], (0, running), (0, Charging())).Assess().Devices[0].Worst.DuringInrush;
        Assert.Equal(12, ((ElectricPotential)apart.Value!).Volts, 1e-9);
        Judgment together = Shared(0, box, [Condition.Day(At())], running, Charging()).Assess().Devices[0].Worst.DuringInrush;
        Assert.Equal(8, ((Duration)together.Value!).Milliseconds, 1e-9);
    }

    [Fact]
    public void NobodyElsesInrush_IsNoJudgment()
    {
        SiteAssessment assessment = Shared(1, Camera(Amperes(0.5), starting: Starts(9, 8)), Charging()).Assess();
        Assert.Equal(default, assessment.Devices[1].Worst.DuringInrush);
    }

    private static Device Charging() => new("model", DeviceKind.Camera, new ComponentDraw(Amperes(0.5)), dcInput: Wide,
        inrush: new Inrush(ElectricCurrent.FromAmperes(8), Duration.FromMilliseconds(2)));
}
