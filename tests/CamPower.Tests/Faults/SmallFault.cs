using CamPower.Tests.Devices;
using UnitsNet;

namespace CamPower.Tests.Faults;

/// <summary>Faults with round numbers: a supply without tolerance, 18 AWG of solid copper, 20 °C throughout unless said otherwise.</summary>
internal static class SmallFault
{
    internal static Supply Source(OverloadBehaviour? overload = null, double volts = 12, double ohms = 0.1, double percent = 0) => new("supply",
        new DcOutput(ElectricPotential.FromVolts(volts), ElectricCurrent.FromAmperes(20), Ratio.FromPercent(percent),
            sourceResistance: ElectricResistance.FromOhms(ohms), overload: overload ?? OverloadBehaviour.Unlimited), Derating.GenericEnclosed);

    internal static FaultConditions Between(double coldest = 20, double hottest = 20, double device = 20) => new(
        Temperature.FromDegreesCelsius(coldest), Temperature.FromDegreesCelsius(hottest), Temperature.FromDegreesCelsius(device));

    internal static CableRun Run(double meters, double squareMillimeters = 0.5) => new(Pair(squareMillimeters), oneWayLength: Length.FromMeters(meters));

    internal static Cable Pair(double squareMillimeters) =>
        Cable.Pair(WireSize.SquareMillimeters(squareMillimeters), Stranding.Solid, ConductorMaterial.AnnealedCopper);

    internal static FaultStudy Study(CableRun run, ProtectiveDevice device, Supply? source = null, FaultConditions? conditions = null, Insulation? insulation = null) =>
        new(run, source ?? Source(), device, insulation ?? Insulation.Pvc70, conditions ?? Between());

    /// <summary>A study of a fault behind a resistance: no cable, 12 V, the rest of the loop as a joint.</summary>
    internal static ShortCircuit Behind(double ohms, ProtectiveDevice device, OverloadBehaviour? overload = null) =>
        Study(Runs.OfOhms(ohms - 0.1), device, Source(overload)).AtFarEnd;

    internal static Fuse QuickActing(double amperes) => SmallDevices.Fuse(FuseCharacteristic.IecQuickActing, amperes);
}
