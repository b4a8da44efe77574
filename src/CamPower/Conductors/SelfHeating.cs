using System;
using System.Collections.Generic;
using CamPower.Conductors;
using UnitsNet;

namespace CamPower;

/// <summary>Temperature rise of a conductor by its own current, and whether it matters.</summary>
/// <remarks>
/// Immutable. The rise raises the resistance, which raises the rise: T − Tₐ = θ·I²·r₂₀·(1 + α₂₀(T − 20 °C)), which is
/// linear in T. Where that has no solution inside the material's range, there is no temperature to tell, and it matters.
/// On the way there a lumped heat capacity, that of the metal alone, gives the time: the real cable is slower. Sources:
/// <see cref="Sources.SelfHeating"/>, <see cref="Sources.LumpedHeatCapacity"/>; <see cref="InstallationMethod"/> says where θ comes from
/// and how good it is.
/// </remarks>
/// <example>
/// <code>
/// SelfHeating heat = installationMethod.Heat(conductor, current, ambient);
/// Temperature hot = heat.ConductorTemperature ?? throw new InvalidOperationException("It overheats.");
/// Duration? until = heat.TimeTo(Temperature.FromDegreesCelsius(70), from: heat.Ambient);
/// </code>
/// </example>
public sealed class SelfHeating
{
    private readonly double? _celsius;
    private readonly double _air, _theta, _amperes, _kelvinsAt20C, _growth;
    private readonly HeatBalance _balance;

    internal SelfHeating(Conductor conductor, InstallationMethod installationMethod, double air, double theta, double amperes,
        double mattersFrom)
    {
        Conductor = conductor;
        InstallationMethod = installationMethod;
        _air = air;
        _theta = theta;
        _amperes = amperes;
        _kelvinsAt20C = theta * amperes * amperes * WireOhmsPerMeterAt20C;
        _balance = new HeatBalance(conductor, theta, air, amperes);
        if (_balance.SteadyCelsius <= conductor.Material.ValidToCelsius) _celsius = _balance.SteadyCelsius;
        _growth = _celsius is double hot ? (conductor.OhmsPerMeterAt(hot) / conductor.OhmsPerMeterAt(air)) - 1 : double.PositiveInfinity;
        Matters = _growth >= mattersFrom;
    }

    /// <summary>The conductor.</summary>
    public Conductor Conductor { get; }

    /// <summary>The installation method.</summary>
    public InstallationMethod InstallationMethod { get; }

    /// <summary>Temperature of the air around. [°C]</summary>
    public Temperature Ambient => Temperature.FromDegreesCelsius(_air);

    /// <summary>Temperature of the conductor; null where it settles at none inside the material's range. [°C]</summary>
    public Temperature? ConductorTemperature => _celsius is double celsius ? Temperature.FromDegreesCelsius(celsius) : null;

    /// <summary>How much warmer than the air it is; null where it settles at no temperature. [K]</summary>
    public TemperatureDelta? Rise => _celsius is double celsius ? TemperatureDelta.FromKelvins(celsius - _air) : null;

    /// <summary>By how much the rise raises the resistance; null where it settles at no temperature.</summary>
    public Ratio? ResistanceGrowth => _celsius is null ? null : Ratio.FromDecimalFractions(_growth);

    /// <summary>Whether the resistance grows by as much as was asked for, or the conductor settles at no temperature.</summary>
    public bool Matters { get; }

    /// <summary>Time in which 63 % of the rise are done; null where it settles at no temperature, or the metal's heat capacity is not
    /// known. [s]</summary>
    public Duration? TimeConstant => _balance.HasCapacity && _balance.Decay > 0 ? Duration.FromSeconds(1 / _balance.Decay) : null;

    /// <summary>How warm the conductor is after a time; null beyond its material's range, and where the metal's heat capacity is not
    /// known.</summary>
    /// <param name="time">How long the current has flowed, at least 0. [s]</param>
    /// <param name="from">Temperature of the conductor at first, not below the air's.</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    /// <remarks>Exact for a current that does not change: T₀ + g·(1 − e^(−λt))/λ, see <see cref="Sources.LumpedHeatCapacity"/>.</remarks>
    public Temperature? TemperatureAfter(Duration time, Temperature from)
    {
        double seconds = Require.NotNegative(time.Seconds, nameof(time), "s");
        double celsius = _balance.CelsiusAfter(seconds, StartOf(from));
        return celsius <= Conductor.Material.ValidToCelsius ? Temperature.FromDegreesCelsius(celsius) : null;
    }

    /// <summary>When the conductor reaches a temperature; null where it never does, and where the metal's heat capacity is not known.
    /// [s]</summary>
    /// <param name="limit">The temperature, in the range of the material.</param>
    /// <param name="from">Temperature of the conductor at first, not below the air's.</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    /// <remarks>Zero where it is as warm already. Solved back from <see cref="TemperatureAfter"/>.</remarks>
    public Duration? TimeTo(Temperature limit, Temperature from)
    {
        double seconds = _balance.SecondsTo(Conductor.Material.CelsiusOf(limit, nameof(limit)), StartOf(from));
        return _balance.HasCapacity && !double.IsInfinity(seconds) ? Duration.FromSeconds(seconds) : null;
    }

    /// <summary>How the temperature was worked out.</summary>
    public Derivation Explain()
    {
        string alpha = DerivationStep.Number(Conductor.Material.TemperatureCoefficientAt20C),
            air = DerivationStep.Number(_air),
            x = DerivationStep.Number(_kelvinsAt20C);
        var steps = new List<DerivationStep>
        {
            new("x", "Rise if the wire kept its resistance of 20 °C", "theta*I^2*r20", @"x = \theta I^2 r_{20}",
                $"{DerivationStep.Number(_theta)}*{DerivationStep.Number(_amperes)}^2*{DerivationStep.Number(WireOhmsPerMeterAt20C)}",
                    _kelvinsAt20C, "K", Sources.SelfHeating),
        };
        if (_celsius is double celsius)
        {
            steps.Add(new("T", "Temperature at which the warmer wire's heat balances", "20 + (Ta - 20 + x)/(1 - x*alpha20)",
                @"T = 20 + \frac{T_a - 20 + x}{1 - x\,\alpha_{20}}",
                $"20 + ({air} - 20 + {x})/(1 - {x}*{alpha})", celsius, "°C", Sources.SelfHeating));
        }

        return new Derivation($"{Conductor}, {InstallationMethod}", steps, ToString());
    }

    /// <summary>One line in the invariant culture; never throws.</summary>
    public override string ToString() => _celsius is double celsius
        ? FormattableString.Invariant($"{celsius:0.0} °C in {_air:0.0} °C air, resistance {100 * _growth:0.0} % up")
        : FormattableString.Invariant($"no steady temperature in {_air:0.0} °C air");

    private double StartOf(Temperature from) =>
        Require.Within(Celsius.Of(from), _air, Conductor.Material.ValidToCelsius, nameof(from), "°C");

    private double WireOhmsPerMeterAt20C => Conductor.OhmsPerMeterAt20C * Conductor.Count;
}
