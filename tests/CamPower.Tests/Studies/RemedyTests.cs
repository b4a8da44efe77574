using System;
using System.Collections.Generic;
using System.Linq;
using CamPower.Tests.Assessment;
using CamPower.Tests.Sites;
using UnitsNet;

namespace CamPower.Tests.Studies;

/// <summary>Remedies of small sites, against what changing one thing by hand gives.</summary>
public class RemedyTests
{
    private static readonly PriceList Prices = PriceList.Neutral;

    // The limits of random trees are there for their resistance: they let everything through.
    private static readonly RuleSet OfTrees = RuleSet.Standard.Without("protection-above-output-limit");

    [SeededProperty(Arbitrary = [typeof(TreeCases)], MaxTest = 30)]
    public void Remedy_RemovesItsFinding_AddsNone_AndRaisesNoSeverity(TreeCase tree)
    {
        Site site = TrimSites.Of(tree);
        IReadOnlyList<Finding> before = OfTrees.Check(site.Assess());
        foreach (FindingRemedies found in site.FindRemedies(OfTrees, Prices))
        {
            foreach (Remedy remedy in found.Remedies)
            {
                Site changed = remedy.Changes.Aggregate(site, (s, change) => change.ApplyTo(s));
                IReadOnlyList<Finding> after = OfTrees.Check(changed.Assess());
                Assert.DoesNotContain(after, f => IsOf(f, found.Finding));
                Assert.All(after, f => Assert.Contains(before, b => b.Rule == f.Rule && b.Severity >= f.Severity
                    && (b.About.Name == f.About.Name || (b.About.Kind != f.About.Kind && b.About.Kind is SubjectKind.Box or SubjectKind.Site)
                        || f.About.Name.StartsWith(b.About.Name, StringComparison.Ordinal))));
                Assert.Equal(after.Select(f => f.Message), remedy.Findings.Select(f => f.Message));
            }

            Assert.Equal(found.Remedies.OrderBy(r => r.Cost), found.Remedies);
        }
    }

    [Fact]
    public void Cases_HoldRemediesOfOneChangeAndOfTwo_AndFindingsWithNone()
    {
        FindingRemedies[] all = [.. Enumerable.Range(0, 40).SelectMany(seed => TrimSites.Of(TreeCases.Make(new Random(seed))).FindRemedies(RuleSet.Standard, Prices))];
        Assert.Contains(all, f => f.Remedies.Count > 0 && f.Remedies[0].Changes.Count == 1);
        Assert.Contains(all, f => f.Remedies.Count > 0 && f.Remedies[0].Changes.Count == 2);
        Assert.Contains(all, f => f.Remedies.Count == 0);
    }

    // Hand-worked: 9 W over 60 m of 18 AWG stranded copper (20.95 Ω/km solid, 2 % for lay: 21.37 Ω/km), 12 V, no tolerance, 20 °C.
    // The loop is 2.56 Ω, and V = 6 + √(36 − 9·2.56) = 9.6 V. 16 AWG has 1.61 Ω: 10.64 V. 14 AWG has 1.01 Ω: 11.19 V.
    [Theory]
    [InlineData(10.4, "Use 16 AWG for the run from box output 1 to place 1 (60 m).")]
    [InlineData(10.8, "Use 14 AWG for the run from box output 1 to place 1 (60 m).")]
    public void LargerSize_IsTheFirstThatHelps(double lowest, string expected)
    {
        IReadOnlyList<Remedy> remedies = Of(Long(SmallSite.Dc(), lowest), "undervoltage").Remedies;
        Assert.Contains(expected, remedies.SelectMany(r => r.Changes).Select(c => c.Text));
        Assert.Single(remedies, r => r.Changes[0].Text.StartsWith("Use 1", StringComparison.Ordinal));
    }

