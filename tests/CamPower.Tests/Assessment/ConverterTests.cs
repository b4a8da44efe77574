using System;
using System.Linq;
using CamPower.Mains;
using CamPower.Tests.Sites;
using UnitsNet;
using static CamPower.Tests.Sites.SmallSite;

namespace CamPower.Tests.Assessment;

public class ConverterTests
{
    private static readonly Starting From17 = Starts(17, 16);

    // By hand: 9 W behind 90 % are 10 W. From 24 V over 4 Ω: (24 + √(576 - 160))/2 = 22.198 V.
    [Fact]
    public void Input_DrawsThePowerBehindItOverItsEfficiency()
    {
        SiteAssessment assessed = Fed(4, Camera(Watts(9))).Assess();
        DeviceInCondition input = Device(assessed, "step-down").InConditions[0];
        Assert.Equal((24 + Math.Sqrt(576 - 160)) / 2, input.Voltage.Volts, 1e-9);
        Assert.Equal(10, (double)input.Load.PowerComponent.Watts, 1e-9);
        Assert.Equal(12, Device(assessed, "camera").InConditions[0].Voltage.Volts, 1e-9);
        Assert.Equal(10 / 22.198, assessed.Boxes[0].InConditions[0].TotalCurrent.Amperes, 1e-4);
        Assert.Equal(0.75, assessed.Boxes[1].InConditions[0].TotalCurrent.Amperes, 1e-9);
    }

    // Towards the run it is constant power: less voltage, more current. A load of constant current would take the same at 20 V and 24 V.
    [Fact]
    public void Input_TakesMoreCurrentFromLessVoltage()
    {
        double At(double volts) => Device(Fed(0, Camera(Watts(9)), volts).Assess(), "step-down").InConditions[0].Current.Amperes;
        Assert.Equal(10 / 20.0, At(20), 1e-9);
        Assert.Equal(10 / 30.0, At(30), 1e-9);
    }

    // By hand, 48 V to 24 V to 12 V: 10 W into the second; over 1 Ω from 24 V (24 + √(576 - 40))/2 = 23.576 V, 0.4242 A, 10.180 W; 11.311 W into the
    // first; over 10 Ω from 48 V (48 + √(2304 - 452.4))/2 = 45.515 V.
    [Fact]
    public void Chain_OfTwo_IsSolvedFromItsEnd()
    {
        var site = new Site("site", [Condition.Day(At())],
            [Box(Dc(48)), Converter("second", 12, "middle 2"), Converter("first", 24, "middle 1", lowest: 30, highest: 60)],
            [
                new SiteRun(RunOrigin.Output("box", 1), "middle 1", Runs.OfOhms(10)), new SiteRun(RunOrigin.Output("first", 1), "middle 2", Runs.OfOhms(1)),
                new SiteRun(RunOrigin.Output("second", 1), "end", Runs.OfOhms(0)),
            ],
            [new SiteDevice("camera", Camera(Watts(9)), "end")]);
        SiteAssessment assessed = site.Assess();
        Assert.Equal(23.576, Device(assessed, "second").InConditions[0].Voltage.Volts, 0.0005);
        Assert.Equal(45.515, Device(assessed, "first").InConditions[0].Voltage.Volts, 0.0005);
        Assert.Equal(11.311, (double)Device(assessed, "first").InConditions[0].Load.PowerComponent.Watts, 0.0005);
    }

    // 12 V to 24 V: 9 W behind 90 % again.
    [Fact]
    public void StepUp_IsTheSameTheOtherWay()
    {
        var site = new Site("site", [Condition.Day(At())], [Box(Dc(12)), Converter("step-up", 24, "middle", lowest: 9, highest: 16)],
            [new SiteRun(RunOrigin.Output("box", 1), "middle", Runs.OfOhms(1)), new SiteRun(RunOrigin.Output("step-up", 1), "end", Runs.OfOhms(0))],
            [new SiteDevice("camera", Camera(Watts(9)), "end")]);
        SiteAssessment assessed = site.Assess();
        Assert.Equal((12 + Math.Sqrt(144 - 40)) / 2, Device(assessed, "step-up").InConditions[0].Voltage.Volts, 1e-9);
        Assert.Equal(24, Device(assessed, "camera").InConditions[0].Voltage.Volts, 1e-9);
    }

