using System;
using System.Collections.Generic;
using System.Linq;
using CamPower.Tests.Assessment.Returns;
using CamPower.Tests.Sites;
using UnitsNet;
using static CamPower.Tests.Sites.SmallSite;

namespace CamPower.Tests.Studies;

/// <summary>The fewest boxes that will do. Cameras draw constant current at the box itself, so that every sum is done in the head.</summary>
public class BoxSplitTests
{
    private static readonly SizingPolicy Common = SizingPolicy.CommonPractice, NoRoom = new(Ratio.Zero, Ratio.FromPercent(100));

    // With a quarter spare, 12 of 16 outputs may be used: 30 want three boxes, for 24 is the most that two have. 27 A over 80 % are
    // 33.75 A, so that two boxes of 20 A would do for the current. Of 12 outputs nine may be used, of 8 six: the least that take 30 cameras
    // are three boxes of 50 A together.
    [Fact]
    public void Generic_ThirtyCameras_WantThreeBoxes_ForTheirOutputs()
    {
        BoxSplit split = Of(Enumerable.Repeat(0.9, 30)).SplitFor(BoxName, BoxCatalog.Generic, Common);
        Assert.Equal((3, true), (split.LeastNumber, split.IsProvenLeast));
        Assert.Equal("too few outputs: 24, and 30 are wanted", split.Binding!.ToString());
        Assert.Equal(50, split.Boxes.Sum(b => b.Box.Supply.Output.RatedCurrent.Amperes));
        Assert.All(split.Boxes, b => Assert.True(b.Outputs.Count <= 0.8 * b.Box.Outputs.Count));
        Assert.Equal(30, split.Boxes.Sum(b => b.Outputs.Count));
        Assert.StartsWith("3, proven least; with one fewer: too few outputs", split.ToString(), StringComparison.Ordinal);
    }

    // 12 cameras of 1.05 A at 60 °C: 15.75 A over 80 %, and a 20 A supply keeps 15 A: two boxes. One has 12 outputs to use.
    [Fact]
    public void Generic_InAWarmRoom_TheRatingBinds()
    {
        BoxSplit split = Of(Enumerable.Repeat(1.05, 12), boxCelsius: 60).SplitFor(BoxName, Unprotected(b => b.Supply), Common);
        Assert.Equal((2, true, BoxConstraint.Rating), (split.LeastNumber, split.IsProvenLeast, split.Binding!.Constraint));
        Assert.Equal("its supply is too weak: 15 A, and 15.75 A is wanted in day", split.Binding.ToString());
    }

    // Three of 3 A want 9 A, so two supplies of 5 A have enough of everything; but no two go into one box.
    [Fact]
    public void Parts_ThatDoNotDivide_AreProvenByTryingEveryWay()
    {
        BoxSplit split = Of([3, 3, 3]).SplitFor(BoxName, [Box("b", 4, 5, 5)], NoRoom);
        Assert.Equal((3, 3, true), (split.Boxes.Count, split.LeastNumber, split.IsProvenLeast));
        Assert.Null(split.Binding);
    }

    [Fact]
    public void OneBox_IsASplitOfOne_AndKeepsItsName()
    {
        BoxSplit split = Of([0.9, 0.9]).SplitFor(BoxName, BoxCatalog.Generic, Common);
        BoxShare share = Assert.Single(split.Boxes);
        Assert.Equal((BoxName, "4 outputs, 5 A", true), (share.Box.Name, share.CatalogName, split.IsProvenLeast));
        Assert.Null(split.Binding);
    }

    [Fact]
    public void None_NamesTheOutputsThatAreTooMuch()
    {
        Site site = Of([0.5, 1.2, 0.5, 1.3]);
        BoxSplit split = site.SplitFor(BoxName, BoxCatalog.Generic, Common);
        Assert.Empty(split.Boxes);
        Assert.Same(site, split.Site);
        Assert.Equal([2, 4], split.Misfits.Select(m => m.Output.Number));
        Assert.Equal((0, false), (split.LeastNumber, split.IsProvenLeast));
        Assert.Equal("none: too much for every box: box output 2 (50 A): day: 1.2 A; box output 4 (50 A): day: 1.3 A", split.ToString());
        Assert.Equal(4, site.SplitFor(BoxName, [], Common).Misfits.Count);
    }

    // Outputs of 2 A and 1 A: the camera of 1.5 A goes to the strong one, whatever its number was.
    [Fact]
    public void Outputs_AreWiredSoThatTheyMayCarryIt()
    {
        var uneven = new DistributionBox("uneven", Dc(amperes: 3), [new BoxOutput(1, Amps(1)), new BoxOutput(2, Amps(2))]);
        BoxSplit split = Of([0.5, 1.5, 1.5]).SplitFor(BoxName, [uneven], NoRoom);
        Assert.Equal(2, split.Boxes.Count);
        Assert.All(split.Site.Assess().Boxes.SelectMany(b => b.Outputs), o => Assert.True(o.Worst.Current.Amperes <= o.Output.Limit.Amperes));
    }

