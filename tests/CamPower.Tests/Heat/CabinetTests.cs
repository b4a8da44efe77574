using System;
using System.Collections.Generic;
using System.Linq;
using CamPower.Tests.Sites;
using CamPower.Tests.Working;
using FsCheck;
using FsCheck.Fluent;
using UnitsNet;
using static CamPower.Tests.Sites.SmallSite;

namespace CamPower.Tests.Heat;

/// <summary>Boxes in one cabinet warm each other; boxes in enclosures of their own do not.</summary>
public class CabinetTests
{
    private static readonly Enclosure OnWall = new(Length.FromMeters(0.3), Length.FromMeters(0.4), Length.FromMeters(0.15),
        EnclosureWall.PaintedSteel, EnclosureFaces.OnWall, otherHeat: Power.FromWatts(2));

    private static readonly Cabinet Cabinet = new("cabinet", OnWall);

    // By hand: 12 V at 4 A and 90 % lose 48/9 = 5.333 W, 24 V at 2 A and 80 % lose 12 W; 2 W beside, once.
    [Fact]
    public void TwoBoxes_HeatAsOneWithTheSummedLosses()
    {
        BoxInCondition[] both = Solved(Box("a", 12, 0.9, 4).WithCabinet(Cabinet), Box("b", 24, 0.8, 2).WithCabinet(Cabinet));
        double expected = HeatedEnclosure.Of(OnWall, Power.FromWatts((48 / 9.0) + 12 + 2), Air).Inside.DegreesCelsius;
        Assert.All(both, box => Assert.Equal(expected, box.InsideTemperature!.Value.DegreesCelsius, 1e-9));
        Assert.Equal([12, 48 / 9.0], both.Select(b => Math.Round((double)b.Losses!.Neighbors.Watts, 9)).ToArray(), (a, b) => Math.Abs(a - b) < 1e-6);
        Assert.All(both, box => Assert.Equal((48 / 9.0) + 14, (double)box.Losses!.Total.Watts, 1e-9));
        Assert.All(both, box => Steps.AssertEvaluate(box.Explain()));
        Assert.All(both, box => Steps.AssertRenders(box.Explain()));
    }

    // Two halves of a supply in one cabinet are as warm as the whole one in the same enclosure.
    [Fact]
    public void TwoHalves_AreAsWarmAsTheWhole()
    {
        double halves = Inside(Box("a", 12, 0.85, 3).WithCabinet(Cabinet), Box("b", 12, 0.85, 3).WithCabinet(Cabinet))[0];
        Assert.Equal(Inside(Box("a", 12, 0.85, 6).WithEnclosure(OnWall))[0], halves, 1e-9);
    }

    [Fact]
    public void EnclosuresOfTheirOwn_DoNotWarmEachOther()
    {
        double alone = Inside(Box("a", 12, 0.9, 4).WithEnclosure(OnWall))[0];
        Assert.Equal(alone, Inside(Box("a", 12, 0.9, 4).WithEnclosure(OnWall), Box("b", 24, 0.8, 2).WithEnclosure(OnWall))[0]);
        Assert.Equal(alone, Inside(Box("a", 12, 0.9, 4).WithCabinet(Cabinet), Box("b", 24, 0.8, 2).WithCabinet(new Cabinet("other", OnWall)))[0]);
        Assert.Equal(alone, Inside(Box("a", 12, 0.9, 4).WithCabinet(Cabinet), Box("b", 24, 0.8, 2))[0]);
        Assert.True(Inside(Box("a", 12, 0.9, 4).WithCabinet(Cabinet), Box("b", 24, 0.8, 2).WithCabinet(Cabinet))[0] > alone + 5);
    }

    // The neighbor's heat derates this supply, and lowers what its resettable fuse holds until it may trip.
    [Fact]
    public void Neighbor_DeratesTheSupplyAndTheResettableFuse()
    {
        DistributionBox a = DistributionBox.OfEqualOutputs("a", Dc(12, 10).WithEfficiency(0.9), 1, ElectricCurrent.FromAmperes(5), ResettableFuse.Generic16Volt[1]);
        DistributionBox hot = Box("b", 24, 0.7, 3);
        SiteAssessment apart = Site(a.WithEnclosure(OnWall), hot.WithEnclosure(OnWall)).Assess(), together = Site(a.WithCabinet(Cabinet), hot.WithCabinet(Cabinet)).Assess();
        Assert.Equal(10, apart.Boxes[0].Worst.DeratedRating.Amperes);
        Assert.True(together.Boxes[0].Worst.DeratedRating.Amperes < 9);
        Assert.DoesNotContain(RuleSet.Standard.Check(apart), f => f.Rule == "nuisance-trip" && f.Severity == Severity.Failure);
        Assert.Equal("a output 1", Assert.Single(RuleSet.Standard.Check(together), f => f.Rule == "nuisance-trip" && f.Severity == Severity.Failure).About.Name);
    }