    // Two cables have half the loop: 1.28 Ω, 10.94 V.
    [Theory]
    [InlineData(10.7, true)]
    [InlineData(10.9, false)]
    public void SecondCable_IsARemedy_WhereHalfTheLoopIsEnough(double lowest, bool isEnough) =>
        Assert.Equal(isEnough, Of(Long(SmallSite.Dc(), lowest), "undervoltage").Remedies.Any(r => r.Changes[0].Text.StartsWith("Pull a second", StringComparison.Ordinal)));

    // A near camera accepts 13.2 V at most, so that the far one gets no more than 13.2 V allow.
    [Fact]
    public void SetPoint_IsARemedy_InsideTheTrimWindowAlone()
    {
        Remedy cheapest = Of(Long(TrimSites.Trimmable(0, 12, 14), 10.4), "undervoltage").Remedies[0];
        Assert.StartsWith("Set the supply of box to 1", cheapest.Changes[0].Text, StringComparison.Ordinal);
        Assert.InRange(cheapest.Site.Boxes[0].Supply.Output.HighestVoltage.Volts, 12.7, 14);
        Assert.Equal(Prices.Visit, cheapest.Cost);
    }

    [Fact]
    public void ProtectiveDeviceAndBox_AreChangedWhereTheyAreTheCause()
    {
        Site tripping = Star(SmallSite.Dc(amperes: 3), protection: Limit(0.5), count: 3);
        FindingRemedies trip = Of(tripping, "nuisance-trip");
        Assert.Contains(trip.Remedies, r => r.Changes[0].Text == "Fit a 1.1 A electronic limit at outputs 1-3 of box.");

        Site overloaded = Star(SmallSite.Dc(amperes: 1.5), Limit(1.1), count: 2);
        FindingRemedies load = Of(overloaded, "supply-above-derated-rating");
        Assert.Contains(load.Remedies, r => r.Changes[0].Text.StartsWith("Replace the 1.5 A supply of box with one of 3 A", StringComparison.Ordinal));
        Remedy second = Assert.Single(load.Remedies, r => r.Changes[0].Text.StartsWith("Add a second box like box.", StringComparison.Ordinal));
        Assert.Equal(["box", "box 2"], second.Site.Boxes.Select(b => b.Name));
    }

    [Fact]
    public void NothingHelps_IsAnAnswer()
    {
        var none = new PriceList("points", [], [], []);
        FindingRemedies found = Assert.Single(Long(SmallSite.Dc(), 11.5).FindRemedies(SmallSite.WithoutFaultsUnknown, none), f => f.Finding.Rule == "undervoltage");
        Assert.Empty(found.Remedies);
        Assert.Equal($"No priced change removes this. {found.Finding.Remedy}", found.Summary);
        Assert.NotEmpty(Long(SmallSite.Dc(), 11.5).CheapestRepair(SmallSite.WithoutFaultsUnknown, none).Left);
    }

    // Every way of choosing a size, once or twice, for each of two runs, and a set point in steps of 0.1 V, tried by hand.
    [Theory]
    [InlineData(60, 60, 10.6)]
    [InlineData(30, 80, 10.8)]
    [InlineData(45, 110, 10.2)]
    [InlineData(70, 20, 11)]
    public void CheapestRepair_IsNoDearerThanWhatBruteForceFinds(double near, double far, double lowest)
    {
        Site site = TwoRuns(near, far, lowest, volts: 12, [1, 1], [18, 18]);
        SiteRepair repair = site.CheapestRepair(SmallSite.WithoutFaultsUnknown, Prices);
        Assert.True(repair.IsComplete);
        Assert.Empty(repair.Left);
        Assert.DoesNotContain(SmallSite.WithoutFaultsUnknown.Check(repair.Site.Assess()), f => f.Severity >= Severity.Failure);
        Assert.InRange(repair.Cost, 0.0, BruteForce(near, far, lowest) + 1e-6);
        Assert.Equal(repair.Cost, repair.Changes.Sum(c => c.Cost), 1e-9);
    }

