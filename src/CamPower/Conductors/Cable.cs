using System;
using System.Collections.Generic;
using UnitsNet;

namespace CamPower;

/// <summary>A cable between a supply and a load: one conductor out, one back, each of one wire or of several in parallel.</summary>
/// <remarks>Immutable.</remarks>
/// <example>
/// <code>
/// Cable cable = Cable.Pair(WireSize.Awg(18), Stranding.ClassB, ConductorMaterial.AnnealedCopper);
/// LinearResistance loop = cable.LoopResistancePerLengthAt(Temperature.FromDegreesCelsius(40));
/// </code>
/// </example>
public sealed class Cable
{
    /// <summary>Describes a cable whose two conductors may differ.</summary>
    /// <param name="outgoing">The conductor from the supply to the load.</param>
    /// <param name="return">The conductor from the load back to the supply.</param>
    /// <param name="isPreTerminated">Whether it comes with its connectors on and may be neither cut nor extended.</param>
    /// <param name="name">Name; null to call it by its conductors.</param>
    /// <param name="insulation">The insulation of its conductors; null where nothing is known of it.</param>
    /// <param name="coax">The coaxial cable in the same bundle, its shield as the return; null for none.</param>
    /// <param name="source">Where the construction is described, or null.</param>
    /// <exception cref="ArgumentNullException">A conductor is null.</exception>
    public Cable(Conductor outgoing, Conductor @return, bool isPreTerminated = false, string? name = null,
        Insulation? insulation = null, Cable? coax = null, Citation? source = null)
    {
        Outgoing = Require.NotNull(outgoing, nameof(outgoing));
        Return = Require.NotNull(@return, nameof(@return));
        IsPreTerminated = isPreTerminated;
        Name = name;
        Insulation = insulation;
        Coax = coax;
        Source = source;
    }

    /// <summary>The conductor from the supply to the load.</summary>
    public Conductor Outgoing { get; }

    /// <summary>The conductor from the load back to the supply.</summary>
    public Conductor Return { get; }

    /// <summary>Whether it comes with its connectors on and may be neither cut nor extended.</summary>
    public bool IsPreTerminated { get; }

    /// <summary>Name, or null.</summary>
    public string? Name { get; }

    /// <summary>The insulation of its conductors, or null where nothing is known of it.</summary>
    public Insulation? Insulation { get; }

    /// <summary>The coaxial cable in the same bundle: its center conductor out, its shield back; null for none.</summary>
    /// <remarks>
    /// No supply current is meant for it, but where a camera's power negative and its video shield both return to the head
    /// end, the return current divides between them by their conductances.
    /// </remarks>
    /// <example>
    /// <code>
    /// LinearResistance shield = cable.Coax!.Return.ResistancePerLengthAt(Temperature.FromDegreesCelsius(20));
    /// </code>
    /// </example>
    public Cable? Coax { get; }

    /// <summary>Where the construction is described, or null.</summary>
    public Citation? Source { get; }

    internal IEnumerable<Conductor> Conductors => [Outgoing, Return];

    /// <summary>A cable of two equal conductors.</summary>
    /// <param name="size">Size of each conductor; not the default value.</param>
    /// <param name="stranding">How the metal is made up.</param>
    /// <param name="material">What the conductors are made of.</param>
    /// <param name="isPreTerminated">Whether it comes with its connectors on and may be neither cut nor extended.</param>
    /// <param name="name">Name; null to call it by its conductors.</param>
    /// <param name="insulation">The insulation of both; null where nothing is known of it.</param>
    /// <exception cref="ArgumentNullException">A reference is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="size"/> is the default value.</exception>
    public static Cable Pair(WireSize size, Stranding stranding, ConductorMaterial material, bool isPreTerminated = false,
        string? name = null, Insulation? insulation = null)
    {
        var conductor = new Conductor(size, stranding, material);
        return new Cable(conductor, conductor, isPreTerminated, name, insulation);
    }

    /// <summary>A cable of two equal conductors, such as those that a table describes.</summary>
    /// <param name="conductor">Each of the two.</param>
    /// <exception cref="ArgumentNullException"><paramref name="conductor"/> is null.</exception>
    /// <example><code>Cable tinned = Cable.Pair(Conductor.NecCoatedCopper(WireSize.Awg(18), Stranding.ClassB));</code></example>
    public static Cable Pair(Conductor conductor) => new(conductor, conductor);

    /// <summary>Several equal pairs ganged: one wire of each pair on the positive, the other on the negative.</summary>
    /// <param name="wire">Each wire of every pair.</param>
    /// <param name="pairs">How many pairs are used, from 1 to 100.</param>
    /// <param name="name">Name; null to call it by its conductors.</param>
    /// <exception cref="ArgumentNullException"><paramref name="wire"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="pairs"/> is outside its range.</exception>
    /// <remarks>Four pairs put four wires on each pole. Two whole pairs on each pole are the same four wires.</remarks>
    /// <example><code>Cable fourPairs = Cable.GangedPairs(wire, pairs: 4);   // a quarter of one pair's loop</code></example>
    public static Cable GangedPairs(Conductor wire, int pairs, string? name = null)
    {
        Require.Within(pairs, 1, 100, nameof(pairs), "");
        Conductor pole = Require.NotNull(wire, nameof(wire)).InParallel(pairs);
        return new Cable(pole, pole, name: name);
    }

    /// <summary>Resistance out and back per length of cable at a temperature. [Ω/m]</summary>
    /// <param name="temperature">Temperature of both conductors, inside their materials' ranges.</param>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="temperature"/> is outside a material's range.</exception>
    public LinearResistance LoopResistancePerLengthAt(Temperature temperature) => LinearResistance.FromOhmsPerMeter(
        Outgoing.ResistancePerLengthAt(temperature).OhmsPerMeter + Return.ResistancePerLengthAt(temperature).OhmsPerMeter);

    /// <summary>The name, or the conductors in words; never throws.</summary>
    public override string ToString() => Name ?? ConductorsText;

    private string ConductorsText => ReferenceEquals(Outgoing, Return) ? $"pair of {Outgoing}" : $"{Outgoing} out, {Return} back";
}