    // Nobody knows what one of them loses: nobody knows how warm it is for either, and the finding is of the one.
    [Fact]
    public void UnknownLosses_LeaveTheWholeCabinetUnknown()
    {
        Site site = Site(Box("a", 12, 0.9, 1).WithCabinet(Cabinet), DistributionBox.OfEqualOutputs("b", Dc(12, 10), 1, ElectricCurrent.FromAmperes(5)).WithCabinet(Cabinet));
        SiteAssessment solved = site.Assess();
        Assert.All(solved.Boxes, b => Assert.Null(b.Worst.InsideTemperature));
        Finding finding = Assert.Single(RuleSet.Standard.Check(solved), f => f.Rule == "enclosure-temperature-unknown");
        Assert.Equal("b", finding.About.Name);
        Assert.Contains("the temperature in cabinet is unknown", finding.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Site_ListsItsCabinetsOnce_AndRefusesTwoOfOneName()
    {
        Assert.Same(Cabinet, Assert.Single(Site(Box("a", 12, 0.9, 1).WithCabinet(Cabinet), Box("b", 12, 0.9, 1).WithCabinet(Cabinet), Box("c", 12, 0.9, 1).WithEnclosure(OnWall)).Cabinets));
        ArgumentException refused = Assert.Throws<ArgumentException>(() => Site(Box("a", 12, 0.9, 1).WithCabinet(Cabinet), Box("b", 12, 0.9, 1).WithCabinet(new Cabinet("cabinet", OnWall))));
        Assert.Contains("another cabinet is named cabinet already", refused.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Box_LeavesItsCabinetForAnEnclosureOfItsOwn()
    {
        DistributionBox box = Box("a", 12, 0.9, 1).WithCabinet(Cabinet);
        Assert.Same(Cabinet, box.Cabinet);
        Assert.Same(OnWall, box.Enclosure);
        Assert.Null(box.WithEnclosure(OnWall).Cabinet);
        Assert.Throws<ArgumentNullException>(() => box.WithCabinet((Cabinet)null!));
        Assert.Throws<ArgumentNullException>(() => new Cabinet("cabinet", null!));
        Assert.Throws<ArgumentException>(() => new Cabinet(" ", OnWall));
    }

    // A 10 A supply that would do in an enclosure of its own is too weak beside a neighbor that heats the cabinet.
    [Fact]
    public void SmallestBox_CountsTheNeighborsHeat()
    {
        DistributionBox[] catalog = [Candidate("small", 10), Candidate("large", 14)];
        string Chosen(DistributionBox box, DistributionBox neighbor) => Site(box, neighbor).SmallestBoxFor("a", catalog, SizingPolicy.CommonPractice).Chosen!.Name;
        Assert.Equal("small", Chosen(Box("a", 12, 0.9, 7.5).WithEnclosure(OnWall), Box("b", 24, 0.8, 3).WithEnclosure(OnWall)));
        Assert.Equal("large", Chosen(Box("a", 12, 0.9, 7.5).WithCabinet(Cabinet), Box("b", 24, 0.8, 3).WithCabinet(Cabinet)));
    }

    // Whatever is in it: one more box never cools it, and the order of the boxes is nothing.
    [SeededProperty(MaxTest = 200)]
    public Property OneMoreBox_NeverCools()
    {
        Gen<DistributionBox[]> boxes = Gen.Choose(1, 3).SelectMany(count => Gen.Two(Gen.Choose(1, 90)).ListOf(count))
            .Select(numbers => numbers.Select((n, i) => Box($"box {i}", n.Item1 % 2 == 0 ? 12 : 24, (5 + n.Item1) / 100.0, n.Item2 / 10.0).WithCabinet(Cabinet)).ToArray());
        return Prop.ForAll(boxes.ToArbitrary(), some =>
        {
            double before = Inside(some)[0], after = Inside([.. some, Box("one more", 12, 0.9, 1).WithCabinet(Cabinet)])[0];
            double[] reversed = Inside([.. some.Reverse()]);
            Assert.True(after > before);
            Assert.All(reversed, inside => Assert.Equal(before, inside, 1e-9));
        });
    }

    private static Temperature Air => Temperature.FromDegreesCelsius(40);

    private static DistributionBox Box(string name, double volts, double efficiency, double amperes) => DistributionBox.OfEqualOutputs(
        name, Dc(volts, 10).WithEfficiency(efficiency), 1, ElectricCurrent.FromAmperes(amperes));

    private static DistributionBox Candidate(string name, double amperes) =>
        DistributionBox.OfEqualOutputs(name, Dc(amperes: amperes).WithEfficiency(0.9), 4, ElectricCurrent.FromAmperes(9));

    // Each box feeds one camera: as much as the limit of its output, or 0.85 A behind a protective device.
    private static Site Site(params DistributionBox[] boxes) => new("site", [Condition.Day(At(box: 40))], boxes,
        boxes.Select(b => new SiteRun(RunOrigin.Output(b.Name, 1), b.Name, Runs.OfOhms(0))),
        boxes.Select(b => new SiteDevice("camera of " + b.Name, Camera(Amperes(b.Outputs[0].Protection is null ? b.Outputs[0].Limit.Amperes : 0.85)), b.Name)));

    private static BoxInCondition[] Solved(params DistributionBox[] boxes) => [.. Site(boxes).Assess().Boxes.Select(b => b.Worst)];

    private static double[] Inside(params DistributionBox[] boxes) => [.. Solved(boxes).Select(b => b.InsideTemperature!.Value.DegreesCelsius)];
}
