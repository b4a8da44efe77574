using System;

namespace CamPower.Checks;

/// <summary>What a conductor of a run carries as the air around it warms, by its insulation and the way it lies.</summary>
/// <remarks>What nobody declares is taken: an insulation of 60 °C, and a cable alone in air. A wire thinner than the thinnest of which something is known carries
/// no more than that one.</remarks>
internal readonly struct ConductorCapacity
{
    private static readonly Laying Alone = Laying.InCableOrRaceway(currentCarryingConductors: 2);

    private readonly Laying _laying;
    private readonly bool _isLayingDeclared, _isThinner;
    private readonly Cable _cable;
    private readonly Conductor _conductor;
    private readonly double _amperesPerRootKelvin, _highestCelsius;

    private ConductorCapacity(Laying? laying, Cable cable, Conductor conductor)
    {
        _laying = laying ?? Alone;
        _isLayingDeclared = laying is not null;
        _cable = cable;
        _conductor = conductor;
        double rating = cable.Insulation?.ServiceCelsius ?? CheckConstants.UndeclaredInsulation.Value;
        _highestCelsius = Math.Min(rating, conductor.Material.ValidToCelsius);
        _isThinner = !_laying.Covers(conductor.Size);
        _amperesPerRootKelvin = _laying.Amperes(_isThinner ? _laying.ThinnestLike(conductor) : conductor, _highestCelsius, _highestCelsius - 1);
    }

    /// <summary>The capacity, or null where nothing is known of a conductor so thick.</summary>
    internal static ConductorCapacity? Of(SiteRun run, Cable cable, Conductor conductor)
    {
        Laying laying = run.Laying ?? Alone;
        return laying.Covers(conductor.Size) || laying.IsThinner(conductor.Size) ? new ConductorCapacity(run.Laying, cable, conductor) : null;
    }

    /// <summary>Why nothing is known of a conductor of that size, or null where something is.</summary>
    internal static ValidityBreach? BreachOf(SiteRun run, Conductor conductor) => (run.Laying ?? Alone).BreachOf(conductor);

    /// <summary>The most that it carries in air of a temperature. [A]</summary>
    internal double AmperesIn(double airCelsius) =>
        airCelsius < _highestCelsius ? _amperesPerRootKelvin * Math.Sqrt(_highestCelsius - airCelsius) : 0;

    /// <summary>What the capacity rests on, in words.</summary>
    internal string Basis(double airCelsius)
    {
        string taken = _cable.Insulation is null ? ", taken for want of a declared one" : string.Empty;
        string thinner = _isThinner ? "; so thin a wire carries no more than the thinnest of which something is known" : string.Empty;
        string estimated = _laying.IsEstimatedAt(_conductor.Size) ? "; so thin a wire is estimated from a thicker one" : string.Empty;
        string lying = _isLayingDeclared ? string.Empty : "; nobody declares how it lies, and it is taken as alone in air";
        return FormattableString.Invariant($"in {airCelsius:0.#} °C with insulation of {_highestCelsius:0.#} °C{taken}{estimated}{thinner}{lying}");
    }
}
