using System;
using System.Linq;
using CamPower.Tests.Sites;
using UnitsNet;
using static CamPower.Tests.Sites.SmallSite;

namespace CamPower.Tests.Assessment;

/// <summary>A supply that is asked for more than its limit in normal service. By hand: 12 V without tolerance, rated for 5 A.</summary>
public class OverloadedSupplyTests
{
    private static readonly ElectricCurrent Limit = ElectricCurrent.FromAmperes(5.5);

    // 10 cameras of 10 W take 8.33 A. A supply that pulses or shuts down has none of them up; a constant current cannot feed constant power at all:
    // as the voltage falls they take more, down to the drop-outs, and all let go and come back together.
    [Theory]
    [InlineData("hiccup", SupplyState.Pulses, DeviceState.Restarting)]
    [InlineData("shutdown", SupplyState.Off, DeviceState.NeverUp)]
    [InlineData("constant", SupplyState.Dips, DeviceState.Restarting)]
    [InlineData("undeclared", SupplyState.Unknown, DeviceState.SupplyOverloaded)]
    public void NoCamera_IsUp(string behavior, SupplyState rail, DeviceState state)
    {
        SiteAssessment assessment = Cameras(10, Watts(10), Behavior(behavior)).Assess();
        Assert.Equal(rail, assessment.Boxes[0].Worst.SupplyState);
        Assert.All(assessment.Devices, d => Assert.Equal(state, d.Worst.State));
        Assert.All(assessment.Devices, d => Assert.Equal(state == DeviceState.SupplyOverloaded ? Verdict.Unknown : Verdict.Violated, d.Verdict));
    }

    // 6 cameras of 10 W take 5 A: nothing changes, whatever is declared, to the last bit.
    [Theory]
    [InlineData("hiccup")]
    [InlineData("shutdown")]
    [InlineData("constant")]
    [InlineData("foldback")]
    [InlineData("undeclared")]
    public void BelowTheLimit_NothingChanges(string behavior)
    {
        SiteAssessment assessment = Cameras(6, Watts(10), Behavior(behavior)).Assess();
        Assert.Equal(SupplyState.StaysUp, assessment.Boxes[0].Worst.SupplyState);
        double volts = Cameras(6, Watts(10), OverloadBehavior.Unlimited).Assess().Devices[0].Worst.Voltage.Volts;
        Assert.All(assessment.Devices, d => Assert.Equal(volts, d.Worst.Voltage.Volts));
    }

    // Above the nameplate of 5 A, but not above a declared limit of 5.5 A: 5.25 A hold. The derated rating is another question: at 60 °C it is 3.75 A.
    [Fact]
    public void ADeclaredLimit_IsWhatCounts_AndTheNameplateWhereNoneIs()
    {
        Assert.Equal(DeviceState.Up, Cameras(1, Amperes(5.25), OverloadBehavior.ConstantCurrent(Limit)).Assess().Devices[0].Worst.State);
        Assert.Equal(DeviceState.SupplyOverloaded, Cameras(1, Amperes(5.25), null).Assess().Devices[0].Worst.State);
        Assert.Equal(DeviceState.Up, Cameras(1, Amperes(4.9), null, boxCelsius: 60).Assess().Devices[0].Worst.State);
    }

    // 2 Ω take 6 A of 12 V: 5.5 A through them leave 11 V. With foldback from 5.5 A to 2.2 A: V/2 = 2.2 + 3.3·V/12 is V = 2.2/(0.5 − 0.275) = 9.778 V.
    // Behind 0.1 Ω of cable the 1.9 Ω have 0.95 of that.
    [Theory]
    [InlineData("constant", 11)]
    [InlineData("foldback", 9.77777777778)]
    public void AHeater_SagsToTheBalance(string behavior, double volts)
    {
        DeviceInCondition device = Cameras(1, Ohms(1.9), Behavior(behavior), ohms: 0.1).Assess().Devices[0].Worst;
        Assert.Equal(DeviceState.Up, device.State);
        Assert.Equal(0.95 * volts, device.Voltage.Volts, 1e-7);
        BoxInCondition box = Cameras(1, Ohms(1.9), Behavior(behavior), ohms: 0.1).Assess().Boxes[0].Worst;
        Assert.Equal(SupplyState.Dips, box.SupplyState);
        Assert.Equal(volts, box.SupplyVoltage!.Value.Volts, 1e-7);
    }

