using System;
using System.Collections.Generic;
using System.Linq;
using CamPower.Checks;
using CamPower.Sites;
using CamPower.Tests.Faults;
using CamPower.Tests.Protection;
using CamPower.Tests.Sites;
using UnitsNet;
using static CamPower.Tests.Sites.SmallSite;

namespace CamPower.Tests.Checks;

/// <summary>What a finding says of one and of several, of what is stated and of what is assumed; and what stands just beside a finding. Numbers by hand.</summary>
public class FindingSentenceTests
{
    private static readonly Condition Day = Condition.Day(At()), Night = Condition.Night(At());

    [Theory]
    [InlineData(1, 1, null)]
    [InlineData(2, 2, null)]
    [InlineData(2, 1, "It feeds 2 cameras from 1 output.")]
    [InlineData(3, 2, "It feeds 3 cameras from 2 outputs.")]
    public void MoreCamerasThanOutputs(int cameras, int outputs, string? message) =>
        Assert.Equal(message, Found(Rules.MoreCamerasThanOutputs, Shared(0, Box(outputs: outputs), [Day], [.. Enumerable.Repeat(Camera(Amperes(0.1)), cameras)])).SingleOrDefault()?.Message);

    // 2.5 A by day and 3.5 A at night of 2 A; a run of 10 Ω carries at most 3.6 W of 60 W: 5 A are asked for.
    [Fact]
    public void AnOutput_CarriesOrNeeds()
    {
        Finding carried = Single(Rules.OutputOverloaded, Star(Box(limit: 2), [Day, Night], (0, Camera(new ComponentDraw(Amperes(2.5), infrared: Amperes(1))))));
        Assert.Equal("It carries 3.50 A in \"night\"; its limit is 2 A.", carried.Message);
        Assert.Equal("box output 1", carried.About.Name);
        Assert.Equal("Its devices need 5.00 A in \"day\"; its limit is 2 A.", Single(Rules.OutputOverloaded, Star(Box(limit: 2), [Day], (10, Camera(Watts(60))))).Message);
        Assert.Equal("box", Single(Rules.OutputOverloaded, Star(Adapter(Dc(amperes: 2)), [Day], (0, Camera(Amperes(2.5))))).About.Name);
    }

    // 10 A are 7.5 A in 60 °C (half at 70 °C; common practice).
    [Theory]
    [InlineData(null, null, "Its outputs draw 8.50 A in \"day\"; its supply can give 7.50 A, derated from 10.00 A for 60 °C. Its overload behavior is not stated.")]
    [InlineData(400.0, null, "Its outputs draw 8.50 A in \"day\"; its supply can give 7.50 A, derated from 10.00 A for 60 °C.")]
    [InlineData(null, 230.0, "Its outputs draw 8.50 A in \"day\"; its supply can give 7.50 A, derated from 10.00 A for 60 °C, 230 V at its input.")]
    public void ADeratedRating_SaysForWhat(double? meters, double? line, string message)
    {
        OverloadBehavior? overload = meters is null && line is null ? null : OverloadBehavior.ConstantCurrent(ElectricCurrent.FromAmperes(12));
        var supply = new Supply("supply", new DcOutput(Volts(12), ElectricCurrent.FromAmperes(10), Ratio.Zero, overload: overload), Derating.GenericEnclosed);
        var day = new Condition("day", LoadComponents.None, At(box: 60), lineVoltage: line is double volts ? Volts(volts) : null);
        Site star = Star(Box(supply), [day], (0, Camera(Amperes(8.5))));
        var site = new Site("site", star.Conditions, star.Boxes, star.Runs, star.Devices, altitude: meters is double high ? Length.FromMeters(high) : null);
        // Up to its rating of 10 A a supply that declares nothing is not known to sag.
        Assert.StartsWith(message.Split(" Its overload")[0], Single(Rules.SupplyAboveDeratedRating, site).Message, StringComparison.Ordinal);
        Assert.DoesNotContain("at least", Single(Rules.SupplyAboveDeratedRating, site).Message, StringComparison.Ordinal);
    }

