using System;
using System.Linq;
using CamPower.Tests.Protection;
using CamPower.Tests.Sites;
using UnitsNet;
using static CamPower.Tests.Sites.SmallSite;

namespace CamPower.Tests.Studies;

/// <summary>What choosing and comparing say and count, on sites small enough for the head.</summary>
public class StudyNumbersTests
{
    private static readonly SizingPolicy NoRoom = new(Ratio.Zero, Ratio.FromPercent(100));

    // Three of 0.9 A and a quarter of spare outputs fit 4 outputs and 5 A; four do not fit 4 outputs any more.
    [Fact]
    public void AChoice_SaysWhatItIsAndWhyNoSmallerOne()
    {
        Assert.Equal("4 outputs, 5 A", Of(0.9, 0.9, 0.9).SmallestBoxFor(BoxName, BoxCatalog.Generic, SizingPolicy.CommonPractice).ToString());
        BoxChoice larger = Of(0.9, 0.9, 0.9, 0.9).SmallestBoxFor(BoxName, BoxCatalog.Generic, SizingPolicy.CommonPractice);
        Assert.Equal("8 outputs, 10 A, the next smaller: too few outputs: 4, and 5 are wanted", larger.ToString());
        Assert.Equal("8 outputs, 10 A: will do", larger.Candidates[1].ToString());
    }

    [Fact]
    public void APolicy_SaysItsShares() => Assert.Equal("12.5 % spare outputs, loaded to 70 %", new SizingPolicy(Ratio.FromPercent(12.5), Ratio.FromPercent(70)).ToString());

    // Outputs that are alike keep their order, whatever they carry.
    [Fact]
    public void AlikeOutputs_KeepTheirOrder()
    {
        BoxShare share = Assert.Single(Of(0.5, 1.5, 1).SplitFor(BoxName, [Plain("four", 4)], NoRoom).Boxes);
        Assert.Equal([(1, 1), (2, 2), (3, 3)], share.Outputs.Select(o => (o.From.Number, o.To.Number)));
        BoxSplit split = Of(0.5, 1.5, 1).SplitFor(BoxName, [Plain("four", 4)], NoRoom);
        Assert.Equal("1, proven least: four", split.ToString());
    }

    // 5 m to a junction and 7 m behind it, and 4 m to another camera: 16 m of cable, however many devices use it.
    [Fact]
    public void Cable_CountsOnce()
    {
        Site site = new("site", [Condition.Day(At())], [Box()],
            [Run(RunOrigin.Output(BoxName, 1), "near", 5), Run(RunOrigin.Junction("near"), "far", 7), Run(RunOrigin.Output(BoxName, 2), "other", 4)],
            [new SiteDevice("first", Camera(Amperes(0.1)), "near"), new SiteDevice("second", Camera(Amperes(0.1)), "far"), new SiteDevice("third", Camera(Amperes(0.1)), "other")]);
        Assert.Equal(16, site.LayoutOf(BoxName).CableLength.Meters, 1e-9);

        static SiteRun Run(RunOrigin from, string to, double meters) => new(from, to, new CableRun(CableCatalog.Pair18, Length.FromMeters(meters)));
    }

    // What illuminators draw as they are switched on counts for a box as for a finding: 3 A for 2 ms on 0.5 A are (√0.018 + 0.5·√0.002)² = 0.025 A²s of the 0.5 A²s of a fuse F of 1 A;
    // 10 A for 10 ms are (1 + 0.05)² = 1.1 A²s. By day alone nothing is switched.
    [Theory]
    [InlineData(3, 2, LoadComponents.Infrared, true)]
    [InlineData(10, 10, LoadComponents.Infrared, false)]
    [InlineData(10, 10, LoadComponents.None, true)]
    public void ABox_MustStandWhatIsSwitchedOn(double amperes, double milliseconds, LoadComponents on, bool fits)
    {
        var camera = new Device("model", DeviceKind.Camera, new ComponentDraw(Amperes(0.5)), Wide, switchedInrush: new Inrush(Amps(amperes), Duration.FromMilliseconds(milliseconds)));
        DistributionBox offered = Plain("offered", 4, SmallDevices.Fuse(FuseCharacteristic.IecQuickActing, 1, meltingIntegral: 0.5));
        BoxChoice choice = Star(Box(), [new Condition("dusk", on, At())], (0, camera)).SmallestBoxFor(BoxName, [offered], NoRoom);
        Assert.Equal(fits, choice.Chosen is not null);
        if (fits) return;
        BoxShortfall binding = Assert.Single(choice.Binding);
        Assert.Equal((BoxConstraint.Protection, 10.5, 1), (binding.Constraint, ((ElectricCurrent)binding.Needed).Amperes, ((ElectricCurrent)binding.Has).Amperes));
    }

    private static Site Of(params double[] amperes) => Star(Box(outputs: amperes.Length), [Condition.Day(At())], [.. amperes.Select(a => (0.0, Camera(Amperes(a))))]);

    private static DistributionBox Plain(string name, int outputs, ProtectiveDevice? protection = null) =>
        DistributionBox.OfEqualOutputs(name, Dc(amperes: 10), outputs, Amps(5), protection);

    private static ElectricCurrent Amps(double amperes) => ElectricCurrent.FromAmperes(amperes);
}
