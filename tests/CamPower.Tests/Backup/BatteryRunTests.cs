using System;
using System.Collections.Generic;
using System.Linq;
using CamPower.Assessment;
using CamPower.Backup;
using CamPower.Tests.Working;
using UnitsNet;
using static CamPower.Tests.Backup.Batteries;
using static CamPower.Tests.Sites.SmallSite;

namespace CamPower.Tests.Backup;

/// <summary>Runs on battery against closed forms that never step.</summary>
public class BatteryRunTests
{
    private static BatteryRun Run(Battery battery, params (double Ohms, Device Device)[] feeds) =>
        Star(Box().WithBattery(battery), [Night], feeds).RunOnBattery(BoxName, Night);

    // 12 V behind 0.5 Ω in all with 10 W: I = (12 - √(144 - 20))/1 = 0.8645 A from 4.5 Ah.
    [Fact]
    public void Run_FlatVoltageConstantPower_LastsCapacityOverCurrent()
    {
        BatteryRun run = Run(Of(4.5, ohms: 0.2), (0.3, Camera(Watts(10))));
        double amperes = 2 * 10 / (12 + Math.Sqrt(144 - (4 * 10 * 0.5)));
        Assert.Equal(4.5 / amperes, run.Length.Hours, 1e-7);
        Assert.Equal(BatteryRunEnd.Empty, run.End);
        Assert.Empty(run.DropOuts);
        Assert.Equal(12 - (amperes * 0.5), run.Points[0].VoltageOf("camera 1")!.Value.Volts, 1e-9);
        Assert.Equal(12 - (amperes * 0.2), run.Points[0].SupplyVoltage.Volts, 1e-9);
    }

    // The open-circuit voltage falls from 13 V to 11 V with the charge. 2 A lose 0.6 V in 0.3 Ω: 10.9 V is there at 11.5 V, after three quarters of 6 Ah.
    [Fact]
    public void Run_FallingVoltageConstantCurrent_DropsOutWhereTheLineCrosses()
    {
        BatteryRun run = Run(Of(6, full: 13, empty: 11, ohms: 0.1), (0.2, Camera(Amperes(2), starting: Starts(12.5, 10.9))));
        BatteryDropOut first = Assert.Single(run.DropOuts);
        Assert.Equal(2.25, first.After.Hours, 1e-7);
        Assert.False(first.ComesBack);
        Assert.Equal(BatteryRunEnd.LastDeviceOff, run.End);
        Assert.Equal(first.After, run.ToFirstDropOut);
    }

    // Nothing is lost on the way: 8 W from a voltage that falls straight from 14 V to 10 V take 60 % of 5 Ah in 5 Ah·0.6·(14 V + 11.6 V)/2 / 8 W.
    [Fact]
    public void Run_FallingVoltageConstantPower_GivesTheEnergyUnderTheLine()
    {
        BatteryRun run = Run(Of(5, full: 14, empty: 10), (1e-6, Camera(Watts(8), starting: Starts(13, 11.6))));
        Assert.Equal(5 * 0.6 * 12.8 / 8, run.ToFirstDropOut.Hours, 1e-4);
    }

    // 3 A of a battery of 0.5 A: Peukert takes 6^0.25 of its capacity.
    [Fact]
    public void Run_AboveTheRatedCurrent_TakesMoreThanFlows()
    {
        BatteryRun run = Run(Of(10, hours: 20, exponent: 1.25), (0.001, Camera(Amperes(3))));
        Assert.Equal(10 / (3 * Math.Pow(6, 0.25)), run.Length.Hours, 1e-9);
    }

