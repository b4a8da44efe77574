using UnitsNet;

namespace CamPower.Tests;

/// <summary>Runs that several tests need.</summary>
internal static class Runs
{
    internal static readonly Cable Eighteen = Cable.Pair(WireSize.Awg(18), Stranding.Solid, ConductorMaterial.AnnealedCopper);

    /// <summary>A run of a given loop resistance at any temperature: no cable, one joint.</summary>
    internal static CableRun OfOhms(double ohms) =>
        new(new CableSegment(Eighteen, oneWayLength: Length.Zero), new Joint("loop", ElectricResistance.FromOhms(ohms)));
}
