using System;
using System.Collections.Generic;
using System.Linq;
using CamPower.Tests.Protection;
using CamPower.Tests.Mains;
using CamPower.Tests.Sites;
using UnitsNet;
using static CamPower.Tests.Sites.SmallSite;

namespace CamPower.Tests.Checks;

/// <summary>Of two things that both break a rule the worse one is told, in whichever order they are listed.</summary>
public class WorstOfTwoTests
{
    private static readonly Condition Mild = new("worse", LoadComponents.Infrared, At()), Less = new("better", LoadComponents.None, At());

    // Each with the rule, the worse and the better of two conditions, the site of both, and the value found in the worse one.
    private static readonly Dictionary<string, (string Rule, Condition Worse, Condition Better, Func<Condition[], Site> Site, double Measured)> Cases = new()
    {
        // 12 V less 3 A through 1 Ω are 9 V, less 2 A 10 V; 10.5 V are accepted.
        ["lower voltage"] = ("undervoltage", Mild, Less, c => Single(1, Camera(Infrared(2, 1), Range(10.5, 60)), null, c), 9),
        ["thinner margin"] = ("thin-voltage-margin", Mild, Less, c => Single(1, Camera(Infrared(1.85, 0.1), Range(10, 60)), null, c), 10.05),
        ["larger current through a connector"] = ("connector-overloaded", Mild, Less,
            c => Single(0, new Device("model", DeviceKind.Camera, Infrared(3, 1), Wide, connector: Connector.UnifiedBarrels[2]), null, c), 4),
        ["larger current of an output"] = ("output-overloaded", Mild, Less, c => Star(Box(limit: 2), c, (0, Camera(Infrared(3, 1)))), 4),

        // 9 A of the 7.5 A that are left at 60 °C are worse than 11 A of 10 A at 25 °C.
        ["less of the rating, though less current"] = ("supply-above-derated-rating", new("worse", LoadComponents.None, At(box: 60)), new("better", LoadComponents.Infrared, At()),
            c => Star(Box(Dc(amperes: 10)), c, (0, Camera(Infrared(9, 2)))), 9),
        ["more of the headroom"] = ("supply-above-headroom-policy", Mild, Less, c => Star(Box(Dc(amperes: 10)), c, (0, Camera(Infrared(8.5, 1)))), 9.5),
        ["more of a split adapter"] = ("split-adapter-beyond-rating", Mild, Less, c => Shared(0, Adapter(Dc(amperes: 2)), c, Camera(Infrared(1.1, 1)), Camera(Infrared(1.1, 1))), 4.2),
        ["hotter"] = ("supply-too-hot", new("worse", LoadComponents.None, At(box: 75)), new("better", LoadComponents.None, At(box: 72)), c => Star(Box(), c, (0, Camera(Amperes(1)))), 75),
        ["colder"] = ("supply-too-cold", new("worse", LoadComponents.None, At(box: -30)), new("better", LoadComponents.None, At(box: -25)), c => Star(Box(), c, (0, Camera(Amperes(1)))), -30),
        ["more sun"] = ("sun-on-box-without-enclosure", Lit("worse", 900), Lit("better", 300), c => Star(Box(), c, (0, Camera(Amperes(1)))), double.NaN),

        // 12 V · I / (0.85 · 0.95) at 120 V: 1.2384 A of 10 A, 1.1146 A of 9 A; 0.8 A may be plugged in.
        ["more from a receptacle"] = ("receptacle-overloaded", Mild, Less, c => Star(Box(Receptacles.Sheet()).WithReceptacle(Receptacles.Rated(1)), c, (0, Camera(Infrared(9, 1)))), 12 * 10 / (0.85 * 0.95 * 120)),

        // By the current above the ampacity, 10 A in 40 °C and 9 A in 20 °C on 24 AWG.
        ["farther above the ampacity"] = ("conductor-over-ampacity", new("worse", LoadComponents.Infrared, At(cable: 40)), new("better", LoadComponents.None, At(cable: 20)),
            c => OnCables(c, Infrared(9, 1), Copper(24), Copper(24)), 10),
    };

    public static TheoryData<string> Names => [.. Cases.Keys];

    [Theory]
    [MemberData(nameof(Names))]
    public void TheWorseCondition_IsTold_InBothOrders(string name)
    {
        (string rule, Condition worse, Condition better, Func<Condition[], Site> site, double measured) = Cases[name];
        foreach (Condition[] order in new Condition[][] { [worse, better], [better, worse] })
        {
            Finding found = Assert.Single(RuleSet.Standard.Check(site(order).Assess()), f => f.Rule == rule);
            Assert.Equal("worse", found.Condition!.Name);
            if (!double.IsNaN(measured)) Assert.Equal(measured, (double)found.Measured!.Value, 1e-9);
        }

        // Each alone is told as well: it is a choice between two.
        Assert.Single(RuleSet.Standard.Check(site([better]).Assess()), f => f.Rule == rule);
    }