    // 2.4 Ω and 9 W: V/2.4 + 9/V = 5.5 has the roots (13.2 ± √(13.2² − 4·21.6))/2 = 11.3027 and 1.897: the upper one holds. At 12 V they take 5.75 A.
    [Fact]
    public void AHeaterBesideACamera_HoldsTheUpperRoot()
    {
        Site site = Star(BoxOf(OverloadBehavior.ConstantCurrent(Limit)), [Condition.Day(At())], (0, Camera(Ohms(2.4))), (0, Camera(Watts(9), starting: Starts(9, 8))));
        SiteAssessment assessment = site.Assess();
        double upper = (13.2 + Math.Sqrt((13.2 * 13.2) - (4 * 21.6))) / 2;
        Assert.All(assessment.Devices, d => Assert.Equal(upper, d.Worst.Voltage.Volts, 1e-7));
    }

    // Beside 4.5 A of heater-like constant current a camera of 18 W drops out at 9 V: 1.5 A more at 12 V. It lets go where its 9 V are reached, the rest stays up; the rail
    // recovers above its turn-on voltage of 10 V, so that it restarts.
    [Fact]
    public void WhoLetsGoFirst_LeavesTheOthersUp()
    {
        Site site = Star(BoxOf(OverloadBehavior.ConstantCurrent(Limit)), [Condition.Day(At())],
            (0, Camera(Amperes(4.5), starting: Starts(5, 4))), (0, Camera(Watts(18), starting: Starts(10, 9))));
        SiteAssessment assessment = site.Assess();
        Assert.Equal([DeviceState.Up, DeviceState.Restarting], assessment.Devices.Select(d => d.Worst.State));
        Assert.Equal(9, assessment.Devices[0].Worst.Voltage.Volts, 1e-6);
    }

    // A battery of 5 A and 0.1 Ω that is asked for 100 W: V·(12 − V)/0.1 = 100 gives V = 6 + √(36 − 10) = 11.0990 V.
    [Fact]
    public void ASourceWithoutALimit_SagsByItsResistance()
    {
        DeviceInCondition device = Cameras(1, Watts(100), OverloadBehavior.Unlimited, sourceOhms: 0.1).Assess().Devices[0].Worst;
        Assert.Equal(6 + Math.Sqrt(26), device.Voltage.Volts, 1e-7);
    }

    // Of three cameras of 24 W with motors of 24 W more, behind 7.5 A: at rest 6 A. One that moves is 8 A, and none is 6 A: up.
    [Theory]
    [InlineData(0, DeviceState.Up)]
    [InlineData(1, DeviceState.Restarting)]
    [InlineData(2, DeviceState.Restarting)]
    public void OnlyAsManyMotorsAsMayMove_Count(int moving, DeviceState state)
    {
        var draw = new ComponentDraw(Watts(24), motor: Watts(24));
        Site site = Star(BoxOf(OverloadBehavior.Hiccup(ElectricCurrent.FromAmperes(7.5), Duration.FromSeconds(0.1), Duration.FromSeconds(1))),
            [Condition.NightWithMotion(At(), moving)], (0, Camera(draw)), (0, Camera(draw)), (0, Camera(draw)));
        Assert.All(site.Assess().Devices, d => Assert.Equal(state, d.Worst.State));
    }

