using System;
using UnitsNet;

namespace CamPower;

/// <summary>One numbered output of a distribution box and the current that it may carry.</summary>
/// <remarks>Immutable.</remarks>
public sealed class BoxOutput
{
    /// <summary>Describes an output.</summary>
    /// <param name="number">Its number, from 1.</param>
    /// <param name="limit">The current that it may carry all the time, above 0. [A]</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public BoxOutput(int number, ElectricCurrent limit)
    {
        Number = (int)Require.Within(number, 1, int.MaxValue, nameof(number), "");
        LimitAmperes = Require.Positive(limit.Amperes, nameof(limit), "A");
        Limit = limit;
    }

    /// <summary>Its number, from 1.</summary>
    public int Number { get; }

    /// <summary>The current that it may carry all the time.</summary>
    public ElectricCurrent Limit { get; }

    internal double LimitAmperes { get; }

    /// <summary>The number and the limit in the invariant culture; never throws.</summary>
    public override string ToString() => FormattableString.Invariant($"output {Number} ({LimitAmperes:G6} A)");
}
