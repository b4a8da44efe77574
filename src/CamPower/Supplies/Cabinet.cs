using System;

namespace CamPower;

/// <summary>An enclosure with a name for several boxes of a site: a supply each, and one air around them all.</summary>
/// <remarks>
/// Immutable. What every box in it loses warms that air, and the air derates every supply and every resettable fuse in it. Boxes
/// are in one cabinet when they refer to the same one; two enclosures that are alike are two.
/// </remarks>
/// <example>
/// <code>
/// var cabinet = new Cabinet("gatehouse cabinet", enclosure);
/// var limit = ElectricCurrent.FromAmperes(1.1);
/// var bankA = DistributionBox.OfEqualOutputs("bank A", supply, outputs: 9, limit).WithCabinet(cabinet);
/// var bankB = DistributionBox.OfEqualOutputs("bank B", supply, outputs: 9, limit).WithCabinet(cabinet);
/// </code>
/// </example>
public sealed class Cabinet
{
    /// <summary>Describes a cabinet.</summary>
    /// <param name="name">Name on the site. Not empty.</param>
    /// <param name="enclosure">The case; its <see cref="Enclosure.OtherHeat"/> counts once, however many boxes are in it.</param>
    /// <exception cref="ArgumentNullException">A reference is null.</exception>
    /// <exception cref="ArgumentException"><paramref name="name"/> is empty.</exception>
    public Cabinet(string name, Enclosure enclosure)
    {
        Name = Require.Name(name, nameof(name));
        Enclosure = Require.NotNull(enclosure, nameof(enclosure));
    }

    /// <summary>Name on the site.</summary>
    public string Name { get; }

    /// <summary>The case.</summary>
    public Enclosure Enclosure { get; }

    /// <summary>The name; never throws.</summary>
    public override string ToString() => Name;
}
