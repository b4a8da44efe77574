using System.Collections.Generic;
using UnitsNet;

namespace CamPower.Tests;

/// <summary>One of each public type that tabulated conductors, self-heating and identification brought.</summary>
internal static class ConductorSamples
{
    internal static IEnumerable<object> All()
    {
        Conductor coated = Conductor.NecCoatedCopper(WireSize.Awg(18), Stranding.ClassB);
        InstallationMethod bundle = InstallationMethod.LargeBundle;
        CableIdentification identified = CableIdentification.Of(ElectricResistance.FromOhms(2.5), Length.FromMeters(30.5), Temperature.FromDegreesCelsius(20.5), Ratio.FromPercent(1.5));
        return
        [
            coated, coated.Basis, coated.InParallel(2), CableCatalog.CoaxWithPair18, JointCatalog.GelSplices,
            bundle, bundle.Heat(coated, ElectricCurrent.FromAmperes(3.5), Temperature.FromDegreesCelsius(40.5)),
            bundle.Heat(coated, ElectricCurrent.FromAmperes(300.5), Temperature.FromDegreesCelsius(40.5)),
            identified, identified.Groups[0][0],
        ];
    }
}
