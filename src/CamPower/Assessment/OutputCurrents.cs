using System;
using System.Collections.Generic;
using CamPower.Circuits;
using CamPower.Sites;

namespace CamPower.Assessment;

/// <summary>The current of each output of a group with everything on.</summary>
/// <remarks>The larger of those at the lowest and the highest supply voltage: only a resistance draws more at the higher.</remarks>
internal sealed class OutputCurrents
{
    private readonly FeedCircuit _circuit;
    private readonly Load[] _loads;
    private readonly RailVolts _lowest, _highest;
    private readonly double[] _atLowest, _atHighest;

    /// <summary>Works the currents out; at lowest is the voltage of each device there, 0 without an operating point. [V]</summary>
    internal OutputCurrents(FeedCircuit circuit, RailVolts lowest, RailVolts highest, Load[] loads, double[] atLowest)
    {
        _circuit = circuit;
        _lowest = lowest;
        _highest = highest;
        _loads = loads;
        _atLowest = atLowest;
        _atHighest = Array.Exists(loads, load => load.Siemens > 0) ? FeedSolver.Solved(circuit, highest, loads) : atLowest;
    }

    /// <summary>Whether the group has no operating point: the currents are then what the loads ask for.</summary>
    internal bool AreDemandOnly => Array.Exists(_atLowest, volts => !(volts > RunKernel.NoOperatingPoint));

    /// <summary>The current of one output, given the place of its first device in the group. [A]</summary>
    internal double Of(OutputFeed feed, int firstDevice)
    {
        double lowest = Total(feed, firstDevice, _atLowest, _lowest);
        return ReferenceEquals(_atHighest, _atLowest) ? lowest : Math.Max(lowest, Total(feed, firstDevice, _atHighest, _highest));
    }

    // Without an operating point there is no current to speak of: what the loads ask for at the source stands for it.
    private double Total(OutputFeed feed, int firstDevice, double[] volts, RailVolts rail)
    {
        double amperes = 0;
        for (int i = firstDevice; i < firstDevice + feed.Devices.Count; i++)
        {
            IReadOnlyList<FedDevice> devices = _circuit.Group.Devices;
            amperes += _loads[i].AmperesAt(volts[i] > RunKernel.NoOperatingPoint ? volts[i] : rail.Of(devices[i].Box));
        }

        return amperes;
    }
}
