using System;
using System.Collections.Generic;
using System.Linq;
using CamPower.Circuits;
using UnitsNet;

namespace CamPower.Tests.Circuits.Networks;

/// <summary>Several sources that cannot sink current and one constant-power load on one bus, in closed form.</summary>
/// <remarks>
/// With the k highest sources delivering, between the voltages of the next lower one and of the lowest of them, the bus
/// carries P(V) = V·Σ(Eᵢ − V)/Rᵢ = V·(A − G·V): Kirchhoff's current law and no more. From the highest source down P rises to the first
/// peak, at A/2G of its piece; that is the branch from zero load. It may fall then, and rise again where the next source
/// comes on: another branch, which only a jump reaches.
/// </remarks>
internal sealed class OneBus
{
    private readonly List<(double FromVolts, double ToVolts, double Amperes, double Siemens)> _pieces = [];
    private readonly List<(int First, int Last, double PeakVolts, double PeakWatts)> _branches = [];

    internal OneBus(double[] volts, double[] ohms)
    {
        int[] order = [.. Enumerable.Range(0, volts.Length).OrderByDescending(i => volts[i])];
        double amperes = 0, siemens = 0;
        for (int k = 0; k < order.Length; k++)
        {
            amperes += volts[order[k]] / ohms[order[k]];
            siemens += 1 / ohms[order[k]];
            _pieces.Add((volts[order[k]], k + 1 < order.Length ? volts[order[k + 1]] : 0, amperes, siemens));
        }

        int first = 0;
        for (int k = 0; k < _pieces.Count; k++)
        {
            double peak = _pieces[k].Amperes / (2 * _pieces[k].Siemens);
            Degenerate |= Math.Abs(peak - _pieces[k].ToVolts) < 1e-5 * peak || Math.Abs(peak - _pieces[k].FromVolts) < 1e-5 * peak;
            if (peak <= _pieces[k].ToVolts) continue;
            if (peak < _pieces[k].FromVolts) _branches.Add((first, k, peak, peak * peak * _pieces[k].Siemens));
            first = k + 1;
        }
    }

    /// <summary>Whether a peak lies where a source comes on, to within what a search can tell apart.</summary>
    internal bool Degenerate { get; }

    /// <summary>The load at which each branch ends, the branch from zero load first. [W]</summary>
    internal IEnumerable<double> PeakWatts => _branches.Select(b => b.PeakWatts);

    /// <summary>The branch that holds the operating point, or -1.</summary>
    internal int BranchAt(double watts) => _branches.FindIndex(b => b.PeakWatts >= watts);

    internal double VoltsAt(double watts)
    {
        (int first, int last, double peakVolts, _) = _branches[BranchAt(watts)];
        for (int k = first; k <= last; k++)
        {
            (double from, double to, double a, double g) = _pieces[k];
            double volts = (a + Math.Sqrt((a * a) - (4 * g * watts))) / (2 * g);
            if (volts <= from * (1 + 1e-12) && volts >= Math.Max(to, peakVolts) * (1 - 1e-12)) return volts;
        }

        throw new InvalidOperationException("The branch holds every load up to its peak.");
    }

    internal double MarginAt(double watts) => (BranchAt(watts) is int b and >= 0 ? _branches[b].PeakWatts : PeakWatts.Max()) / watts;

    internal static DcNetwork Network(double[] volts, double[] ohms, double watts)
    {
        var builder = new DcNetworkBuilder();
        for (int i = 0; i < volts.Length; i++)
        {
            builder.AddSource($"{i}", "bus", "0", ElectricPotential.FromVolts(volts[i]), ElectricResistance.FromOhms(ohms[i]));
        }

        return builder.AddLoad("camera", "bus", "0", Load.ConstantPower(Power.FromWatts(watts))).Build("0");
    }
}
