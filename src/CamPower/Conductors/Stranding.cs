using System;
using CamPower.Conductors;

namespace CamPower;

/// <summary>How the metal of a conductor is made up, and what its lay adds to the resistance of a solid wire of the same area.</summary>
/// <remarks>Immutable.</remarks>
/// <example><code>Stranding lay = Stranding.ClassB;   // 2 % above solid</code></example>
public sealed class Stranding
{
    /// <summary>Describes a construction.</summary>
    /// <param name="name">How it is called. Not empty.</param>
    /// <param name="layFactor">Resistance over that of the solid wire of the same area, from 1 to 1.2. [1]</param>
    /// <param name="source">Where the factor comes from.</param>
    /// <exception cref="ArgumentNullException">A reference is null.</exception>
    /// <exception cref="ArgumentException"><paramref name="name"/> is empty.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="layFactor"/> is outside its range.</exception>
    public Stranding(string name, double layFactor, Citation source)
    {
        Name = Require.Name(name, nameof(name));
        LayFactor = Require.Within(layFactor, 1, 1.2, nameof(layFactor), "");
        Source = Require.NotNull(source, nameof(source));
    }

    /// <summary>One solid wire.</summary>
    public static Stranding Solid { get; } = new("solid", 1, Sources.Resistance);

    /// <summary>Class B concentric lay: 2 % above solid.</summary>
    public static Stranding ClassB { get; } = new("class B stranded", ConductorConstants.ClassBLay.Value, ConductorConstants.ClassBLay.Source);

    /// <summary>How it is called.</summary>
    public string Name { get; }

    /// <summary>Resistance over that of the solid wire of the same area. [1]</summary>
    public double LayFactor { get; }

    /// <summary>Where the factor comes from.</summary>
    public Citation Source { get; }

    /// <summary>The name; never throws.</summary>
    public override string ToString() => Name;
}
