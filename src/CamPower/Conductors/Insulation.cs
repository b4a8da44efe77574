using System;
using CamPower.Conductors;
using UnitsNet;

namespace CamPower;

/// <summary>The insulation of a conductor: how hot it may be in service, and for a moment in a fault.</summary>
/// <remarks>
/// Immutable. A rating that is printed on a jacket says how hot it may be in service and nothing of a fault: see <see cref="Rated"/>. Where
/// the limit in a fault is known, the adiabatic withstand follows from it: no heat leaves the conductor, which holds to about 5 s; beyond,
/// the formula is more careful than the conductor. k = K √ln((θf + β)/(θi + β)), and k²·S² is the I²t that heats a conductor of section S
/// from its service temperature to the limit. Sources: <see cref="Sources.AdiabaticWithstand"/>, <see cref="Sources.Iec60949"/>. Copper has
/// the constants of copper; copper-clad aluminum and a material of your own have those of aluminum, the smaller ones.
/// </remarks>
/// <example>
/// <code>
/// double? k = Insulation.Pvc70.FactorFor(ConductorMaterial.AnnealedCopper);   // 115 A·s^½/mm²
/// double? none = Insulation.Rated(Temperature.FromDegreesCelsius(60)).FactorFor(ConductorMaterial.AnnealedCopper);   // null
/// </code>
/// </example>
public sealed class Insulation
{
    private const double SquareMillimetersPerSquareMeter = 1e6;

    private readonly double _serviceCelsius;
    private readonly double? _faultCelsius;

    /// <summary>States an insulation.</summary>
    /// <param name="name">Name. Not empty.</param>
    /// <param name="highestInService">The highest conductor temperature in service, from -200 °C to 1000 °C.</param>
    /// <param name="highestInFault">The highest conductor temperature in a fault, above the former, to 1000 °C.</param>
    /// <param name="source">Where the temperatures come from.</param>
    /// <exception cref="ArgumentNullException">A reference is null.</exception>
    /// <exception cref="ArgumentException"><paramref name="name"/> is empty.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A temperature is outside its range.</exception>
    public Insulation(string name, Temperature highestInService, Temperature highestInFault, Citation source)
        : this(name, highestInService, source)
    {
        double limit = Require.Within(Celsius.Of(highestInFault), -200, 1000, nameof(highestInFault), "°C");
        if (limit <= _serviceCelsius)
        {
            throw Require.OutOfRange(limit, nameof(highestInFault), "°C", FormattableString.Invariant($"above {_serviceCelsius}"));
        }

        _faultCelsius = limit;
        HighestInFault = highestInFault;
    }

    private Insulation(string name, Temperature highestInService, Citation source)
    {
        Name = Require.Name(name, nameof(name));
        _serviceCelsius = Require.Within(Celsius.Of(highestInService), -200, 1000, nameof(highestInService), "°C");
        HighestInService = highestInService;
        Source = Require.NotNull(source, nameof(source));
    }

    /// <summary>PVC of 70 °C, to 300 mm²: 160 °C in a fault.</summary>
    public static Insulation Pvc70 { get; } = Of("PVC 70 °C", 70, 160, Sources.AdiabaticWithstand);

    /// <summary>PVC of 90 °C, to 300 mm²: 160 °C in a fault.</summary>
    public static Insulation Pvc90 { get; } = Of("PVC 90 °C", 90, 160, Sources.AdiabaticWithstandFromMemory);

    /// <summary>Cross-linked polyethylene and ethylene-propylene rubber: 90 °C in service, 250 °C in a fault.</summary>
    public static Insulation CrossLinked { get; } = Of("XLPE or EPR", 90, 250, Sources.AdiabaticWithstand);

    /// <summary>Rubber of 60 °C: 200 °C in a fault.</summary>
    public static Insulation Rubber60 { get; } = Of("rubber 60 °C", 60, 200, Sources.AdiabaticWithstandFromMemory);

    /// <summary>Name.</summary>
    public string Name { get; }

    /// <summary>The highest conductor temperature in service.</summary>
    public Temperature HighestInService { get; }

    /// <summary>The highest conductor temperature in a fault, or null where only the rating is known.</summary>
    public Temperature? HighestInFault { get; }

    /// <summary>Where the temperatures come from.</summary>
    public Citation Source { get; }

    internal double? FaultCelsius => _faultCelsius;

    internal double ServiceCelsius => _serviceCelsius;

