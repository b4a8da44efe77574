namespace CamPower.Tolerance;

/// <summary>One uncertain number of a site.</summary>
/// <remarks>Immutable. Its deviation x is a share of what the site states, kelvins, or from 0 to 1 between the ends of a protective
/// device's resistance: see <see cref="UncertainQuantity"/>.</remarks>
internal sealed class UncertainPart(UncertainQuantity quantity, string name, UncertainRange range)
{
    internal UncertainQuantity Quantity { get; } = quantity;

    /// <summary>What it is of: a box, a cable type, a run by the junction at its end, an output, a device.</summary>
    internal string Name { get; } = name;

    internal UncertainRange Range { get; } = range;

    public override string ToString() => $"{Quantity} of {Name}: {Range}";
}
