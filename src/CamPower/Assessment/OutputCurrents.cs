using System;
using System.Collections.Generic;
using CamPower.Circuits;
using CamPower.Sites;

namespace CamPower.Assessment;

/// <summary>The current of each output of a group with everything on.</summary>
/// <remarks>The larger of those at the lowest and the highest supply voltage: only a resistance draws more at the higher.</remarks>
internal sealed class OutputCurrents
{
    /// <summary>Works the currents out; at lowest is the voltage of each device there, 0 without an operating point. [V]</summary>
    internal OutputCurrents(FeedCircuit circuit, RailVolts lowest, RailVolts highest, Load[] loads, double[] atLowest)
    {
        AreDemandOnly = Array.Exists(atLowest, volts => !(volts > RunKernel.NoOperatingPoint));
        Amperes = Totals(circuit.Group, lowest, loads, atLowest);
        if (!Array.Exists(loads, load => load.Siemens > 0)) return;
        double[] atHighest = Totals(circuit.Group, highest, loads, FeedSolver.Solved(circuit, highest, loads));
        for (int f = 0; f < Amperes.Length; f++) Amperes[f] = Math.Max(Amperes[f], atHighest[f]);
    }

    /// <summary>Whether the group has no operating point: the currents are then what the loads ask for.</summary>
    internal bool AreDemandOnly { get; }

    /// <summary>The current of each output. [A]</summary>
    internal double[] Amperes { get; }

    // Without an operating point there is no current to speak of: what the loads ask for at the source stands for it.
    private static double[] Totals(FeedGroup group, RailVolts rail, Load[] loads, double[] volts)
    {
        var amperes = new double[group.Feeds.Count];
        int i = 0;
        for (int f = 0; f < amperes.Length; f++)
        {
            OutputFeed feed = group.Feeds[f];
            for (int last = i + feed.Devices.Count; i < last; i++)
            {
                amperes[f] += loads[i].AmperesAt(volts[i] > RunKernel.NoOperatingPoint ? volts[i] : rail.Of(feed.Box));
            }
        }

        return amperes;
    }
}