    // Two cameras whose shields meet at the recorder hang together: 2 · 2 A go into no box of 3 A, alone each would.
    [Fact]
    public void Outputs_WhoseReturnsMeet_StayTogether_AndTheBondGoesWithThem()
    {
        DistributionBox three = Box("three", 2, 3, 3), five = Box("five", 2, 5, 3);
        Site site = ReturnSites.Of([ReturnSites.Box("a", 12, 0)], [ReturnSites.Run("a", 1, "1", 0.1), ReturnSites.Run("a", 2, "2", 0.1), ReturnSites.Run("a", 3, "3", 0.1)],
            [ReturnSites.Amperes(1, 2), ReturnSites.Amperes(2, 2), ReturnSites.Amperes(3, 2)], [ReturnSites.Link(1, "g", 0.9), ReturnSites.Link(2, "g", 0.9)], [ReturnSites.Bond("g", "a", 0.1)]);
        Assert.Equal([1, 2], site.SplitFor("a", [three], NoRoom).Misfits.Select(m => m.Output.Number));

        BoxSplit split = site.SplitFor("a", [three, five], NoRoom);
        BoxShare pair = split.Boxes.Single(b => b.CatalogName == "five");
        Assert.Equal([1, 2], pair.Outputs.Select(o => o.From.Number));
        Assert.Equal(pair.Box.Name, Assert.Single(split.Site.Bonds).Box);
        Assert.Equal(Shields(site), Shields(split.Site));

        static IEnumerable<double> Shields(Site solved) => solved.Assess().Shields.Select(s => Math.Round(s.InConditions[0].DcShift.Volts, 12));
    }

    // How a run lies and what somebody tied are what they were; the tie's unused end lands on an output that is free.
    [Fact]
    public void InstallationMethodAndTies_GoWithTheOutputs()
    {
        Site three = Of([3, 3, 3]);
        Site site = new("site", three.Conditions, three.Boxes, three.Runs.Select(r => new SiteRun(r.From, r.To, r.Run, installationMethod: InstallationMethod.LargeBundle)), three.Devices,
            ties: [new OutputTie(BoxName, 1, BoxName, 2), new OutputTie(BoxName, 3, BoxName, 40), new OutputTie(BoxName, 40, BoxName, 41)]);
        BoxSplit split = site.SplitFor(BoxName, [Box("b", 4, 5, 5)], NoRoom);
        Assert.Equal(3, split.Boxes.Count);
        Assert.All(split.Site.Runs, run => Assert.Same(InstallationMethod.LargeBundle, run.InstallationMethod));
        Assert.Equal(["tie of box 1 output 1 and box 2 output 1", "tie of box 3 output 1 and box 3 output 2", "tie of box 3 output 2 and box 3 output 3"], split.Site.Ties.Select(t => t.ToString()));
        Assert.Equal(3, RuleSet.Standard.Check(split.Site.Assess()).Count(f => f.Rule == "outputs-tied-together"));
    }

    // What hangs on the wall and at the receptacle in the place of the present box is there and at that receptacle.
    [Fact]
    public void EnclosureAndReceptacle_AreThoseOfThePresentBox_WhereTheCatalogDeclaresNone()
    {
        var receptacle = new Receptacle("receptacle", Volts(120), Amps(15));
        Site site = Star(SmallSite.Box(Dc().WithEfficiency(0.9)).WithEnclosure(Outdoors).WithReceptacle(receptacle), [Condition.Day(At())], (0, Camera(Amperes(3))), (0, Camera(Amperes(3))));
        BoxSplit split = site.SplitFor(BoxName, [DistributionBox.OfEqualOutputs("b", Dc(amperes: 5).WithEfficiency(0.9), 4, Amps(5))], NoRoom);
        Assert.Equal(2, split.Boxes.Count);
        Assert.All(split.Site.Boxes, b => Assert.Equal((receptacle, 0.3), (b.Receptacle, b.Enclosure!.Width.Meters)));
    }

