using System;
using System.Linq;
using CamPower.Tests.Assessment.Returns;
using UnitsNet;
using static CamPower.Tests.Sites.SmallSite;

namespace CamPower.Tests.Assessment.Alternating;

/// <summary>Sites on transformers: who is overloaded, what counts against a window, what is not known.</summary>
public class TransformerTests
{
    // Transformer handbooks, from memory: 27.5 V open and 24 V at 40 VA are a regulation of 14.6 %, and 3.5 V over 1.667 A are 2.1 Ω.
    [Fact]
    public void Regulation_IsTheRiseOverTheRatedVoltage()
    {
        AcOutput output = Plate(40);
        Assert.Equal(14.58, output.Regulation!.Value.Percent, 0.01);
        Assert.Equal(2.1, output.SourceResistance!.Value.Ohms, 1e-9);
        Assert.Equal(1.667, output.RatedCurrent.Amperes, 0.001);
        Assert.Equal(27.5 * 1.1, output.HighestVoltage.Volts, 1e-9);
        Assert.Equal(24 * 0.9, output.LowestVoltage.Volts, 1e-9);
    }

    // A resistor that takes the rated current has the rated voltage: that is what the plate says.
    [Fact]
    public void RatedLoad_HasTheRatedVoltage()
    {
        DeviceInCondition device = On(Plate(40, percent: 0), (0, Ac(Ohms(24 / (40 / 24.0)), AcStage.Resistive))).Devices[0].Worst;
        Assert.Equal(24, device.Ac!.RmsVoltage.Volts, 1e-6);
        Assert.Equal(40.0 / 24, device.Current.Amperes, 1e-6);
    }

    // By RMS at unity power factor three cameras of 9 W take 1.2 A of 1.67 A. As rectifiers they take near 2 A.
    [Fact]
    public void ThreeRectifierCamerasOf9Watts_OverloadFortyVoltAmperes()
    {
        var cameras = Enumerable.Repeat((0.5, Ac(Watts(9), AcStage.FullWave(Micro(470)))), 3).ToArray();
        BoxInCondition box = On(Plate(40), cameras).Boxes[0].Worst;
        Assert.InRange(box.TotalCurrent.Amperes, 1.7, 2.4);
        Assert.Equal(Verdict.Violated, box.Load(Ratio.FromPercent(100)).Verdict);

        var resistors = Enumerable.Repeat((0.5, Ac(Watts(9), AcStage.Resistive)), 3).ToArray();
        Assert.Equal(Verdict.Holds, On(Plate(40), resistors).Boxes[0].Worst.Load(Ratio.FromPercent(100)).Verdict);
    }

    // Six of them: by RMS at unity power factor four are 1.5 A of 1.67 A, and two boxes would do. As rectifiers three are too much, and two are not.
    [Theory]
    [InlineData(true, 3)]
    [InlineData(false, 2)]
    public void Split_CountsWhatRectifiersTake(bool areRectifiers, int boxes)
    {
        AcStage stage = areRectifiers ? AcStage.FullWave(Micro(470)) : AcStage.Resistive;
        Site site = Star(Transformer(100, outputs: 6), [Condition.Day(At())], Enumerable.Repeat((0.5, Ac(Watts(9), stage)), 6).ToArray());
        BoxSplit split = site.SplitFor(BoxName, [Transformer(40, outputs: 4)], new SizingPolicy(Ratio.Zero, Ratio.FromPercent(100)));
        Assert.Equal(boxes, split.Boxes.Count);

        DistributionBox Transformer(double size, int outputs) => DistributionBox.OfEqualOutputs(BoxName,
            new Supply($"{size} VA", Plate(size), Derating.GenericEnclosed), outputs, ElectricCurrent.FromAmperes(4));
    }

    // The crest falls with the peaks of the charging current: more than the RMS does.
    [Fact]
    public void Crest_FallsMoreThanTheRms()
    {
        AcInCondition ac = On(Plate(40), (2, Ac(Watts(9), AcStage.FullWave(Micro(470))))).Devices[0].Worst.Ac!;
        double source = 27.5 * 0.9;
        Assert.True((source * Math.Sqrt(2)) - ac.Crest.Volts > 1.5 * Math.Sqrt(2) * (source - ac.RmsVoltage.Volts));
        Assert.True(ac.Valley!.Value.Volts < ac.Crest.Volts);
        Assert.InRange(ac.PowerFactor.DecimalFractions, 0.5, 0.85);
        Assert.Equal(ac.RmsVoltage.Volts * ac.Current.Amperes, ac.ApparentPower.Voltamperes, 0.1 * ac.ApparentPower.Voltamperes);
    }

