using System.Collections.Generic;
using System.Linq;
using CamPower.Supplies;

namespace CamPower;

/// <summary>An output against one of the two tables of a power-limit class.</summary>
/// <remarks>Immutable.</remarks>
public sealed class PowerLimitRoute
{
    internal PowerLimitRoute(PowerLimiting limiting, IEnumerable<PowerLimitFigure> figures)
    {
        Limiting = limiting;
        Figures = figures.ToList().AsReadOnly();
        Verdict = Figures.Any(f => f.Verdict == PowerLimitVerdict.Exceeds) ? PowerLimitVerdict.Exceeds
            : Figures.Any(f => f.Verdict == PowerLimitVerdict.Unknown) ? PowerLimitVerdict.Unknown
            : PowerLimitVerdict.WithinNumbers;
    }

    /// <summary>Which of the two tables.</summary>
    public PowerLimiting Limiting { get; }

    /// <summary>Every number that the table limits.</summary>
    public IReadOnlyList<PowerLimitFigure> Figures { get; }

    /// <summary>The worst of the figures: one that exceeds decides, then one that is unknown.</summary>
    public PowerLimitVerdict Verdict { get; }

    /// <summary>The figures that decide: those of the verdict itself.</summary>
    public IEnumerable<PowerLimitFigure> Deciding => Figures.Where(f => f.Verdict == Verdict);

    /// <summary>The table and the figures that decide; never throws.</summary>
    public override string ToString() =>
        $"{(Limiting == PowerLimiting.Inherent ? "limited by itself" : "limited by an overcurrent device")}: {string.Join("; ", Deciding)}";
}