    // 16.9 V at its input: it still runs, below the 18 V that it is rated for. It is said once, of the converter, and its camera has its 12 V.
    [Fact]
    public void Input_BelowItsRange_IsAFindingOfTheConverter()
    {
        SiteAssessment assessed = Fed(12, Camera(Watts(9)), starting: From17).Assess();
        Finding finding = Assert.Single(RuleSet.Standard.Check(assessed), f => f.Rule == "undervoltage");
        Assert.Equal("step-down", finding.About.Name);
        Assert.Equal((24 + Math.Sqrt(576 - 480)) / 2, ((ElectricPotential)finding.Measured!).Volts, 1e-9);
        Assert.Equal(DeviceState.Up, Device(assessed, "camera").InConditions[0].State);
    }

    // At 14 Ω it settles at (24 + √(576 - 560))/2 = 14 V, below its drop-out: it restarts again and again, and its camera with it.
    [Fact]
    public void WhereTheInputIsNotUp_NothingBehindItIs()
    {
        SiteAssessment assessed = Fed(14, Camera(Watts(9)), starting: From17).Assess();
        DeviceState input = Device(assessed, "step-down").InConditions[0].State;
        Assert.Equal(DeviceState.Restarting, input);
        Assert.Equal(input, Device(assessed, "camera").InConditions[0].State);
        Assert.Equal(DeviceState.NoOperatingPoint, Device(Fed(15, Camera(Watts(9))).Assess(), "camera").InConditions[0].State);
    }

    // Each condition draws what is behind it then.
    [Fact]
    public void Input_DrawsByCondition()
    {
        Site site = Fed(1, Camera(new ComponentDraw(Watts(4.5), infrared: Watts(9))), conditions: [Condition.Day(At()), Condition.Night(At())]);
        DeviceAssessment input = Device(site.Assess(), "step-down");
        Assert.Equal([5, 15], input.InConditions.Select(c => (double)c.Load.PowerComponent.Watts), (a, b) => Math.Abs(a - b) < 1e-9);
        Assert.Equal(24, input.LightLoadVoltage.Volts, 1e-9);
    }

    // 100 W asked of a converter that holds 5 A: no more than 12 V · 5 A / 0.9 goes in.
    [Fact]
    public void Input_OfAnOverloadedConverter_DrawsWhatItsLimitLets()
    {
        Site site = Fed(0, Camera(Watts(100)));
        Assert.Equal(60 / 0.9, (double)Device(site.Assess(), "step-down").InConditions[0].Load.PowerComponent.Watts, 1e-9);
    }

    // The voltage of the mains is not that of its input, and its energy is counted once, at the box on the mains.
    [Fact]
    public void Mains_IsTheBusinessOfTheFirstBoxAlone()
    {
        var low = new Condition("low line", LoadComponents.None, At(), lineVoltage: Volts(104));
        Supply first = Receptacles24();
        SiteAssessment assessed = Fed(0, Camera(Watts(9)), supply: first, conditions: [low]).Assess();
        Assert.Equal(5, assessed.Boxes[1].InConditions[0].DeratedRating.Amperes, 1e-9);
        Assert.Equal(10 / 0.85, (double)assessed.StudyEnergy().InConditions[0].Power!.Value.Watts, 1e-9);
    }

    // A battery behind the first box: the converter drops out at 20 V, and is named.
    [Fact]
    public void OnBattery_TheConverterDropsOut()
    {
        Condition night = Condition.Night(At());
        DistributionBox backed = Box(Dc(24)).WithBattery(new Battery("battery", Backup.Batteries.Chemistry(25, 19, 1, 0.5), cells: 1,
            ElectricCharge.FromAmpereHours(1), Duration.FromHours(20), ElectricResistance.FromOhms(0.01)));
        Site site = Fed(0.01, Camera(Watts(9)), starting: Starts(21, 20)).With(backed);
        BatteryRun run = site.RunOnBattery("box", night);
        Assert.Equal("step-down", run.DropOuts[0].Device.Name);
        Assert.True(run.ToFirstDropOut.Hours > 1);
    }