    // What counts against a range that is stated for a sine is the sine of the crest.
    [Fact]
    public void Window_IsHeldAgainstTheCrest()
    {
        Device camera = Ac(Watts(9), AcStage.FullWave(Micro(470)), Range(22, 33));
        DeviceInCondition device = On(Plate(40), (2, camera)).Devices[0].Worst;
        Assert.Equal(device.Ac!.Crest.Volts / Math.Sqrt(2), device.Voltage.Volts, 1e-9);
        Assert.Equal(Verdict.Violated, device.LowestVoltage(Ratio.Zero).Verdict);
        Assert.True(device.Ac.RmsVoltage.Volts > 22);
    }

    // A drop-out of 25 V lies between crest and valley of a small capacitor, and below the valley of a large one.
    [Theory]
    [InlineData(150.0, DeviceState.Restarting, Verdict.Violated)]
    [InlineData(2200.0, DeviceState.Up, Verdict.Holds)]
    [InlineData(null, DeviceState.Up, Verdict.Unknown)]
    public void DropOut_HangsOnTheValley(double? microfarads, DeviceState state, Verdict verdict)
    {
        ElectricCapacitance? size = microfarads is double micro ? Micro(micro) : null;
        DeviceInCondition device = On(Plate(100), (0.5, Ac(Watts(9), AcStage.FullWave(size), starting: Starts(27, 25)))).Devices[0].Worst;
        Assert.Equal(state, device.State);
        Assert.Equal(verdict, device.Ac!.DropOut.Verdict);
        Assert.Equal(verdict, device.Verdict);
    }

    [Fact]
    public void BoundsOfAnUnstatedCapacitance_HoldAStatedOneBetweenThem()
    {
        AcInCondition stated = Of(Micro(700)), assumed = Of(null);
        Assert.True(assumed.IsCapacitanceAssumed);
        Assert.True(assumed.Valley!.Value.Volts <= stated.Valley!.Value.Volts);
        Assert.True(assumed.Current.Amperes >= stated.Current.Amperes * 0.999);

        static AcInCondition Of(ElectricCapacitance? size) => On(Plate(40), (2, Ac(Watts(9), AcStage.FullWave(size)))).Devices[0].Worst.Ac!;
    }

    // Usual are 20 µF/W to 250 µF/W behind a full-wave rectifier, ten times that spread from 50 µF/W behind a half-wave one (common practice, no source): what is not stated is as bad as the
    // worse of the two ends, whichever that is of a number.
    [Theory]
    [InlineData(true, 20, 250)]
    [InlineData(false, 50, 500)]
    public void AnUnstatedCapacitance_IsAsBadAsTheWorseEnd(bool isFull, double least, double most)
    {
        AcInCondition small = Of(Micro(7 * least)), large = Of(Micro(7 * most)), assumed = Of(null);
        Assert.Equal(Math.Min(small.Crest.Volts, large.Crest.Volts), assumed.Crest.Volts, 1e-6);
        Assert.Equal(Math.Min(small.RmsVoltage.Volts, large.RmsVoltage.Volts), assumed.RmsVoltage.Volts, 1e-6);
        Assert.Equal(Math.Min(small.Valley!.Value.Volts, large.Valley!.Value.Volts), assumed.Valley!.Value.Volts, 1e-6);
        Assert.True(assumed.Current.Amperes >= Math.Max(small.Current.Amperes, large.Current.Amperes) - 1e-6);
        Assert.NotEqual(small.Crest.Volts, large.Crest.Volts, 0.01);

        AcInCondition Of(ElectricCapacitance? size) =>
            On(Plate(40, percent: 0), (2, Ac(Watts(7), isFull ? AcStage.FullWave(size) : AcStage.HalfWave(size)))).Devices[0].Worst.Ac!;
    }

