using System.Collections.Generic;
using CamPower.Circuits;
using UnitsNet;

namespace CamPower.Tests;

/// <summary>One of each public type that a solved network is made of.</summary>
internal static class NetworkSamples
{
    internal static IEnumerable<object> All()
    {
        DcNetworkBuilder builder = new DcNetworkBuilder()
            .AddSource("supply", "+", "-", ElectricPotential.FromVolts(12.5))
            .AddBranch("out", "+", "post", ElectricResistance.FromOhms(1.25))
            .AddLoad("camera", "post", "-", Load.ConstantPower(Power.FromWatts(9.5)));
        DcNetwork network = builder.Build(reference: "-");
        NetworkSolution solution = network.Solve();
        return [builder, network, solution];
    }
}
