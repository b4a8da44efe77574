using System.Linq;
using CamPower.Tests.Protection;
using CamPower.Tests.Sites;
using UnitsNet;
using static CamPower.Tests.Sites.SmallSite;

namespace CamPower.Tests.Faults;

/// <summary>The condition in which most devices suffer from a short, and what an unknown temperature leaves unknown. By hand.</summary>
public class SeasonOfTheDarkTests
{
    // A supply that holds 5 A. Summer: the others take 0.41 A, and 4.59 A through 27 m of 0.5 mm² at 60 °C (2.155 Ω) and the 0.1 Ω of its fuse leave 10.3 V: the camera that drops out at 11 V is dark.
    // Winter: they take 0.4 A, and 4.6 A through 1.57 Ω at −20 °C and the fuse leave 7.7 V: the one that drops out at 8.5 V is dark as well. Most suffer in winter, though most is drawn in summer.
    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void MostDark_IsTheConditionThatCounts(bool isSummerFirst)
    {
        Condition summer = new("summer", LoadComponents.Infrared, At(cable: 60)), winter = new("winter", LoadComponents.None, At(cable: -20));
        DistributionBox box = SmallFaultSite.Box(SmallDevices.Fuse(FuseCharacteristic.IecQuickActing, 6, ohms: 0.1), OverloadBehavior.ConstantCurrent(ElectricCurrent.FromAmperes(5)), outputs: 3);
        Device Dropping(double dropOut) => Camera(new ComponentDraw(Amperes(0.2), infrared: Amperes(0.005)), starting: Starts(dropOut + 0.5, dropOut));
        var site = new Site("site", isSummerFirst ? [summer, winter] : [winter, summer], [box],
            [new SiteRun(RunOrigin.Output(BoxName, 1), "far", SmallFault.Run(27)), SmallFaultSite.Run(RunOrigin.Output(BoxName, 2), "two", 0.01), SmallFaultSite.Run(RunOrigin.Output(BoxName, 3), "three", 0.01)],
            [new SiteDevice("first", Camera(Amperes(0.1), starting: Starts(6, 5)), "far"), new SiteDevice("second", Dropping(11), "two"), new SiteDevice("third", Dropping(8.5), "three")]);
        SupplyDuringFault supply = SmallFaultSite.ShortAt(site, "far").Supply;
        Assert.Equal(("winter", 2), (supply.Condition.Name, supply.Dark.Count));
        Assert.Equal(["second", "third"], supply.Dark.Select(d => d.Name));
    }

    // What is in an enclosure of unknown losses may be in hotter air: a resettable fuse that withstands a start in the air around may trip there; what trips it already does so hotter, too. What does
    // not depend on the air is known.
    [Theory]
    [InlineData("resettable", 1, Verdict.Unknown)]
    [InlineData("resettable", 2000, Verdict.Violated)]
    [InlineData("fuse", 1, Verdict.Holds)]
    public void InUnknownAir_AStartIsUnknown(string kind, double milliseconds, Verdict verdict)
    {
        var wall = new Enclosure(Length.FromMeters(0.3), Length.FromMeters(0.4), Length.FromMeters(0.15), EnclosureWall.PaintedSteel, EnclosureFaces.OnWall);
        ProtectiveDevice device = kind == "fuse" ? SmallDevices.Fuse(FuseCharacteristic.IecQuickActing, 4, meltingIntegral: 10) : SmallDevices.Printed(1.10);
        var camera = new Device("model", DeviceKind.Camera, new ComponentDraw(Amperes(0.1)), Wide, inrush: new Inrush(ElectricCurrent.FromAmperes(8), Duration.FromMilliseconds(milliseconds)));
        Judgment start = Star(Box(protection: device).WithEnclosure(wall), [Condition.Day(At())], (0, camera)).Assess().StudyFaults()[0].InConditions[0].Start!.Value;
        Assert.Equal(verdict, start.Verdict);
        Assert.Equal(verdict == Verdict.Unknown, start.NotStated?.Contains("efficiency", System.StringComparison.Ordinal) == true);
    }
}