    // 1 A each; the voltage falls from 13 V to 11 V over 8 Ah. Camera 2 loses 1 V and needs 11 V: 12 V, half of 8 Ah, 2 h at 2 A. Camera 1 then runs
    // on at 1 A to 11.2 V: 40 % more, 3.2 h.
    [Fact]
    public void Run_TwoCameras_TheFarOneGoesFirstAndTheOtherDrawsAlone()
    {
        BatteryRun run = Run(Of(8, full: 13, empty: 11), (0, Camera(Amperes(1), starting: Starts(12, 11.2))),
            (1, Camera(Amperes(1), starting: Starts(12.9, 11))));
        Assert.Equal(["camera 2", "camera 1"], run.DropOuts.Select(d => d.Device.Name));
        Assert.Equal([2, 5.2], run.DropOuts.Select(d => Math.Round(d.After.Hours, 4)));
        Assert.Null(run.Points[^1].VoltageOf("camera 2"));
    }

    // 2 A lose 1 V, and 1 V more is there once it is off: 11.9 V, above its turn-on of 11.5 V.
    [Fact]
    public void Run_VoltageRecovers_SaysThatItRestarts()
    {
        BatteryRun run = Run(Of(6, full: 13, empty: 11), (0.5, Camera(Amperes(2), starting: Starts(11.5, 10.9))));
        Assert.True(Assert.Single(run.DropOuts).ComesBack);
    }

    // 2 A for 1.5 h of 6 Ah, then 3 A for the other 3 Ah.
    [Fact]
    public void Run_ConditionsInTurn_EachLastsItsDuration()
    {
        Condition day = new("day", LoadComponents.None, At(), duration: Duration.FromHours(1.5));
        Device camera = Camera(new ComponentDraw(Amperes(2), infrared: Amperes(1)));
        BatteryRun run = Star(Box().WithBattery(Of(6)), [day], (0.001, camera)).RunOnBattery(BoxName, day, Night);
        Assert.Equal(2.5, run.Length.Hours, 1e-9);
        Assert.Equal(0.5, run.Points.First(p => p.After.Hours > 1.5 - 1e-9).Charge.DecimalFractions, 1e-9);
    }

    // The whole box is off at the cut-off, whatever its cameras could do: 12 V of a line from 13 V to 11 V.
    [Fact]
    public void Run_ToTheCutOff_EndsThere()
    {
        BatteryRun run = Run(Of(8, full: 13, empty: 11, cutOff: 12), (0.001, Camera(Amperes(1))));
        Assert.Equal(BatteryRunEnd.CutOff, run.End);
        Assert.Equal(4, run.Length.Hours, 1e-5);
        Assert.Equal(run.Length, run.ToFirstDropOut);
    }

    // 30 W over 2 Ω need 15.5 V: the battery never carries it.
    [Fact]
    public void Run_LoadThatTheWayCannotCarry_IsOffAtOnce()
    {
        BatteryRun run = Run(Of(6), (2, Camera(Watts(30))));
        Assert.Equal(0, Assert.Single(run.DropOuts).After.Seconds);
        Assert.Equal(BatteryRunEnd.LastDeviceOff, run.End);
    }

    // The night of a real box: five cameras, copper pairs, a 26 Ah lead-acid battery.
    private static Discharge OneNight(int panels)
    {
        (double, Device)[] feeds = [.. Enumerable.Range(0, 5).Select(i => (0.4 + (0.55 * i), Camera(
            new ComponentDraw(Watts(3.5 + (0.6 * i)), infrared: Watts(4.4)), starting: Starts(11.4, 10.4 + (0.2 * i)))))];
        DistributionBox box = Box(outputs: 5).WithBattery(BatteryCatalog.Generic12Volt[3]);
        return new Discharge(Star(box, [Night], feeds), box, [Night], panels);
    }