    // 9 W from 24 V are 0.375 A of a resistor; a rectifier takes more, and all of it flows through its output and the winding.
    [Fact]
    public void AnOutput_CarriesWhatItsRectifierTakes()
    {
        SiteAssessment solved = On(Plate(40), (0.5, Camera9));
        double amperes = solved.Devices[0].Worst.Ac!.Current.Amperes;
        Assert.True(amperes > 0.5);
        Assert.Equal(amperes, solved.Boxes[0].Outputs[0].InConditions[0].Current.Amperes, 1e-6);
        Assert.Equal(amperes, solved.Boxes[0].Worst.TotalCurrent.Amperes, 1e-6);
    }

    // 57 W empty 470 µF between two crests of 24 V. Without a stated start that is no operating point; with one it comes up and goes down again, or never has the voltage from which it starts.
    [Theory]
    [InlineData(null, DeviceState.NoOperatingPoint)]
    [InlineData(18.0, DeviceState.Restarting)]
    [InlineData(50.0, DeviceState.NeverUp)]
    public void ARectifierThatRunsEmpty_IsNotUp(double? turnOn, DeviceState state)
    {
        Device camera = Ac(Watts(57), AcStage.FullWave(Micro(470)), Range(20, 60), turnOn is double volts ? Starts(volts, 15) : null);
        Assert.Equal(state, Single(0.36, camera, Dc(24, kind: CurrentKind.Ac)).Assess().Devices[0].Worst.State);
    }

    [Fact]
    public void UnstatedStage_IsUnknownAndAskedFor()
    {
        SiteAssessment solved = On(Plate(40), (1, Ac(Watts(5), null)));
        Assert.Equal(Verdict.Unknown, solved.Devices[0].Worst.Verdict);
        Finding[] found = [.. RuleSet.Standard.Check(solved).Where(f => f.Rule == "ac-input-not-stated")];
        Assert.Single(found);
    }

    // A load that lags takes more current for the same power, and phasors say how much: 9 W at 0.6 are 15 VA.
    [Fact]
    public void LaggingLoad_TakesItsApparentPower()
    {
        AcInCondition ac = On(Plate(40), (0.1, Ac(Watts(9), AcStage.Lagging(Ratio.FromDecimalFractions(0.6))))).Devices[0].Worst.Ac!;
        Assert.Equal(15, ac.ApparentPower.Voltamperes, 0.01);
        Assert.Equal(0.6, ac.PowerFactor.DecimalFractions, 1e-6);
    }

    [Fact]
    public void Neighbor_PullsTheCrestDown()
    {
        double alone = Crest(On(Plate(40), (1, Camera9)), 0), beside = Crest(On(Plate(40), (1, Camera9), (1, Camera9)), 0);
        Assert.True(beside < alone - 0.5);

        static double Crest(SiteAssessment solved, int device) => solved.Devices[device].Worst.Ac!.Crest.Volts;
    }

    // 26.33 V behind 1.4 Ω of winding, two half loops of 0.05 Ω and two shields of 0.03 Ω: 37.2 V/(2·1.56 Ω) = 11.9 A less the diode's part.
    // Transients of the circuit simulator hold the ring: JoinedCommonsTests.
    [Fact]
    public void JoinedCommons_DriveManyTimesTheRatedCurrent()
    {
        SiteAssessment solved = Joined(AcStage.FullWave(Micro(470)), AcStage.HalfWave(Micro(1000)));
        Judgment judged = solved.Boxes[0].ThroughJoinedCommons;
        Assert.Equal(Verdict.Violated, judged.Verdict);
        Assert.InRange(((ElectricCurrent)judged.Value!).Amperes, 11, 11.9);
        Finding finding = Assert.Single(RuleSet.Standard.Check(solved), f => f.Rule == "rectifiers-share-a-common");
        Assert.Equal(Severity.Danger, finding.Severity);
    }

    [Theory]
    [InlineData(true, true, false, Verdict.Holds)]
    [InlineData(false, false, false, Verdict.Holds)]
    [InlineData(true, false, false, Verdict.Violated)]
    [InlineData(false, false, true, Verdict.Violated)]
    public void JoinedCommons_ClashOnlyAtDifferentEndsOfTheWinding(bool isFirstFull, bool isSecondFull, bool isReversed, Verdict verdict) =>
        Assert.Equal(verdict, Joined(Stage(isFirstFull), Stage(isSecondFull), isReversed).Boxes[0].ThroughJoinedCommons.Verdict);

