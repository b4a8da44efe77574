using System;
using System.Linq;
using CamPower.Tests.Protection;
using CamPower.Tests.Faults;
using UnitsNet;
using static CamPower.Tests.Sites.SmallSite;

namespace CamPower.Tests.Checks;

/// <summary>Where the rules on faults speak though something is not declared, and what they say then.</summary>
public class FaultRuleTests
{
    // A supply that holds 9 A, shorted behind a fuse of 50 mΩ: 0.44 V. A camera that takes 0.3 A at any voltage and declares no drop-out wants 10 V, and whether it goes
    // dark nobody says; one that drops out at 8 V does.
    [Theory]
    [InlineData(null, "1 device gets less voltage than accepted")]
    [InlineData(8.0, "1 device goes dark")]
    public void AShort_ThatLeavesTooLittle_IsNamedWithoutADropOutToo(double? dropOut, string words)
    {
        Device camera = Camera(Amperes(0.3), Range(10, 14), dropOut is double volts ? Starts(volts + 1, volts) : null);
        DistributionBox box = SmallFaultSite.Box(SmallDevices.Fuse(FuseCharacteristic.IecQuickActing, 8, ohms: 0.05), OverloadBehavior.ConstantCurrent(ElectricCurrent.FromAmperes(9)));
        Finding finding = Assert.Single(Rule("short-collapses-supply-voltage", Star(box, [Condition.Day(At())], (0.5, camera), (0.5, camera))));
        Assert.Contains($" At other outputs {words}. ", finding.Message, StringComparison.Ordinal);
    }

    // One finding a site: what to state, for which outputs, and what it would allow.
    [Fact]
    public void WhatIsMissing_IsOneFinding()
    {
        Finding all = Unknown(SmallFaultSite.TwoOutputs(device: null));
        Assert.Equal((Severity.Note, "site"), (all.Severity, all.About.Name));
        Assert.Equal("Not checked: interruption of shorts. Not stated: protective device (box). " +
            "Not checked: current of shorts. Not stated: overload behavior of the supply (box).", all.Message);
        Assert.StartsWith("Not checked: current of shorts. Not stated: overload behavior of the supply (box)", Unknown(SmallFaultSite.TwoOutputs(SmallFault.QuickActing(2))).Message, StringComparison.Ordinal);
        Assert.Empty(Rule("faults-unknown", SmallFaultSite.TwoOutputs(SmallFault.QuickActing(2), OverloadBehavior.ConstantCurrent(ElectricCurrent.FromAmperes(30)))));
    }

    // Outputs 1, 2 and 4 of a box; the camera on the fourth does not state its start, the one on the second an inrush of 20 A for 5 ms behind a fuse of unknown melting I²t.
    [Fact]
    public void WhatIsMissing_NamesOutputsAndDevices()
    {
        Fuse fuse = SmallDevices.Fuse(FuseCharacteristic.IecQuickActing, 2);
        var surging = new Device("model", DeviceKind.Camera, new ComponentDraw(Amperes(0.1)), Wide, starting: Starts(9, 8), inrush: new Inrush(ElectricCurrent.FromAmperes(20), Duration.FromMilliseconds(5)));
        Device quiet = Camera(Amperes(0.1), starting: Starts(9, 8)), silent = Camera(Amperes(0.1));
        var site = new Site("yard", [Condition.Day(At())], [SmallFaultSite.Box(fuse, OverloadBehavior.ConstantCurrent(ElectricCurrent.FromAmperes(30)), outputs: 4)],
            [.. new[] { 1, 2, 4 }.Select(n => new SiteRun(RunOrigin.Output(BoxName, n), $"end {n}", new CableRun(Cable.Pair(WireSize.Awg(18), Stranding.Solid, ConductorMaterial.AnnealedCopper), Length.FromMeters(2))))],
            [new SiteDevice("gate", quiet, "end 1"), new SiteDevice("mast", surging, "end 2"), new SiteDevice("shed", silent, "end 4")]);
        Assert.Equal("Not checked: conductors in a short. Not stated: cable insulation (box). " +
            "Not checked: heat of a lasting short. Not stated: installation method of the cable (box). " +
            "Not checked: protective devices at a start. Not stated: melting I²t of fuse (box output 2). " +
            "Not checked: start of the devices. Not stated: turn-on and drop-out voltage of the device (model).", Unknown(site).Message);
    }

    // The rule, the report and whoever else asks read one list; what a rule of its own speaks of stands in the list as well.
    [Fact]
    public void WhatIsMissing_IsOneListForAllReaders()
    {
        Site site = SmallFaultSite.TwoOutputs(device: null);
        var evidence = new Evidence(site.Assess());
        string message = Unknown(site).Message;
        Assert.Equal(["protective device", "overload behavior of the supply"], evidence.NotStated.Select(what => what.Key));
        Assert.All(evidence.NotStated, what => Assert.Contains($"{what.Key} ({string.Join(", ", what)})", message, StringComparison.Ordinal));
        Site warm = Star(Box(Dc()).WithEnclosure(new Enclosure(Length.FromMeters(0.3), Length.FromMeters(0.4), Length.FromMeters(0.15), EnclosureWall.PaintedSteel, EnclosureFaces.OnWall)),
            [Condition.Day(At())], (0, Camera(Amperes(1))));
        Assert.Equal(["box"], new Evidence(warm.Assess()).NotStated["efficiency of the supply"]);
        Assert.DoesNotContain("efficiency", Unknown(warm).Message, StringComparison.Ordinal);
    }

    // An adapter as a rule limits itself: that it does not say how is no danger by itself. One that says that it does not is.
    [Fact]
    public void AnAdapterThatDoesNotSay_IsNotKnown()
    {
        Site silent = Single(DistributionBox.Adapter(BoxName, Dc(), ProtectiveDevice.None)), box = Single(DistributionBox.OfEqualOutputs(BoxName, Dc(), 2, ElectricCurrent.FromAmperes(1), ProtectiveDevice.None));
        Assert.Empty(Rule("protection-missing", silent));
        Assert.Single(Rule("faults-unknown", silent));
        Assert.Single(Rule("protection-missing", box));
    }

    // A fuse to IEC 60127 carries its rating; one to UL 248-14 and a blade fuse are loaded with 75 % of it (common practice).
    [Theory]
    [InlineData("IEC", false)]
    [InlineData("UL", true)]
    [InlineData("blade", true)]
    public void ShareOfTheRating_IsOfFusesThatAreRatedByWhatOpensThem(string kind, bool isFound)
    {
        FuseCharacteristic gates = kind switch { "IEC" => FuseCharacteristic.IecTimeLag, "UL" => FuseCharacteristic.UlFast, _ => FuseCharacteristic.Blade };
        DistributionBox box = DistributionBox.OfEqualOutputs(BoxName, Dc(), 2, ElectricCurrent.FromAmperes(5), SmallDevices.Fuse(gates, 3));
        Assert.Equal(isFound, Rule("fuse-above-continuous-policy", Star(box, [Condition.Day(At())], (0, Camera(Amperes(2.4))))).Length > 0);
    }

    private static Finding Unknown(Site site) => Assert.Single(Rule("faults-unknown", site));

    private static Finding[] Rule(string id, Site site) => [.. RuleSet.Standard.Check(site.Assess()).Where(f => f.Rule == id)];

    private static Site Single(DistributionBox box) => new("site", [Condition.Day(At())], [box],
        [new SiteRun(RunOrigin.Output(BoxName, 1), "end", new CableRun(CamPower.Tests.Runs.Eighteen, Length.FromMeters(3)))], [new SiteDevice("camera 1", Camera(Watts(3)), "end")]);
}
