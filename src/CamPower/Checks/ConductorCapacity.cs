using System;

namespace CamPower.Checks;

/// <summary>What a conductor of a run carries as the air around it warms, by its insulation and the way it lies.</summary>
/// <remarks>What is not stated is taken: an insulation of 60 °C; a cable of gauge sizes alone in a cable or raceway; of metric sizes the least of its table's installation methods,
/// or the most where that is asked for. A wire smaller than the smallest of which something is known carries no more than that one.</remarks>
internal readonly struct ConductorCapacity
{
    private static readonly Laying Alone = Laying.InCableOrRaceway(currentCarryingConductors: 2), LeastMetric = Laying.InInsulatedWall(), MostMetric = Laying.OnWall();

    private readonly Laying _laying;
    private readonly bool _isLayingStated, _isSmaller;
    private readonly Cable _cable;
    private readonly Conductor _conductor;
    private readonly double _amperesPerRootKelvin, _highestCelsius;

    private ConductorCapacity(Laying laying, bool isLayingStated, Cable cable, Conductor conductor)
    {
        _laying = laying;
        _isLayingStated = isLayingStated;
        _cable = cable;
        _conductor = conductor;
        double rating = cable.Insulation?.ServiceCelsius ?? CheckConstants.UndeclaredInsulation.Value;
        _highestCelsius = Math.Min(rating, conductor.Material.ValidToCelsius);
        _isSmaller = !_laying.Covers(conductor.Size);
        _amperesPerRootKelvin = _laying.Amperes(_isSmaller ? _laying.ThinnestLike(conductor) : conductor, _highestCelsius, _highestCelsius - 1);
    }

    /// <summary>The capacity, the least where the way it lies is not stated, or null where nothing is known of a conductor so large.</summary>
    internal static ConductorCapacity? Of(SiteRun run, Cable cable, Conductor conductor) => In(run.Laying ?? Least(conductor), run.Laying is not null, cable, conductor);

    /// <summary>The same, but the most where the way it lies is not stated.</summary>
    internal static ConductorCapacity? AtMostOf(SiteRun run, Cable cable, Conductor conductor) =>
        In(run.Laying ?? (IsMetric(conductor) ? MostMetric : Alone), run.Laying is not null, cable, conductor);

    /// <summary>Why nothing is known of a conductor of that size, or null where something is.</summary>
    internal static ValidityBreach? BreachOf(SiteRun run, Conductor conductor) => (run.Laying ?? Least(conductor)).BreachOf(conductor);

    /// <summary>The most that it carries in air of a temperature. [A]</summary>
    internal double AmperesIn(double airCelsius) =>
        airCelsius < _highestCelsius ? _amperesPerRootKelvin * Math.Sqrt(_highestCelsius - airCelsius) : 0;

    /// <summary>What the capacity rests on, in words.</summary>
    internal string Basis(double airCelsius)
    {
        string taken = _cable.Insulation is null ? ", not stated" : string.Empty;
        string smaller = _isSmaller ? ", as the smallest known size" : _laying.IsEstimatedAt(_conductor.Size) ? ", estimated from a larger size" : string.Empty;
        string lying = _isLayingStated ? string.Empty : $", {_laying} taken";
        return FormattableString.Invariant($"{airCelsius:0.#} °C air, insulation {_highestCelsius:0.#} °C{taken}{smaller}{lying}");
    }

    private static bool IsMetric(Conductor conductor) => conductor.Size.Series is WireSizeSeries.SquareMillimeters or WireSizeSeries.Diameter;

    private static Laying Least(Conductor conductor) => IsMetric(conductor) ? LeastMetric : Alone;

    private static ConductorCapacity? In(Laying laying, bool isStated, Cable cable, Conductor conductor) =>
        laying.Covers(conductor.Size) || laying.IsThinner(conductor.Size) ? new ConductorCapacity(laying, isStated, cable, conductor) : null;
}
