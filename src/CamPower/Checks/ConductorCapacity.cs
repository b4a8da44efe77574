using System;

namespace CamPower.Checks;

/// <summary>What a conductor of a run carries as the air around it warms, by its insulation and the way it lies.</summary>
/// <remarks>What nobody declares is taken: an insulation of 60 °C, and a cable alone in air.</remarks>
internal readonly struct ConductorCapacity
{
    private static readonly Laying Alone = Laying.InCableOrRaceway(currentCarryingConductors: 2);

    private readonly Laying _laying;
    private readonly Cable _cable;
    private readonly Conductor _conductor;
    private readonly double _amperesPerRootKelvin, _highestCelsius;

    private ConductorCapacity(Laying laying, Cable cable, Conductor conductor)
    {
        _laying = laying;
        _cable = cable;
        _conductor = conductor;
        double rating = cable.Insulation?.ServiceCelsius ?? CheckConstants.UndeclaredInsulation.Value;
        _highestCelsius = Math.Min(rating, conductor.Material.ValidToCelsius);
        _amperesPerRootKelvin = laying.Amperes(conductor, _highestCelsius, _highestCelsius - 1);
    }

    /// <summary>The capacity, or null where nothing is known of a conductor of that size.</summary>
    internal static ConductorCapacity? Of(SiteRun run, Cable cable, Conductor conductor)
    {
        Laying laying = run.Laying ?? Alone;
        return laying.Covers(conductor.Size) ? new ConductorCapacity(laying, cable, conductor) : null;
    }

    /// <summary>The most that it carries in air of a temperature. [A]</summary>
    internal double AmperesIn(double airCelsius) =>
        airCelsius < _highestCelsius ? _amperesPerRootKelvin * Math.Sqrt(_highestCelsius - airCelsius) : 0;

    /// <summary>What the capacity rests on, in words.</summary>
    internal string Basis(double airCelsius)
    {
        string taken = _cable.Insulation is null ? ", taken for want of a declared one" : string.Empty;
        string estimated = _laying.IsEstimatedAt(_conductor.Size) ? "; so thin a wire is estimated from a thicker one" : string.Empty;
        return FormattableString.Invariant($"in {airCelsius:0.#} °C with insulation of {_highestCelsius:0.#} °C{taken}{estimated}");
    }
}
