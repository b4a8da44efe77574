namespace CamPower.Circuits;

/// <summary>A load between two nodes of a network.</summary>
/// <remarks>Immutable; made by <see cref="DcNetworkBuilder"/>.</remarks>
internal sealed class NetworkLoad
{
    internal NetworkLoad(string name, string positiveNode, string negativeNode, Load load)
    {
        Name = name;
        PositiveNode = positiveNode;
        NegativeNode = negativeNode;
        Load = load;
    }

    /// <summary>Its name, unique in the network.</summary>
    internal string Name { get; }

    /// <summary>Name of the node at its positive terminal.</summary>
    internal string PositiveNode { get; }

    /// <summary>Name of the node at its negative terminal.</summary>
    internal string NegativeNode { get; }

    /// <summary>Its load.</summary>
    internal Load Load { get; }

    /// <summary>Name and terminals; never throws.</summary>
    public override string ToString() => $"{Name}: {PositiveNode} to {NegativeNode}";
}
