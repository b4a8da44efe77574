using System;
using UnitsNet;

namespace CamPower.Tests.Circuits;

/// <summary>One source, one loop resistance, one load of three shares.</summary>
public readonly record struct FeedCase(double Volts, double Ohms, Load Load)
{
    internal RunResult Feed() => Feed(Load);

    internal RunResult Feed(Load load) =>
        Runs.OfOhms(Ohms).Feed(load, from: ElectricPotential.FromVolts(Volts), conductorAt: Temperature.FromDegreesCelsius(20));

    /// <summary>The voltage that the load line itself gives by search, 0 where it has none.</summary>
    internal double Searched() => LoadLine.HighestVoltage(Volts, Ohms, Amperes);

    // P/V + I₀ + G·V, or the larger of the first two: written down apart from the library.
    internal double Amperes(double volts) => Load.IsLargerOf
        ? Math.Max(Load.Watts / volts, Load.Amperes)
        : (Load.Watts / volts) + Load.Amperes + (Load.Siemens * volts);

    public override string ToString() => FormattableString.Invariant($"{Volts:R} V over {Ohms:R} Ω feeds {Load.Watts:R} W, {Load.Amperes:R} A, {Load.Siemens:R} S{(Load.IsLargerOf ? ", the larger" : "")}");
}
