using System.Collections.Generic;

namespace CamPower.Commissioning;

/// <summary>One cause at one place, of any of several sizes.</summary>
internal sealed class Hypothesis(Cause cause, int unit, int place, CauseSizes sizes, double logPrior, IReadOnlyList<int> units,
    int? second = null)
{
    // What is left of the voltage of a supply that a short pulls down. Common practice, no source. [1]
    private const double PulledDown = 0.05;

    internal Cause Cause { get; } = cause;

    internal int Unit { get; } = unit;

    internal int Place { get; } = place;

    internal CauseSizes Sizes { get; } = sizes;

    internal double LogPrior { get; } = logPrior;

    /// <summary>The units whose readings it moves.</summary>
    internal IReadOnlyList<int> Units { get; } = units;

    /// <summary>The other feed of two whose runs are swapped; the box that a short pulls down; null for none.</summary>
    internal int? Second { get; } = second;

    /// <summary>The same with what it is worth before anything is read.</summary>
    internal Hypothesis WithPrior(double logPrior) => new(Cause, Unit, Place, Sizes, logPrior, Units, Second);

    /// <summary>Whether a fault in the model is of this cause.</summary>
    internal bool Owns(Deviation fault) => (fault.Cause == Cause && (fault.Unit == Unit || fault.Unit == Second))
        || (Cause == Cause.ShortCircuit && fault.Cause == Cause.SupplyInLimit && fault.Unit == Second);

    /// <summary>The fault in the model, of one of its sizes.</summary>
    internal Deviation[] At(int size) => WithSize(Sizes.Values[size]);

    /// <summary>The fault in the model, of any size.</summary>
    internal Deviation[] WithSize(double size)
    {
        var fault = new Deviation(Cause, Unit, Place, size);
        if (Second is not int other) return [fault];
        return Cause == Cause.ShortCircuit
            ? [fault, new Deviation(Cause.SupplyInLimit, other, 0, PulledDown)]
            : [fault, new Deviation(Cause, other, Unit, 1)];
    }
}
