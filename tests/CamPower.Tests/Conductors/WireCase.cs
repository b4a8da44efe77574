using System;
using UnitsNet;

namespace CamPower.Tests.Conductors;

/// <summary>One length of cable at one temperature, one source, one load.</summary>
public readonly record struct WireCase(int Gauge, double Meters, double Celsius, double Volts, double Watts, bool IsStranded)
{
    internal CableRun Run => new(Cable.Pair(WireSize.Awg(Gauge), IsStranded ? Stranding.ClassB : Stranding.Solid, ConductorMaterial.AnnealedCopper),
        oneWayLength: Length.FromMeters(Meters));

    internal ElectricResistance Loop => Run.LoopResistanceAt(Temperature.FromDegreesCelsius(Celsius));

    internal RunResult Feed() => Run.Feed(Load.ConstantPower(Power.FromWatts(Watts)), from: ElectricPotential.FromVolts(Volts),
        conductorAt: Temperature.FromDegreesCelsius(Celsius));

    public override string ToString() => FormattableString.Invariant($"{Watts:R} W from {Volts:R} V over {Meters:R} m of {Gauge} AWG at {Celsius:R} °C");
}
