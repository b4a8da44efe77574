using System.Collections.Generic;
using System.Linq;

namespace CamPower;

/// <summary>One box of a split, and what it takes over.</summary>
/// <remarks>Immutable.</remarks>
public sealed class BoxShare
{
    internal BoxShare(DistributionBox box, string catalogName, IReadOnlyList<MovedOutput> outputs)
    {
        Box = box;
        CatalogName = catalogName;
        Outputs = outputs;
    }

    /// <summary>The box as the site has it: its name, and its supply set.</summary>
    public DistributionBox Box { get; }

    /// <summary>Name in the catalog.</summary>
    public string CatalogName { get; }

    /// <summary>The outputs that it takes over, by its own numbers.</summary>
    public IReadOnlyList<MovedOutput> Outputs { get; }

    /// <summary>Names and devices; never throws.</summary>
    public override string ToString() => $"{Box} ({CatalogName}): {string.Join(", ", Outputs.SelectMany(o => o.Devices))}";
}