    // Rated from −20 °C, and the whole load warms the box to that in 25 °C of frost: one box is the answer, none feeds a camera alone.
    [Theory]
    [InlineData(-21)]
    [InlineData(-25)]
    public void InTheCold_WhatWarmsTheBoxTogether_IsNotTornApart(double celsius)
    {
        DistributionBox box = SmallSite.Box(Dc(amperes: 10).WithEfficiency(0.8), outputs: 9, limit: 1.1).WithEnclosure(Outdoors);
        Site site = Star(box, [Condition.Night(At(box: celsius))], [.. Enumerable.Repeat((0.0, Camera(Watts(9))), 6)]);
        Assert.Equal(BoxName, site.SmallestBoxFor(BoxName, [box], Common).Chosen?.Name);
        BoxSplit split = site.SplitFor(BoxName, [box], Common);
        Assert.Equal((1, true), (split.Boxes.Count, split.IsProvenLeast));
        Assert.DoesNotContain(RuleSet.Standard.Check(split.Site.Assess()), f => f.Rule == "supply-above-derated-rating");
    }

    // At 60 °C of frost nothing warms it enough, and in 75 °C there is no rating left: all are misfits, and there is an end to the search.
    [Theory]
    [InlineData(-60)]
    [InlineData(75)]
    public void WhereNoBoxMayRun_AllAreMisfits(double celsius)
    {
        DistributionBox box = SmallSite.Box(Dc(amperes: 10).WithEfficiency(0.8), outputs: 9, limit: 1.1).WithEnclosure(Outdoors);
        BoxSplit split = Star(box, [Condition.Night(At(box: celsius))], [.. Enumerable.Repeat((0.0, Camera(Watts(9))), 6)]).SplitFor(BoxName, [box], Common);
        Assert.Equal((0, 6), (split.Boxes.Count, split.Misfits.Count));
    }

    [Fact]
    public void Names_AreFreeOnes()
    {
        Site one = Of([3, 3]);
        var site = new Site("site", one.Conditions, [.. one.Boxes, Box("box 1", 1, 1, 1)], one.Runs, one.Devices);
        Assert.Equal(["box 2", "box 3"], site.SplitFor(BoxName, [Box("b", 4, 5, 5)], NoRoom).Boxes.Select(b => b.Box.Name));
    }

    // Every way of putting up to six outputs into groups, and of a box for each group, by bare sums.
    [SeededProperty(MaxTest = 150)]
    public void Fewest_IsWhatTryingEveryGroupingFinds(int seed)
    {
        var random = new Random(seed);
        double[] amperes = [.. Enumerable.Range(0, random.Next(1, 7)).Select(_ => Math.Round(0.2 + (2 * random.NextDouble()), 1))];
        DistributionBox[] catalog = [.. Enumerable.Range(0, random.Next(1, 4)).Select(i => Box($"type {i}", random.Next(1, 5), random.Next(2, 7), 0.5 + (2.5 * random.NextDouble())))];
        SizingPolicy policy = random.Next(2) == 0 ? NoRoom : Common;
        BoxSplit split = Of(amperes).SplitFor(BoxName, catalog, policy);

        (int Number, double Amperes)? best = null;
        foreach (List<List<double>> groups in Groupings(amperes, amperes.Length))
        {
            double[] smallest = [.. groups.Select(g => catalog.Where(b => Takes(b, g)).Select(b => b.Supply.Output.RatedCurrent.Amperes).DefaultIfEmpty(double.NaN).Min())];
            if (smallest.Any(double.IsNaN)) continue;
            (int Number, double Amperes) found = (groups.Count, smallest.Sum());
            if (best is null || found.Number < best.Value.Number || (found.Number == best.Value.Number && found.Amperes < best.Value.Amperes)) best = found;
        }

        Assert.Equal(best?.Number ?? 0, split.Boxes.Count);
        Assert.Equal(best is not null, split.IsProvenLeast);
        Assert.Equal(best?.Amperes ?? 0, split.Boxes.Sum(b => b.Box.Supply.Output.RatedCurrent.Amperes), 1e-9);

        bool Takes(DistributionBox box, List<double> group)
        {
            bool isCommon = ReferenceEquals(policy, Common);
            double outputs = isCommon ? Math.Ceiling(1.25 * group.Count) : group.Count, share = isCommon ? 0.8 : 1;
            return outputs <= box.Outputs.Count && group.Max() <= box.Outputs[0].Limit.Amperes && group.Sum() <= box.Supply.Output.RatedCurrent.Amperes * share * (1 + 1e-9);
        }
    }

