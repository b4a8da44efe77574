using System;
using System.Collections.Generic;
using System.Linq;
using CamPower.Tests.Protection;
using CamPower.Tests.Sites;
using UnitsNet;
using static CamPower.Tests.Sites.SmallSite;

namespace CamPower.Tests.Checks;

/// <summary>Alike outputs are one finding; a start trips where the declared inrush is more than the device is sure to carry.</summary>
public class NuisanceTripRuleTests
{
    private static readonly ProtectiveDevice Quick = SmallDevices.Fuse(FuseCharacteristic.IecQuickActing, 1), Slow = SmallDevices.Fuse(FuseCharacteristic.IecTimeLag, 1);

    [Fact]
    public void AlikeOutputs_AreOneFindingOfTheirBox()
    {
        Finding finding = Assert.Single(Found([Quick, Quick, Quick, Quick], Draws(1.2), Draws(0.5), Draws(1.5), Draws(1.1)));
        Assert.Equal("box", finding.About.Name);
        Assert.Contains("Output 3 draws 1.50 A", finding.Message, StringComparison.Ordinal);
        Assert.EndsWith(" The same at outputs 1, 3-4.", finding.Message, StringComparison.Ordinal);
        Assert.Equal(1.5, ((ElectricCurrent)finding.Measured!).Amperes, 1e-9);
    }

    [Fact]
    public void OneOutput_IsAFindingOfItsOwn() => Assert.Equal("box output 2", Assert.Single(Found([Quick, Quick], Draws(0.5), Draws(1.5))).About.Name);

    [Fact]
    public void UnlikeDevices_AreFindingsOfTheirOwn() =>
        Assert.Equal(["box output 1", "box output 2"], Found([Quick, Slow], Draws(1.2), Draws(1.5)).Select(f => f.About.Name));

    // A fuse F of 1 A withstands 4 A for 10 ms, 0.16 A²s (IEC 60127-2 sheet 2, from memory), and a start may take 22 % of that: one camera of 4 A and 2.1 ms, two of 2 A. Of more
    // nothing is known until 0.3 s of 4 A, which open it. With a melting I²t of 0.5 A²s 4 A for 10 ms take 32 % of it, a Caution, and for 32 ms 102 %.
    [Theory]
    [InlineData(4, 2.1, 1, null, true, null)]
    [InlineData(2, 2.1, 2, null, true, null)]
    [InlineData(4, 10, 1, null, null, null)]
    [InlineData(4, 310, 1, null, false, Severity.Failure)]
    [InlineData(2, 310, 2, null, false, Severity.Failure)]
    [InlineData(4, 10, 1, 0.5, true, Severity.Caution)]
    [InlineData(4, 32, 1, 0.5, false, Severity.Failure)]
    public void Start_CountsAllDevicesOfAnOutputAtOnce(double amperes, double milliseconds, int cameras, double? melting, bool? stands, Severity? severity)
    {
        Fuse fuse = SmallDevices.Fuse(FuseCharacteristic.IecQuickActing, 1, meltingIntegral: melting);
        Site site = Shared(0, Boxed(fuse), [Condition.Day(At())], [.. Enumerable.Repeat(Draws(0.1, new Inrush(ElectricCurrent.FromAmperes(amperes), Duration.FromMilliseconds(milliseconds))), cameras)]);
        Assert.Equal(severity, Found(site).SingleOrDefault()?.Severity);
        Assert.Equal(stands, site.Assess().StudyFaults()[0].InConditions[0].CarriesInrush);
    }

    // 1.18 A on a resettable fuse that holds 1.10 A: for 0.1 s 0.14 A²s of the 35.4 A²s that trip it at the earliest (the estimate of its start), for a minute 84 A²s.
    [Theory]
    [InlineData(0.1, false)]
    [InlineData(60, true)]
    public void AShortCondition_IsHeldAgainstTheEarliestTrip(double seconds, bool isFound)
    {
        var start = new Condition("start", LoadComponents.None, At(box: 20), duration: Duration.FromSeconds(seconds));
        Assert.Equal(isFound, Found(Shared(0, Boxed(SmallDevices.Printed(1.10)), [start], Draws(1.18))).Count == 1);
    }

