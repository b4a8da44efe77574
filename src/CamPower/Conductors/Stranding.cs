using System;
using CamPower.Conductors;

namespace CamPower;

/// <summary>Stranding of a conductor, and what its lay adds to the resistance of a solid wire of the same area.</summary>
/// <remarks>Immutable.</remarks>
/// <example><code>Stranding lay = Stranding.ClassB;   // 2 % above solid</code></example>
public sealed class Stranding
{
    /// <summary>Describes a construction.</summary>
    /// <param name="name">Name. Not empty.</param>
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
    public static Stranding ClassB { get; } =
        new("class B stranded", ConductorConstants.ClassBLay.Value, ConductorConstants.ClassBLay.Source);

    /// <summary>Flexible: fine wires bunched or rope-laid, 4 % above solid.</summary>
    public static Stranding Flexible { get; } =
        new("flexible", ConductorConstants.FlexibleLay.Value, ConductorConstants.FlexibleLay.Source);

    /// <summary>Class 1 of IEC 60228: solid.</summary>
    /// <remarks>With <see cref="Conductor(WireSize, CamPower.Stranding, ConductorMaterial)"/> it gives the nominal value, with
    /// <see cref="Iec60228"/> the standard's maximum. The same holds for the other classes.</remarks>
    public static Stranding IecClass1 { get; } = new("IEC class 1 solid", 1, Sources.Iec60228);

    /// <summary>Class 2 of IEC 60228: stranded; the lay of a concentric one, 2 % above solid.</summary>
    public static Stranding IecClass2 { get; } =
        new("IEC class 2 stranded", ConductorConstants.ClassBLay.Value, ConductorConstants.ClassBLay.Source);

    /// <summary>Class 5 of IEC 60228: flexible; the lay of a bunched one, 4 % above solid.</summary>
    public static Stranding IecClass5 { get; } =
        new("IEC class 5 flexible", ConductorConstants.FlexibleLay.Value, ConductorConstants.FlexibleLay.Source);

    /// <summary>Name.</summary>
    public string Name { get; }

    /// <summary>Resistance over that of the solid wire of the same area. [1]</summary>
    public double LayFactor { get; }

    /// <summary>Where the factor comes from.</summary>
    public Citation Source { get; }

    /// <summary>The name; never throws.</summary>
    public override string ToString() => Name;
}
