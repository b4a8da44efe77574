using System;
using CamPower.Circuits;
using UnitsNet;
using Xunit.Abstractions;

namespace CamPower.Tests.Circuits.Networks;

public class CollapseTests(ITestOutputHelper output)
{
    public static TheoryData<string> Shapes() => [.. RandomNetworks.Shapes];

    // Kuphaldt, Lessons in Electric Circuits, DC, ch. 10 (maximum power transfer), with the other components put in:
    // the most power is (Vs − R·I₀)² / (4·R·(1 + R·G)).
    [Theory]
    [InlineData(12, 3.2, 9, 0, 0)]
    [InlineData(12, 3.2, 9, 0.4, 0)]
    [InlineData(24, 0.7, 1, 0, 0.02)]
    [InlineData(48, 12, 400, 0.3, 0.005)]
    [InlineData(12, 0.001, 0.01, 0.1, 0.1)]
    public void MarginToCollapse_OneLoad_MatchesTheClosedForm(double volts, double ohms, double watts, double amperes, double siemens)
    {
        DcNetwork network = new DcNetworkBuilder()
            .AddSource("supply", "s+", "s-", ElectricPotential.FromVolts(volts))
            .AddBranch("out", "s+", "c+", ElectricResistance.FromOhms(ohms / 4))
            .AddBranch("back", "s-", "c-", ElectricResistance.FromOhms(ohms * 3 / 4))
            .AddLoad("camera", "c+", "c-", RandomNetworks.Shares(watts, amperes, siemens > 0 ? 1 / siemens : null))
            .Build("s-");
        double left = volts - (ohms * amperes);
        double expected = left * left / (4 * ohms * (1 + (ohms * siemens)) * watts);
        Assert.Equal(1, network.MarginToCollapse()!.Value.DecimalFractions / expected, 1e-9);
    }

    // A load of unknown input stage folds on its power component, or is lost where its current component takes the voltage: the
    // run's closed form says where.
    [Fact]
    public void MarginToCollapse_LargerOf_MatchesTheRun()
    {
        var random = new Random(3);
        for (int k = 0; k < 200; k++)
        {
            double ohms = 0.5 + (20 * random.NextDouble());
            Load load = Load.LargerOf(Power.FromWatts(0.1 + (10 * random.NextDouble())), ElectricCurrent.FromAmperes(1.2 * random.NextDouble()));
            RunResult run = Runs.OfOhms(ohms).Feed(load, ElectricPotential.FromVolts(12), Temperature.FromDegreesCelsius(20));
            DcNetwork network = new DcNetworkBuilder()
                .AddSource("supply", "s+", "s-", ElectricPotential.FromVolts(12))
                .AddRun("run", Runs.OfOhms(ohms), "s+", "c+", "s-", "c-", Temperature.FromDegreesCelsius(20))
                .AddLoad("camera", "c+", "c-", load)
                .Build("s-");
            double expected = run.MarginToCollapse!.Value.DecimalFractions, actual = network.MarginToCollapse()!.Value.DecimalFractions;
            Assert.True(Math.Abs(expected - actual) <= 1e-9 * expected, $"{load} over {ohms}: {expected} and {actual}");
            Assert.Equal(run.HasOperatingPoint, network.Solve().HasOperatingPoint);
        }
    }

    // The margin is found by extrapolation; here its meaning is tried: an operating point just below, none just above.
    [Theory]
    [MemberData(nameof(Shapes))]
    public void MarginToCollapse_AnyShape_PartsOperatingPointFromNone(string shape)
    {
        for (int seed = 0; seed < 40; seed++)
        {
            DcNetwork network = At(shape, seed, 1);
            double margin = network.MarginToCollapse()!.Value.DecimalFractions;
            Assert.True(RandomNetworks.Scale(network, margin * (1 - 1e-8)).Solve().HasOperatingPoint, $"seed {seed}, below {margin}");
            Assert.False(RandomNetworks.Scale(network, margin * (1 + 1e-8)).Solve().HasOperatingPoint, $"seed {seed}, above {margin}");
        }
    }

