using System;
using System.Collections.Generic;
using System.Linq;
using UnitsNet;

namespace CamPower;

/// <summary>A run from a source to a load: one or more lengths of cable, with the joints between them.</summary>
/// <remarks>
/// Immutable. Its loop resistance is the sum over its parts, out and back, and linear in temperature:
/// both numbers are worked out once, here. Source: <see cref="Sources.Resistance"/>.
/// </remarks>
/// <example>
/// <code>
/// var run = new CableRun(cable, oneWayLength: Length.FromFeet(120))
///     .Then(new Joint("splice", ElectricResistance.FromMilliohms(10)))
///     .Then(new CableSegment(drop, oneWayLength: Length.FromFeet(15)));
/// ElectricResistance loop = run.LoopResistanceAt(Temperature.FromDegreesCelsius(40));
/// </code>
/// </example>
public sealed class CableRun
{
    /// <summary>Describes a run of one length of cable.</summary>
    /// <param name="cable">The cable.</param>
    /// <param name="oneWayLength">Length along the route, one way, at least 0. [any length unit]</param>
    /// <exception cref="ArgumentNullException"><paramref name="cable"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="oneWayLength"/> is negative or infinite.</exception>
    public CableRun(Cable cable, Length oneWayLength)
        : this(new CableSegment(cable, oneWayLength))
    {
    }

    /// <summary>Describes a run of several parts, in order from the source to the load.</summary>
    /// <param name="parts">Lengths of cable and joints; at least one of them a length of cable.</param>
    /// <exception cref="ArgumentNullException"><paramref name="parts"/> or one of them is null.</exception>
    /// <exception cref="ArgumentException">No part is a length of cable, or the materials have no temperature in common.</exception>
    public CableRun(params RunPart[] parts)
    {
        Parts = Require.Items(parts, nameof(parts));
        Segments = [.. Parts.OfType<CableSegment>()];
        var materials = Segments.SelectMany(s => s.Cable.Conductors).Select(c => c.Material).ToList();
        if (materials.Count == 0) throw new ArgumentException("A run needs at least one length of cable.", nameof(parts));

        ValidFromCelsius = materials.Max(m => m.ValidFromCelsius);
        ValidToCelsius = materials.Min(m => m.ValidToCelsius);
        if (ValidFromCelsius >= ValidToCelsius)
        {
            throw new ArgumentException("The materials' ranges of temperature have nothing in common.", nameof(parts));
        }

        OhmsAt20C = Parts.Sum(p => p.OhmsAt20C);
        OhmsPerKelvin = Parts.Sum(p => p.OhmsPerKelvin);
        OneWayMeters = Parts.Sum(p => p.OneWayLength.Meters);
        ResistanceBasis first = Segments.First().Cable.Outgoing.Basis;
        MixesResistanceBases = Segments.Any(s =>
            !s.Cable.Outgoing.Basis.IsOfOneKindWith(first) || !s.Cable.Return.Basis.IsOfOneKindWith(first));
    }

    /// <summary>Lengths of cable and joints, in order from the source to the load.</summary>
    public IReadOnlyList<RunPart> Parts { get; }

    /// <summary>The lengths of cable among <see cref="Parts"/>.</summary>
    public IEnumerable<CableSegment> Segments { get; }

    /// <summary>
    /// Whether some of its conductors' resistances are of one kind and some of another: nominal area, a standard's maximum, a table's
    /// figure. The sum is then neither a typical value nor a maximum value.
    /// </summary>
    public bool MixesResistanceBases { get; }

    /// <summary>Length along the route, one way. [m]</summary>
    public Length OneWayLength => Length.FromMeters(OneWayMeters);

    /// <summary>Length that the current travels, out and back: twice the one-way length. [m]</summary>
    public Length LoopLength => Length.FromMeters(2 * OneWayMeters);

    internal double OneWayMeters { get; }

    internal double OhmsAt20C { get; }

    internal double OhmsPerKelvin { get; }

    internal double ValidFromCelsius { get; }

    internal double ValidToCelsius { get; }

    /// <summary>The run with one more part at its far end.</summary>
    /// <param name="part">A length of cable or a joint.</param>
    /// <exception cref="ArgumentNullException"><paramref name="part"/> is null.</exception>
    /// <exception cref="ArgumentException">The materials have no temperature in common.</exception>
    public CableRun Then(RunPart part) => new([.. Parts, part]);

    /// <summary>Resistance out and back, joints included, at a temperature. [Ω]</summary>
    /// <param name="conductorTemperature">Temperature of every conductor of the run, inside their materials' ranges.</param>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="conductorTemperature"/> is outside a material's range.</exception>
    public ElectricResistance LoopResistanceAt(Temperature conductorTemperature) =>
        ElectricResistance.FromOhms(OhmsAt(CelsiusOf(conductorTemperature, nameof(conductorTemperature))));

    /// <summary>The parts in words; never throws.</summary>
    public override string ToString() => string.Join(" + ", Parts);

    /// <summary>A conductor temperature in degrees Celsius, refused outside the materials' ranges.</summary>
    internal double CelsiusOf(Temperature conductorTemperature, string parameter) =>
        Celsius.Within(conductorTemperature, ValidFromCelsius, ValidToCelsius, parameter);

    internal double OhmsAt(double celsius) => OhmsAt20C + (OhmsPerKelvin * (celsius - Celsius.Reference));

    /// <summary>Resistance of the outgoing pole alone; a joint counts half in each pole. [Ω]</summary>
    internal double OutgoingOhmsAt(double celsius) => Parts.Sum(part => part.OutgoingOhmsAt(celsius));

    /// <summary>Resistance of the return pole alone; a joint counts half in each pole. [Ω]</summary>
    internal double ReturnOhmsAt(double celsius) => Parts.Sum(part => part.ReturnOhmsAt(celsius));
}