    // Half a second of 8 A: 32 A²s, where the resettable fuse of 1.10 A trips with 35.4 A²s at 20 °C and 17.3 A²s at 50 °C.
    [Theory]
    [InlineData(20, false)]
    [InlineData(50, true)]
    public void Start_CountsTheTemperatureInside(double celsius, bool isFound)
    {
        Device heater = Draws(0.1, new Inrush(ElectricCurrent.FromAmperes(8), Duration.FromSeconds(0.5)));
        IReadOnlyList<Finding> found = Found(Shared(0, Boxed(SmallDevices.Printed(1.10)), [Condition.Day(At(box: 0)), Condition.Night(At(box: celsius))], heater));
        Assert.Equal(isFound, found.Count == 1);
        if (isFound) Assert.Contains("It draws up to 8 A (32 A²·s) in \"night\" when all its devices start at once.", found[0].Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Start_SaysHowManyDevicesDeclareTheirInrush()
    {
        Finding finding = Assert.Single(Found(Shared(0, Boxed(Quick), [Condition.Day(At())], Draws(0.1, new Inrush(ElectricCurrent.FromAmperes(20), Duration.FromMilliseconds(500))), Draws(0.1))));
        Assert.Contains(" The inrush of 1 of its 2 devices is stated. ", finding.Message, StringComparison.Ordinal);
    }

    // 1.5 A are between the 1 A that a fuse F of 1 A carries and the 2.1 A that open it; a resettable fuse has no rating to load.
    [Theory]
    [InlineData(0.7, OperatingVerdict.DoesNotOperate)]
    [InlineData(1.5, OperatingVerdict.MayOperate)]
    [InlineData(2.2, OperatingVerdict.Operates)]
    public void InService_TheDeviceIsAskedAtTheCurrent(double amperes, OperatingVerdict verdict)
    {
        ProtectionInCondition found = InService(Quick, Draws(amperes));
        Assert.Equal(verdict, found.Opening.Verdict);
        Assert.Equal(amperes, found.ShareOfRating!.Value.DecimalFractions, 1e-9);
        Assert.Equal(1, found.Carried!.Value.Amperes, 1e-9);
        Assert.Null(InService(SmallDevices.Printed(1.10), Draws(amperes)).ShareOfRating);
        Assert.Equal(OperatingVerdict.None, InService(Quick, new Device("model", DeviceKind.Camera, new ComponentDraw(Watts(100)), Wide), ohms: 10).Opening.Verdict);

        static ProtectionInCondition InService(ProtectiveDevice device, Device camera, double ohms = 0) =>
            Shared(ohms, Boxed(device), [Condition.Day(At())], camera).Assess().StudyFaults()[0].InConditions[0];
    }

    // A trip in service does not hide a trip at the start, nor the other way round.
    [Fact]
    public void ServiceAndStart_AreTwoFindings() =>
        Assert.Equal(2, Found([Quick], Draws(1.5, new Inrush(ElectricCurrent.FromAmperes(20), Duration.FromMilliseconds(500)))).Count);

    // A fuse F of 1 A and 0.5 A²s. Two cameras of 0.2 A each switch 3 A for 3 ms and 5 A for 2 ms: peaks of 8.4 A; (√0.027 + √0.05 + 0.4·√0.003)² A²s of 0.5 A²s.
    // 9 A for 8 ms instead of 5 A: (√0.027 + √0.648 + 0.4·√0.008)² = 1.0102 A²s. By day nothing is switched, and what is not stated does not count.
    [Theory]
    [InlineData(5, 2, LoadComponents.Infrared, 0.3359, Severity.Caution)]
    [InlineData(5, 2, LoadComponents.Motor, 0.3359, Severity.Caution)]
    [InlineData(9, 8, LoadComponents.Infrared, 2.0204, Severity.Failure)]
    [InlineData(9, 8, LoadComponents.Heater, null, null)]
    [InlineData(9, 8, LoadComponents.None, null, null)]
    public void Switching_CountsOnTopOfWhatFlows(double amperes, double milliseconds, LoadComponents on, double? share, Severity? severity)
    {
        Fuse fuse = SmallDevices.Fuse(FuseCharacteristic.IecQuickActing, 1, meltingIntegral: 0.5);
        Site site = Shared(0, Boxed(fuse), [Condition.Day(At()), new Condition("dusk", on, At())], Switches(3, 3), Draws(0.1), Switches(amperes, milliseconds));
        Finding? finding = Found(site).SingleOrDefault();
        Assert.Equal(severity, finding?.Severity);
        Judgment? judged = site.Assess().StudyFaults()[0].InConditions[1].Switching;
        Assert.Equal(share, judged is Judgment known ? Math.Round(((Ratio)known.Value!).DecimalFractions, 4) : null);
        Assert.Null(site.Assess().StudyFaults()[0].InConditions[0].Switching);
        if (finding is null) return;
        Assert.Contains($"in \"dusk\" when illuminators or motors are switched on at once. The inrush of 2 of its 3 devices is stated. ", finding.Message, StringComparison.Ordinal);
        Assert.Contains("spread the devices", finding.Remedy, StringComparison.Ordinal);
    }

    [Fact]
    public void NothingDeclared_NothingSaid()
    {
        Assert.Empty(Found([Quick], Draws(0.1)));
        Assert.Null(Shared(0, Boxed(Quick), [Condition.Day(At())], Draws(0.1)).Assess().StudyFaults()[0].InConditions[0].CarriesInrush);
        Assert.Equal(Verdict.Unknown, Shared(0, Boxed([null]), [Condition.Day(At())], Draws(0.1, new Inrush(ElectricCurrent.FromAmperes(9), Duration.FromMilliseconds(5)))).Assess()
            .StudyFaults()[0].InConditions[0].Start!.Value.Verdict);
        Assert.Empty(Found([null], Draws(0.1, new Inrush(ElectricCurrent.FromAmperes(200), Duration.FromMilliseconds(5)))));
        Assert.Empty(Found([ProtectiveDevice.None], Draws(0.1, new Inrush(ElectricCurrent.FromAmperes(200), Duration.FromMilliseconds(5)))));
    }

    private static Device Draws(double amperes, Inrush? inrush = null) => new("model", DeviceKind.Camera, new ComponentDraw(Amperes(amperes)), Wide, inrush: inrush);

    private static Device Switches(double amperes, double milliseconds) => new("model", DeviceKind.Camera, new ComponentDraw(Amperes(0.15)), Wide,
        switchedInrush: new Inrush(ElectricCurrent.FromAmperes(amperes), Duration.FromMilliseconds(milliseconds)));

    private static DistributionBox Boxed(params ProtectiveDevice?[] devices) =>
        new(BoxName, Dc(), devices.Select((device, i) => new BoxOutput(i + 1, ElectricCurrent.FromAmperes(50), device)));

    private static IReadOnlyList<Finding> Found(ProtectiveDevice?[] devices, params Device[] cameras) =>
        Found(Star(Boxed(devices), [Condition.Day(At())], [.. cameras.Select(c => (0.0, c))]));

    private static IReadOnlyList<Finding> Found(Site site) => [.. Rules.NuisanceTrip.Check(new Evidence(site.Assess()))];
}
