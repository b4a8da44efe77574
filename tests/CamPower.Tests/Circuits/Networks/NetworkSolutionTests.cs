using System;
using System.Linq;
using CamPower.Circuits;
using UnitsNet;

namespace CamPower.Tests.Circuits.Networks;

public class NetworkSolutionTests
{
    public static TheoryData<string, int> Cases()
    {
        var data = new TheoryData<string, int>();
        foreach (string shape in RandomNetworks.Shapes)
        {
            for (int seed = 0; seed < 12; seed++) data.Add(shape, seed);
        }

        return data;
    }

    // Conservation, twice: of power over the whole network, and of current at each node, both from what the result reports.
    [Theory]
    [MemberData(nameof(Cases))]
    public void Solve_AnyShape_BalancesPowerAndCurrent(string shape, int seed)
    {
        DcNetwork network = Network(shape, seed, 0.9);
        NetworkSolution solution = network.Solve();
        Assert.True(solution.HasOperatingPoint);
        double delivered = solution.Balance.Delivered;
        Assert.InRange(solution.Balance.Residual / delivered, -1e-10, 1e-10);
        foreach (string node in network.NodeNames) Assert.InRange(NetCurrent(network, solution, node), -1e-10, 1e-10);
    }

    // Ohm's law in every branch and source and each load's own law, which conservation alone would not see.
    [Theory]
    [MemberData(nameof(Cases))]
    public void Solve_AnyShape_ObeysTheLawOfEachElement(string shape, int seed)
    {
        DcNetwork network = Network(shape, seed, 0.9);
        NetworkSolution solution = network.Solve();
        foreach (NetworkBranch branch in network.Branches)
        {
            double drop = Volts(solution, branch.From) - Volts(solution, branch.To);
            Assert.Equal(drop, branch.Resistance.Ohms * solution.CurrentIn(branch.Name).Amperes, 1e-11);
        }

        foreach (NetworkSource source in network.Sources)
        {
            double across = Volts(solution, source.PositiveNode) - Volts(solution, source.NegativeNode);
            if (solution.BlockedSources.Contains(source.Name)) Assert.True(across >= source.Voltage.Volts);
            else Assert.Equal(source.Voltage.Volts - across, source.Resistance.Ohms * solution.CurrentFrom(source.Name).Amperes, 1e-11);
        }

        foreach (NetworkLoad load in network.Loads)
        {
            OperatingPoint at = solution.AtLoad(load.Name);
            double across = Volts(solution, load.PositiveNode) - Volts(solution, load.NegativeNode);
            Assert.Equal(across, at.Voltage.Volts, 1e-10);
            Assert.Equal(load.Load.CurrentAt(at.Voltage).Amperes, at.Current.Amperes, 1e-12);
        }
    }

    // The same network described backwards: other node numbers, another order of elimination, the same answer.
    [Theory]
    [MemberData(nameof(Cases))]
    public void Solve_DescribedInAnotherOrder_GivesTheSame(string shape, int seed)
    {
        DcNetwork network = Network(shape, seed, 0.9);
        NetworkSolution expected = network.Solve(), actual = Backwards(network).Solve();
        foreach (string node in network.NodeNames) Assert.Equal(Volts(expected, node), Volts(actual, node), 1e-10);
    }

    // The two ways of solving are independent of each other: one conductor described as two in parallel makes a mesh of a tree.
    [Theory]
    [InlineData("radial")]
    [InlineData("chain")]
    [InlineData("single-ended")]
    public void Solve_RadialAsMesh_GivesTheSame(string shape)
    {
        for (int seed = 0; seed < 12; seed++)
        {
            DcNetwork network = Network(shape, seed, 0.99);
            Assert.True(network.IsRadial);
            NetworkBranch split = network.Branches[0];
            ElectricResistance half = ElectricResistance.FromOhms(2 * split.Resistance.Ohms);
            DcNetwork mesh = Copy(network, [.. network.Branches.Skip(1)], [.. network.Loads])
                .AddBranch("one half", split.From, split.To, half)
                .AddBranch("other half", split.From, split.To, half)
                .Build("n0");
            Assert.False(mesh.IsRadial);
            NetworkSolution expected = network.Solve(), actual = mesh.Solve();
            foreach (string node in network.NodeNames) Assert.Equal(Volts(expected, node), Volts(actual, node), 1e-10);
        }
    }

    [Fact]
    public void Solve_OneRun_MatchesTheClosedForm()
    {
        var cable = Cable.Pair(WireSize.Awg(18), Stranding.ClassB, ConductorMaterial.AnnealedCopper);
        CableRun run = new CableRun(cable, Length.FromFeet(120)).Then(new Joint("splice", ElectricResistance.FromMilliohms(20)));
        Temperature hot = Temperature.FromDegreesCelsius(40);
        Load camera = RandomNetworks.Shares(9, 0.05, 100);
        DcNetwork network = new DcNetworkBuilder()
            .AddSource("supply", "s+", "s-", ElectricPotential.FromVolts(12))
            .AddRun("run", run, "s+", "c+", "s-", "c-", hot)
            .AddLoad("camera", "c+", "c-", camera)
            .Build("s-");
        RunResult expected = run.Feed(camera, ElectricPotential.FromVolts(12), hot);
        OperatingPoint actual = network.Solve().AtLoad("camera");
        Assert.True(network.IsRadial);
        Assert.Equal(expected.LoadVoltage.Volts, actual.Voltage.Volts, 1e-13);
        Assert.Equal((double)expected.MaximumPower!.Value.Watts / 9, network.MarginToCollapse()!.Value.DecimalFractions, 1e-9);
    }

    private static DcNetwork Network(string shape, int seed, double share) =>
        new RandomNetworks(seed).Create(shape, 3 + seed, share, mixedShares: seed % 2 == 1, largerOf: seed % 3 == 2);

    private static double Volts(NetworkSolution solution, string node) => solution.VoltageAt(node).Volts;

    private static double NetCurrent(DcNetwork network, NetworkSolution solution, string node)
    {
        double net = 0;
        foreach (NetworkBranch branch in network.Branches) net += Share(branch.From, branch.To, solution.CurrentIn(branch.Name).Amperes);
        foreach (NetworkLoad load in network.Loads) net += Share(load.PositiveNode, load.NegativeNode, solution.AtLoad(load.Name).Current.Amperes);
        foreach (NetworkSource source in network.Sources) net -= Share(source.PositiveNode, source.NegativeNode, solution.CurrentFrom(source.Name).Amperes);
        return net;

        double Share(string from, string to, double amperes) => (from == node ? amperes : 0) - (to == node ? amperes : 0);
    }

    private static DcNetwork Backwards(DcNetwork network) =>
        Copy(network, [.. network.Branches.Reverse()], [.. network.Loads.Reverse()]).Build(network.Reference);

    private static DcNetworkBuilder Copy(DcNetwork network, NetworkBranch[] branches, NetworkLoad[] loads)
    {
        var builder = new DcNetworkBuilder();
        foreach (NetworkBranch b in branches) builder.AddBranch(b.Name, b.From, b.To, b.Resistance);
        foreach (NetworkSource s in network.Sources) builder.AddSource(s.Name, s.PositiveNode, s.NegativeNode, s.Voltage, s.Resistance);
        foreach (NetworkLoad l in loads) builder.AddLoad(l.Name, l.PositiveNode, l.NegativeNode, l.Load);
        return builder;
    }
}
