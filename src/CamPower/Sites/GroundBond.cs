using System;
using UnitsNet;

namespace CamPower;

/// <summary>A connection from a ground where shields meet to the negative of a box: through protective earth, or a recorder fed from the
/// box.</summary>
/// <remarks>Immutable. Without one the shields return current to the box through each other only.</remarks>
/// <example><code>var bond = new GroundBond(ground: "recorder", box: "yard box", ElectricResistance.FromMilliohms(50));</code></example>
public sealed class GroundBond
{
    /// <summary>Places a bond.</summary>
    /// <param name="ground">Name of the ground. Not empty.</param>
    /// <param name="box">Name of the box. Not empty.</param>
    /// <param name="resistance">Resistance between the two, from 1 µΩ to 100 MΩ. [Ω]</param>
    /// <exception cref="ArgumentNullException">A name is null.</exception>
    /// <exception cref="ArgumentException">A name is empty.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="resistance"/> is outside its range.</exception>
    public GroundBond(string ground, string box, ElectricResistance resistance)
    {
        Ground = Require.Name(ground, nameof(ground));
        Box = Require.Name(box, nameof(box));
        Require.Within(resistance.Ohms, 1e-6, 1e8, nameof(resistance), "Ω");
        Resistance = resistance;
    }

    /// <summary>Name of the ground.</summary>
    public string Ground { get; }

    /// <summary>Name of the box.</summary>
    public string Box { get; }

    /// <summary>Resistance between the two.</summary>
    public ElectricResistance Resistance { get; }

    /// <summary>Both ends in words; never throws.</summary>
    public override string ToString() => $"bond from {Ground} to {Box}";
}