    // The rules judge the divided site: nothing is overloaded, every device is there once and gets the same as before.
    [SeededProperty(MaxTest = 60)]
    public void DividedSite_PassesTheRules_AndFeedsEverythingAsBefore(int seed)
    {
        var random = new Random(seed);
        (double, Device)[] cameras = [.. Enumerable.Range(0, random.Next(1, 60)).Select(_ => (random.NextDouble(), Camera(Watts(1 + (random.NextDouble() * 9)))))];
        Site site = Star(SmallSite.Box(outputs: 60), [Condition.Day(At(box: 25 + (40 * random.NextDouble())))], cameras);
        var catalog = Unprotected(b => Dc(amperes: b.Supply.Output.RatedCurrent.Amperes));
        BoxSplit split = site.SplitFor(BoxName, catalog, Common);

        SiteAssessment before = site.Assess(), after = split.Site.Assess();
        Assert.NotEmpty(split.Boxes);
        Assert.InRange(split.LeastNumber, 1, split.Boxes.Count);
        Assert.DoesNotContain(RuleSet.Standard.Check(after), f => f.Rule is "output-overloaded" or "supply-above-derated-rating" or "supply-above-headroom-policy");
        Assert.All(after.Boxes, b => Assert.True(Math.Ceiling((1.25 * b.Outputs.Count) - 1e-9) <= b.Box.Outputs.Count));
        Assert.Equal(before.Devices.Select(d => (d.Device.Name, d.Worst.Voltage.Volts)), after.Devices.Select(d => (d.Device.Name, d.Worst.Voltage.Volts)));
        Assert.Equal(split.Boxes.SelectMany(b => b.Outputs).SelectMany(o => o.Devices).Select(d => d.Name).Order(), site.Devices.Select(d => d.Name).Order());
        Assert.All(split.Boxes.SelectMany(b => b.Outputs, (b, o) => (b.Box, o)), x =>
            Assert.All(x.o.Devices, d => Assert.Equal((x.Box.Name, x.o.To.Number), (after.Devices.Single(a => a.Device.Name == d.Name).Box.Name, after.Devices.Single(a => a.Device.Name == d.Name).Output.Number))));
        Assert.Equal(split.ToString(), site.SplitFor(BoxName, catalog, Common).ToString());
    }

    // Sixty-four unlike cameras, so that no two are alike and not every way can be tried: an answer all the same.
    [Fact]
    public void ManyUnlikeCameras_GiveAnAnswer_ThatSaysWhetherItIsProven()
    {
        BoxSplit split = Of(Enumerable.Range(0, 64).Select(i => 2.7 + (0.0187 * i))).SplitFor(BoxName, [Box("a", 8, 10, 4), Box("b", 8, 20, 4), Box("c", 16, 30, 4)], NoRoom);
        Assert.InRange(split.Boxes.Count, split.LeastNumber, split.LeastNumber + 1);
        Assert.Equal(split.Boxes.Count == split.LeastNumber, split.IsProvenLeast);
        Assert.DoesNotContain(RuleSet.Standard.Check(split.Site.Assess()), f => f.Rule is "output-overloaded" or "supply-above-derated-rating");
    }

    [Fact]
    public void ImpossibleArguments_Throw()
    {
        Site site = Of([0.1]);
        Assert.Throws<ArgumentNullException>("site", () => SiteQuestions.SplitFor(null!, BoxName, [], Common));
        Assert.Throws<ArgumentNullException>("catalog", () => site.SplitFor(BoxName, null!, Common));
        Assert.Throws<ArgumentNullException>("policy", () => site.SplitFor(BoxName, [], null!));
        Assert.Throws<ArgumentException>("boxName", () => site.SplitFor("no such box", [], Common));
    }

    private static Enclosure Outdoors => new(Length.FromMeters(0.3), Length.FromMeters(0.4), Length.FromMeters(0.15), EnclosureWall.PaintedSteel, EnclosureFaces.OnWall);

    private static ElectricCurrent Amps(double amperes) => ElectricCurrent.FromAmperes(amperes);

    private static DistributionBox Box(string name, int outputs, double amperes, double limit) => DistributionBox.OfEqualOutputs(name, Dc(amperes: amperes), outputs, Amps(limit));

    private static Site Of(IEnumerable<double> amperes, double boxCelsius = 25) =>
        Star(SmallSite.Box(outputs: 64), [Condition.Day(At(box: boxCelsius))], [.. amperes.Select(a => (0.0, Camera(Amperes(a))))]);

    // Each output joins a group that is there, or begins one.
    // The generic boxes without their resettable fuses.
    private static IEnumerable<DistributionBox> Unprotected(Func<DistributionBox, Supply> supply) => BoxCatalog.Generic
        .Select(b => DistributionBox.OfEqualOutputs(b.Name, supply(b), b.Outputs.Count, b.Outputs[0].Limit));

    private static IEnumerable<List<List<double>>> Groupings(double[] amperes, int count)
    {
        if (count == 0) return [[]];
        return Groupings(amperes, count - 1).SelectMany(rest => Enumerable.Range(0, rest.Count + 1).Select(g =>
        {
            List<List<double>> groups = [.. rest.Select(r => new List<double>(r))];
            if (g == groups.Count) groups.Add([]);
            groups[g].Add(amperes[count - 1]);
            return groups;
        }));
    }
}
