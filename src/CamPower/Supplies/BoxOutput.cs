using System;
using UnitsNet;

namespace CamPower;

/// <summary>One numbered output of a distribution box, the current that it may carry and what protects it.</summary>
/// <remarks>Immutable. The resistance of its protective device is in series with the load. If the protective device is not stated, this
/// resistance is 0.</remarks>
public sealed class BoxOutput
{
    /// <summary>Describes an output.</summary>
    /// <param name="number">Its number, from 1.</param>
    /// <param name="limit">The current that it may carry all the time, above 0. [A]</param>
    /// <param name="protection">What interrupts an overcurrent; <see cref="ProtectiveDevice.None"/> where there is nothing, null where
    /// it is not stated.</param>
    /// <param name="claimedClass">The power-limit class that its label or data sheet claims; null where it claims none.</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range, or <paramref name="claimedClass"/> is not a defined
    /// value.</exception>
    public BoxOutput(int number, ElectricCurrent limit, ProtectiveDevice? protection = null, PowerLimitClass? claimedClass = null)
    {
        Number = (int)Require.Within(number, 1, int.MaxValue, nameof(number), "");
        LimitAmperes = Require.Positive(limit.Amperes, nameof(limit), "A");
        Limit = limit;
        Protection = protection;
        ClaimedClass = claimedClass is PowerLimitClass claimed ? Require.Known(claimed, nameof(claimedClass)) : null;
    }

    /// <summary>Its number, from 1.</summary>
    public int Number { get; }

    /// <summary>The current that it may carry all the time.</summary>
    public ElectricCurrent Limit { get; }

    /// <summary>Protective device of the output; <see cref="ProtectiveDevice.None"/> where there is none, null where it is not
    /// stated.</summary>
    public ProtectiveDevice? Protection { get; }

    /// <summary>The power-limit class that its label or data sheet claims, or null where it claims none.</summary>
    public PowerLimitClass? ClaimedClass { get; }

    internal double LimitAmperes { get; }

    /// <summary>The number and the limit in the invariant culture; never throws.</summary>
    public override string ToString() => FormattableString.Invariant($"output {Number} ({LimitAmperes:G6} A)");
}
