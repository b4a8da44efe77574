using System;
using System.Collections.Generic;
using System.Linq;
using CamPower.Commissioning;
using CamPower.Tests.Sites;
using CamPower.Tolerance;
using UnitsNet;

namespace CamPower.Tests.Commissioning;

/// <summary>The order of a sheet, its texts, its numbers and its record.</summary>
public class SheetTests
{
    private static readonly Device Dome = new("dome", DeviceKind.Camera,
        new ComponentDraw(SmallSite.Watts(4), infrared: SmallSite.Watts(5)), dcInput: SmallSite.Range(10.8, 13.2));

    private static readonly Device Backwards = new("24 V AC dome", DeviceKind.Camera, new ComponentDraw(SmallSite.Watts(4)), acInput: SmallSite.Range(21.6, 26.4));

    // Two cameras on one output, one on another, one that its box does not suit, and a box on a battery.
    private static Site Yard()
    {
        DistributionBox box = SmallSite.Box(SmallSite.Dc(percent: 2), protection: SmallSite.SeriesOhms(0.25));
        Site chain = SmallSite.Chain(box, [Condition.Night(CommissioningSamples.Mild)], (1, Dome), (0.5, Dome));
        return new Site("yard", chain.Conditions, chain.Boxes,
            [.. chain.Runs, new SiteRun(RunOrigin.Output("box", 2), "gate", Runs.OfOhms(0.7)), new SiteRun(RunOrigin.Output("box", 3), "shed", Runs.OfOhms(0.7))],
            [.. chain.Devices, new SiteDevice("gate camera", SmallSite.Camera(SmallSite.Watts(6)), "gate"), new SiteDevice("shed camera", Backwards, "shed")]);
    }

    private static CommissioningSheet Sheet { get; } = new(Yard(), SiteTolerance.Standard, Meter.Handheld, CommissioningSamples.Mild);

    private static int PlaceOf(ReadingPoint point) => Sheet.Lines.ToList().FindIndex(l => l.Point.Equals(point));

    [Fact]
    public void Sheet_IsDeadBeforeItIsEnergized_AndProvesEachLinkOutFirst()
    {
        ReadingPoint[] points = [.. Sheet.Lines.Select(l => l.Point)];
        int firstEnergized = Array.FindIndex(points, p => !p.IsDead);
        Assert.All(points.Skip(firstEnergized), p => Assert.False(p.IsDead));
        Assert.Equal(ReadingState.Unloaded, points[firstEnergized].State);
        foreach (int output in (int[])[1, 2, 3])
        {
            int removed = Array.FindIndex(points, p => p.State == ReadingState.JumperRemoved && p.Output == output);
            Assert.InRange(removed, 1, firstEnergized - 1);
            Assert.Equal(ReadingState.FarEndJumpered, points[removed - 1].State);
            Assert.InRange(Array.FindIndex(points, p => p.State == ReadingState.Dead && p.Output == output), 0, removed - 1);
        }

        Assert.Equal(ReadingState.InfraredForced, points[^1].State);
    }

    [Fact]
    public void EachDevice_IsProvedUnpluggedBeforeItRuns_AndOneThatItsBoxDoesNotSuitIsNeverConnected()
    {
        foreach (string device in (string[])["camera 1", "camera 2", "gate camera"])
        {
            int unplugged = PlaceOf(ReadingPoint.AtDevice(ReadingKind.PlugVoltage, device, ReadingState.DeviceUnplugged)),
                running = PlaceOf(ReadingPoint.AtDevice(ReadingKind.PlugVoltage, device, ReadingState.Running));
            Assert.True(unplugged >= 0 && unplugged < running);
        }

        Assert.True(PlaceOf(ReadingPoint.AtDevice(ReadingKind.PlugVoltage, "shed camera", ReadingState.Running)) < 0);
        ExpectedReading shed = Sheet.Lines[PlaceOf(ReadingPoint.AtDevice(ReadingKind.PlugVoltage, "shed camera", ReadingState.DeviceUnplugged))];
        Assert.Contains("Do not connect it", shed.Safety, StringComparison.Ordinal);
        Assert.Contains("at most 13.2 V", Sheet.Lines.First(l => l.Point.State == ReadingState.DeviceUnplugged).Safety, StringComparison.Ordinal);

        // Only an output with illuminators has something to force.
        Assert.True(PlaceOf(ReadingPoint.AtOutput(ReadingKind.OutputCurrent, "box", 1, ReadingState.InfraredForced)) > 0);
        Assert.True(PlaceOf(ReadingPoint.AtOutput(ReadingKind.OutputCurrent, "box", 2, ReadingState.InfraredForced)) < 0);
    }

