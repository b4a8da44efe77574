using UnitsNet;

namespace CamPower.Circuits;

/// <summary>A source of a network: a voltage behind a resistance, between two nodes.</summary>
/// <remarks>Immutable; made by <see cref="DcNetworkBuilder"/>. It cannot sink current unless <see cref="MaySink"/> says so.</remarks>
internal sealed class NetworkSource
{
    internal NetworkSource(string name, string positiveNode, string negativeNode, double volts, double ohms, bool maySink)
    {
        Name = name;
        PositiveNode = positiveNode;
        NegativeNode = negativeNode;
        Volts = volts;
        Ohms = ohms;
        MaySink = maySink;
    }

    /// <summary>Its name, unique in the network.</summary>
    internal string Name { get; }

    /// <summary>Name of the node at its positive terminal.</summary>
    internal string PositiveNode { get; }

    /// <summary>Name of the node at its negative terminal.</summary>
    internal string NegativeNode { get; }

    /// <summary>Voltage without load, above 0 and at most 1 MV. [V]</summary>
    internal ElectricPotential Voltage => ElectricPotential.FromVolts(Volts);

    /// <summary>Internal resistance; 0 for an ideal source. [Ω]</summary>
    internal ElectricResistance Resistance => ElectricResistance.FromOhms(Ohms);

    /// <summary>Whether current may flow into it, as into a battery; otherwise it is blocked, as a power supply is.</summary>
    internal bool MaySink { get; }

    internal double Volts { get; }

    internal double Ohms { get; }

    /// <summary>Name and terminals; never throws.</summary>
    public override string ToString() => $"{Name}: {PositiveNode} to {NegativeNode}";
}
