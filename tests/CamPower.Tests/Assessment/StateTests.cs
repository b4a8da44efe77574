using System;
using System.Linq;
using CamPower.Tests.Sites;
using static CamPower.Tests.Sites.SmallSite;

namespace CamPower.Tests.Assessment;

/// <summary>Up, restarting, never up, no operating point, wrong current. All numbers are worked out by hand beside the test.</summary>
public class StateTests
{
    // 12 V, 2.6 Ω, 12.5 W: D = 144 − 4·2.6·12.5 = 14, V = (12 ± √14)/2 = 7.871 V and 4.129 V.
    private const double Settles = 7.870828693386971, Unstable = 4.129171306613029;

    private static readonly Condition Day = Condition.Day(At()), Cold = Condition.ColdStart(At());

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    [InlineData(null)]
    public void SettlingUnderTheDropOut_RestartsForEver(bool? soft)
    {
        DeviceAssessment device = Single(2.6, Camera(Watts(12.5), starting: Starts(9.5, 8, soft)), null, Day, Cold).Assess().Devices[0];
        Assert.All(device.InConditions, found =>
        {
            Assert.Equal(DeviceState.Restarting, found.State);
            Assert.Equal(StartVerdict.SettlesBelowDropOut, found.Start);
            Assert.Equal(Settles, found.SolvedVoltage!.Value.Volts, 1e-12);
            Assert.Equal(12, found.UnloadedVoltage!.Value.Volts);
            Assert.False(found.TryGetVoltage(out _));
            Assert.Throws<InvalidOperationException>(() => found.Voltage);
            Assert.Throws<InvalidOperationException>(() => found.Current);
            Assert.Throws<InvalidOperationException>(() => found.Margin);
        });
    }

    [Theory]
    [InlineData(Settles + 1e-9, DeviceState.Restarting)]
    [InlineData(Settles - 1e-9, DeviceState.Up)]
    public void DropOut_DecidesToAHair(double dropOut, DeviceState expected) =>
        Assert.Equal(expected, Only(Single(2.6, Camera(Watts(12.5), starting: Starts(9.5, dropOut)))).State);

    // On already it stays on at (12 + √(144 − 4·10))/2 = 11.10 V; after a power cut 12 V does not reach its 12.5 V turn-on.
    [Fact]
    public void BelowTurnOn_StaysUpWhenOn_AndNeverComesUpFromOff()
    {
        DeviceAssessment device = Single(1, Camera(Watts(10), starting: Starts(12.5, 8)), null, Day, Cold).Assess().Devices[0];
        Assert.Equal(DeviceState.Up, device.InConditions[0].State);
        Assert.Equal(11.099019513592784, device.InConditions[0].Voltage.Volts, 1e-12);
        Assert.Equal(DeviceState.NeverUp, device.InConditions[1].State);
        Assert.All(device.InConditions, found => Assert.Equal(StartVerdict.UnloadedBelowTurnOn, found.Start));
        Assert.Same(device.InConditions[1], device.Worst);
    }

    [Theory]
    [InlineData(Unstable - 1e-6, true, DeviceState.Up, StartVerdict.Starts)]
    [InlineData(Unstable - 1e-6, false, DeviceState.Restarting, StartVerdict.TurnOnBelowUnstableVoltage)]
    [InlineData(Unstable - 1e-6, null, DeviceState.Restarting, StartVerdict.TurnOnBelowUnstableVoltage)]
    [InlineData(Unstable + 1e-6, false, DeviceState.Up, StartVerdict.Starts)]
    [InlineData(Unstable + 1e-6, null, DeviceState.Up, StartVerdict.Starts)]
    public void SoftStart_MattersUnderTheUnstableVoltageAlone(double turnOn, bool? soft, DeviceState fromOff, StartVerdict verdict)
    {
        DeviceAssessment device = Single(2.6, Camera(Watts(12.5), starting: Starts(turnOn, 3, soft)), null, Day, Cold).Assess().Devices[0];
        Assert.Equal(DeviceState.Up, device.InConditions[0].State);
        Assert.Equal(fromOff, device.InConditions[1].State);
        Assert.All(device.InConditions, found => Assert.Equal(verdict, found.Start));
    }