    // 12 V, whatever is done to the cable, for a camera of 21.6 V and more: not a matter of trim.
    [Fact]
    public void ASupplyOfAnotherVoltageClass_IsCalledTheWrongOne()
    {
        Finding low = Single(Rules.Undervoltage, Star(Box(Dc(12)), [Day], (0.1, Camera(Amperes(0.1), Range(21.6, 26.4)))));
        Assert.EndsWith(" box gives 12 V: it is the wrong supply for this device.", low.Message, StringComparison.Ordinal);
        Assert.Equal("Connect the device to a supply of its rated voltage.", low.Remedy);
        Finding cable = Single(Rules.Undervoltage, Star(Box(Dc(12)), [Day], (20, Camera(Amperes(0.1), Range(11, 13)))));
        Assert.DoesNotContain("wrong supply", cable.Message, StringComparison.Ordinal);
        Assert.Equal("Use a larger conductor or a shorter route.", cable.Remedy);
    }

    // Nobody is told to set a supply higher that is at the top of its range, has none, or floats a battery.
    [Theory]
    [InlineData(12, 14, "Use a larger conductor or a shorter route. Or set the supply higher, up to 14 V, within the range of every device.")]
    [InlineData(14, 14, "Use a larger conductor or a shorter route.")]
    public void ASupply_IsSetHigherOnlyWhereItCanBe(double volts, double most, string remedy)
    {
        var output = new DcOutput(Volts(volts), ElectricCurrent.FromAmperes(10), Ratio.Zero, trim: Range(10, most));
        DistributionBox box = Box(new Supply("supply", output, Derating.GenericEnclosed));
        Assert.Equal(remedy, Single(Rules.Undervoltage, Star(box, [Day], (20, Camera(Amperes(0.1), Range(volts - 1, 20))))).Remedy);
        Assert.StartsWith("Use a larger conductor or a shorter route. If the supply can be trimmed", Rules.Undervoltage.Remedy, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(1, "The ground-loop hum on 1 video shield is unknown. Not in the site file: ripple of box.")]
    [InlineData(2, "The ground-loop hum on 2 video shields is unknown. Not in the site file: ripple of box.")]
    public void Hum_OfOneShieldOrSeveral(int shields, string message)
    {
        Site star = Star((0.5, Camera(Amperes(0.3))), (0.5, Camera(Amperes(0.3))));
        var site = new Site("site", star.Conditions, star.Boxes, star.Runs, star.Devices,
            Enumerable.Range(1, shields).Select(n => new VideoLink($"camera {n}", "recorder", ElectricResistance.FromOhms(0.9))), [new GroundBond("recorder", BoxName, ElectricResistance.FromOhms(0.1))]);
        Assert.Equal(message, Single(Rules.GroundLoopHumUnknown, site).Message);
    }

    // EIAJ RC-5320A class 4: 10.5 V to 13.5 V. What is exactly at an end is inside.
    [Theory]
    [InlineData(10.5, null)]
    [InlineData(13.5, null)]
    [InlineData(10.4, 10.5)]
    [InlineData(13.6, 13.5)]
    public void AConnector_HasTwoEnds(double volts, double? limit)
    {
        Connector plug = Connector.UnifiedBarrels.Single(c => c.VoltageClass!.HighestVolts.Equals(13.5));
        var camera = new Device("model", DeviceKind.Camera, new ComponentDraw(Amperes(0.1)), Wide, connector: plug);
        Assert.Equal(limit, ((ElectricPotential?)Found(Rules.VoltageOutsideConnectorClass, SmallSite.Single(0, camera, Dc(volts))).SingleOrDefault()?.Limit)?.Volts);
    }

    // 5.9 A by day and 7 A at night on 18 AWG, of which 5.6 A may last (NEC 240.4(D)(1), from memory: 80 % of 7 A), in 20 °C; for an hour 7 A.
    [Theory]
    [InlineData(5.9, null, "Basis: largest continuous load of its size.")]
    [InlineData(5.6, null, null)]
    [InlineData(7, 1.0, null)]
    [InlineData(7.1, 1.0, "Basis: largest load of its size.")]
    public void ASmallConductor_IsHeldToItsLoad(double amperes, double? hours, string? basis) => Assert.Equal(basis,
        BasisOf(OnCable(Pair(WireSize.Awg(18), Insulation.CrossLinked), amperes, InstallationMethod.InCableOrRaceway(2), hours: hours)));

    // 22 AWG in 20 °C: from the 14 A of 18 AWG (90 °C in 30 °C, NEC Table 310.16) by the power 1.5 of the diameters 14 × (0.644/1.024)^1.5 = 6.98 A, × √(40/60) = 5.7 A for 60 °C.
    [Theory]
    [InlineData(null, true, "Basis: ampacity in 20 °C air, insulation 60 °C (assumed), estimated from a larger size.")]
    [InlineData(70, true, "Basis: ampacity in 20 °C air, insulation 70 °C, estimated from a larger size.")]
    [InlineData(70, false, "Basis: ampacity in 20 °C air, insulation 70 °C, estimated from a larger size, 2 current-carrying conductors in a cable or raceway (assumed).")]
    public void AnAmpacity_SaysWhatItRestsOn(int? insulation, bool isStated, string basis) => Assert.Equal(basis,
        BasisOf(OnCable(Pair(WireSize.Awg(22), insulation is null ? null : Insulation.Pvc70), 7, isStated ? InstallationMethod.InCableOrRaceway(2) : null)));

    // 24 AWG in a large bundle has a figure of its own (FAA AC 43.13-1B): nothing is estimated.
    [Fact]
    public void APublishedSize_IsNotEstimated() => Assert.Equal("Basis: ampacity in 20 °C air, insulation 70 °C.",
        BasisOf(OnCable(Pair(WireSize.Awg(24), Insulation.Pvc70), 7, InstallationMethod.LargeBundle)));

    [Theory]
    [InlineData(0.01234, "0.0123 A²·s")]
    [InlineData(99.94, "99.9 A²·s")]
    [InlineData(999.4, "999 A²·s")]
    [InlineData(12345, "12300 A²·s")]
    public void AnIntegral_HasThreeDigits(double value, string text) => Assert.Equal(text, FaultRuleText.Integral(JouleIntegral.FromAmpereSquaredSeconds(value)));

    // A place that is a name stands alone; "terminals" and "far end" have an article.
    [Fact]
    public void APlace_HasAnArticleUnlessItIsAName()
    {
        var two = new CableRun(new CableSegment(SmallFault.Pair(0.5), Length.FromMeters(1)), new CableSegment(SmallFault.Pair(2.5), Length.FromMeters(1)), new Joint("splice", ElectricResistance.FromOhms(0.1)));
        Assert.Equal(["the terminals", "the change of cable", "splice", "the far end"], SmallFault.Study(two, SmallFault.QuickActing(1)).Shorts.Select(FaultRuleText.Place));
    }

    // Two boxes of 12 V and 12.5 V, each 2 %: 12.75 V against 11.76 V are 0.99 V, whichever is named first; 12.24 V against 12.25 V would be nothing.
    [Theory]
    [InlineData(12, 12.5, "It is joined to output 2 of other. The supply of other can be 0.99 V higher and feed back into the other supply.")]
    [InlineData(12.5, 12, "It is joined to output 2 of other. The supply of box can be 0.99 V higher and feed back into the other supply.")]
    public void TiedOutputs_NameTheHigher(double one, double other, string message)
    {
        Finding found = Single(Rules.OutputsTiedTogether, Tied(Dc(one, percent: 2), Dc(other, percent: 2)));
        Assert.Equal(message, found.Message);
        Assert.Equal(0.99, ((ElectricPotential)found.Measured!).Volts, 1e-9);
    }

    [Fact]
    public void TiedOutputs_OfTwoKinds_SayThat() =>
        Assert.Equal("It is joined to output 2 of other: AC and DC in one circuit.", Single(Rules.OutputsTiedTogether, Tied(Dc(12), Dc(12, kind: CurrentKind.Ac))).Message);

    // A lead alone is whole; with another cable on the way to a device it is extended, and named once.
    [Theory]
    [InlineData(false, 0)]
    [InlineData(true, 1)]
    public void APreTerminatedLead_IsExtendedByAnyOtherCable(bool isExtended, int found)
    {
        CableRun lead = new(CableCatalog.ReadyMadeLead22, Length.FromMeters(3));
        Site site = new("site", [Day], [Box()],
            [new SiteRun(RunOrigin.Output(BoxName, 1), "one", isExtended ? lead.Then(new CableSegment(CableCatalog.Pair18, Length.FromMeters(2))) : lead)],
            [new SiteDevice("first", Camera(Amperes(0.1)), "one"), new SiteDevice("second", Camera(Amperes(0.1)), "one")]);
        Assert.Equal(found, Found(Rules.PreTerminatedCableExtended, site).Count);
    }

    // 2 A by day and 1 A at night on a plug of 1 A: the most is told in either order.
    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void AConnector_IsToldItsMost(bool isDayFirst)
    {
        var camera = new Device("model", DeviceKind.Camera, new ComponentDraw(Amperes(1.4), infrared: Amperes(0.6)), Wide, connector: Connector.CommonBarrel);
        Finding found = Single(Rules.ConnectorOverloaded, SmallSite.Single(0, camera, null, isDayFirst ? [Day, Night] : [Night, Day]));
        Assert.StartsWith("It draws 2.00 A in \"night\"; ", found.Message, StringComparison.Ordinal);
    }

    private static string? BasisOf(Site site) => Found(Rules.ConductorOverAmpacity, site).SingleOrDefault()?.Message is string message
        ? message.Substring(message.IndexOf("Basis:", StringComparison.Ordinal)) : null;

    private static Cable Pair(WireSize size, Insulation? insulation) => Cable.Pair(size, Stranding.Solid, ConductorMaterial.AnnealedCopper, insulation: insulation);

    private static Site OnCable(Cable cable, double amperes, InstallationMethod? method, double? hours = null) => new("site",
        [new Condition("day", LoadComponents.None, At(), duration: hours is double lasts ? Duration.FromHours(lasts) : null)], [Box()],
        [new SiteRun(RunOrigin.Output(BoxName, 1), "one", new CableRun(cable, Length.FromMeters(1)), installationMethod: method)], [new SiteDevice("first", Camera(Amperes(amperes)), "one")]);

    private static Site Tied(Supply one, Supply other)
    {
        Device either = new("model", DeviceKind.Camera, new ComponentDraw(Amperes(0.1)), Wide, Wide);
        return new("site", [Day], [Box(one), DistributionBox.OfEqualOutputs("other", other, 4, ElectricCurrent.FromAmperes(5), null)],
            [new SiteRun(RunOrigin.Output(BoxName, 1), "one", Runs.OfOhms(0.1)), new SiteRun(RunOrigin.Output("other", 2), "two", Runs.OfOhms(0.1))],
            [new SiteDevice("first", either, "one"), new SiteDevice("second", either, "two")], ties: [new OutputTie(BoxName, 1, "other", 2)]);
    }

    private static Finding Single(Rule rule, Site site) => Assert.Single(Found(rule, site));

    private static IReadOnlyList<Finding> Found(Rule rule, Site site) => [.. rule.Check(new Evidence(site.Assess()))];
}
