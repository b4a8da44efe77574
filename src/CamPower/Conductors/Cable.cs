using System;
using UnitsNet;

namespace CamPower;

/// <summary>A two-conductor cable: one conductor out, one back.</summary>
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
    /// <param name="name">How it is called; null to call it by its conductors.</param>
    /// <exception cref="ArgumentNullException">A conductor is null.</exception>
    public Cable(Conductor outgoing, Conductor @return, bool isPreTerminated = false, string? name = null)
    {
        Outgoing = Require.NotNull(outgoing, nameof(outgoing));
        Return = Require.NotNull(@return, nameof(@return));
        IsPreTerminated = isPreTerminated;
        Name = name;
    }

    /// <summary>The conductor from the supply to the load.</summary>
    public Conductor Outgoing { get; }

    /// <summary>The conductor from the load back to the supply.</summary>
    public Conductor Return { get; }

    /// <summary>Whether it comes with its connectors on and may be neither cut nor extended.</summary>
    public bool IsPreTerminated { get; }

    /// <summary>How it is called, or null.</summary>
    public string? Name { get; }

    /// <summary>A cable of two equal conductors.</summary>
    /// <param name="size">Size of each conductor; not the default value.</param>
    /// <param name="stranding">How the metal is made up.</param>
    /// <param name="material">What the conductors are made of.</param>
    /// <param name="isPreTerminated">Whether it comes with its connectors on and may be neither cut nor extended.</param>
    /// <param name="name">How it is called; null to call it by its conductors.</param>
    /// <exception cref="ArgumentNullException">A reference is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="size"/> is the default value.</exception>
    public static Cable Pair(WireSize size, Stranding stranding, ConductorMaterial material, bool isPreTerminated = false,
        string? name = null)
    {
        var conductor = new Conductor(size, stranding, material);
        return new Cable(conductor, conductor, isPreTerminated, name);
    }

    /// <summary>Resistance out and back per length of cable at a temperature. [Ω/m]</summary>
    /// <param name="temperature">Temperature of both conductors, inside their materials' ranges.</param>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="temperature"/> is outside a material's range.</exception>
    public LinearResistance LoopResistancePerLengthAt(Temperature temperature) => LinearResistance.FromOhmsPerMeter(
        Outgoing.ResistancePerLengthAt(temperature).OhmsPerMeter + Return.ResistancePerLengthAt(temperature).OhmsPerMeter);

    /// <summary>The name, or the conductors in words; never throws.</summary>
    public override string ToString() => Name ?? Conductors;

    private string Conductors => ReferenceEquals(Outgoing, Return) ? $"pair of {Outgoing}" : $"{Outgoing} out, {Return} back";
}
