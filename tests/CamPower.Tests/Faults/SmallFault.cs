using CamPower.Tests.Protection;
using UnitsNet;

namespace CamPower.Tests.Faults;

/// <summary>Faults with round numbers: a supply without tolerance, 18 AWG of solid copper, 20 °C throughout unless said otherwise.</summary>
internal static class SmallFault
{
    internal static Supply Source(OverloadBehavior? overload = null, double volts = 12, double ohms = 0.1, double percent = 0, double farads = 0) => new("supply",
        new DcOutput(ElectricPotential.FromVolts(volts), ElectricCurrent.FromAmperes(20), Ratio.FromPercent(percent),
            sourceResistance: ElectricResistance.FromOhms(ohms), overload: overload ?? OverloadBehavior.Unlimited,
            capacitance: farads > 0 ? ElectricCapacitance.FromFarads(farads) : null), Derating.GenericEnclosed);

    /// <summary>A condition in which all is cold, and one in which all is hot.</summary>
    internal static Surroundings[] Between(double coldest = 20, double hottest = 20, double device = 20, double? deviceHottest = null) =>
        [In(coldest, device), In(hottest, deviceHottest ?? device)];

    internal static Surroundings In(double conductors, double device) => new(Temperature.FromDegreesCelsius(conductors), Temperature.FromDegreesCelsius(device), camera: Temperature.FromDegreesCelsius(conductors));

    internal static CableRun Run(double meters, double squareMillimeters = 0.5, Insulation? insulation = null) =>
        new(Pair(squareMillimeters, insulation), oneWayLength: Length.FromMeters(meters));

    /// <summary>A pair of solid copper, under PVC of 70 °C unless said otherwise.</summary>
    internal static Cable Pair(double squareMillimeters, Insulation? insulation = null) => Cable.Pair(
        WireSize.SquareMillimeters(squareMillimeters), Stranding.Solid, ConductorMaterial.AnnealedCopper, insulation: insulation ?? Insulation.Pvc70);

    internal static FaultStudy Study(CableRun run, ProtectiveDevice? device, Supply? source = null, Surroundings[]? conditions = null, InstallationMethod? installationMethod = null) =>
        new(run, source ?? Source(), device, conditions ?? Between(), installationMethod);

    /// <summary>A study of a fault behind a resistance: no cable, 12 V, the rest of the loop as a joint.</summary>
    internal static ShortCircuit Behind(double ohms, ProtectiveDevice device, OverloadBehavior? overload = null, double farads = 0) =>
        Study(Run(0).Then(new Joint("rest", ElectricResistance.FromOhms(ohms - 0.1))), device, Source(overload, farads: farads)).AtFarEnd;

    internal static Fuse QuickActing(double amperes) => SmallDevices.Fuse(FuseCharacteristic.IecQuickActing, amperes);
}
