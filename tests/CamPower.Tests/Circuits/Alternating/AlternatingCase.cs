using System.Collections.Generic;
using System.Linq;
using CamPower.Circuits;
using UnitsNet;

namespace CamPower.Tests.Circuits.Alternating;

/// <summary>A transformer, its runs and its devices, as the circuit simulator and the package both solve them.</summary>
internal sealed record AlternatingCase(string Name, string About, double EmfVolts, double WindingOhms, double Hertz, IReadOnlyList<AlternatingRun> Runs,
    IReadOnlyList<AlternatingDevice> Devices, double WindingHenries = 0)
{
    /// <summary>The answer of the package; inductances are left out of it.</summary>
    internal AlternatingSolution? Solve(int steps = AlternatingCircuit.UsualSteps) => new AlternatingCircuit(EmfVolts, Hertz, Ohms(),
        [.. Devices.Select((d, i) => RootOf(d.Run))], [.. Devices.SelectMany(Elements)], RectifierDiode.Silicon, steps).Solve();

    internal double[,] Ohms()
    {
        var ohms = new double[Devices.Count, Devices.Count];
        for (int i = 0; i < Devices.Count; i++)
        {
            for (int j = 0; j < Devices.Count; j++)
            {
                ohms[i, j] = WindingOhms + Path(Devices[i].Run).Intersect(Path(Devices[j].Run)).Sum(run => Runs[run].Ohms);
            }
        }

        return ohms;
    }

    private static IEnumerable<AlternatingElement> Elements(AlternatingDevice device, int index)
    {
        Load load = Load.ConstantPower(Power.FromWatts(device.Watts));
        if (device.Diodes == 0)
        {
            yield return AlternatingElement.Linear(index, load, device.PowerFactor);
            yield break;
        }

        yield return AlternatingElement.Rectifier(index, load, device.Farads, device.Diodes == 1, device.IsReversed);
        if (device.Siemens > 0) yield return AlternatingElement.Linear(index, Load.ConstantResistance(ElectricResistance.FromOhms(1 / device.Siemens)));
    }

    private int RootOf(int run) => Path(run).Last();

    private List<int> Path(int run)
    {
        var path = new List<int>();
        for (int at = run; at >= 0; at = Runs[at].Parent) path.Add(at);
        return path;
    }
}
