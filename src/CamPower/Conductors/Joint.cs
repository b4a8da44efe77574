using System;
using UnitsNet;

namespace CamPower;

/// <summary>A joint or connector in a run, as a resistance in series that does not depend on temperature.</summary>
/// <remarks>Immutable. Usual ones are in <see cref="JointCatalog"/>.</remarks>
/// <example><code>var joint = new Joint("gel splice at the mast", ElectricResistance.FromMilliohms(10));</code></example>
public sealed class Joint : RunPart
{
    /// <summary>Describes a joint.</summary>
    /// <param name="name">What it is. Not empty.</param>
    /// <param name="loopResistance">Resistance that it adds to the loop: both poles together, at least 0. [Ω]</param>
    /// <param name="source">Where the resistance comes from, or null.</param>
    /// <param name="ratedCurrent">What each contact carries all the time, above 0; null where it is not stated. [A]</param>
    /// <exception cref="ArgumentNullException"><paramref name="name"/> is null.</exception>
    /// <exception cref="ArgumentException"><paramref name="name"/> is empty.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="loopResistance"/> is negative or infinite, or
    /// <paramref name="ratedCurrent"/> is not above 0.</exception>
    public Joint(string name, ElectricResistance loopResistance, Citation? source = null, ElectricCurrent? ratedCurrent = null)
    {
        if (ratedCurrent is ElectricCurrent rated) RatedAmperes = Require.Positive(rated.Amperes, nameof(ratedCurrent), "A");
        RatedCurrent = ratedCurrent;
        Name = Require.Name(name, nameof(name));
        OhmsAt20C = Require.NotNegative(loopResistance.Ohms, nameof(loopResistance), "Ω");
        LoopResistance = loopResistance;
        Source = source;
    }

    /// <summary>Name of the joint.</summary>
    public string Name { get; }

    /// <summary>Resistance that it adds to the loop: both poles together. [Ω]</summary>
    public ElectricResistance LoopResistance { get; }

    /// <summary>Where the resistance comes from, or null.</summary>
    public Citation? Source { get; }

    /// <summary>What each contact carries all the time, or null where it is not stated. [A]</summary>
    public ElectricCurrent? RatedCurrent { get; }

    /// <summary>Zero: a joint has no length.</summary>
    public override Length OneWayLength => Length.Zero;

    internal double? RatedAmperes { get; }

    internal override double OhmsAt20C { get; }

    internal override double OhmsPerKelvin => 0;

    /// <summary>Name and resistance in the invariant culture; never throws.</summary>
    public override string ToString() => FormattableString.Invariant($"{Name} ({OhmsAt20C:G6} Ω)");
}
