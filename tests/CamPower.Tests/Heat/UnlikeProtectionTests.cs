using System.Linq;
using CamPower.Tests.Protection;
using CamPower.Tests.Sites;
using UnitsNet;
using static CamPower.Tests.Sites.SmallSite;

namespace CamPower.Tests.Heat;

/// <summary>A box whose outputs are protected unlike one another: each is as warm as the air inside, whatever its neighbors are.</summary>
public class UnlikeProtectionTests
{
    private static readonly Enclosure OnWall = new(Length.FromMeters(0.3), Length.FromMeters(0.4), Length.FromMeters(0.15),
        EnclosureWall.PaintedSteel, EnclosureFaces.OnWall, otherHeat: Power.FromWatts(2));

    // 3² A² through the 0.2 Ω of a fuse, at any temperature; 5² A² through 0.14 Ω of a resettable fuse at 20 °C, 1 % more for every kelvin that the air inside is warmer.
    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void AFuseBesideAResettableFuse_DoesNotKeepItCool(bool isFuseFirst)
    {
        (ProtectiveDevice, double)[] outputs = [(SmallDevices.Fuse(FuseCharacteristic.Blade, 10, ohms: 0.2), 3), (SmallDevices.Printed(1.10), 5)];
        BoxInCondition box = Boxed(isFuseFirst ? outputs : [.. outputs.Reverse()]);
        double inside = box.InsideTemperature!.Value.DegreesCelsius;
        Assert.InRange(inside, 35, 84);
        Assert.Equal((9 * 0.2) + (25 * 0.14 * (1 + (0.01 * (inside - 20)))), (double)box.Losses!.Devices.Watts, 1e-5);
    }

    // One whose thermal curve ends at 30 °C grows no further; the other goes on with the air.
    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void EachResettableFuse_GrowsToTheEndOfItsOwnCurve(bool isShortFirst)
    {
        var brief = new ResettableFuse("brief", SmallDevices.Amperes(6), SmallDevices.Amperes(12), SmallDevices.Amperes(20), Duration.FromSeconds(3), ElectricResistance.FromOhms(0.07),
            ElectricResistance.FromOhms(0.11), SmallDevices.Curve((-10, 1.2), (20, 1), (30, 0.9)), Volts(16));
        (ProtectiveDevice, double)[] outputs = [(brief, 3), (SmallDevices.Printed(1.10), 5)];
        BoxInCondition box = Boxed(isShortFirst ? outputs : [.. outputs.Reverse()]);
        double inside = box.InsideTemperature!.Value.DegreesCelsius;
        Assert.InRange(inside, 35, 84);
        Assert.Equal((9 * 0.11 * 1.1) + (25 * 0.14 * (1 + (0.01 * (inside - 20)))), (double)box.Losses!.Devices.Watts, 1e-5);
    }

    // Of two boxes in one cabinet only one has a resettable fuse, which gets as warm as both make it.
    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void ABoxWithoutResettableFuses_DoesNotKeepItsNeighborCool(bool isPlainFirst)
    {
        var cabinet = new Cabinet("cabinet", OnWall);
        DistributionBox plain = In(cabinet, "plain", null), warming = In(cabinet, "warming", SmallDevices.Printed(1.10));
        var site = new Site("site", [Condition.Day(At(box: 28))], isPlainFirst ? [plain, warming] : [warming, plain],
            [new SiteRun(RunOrigin.Output("plain", 1), "p", Runs.OfOhms(0)), new SiteRun(RunOrigin.Output("warming", 1), "w", Runs.OfOhms(0))],
            [new SiteDevice("one", Camera(Amperes(3)), "p"), new SiteDevice("other", Camera(Amperes(5)), "w")]);
        BoxInCondition box = site.Assess().Boxes.Single(b => b.Box.Name == "warming").Worst;
        Assert.Equal(25 * 0.14 * (1 + (0.01 * (box.InsideTemperature!.Value.DegreesCelsius - 20))), (double)box.Losses!.Devices.Watts, 1e-5);

        static DistributionBox In(Cabinet cabinet, string name, ProtectiveDevice? device) =>
            DistributionBox.OfEqualOutputs(name, Dc(amperes: 10).WithEfficiency(0.9), 1, SmallDevices.Amperes(50), device).WithCabinet(cabinet);
    }

    private static BoxInCondition Boxed((ProtectiveDevice Device, double Amperes)[] outputs)
    {
        var box = new DistributionBox(BoxName, Dc(amperes: 10).WithEfficiency(0.9), [.. outputs.Select((o, i) => new BoxOutput(i + 1, SmallDevices.Amperes(50), o.Device))]);
        return Star(box.WithEnclosure(OnWall), [Condition.Day(At(box: 28))], [.. outputs.Select(o => (0.0, Camera(Amperes(o.Amperes))))]).Assess().Boxes[0].Worst;
    }
}
