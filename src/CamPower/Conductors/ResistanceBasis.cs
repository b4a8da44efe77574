using CamPower.Conductors;

namespace CamPower;

/// <summary>Basis of a conductor's resistance: its nominal area, or a value of a table.</summary>
/// <remarks>
/// Immutable. Either the nominal area, ρ·k/A with the lay factor k of the stranding (<see cref="Sources.Resistance"/>), or a
/// <see cref="TabulatedResistance"/>. They answer different questions: a standard's maximum is 4 to 19 % above what the nominal area gives,
/// so a sum of both is neither what to expect nor what to fear. See <see cref="CableRun.MixesResistanceBases"/>.
/// </remarks>
/// <example><code>bool atTheLimit = conductor.Basis is TabulatedResistance { IsMaximum: true };</code></example>
public abstract class ResistanceBasis
{
    private protected ResistanceBasis()
    {
    }

    /// <summary>Name.</summary>
    public abstract string Name { get; }

    /// <summary>Whether the resistance is the most that a standard allows, and no expected value.</summary>
    public abstract bool IsMaximum { get; }

    /// <summary>Where the resistance comes from.</summary>
    public abstract Citation Source { get; }

    /// <summary>The name; never throws.</summary>
    public override string ToString() => Name;

    internal abstract double OhmsPerMeterAt20C(WireSize size, Stranding stranding, ConductorMaterial material);

    internal bool IsOfOneKindWith(ResistanceBasis other) => GetType() == other.GetType() && IsMaximum == other.IsMaximum;
}