    /// <summary>An insulation of which only the rating is known, as it is printed on a jacket.</summary>
    /// <param name="highestInService">The highest conductor temperature in service, from -200 °C to 1000 °C.</param>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="highestInService"/> is outside its range.</exception>
    /// <example>
    /// <code>
    /// Insulation printed = Insulation.Rated(Temperature.FromDegreesCelsius(60));   // its withstand is not known
    /// </code>
    /// </example>
    public static Insulation Rated(Temperature highestInService) =>
        new(FormattableString.Invariant($"insulation rated {Celsius.Of(highestInService):G6} °C"), highestInService, Sources.PrintedRating);

    /// <summary>The factor k of a conductor material under this insulation; null where the limit in a fault is not known.
    /// [A·s^½/mm²]</summary>
    /// <param name="material">What the conductor is made of.</param>
    /// <exception cref="ArgumentNullException"><paramref name="material"/> is null.</exception>
    public double? FactorFor(ConductorMaterial material)
    {
        bool isCopper = ReferenceEquals(Require.NotNull(material, nameof(material)), ConductorMaterial.AnnealedCopper);
        return isCopper
            ? Factor(ConductorConstants.CopperAdiabatic.Value, ConductorConstants.CopperBeta.Value)
            : Factor(ConductorConstants.AluminumAdiabatic.Value, ConductorConstants.AluminumBeta.Value);
    }

    /// <summary>The I²t that a conductor withstands: k²·S², wires in parallel sharing the current; null where the limit in a fault is not
    /// known. [A²·s]</summary>
    /// <param name="conductor">The conductor.</param>
    /// <exception cref="ArgumentNullException"><paramref name="conductor"/> is null.</exception>
    public JouleIntegral? WithstandOf(Conductor conductor) =>
        WithstandIntegral(Require.NotNull(conductor, nameof(conductor))) is double integral
            ? JouleIntegral.FromAmpereSquaredSeconds(integral)
            : null;

    /// <summary>Time for which a conductor withstands a steady current: t = (k·S/I)²; null where the limit in a fault is unknown.
    /// [s]</summary>
    /// <param name="conductor">The conductor.</param>
    /// <param name="current">The current, above 0. [A]</param>
    /// <exception cref="ArgumentNullException"><paramref name="conductor"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="current"/> is not above 0, or not finite.</exception>
    /// <remarks>Beyond 5 s (<see cref="Sources.AdiabaticWithstand"/>) heat leaves the conductor, which withstands the current longer than
    /// says.</remarks>
    /// <example>0.5 mm² of copper in PVC withstands 100 A for 0.331 s.</example>
    public Duration? WithstandTime(Conductor conductor, ElectricCurrent current)
    {
        double amperes = Require.Positive(current.Amperes, nameof(current), "A");
        return WithstandIntegral(Require.NotNull(conductor, nameof(conductor))) is double integral
            ? Duration.FromSeconds(integral / amperes / amperes)
            : null;
    }

    /// <summary>The least section that withstands a current for a time: S = I √t / k; null where the limit in a fault is not known.
    /// [mm²]</summary>
    /// <param name="material">What the conductor is made of.</param>
    /// <param name="current">The current, at least 0. [A]</param>
    /// <param name="time">How long it flows, from 0 to 5 s. [s]</param>
    /// <exception cref="ArgumentNullException"><paramref name="material"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A number is outside its range.</exception>
    /// <example>2500 A for 0.1 s want 6.9 mm² of copper in PVC.</example>
    public Area? SmallestArea(ConductorMaterial material, ElectricCurrent current, Duration time)
    {
        double amperes = Require.NotNegative(current.Amperes, nameof(current), "A");
        double seconds = Require.Within(time.Seconds, 0, ConductorConstants.LongestAdiabatic.Value, nameof(time), "s");
        return FactorFor(material) is double factor ? Area.FromSquareMillimeters(amperes * Math.Sqrt(seconds) / factor) : null;
    }

    /// <summary>The name; never throws.</summary>
    public override string ToString() => Name;

    internal double? WithstandIntegral(Conductor conductor)
    {
        double? each = FactorFor(conductor.Material) * conductor.Size.SquareMeters * SquareMillimetersPerSquareMeter * conductor.Count;
        return each * each;
    }

    private double? Factor(double constant, double beta) =>
        _faultCelsius is double limit ? constant * Math.Sqrt(Math.Log((limit + beta) / (_serviceCelsius + beta))) : null;

    private static Insulation Of(string name, double service, double fault, Citation source) =>
        new(name, Temperature.FromDegreesCelsius(service), Temperature.FromDegreesCelsius(fault), source);
}
