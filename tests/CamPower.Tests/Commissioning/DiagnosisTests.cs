using System;
using System.Collections.Generic;
using System.Linq;
using CamPower.Commissioning;
using CamPower.Tests.Sites;
using CamPower.Tolerance;
using UnitsNet;

namespace CamPower.Tests.Commissioning;

/// <summary>Faults put into a small site by hand, their readings worked out from Ohm's law beside each.</summary>
/// <remarks>
/// Two outputs of a box at 12 V. On each a camera that draws 0.5 A by day and 1 A with infrared hangs at the end of a loop of 1 Ω. A sound
/// camera then has 11.5 V by day and 11 V with infrared.
/// </remarks>
public class DiagnosisTests
{
    private const double Day = 0.5, Night = 1;

    private static readonly Device Dome = new("dome", DeviceKind.Camera,
        new ComponentDraw(SmallSite.Amperes(Day), infrared: SmallSite.Amperes(Night - Day)), SmallSite.Range(9, 14), starting: SmallSite.Starts(8, 7));

    private static readonly CommissioningSheet Sheet = new(
        SmallSite.Star(SmallSite.Box(SmallSite.Dc(percent: 1)), [Condition.Day(SmallSite.At())], (1, Dome), (1, Dome)),
        SiteTolerance.Standard
            .With(UncertainQuantity.DeviceDraw, Within(3))
            .With(UncertainQuantity.RunLength, Within(2))
            .With(UncertainQuantity.JointResistance, Within(2))
            .With(UncertainQuantity.ConductorResistance, Within(2)),
        Meter.Handheld, SmallSite.At());

    [Fact]
    public void SoundReadings_AreAsDesigned()
    {
        Diagnosis found = Sheet.Diagnose([.. Feed(1), .. Feed(2), .. Supply(12, 12)]);
        Assert.Equal([Cause.None], found.Groups[0].Causes);
        Assert.True(found.IsSettled);
        Assert.Null(found.Next);
        Assert.False(found.MustIsolateFirst);
    }

    // 2 Ω more in the loop: 12 − 0.5·3 = 10.5 V by day, 12 − 1·3 = 9 V with infrared.
    [Fact]
    public void TwoOhmsMore_AreResistanceInThatRun_AndTheGroupSaysWhatSeparates()
    {
        Diagnosis found = Sheet.Diagnose([.. Feed(1, loop: 3.05, day: 10.5, night: 9), .. Feed(2), .. Supply(12, 12)]);
        CauseGroup first = found.Groups[0];
        Assert.Contains(Cause.PoorJoint, first.Causes);
        Assert.Contains("output 1", first.Place, StringComparison.Ordinal);
        Assert.True(first.Share > 0.95);
        Assert.Contains("wiggle", first.Separates, StringComparison.Ordinal);
        Assert.Contains(first.Predictions, p => p.SpeaksFor && p.Reading.Point.Kind == ReadingKind.LoopResistance);
        Assert.DoesNotContain(first.Predictions, p => p.SpeaksAgainst);
        Assert.Equal(3, ((ElectricResistance)first.Predict(Loop(1))!).Ohms, 0.4);
    }

    [Fact]
    public void NoLoopAndNoVoltageAtThePlug_IsAnOpenConductor()
    {
        Diagnosis found = Sheet.Diagnose([.. Feed(1, loop: null, unplugged: 0, day: 0, night: 0, amperesDay: 0, amperesNight: 0), .. Feed(2), .. Supply(12, 12)]);
        Assert.Equal([Cause.OpenConductor], found.Groups[0].Causes);
        Assert.True(found.Groups[0].Share > 0.95);
    }

    [Fact]
    public void AFewTenthsOfAnOhmBetweenDeadConductors_IsAShort_AndAsksToIsolate()
    {
        Diagnosis found = Sheet.Diagnose([Ohms(ReadingPoint.AtOutput(ReadingKind.PairResistance, Box, 1, ReadingState.Dead), 1.3), .. Feed(2), .. Supply(12, 12)]);
        Assert.Contains(Cause.ShortCircuit, found.Groups[0].Causes);
        Assert.True(found.MustIsolateFirst);
        Assert.StartsWith("Isolate first", found.Advice, StringComparison.Ordinal);
    }