    // Ten times the panels, and no more allocated than the points that are told: neither the closed form of one camera nor the tree of several allocates.
    [Fact]
    public void Run_ItsSteps_AllocateNothing()
    {
        Site site = Chain(Box().WithBattery(BatteryCatalog.Generic12Volt[3]), [Night], (0.4, Camera(Watts(4))), (0.3, Camera(Watts(5))));
        var load = new BatteryLoad(site, site.Boxes[0], Night);
        load.RailVoltsFrom(12.5, 0.03);
        long before = GC.GetAllocatedBytesForCurrentThread();
        for (int i = 0; i < 1000; i++) load.RailVoltsFrom(12.5 - (i * 1e-4), 0.03);
        Assert.Equal(before, GC.GetAllocatedBytesForCurrentThread());
        Assert.Equal(12.4, load.RailVoltsFrom(12.4 + (0.03 * load.AmperesAt(12.4)), 0.03), 1e-9);
    }

    // Half-way through a frosty night, and at its start: every step evaluates, and the fourth is the voltage of the box.
    [Fact]
    public void Explain_EvaluatesToTheVoltageAndTheTimeLeft()
    {
        Condition frost = Condition.Night(At(box: -5));
        BatteryRun run = Star(Box().WithBattery(BatteryCatalog.Generic12Volt[2]), [frost], (0.4, Camera(Watts(15)))).RunOnBattery(BoxName, frost);
        foreach (BatteryRunPoint point in new[] { run.Points[0], run.Points[run.Points.Count / 2] })
        {
            Derivation working = point.Explain();
            Assert.All(working.Steps, step => Assert.Equal(step.Value, Arithmetic.Evaluate(step.Substitution), 1e-6 * Math.Abs(step.Value)));
            Assert.Equal(point.SupplyVoltage.Volts, working.Steps[3].Value, 1e-12);
        }

        Assert.InRange(run.Points[0].Explain().Steps[6].Value, run.Length.Hours, 1.5 * run.Length.Hours);
    }

    // Two cameras with one negative: a network of both poles, in place and as it is solved anywhere else.
    [Fact]
    public void Run_SharedNegative_AllocatesNothingAndGivesTheSame()
    {
        DistributionBox box = Box().WithBattery(BatteryCatalog.Generic12Volt[3]);
        Device[] cameras = [Camera(Watts(4)), Camera(new LabelDraw(Volts(12), ElectricCurrent.FromAmperes(0.5), InputStage.Unknown))];
        var site = new Site("site", [Night], [box],
            cameras.Select((_, i) => new SiteRun(RunOrigin.Output(BoxName, i + 1), Place(i), Runs.OfOhms(0.4), returnAt: i == 0 ? null : Place(0))),
            cameras.Select((camera, i) => new SiteDevice(Name(i), camera, Place(i))));
        var load = new BatteryLoad(site, box, Night);
        load.RailVoltsFrom(12.5, 0.03);
        long before = GC.GetAllocatedBytesForCurrentThread();
        for (int i = 0; i < 1000; i++) load.RailVoltsFrom(12.5 - (i * 1e-4), 0.03);
        Assert.Equal(before, GC.GetAllocatedBytesForCurrentThread());

        load.AmperesAt(12.1);
        FeedCircuit asEver = FeedCircuit.Of(site.Feeds.Single(), Night.At.CableCelsius, new AirOfBoxes(Night.At));
        var volts = new double[2];
        Assert.True(asEver.TrySolve(RailVolts.Lowest.With(box, 12.1), FeedSolver.LoadsIn(Night, site.Feeds.Single(), int.MaxValue), volts));
        Assert.Equal(volts[0], load.Volts[0], 1e-12);
        Assert.Equal(volts[1], load.Volts[1], 1e-12);
    }

    [Fact]
    public void Run_TenTimesFiner_TellsTheSameToAMillionth()
    {
        BatteryRun coarse = OneNight(Discharge.Panels).Run(), fine = OneNight(10 * Discharge.Panels).Run();
        Assert.InRange(coarse.DropOuts.Count, 3, 5);
        Assert.Equal(fine.DropOuts.Select(d => d.Device.Name), coarse.DropOuts.Select(d => d.Device.Name));
        Assert.All(fine.DropOuts.Zip(coarse.DropOuts), pair => Assert.Equal(pair.First.After.Seconds, pair.Second.After.Seconds, 1e-6 * (1 + pair.First.After.Seconds)));
    }

