namespace CamPower;

/// <summary>A central box against one adapter for each device, on the same site.</summary>
/// <remarks>Immutable. Figures, and no verdict: where receptacles are, who may mount them and what it costs no figure here knows.</remarks>
public sealed class SupplyComparison
{
    internal SupplyComparison(SupplyLayout central, SupplyLayout adapters)
    {
        Central = central;
        Adapters = adapters;
    }

    /// <summary>The site as it is: the box and its runs.</summary>
    public SupplyLayout Central { get; }

    /// <summary>The same devices, an adapter and its lead for each.</summary>
    public SupplyLayout Adapters { get; }

    /// <summary>Both on a line each, in the invariant culture; never throws.</summary>
    public override string ToString() => $"central: {Central}\nadapters: {Adapters}";
}