    // Eight cameras of 9.6 W with a turn-on voltage of 6 V take 6.4 A of 12 V, and 12.8 A as the supply passes 6 V: more than 10.5 A, soft start or not. Whether they wait
    // for longer than it takes to rise decides it; where nobody declares that, it is not known.
    [Theory]
    [InlineData(null, null, StartVerdict.Unknown)]
    [InlineData(0.2, null, StartVerdict.Unknown)]
    [InlineData(null, 0.05, StartVerdict.Unknown)]
    [InlineData(0.01, 0.05, StartVerdict.HeldDownBySupply)]
    [InlineData(0.2, 0.05, StartVerdict.Starts)]
    public void Starting_IsHeldAgainstTheLimit(double? delay, double? rise, StartVerdict verdict)
    {
        Starting starting = new(Volts(6), Volts(5), true, Seconds(delay));
        DistributionBox box = BoxOf(OverloadBehavior.ConstantCurrent(ElectricCurrent.FromAmperes(10.5)), rise: Seconds(rise), rated: 10);
        SiteAssessment assessment = Star(box, [Condition.ColdStart(At())], [.. Enumerable.Repeat((0.0, Camera(Watts(9.6), starting: starting)), 8)]).Assess();
        Assert.All(assessment.Devices, d => Assert.Equal(verdict, d.Worst.Start));
        Assert.All(assessment.Devices, d => Assert.Equal(verdict == StartVerdict.HeldDownBySupply ? DeviceState.Restarting : DeviceState.Up, d.Worst.State));
        if (verdict != StartVerdict.HeldDownBySupply) return;
        Assert.Equal(12.8, ((ElectricCurrent)assessment.Boxes[0].Worst.StartingCurrent.Value!).Amperes, 1e-9);
        Assert.Equal(10.5, ((ElectricCurrent)assessment.Boxes[0].Worst.StartingCurrent.Limit!).Amperes, 1e-9);
    }

    // Foldback to 4 A: at 6 V the line is at 4 + 6.5/2 = 7.25 A, and 6 such cameras take 9.6 A. At 9 V they take 6.4 A of 8.875 A.
    [Theory]
    [InlineData(6, false)]
    [InlineData(9, true)]
    public void Starting_IsHeldAgainstTheFoldbackLine(double turnOn, bool starts)
    {
        Starting starting = new(Volts(turnOn), Volts(5), false, Duration.Zero);
        DistributionBox box = BoxOf(OverloadBehavior.Foldback(ElectricCurrent.FromAmperes(10.5), ElectricCurrent.FromAmperes(4)), rise: Duration.FromSeconds(0.1), rated: 10);
        SiteAssessment assessment = Star(box, [Condition.Day(At())], [.. Enumerable.Repeat((0.0, Camera(Watts(9.6), starting: starting)), 6)]).Assess();
        Assert.All(assessment.Devices, d => Assert.Equal(starts, d.Worst.WouldStart));
        Assert.All(assessment.Devices, d => Assert.Equal(DeviceState.Up, d.Worst.State));
    }

    // They turn on at 9 V, but run down to 5 V: after a dip to that they draw 8·9.6/5 = 15.36 A at once, and the supply gives 10.5 A.
    [Fact]
    public void ComingBackFromADip_CountsThoseThatRunOn()
    {
        DistributionBox box = BoxOf(OverloadBehavior.ConstantCurrent(ElectricCurrent.FromAmperes(10.5)), rated: 10);
        SiteAssessment assessment = Star(box, [Condition.Day(At())], [.. Enumerable.Repeat((0.0, Camera(Watts(9.6), starting: Starts(9, 5))), 8)]).Assess();
        Assert.Equal(Verdict.Violated, assessment.Boxes[0].Worst.ReturningCurrent.Verdict);
        Assert.Equal(15.36, ((ElectricCurrent)assessment.Boxes[0].Worst.ReturningCurrent.Value!).Amperes, 1e-9);
        Assert.Equal(Verdict.Holds, assessment.Boxes[0].Worst.StartingCurrent.Verdict);
    }

    // 9 W behind 1.5 Ω at 8 V: 1.125 A, and 8 + 1.5·1.125 = 9.6875 V at the box, below which the cameras let go. Four take 4.5 A there; with those 8 V at the box
    // they would ask for 6.45 A.
    [Theory]
    [InlineData(4.6, Verdict.Holds)]
    [InlineData(4.4, Verdict.Violated)]
    public void ComingBackFromADip_CountsTheVoltageAtTheTerminals(double limit, Verdict verdict)
    {
        DistributionBox box = BoxOf(OverloadBehavior.ConstantCurrent(ElectricCurrent.FromAmperes(limit)), rated: 4.3);
        BoxInCondition solved = Star(box, [Condition.Day(At())], [.. Enumerable.Repeat((1.5, Camera(Watts(9), starting: Starts(9, 8))), 4)]).Assess().Boxes[0].Worst;
        Assert.Equal(verdict, solved.ReturningCurrent.Verdict);
        Assert.Equal(4.5, ((ElectricCurrent)solved.ReturningCurrent.Value!).Amperes, 1e-7);
    }