    // What leaves the battery is what the cameras, the cables and its own resistance take: trapezes between the points of the run.
    [Fact]
    public void Run_Energy_IsThatOfLoadsCablesAndTheBatteryItself()
    {
        Battery battery = Of(9, full: 13, empty: 11, ohms: 0.15);
        BatteryRun run = Run(battery, (0.8, Camera(Watts(9))), (0.3, Camera(Amperes(0.7))));
        (BatteryRunPoint From, BatteryRunPoint To)[] pieces = [.. run.Points.Zip(run.Points.Skip(1))];

        // 11 V and 2 V more with the charge: over a piece the mean is 11 V plus the sum of its two charges.
        double given = pieces.Sum(p => (p.From.Charge - p.To.Charge).DecimalFractions * 9 * Hour * (11 + (p.From.Charge + p.To.Charge).DecimalFractions));
        double taken = pieces.Sum(p => (Watt(p.From) + Watt(p.To)) / 2 * (p.To.After - p.From.After).Seconds);
        Assert.Equal(given, taken, 1e-5 * given);

        static double Watt(BatteryRunPoint p)
        {
            double far = 9 / p.VoltageOf("camera 1")!.Value.Volts;
            return 9 + (far * far * 0.8) + (0.7 * p.VoltageOf("camera 2")!.Value.Volts) + (0.7 * 0.7 * 0.3) + (Math.Pow(p.Current.Amperes, 2) * 0.15);
        }
    }

    // 12 Ah at -5 °C with two cameras of 15 W, in steps of a second that know nothing of the library: every number of the battery is written out again.
    [Fact]
    public void Run_FrostyNight_AgreesWithStepsOfTime()
    {
        double near = 0.44, far = 0.82, charge = 1, seconds = 0, volts = 12.84;
        double capacity = 12 * 3600 * (0.45 + (15 / 16.1 * ((1 / 1.52) - 0.45))), cold = 1.3 + (5 / 20.0 * 0.7);
        while (true)
        {
            double resistance = 3 * 0.018 * cold * (charge > 0.5 ? 1.2 - ((charge - 0.5) / 0.5 * 0.2) : charge > 0.2 ? 1.6 - ((charge - 0.2) / 0.3 * 0.4) : 2.5 - (charge / 0.2 * 0.9));
            double lost = charge > 0.5 ? 0.084 : charge > 0.2 ? 0.252 - ((charge - 0.2) / 0.3 * 0.168) : charge > 0.1 ? 0.36 - ((charge - 0.1) / 0.1 * 0.108) : 1.08 - (charge / 0.1 * 0.72);
            double amperes = 0;
            for (int pass = 0; pass < 40; pass++)
            {
                amperes = Drawn(volts, near) + Drawn(volts, far);
                volts = 11.64 + (1.2 * charge) - lost - (amperes * resistance);
            }

            if (volts <= 10.5) break;
            charge -= amperes * Math.Pow(amperes / 0.6, 0.17) / capacity;
            seconds++;
        }

        var battery = new Battery("12 Ah", BatteryChemistry.ValveRegulatedLeadAcid, 6, ElectricCharge.FromAmpereHours(12), Duration.FromHours(20), ElectricResistance.FromMilliohms(18));
        Condition frost = Condition.Night(At(box: -5));
        BatteryRun run = Star(Box().WithBattery(battery), [frost], (near, Camera(Watts(15))), (far, Camera(Watts(15)))).RunOnBattery(BoxName, frost);
        Assert.Equal(BatteryRunEnd.CutOff, run.End);
        Assert.InRange(charge, 0.02, 0.2);
        Assert.InRange(run.Length.Seconds, seconds - 2, seconds + 2);

        static double Drawn(double volts, double ohms) => 2 * 15 / (volts + Math.Sqrt((volts * volts) - (4 * ohms * 15)));
    }

