using System;
using System.Linq;
using CamPower.Tests.Sites;
using UnitsNet;
using static CamPower.Tests.Sites.SmallSite;

namespace CamPower.Tests.Assessment;

/// <summary>Which supply voltage, which temperature and which shares stand behind each voltage.</summary>
public class VoltageTests
{
    // NBS Handbook 100: 18 AWG solid, 6.385 Ω/1000 ft at 20 °C; 100 m out and back. Copper: 0.00393 per kelvin.
    private const double OhmsAt20C = 2 * 100 * 6.385 / 304.8, PerKelvin = 0.00393;

    private static readonly CableRun HundredMeters = new(Runs.Eighteen, Length.FromMeters(100));

    // A 12 V supply trimmed to 12.6 V, within 2 %.
    private static readonly Supply Trimmed = new("trimmed",
        new DcOutput(Volts(12), ElectricCurrent.FromAmperes(10), Ratio.FromPercent(2), Range(11, 14), Volts(12.6)), Derating.GenericEnclosed);

    [Theory]
    [InlineData(20)]
    [InlineData(60)]
    [InlineData(-20)]
    public void Voltage_IsOfTheLowestSupplyVoltageAndTheConditionsCable(double celsius)
    {
        double expected = ClosedForm(12.6 * 0.98, OhmsAt(celsius), 7);
        DeviceInCondition found = Run(new ComponentDraw(Watts(4), infrared: Watts(3)), Condition.Night(At(celsius))).InConditions[0];
        Assert.Equal(expected, found.Voltage.Volts, 1e-3 * expected);
        Assert.Equal(7 / expected, found.Current.Amperes, 1e-3);
        Assert.Equal(expected - 2, found.Margin.Volts, 2e-3 * expected);
    }

    // Highest supply voltage, the coldest of all conditions' cables, the base alone.
    [Fact]
    public void LightLoadVoltage_IsOfTheHighestVoltageTheColdestCableAndTheBase()
    {
        var draw = new ComponentDraw(Watts(4), infrared: Watts(3), heater: Watts(9));
        Condition hot = Condition.Night(At(cable: 60)), cold = Condition.NightWithMotion(At(cable: -20)).With(LoadComponents.Heater);
        double expected = ClosedForm(12.6 * 1.02, OhmsAt(-20), 4);
        Assert.All(new[] { Run(draw, hot, cold), Run(draw, cold, hot) }, d => Assert.Equal(expected, d.LightLoadVoltage.Volts, 2e-4 * expected));
        Assert.True(ClosedForm(12.6 * 1.02, OhmsAt(60), 4) < expected * (1 - 1e-3), "The cold cable must show.");
    }

    [Theory]
    [InlineData(InputStage.Unknown)]
    [InlineData(InputStage.Switching)]
    [InlineData(InputStage.Linear)]
    public void LightLoadVoltage_OfALabel_IsThatOfTheSupply(InputStage stage) => Assert.Equal(
        12.6 * 1.02, Run(new LabelDraw(Volts(12), ElectricCurrent.FromAmperes(0.5), stage), Condition.Day(At())).LightLoadVoltage.Volts, 1e-12);

    // Beside a label only the other's base draws: 1 A over 2 Ω of the 13.2 V.
    [Fact]
    public void LightLoadVoltage_BesideALabel_CountsTheOthersBase()
    {
        Site site = Shared(2, Box(Dc(percent: 10)), [Condition.Day(At())],
            Camera(new LabelDraw(Volts(12), ElectricCurrent.FromAmperes(1), InputStage.Unknown)), Camera(new ComponentDraw(Amperes(1), heater: Amperes(1))));
        Assert.All(site.Assess().Devices, d => Assert.Equal(11.2, d.LightLoadVoltage.Volts, 1e-12));
    }

    // A base that the run cannot carry even at the highest voltage gives no comfort.
    [Fact]
    public void LightLoadVoltage_WithoutOperatingPoint_IsThatOfTheSupply() =>
        Assert.Equal(13.2, Single(10, Camera(Watts(20)), Dc(percent: 10)).Assess().Devices[0].LightLoadVoltage.Volts, 1e-12);