    // 12 V over 5 kΩ is 2.4 mA: no voltage moves, the insulation alone shows it.
    [Fact]
    public void FiveKilohmsBetweenDeadConductors_IsWater()
    {
        Diagnosis found = Sheet.Diagnose([.. Feed(1, pair: 5000), .. Feed(2), .. Supply(12, 12)]);
        Assert.Equal([Cause.WaterInJoint], found.Groups[0].Causes);
        Assert.True(found.Groups[0].IsDanger);
        Assert.True(found.MustIsolateFirst);
    }

    [Fact]
    public void MinusSign_IsReversedLeads()
    {
        Diagnosis found = Sheet.Diagnose([.. Feed(1, unplugged: -12, day: -12, night: -12, amperesDay: 0, amperesNight: 0), .. Feed(2), .. Supply(12, 12)]);
        Assert.Equal([Cause.ReversedLeads], found.Groups[0].Causes);
    }

    [Fact]
    public void LoopsOfTwoOutputsThatDoNotClose_WhileBothCamerasRun_AreSwapped()
    {
        Diagnosis found = Sheet.Diagnose([.. Feed(1, loop: null), .. Feed(2, loop: null), .. Supply(12, 12)]);
        Assert.Equal([Cause.WrongOutput], found.Groups[0].Causes);
        Assert.Contains("output 1 and", found.Groups[0].Place, StringComparison.Ordinal);
    }

    [Fact]
    public void NothingAtTheOutput_WithASoundLoop_IsTheProtectiveDevice()
    {
        Diagnosis found = Sheet.Diagnose(
        [
            .. Feed(1, unplugged: 0, day: 0, night: 0, amperesDay: 0, amperesNight: 0), .. Feed(2), .. Supply(12, 12),
            Volts(ReadingPoint.AtOutput(ReadingKind.OutputVoltage, Box, 1, ReadingState.Running), 0),
        ]);
        Assert.Contains(Cause.ProtectiveDeviceOpen, found.Groups[0].Causes);
        Assert.Contains(Cause.ProtectiveDeviceHot, found.Groups[0].Causes);
    }

    // Set to 11 V: every camera has 1 V less, and the loops are sound.
    [Fact]
    public void OneVoltLessWithAndWithoutLoad_IsTheSetPoint()
    {
        Diagnosis found = Sheet.Diagnose([.. Feed(1, unplugged: 11, day: 10.5, night: 10), .. Feed(2, unplugged: 11, day: 10.5, night: 10), .. Supply(11, 11)]);
        Assert.Equal([Cause.SupplySetWrong], found.Groups[0].Causes);
    }

    // 12 V without load, 11 V at 2 A.
    [Fact]
    public void FullVoltageWithoutLoadAndLessWithIt_IsASag()
    {
        Diagnosis found = Sheet.Diagnose([.. Feed(1, day: 11, night: 10), .. Feed(2, day: 11, night: 10), .. Supply(12, 11)]);
        Assert.Contains(Cause.SupplySags, found.Groups[0].Causes);
    }

    // Twice the draw at a sound loop: 12 − 1·1 = 11 V by day, 12 − 2·1 = 10 V with infrared.
    [Fact]
    public void TwiceTheCurrentAtASoundLoop_IsTheLoad()
    {
        Diagnosis found = Sheet.Diagnose([.. Feed(1, day: 11, night: 10, amperesDay: 1, amperesNight: 2), .. Feed(2), .. Supply(12, 12)]);
        Assert.Contains(Cause.LoadTooLarge, found.Groups[0].Causes);
    }

    [Fact]
    public void VoltsAlone_LeaveResistanceAndDrawInOneGroup()
    {
        Diagnosis found = Sheet.Diagnose(
        [
            .. Supply(12, 12).Where(r => r.Point.State != ReadingState.Unloaded), Plug(1, ReadingState.Running, 10.7), Plug(1, ReadingState.InfraredForced, 9.4),
            Plug(2, ReadingState.Running, 11.5), Plug(2, ReadingState.InfraredForced, 11),
        ]);
        Assert.Contains(Cause.PoorJoint, found.Groups[0].Causes);
        Assert.Contains(Cause.LoadTooLarge, found.Groups[0].Causes);
    }