    private static double BruteForce(double near, double far, double lowest)
    {
        double least = double.PositiveInfinity;
        (int Count, int Gauge)[] choices = [(1, 18), (2, 18), (1, 16), (1, 14), (1, 12), (1, 10)];
        foreach ((int Count, int Gauge) one in choices)
        {
            foreach ((int Count, int Gauge) other in choices)
            {
                for (int step = 0; step <= 20; step++)
                {
                    double cost = Cost(one, near) + Cost(other, far) + (step == 0 ? 0 : Prices.Visit);
                    if (cost >= least) continue;
                    Site tried = TwoRuns(near, far, lowest, 12 + (step / 10.0), [one.Count, other.Count], [one.Gauge, other.Gauge]);
                    if (!SmallSite.WithoutFaultsUnknown.Check(tried.Assess()).Any(f => f.Severity >= Severity.Failure)) least = cost;
                }
            }
        }

        return least;
    }

    private static double Cost((int Count, int Gauge) choice, double meters) => choice is (1, 18)
        ? 0
        : Prices.Visit + (meters * (Prices.PullingAMeter + Prices.OfAMeter(Pair(choice.Gauge))));

    private static Cable Pair(int gauge, int count = 1) =>
        Cable.Pair(new Conductor(WireSize.Awg(gauge), Stranding.ClassB, ConductorMaterial.AnnealedCopper).InParallel(count));

    private static Site TwoRuns(double near, double far, double lowest, double volts, int[] counts, int[] gauges)
    {
        Device camera = SmallSite.Camera(SmallSite.Watts(9), SmallSite.Range(lowest, 13.2));
        var output = new DcOutput(SmallSite.Volts(12), ElectricCurrent.FromAmperes(10), Ratio.Zero, SmallSite.Range(12, 14), SmallSite.Volts(volts));
        return new Site("site", [Condition.Day(SmallSite.At())], [SmallSite.Box(new Supply("supply", output, Derating.GenericEnclosed))],
            [
                new SiteRun(RunOrigin.Output(SmallSite.BoxName, 1), "place 1", new CableRun(Pair(gauges[0], counts[0]), Length.FromMeters(near))),
                new SiteRun(RunOrigin.Output(SmallSite.BoxName, 2), "place 2", new CableRun(Pair(gauges[1], counts[1]), Length.FromMeters(far))),
            ],
            [new SiteDevice("camera 1", camera, "place 1"), new SiteDevice("camera 2", camera, "place 2")]);
    }

    private static FindingRemedies Of(Site site, string rule) =>
        Assert.Single(site.FindRemedies(SmallSite.WithoutFaultsUnknown, Prices), f => f.Finding.Rule == rule);

    private static Site Long(Supply supply, double lowest) => new("site", [Condition.Day(SmallSite.At())], [SmallSite.Box(supply, outputs: 1)],
        [new SiteRun(RunOrigin.Output(SmallSite.BoxName, 1), "place 1", new CableRun(Pair(18), Length.FromMeters(60)))],
        [new SiteDevice("camera 1", SmallSite.Camera(SmallSite.Watts(9), SmallSite.Range(lowest, 15)), "place 1")]);

    private static Site Star(Supply supply, ProtectiveDevice protection, int count) =>
        SmallSite.Star(SmallSite.Box(supply, protection: protection), [Condition.Day(SmallSite.At())],
            [.. Enumerable.Repeat((0.1, SmallSite.Camera(SmallSite.Watts(9.6))), count)]);

    private static ElectronicLimit Limit(double amperes) => new("limit", ElectricCurrent.FromAmperes(amperes), Ratio.Zero, Duration.FromMilliseconds(5),
        ElectricResistance.FromMilliohms(10), SmallSite.Volts(30));

    private static bool IsOf(Finding one, Finding other) => one.Rule == other.Rule && one.About.Kind == other.About.Kind && one.About.Name == other.About.Name;
}
