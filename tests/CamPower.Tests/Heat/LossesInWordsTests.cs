using System.Linq;
using CamPower.Heat;
using CamPower.Tests.Protection;
using CamPower.Tests.Sites;
using UnitsNet;
using static CamPower.Tests.Sites.SmallSite;

namespace CamPower.Tests.Heat;

/// <summary>What the losses of a box say of themselves: the load of the supply, whether they are a lower bound, and what the neighbors add.</summary>
public class LossesInWordsTests
{
    private static readonly Enclosure OnWall = new(Length.FromMeters(0.3), Length.FromMeters(0.4), Length.FromMeters(0.15),
        EnclosureWall.PaintedSteel, EnclosureFaces.OnWall, otherHeat: Power.FromWatts(2));

    // 12 V · 6 A · (1/0.9 − 1) = 8 W, 6² A² through 0.05 Ω 1.8 W, 2 W beside; 6 A are 60 % of 10 A.
    [Fact]
    public void Alone_TheyAreTheSupplyTheDevicesAndTheRest()
    {
        BoxLosses losses = Boxed(6, SmallDevices.Fuse(FuseCharacteristic.Blade, 10, ohms: 0.05));
        Assert.Equal("11.80 W: supply 8.00 W, devices 1.80 W, other 2.00 W", losses.ToString());
        Assert.Equal(["Lost in the supply, loaded to 60 % of its rating", "Lost in the devices of the outputs", "Heat lost in the box"], Means(losses));
    }

    // A device without resistance loses nothing, and is not spoken of.
    [Fact]
    public void ADeviceWithoutResistance_IsLeftOut() =>
        Assert.Equal(["Lost in the supply, loaded to 60 % of its rating", "Heat lost in the box"], Means(Boxed(6, SmallDevices.Fuse(FuseCharacteristic.Blade, 10, ohms: 0))));

    // Declared to 100 % of 10 A: 11 A lose at least 12 V · 10 A · (1/0.9 − 1) = 13.33 W, and 2 W beside.
    [Fact]
    public void BeyondTheCurve_TheyAreALowerBound()
    {
        BoxLosses losses = Boxed(11, null);
        Assert.Equal("at least 15.33 W: supply 13.33 W, devices 0.00 W, other 2.00 W", losses.ToString());
        Assert.Equal(["Lost in the supply at least: at 100 % of its rating, where its declared efficiency ends", "Heat lost in the box"], Means(losses));
    }

    // 12 V · 4 A · (1/0.8 − 1) = 12 W beside 12 V · 3 A · (1/0.9 − 1) = 4 W: each is the neighbor of the other; a neighbor beyond its curve makes a bound of both.
    [Theory]
    [InlineData(4, "18.00 W: supply 4.00 W, devices 0.00 W, neighbors 12.00 W, other 2.00 W", "Lost in the supply, loaded to 30 % of its rating")]
    [InlineData(11, "at least 36.00 W: supply 4.00 W, devices 0.00 W, neighbors 30.00 W, other 2.00 W", "Lost in the supply, loaded to 30 % of its rating")]
    public void InACabinet_TheyCountTheNeighbors(double neighborAmperes, string expected, string supply)
    {
        var cabinet = new Cabinet("cabinet", OnWall);
        DistributionBox a = DistributionBox.OfEqualOutputs("a", Dc(amperes: 10).WithEfficiency(0.9), 1, SmallDevices.Amperes(50)).WithCabinet(cabinet);
        DistributionBox b = DistributionBox.OfEqualOutputs("b", Dc(amperes: 10).WithEfficiency(0.8), 1, SmallDevices.Amperes(50)).WithCabinet(cabinet);
        var site = new Site("site", [Condition.Day(At())], [a, b], [new SiteRun(RunOrigin.Output("a", 1), "a", Runs.OfOhms(0)), new SiteRun(RunOrigin.Output("b", 1), "b", Runs.OfOhms(0))],
            [new SiteDevice("at a", Camera(Amperes(3)), "a"), new SiteDevice("at b", Camera(Amperes(neighborAmperes)), "b")]);
        BoxLosses losses = site.Assess().Boxes[0].Worst.Losses!;
        Assert.Equal(expected, losses.ToString());
        Assert.Equal([supply, "Heat lost in the cabinet, Pn of it by the other boxes"], Means(losses));
    }

    private static string[] Means(BoxLosses losses) => [.. losses.Explain().Steps.Where(s => s.Symbol != "g").Select(s => s.Meaning)];

    private static BoxLosses Boxed(double amperes, ProtectiveDevice? device)
    {
        DistributionBox box = DistributionBox.OfEqualOutputs(BoxName, Dc(amperes: 10).WithEfficiency(0.9), 1, SmallDevices.Amperes(50), device).WithEnclosure(OnWall);
        return Star(box, [Condition.Day(At())], (0, Camera(Amperes(amperes)))).Assess().Boxes[0].Worst.Losses!;
    }
}
