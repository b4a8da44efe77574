using System;
using CamPower.Circuits;
using UnitsNet;

namespace CamPower.Tests.Circuits.Networks;

/// <summary>A supply cannot sink current: the one that would is blocked, and the network solved without it.</summary>
public class BackFeedTests
{
    // By hand: alone, 12.5 V feeds 1 A through 0.5 Ω: 12 V at the camera, above the 11.9 V of the second supply.
    [Fact]
    public void Solve_LowerSupply_IsBlocked()
    {
        NetworkSolution solution = Two(12.5, 11.9, amperes: 1).Solve();
        Assert.Equal(["second"], solution.BlockedSources);
        Assert.Equal(0, solution.CurrentFrom("second").Amperes);
        Assert.Equal(1, solution.CurrentFrom("first").Amperes, 1e-13);
        Assert.Equal(12, solution.AtLoad("camera").Voltage.Volts, 1e-13);
        Assert.Equal(0, solution.Balance.Residual, 1e-12);
    }

    // By hand, Millman: V = (12.5/0.5 + 11.9/0.5 − 3)/(1/0.5 + 1/0.5) = 11.45 V; 2.1 A and 0.9 A.
    [Fact]
    public void Solve_MoreLoad_BringsTheLowerSupplyIn()
    {
        NetworkSolution solution = Two(12.5, 11.9, amperes: 3).Solve();
        Assert.Empty(solution.BlockedSources);
        Assert.Equal(11.45, solution.AtLoad("camera").Voltage.Volts, 1e-13);
        Assert.Equal(2.1, solution.CurrentFrom("first").Amperes, 1e-13);
        Assert.Equal(0.9, solution.CurrentFrom("second").Amperes, 1e-13);
    }

    // Ideal sources too: each at its own end of a cable.
    [Fact]
    public void Solve_IdealSourcesAtBothEnds_TheLowerIsBlocked()
    {
        DcNetwork network = new DcNetworkBuilder()
            .AddSource("low", "a", "0", ElectricPotential.FromVolts(12))
            .AddSource("high", "b", "0", ElectricPotential.FromVolts(13))
            .AddBranch("left", "a", "m", ElectricResistance.FromOhms(1))
            .AddBranch("right", "m", "b", ElectricResistance.FromOhms(1))
            .AddLoad("camera", "m", "0", Load.ConstantCurrent(ElectricCurrent.FromAmperes(0.5)))
            .Build("0");
        NetworkSolution solution = network.Solve();
        Assert.Equal(["low"], solution.BlockedSources);
        Assert.Equal(12.5, solution.AtLoad("camera").Voltage.Volts, 1e-13);
        Assert.Equal(12.5, solution.VoltageAt("a").Volts, 1e-13);
        Assert.Equal(-0.5, solution.CurrentIn("right").Amperes, 1e-13);
    }

    // Equal sources that carry nothing are not in conflict: their current is zero to rounding.
    [Fact]
    public void Solve_EqualSourcesWithoutLoad_AreNotBlocked() =>
        Assert.Empty(Two(12, 12, amperes: 0).Solve().BlockedSources);

    // Kuphaldt, Lessons in Electric Circuits, DC, ch. 10, branch current method (from memory): 28 V behind 4 Ω and 7 V
    // behind 1 Ω on a resistor of 2 Ω give 8 V there; 5 A come from the first, 4 A go down, 1 A charges the second.
    // A supply in its place is blocked: 28·2/6 = 9.33 V.
    [Theory]
    [InlineData(true, 8, 5, -1)]
    [InlineData(false, 28.0 / 3, 14.0 / 3, 0)]
    public void Solve_TextbookBattery_IsCharged(bool maySink, double volts, double first, double second)
    {
        DcNetwork network = new DcNetworkBuilder()
            .AddSource("B1", "bus", "0", ElectricPotential.FromVolts(28), ElectricResistance.FromOhms(4), maySink)
            .AddSource("B2", "bus", "0", ElectricPotential.FromVolts(7), ElectricResistance.FromOhms(1), maySink)
            .AddLoad("R2", "bus", "0", Load.ConstantResistance(ElectricResistance.FromOhms(2)))
            .Build("0");
        NetworkSolution solution = network.Solve();
        Assert.Equal(volts, solution.VoltageAt("bus").Volts, 1e-12);
        Assert.Equal(first, solution.CurrentFrom("B1").Amperes, 1e-12);
        Assert.Equal(second, solution.CurrentFrom("B2").Amperes, 1e-12);
        Assert.Equal(maySink, network.Sources[1].MaySink);
        Assert.Equal(maySink, solution.BlockedSources.Count == 0);
        Assert.Equal(0, solution.Balance.Residual, 1e-12);
    }