    // Loop of camera 2: 1 Ω and 0.5 Ω of joints, expected a quarter more, and half of what the tips may add.
    [Fact]
    public void Numbers_AreThoseOfTheCircuit()
    {
        ExpectedReading loop = Sheet.Expect(ReadingPoint.AtDevice(ReadingKind.LoopResistance, "camera 2", ReadingState.FarEndJumpered));
        Assert.Equal((1.5 * 1.25) + 0.05, ((ElectricResistance)loop.Expected!).Ohms, 1e-9);
        Assert.Equal(loop.Expected, Sheet.Expect(ReadingPoint.AtJunction(ReadingKind.JunctionLoopResistance, "place 2", ReadingState.FarEndJumpered)).Expected);

        // Behind the protective device V = Vs − R·I, and one camera alone: V² − Vs·V + R·P = 0.
        double ohms = 0.25 + (0.7 * 1.25), watts = 6 * 0.875, volts = (12 + Math.Sqrt(144 - (4 * ohms * watts))) / 2;
        Assert.Equal(volts, At(ReadingPoint.AtDevice(ReadingKind.PlugVoltage, "gate camera", ReadingState.Running)), 1e-9);
        Assert.Equal(volts, At(ReadingPoint.AtJunction(ReadingKind.JunctionVoltage, "gate", ReadingState.Running)), 1e-9);
        Assert.Equal(watts / volts, At(ReadingPoint.AtOutput(ReadingKind.OutputCurrent, "box", 2, ReadingState.Running)), 1e-9);
        Assert.Equal(12 - (0.25 * watts / volts), At(ReadingPoint.AtOutput(ReadingKind.OutputVoltage, "box", 2, ReadingState.Running)), 1e-9);
        Assert.Equal(12, At(ReadingPoint.AtDevice(ReadingKind.PlugVoltage, "gate camera", ReadingState.DeviceUnplugged)), 1e-9);
        Assert.True(At(ReadingPoint.AtDevice(ReadingKind.PlugVoltage, "camera 2", ReadingState.InfraredForced))
            < At(ReadingPoint.AtDevice(ReadingKind.PlugVoltage, "camera 2", ReadingState.Running)));
        Assert.Throws<ArgumentException>(() => Sheet.Expect(ReadingPoint.AtSupply("other box", ReadingState.Unloaded)));

        static double At(ReadingPoint point) => Sheet.Expect(point).ExpectedSi!.Value;
    }

    // Any site within its tolerances, read with any meter within its accuracy: never outside.
    [Fact]
    public void SoundSite_IsNeverOutside()
    {
        var model = new ReadingModel(Sheet.Site, Sheet.Tolerance, Sheet.At);
        double[] x = (double[])model.Parts.Expected.Clone();
        var condition = new Condition("running", LoadComponents.None, Sheet.At);
        foreach (CamPower.Sites.FeedGroup group in Sheet.Site.Feeds.Take(2))
        {
            UncertainCircuit circuit = UncertainCircuit.Of(group, model.Parts, condition);
            double[] volts = new double[circuit.Loads.Length];
            for (int draw = 0; draw < 300; draw++)
            {
                BelowProbability.Draw(circuit.Parts, circuit.Relevant, 1, draw, x);
                Assert.True(circuit.TrySolve(x, circuit.Loads, volts));
                for (int i = 0; i < volts.Length; i++)
                {
                    ExpectedReading plug = Sheet.Expect(ReadingPoint.AtDevice(ReadingKind.PlugVoltage, group.Devices[i].Device.Name, ReadingState.Running));
                    double off = Meter.Handheld.Volts.LimitAt(volts[i]) * (draw % 2 == 0 ? 1 : -1);
                    Assert.Equal(ReadingVerdict.Inside, plug.Judge(new MeterReading(plug.Point, ElectricPotential.FromVolts(volts[i] + off))));
                }
            }
        }
    }

    [Fact]
    public void Record_JudgesTheLastReadingOfEachPoint_AndIsAcceptedWhenAllAreInside()
    {
        MeterReading[] all = [.. Sheet.Lines.Select(l => new MeterReading(l.Point, l.Expected))];
        var record = new CommissioningRecord(Sheet, all);
        Assert.True(record.IsAccepted);
        Assert.Equal(Sheet.Lines.Count, record.Count(ReadingVerdict.Inside));

        var corrected = new CommissioningRecord(Sheet, [new MeterReading(all[^1].Point, ElectricPotential.FromVolts(3)), .. all]);
        Assert.True(corrected.IsAccepted);
        var wrong = new CommissioningRecord(Sheet, [.. all, new MeterReading(all[^1].Point, ElectricPotential.FromVolts(3))]);
        Assert.False(wrong.IsAccepted);
        Assert.Equal(1, wrong.Count(ReadingVerdict.Outside));
        var partly = new CommissioningRecord(Sheet, all.Take(3).Append(new MeterReading(
            ReadingPoint.AtJunction(ReadingKind.JunctionVoltage, "gate", ReadingState.Running), ElectricPotential.FromVolts(11.5))));
        Assert.Equal(Sheet.Lines.Count - 3, partly.Count(ReadingVerdict.NotRead));
        Assert.Equal(Sheet.Lines.Count + 1, partly.Lines.Count);
    }
}