    // The same device behind a junction is solved as a tree, and must not fare otherwise.
    [Theory]
    [InlineData(Unstable - 1e-6, false, DeviceState.Restarting, StartVerdict.TurnOnBelowUnstableVoltage)]
    [InlineData(Unstable + 1e-6, false, DeviceState.Up, StartVerdict.Starts)]
    [InlineData(Unstable - 1e-6, true, DeviceState.Up, StartVerdict.Starts)]
    public void SoftStart_InATreeAsOnOneRun(double turnOn, bool? soft, DeviceState expected, StartVerdict verdict)
    {
        Device camera = Camera(Watts(12.5), starting: Starts(turnOn, 3, soft));
        Site site = Shared(2.6, Box(), [Cold], camera, Camera(Load.None));
        DeviceInCondition found = site.Assess().Devices[0].Worst;
        Assert.Equal(expected, found.State);
        Assert.Equal(verdict, found.Start);
    }

    // A turn-on above the settled voltage: it comes on, sinks to 7.871 V and stays there.
    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void TurnOnAboveWhereItSettles_IsUp(bool? soft) =>
        Assert.Equal(DeviceState.Up, Only(Single(2.6, Camera(Watts(12.5), starting: Starts(11.9, 7.8, soft)), null, Cold)).State);

    [Fact]
    public void Undeclared_WithoutOperatingPoint_SaysNoMore()
    {
        DeviceInCondition found = Only(Single(3, Camera(Watts(12.1))));
        Assert.Equal(DeviceState.NoOperatingPoint, found.State);
        Assert.Equal(StartVerdict.Unknown, found.Start);
        Assert.Null(found.SolvedVoltage);
        Assert.Contains("NoOperatingPoint", found.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void Declared_WithoutOperatingPoint_Restarts() =>
        Assert.Equal(DeviceState.Restarting, Only(Single(3, Camera(Watts(12.1), starting: Starts(9, 8)))).State);

    [Fact]
    public void WrongCurrent_DrawsNothing()
    {
        Site site = Star(Box(Dc(kind: CurrentKind.Ac)), [Day], (1, Camera(Watts(12), starting: Starts(9, 8))));
        SiteAssessment assessment = site.Assess();
        Assert.Equal(DeviceState.WrongCurrent, assessment.Devices[0].Worst.State);
        Assert.Null(assessment.Devices[0].Worst.Accepted);
        Assert.Equal(0, assessment.Boxes[0].Worst.TotalCurrent.Amperes);
    }

    // Two of 6.25 W at the end of 2.6 Ω: both on 7.871 V, under the 8 V drop-out; one alone (12 + √(144 − 65))/2 = 10.44 V.
    // They take turns where 10.44 V turns them on again, and neither is better off for standing first in the list.
    [Fact]
    public void TwoAlikeOnOneFeeder_TakeTurns()
    {
        Device camera = Camera(Watts(6.25), starting: Starts(9.5, 8));
        foreach (Condition condition in new[] { Day, Cold })
        {
            Assert.All(Shared(2.6, Box(), [condition], camera, camera).Assess().Devices, d => Assert.Equal(DeviceState.Restarting, d.Worst.State));
        }
    }

    // Two feeders of the same length, fed by the same run: alike as well.
    [Fact]
    public void TwoAlikeBranches_TakeTurns()
    {
        Device camera = Camera(Watts(6.25), starting: Starts(9.5, 8));
        Site site = new("site", [Day], [Box()],
            [new SiteRun(RunOrigin.Output(BoxName, 1), "hub", Runs.OfOhms(2.5)), new SiteRun(RunOrigin.Junction("hub"), "left", Runs.OfOhms(0.2)), new SiteRun(RunOrigin.Junction("hub"), "right", Runs.OfOhms(0.2))],
            [new SiteDevice("a", camera, "left"), new SiteDevice("b", camera, "right")]);
        Assert.All(site.Assess().Devices, d => Assert.Equal(DeviceState.Restarting, d.Worst.State));
    }

    // More than the run can carry at all, where each alone is fine: 8 W and 8 W over 2.6 Ω, most 13.85 W.
    [Fact]
    public void TwoAlikeBeyondTheRun_TakeTurns()
    {
        Device camera = Camera(Watts(8), starting: Starts(9, 8));
        Assert.All(Shared(2.6, camera, camera).Assess().Devices, d => Assert.Equal(DeviceState.Restarting, d.Worst.State));
    }

    // The one of 8.1 V drops out first and comes back, and each time the other is under its 8 V as well: it is not up.
    [Fact]
    public void TwoUnderTheirDropOuts_NeitherIsUp()
    {
        Site site = Shared(2.6, Camera(Watts(6.25), starting: Starts(9.5, 8.1)), Camera(Watts(6.25), starting: Starts(9.5, 8)));
        Assert.All(site.Assess().Devices, d => Assert.Equal(DeviceState.Restarting, d.Worst.State));
    }

    // 12 V ± 10 %: whether it starts and stays on is asked at 10.8 V, on one run as in a tree. 5 W over 1 Ω leave 10.31 V.
    [Theory]
    [InlineData(10.81, 5, DeviceState.NeverUp, StartVerdict.UnloadedBelowTurnOn)]
    [InlineData(10.79, 5, DeviceState.Up, StartVerdict.Starts)]
    [InlineData(10.79, 10.4, DeviceState.Restarting, StartVerdict.SettlesBelowDropOut)]
    public void Starting_IsJudgedAtTheLowestSupplyVoltage(double turnOn, double dropOut, DeviceState state, StartVerdict verdict)
    {
        Device camera = Camera(Watts(5), starting: Starts(turnOn, dropOut));
        Site[] sites = [Single(1, camera, Dc(percent: 10), Cold), Shared(1, Box(Dc(percent: 10)), [Cold], camera, Camera(Load.None))];
        Assert.All(sites.Select(site => site.Assess().Devices[0].Worst), found =>
        {
            Assert.Equal(state, found.State);
            Assert.Equal(verdict, found.Start);
            Assert.Equal(10.8, found.UnloadedVoltage!.Value.Volts, 1e-12);
            if (found.TryGetVoltage(out UnitsNet.ElectricPotential voltage)) Assert.Equal((10.8 + Math.Sqrt((10.8 * 10.8) - 20)) / 2, voltage.Volts, 1e-9);
        });
    }

    // What stays on while another comes and goes has the lowest voltage of the lowest supply voltage.
    [Fact]
    public void Sequence_RunsAtTheLowestSupplyVoltage()
    {
        Site site = Chain(Box(Dc(percent: 10)), [Day], (0.5, Camera(Watts(5))), (8, Camera(Watts(12), starting: Starts(9, 8))));
        Assert.Equal((10.8 + Math.Sqrt((10.8 * 10.8) - 10)) / 2, site.Assess().Devices[0].Worst.Voltage.Volts, 1e-9);
    }

    // With a turn-on of 11 V the one that lost finds 10.44 V, and stays off. The first by name is taken to win, in either order.
    [Theory]
    [InlineData("a", "b")]
    [InlineData("b", "a")]
    public void TwoAlike_WhereTheLoserStaysOff_TheFirstByNameIsUp(string first, string second)
    {
        Device camera = Camera(Watts(6.25), starting: Starts(11, 8));
        Site site = new("site", [Day], [Box()], [new SiteRun(RunOrigin.Output(BoxName, 1), "end", Runs.OfOhms(2.6))],
            [new SiteDevice(first, camera, "end"), new SiteDevice(second, camera, "end")]);
        DeviceInCondition[] found = [.. site.Assess().Devices.Select(d => d.Worst).OrderBy(d => d.Device.Name, StringComparer.Ordinal)];
        Assert.Equal([DeviceState.Up, DeviceState.NeverUp], found.Select(f => f.State));
        Assert.Equal((12 + Math.Sqrt(79)) / 2, found[0].Voltage.Volts, 1e-12);
        Assert.All(found, f => Assert.Equal(StartVerdict.UnloadedBelowTurnOn, f.Start));
    }

    // A drops out first (9 V) and cannot come back (11 V); B, which alone has 10.44 V, is up though both together would
    // settle it at 7.871 V. What is said of its start is of everything drawing, and so is the voltage.
    [Fact]
    public void TheOneThatStays_IsUpAtItsOwnVoltage_AndItsStartIsJudgedWithAllDrawing()
    {
        Site site = Shared(2.6, Camera(Watts(6.25), starting: Starts(11, 9)), Camera(Watts(6.25), starting: Starts(8.5, 8)));
        SiteAssessment assessment = site.Assess();
        DeviceInCondition stays = assessment.Devices[1].Worst;
        Assert.Equal(DeviceState.NeverUp, assessment.Devices[0].Worst.State);
        Assert.Equal(DeviceState.Up, stays.State);
        Assert.Equal((12 + Math.Sqrt(79)) / 2, stays.Voltage.Volts, 1e-12);
        Assert.Equal(Settles, stays.SolvedVoltage!.Value.Volts, 1e-9);
        Finding finding = RuleSet.Standard.Check(assessment).Single(f => f.About.Name == "camera 2" && f.Rule == "settles-below-drop-out");
        Assert.Equal(Settles, (double)finding.Measured!.Value, 1e-9);
    }

    // The far one asks for more than its 8 Ω can carry and comes and goes. The near one, 5 W over 0.5 Ω, has
    // (12 + √(144 − 10))/2 = 11.788 V meanwhile, and is warned that the circuit does not balance with everything on.
    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void BesideOneThatCannotBeCarried_TheNearOneIsUp(bool declared)
    {
        Site site = Chain((0.5, Camera(Watts(5), starting: declared ? Starts(9, 8) : null)), (8, Camera(Watts(12), starting: Starts(9, 8))));
        SiteAssessment assessment = site.Assess();
        DeviceInCondition near = assessment.Devices[0].Worst;
        Assert.Equal(DeviceState.Up, near.State);
        Assert.Equal((12 + Math.Sqrt(134)) / 2, near.Voltage.Volts, 1e-12);
        Assert.Null(near.SolvedVoltage);
        Assert.Equal(DeviceState.Restarting, assessment.Devices[1].Worst.State);
        Assert.Equal(["camera 1", "camera 2"], RuleSet.Standard.Check(assessment).Where(f => f.Rule == "no-operating-point").Select(f => f.About.Name));
    }

    // Two runs on one output: the one that comes and goes for ever must not keep the other from its turn. 5 W over 1 Ω.
    [Fact]
    public void BesideOneThatRestarts_TheOtherComesUpFromOff()
    {
        Site site = new("site", [Cold], [Box()],
            [new SiteRun(RunOrigin.Output(BoxName, 1), "far", Runs.OfOhms(2.6)), new SiteRun(RunOrigin.Output(BoxName, 1), "near", Runs.OfOhms(1))],
            [new SiteDevice("far camera", Camera(Watts(12.5), starting: Starts(8.5, 8)), "far"), new SiteDevice("near camera", Camera(Watts(5), starting: Starts(9.5, 8)), "near")]);
        DeviceInCondition[] found = [.. site.Assess().Devices.Select(d => d.Worst)];
        Assert.Equal([DeviceState.Restarting, DeviceState.Up], found.Select(f => f.State));
        Assert.Equal((12 + Math.Sqrt(124)) / 2, found[1].Voltage.Volts, 1e-12);
    }

    // Turn-on voltages that no input has are still answered: a nanovolt asks for 12 GA to begin with.
    [Theory]
    [InlineData(1e-9)]
    [InlineData(1e-300)]
    public void TinyTurnOn_IsAnswered(double turnOn) => Assert.All(new[] { 2.6, 0 }, ohms =>
    {
        Device camera = Camera(Watts(12), starting: Starts(turnOn, turnOn, soft: false));
        Assert.Equal(ohms > 0 ? DeviceState.Restarting : DeviceState.Up, Shared(ohms, Box(), [Cold], camera, Camera(Load.None)).Assess().Devices[0].Worst.State);
    });

    // By state first, by voltage then: restarting at night is worse than a low voltage by day.
    [Fact]
    public void Worst_GoesByStateThenByVoltage()
    {
        var draw = new ComponentDraw(Watts(2), infrared: Watts(10.5), motor: Watts(1));
        Condition motion = new("motion", LoadComponents.Motor, At()), night = Condition.Night(At());
        DeviceAssessment device = Single(2.6, Camera(draw, starting: Starts(9, 8)), null, Day, motion, night).Assess().Devices[0];
        Assert.Equal([DeviceState.Up, DeviceState.Up, DeviceState.Restarting], device.InConditions.Select(c => c.State));
        Assert.Same(device.InConditions[2], device.Worst);
        Assert.Same(motion, Single(2.6, Camera(draw, starting: Starts(9, 8)), null, Day, motion, Day2()).Assess().Devices[0].Worst.Condition);

        static Condition Day2() => new("another day", LoadComponents.None, At());
    }

    private static DeviceInCondition Only(Site site) => site.Assess().Devices.Single().Worst;

    // 12 V, 3 Ω to a first camera, 1 Ω more to a second, 6 W each: together more than the run carries (most 9.8 W or so).
    // By a transient simulation (ngspice, 1 mF at each input) the voltages slide, the first reaches its 8 V at 7.3 V of the
    // second, goes off and comes back at 9.5 V for ever; the second, which holds on down to 5 V, stays up.
    [Fact]
    public void WithoutOperatingPoint_WhoReachesItsDropOutFirstGoesOff()
    {
        SiteAssessment solved = Chain((3, Camera(Watts(6), starting: Starts(9.5, 8))), (1, Camera(Watts(6), starting: Starts(9.5, 5)))).Assess();
        Assert.Equal([DeviceState.Restarting, DeviceState.Up], solved.Devices.Select(d => d.Worst.State));
    }
}
