using System;
using UnitsNet;

namespace CamPower;

/// <summary>A resistance per length that a standard, a table or a data sheet states at a temperature of its own.</summary>
/// <remarks>
/// Immutable. It is kept as printed: no area and no lay factor goes into it, only the material's temperature
/// coefficient, which takes it from its own temperature to another. Coated copper is described by such figures,
/// because coating adds 0.5 to 6 % by size and standard and no single factor gives them back.
/// </remarks>
/// <example>
/// <code>
/// var sheet = TabulatedResistance.Typical("data sheet of the drum", LinearResistance.FromOhmsPerKilometer(21.4),
///     Temperature.FromDegreesCelsius(20), new Citation("Data sheet of the drum", CitationKind.Declared));
/// var conductor = new Conductor(WireSize.Awg(18), Stranding.ClassB, ConductorMaterial.AnnealedCopper, sheet);
/// </code>
/// </example>
public sealed class TabulatedResistance : ResistanceBasis
{
    private TabulatedResistance(string name, LinearResistance perLength, Temperature at, bool isMaximum, Citation source)
    {
        Name = Require.Name(name, nameof(name));
        Require.Positive(perLength.OhmsPerMeter, nameof(perLength), "Ω/m");
        PerLength = perLength;
        AtCelsius = Require.Finite(Celsius.Of(at), nameof(at), "°C");
        IsMaximum = isMaximum;
        Source = Require.NotNull(source, nameof(source));
    }

    /// <inheritdoc/>
    public override string Name { get; }

    /// <summary>The resistance per length of one conductor, as printed. [Ω/m]</summary>
    public LinearResistance PerLength { get; }

    /// <summary>The temperature that it is stated at. [°C]</summary>
    public Temperature At => Temperature.FromDegreesCelsius(AtCelsius);

    /// <inheritdoc/>
    public override bool IsMaximum { get; }

    /// <inheritdoc/>
    public override Citation Source { get; }

    internal double AtCelsius { get; }

    /// <summary>A figure to expect: what a table or a data sheet gives for the conductor as it is made.</summary>
    /// <param name="name">How the figure is called. Not empty.</param>
    /// <param name="perLength">Resistance per length of one conductor, above 0. [Ω/m]</param>
    /// <param name="at">The temperature that it is stated at, inside the material's range. [any temperature unit]</param>
    /// <param name="source">Where it is printed.</param>
    /// <exception cref="ArgumentNullException">A reference is null.</exception>
    /// <exception cref="ArgumentException"><paramref name="name"/> is empty.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A number is outside its range.</exception>
    public static TabulatedResistance Typical(string name, LinearResistance perLength, Temperature at, Citation source) =>
        new(name, perLength, at, isMaximum: false, source);

    /// <summary>The most that a standard allows.</summary>
    /// <param name="name">How the figure is called. Not empty.</param>
    /// <param name="perLength">Resistance per length of one conductor, above 0. [Ω/m]</param>
    /// <param name="at">The temperature that it is stated at, inside the material's range. [any temperature unit]</param>
    /// <param name="source">Where it is printed.</param>
    /// <exception cref="ArgumentNullException">A reference is null.</exception>
    /// <exception cref="ArgumentException"><paramref name="name"/> is empty.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A number is outside its range.</exception>
    public static TabulatedResistance Maximum(string name, LinearResistance perLength, Temperature at, Citation source) =>
        new(name, perLength, at, isMaximum: true, source);

    /// <summary>Name, resistance and temperature in the invariant culture; never throws.</summary>
    public override string ToString() =>
        FormattableString.Invariant($"{Name}: {(IsMaximum ? "at most " : string.Empty)}{PerLength} at {AtCelsius:G6} °C");

    internal override double OhmsPerMeterAt20C(WireSize size, Stranding stranding, ConductorMaterial material) =>
        PerLength.OhmsPerMeter / material.RelativeResistivity(AtCelsius);
}