    [Fact]
    public void EveryLoopTwoOhmsTooLarge_WhileTheVoltagesAreSound_IsTheMeter()
    {
        Diagnosis found = Sheet.Diagnose([.. Feed(1, loop: 3.05), .. Feed(2, loop: 3.05), .. Supply(12, 12)]);
        Assert.Equal([Cause.MeterWrong], found.Groups[0].Causes);
        Assert.Equal("every resistance", found.Groups[0].Place);
    }

    [Fact]
    public void TwoFaultsAtOnce_AreBothFound()
    {
        Diagnosis found = Sheet.Diagnose(
        [
            .. Feed(1, loop: 3.05, day: 10.5, night: 9), .. Feed(2, unplugged: -12, day: -12, night: -12, amperesDay: 0, amperesNight: 0), .. Supply(12, 12),
        ]);
        Cause[] two = [.. found.Groups.Take(2).SelectMany(g => g.Causes)];
        Assert.Contains(Cause.PoorJoint, two);
        Assert.Contains(Cause.ReversedLeads, two);
        Assert.All(found.Groups.Take(2), g => Assert.True(g.Share > 0.9));
    }

    [Fact]
    public void WithNothingRead_TheSymptomAloneNamesTheOutput_AndThereIsAReadingToTake()
    {
        Diagnosis found = Sheet.Diagnose([], [Symptom.Dark("camera 2"), Symptom.Works("camera 1")]);
        Assert.NotNull(found.Next);
        Assert.True(found.Next.ExpectedBits > 0);
        Assert.All(found.Groups.Where(g => g.Place.Length > 0).Take(2), g => Assert.Contains("output 2", g.Place, StringComparison.Ordinal));
    }

    [Fact]
    public void SameReadings_GiveTheSameAnswer()
    {
        MeterReading[] readings = [.. Feed(1, loop: 3.05, day: 10.5, night: 9), .. Feed(2)];
        Assert.Equal(Sheet.Diagnose(readings).Groups.Select(g => g.ToString()), Sheet.Diagnose(readings).Groups.Select(g => g.ToString()));
    }

    [Fact]
    public void ReversedOrder_OfReadings_GivesTheSameGroups()
    {
        MeterReading[] readings = [.. Feed(1, loop: 3.05, day: 10.5, night: 9), .. Feed(2)];
        Assert.Equal(Sheet.Diagnose(readings).Groups[0].ToString(), Sheet.Diagnose(readings.Reverse()).Groups[0].ToString());
    }

    // Two runs of 1 Ω with a junction between them: 2 Ω more in the second. The tips add 0.05 Ω.
    [Theory]
    [InlineData(null, "")]
    [InlineData(1.05, "run from half to end")]
    [InlineData(3.05, "run to half")]
    public void LoopAtAJunctionWithoutADevice_TellsTheHalvesApart(double? atHalf, string place)
    {
        var site = new Site("halves", [Condition.Day(SmallSite.At())], [SmallSite.Box(SmallSite.Dc(percent: 1))],
            [
                new SiteRun(RunOrigin.Output(SmallSite.BoxName, 1), "half", Runs.OfOhms(1)),
                new SiteRun(RunOrigin.Junction("half"), "end", Runs.OfOhms(1)),
            ],
            [new SiteDevice(SmallSite.Name(0), Dome, "end")]);
        var sheet = new CommissioningSheet(site, SiteTolerance.Standard, Meter.Handheld, SmallSite.At());
        List<MeterReading> readings = [Ohms(Loop(1), 4.05)];
        if (atHalf is double ohms) readings.Add(Ohms(ReadingPoint.AtJunction(ReadingKind.JunctionLoopResistance, "half", ReadingState.FarEndJumpered), ohms));
        Diagnosis found = sheet.Diagnose(readings);
        if (atHalf is null)
        {
            // One reading may be a bad one; otherwise it is one group of both halves.
            Assert.Single(found.Groups.Take(2), g => g.Causes.Contains(Cause.PoorJoint));
            Assert.Single(found.Groups, g => g.Causes.Contains(Cause.PoorJoint));
            Assert.Empty(found.Unused);
            return;
        }

        Assert.Contains(Cause.PoorJoint, found.Groups[0].Causes);
        Assert.EndsWith(place, found.Groups[0].Place, StringComparison.Ordinal);
        Assert.Empty(found.Unused);
    }