    // 12 V behind 1 Ω and 5 Ω of a heater: 2 A and 10 V at the box. A constant 6 Ω beside a camera of 10 W: V = 12 - (V/5 + 10/V), V² - 10 V + 25/3 = 0, 9.0825 V.
    [Theory]
    [InlineData(0, 10)]
    [InlineData(10, 9.082482904638630)]
    public void Run_ResistiveLoad_SettlesAtTheBalance(double watts, double expected)
    {
        (double, Device)[] feeds = watts > 0 ? [(0, Camera(Ohms(5))), (0, Camera(Watts(watts)))] : [(0, Camera(Ohms(5)))];
        Assert.Equal(expected, Run(Of(10, ohms: 1), feeds).Points[0].SupplyVoltage.Volts, 1e-9);
    }

    // Two cameras of 20 W in one circuit of 2 Ω and 1 Ω more carry nothing: the far one goes, and the near one runs alone.
    [Fact]
    public void Run_NoOperatingPoint_DropsTheFarOneFirst()
    {
        Site site = Chain(Box().WithBattery(Of(6)), [Night], (1, Camera(Watts(20))), (1, Camera(Watts(20))));
        BatteryRun run = site.RunOnBattery(BoxName, Night);
        Assert.Equal("camera 2", Assert.Single(run.DropOuts).Device.Name);
        Assert.Equal(0, run.DropOuts[0].After.Seconds);
        Assert.True(run.Length.Hours > 2);
    }

    // A lamp that is off by day: two hours of nothing, then 6 Ah at 3 A. By day alone there is nothing to judge.
    [Fact]
    public void Run_NothingDrawsByDay_WaitsForTheNight()
    {
        Condition day = new("day", LoadComponents.None, At(), duration: Duration.FromHours(2));
        Device lamp = Camera(new ComponentDraw(Load.None, infrared: Amperes(3)));
        Site site = Star(Box().WithBattery(Of(6), backupTime: Duration.FromHours(1)), [Condition.Day(At()), Night], (0.001, lamp));
        Assert.Equal(4, site.RunOnBattery(BoxName, day, Night).Length.Hours, 1e-7);
        BackupAssessment backup = Assert.Single(site.Assess().StudyBackup());
        Assert.Equal("night", Assert.Single(backup.InConditions).Condition.Name);
        Assert.Equal(Verdict.Holds, backup.Worst!.Lasts.Verdict);
    }

    // Twelve cells are 25.68 V on a supply of 12 V: in an outage the camera has that.
    [Fact]
    public void BatteryOfTwiceTheCells_IsTooMuchForTheCamera()
    {
        var battery = new Battery("24 V", BatteryChemistry.ValveRegulatedLeadAcid, 12, ElectricCharge.FromAmpereHours(7), Duration.FromHours(20), ElectricResistance.FromMilliohms(50));
        SiteAssessment assessment = Star(Box().WithBattery(battery), [Night], (0.1, Camera(Watts(5), Range(9, 15)))).Assess();
        Assert.Equal(25.68, assessment.Devices[0].NoLoadVoltage.Volts, 1e-9);
        Assert.Contains(RuleSet.Standard.Check(assessment), f => f.Rule == "overvoltage-at-light-load" && f.Severity == Severity.Danger);
    }

    // Half of 6 Ah at 0 °C, whether the hour before it was warm or not: 1 A for 3 h.
    [Fact]
    public void Run_WarmBeforeCold_HasTheCapacityOfTheCold()
    {
        var battery = new Battery("cold", Chemistry(12, 12, 1, 0.5, cold: 0.5), 1, ElectricCharge.FromAmpereHours(6), Duration.FromHours(20), ElectricResistance.FromMilliohms(1));
        Condition warm = new("warm", LoadComponents.None, At(box: 25), duration: Duration.FromHours(1)), cold = new("cold", LoadComponents.None, At(box: 0));
        Assert.Equal(3, Star(Box().WithBattery(battery), [cold], (0.001, Camera(Amperes(1)))).RunOnBattery(BoxName, warm, cold).Length.Hours, 1e-7);
    }