    // In the one line and in the working, whether that writes every element down or only the totals.
    [Theory]
    [InlineData(0)]
    [InlineData(60)]
    public void BlockedSource_IsNamed(int moreBranches)
    {
        DcNetworkBuilder builder = new DcNetworkBuilder()
            .AddSource("high", "a", "0", ElectricPotential.FromVolts(13))
            .AddSource("low", "b", "0", ElectricPotential.FromVolts(12))
            .AddBranch("tie", "a", "b", ElectricResistance.FromOhms(0.1));
        for (int i = 0; i < moreBranches; i++) builder.AddBranch($"stub {i}", "b", $"end {i}", ElectricResistance.FromOhms(1));
        NetworkSolution solution = builder.Build("0").Solve();
        Assert.EndsWith("; blocked, since others would feed back into it: low", solution.ToString(), StringComparison.Ordinal);
        Assert.Contains(" Blocked, since others would feed back into it: low.", solution.Explain().Conclusion, StringComparison.Ordinal);
        Assert.DoesNotContain("jump", solution.ToString(), StringComparison.Ordinal);
    }

    // Every set of blocked sources is tried by brute force: only the one found contradicts itself nowhere.
    [Fact]
    public void Solve_ManySources_BlocksTheOneConsistentSet()
    {
        var random = new Random(7);
        for (int k = 0; k < 50; k++)
        {
            double[] volts = [.. Several(5, () => 11.5 + (1.5 * random.NextDouble()))];
            double[] ohms = [.. Several(5, () => 0.05 + random.NextDouble())];
            DcNetwork network = Row(volts, ohms, [true, true, true, true, true], watts: 4);
            NetworkSolution solution = network.Solve();
            Assert.True(solution.HasOperatingPoint);
            int consistent = 0;
            for (int set = 1; set < 32; set++)
            {
                bool[] delivers = [.. Several(5, i => (set >> i) % 2 == 1)];
                if (!IsConsistent(volts, ohms, delivers)) continue;
                consistent++;
                for (int i = 0; i < 5; i++) Assert.Equal(!delivers[i], Contains(solution, $"source {i}"));
            }

            Assert.Equal(1, consistent);
        }
    }

    // A supply that only pushes against another through a load: without it the load's return is nowhere.
    [Fact]
    public void Solve_BlockedSourceWasTheOnlyReturn_HasNoOperatingPoint()
    {
        NetworkSolution solution = new DcNetworkBuilder()
            .AddSource("24 V", "a", "0", ElectricPotential.FromVolts(24))
            .AddSource("12 V", "b", "0", ElectricPotential.FromVolts(12))
            .AddLoad("between", "a", "b", Load.ConstantPower(Power.FromWatts(6)))
            .Build("0").Solve();
        Assert.False(solution.HasOperatingPoint);
        Assert.Empty(solution.BlockedSources);
        Assert.Throws<InvalidOperationException>(() => solution.Balance);
        Assert.Throws<InvalidOperationException>(() => solution.VoltageAt("a"));
    }

    private static bool IsConsistent(double[] volts, double[] ohms, bool[] delivers)
    {
        // The sources left out are not there at all, so that the library has nothing to block but a wrong set.
        DcNetwork network = Row(volts, ohms, delivers, watts: 4);
        NetworkSolution solution = network.Solve();
        if (!solution.HasOperatingPoint || solution.BlockedSources.Count > 0) return false;
        for (int i = 0; i < volts.Length; i++)
        {
            if (!delivers[i] && solution.VoltageAt($"n{i}").Volts < volts[i]) return false;
        }

        return true;
    }

    private static bool Contains(NetworkSolution solution, string source)
    {
        foreach (string blocked in solution.BlockedSources)
        {
            if (string.Equals(blocked, source, StringComparison.Ordinal)) return true;
        }

        return false;
    }

    // A cable with a camera at each of its points, and a supply at those that deliver.
    private static DcNetwork Row(double[] volts, double[] ohms, bool[] delivers, double watts)
    {
        var builder = new DcNetworkBuilder();
        for (int i = 0; i < volts.Length; i++)
        {
            if (i > 0) builder.AddBranch($"cable {i}", $"n{i - 1}", $"n{i}", ElectricResistance.FromOhms(0.3));
            if (delivers[i]) builder.AddSource($"source {i}", $"n{i}", "0", ElectricPotential.FromVolts(volts[i]), ElectricResistance.FromOhms(ohms[i]));
            builder.AddLoad($"camera {i}", $"n{i}", "0", Load.ConstantPower(Power.FromWatts(watts)));
        }

        return builder.Build("0");
    }

    private static DcNetwork Two(double first, double second, double amperes) => new DcNetworkBuilder()
        .AddSource("first", "c", "0", ElectricPotential.FromVolts(first), ElectricResistance.FromOhms(0.5))
        .AddSource("second", "c", "0", ElectricPotential.FromVolts(second), ElectricResistance.FromOhms(0.5))
        .AddLoad("camera", "c", "0", Load.ConstantCurrent(ElectricCurrent.FromAmperes(amperes)))
        .Build("0");

    private static T[] Several<T>(int count, Func<T> make) => Several(count, _ => make());

    private static T[] Several<T>(int count, Func<int, T> make)
    {
        var all = new T[count];
        for (int i = 0; i < count; i++) all[i] = make(i);
        return all;
    }
}