    // The same where two cameras share a run of 0.75 Ω: 2·9 W at 8 V are 2.25 A and 9.6875 V as well.
    [Fact]
    public void ComingBackFromADip_CountsThoseThatShareARunTogether()
    {
        DistributionBox box = BoxOf(OverloadBehavior.ConstantCurrent(ElectricCurrent.FromAmperes(2.2)), rated: 2.1);
        Device camera = Camera(Watts(9), starting: Starts(9, 8));
        BoxInCondition solved = Shared(0.75, box, [Condition.Day(At())], camera, camera).Assess().Boxes[0].Worst;
        Assert.Equal(Verdict.Violated, solved.ReturningCurrent.Verdict);
        Assert.Equal(2.25, ((ElectricCurrent)solved.ReturningCurrent.Value!).Amperes, 1e-7);
    }

    // 8.5 A and 10 % hold 7.65 A for certain: 8 A are more, and no less than 7.6 A are delivered. Without a tolerance 8.5 A hold them.
    [Theory]
    [InlineData(0, 8, SupplyState.StaysUp)]
    [InlineData(10, 8, SupplyState.Dips)]
    [InlineData(10, 7.6, SupplyState.StaysUp)]
    public void ALoadIsHeldByTheLeastThatTheLimitMayBe(double percent, double amperes, SupplyState rail)
    {
        OverloadBehavior limit = OverloadBehavior.ConstantCurrent(ElectricCurrent.FromAmperes(8.5)).WithTolerance(Ratio.FromPercent(percent));
        BoxInCondition box = Star(BoxOf(limit, rated: 10), [Condition.Day(At())], (0, Camera(Ohms(12 / amperes)))).Assess().Boxes[0].Worst;
        Assert.Equal(rail, box.SupplyState);
        Assert.Equal(percent > 0 ? 7.65 : 8.5, box.DeratedRating.Amperes, 1e-12);
    }

    [Fact]
    public void ATolerance_IsKeptAndRefused()
    {
        OverloadBehavior held = OverloadBehavior.Foldback(ElectricCurrent.FromAmperes(8), ElectricCurrent.FromAmperes(2)).WithTolerance(Ratio.FromPercent(10));
        Assert.Equal("folds back from 8 A to 2 A ± 10 %", held.ToString());
        Assert.Equal((8, 2, 10), (held.Limit!.Value.Amperes, held.ShortCircuitCurrent!.Value.Amperes, held.Tolerance.Percent));
        Quantities.Refusal.AssertNames(() => held.WithTolerance(Ratio.FromPercent(91)), "tolerance", "0.91");
    }

    private static Site Cameras(int count, Load load, OverloadBehavior? overload, double ohms = 0, double boxCelsius = 25, double? sourceOhms = null) =>
        Star(BoxOf(overload, sourceOhms), [Condition.Day(At(box: boxCelsius))], [.. Enumerable.Repeat((ohms, Camera(load, starting: Starts(9, 8))), count)]);

    private static DistributionBox BoxOf(OverloadBehavior? overload, double? sourceOhms = null, Duration? rise = null, double rated = 5) => SmallSite.Box(
        new Supply("supply", new DcOutput(Volts(12), ElectricCurrent.FromAmperes(rated), Ratio.Zero, overload: overload,
            sourceResistance: sourceOhms is double ohms ? ElectricResistance.FromOhms(ohms) : null, rise: rise), Derating.GenericEnclosed), outputs: 10);

    private static Duration? Seconds(double? seconds) => seconds is double s ? Duration.FromSeconds(s) : null;

    private static OverloadBehavior? Behavior(string name) => name switch
    {
        "hiccup" => OverloadBehavior.Hiccup(Limit, Duration.FromSeconds(0.1), Duration.FromSeconds(1)),
        "shutdown" => OverloadBehavior.Shutdown(Limit, Duration.FromSeconds(0.05)),
        "constant" => OverloadBehavior.ConstantCurrent(Limit),
        "foldback" => OverloadBehavior.Foldback(Limit, ElectricCurrent.FromAmperes(2.2)),
        _ => null,
    };
}
