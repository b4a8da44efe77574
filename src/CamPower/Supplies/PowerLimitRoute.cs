using System.Collections.Generic;
using System.Linq;
using CamPower.Supplies;

namespace CamPower;

/// <summary>An output against one of the two tables of a power-limit class.</summary>
/// <remarks>Immutable.</remarks>
public sealed class PowerLimitRoute
{
    internal PowerLimitRoute(PowerLimitClass limitClass, PowerLimiting limiting, IEnumerable<PowerLimitFigure> figures)
    {
        Class = limitClass;
        Limiting = limiting;
        Figures = figures.ToList().AsReadOnly();
        Verdict = Figures.Any(f => f.Verdict == PowerLimitVerdict.Exceeds) ? PowerLimitVerdict.Exceeds
            : Figures.Any(f => f.Verdict == PowerLimitVerdict.Unknown) ? PowerLimitVerdict.Unknown
            : PowerLimitVerdict.WithinNumbers;
    }

    /// <summary>The class with its standard.</summary>
    public PowerLimitClass Class { get; }

    /// <summary>Which of its two tables: true for that of a source limited by itself, false for that of one limited by an overcurrent
    /// device.</summary>
    public bool IsInherentlyLimited => Limiting == PowerLimiting.Inherent;

    internal PowerLimiting Limiting { get; }

    /// <summary>Every number that the table limits.</summary>
    public IReadOnlyList<PowerLimitFigure> Figures { get; }

    /// <summary>The worst of the figures: one that exceeds decides, then one that is unknown.</summary>
    public PowerLimitVerdict Verdict { get; }

    /// <summary>The figures that decide: those of the verdict itself.</summary>
    public IEnumerable<PowerLimitFigure> Deciding => Figures.Where(f => f.Verdict == Verdict);

    /// <summary>The table and the figures that decide; never throws.</summary>
    public override string ToString() => Words(isStandardKnown: false);

    /// <summary>The same, without the standard where that is known.</summary>
    /// <param name="isStandardKnown">Whether it is.</param>
    /// <param name="most">How many of the figures at most: one that exceeds is enough.</param>
    internal string Words(bool isStandardKnown, int most = int.MaxValue) => (isStandardKnown ? string.Empty : Standard) +
        $"{(IsInherentlyLimited ? "inherently limited" : "limited by an overcurrent device")}: {string.Join("; ", Deciding.Take(most))}";

    private string Standard => Class switch
    {
        PowerLimitClass.LimitedPowerSourceIec60950 => "IEC 60950-1, ",
        PowerLimitClass.LimitedPowerSourceIec62368 => "IEC 62368-1, ",
        _ => string.Empty,
    };
}
