using System;
using System.Collections.Generic;
using CamPower.Circuits;
using UnitsNet;

namespace CamPower.Tests.Circuits.Networks;

/// <summary>Laws of linear networks, and one that is none. Source: Kuphaldt, Lessons in Electric Circuits, DC, ch. 5 to 7 and 10.</summary>
public class NetworkLawTests
{
    // Constant currents into a network of resistances: the drop that both cause is the sum of the drops of each.
    [Fact]
    public void Solve_ConstantCurrents_Superpose()
    {
        for (int seed = 0; seed < 20; seed++)
        {
            DcNetwork network = Mesh(seed);
            double[] neither = Volts(network, 0, 0), one = Volts(network, 0.02, 0), other = Volts(network, 0, 0.03), both = Volts(network, 0.02, 0.03);
            for (int i = 0; i < both.Length; i++)
            {
                Assert.Equal(one[i] - neither[i] + (other[i] - neither[i]), both[i] - neither[i], 1e-12);
            }
        }
    }

    // What a current at one load costs the other, the same current at the other costs the one.
    [Fact]
    public void Solve_ConstantCurrents_AreReciprocal()
    {
        for (int seed = 0; seed < 20; seed++)
        {
            DcNetwork network = Mesh(seed);
            double atOther = Drop(network, "load 1", "load 5"), atOne = Drop(network, "load 5", "load 1");
            Assert.True(atOther > 0);
            Assert.Equal(atOther, atOne, 1e-12);
        }
    }

    // Ch. 5: resistances in series add; in parallel their conductances do.
    [Fact]
    public void Solve_SeriesAndParallel_AreTheirEquivalents()
    {
        OperatingPoint separate = Camera(b => b
            .AddBranch("a", "s+", "x", Ohms(0.5)).AddBranch("b", "x", "c+", Ohms(0.75))
            .AddBranch("c", "c-", "s-", Ohms(3)).AddBranch("d", "c-", "s-", Ohms(1.5)));
        OperatingPoint equivalent = Camera(b => b.AddBranch("out", "s+", "c+", Ohms(1.25)).AddBranch("back", "c-", "s-", Ohms(1)));
        Assert.Equal(equivalent.Voltage.Volts, separate.Voltage.Volts, 1e-13);

        // By hand: (12 + √(144 − 4·2.25·9))/2 = 9.96863 V.
        Assert.Equal(9.96863, separate.Voltage.Volts, 5e-6);
    }

    // Ch. 6, the balanced bridge: no current between its middle points, whatever joins them.
    [Fact]
    public void Solve_BalancedBridge_CarriesNothingAcross()
    {
        NetworkSolution solution = new DcNetworkBuilder()
            .AddSource("battery", "top", "bottom", ElectricPotential.FromVolts(12))
            .AddBranch("1", "top", "left", Ohms(1)).AddBranch("2", "left", "bottom", Ohms(2))
            .AddBranch("3", "top", "right", Ohms(3)).AddBranch("4", "right", "bottom", Ohms(6))
            .AddBranch("across", "left", "right", Ohms(0.5))
            .Build("bottom").Solve();
        Assert.Equal(0, solution.CurrentIn("across").Amperes, 1e-14);
        Assert.Equal(8, solution.VoltageAt("left").Volts, 1e-13);
        Assert.Equal(4 + (4 / 3.0), solution.CurrentFrom("battery").Amperes, 1e-13);
    }

    // Not a law: more draw, less voltage. A heater between the second camera's positive and the first one's negative:
    // the first camera's current lifts that negative, so the heater draws less and lets the second camera have more.
    [Fact]
    public void Solve_HeaterBetweenFloatingNodes_MoreDrawOfOneRaisesTheOther()
    {
        OperatingPoint little = KnownNetworks.MoreIsMore(2).Solve().AtLoad("second"), more = KnownNetworks.MoreIsMore(6).Solve().AtLoad("second");
        Assert.True(more.Voltage.Volts > little.Voltage.Volts + 0.1, $"{little} and {more}");
    }

    [Fact]
    public void Solve_WithoutLoads_StandsAtTheSourceVoltageAndDrawsNothing()
    {
        NetworkSolution solution = new DcNetworkBuilder()
            .AddSource("supply", "s+", "s-", ElectricPotential.FromVolts(24), Ohms(0.1))
            .AddBranch("out", "s+", "c+", Ohms(1)).AddBranch("back", "s-", "c-", Ohms(1))
            .Build("c-").Solve();
        Assert.Equal(24, solution.VoltageAt("c+").Volts);
        Assert.Equal(0, solution.CurrentFrom("supply").Amperes);
        Assert.Equal(0, solution.Balance.Delivered);
    }

    // A branch of no resistance: its current is known all the same, from what lies behind it.
    [Fact]
    public void Solve_BranchWithoutResistance_CarriesWhatLiesBehindIt()
    {
        foreach (bool meshed in new[] { false, true })
        {
            DcNetworkBuilder builder = new DcNetworkBuilder()
                .AddSource("supply", "s+", "s-", ElectricPotential.FromVolts(12))
                .AddBranch("fuse", "s+", "f+", Ohms(0)).AddBranch("out", "f+", "c+", Ohms(1)).AddBranch("back", "c-", "s-", Ohms(1))
                .AddLoad("camera", "c+", "c-", Load.ConstantCurrent(ElectricCurrent.FromAmperes(0.5)));
            if (meshed) builder.AddBranch("second back", "c-", "s-", Ohms(1));
            DcNetwork network = builder.Build("s-");
            NetworkSolution solution = network.Solve();
            Assert.Equal(0.5, solution.CurrentIn("fuse").Amperes, 1e-14);
            Assert.Equal(0.5, solution.CurrentFrom("supply").Amperes, 1e-14);
            Assert.Equal(12, solution.VoltageAt("f+").Volts);
        }
    }

    private static DcNetwork Mesh(int seed) => new RandomNetworks(seed).Create("tied returns", 6, 0.1, mixedShares: false);

    private static double Drop(DcNetwork network, string drawing, string reading)
    {
        double without = With(network, drawing, 0).Solve().AtLoad(reading).Voltage.Volts;
        return without - With(network, drawing, 0.02).Solve().AtLoad(reading).Voltage.Volts;
    }

    private static double[] Volts(DcNetwork network, double one, double other)
    {
        NetworkSolution solution = With(With(network, "load 1", one), "load 5", other).Solve();
        var volts = new List<double>();
        foreach (string node in network.NodeNames) volts.Add(solution.VoltageAt(node).Volts);
        return [.. volts];
    }

    // That load alone draws; the others nothing, but those set before.
    private static DcNetwork With(DcNetwork network, string name, double amperes)
    {
        var loads = new Dictionary<string, Load>(StringComparer.Ordinal);
        foreach (NetworkLoad load in network.Loads) loads[load.Name] = load.Load.PowerComponent.Watts > 0 ? Load.None : load.Load;
        loads[name] = Load.ConstantCurrent(ElectricCurrent.FromAmperes(amperes));
        return network.WithLoads(loads);
    }

    private static OperatingPoint Camera(Func<DcNetworkBuilder, DcNetworkBuilder> wire) =>
        wire(new DcNetworkBuilder().AddSource("supply", "s+", "s-", ElectricPotential.FromVolts(12)))
            .AddLoad("camera", "c+", "c-", Load.ConstantPower(Power.FromWatts(9))).Build("s-").Solve().AtLoad("camera");

    private static ElectricResistance Ohms(double ohms) => ElectricResistance.FromOhms(ohms);
}
