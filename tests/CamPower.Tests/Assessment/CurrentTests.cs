using System.Linq;
using CamPower.Tests.Sites;
using UnitsNet;
using static CamPower.Tests.Sites.SmallSite;

namespace CamPower.Tests.Assessment;

/// <summary>Currents of outputs and boxes, and how many motors move.</summary>
public class CurrentTests
{
    private static readonly Condition Day = Condition.Day(At());

    // 12 V ± 10 %, no resistance: 12 W takes 12/10.8 A; 6 Ω takes 13.2/6 A; of 12 W with 12 Ω the lower voltage gives
    // 1.1111 + 0.9 and the higher 0.9091 + 1.1 A; 5 W with 6 Ω takes 5/13.2 + 2.2 A.
    [Theory]
    [InlineData(12, 0, 12 / 10.8)]
    [InlineData(0, 6, 13.2 / 6)]
    [InlineData(12, 12, 12 / 10.8 + 0.9)]
    [InlineData(5, 6, 5 / 13.2 + 2.2)]
    public void OutputCurrent_IsTheLargerOfBothSupplyVoltages(double watts, double ohms, double expected)
    {
        Load load = ohms > 0 ? Watts(watts) + Ohms(ohms) : Watts(watts);
        OutputInCondition found = Single(0, Camera(load), Dc(percent: 10)).Assess().Boxes[0].Outputs[0].Worst;
        Assert.Equal(expected, found.Current.Amperes, 1e-12);
        Assert.False(found.IsDemandOnly);
    }

    // 12.1 W over 3 Ω has no operating point at 12 V (most 12 W): all there is to say is what it asks for at the source.
    [Fact]
    public void NoOperatingPoint_MakesOutputAndBoxDemandOnly()
    {
        BoxAssessment box = Star((3, Camera(Watts(12.1))), (3, Camera(Watts(6)))).Assess().Boxes[0];
        Assert.True(box.Outputs[0].Worst.IsDemandOnly);
        Assert.False(box.Outputs[1].Worst.IsDemandOnly);
        Assert.True(box.Worst.IsDemandOnly);
        Assert.Equal(12.1 / 12, box.Outputs[0].Worst.Current.Amperes, 1e-12);
        Assert.Equal(box.Outputs.Sum(o => o.Worst.Current.Amperes), box.Worst.TotalCurrent.Amperes, 1e-12);
        Assert.Contains("asked for", box.Worst.ToString(), System.StringComparison.Ordinal);
        Assert.Contains("asked for", box.Outputs[0].ToString(), System.StringComparison.Ordinal);
    }

    // Carried at the highest voltage but not at the lowest: still only what it asks for.
    [Fact]
    public void NoOperatingPointAtTheLowestVoltageAlone_IsDemandOnly() =>
        Assert.True(Single(3, Camera(Watts(12) + Ohms(1000)), Dc(percent: 5)).Assess().Boxes[0].Outputs[0].Worst.IsDemandOnly);

    // 12 V, no resistance: 0.5 A each at rest, and 0.5, 1.0 and 1.5 A more where the motor moves.
    [Theory]
    [InlineData(null, 4.5)]
    [InlineData(3, 4.5)]
    [InlineData(7, 4.5)]
    [InlineData(2, 4.0)]
    [InlineData(1, 3.0)]
    [InlineData(0, 1.5)]
    public void MotorsMoving_AreThoseThatAddMost(int? motors, double expected)
    {
        Condition motion = new("motion", LoadComponents.Motor, At(), motors);
        BoxAssessment box = Star(Box(), [motion], (0, Ptz(6)), (0, Ptz(12)), (0, Ptz(18))).Assess().Boxes[0];
        Assert.Equal(expected, box.Worst.TotalCurrent.Amperes, 1e-12);

        // Each output must bear its own motor, whichever it is that moves.
        Assert.Equal(motors == 0 ? 0.5 : 2.0, box.Outputs[2].Worst.Current.Amperes, 1e-12);
    }

    // What a motor adds depends on its run: 6 W more cost more amperes at the end of 4 Ω than at the source.
    [Fact]
    public void MotorsMoving_GoByAddedCurrentNotByPower()
    {
        Condition motion = new("motion", LoadComponents.Motor, At(), motorsMoving: 1);
        double Amps(double watts) => 2 * watts / (12 + System.Math.Sqrt(144 - (4 * 4 * watts)));
        double total = Star(Box(), [motion], (0, Ptz(3)), (4, Ptz(2.5))).Assess().Boxes[0].Worst.TotalCurrent.Amperes;
        Assert.True(Amps(8.5) - Amps(6) > 0.25, "The far motor adds more.");
        Assert.Equal(0.5 + Amps(8.5), total, 1e-12);
    }