    // "12 V, 1 A" over 2 Ω. At 10 V supply a linear input has 8 V, a switching one (10 + √(100 − 96))/2 = 6 V, and the
    // unknown one the worse; at 24 V linear 22 V, switching (24 + √(576 − 96))/2 = 22.95 V, and again the worse.
    [Theory]
    [InlineData(10, InputStage.Linear, 8)]
    [InlineData(10, InputStage.Switching, 6)]
    [InlineData(10, InputStage.Unknown, 6)]
    [InlineData(24, InputStage.Linear, 22)]
    [InlineData(24, InputStage.Switching, 22.954451150103324)]
    [InlineData(24, InputStage.Unknown, 22)]
    public void Label_DrawsWhatItsInputStageDoes_AloneAndInATree(double supply, InputStage stage, double expected)
    {
        Device camera = Camera(new LabelDraw(Volts(12), ElectricCurrent.FromAmperes(1), stage));
        Condition condition = Condition.ColdStart(At());
        Assert.Equal(expected, Single(2, camera, Dc(supply), condition).Assess().Devices[0].Worst.Voltage.Volts, 1e-9);
        Assert.Equal(expected, Shared(2, Box(Dc(supply)), [condition], camera, Camera(Load.None)).Assess().Devices[0].Worst.Voltage.Volts, 1e-9);
    }

    // A chain of linear inputs, by hand: 3 A, 2 A and 1 A flow in its runs of 0.5, 1 and 1.5 Ω.
    [Fact]
    public void Chain_OfConstantCurrents_ByHand()
    {
        Device camera = Camera(Amperes(1));
        SiteAssessment assessment = Chain((0.5, camera), (1, camera), (1.5, camera)).Assess();
        Assert.Equal([10.5, 8.5, 7.0], assessment.Devices.Select(d => Math.Round(d.Worst.Voltage.Volts, 12)));
        Assert.Equal([1, 2, 3], assessment.Devices.Select(d => d.Path.Count));
        Assert.Equal(3, assessment.Boxes[0].Outputs[0].Worst.Current.Amperes, 1e-12);
    }

    // One run of 2.5 Ω and one device, alone or as a chain of bare junctions: the same answer by either way of solving.
    [Theory]
    [InlineData(2)]
    [InlineData(12)]
    [InlineData(14.3)]
    public void OneDevice_AsATreeOrAsASingleRun_IsTheSame(double watts)
    {
        Device camera = Camera(Watts(watts) + Ohms(400), starting: Starts(5, 4, soft: false));
        DeviceInCondition single = Single(2.5, camera).Assess().Devices[0].Worst;
        Site chain = new("site", [Condition.Day(At())], [Box()],
            [new SiteRun(RunOrigin.Output(BoxName, 1), "half", Runs.OfOhms(1)), new SiteRun(RunOrigin.Junction("half"), "end", Runs.OfOhms(1.5))],
            [new SiteDevice("camera", camera, "end")]);
        DeviceInCondition tree = chain.Assess().Devices[0].Worst;
        Assert.Equal(single.State, tree.State);
        Assert.Equal(single.Start, tree.Start);
        Assert.Equal(single.SolvedVoltage!.Value.Volts, tree.SolvedVoltage!.Value.Volts, 1e-9);
        Assert.Equal(single.UnloadedVoltage!.Value.Volts, tree.UnloadedVoltage!.Value.Volts, 1e-9);
    }

    private static double OhmsAt(double celsius) => OhmsAt20C * (1 + (PerKelvin * (celsius - 20)));

    private static double ClosedForm(double volts, double ohms, double watts) => (volts + Math.Sqrt((volts * volts) - (4 * ohms * watts))) / 2;

    private static DeviceAssessment Run(Draw draw, params Condition[] conditions) => new Site("site", conditions, [Box(Trimmed)],
        [new SiteRun(RunOrigin.Output(BoxName, 1), "end", HundredMeters)], [new SiteDevice("camera", Camera(draw), "end")]).Assess().Devices[0];
}
