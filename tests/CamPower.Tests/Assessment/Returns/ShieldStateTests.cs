using System;
using System.Linq;
using CamPower.Sites;
using UnitsNet;
using CamPower.Tests.Sites;
using static CamPower.Tests.Assessment.Returns.ReturnSites;

namespace CamPower.Tests.Assessment.Returns;

/// <summary>Shields of cameras that are off or cannot be fed, and what people may call things.</summary>
public class ShieldStateTests
{
    private static readonly Starting NeverAgain = new(ElectricPotential.FromVolts(13), ElectricPotential.FromVolts(8), true);
    private static readonly Starting AtNineVolts = new(ElectricPotential.FromVolts(9), ElectricPotential.FromVolts(8), true);

    // A camera under its drop-out voltage draws nothing: the shields carry what the other one sends.
    [Fact]
    public void Shield_OfACameraThatIsOff_CarriesTheOthersCurrentOnly()
    {
        Site both = Two(Device(1, Load.ConstantPower(Power.FromWatts(23)), NeverAgain), Watts(2, 6));
        Site one = Two(Device(1, Load.None), Watts(2, 6));
        SiteAssessment solved = both.Assess(), alone = one.Assess();
        Assert.Equal(DeviceState.NeverUp, solved.Devices[0].Worst.State);
        Assert.Equal(DeviceState.Up, solved.Devices[1].Worst.State);
        for (int k = 0; k < 2; k++) Assert.Equal(alone.Shields[k].Worst.DcShift.Volts, solved.Shields[k].Worst.DcShift.Volts, 1e-12);
        Assert.NotEqual(0, solved.Shields[0].Worst.DcShift.Volts);
    }

    // 30 W are too much; the camera lets go and comes back at 9 V, for ever. The other one, on an output of its own, is judged where things balance.
    [Fact]
    public void CameraBesideOneThatComesAndGoes_OnAnOutputOfItsOwn_StaysUp()
    {
        SiteAssessment solved = Two(Device(1, Load.ConstantPower(Power.FromWatts(30)), AtNineVolts), Watts(2, 6)).Assess();
        Assert.Equal([DeviceState.Restarting, DeviceState.Up], solved.Devices.Select(d => d.Worst.State));
        Assert.Equal(Two(Device(1, Load.None), Watts(2, 6)).Assess().Shields[1].Worst.DcShift.Volts, solved.Shields[1].Worst.DcShift.Volts, 1e-12);
    }

    // No operating point is an answer of its own, and not a shield without current.
    [Fact]
    public void Shield_WithoutOperatingPoint_SaysSo()
    {
        ShieldInCondition shield = Two(Watts(1, 300), Watts(2, 6)).Assess().Shields[0].Worst;
        Assert.False(shield.HasOperatingPoint);
        Assert.Null(shield.MainsFrequencyVoltage);
        Assert.Contains("no operating point", Assert.Throws<InvalidOperationException>(() => shield.DcShift).Message, StringComparison.Ordinal);
        Assert.Throws<InvalidOperationException>(() => shield.DirectCurrent);
        Assert.Contains("no operating point", shield.ToString(), StringComparison.Ordinal);
    }

    // Names are people's: a junction called "gate return" beside one called "gate", a ground called like its box.
    [Fact]
    public void Names_ThatLookAlike_AreKeptApart()
    {
        Site plain = Named("1", "2", "g"), odd = Named("gate", "gate return", "a");
        Assert.Equal(Volts(plain), Volts(odd));

        static Site Named(string one, string two, string ground) => Of([Box("a", 12)], [Run("a", 1, one, 1.0), Run("a", 1, two, 1.8)],
            [new SiteDevice("camera 1", Watts(1, 9).Model, at: one), new SiteDevice("camera 2", Watts(2, 6).Model, at: two)],
            [Link(1, ground, 0.9), Link(2, ground, 0.6)], [Bond(ground, "a", 0.05)]);
    }

    [Theory]
    [InlineData("1", "comes back to itself")]
    [InlineData("2", "comes back to itself")]
    [InlineData("nowhere", "no run ends at a junction named nowhere")]
    [InlineData("3", "fed by a, and its return comes back to b")]
    public void Return_ThatReachesNoBoxOfItsOwn_IsAFault(string returnAt, string words)
    {
        SiteRun[] runs = [Run("a", 1, "1", 1.0, returnAt), Next("1", "2", 1.0), Run("b", 1, "3", 1.0)];
        SiteError fault = Assert.Single(Sites.SmallSite.ErrorsOf([Condition.Day(Mild)], [Box("a", 12), Box("b", 12)], runs, [], [], []));
        Assert.Equal("ReturnAt", fault.Member);
        Assert.Contains(words, fault.Message, StringComparison.Ordinal);
    }

    // A junction nearer the box may borrow the negative of one that is fed by another output.
    [Fact]
    public void Return_AtAJunctionOfAnotherOutput_IsSolvedTogether()
    {
        double[] volts = Volts(Of([Box("a", 12)], [Run("a", 1, "1", 1.0), Next("1", "2", 2.0), Run("a", 2, "3", 3.0, "2")],
            [Amperes(1, 0.1), Amperes(2, 0.2), Amperes(3, 0.3)]));

        // By hand: 0.6 A through 0.5 Ω and 0.5 A through 1 Ω of negative, 0.3 A through 1.5 Ω of positive.
        Assert.Equal(12 - 0.3 - 0.5 - 0.45, volts[2], 1e-12);
        Assert.Equal(12 - 0.3 - 0.5 - 0.15 - 0.2, volts[1], 1e-12);
    }

    private static Site Two(SiteDevice one, SiteDevice other) => Of([Box("a", 12)], [Run("a", 1, "1", 2.0), Run("a", 2, "2", 1.8)], [one, other],
        [Link(1, "g", 0.9), Link(2, "g", 0.6)], [Bond("g", "a", 0.05)]);
}
