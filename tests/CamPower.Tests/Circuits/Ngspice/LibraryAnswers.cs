using System;
using System.Linq;
using CamPower.Circuits;
using UnitsNet;

namespace CamPower.Tests.Circuits.Ngspice;

/// <summary>What the package makes of a simulated network.</summary>
internal static class LibraryAnswers
{
    /// <summary>Largest difference from the simulator that is put down to the simulator's own tolerances. [1]</summary>
    /// <remarks>It stops at a step of 1e-10; the worst of the single runs is 1e-11 off the exact root. Near the limit a slip counts
    /// many times over in the voltage: some 30 times at 99.9 % of the most power.</remarks>
    public const double Tolerance = 1e-10;

    /// <summary>Voltages of all nodes by the solver for trees, or null without an operating point. [V]</summary>
    public static double[]? ByTree(SimulatedNetwork network)
    {
        var volts = new double[network.Nodes.Count];
        bool solved = RadialKernel.TrySolve([.. network.Nodes.Select(n => n.Parent)], [.. network.Nodes.Select(n => n.Ohms)],
            [.. network.Nodes.Select(LoadOf)], network.SourceVolts, volts);
        return solved ? volts : null;
    }

    /// <summary>Voltage of the one node by the closed form, or null without an operating point. [V]</summary>
    public static double[]? ByClosedForm(SimulatedNetwork run)
    {
        SimulatedNode node = run.Nodes.Single();
        double volts = RunKernel.LoadVolts(run.SourceVolts, node.Ohms, LoadOf(node));
        return volts > RunKernel.NoOperatingPoint ? [volts] : null;
    }

    /// <summary>Fails unless the package and the simulator say the same.</summary>
    public static void AssertAgrees(SimulatedNetwork simulated, double[]? answer)
    {
        Assert.Equal(simulated.HasOperatingPoint, answer is not null);
        for (int i = 0; i < answer?.Length; i++)
        {
            double expected = simulated.Nodes[i].Volts!.Value;
            Assert.InRange(Math.Abs(answer[i] - expected) / expected, 0, Tolerance);
        }
    }

    private static Load LoadOf(SimulatedNode node)
    {
        Load load = Load.ConstantPower(Power.FromWatts(node.Watts)) + Load.ConstantCurrent(ElectricCurrent.FromAmperes(node.Amperes));
        return node.LoadOhms is { } ohms ? load + Load.ConstantResistance(ElectricResistance.FromOhms(ohms)) : load;
    }
}