    [Fact]
    public void IsolatedInputs_HaveNoCommonToJoin() => Assert.Equal(default,
        On(Plate(40), (1, Camera9), (1, Ac(Watts(4), AcStage.HalfWave(Micro(1000))))).Boxes[0].ThroughJoinedCommons);

    [Fact]
    public void JoinedCommonsOfAnUnstatedStage_AreUnknown() =>
        Assert.Equal(Verdict.Unknown, Joined(AcStage.FullWave(), null).Boxes[0].ThroughJoinedCommons.Verdict);

    // A half-wave camera's direct current shifts the picture, the rest of its current hums.
    [Fact]
    public void HalfWaveCamera_ShiftsAndHums()
    {
        ShieldInCondition half = Shield(AcStage.HalfWave(Micro(1000))), full = Shield(AcStage.FullWave(Micro(1000)));
        Assert.True(half.DcShift.Volts > 0.01);
        Assert.Equal(0, full.DcShift.Volts, 1e-4);
        Assert.True(full.MainsFrequencyVoltage!.Value.Volts > Shield(AcStage.Resistive).MainsFrequencyVoltage!.Value.Volts);

        static ShieldInCondition Shield(AcStage stage) => ReturnSites.Of([Box(Plate(40, percent: 0))], [ReturnSites.Run(BoxName, 1, "1", 1)],
            [Placed(1, stage)], [ReturnSites.Link(1, "g", 0.9)], [ReturnSites.Bond("g", BoxName, 0.1)]).Assess().Shields[0].Worst;
    }

    [Fact]
    public void Explanation_EndsWithCrestAndValley()
    {
        Derivation working = On(Plate(40), (2, Camera9)).Devices[0].Worst.Explain();
        Assert.Contains(working.Steps, s => s.Symbol == "Ut");
        Assert.Matches("^peaks at .+ V, falls to .+ V, draws ", working.Conclusion);
    }

    private static Device Camera9 => Ac(Watts(9), AcStage.FullWave(Micro(470)));

    private static AcStage Stage(bool isFull) => isFull ? AcStage.FullWave(Micro(470)) : AcStage.HalfWave(Micro(1000));

    private static SiteAssessment Joined(AcStage? first, AcStage? second, bool isReversed = false) => ReturnSites.Of(
        [Box(AcOutput.Transformer(ElectricApparentPower.FromVoltamperes(40), Volts(24), Volts(24 + (1.4 * 40 / 24)), Ratio.Zero))],
        [ReturnSites.Run(BoxName, 1, "1", 0.1), ReturnSites.Run(BoxName, 2, "2", 0.1)], [Placed(1, first), Placed(2, second, isReversed)],
        [ReturnSites.Link(1, "g", 0.03), ReturnSites.Link(2, "g", 0.03)]).Assess();

    private static SiteDevice Placed(int number, AcStage? stage, bool isReversed = false) =>
        new(FormattableString.Invariant($"camera {number}"), Ac(Watts(4), stage), FormattableString.Invariant($"{number}"), isReversed);

    private static SiteAssessment On(AcOutput output, params (double Ohms, Device Device)[] feeds) =>
        Star(Box(output), [Condition.Day(At())], feeds).Assess();

    private static DistributionBox Box(AcOutput output) =>
        DistributionBox.OfEqualOutputs(BoxName, new Supply("transformer", output, Derating.GenericEnclosed), 4, ElectricCurrent.FromAmperes(4));

    private static AcOutput Plate(double size, double percent = 10) => AcOutput.Transformer(
        ElectricApparentPower.FromVoltamperes(size), Volts(24), Volts(27.5), Ratio.FromPercent(percent), Frequency.FromHertz(60));

    private static Device Ac(Load draw, AcStage? stage, VoltageRange? window = null, Starting? starting = null) =>
        new("model", DeviceKind.Camera, new ComponentDraw(draw), acInput: window ?? Wide, starting: starting, acStage: stage);

    private static ElectricCapacitance Micro(double size) => ElectricCapacitance.FromMicrofarads(size);
}