    [Fact]
    public void SmallestBattery_PassesOverOneWithoutACurveInTheCold()
    {
        Condition frost = Condition.Night(At(box: -30));
        Site site = Star(Box(), [frost], (0.001, Camera(Amperes(1))));
        BatteryRun? chosen = site.SmallestBatteryFor(BoxName, [BatteryCatalog.Generic12Volt[0], Of(40)], BackupPolicy.CommonPractice, Duration.FromHours(10), frost);
        Assert.Equal("battery", chosen!.Box.Battery!.Name);
    }

    // Nobody uses its outputs, and the short is there all the same. A time that nothing can be judged by is asked for.
    [Fact]
    public void BatteryOfAnUnusedBox_IsJudgedToo()
    {
        var spare = new DistributionBox("spare", Dc(), [new BoxOutput(1, ElectricCurrent.FromAmperes(1))]);
        Site site = Star((1, Camera(Amperes(1))));
        var both = new Site("site", site.Conditions, [.. site.Boxes, spare.WithBattery(Of(5, ohms: 0.1), ProtectiveDevice.None, Duration.FromHours(1))], site.Runs, site.Devices);
        var evidence = new Evidence(both.Assess());
        Assert.Contains(RuleSet.Standard.Check(evidence.Assessment), f => f.Rule == "battery-fuse-missing" && f.About.Name == "spare");
        Assert.Contains("spare", evidence.NotStated["a condition that lasts and in which a device draws current"]);
    }

    [Fact]
    public void Run_NoBattery_SaysSo() => Assert.Contains("has no battery",
        Assert.Throws<ArgumentException>(() => Star((1, Camera(Watts(5)))).RunOnBattery(BoxName, Night)).Message, StringComparison.Ordinal);

    [Fact]
    public void Run_ConditionWithoutEndBeforeAnother_IsNamed() => Assert.Contains("\"night\" needs a duration",
        Assert.Throws<ArgumentException>(() => Star(Box().WithBattery(Of(5)), [Night], (1, Camera(Watts(5)))).RunOnBattery(BoxName, Night, Night)).Message,
        StringComparison.Ordinal);

    [Fact]
    public void Run_ColderThanItsCurve_NamesTheTemperature()
    {
        Condition frost = Condition.Night(At(box: -30));
        var error = Assert.Throws<ArgumentOutOfRangeException>(() =>
            Star(Box().WithBattery(BatteryCatalog.Generic12Volt[0]), [frost], (1, Camera(Watts(5)))).RunOnBattery(BoxName, frost));
        Assert.Contains("-30 °C", error.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void WithBattery_OnAlternatingCurrent_IsRefused() =>
        Assert.Throws<InvalidOperationException>(() => Box(Dc(kind: CurrentKind.Ac)).WithBattery(Of(5)));

    // 1 A for 10 h, 80 % left and a fifth more: 15 Ah. Of 12, 14.9, 15 and 40 Ah the third is the smallest.
    [Fact]
    public void SmallestBattery_LeavesRoomForAgeAndMargin()
    {
        Site site = Star(Box(), [Night], (0.001, Camera(Amperes(1))));
        BatteryRun? chosen = site.SmallestBatteryFor(BoxName, [Of(40), Of(15.0001), Of(12), Of(14.9)], BackupPolicy.CommonPractice, Duration.FromHours(10), Night);
        Assert.Equal(15.0001 * 0.8 / 1.2, chosen!.Box.Battery!.Capacity.AmpereHours, 1e-9);
        Assert.Null(site.SmallestBatteryFor(BoxName, [Of(12), Of(14.9)], BackupPolicy.CommonPractice, Duration.FromHours(10), Night));
    }
}