    // A pigtail of 24 AWG before or after 18 AWG carries the 9 A worse.
    [Fact]
    public void TheSmallerOfTwoCables_IsTold_InBothOrders()
    {
        foreach (int[] gauges in new int[][] { [18, 24], [24, 18] })
        {
            var run = new CableRun([.. gauges.Select(g => new CableSegment(Cable.Pair(Copper(g)), Length.FromMeters(1)))]);
            Assert.Contains("24 AWG", Assert.Single(Rules.ConductorOverAmpacity.Check(new Evidence(Fed(run, Amperes(9)).Assess()))).Message, StringComparison.Ordinal);
        }
    }

    // Either conductor of a cable may be the smaller one.
    [Theory]
    [InlineData(10, 24)]
    [InlineData(24, 10)]
    public void TheSmallerOfTwoConductors_IsTold(int outgoing, int returning)
    {
        Finding found = Assert.Single(Rules.ConductorOverAmpacity.Check(new Evidence(OnCables([Less], Infrared(9, 0), Copper(outgoing), Copper(returning)).Assess())));
        Assert.Contains("24 AWG", found.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(false, false, false)]
    [InlineData(true, false, true)]
    [InlineData(false, true, true)]
    [InlineData(true, true, true)]
    public void OneCladConductorOfTwo_IsEnough(bool isOutgoingClad, bool isReturnClad, bool isFound)
    {
        static Conductor Of(bool isClad) => new(WireSize.Awg(18), Stranding.Solid, isClad ? ConductorMaterial.CopperCladAluminum15 : ConductorMaterial.AnnealedCopper);
        Assert.Equal(isFound, RuleSet.Standard.Check(OnCables([Less], Infrared(0.1, 0), Of(isOutgoingClad), Of(isReturnClad)).Assess()).Any(f => f.Rule == "copper-clad-aluminum"));
    }

    // Terminals for 24 AWG to 14 AWG: 3.309 mm² of 12 AWG and 0.081 mm² of 28 AWG do not go (ASTM B258), at the box and at the connector.
    [Theory]
    [InlineData(18, 18, null)]
    [InlineData(12, 18, 3.3088)]
    [InlineData(18, 12, 3.3088)]
    [InlineData(18, 28, 0.0810)]
    [InlineData(28, 18, 0.0810)]
    public void TheReturnConductor_MustFitItsTerminalToo(int outgoing, int returning, double? squareMillimeters)
    {
        var terminals = new TerminalRange(WireSize.Awg(24), WireSize.Awg(14));
        var run = new CableRun(new Cable(Copper(outgoing), Copper(returning)), Length.FromMeters(1));
        Device plain = Camera(Amperes(0.1)), plugged = new("model", DeviceKind.Camera, new ComponentDraw(Amperes(0.1)), Wide, connector: new Connector("screws", Sources.CommonPractice, wires: terminals));
        DistributionBox box = DistributionBox.OfEqualOutputs(BoxName, Dc(), 2, ElectricCurrent.FromAmperes(3), terminals: terminals);
        foreach (Site site in new[] { Fed(run, plain, box), Fed(run, plugged, Box()) })
        {
            Finding? found = RuleSet.Standard.Check(site.Assess()).SingleOrDefault(f => f.Rule == "terminal-wrong-size");
            Assert.Equal(squareMillimeters is null, found is null);
            if (found is not null) Assert.Equal(squareMillimeters!.Value, ((Area)found.Measured!).SquareMillimeters, 0.0001);
        }
    }

    // NEC: continuous is 3 h and more. 75 % of a blade fuse of 4 A are 3 A (common practice).
    [Theory]
    [InlineData(null, true)]
    [InlineData(2.999999, false)]
    [InlineData(3.0, true)]
    [InlineData(3.000001, true)]
    public void ThreeHours_AreContinuous(double? hours, bool isFound)
    {
        var condition = new Condition("motion", LoadComponents.None, At(), duration: hours is double h ? Duration.FromHours(h) : null);
        Site site = Star(Box(protection: SmallDevices.Fuse(FuseCharacteristic.Blade, 4)), [condition], (0, Camera(Amperes(3.1))));
        Assert.Equal(isFound, RuleSet.Standard.Check(site.Assess()).Any(f => f.Rule == "fuse-above-continuous-policy"));
    }

    private static ComponentDraw Infrared(double amperes, double more) => new(Amperes(amperes), infrared: Amperes(more));

    private static Condition Lit(string name, double sun) =>
        new(name, LoadComponents.None, new Surroundings(At().Cable, At().Box, At().Camera, Irradiance.FromWattsPerSquareMeter(sun)));

    private static Conductor Copper(int gauge) => new(WireSize.Awg(gauge), Stranding.Solid, ConductorMaterial.AnnealedCopper);

    private static Site OnCables(Condition[] conditions, ComponentDraw draw, Conductor outgoing, Conductor returning) => new("site", conditions, [Box()],
        [new SiteRun(RunOrigin.Output(BoxName, 1), "end", new CableRun(new Cable(outgoing, returning), Length.FromMeters(1)))], [new SiteDevice("camera 1", Camera(draw), "end")]);

    private static Site Fed(CableRun run, Load draw) => Fed(run, Camera(draw), Box());

    private static Site Fed(CableRun run, Device device, DistributionBox box) => new("site", [Less], [box],
        [new SiteRun(RunOrigin.Output(BoxName, 1), "end", run)], [new SiteDevice("camera 1", device, "end")]);
}
