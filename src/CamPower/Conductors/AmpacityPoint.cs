using System;
using CamPower.Conductors;
using UnitsNet;

namespace CamPower;

/// <summary>A published current that a copper conductor of one size carries continuously.</summary>
/// <remarks>Immutable. Only together with the temperatures of its table does it say anything: see <see cref="InstallationMethod"/>.</remarks>
/// <example><code>var point = new AmpacityPoint(WireSize.Awg(18), ElectricCurrent.FromAmperes(14));</code></example>
public sealed class AmpacityPoint
{
    /// <summary>States a point.</summary>
    /// <param name="size">Size of the copper conductor; not the default value.</param>
    /// <param name="current">What it carries, above 0. [A]</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public AmpacityPoint(WireSize size, ElectricCurrent current)
    {
        Require.Positive(size.SquareMeters, nameof(size), "m²");
        Amperes = Require.Positive(current.Amperes, nameof(current), "A");
        Size = size;
        Current = current;
    }

    /// <summary>Size of the copper conductor.</summary>
    public WireSize Size { get; }

    /// <summary>What it carries continuously.</summary>
    public ElectricCurrent Current { get; }

    internal double Amperes { get; }

    /// <summary>Size and current in the invariant culture; never throws.</summary>
    public override string ToString() => FormattableString.Invariant($"{Size}: {Amperes:G6} A");
}
