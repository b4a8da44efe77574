using System;
using System.Collections.Generic;

namespace CamPower.Commissioning;

/// <summary>The faults of one feed as changes of its circuit. SI doubles.</summary>
internal sealed class FeedFaults
{
    /// <summary>What a meter shows between conductors that nothing joins: the end of its range, or beyond. [Ω]</summary>
    internal const double OpenOhms = 2e7;

    internal FeedFaults(int runs, int devices)
    {
        RunFactor = new double[runs];
        RunOhms = new double[runs];
        ShieldOhms = new double[devices];
        LeakOhms = new double[runs];
        IsOpen = new bool[runs];
        IsReversed = new bool[devices];
        DrawFactor = new double[devices];
        OtherDevice = new int?[devices];
        for (int run = 0; run < runs; run++) (RunFactor[run], LeakOhms[run]) = (1, double.PositiveInfinity);
        for (int device = 0; device < devices; device++) (ShieldOhms[device], DrawFactor[device]) = (double.PositiveInfinity, 1);
    }

    /// <summary>By how much the resistance of each run is larger. [1]</summary>
    internal double[] RunFactor { get; }

    /// <summary>What a joint adds to each run. [Ω]</summary>
    internal double[] RunOhms { get; }

    /// <summary>Resistance of a way back beside the return conductor of the run to a device. [Ω]</summary>
    internal double[] ShieldOhms { get; }

    /// <summary>Resistance between the conductors at the end of each run. [Ω]</summary>
    internal double[] LeakOhms { get; }

    internal bool[] IsOpen { get; }

    internal bool[] IsReversed { get; }

    internal double[] DrawFactor { get; }

    /// <summary>Which model of the site each device is instead; null where it is the stated one.</summary>
    internal int?[] OtherDevice { get; }

    internal bool IsProtectionOpen { get; private set; }

    /// <summary>Whether its run hangs on another output.</summary>
    internal bool IsElsewhere { get; private set; }

    internal static FeedFaults Of(IReadOnlyList<Deviation> faults, int unit, int runs, int devices)
    {
        var all = new FeedFaults(runs, devices);
        for (int i = 0; i < faults.Count; i++)
        {
            if (faults[i].Unit == unit) all.Add(faults[i]);
        }

        return all;
    }

    private void Add(Deviation fault)
    {
        int at = fault.Place;
        switch (fault.Cause)
        {
            case Cause.WrongConductor or Cause.LongerRun: RunFactor[at] *= 1 + fault.Size; break;
            case Cause.PoorJoint: RunOhms[at] += fault.Size; break;
            case Cause.WaterInJoint: LeakOhms[at] = fault.Size; break;
            case Cause.OpenConductor: IsOpen[at] = true; break;
            case Cause.ShortCircuit: (LeakOhms[at], IsProtectionOpen) = (fault.Size, true); break;
            case Cause.ReversedLeads: IsReversed[at] = true; break;
            case Cause.WrongOutput: IsElsewhere = true; break;
            case Cause.ProtectiveDeviceOpen or Cause.ProtectiveDeviceHot: IsProtectionOpen = true; break;
            case Cause.LoadTooLarge: DrawFactor[at] *= fault.Size; break;
            case Cause.WrongDevice: OtherDevice[at] = (int)fault.Size; break;
            case Cause.ShieldCarriesReturn: ShieldOhms[at] = fault.Size; break;
            default: throw new ArgumentOutOfRangeException(nameof(fault), fault.Cause, "This is no fault of a feed.");
        }
    }
}
