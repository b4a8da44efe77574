using System.Linq;
using CamPower.Circuits;
using UnitsNet;

namespace CamPower.Tests.Circuits.Networks;

/// <summary>A network that is given other source voltages or loads is the one that is built with them, to the last bit.</summary>
public class OtherVoltagesTests
{
    // Two cameras with one negative: 1 Ω and 2 Ω out, 0.5 Ω back together, and a shield of 3 Ω beside it.
    private static DcNetwork SharedNegative(double volts, double watts) => new DcNetworkBuilder()
        .AddSource("supply", "+", "-", ElectricPotential.FromVolts(volts))
        .AddBranch("near", "+", "a", ElectricResistance.FromOhms(1))
        .AddBranch("far", "+", "b", ElectricResistance.FromOhms(2))
        .AddBranch("negative", "back", "-", ElectricResistance.FromOhms(0.5))
        .AddBranch("shield", "back", "-", ElectricResistance.FromOhms(3))
        .AddLoad("camera a", "a", "back", Load.ConstantPower(Power.FromWatts(watts)))
        .AddLoad("camera b", "b", "back", Load.ConstantCurrent(ElectricCurrent.FromAmperes(0.5)))
        .Build(reference: "-");

    // A tree that is solved as a ladder: 1 Ω out and 1 Ω back.
    private static DcNetwork Ladder(double volts, double watts) => new DcNetworkBuilder()
        .AddSource("supply", "+", "-", ElectricPotential.FromVolts(volts))
        .AddBranch("out", "+", "a", ElectricResistance.FromOhms(1))
        .AddBranch("back", "b", "-", ElectricResistance.FromOhms(1))
        .AddLoad("camera", "a", "b", Load.ConstantPower(Power.FromWatts(watts)))
        .Build(reference: "-");

    [Theory]
    [InlineData(24)]
    [InlineData(9.5)]
    public void OtherSourceVoltage_IsTheNetworkBuiltWithIt(double volts)
    {
        DcNetwork built = SharedNegative(volts, watts: 6);
        Assert.False(built.IsRadial);
        AssertSame(built.Solve(), SharedNegative(12, watts: 6).WithSourceVolts([volts]).Solve());
        AssertSame(Ladder(volts, watts: 6).Solve(), Ladder(12, watts: 6).WithSourceVolts([volts]).Solve());
    }

    [Fact]
    public void OtherLoads_AreTakenInTheirOrder()
    {
        Load[] loads = [Load.ConstantPower(Power.FromWatts(4)), Load.ConstantCurrent(ElectricCurrent.FromAmperes(0.5))];
        AssertSame(SharedNegative(12, watts: 4).Solve(), SharedNegative(12, watts: 6).WithLoads(loads).Solve());
    }

    // 18 V behind 2 Ω carry 16 W at 16 V: 1 A, and 2 V on the way.
    [Fact]
    public void AnotherVoltage_IsWorkedOutByHand()
    {
        NetworkSolution solution = Ladder(12, watts: 16).WithSourceVolts([18]).Solve();
        Assert.Equal(16, solution.VoltsAt(0), 12);
        Assert.Equal(18, solution.Network.Sources.Single().Volts);
    }

    private static void AssertSame(NetworkSolution expected, NetworkSolution actual)
    {
        Assert.True(expected.HasOperatingPoint);
        Assert.Equal(expected.Network.NodeNames.Select(n => expected.VoltageAt(n).Volts), actual.Network.NodeNames.Select(n => actual.VoltageAt(n).Volts));
        Assert.Equal(
            expected.Network.LoadNames.Select((_, k) => expected.VoltsAt(k)), actual.Network.LoadNames.Select((_, k) => actual.VoltsAt(k)));
        Assert.Equal(expected.CurrentFrom("supply").Amperes, actual.CurrentFrom("supply").Amperes);
    }
}
