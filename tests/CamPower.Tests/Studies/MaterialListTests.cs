using System.Linq;
using CamPower.Tests.Protection;
using CamPower.Tests.Sites;
using UnitsNet;
using static CamPower.Tests.Sites.SmallSite;

namespace CamPower.Tests.Studies;

/// <summary>What is ordered for a site, counted by hand.</summary>
public class MaterialListTests
{
    private static readonly Cable Pair = Cable.Pair(WireSize.Awg(18), Stranding.Solid, ConductorMaterial.AnnealedCopper);

    // 10 m, 20 m and 12 m of route with 10 % of slack and half a meter at each end: 12 m, 23 m and 14.2 m. A fifth of 8 fuses are 1.6: 2 spares.
    [Fact]
    public void Quantities_AreThoseOfTheSite()
    {
        MaterialList list = Of(SmallDevices.Fuse(FuseCharacteristic.IecQuickActing, 2));
        Assert.Equal([12.0, 23.0, 14.2], list.Pulls.Select(p => System.Math.Round(p.Cut.Meters, 9)));
        Assert.Equal([("cable", 49.2), ("joint", 1.0), ("protective device", 8.0), ("spare fuse", 2.0), ("box", 2.0)], list.Lines.Select(l => (l.Kind, System.Math.Round(l.Quantity, 9))));
        Assert.DoesNotContain(Of(SmallDevices.Printed(1.10)).Lines, l => l.Kind == "spare fuse");
    }

    [Fact]
    public void ALabel_SaysWhereTheCableGoes()
    {
        MaterialList list = Of(ProtectiveDevice.None);
        string from = list.Pulls[0].Run.From.ToString()!;
        Assert.Equal([($"{from}: to one", $"joint 1 of the run to one: from {from}"), ("joint 1 of the run to one: to one", $"one: from {from}")],
            list.Pulls.Take(2).Select(p => (p.StartLabel, p.EndLabel)));
    }

    // 10 points and 2 for each ampere (the library's own neutral prices); two boxes are twice one.
    [Fact]
    public void Prices_AreSummed()
    {
        Assert.Equal(20, PriceList.Neutral.Of(Dc(amperes: 5)), 1e-9);
        MaterialLine boxes = Of(ProtectiveDevice.None).Lines.Single(l => l.Kind == "box");
        Assert.Equal(2 * PriceList.Neutral.Of(Box(Dc(amperes: 5))), boxes.Cost, 1e-9);
    }

    private static MaterialList Of(ProtectiveDevice device)
    {
        DistributionBox box = Box(Dc(amperes: 5), protection: device);
        var run = new CableRun(new CableSegment(Pair, Length.FromMeters(10)), new Joint("splice", ElectricResistance.FromOhms(0.01)), new CableSegment(Pair, Length.FromMeters(20)));
        var site = new Site("site", [Condition.Day(At())], [box, box.WithName("other")],
            [new SiteRun(RunOrigin.Output(BoxName, 1), "one", run), new SiteRun(RunOrigin.Output("other", 1), "two", new CableRun(Pair, Length.FromMeters(12)))],
            [new SiteDevice("first", Camera(Amperes(0.1)), "one"), new SiteDevice("second", Camera(Amperes(0.1)), "two")]);
        return site.ListMaterial(MaterialPolicy.CommonPractice, PriceList.Neutral);
    }
}
