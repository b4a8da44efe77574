using System;
using UnitsNet;

namespace CamPower;

/// <summary>One point of an ambient curve: a temperature and the factor on the rated current there.</summary>
/// <remarks>Immutable.</remarks>
public sealed class AmbientPoint
{
    private const double LargestFactor = 5;

    /// <summary>States a point.</summary>
    /// <param name="ambient">Temperature of the air around the device, finite.</param>
    /// <param name="factor">Current there over the rated current, above 0, at most 5. [1]</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public AmbientPoint(Temperature ambient, Ratio factor)
    {
        AmbientCelsius = Require.Finite(Celsius.Of(ambient), nameof(ambient), "°C");
        FactorValue = Require.Positive(factor.DecimalFractions, nameof(factor), "");
        Require.Within(FactorValue, 0, LargestFactor, nameof(factor), "");
        Ambient = ambient;
        Factor = factor;
    }

    /// <summary>Temperature of the air around the device.</summary>
    public Temperature Ambient { get; }

    /// <summary>Current there over the rated current. [1]</summary>
    public Ratio Factor { get; }

    internal double AmbientCelsius { get; }

    internal double FactorValue { get; }

    /// <summary>The point in the invariant culture; never throws.</summary>
    public override string ToString() => FormattableString.Invariant($"× {FactorValue:G6} at {AmbientCelsius:G6} °C");
}
