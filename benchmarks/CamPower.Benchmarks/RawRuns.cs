using System.Linq;
using CamPower.Circuits;

namespace CamPower.Benchmarks;

/// <summary>The bare closed form for each camera of a site in each condition: the price of everything else is the ratio to it.</summary>
internal sealed class RawRuns(Site site)
{
    private readonly double[] _ohms = [.. site.Conditions.SelectMany(c => site.Runs.Select(r => r.Run.LoopResistanceAt(c.At.Cable).Ohms))];
    private readonly double[] _watts = [.. site.Conditions.SelectMany(c => site.Devices.Select(d => (double)d.Model.Draw.In(c).PowerComponent.Watts))];

    internal double Sum()
    {
        double sum = 0;
        for (int i = 0; i < _ohms.Length; i++) sum += RunKernel.LoadVolts(0.99 * MadeUpSite.SetVolts, _ohms[i], _watts[i], 0, 0);
        return sum;
    }
}