    [Fact]
    public void Site_RefusesAFeedThatGoesRound_OrFromNowhere_OrOfADevicesName()
    {
        Assert.Contains("goes round in a ring", Refused([Converter("a", 12, "of b"), Converter("b", 12, "of a")]), StringComparison.Ordinal);
        Assert.Contains("no run ends at a junction named nowhere", Refused([Converter("a", 12, "nowhere"), Box().WithName("b")]), StringComparison.Ordinal);
        Assert.Contains("the converter camera has the name of a device", Assert.Throws<ArgumentException>(() => new Site("site", [Condition.Day(At())],
            [Box(Dc(24)), Converter("camera", 12, "middle")], [new SiteRun(RunOrigin.Output("box", 1), "middle", Runs.OfOhms(1))],
            [new SiteDevice("camera", Camera(Watts(1)), "middle")])).Message, StringComparison.Ordinal);

        static string Refused(DistributionBox[] boxes) => Assert.Throws<ArgumentException>(() => new Site("site", [Condition.Day(At())], boxes,
            [new SiteRun(RunOrigin.Output("a", 1), "of a", Runs.OfOhms(1)), new SiteRun(RunOrigin.Output("b", 1), "of b", Runs.OfOhms(1))], [])).Message;
    }

    [Fact]
    public void WithFeed_RefusesWhatIsNoConverter()
    {
        Assert.Contains("input voltage and efficiency", Assert.Throws<InvalidOperationException>(() => Box().WithFeed("end")).Message, StringComparison.Ordinal);
        Assert.Contains("regulated", Assert.Throws<InvalidOperationException>(() => Box(Dc(kind: CurrentKind.Ac)).WithFeed("end")).Message, StringComparison.Ordinal);
        Assert.Throws<InvalidOperationException>(() => Converter("a", 12, "end").WithReceptacle(CamPower.Tests.Mains.Receptacles.Rated(15)));
        Assert.Throws<InvalidOperationException>(() => Converter("a", 12, "end").WithBattery(BatteryCatalog.Generic12Volt[0]));
        Assert.Throws<ArgumentOutOfRangeException>(() => new Device("device", DeviceKind.Converter, new ComponentDraw(Watts(1)), Wide));
    }

    // A site that was solved and changed is solved again: another converter draws another power.
    [Fact]
    public void With_AnotherConverter_SolvesItsInputAnew()
    {
        Site solved = Fed(0, Camera(Watts(9))).Assess().Site;
        Site other = solved.With(Converter("step-down", 12, "middle", efficiency: 0.5));
        Assert.Equal(18, (double)Device(other.Assess(), "step-down").InConditions[0].Load.PowerComponent.Watts, 1e-9);
    }

    private static DeviceAssessment Device(SiteAssessment assessed, string name) => assessed.Devices.Single(d => d.Device.Name == name);

    private static Supply Receptacles24()
    {
        ShareCurve<Ratio> level = Level(0.85);
        return new Supply("supply", Dc(24, 10).Output, Derating.GenericEnclosed, new SupplyInput(efficiency: level, powerFactor: level));
    }

    private static ShareCurve<Ratio> Level(double share) => new(new(Ratio.Zero, Ratio.FromDecimalFractions(share)), new(Ratio.FromPercent(100), Ratio.FromDecimalFractions(share)));

    private static DistributionBox Converter(string name, double volts, string junction, double lowest = 18, double highest = 36, double efficiency = 0.9,
        Starting? starting = null) => Box(new Supply("converter", new DcOutput(Volts(volts), ElectricCurrent.FromAmperes(5), Ratio.Zero,
            overload: OverloadBehavior.ConstantCurrent(ElectricCurrent.FromAmperes(5))), Derating.GenericEnclosed, new SupplyInput(Range(lowest, highest), efficiency: Level(efficiency))))
        .WithName(name).WithFeed(junction, starting);

    // A box of 24 V, a run, a converter to 12 V and a camera at its terminals.
    private static Site Fed(double ohms, Device camera, double volts = 24, Starting? starting = null, Supply? supply = null, Condition[]? conditions = null) => new(
        "site", conditions ?? [Condition.Day(At())], [Box(supply ?? Dc(volts)), Converter("step-down", 12, "middle", starting: starting)],
        [new SiteRun(RunOrigin.Output("box", 1), "middle", Runs.OfOhms(ohms)), new SiteRun(RunOrigin.Output("step-down", 1), "end", Runs.OfOhms(0))],
        [new SiteDevice("camera", camera, "end")]);
}
