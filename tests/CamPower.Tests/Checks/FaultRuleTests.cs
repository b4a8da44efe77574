using System.Linq;
using CamPower.Tests.Devices;
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
    [InlineData(null, "1 device gets less than accepted")]
    [InlineData(8.0, "1 device goes dark")]
    public void AShort_ThatLeavesTooLittle_IsNamedWithoutADropOutToo(double? dropOut, string words)
    {
        Device camera = Camera(Amperes(0.3), Range(10, 14), dropOut is double volts ? Starts(volts + 1, volts) : null);
        DistributionBox box = SmallFaultSite.Box(SmallDevices.Fuse(FuseCharacteristic.IecQuickActing, 8, ohms: 0.05), OverloadBehaviour.ConstantCurrent(ElectricCurrent.FromAmperes(9)));
        Finding finding = Assert.Single(Rule("short-drags-rail-down", Star(box, [Condition.Day(At())], (0.5, camera), (0.5, camera))));
        Assert.Contains($"and at other outputs {words};", finding.Message, System.StringComparison.Ordinal);
    }

    [Fact]
    public void WhatIsMissing_IsNamed()
    {
        Finding all = Unknown(SmallFaultSite.TwoOutputs(device: null));
        Assert.Equal("box", all.About.Name);
        Assert.Equal("What a short does there is not known: nobody declares what protects the output, what the supply does in overload.", all.Message);
        Assert.EndsWith("nobody declares what the supply does in overload.", Unknown(SmallFaultSite.TwoOutputs(SmallFault.QuickActing(2))).Message, System.StringComparison.Ordinal);
        Assert.Empty(Rule("faults-unknown", SmallFaultSite.TwoOutputs(SmallFault.QuickActing(2), OverloadBehaviour.Unlimited)));
    }

    // An adapter as a rule limits itself: that it does not say how is no danger by itself. One that says that it does not is.
    [Fact]
    public void AnAdapterThatDoesNotSay_IsACaution()
    {
        Site silent = Single(DistributionBox.Adapter(BoxName, Dc(), ProtectiveDevice.None)), box = Single(DistributionBox.WithEqualOutputs(BoxName, Dc(), 2, ElectricCurrent.FromAmperes(1), ProtectiveDevice.None));
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
        DistributionBox box = DistributionBox.WithEqualOutputs(BoxName, Dc(), 2, ElectricCurrent.FromAmperes(5), SmallDevices.Fuse(gates, 3));
        Assert.Equal(isFound, Rule("fuse-above-continuous-share", Star(box, [Condition.Day(At())], (0, Camera(Amperes(2.4))))).Length > 0);
    }

    private static Finding Unknown(Site site) => Assert.Single(Rule("faults-unknown", site));

    private static Finding[] Rule(string id, Site site) => [.. RuleSet.Standard.Check(site.Assess()).Where(f => f.Rule == id)];

    private static Site Single(DistributionBox box) => Star(box, [Condition.Day(At())], (0, Camera(Watts(3))));
}