    [Fact]
    public void MotorsMoving_CountsInEachBoxByItself()
    {
        Condition motion = new("motion", LoadComponents.Motor, At(), motorsMoving: 1);
        var site = new Site("site", [motion], [DistributionBox.Adapter("one", Dc()), DistributionBox.Adapter("two", Dc())],
            [new SiteRun(RunOrigin.Output("one", 1), "p", Runs.OfOhms(0)), new SiteRun(RunOrigin.Output("two", 1), "q", Runs.OfOhms(0))],
            [new SiteDevice("a", Ptz(6), "p"), new SiteDevice("b", Ptz(12), "q")]);
        Assert.Equal([1.0, 1.5], site.Assess().Boxes.Select(b => b.Worst.TotalCurrent.Amperes));
    }

    // Motors that a condition does not turn on stand still, however many may move.
    [Fact]
    public void MotorsMoving_TurnsNothingOn()
    {
        Condition still = new("still", LoadComponents.Infrared, At(), motorsMoving: 5);
        Assert.Equal(0.5, Star(Box(), [still], (0, Ptz(12))).Assess().Boxes[0].Worst.TotalCurrent.Amperes, 1e-12);
    }

    [Fact]
    public void MotorsMoving_None_HoldsForTheDevicesToo()
    {
        Condition still = new("still", LoadComponents.Motor, At(), motorsMoving: 0), all = new("all", LoadComponents.Motor, At());
        DeviceAssessment device = Star(Box(), [still, all], (1, Ptz(6))).Assess().Devices[0];
        Assert.Equal(6, (double)device.InConditions[0].Load.PowerComponent.Watts);
        Assert.Equal(12, (double)device.InConditions[1].Load.PowerComponent.Watts);
    }

    // The worst condition of a box is the one that leaves least of the rating there, not the one of most current.
    [Fact]
    public void WorstOfABox_GoesByWhatIsLeftOfTheRating()
    {
        Condition cool = new("cool", LoadComponents.Infrared, At(box: 40)), warm = new("warm", LoadComponents.None, At(box: 65));
        var draw = new ComponentDraw(Amperes(4), infrared: Amperes(1));
        BoxAssessment box = Star(Box(Dc(amperes: 10)), [cool, warm], (0, Camera(draw))).Assess().Boxes[0];
        Assert.Same(warm, box.Worst.Condition);
        Assert.Equal(6.25, box.Worst.DeratedRating.Amperes, 1e-12);
        Assert.Same(cool, box.Outputs[0].Worst.Condition);
    }

    // Nothing drawn from a supply that may not run is no worse than an overload.
    [Theory]
    [InlineData(80, 25, "night")]
    [InlineData(25, 80, "night")]
    [InlineData(80, 80, "night")]
    public void WorstOfABox_IsNeverTheOneWithNothingDrawn(double byDay, double atNight, string expected)
    {
        Condition day = Condition.Day(At(box: byDay)), night = Condition.Night(At(box: atNight));
        var lamp = new ComponentDraw(Load.None, infrared: Amperes(12));
        SiteAssessment assessment = Star(Box(Dc(amperes: 10)), [day, night], (0, Camera(lamp))).Assess();
        Assert.Equal(expected, assessment.Boxes[0].Worst.Condition.Name);
        Assert.Contains(WithoutFaultsUnknown.Check(assessment), f => f.Rule == (atNight > 70 ? "supply-too-hot" : "supply-above-derated-rating") && f.Condition == night);
    }

    [Fact]
    public void UnusedOutputsAndBoxes_TakeNothing()
    {
        var site = new Site("site", [Day], [Box(), DistributionBox.Adapter("spare", Dc())], [new SiteRun(RunOrigin.Output(BoxName, 2), "end", Runs.OfOhms(1))], []);
        SiteAssessment assessment = site.Assess();
        Assert.Equal(0, assessment.Boxes[0].Outputs.Single().Worst.Current.Amperes);
        Assert.Empty(assessment.Boxes[1].Outputs);
        Assert.Equal(0, assessment.Boxes[1].Worst.TotalCurrent.Amperes);
        Assert.Empty(WithoutFaultsUnknown.Check(assessment));
    }

    [Fact]
    public void Loading_IsOfTheLimitOfTheOutput() => Assert.Equal(
        150, Star(Box(limit: 2), [Day], (0, Camera(Amperes(3)))).Assess().Boxes[0].Outputs[0].Loading.Percent, 1e-9);

    private static Device Ptz(double motorWatts) => Camera(new ComponentDraw(Watts(6), motor: Watts(motorWatts)));

    // Two cameras of 0.4 A with motors of 0.8 A on one output, one of which moves: 0.4 + 0.4 + 0.8 A, in output and box.
    [Fact]
    public void MotorsLimit_CountsMotorsOfOneOutput()
    {
        Device camera = Camera(new ComponentDraw(Amperes(0.4), motor: Amperes(0.8)));
        BoxAssessment box = Shared(1, Box(), [Condition.NightWithMotion(At(), motorsMoving: 1)], camera, camera).Assess().Boxes[0];
        Assert.Equal(1.6, box.Worst.TotalCurrent.Amperes, 1e-12);
        Assert.Equal(1.6, box.Outputs[0].Worst.Current.Amperes, 1e-12);
    }
}