    [Fact]
    public void ImpossibleReading_IsLeftOut()
    {
        MeterReading strange = Amperes(1, ReadingState.Running, 900);
        Diagnosis found = Sheet.Diagnose([.. Feed(1), .. Feed(2), .. Supply(12, 12), strange]);
        Assert.Equal([strange], found.Unused);
        Assert.Equal([Cause.None], found.Groups[0].Causes);
    }

    [Fact]
    public void PriorsOfTheUser_Count()
    {
        MeterReading[] readings = [.. Feed(1, pair: 5000), .. Feed(2)];
        Assert.DoesNotContain(Sheet.Diagnose(readings, priors: CausePriors.CommonPractice.With(Cause.WaterInJoint, 0)).Groups,
            g => g.Causes.Contains(Cause.WaterInJoint));
    }

    [Fact]
    public void StrangePlacesAndDevices_AreRefused()
    {
        Assert.Throws<ArgumentException>("readings", () => Sheet.Diagnose([Volts(ReadingPoint.AtSupply("attic", ReadingState.Unloaded), 12)]));
        Assert.Throws<ArgumentException>("symptoms", () => Sheet.Diagnose([], [Symptom.Dark("attic")]));
        Diagnosis nothing = Sheet.Diagnose([]);
        Assert.Throws<ArgumentException>("point", () => nothing.Groups[0].Predict(ReadingPoint.AtSupply("attic", ReadingState.Unloaded)));
    }

    private static string Box => Sheet.Site.Boxes[0].Name;

    private static UncertainRange Within(double percent) =>
        UncertainRange.OfShare(Ratio.FromPercent(-percent), Ratio.FromPercent(percent), UncertaintyShape.Uniform);

    // What a meter shows on one output: as designed, but for what is given. The tips add 0.05 Ω to a loop.
    private static IEnumerable<MeterReading> Feed(int output, double? loop = 1.05, double? pair = null, double unplugged = 12, double day = 11.5, double night = 11,
        double amperesDay = Day, double amperesNight = Night) =>
    [
        Ohms(ReadingPoint.AtOutput(ReadingKind.PairResistance, Box, output, ReadingState.JumperRemoved), pair),
        Ohms(Loop(output), loop),
        Plug(output, ReadingState.DeviceUnplugged, unplugged), Plug(output, ReadingState.Running, day), Plug(output, ReadingState.InfraredForced, night),
        Amperes(output, ReadingState.Running, amperesDay), Amperes(output, ReadingState.InfraredForced, amperesNight),
    ];

    private static IEnumerable<MeterReading> Supply(double unloaded, double loaded) =>
    [
        Volts(ReadingPoint.AtSupply(Box, ReadingState.Unloaded), unloaded), Volts(ReadingPoint.AtSupply(Box, ReadingState.InfraredForced), loaded),
    ];

    private static ReadingPoint Loop(int output) => ReadingPoint.AtDevice(ReadingKind.LoopResistance, SmallSite.Name(output - 1), ReadingState.FarEndJumpered);

    private static MeterReading Plug(int output, ReadingState state, double volts) =>
        Volts(ReadingPoint.AtDevice(ReadingKind.PlugVoltage, SmallSite.Name(output - 1), state), volts);

    private static MeterReading Volts(ReadingPoint at, double volts) => new(at, ElectricPotential.FromVolts(volts));

    private static MeterReading Amperes(int output, ReadingState state, double amperes) =>
        new(ReadingPoint.AtOutput(ReadingKind.OutputCurrent, Box, output, state), ElectricCurrent.FromAmperes(amperes));

    private static MeterReading Ohms(ReadingPoint at, double? ohms) => new(at, ohms is double value ? ElectricResistance.FromOhms(value) : null);
}
