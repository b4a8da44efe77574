using System;
using System.Collections.Generic;
using System.Linq;
using CamPower.Tests.Sites;

namespace CamPower.Tests.Assessment;

/// <summary>A tree of runs on one output, behind its protective device. Node i is fed by <see cref="Parents"/>[i], which is smaller, or by the output where that is -1.</summary>
public sealed record TreeCase(double Volts, IReadOnlyList<int> Parents, IReadOnlyList<double> Ohms, IReadOnlyList<TreeDevice> Devices, bool FromOff,
    double ProtectionOhms)
{
    /// <summary>The site, its runs and devices listed in an order of the caller's.</summary>
    internal Site Site(Func<int, int>? deviceOrder = null, Func<int, int>? runOrder = null)
    {
        Condition condition = FromOff ? Condition.ColdStart(SmallSite.At()) : Condition.Day(SmallSite.At());
        IEnumerable<SiteRun> runs = Enumerable.Range(0, Parents.Count).OrderBy(runOrder ?? (i => i)).Select(i => new SiteRun(
            Parents[i] < 0 ? RunOrigin.Output(SmallSite.BoxName, 1) : RunOrigin.Junction(SmallSite.Place(Parents[i])), SmallSite.Place(i), Runs.OfOhms(Ohms[i])));
        IEnumerable<SiteDevice> devices = Enumerable.Range(0, Devices.Count).OrderBy(deviceOrder ?? (i => i)).Select(i => new SiteDevice(SmallSite.Name(i),
            SmallSite.Camera(Devices[i].Load, starting: Devices[i].IsDeclared ? SmallSite.Starts(Devices[i].TurnOn, Devices[i].DropOut, Devices[i].Soft) : null),
            SmallSite.Place(Devices[i].Node)));
        return new Site("site", [condition], [Box(SmallSite.Dc(Volts))], runs, devices);
    }

    /// <summary>The box with a supply.</summary>
    internal DistributionBox Box(Supply supply) => SmallSite.Box(supply, protection: SmallSite.SeriesOhms(ProtectionOhms));

    /// <summary>The voltage of every node with some of the devices drawing, or null where nothing balances.</summary>
    /// <remarks>
    /// Backward-forward sweep with nothing linearized: the currents at the last voltages give the next voltages. From the
    /// source voltage these fall, and end at the highest point that balances, if there is one.
    /// </remarks>
    internal double[]? Sweep(IReadOnlyList<bool> draws, int replaced = -1, double byAmperes = 0)
    {
        double[] volts = [.. Enumerable.Repeat(Volts, Parents.Count)], amperes = new double[Parents.Count];
        for (int iteration = 0; iteration < 200_000; iteration++)
        {
            Array.Clear(amperes);
            for (int d = 0; d < Devices.Count; d++)
            {
                TreeDevice device = Devices[d];
                if (d == replaced) amperes[device.Node] += byAmperes;
                else if (draws[d]) amperes[device.Node] += (device.Watts / volts[device.Node]) + device.Amperes;
            }

            for (int i = Parents.Count - 1; i >= 0; i--)
            {
                if (Parents[i] >= 0) amperes[Parents[i]] += amperes[i];
            }

            double step = 0, output = Volts - (ProtectionOhms * Enumerable.Range(0, Parents.Count).Where(i => Parents[i] < 0).Sum(i => amperes[i]));
            for (int i = 0; i < Parents.Count; i++)
            {
                double now = (Parents[i] < 0 ? output : volts[Parents[i]]) - (Ohms[i] * amperes[i]);
                if (!(now > 0)) return null;
                step = Math.Max(step, Math.Abs(now - volts[i]));
                volts[i] = now;
            }

            if (step <= 1e-14 * Volts) return volts;
        }

        throw new InvalidOperationException("The sweep did not settle.");
    }
}