    [Theory]
    [MemberData(nameof(Shapes))]
    public void Solve_At999PerMilleOfCollapse_TakesAtMostTenIterations(string shape)
    {
        int most = 0;
        for (int seed = 0; seed < 40; seed++)
        {
            DcNetwork network = At(shape, seed, 1);
            NetworkSolution solution = RandomNetworks.Scale(network, 0.999 * network.MarginToCollapse()!.Value.DecimalFractions).Solve();
            Assert.True(solution.HasOperatingPoint);
            most = Math.Max(most, solution.Iterations);
        }

        output.WriteLine($"{shape}: at most {most} iterations");

        // With two sources, of which one comes on under load, the branch from zero load is followed to see that it goes so far.
        Assert.True(most <= (shape is "two sources" ? 50 : 10), $"{most} iterations");
    }

    [Theory]
    [MemberData(nameof(Shapes))]
    public void Solve_OnePerMilleAboveCollapse_SaysSoWithinEightIterations(string shape)
    {
        // Where Newton's failure proves nothing (two sources, resistance components between floating nodes), the loads are
        // raised step by step before it is said.
        int allowed = shape is "two sources" or "floating heaters" ? 400 : 8, most = 0;
        for (int seed = 0; seed < 40; seed += 2)
        {
            DcNetwork network = At(shape, seed, 1);
            NetworkSolution solution = RandomNetworks.Scale(network, 1.001 * network.MarginToCollapse()!.Value.DecimalFractions).Solve();
            Assert.False(solution.HasOperatingPoint);
            most = Math.Max(most, solution.Iterations);
        }

        output.WriteLine($"{shape}: at most {most} iterations");
        Assert.True(most <= allowed, $"{most} iterations");
    }

    private static DcNetwork At(string shape, int seed, double share) =>
        new RandomNetworks(seed).Create(shape, 2 + (seed / 2), share, mixedShares: seed % 2 == 1, largerOf: seed % 5 == 4);

    // 12 V over 10 Ω drive 1.2 A at most: 2 A have no operating point and no margin, 1 A can never collapse. One answer from all.
    [Theory]
    [InlineData(2, 0.0)]
    [InlineData(1, null)]
    public void MarginToCollapse_OfConstantCurrent_IsTheSameFromAll(double amperes, double? expected)
    {
        Load load = Load.ConstantCurrent(ElectricCurrent.FromAmperes(amperes));
        ElectricPotential twelve = ElectricPotential.FromVolts(12);
        Temperature twenty = Temperature.FromDegreesCelsius(20);
        DcNetwork network = new DcNetworkBuilder().AddSource("supply", "s", "0", twelve)
            .AddBranch("out", "s", "c", ElectricResistance.FromOhms(10)).AddLoad("camera", "c", "0", load).Build("0");
        DcNetwork mesh = new DcNetworkBuilder().AddSource("supply", "s", "0", twelve).AddBranch("one", "s", "c", ElectricResistance.FromOhms(20))
            .AddBranch("two", "s", "c", ElectricResistance.FromOhms(20)).AddLoad("camera", "c", "0", load).Build("0");
        Assert.Equal(expected, network.MarginToCollapse()?.DecimalFractions);
        Assert.Equal(expected, mesh.MarginToCollapse()?.DecimalFractions);
        Assert.Equal(expected, Runs.OfOhms(10).Feed(load, twelve, twenty).MarginToCollapse?.DecimalFractions);
        Assert.Equal(expected, new CameraChain(new ChainLink(Runs.OfOhms(10), load)).Feed(twelve, twenty).MarginToCollapse?.DecimalFractions);
    }

    // 14 V behind 1.5 Ω alone would fold at 19.6 W; 10 V behind 0.05 Ω comes on just before. Thevenin with both on: 24.47 W, by hand.
    [Fact]
    public void Margin_WhereASecondSourceComesOn_GoesOnWithIt()
    {
        DcNetwork network = new DcNetworkBuilder()
            .AddSource("strong", "bus", "n", ElectricPotential.FromVolts(14), ElectricResistance.FromOhms(1.5))
            .AddSource("reserve", "bus", "n", ElectricPotential.FromVolts(10), ElectricResistance.FromOhms(0.05))
            .AddBranch("way", "bus", "q", ElectricResistance.FromOhms(1))
            .AddLoad("camera", "q", "n", Load.ConstantPower(Power.FromWatts(5)))
            .Build(reference: "n");
        double shared = 1 / ((1 / 1.5) + (1 / 0.05)), volts = ((14 / 1.5) + (10 / 0.05)) * shared;
        Assert.Equal(volts * volts / (4 * (shared + 1)) / 5, network.MarginToCollapse()!.Value.DecimalFractions, 1e-6);
    }
}
