using CamPower.Circuits;
using UnitsNet;

namespace CamPower.Tests.Circuits.Networks;

/// <summary>Networks that show one thing.</summary>
internal static class KnownNetworks
{
    /// <summary>A heater between floating nodes, through which more draw of the first camera means more voltage for the second.</summary>
    internal static DcNetwork MoreIsMore(double wattsOfFirst) => new DcNetworkBuilder()
        .AddSource("supply", "s+", "s-", ElectricPotential.FromVolts(12))
        .AddBranch("out 1", "s+", "p1", Ohms(0.4)).AddBranch("out 2", "p1", "p2", Ohms(2.8))
        .AddBranch("back 1", "n1", "s-", Ohms(3)).AddBranch("back 2", "n2", "s-", Ohms(2.7))
        .AddLoad("first", "p1", "n1", Load.ConstantPower(Power.FromWatts(wattsOfFirst)))
        .AddLoad("second", "p2", "n2", Load.ConstantPower(Power.FromWatts(2)))
        .AddLoad("heater", "p2", "n1", Load.ConstantResistance(Ohms(1.1)))
        .Build("s-");

    private static ElectricResistance Ohms(double ohms) => ElectricResistance.FromOhms(ohms);
}
