using CamPower;
using UnitsNet;

namespace Classroom.Browser;

/// <summary>The same questions, put to the library without the page.</summary>
internal static class Asked
{
    internal static RunResult Run(double feet = 120, int awg = 18, Stranding? stranding = null, ConductorMaterial? material = null,
        double celsius = 40, double volts = 12, Load? load = null)
    {
        var cable = Cable.Pair(WireSize.Awg(awg), stranding ?? Stranding.ClassB, material ?? ConductorMaterial.AnnealedCopper);
        return new CableRun(cable, Length.FromFeet(feet)).Feed(load ?? Load.ConstantPower(Power.FromWatts(9)),
            ElectricPotential.FromVolts(volts), Temperature.FromDegreesCelsius(celsius));
    }
}
