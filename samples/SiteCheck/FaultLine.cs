using System.Collections.Generic;
using System.Linq;
using CamPower;
using UnitsNet;

namespace SiteCheck;

/// <summary>One fault at one output, or at several where the answer is the same.</summary>
internal sealed record FaultLine
{
    private FaultLine(OutputFaults output, string kind, Overcurrent fault)
    {
        Outputs = [output.Output.Number];
        Kind = kind;
        Opening = ReferenceEquals(output.Output.Protection, ProtectiveDevice.None) ? "none" : FaultWords.Opening(fault);
        bool isSupplyKnown = (fault.Missing & (FaultData.Overload | FaultData.SourceResistance)) == FaultData.None;
        Flows = isSupplyKnown && fault.Largest is ElectricCurrent most ? new Spread(fault.Smallest.Amperes, most.Amperes) : null;
    }

    public IReadOnlyList<int> Outputs { get; private init; }

    public string Kind { get; }

    /// <summary>What the resistances alone let flow; null where none is declared, and in an overload. [A]</summary>
    public Spread? Prospective { get; private init; }

    /// <summary>What flows when supply and protection have had their say; null where that is not declared. [A]</summary>
    public Spread? Flows { get; private init; }

    public string Opening { get; }

    public string Conductors { get; private init; } = "";

    public string Supply { get; private init; } = "";

    /// <summary>The voltage of the supply; null where it has none, or it is not known. [V]</summary>
    public Spread? SupplyVolts { get; private init; }

    public string Others { get; private init; } = "";

    /// <summary>Lines that agree in this are one.</summary>
    public (string, string, string, string, string) Answer => (Kind, Opening, Conductors, Supply, Others);

    /// <summary>A short at an output, with so many devices at the others.</summary>
    public static FaultLine Short(OutputFaults output, ShortCircuit fault, string kind, int others) => new(output, kind, fault)
    {
        Prospective = fault is { SmallestProspective: ElectricCurrent least, LargestProspective: ElectricCurrent most } ? new Spread(least.Amperes, most.Amperes) : null,
        Conductors = fault.Run is null ? "" : FaultWords.Conductors(output.Shorts.Select(s => s.WithstandVerdict)),
        Supply = FaultWords.Supply(fault.Supply.State),
        SupplyVolts = fault.Supply is { State: SupplyState.StaysUp or SupplyState.Dips, Voltage: ElectricPotential volts } ? new Spread(volts.Volts, volts.Volts) : null,
        Others = FaultWords.Others(fault.Supply, others),
    };

    public static FaultLine Overload(OutputFaults output, Overload fault, string kind) => new(output, kind, fault) { Conductors = FaultWords.Conductors(fault.WithstandVerdict) };

    public FaultLine Joined(FaultLine other) => this with
    {
        Outputs = [.. Outputs, .. other.Outputs],
        Prospective = Spread.Joined(Prospective, other.Prospective),
        Flows = Spread.Joined(Flows, other.Flows),
        SupplyVolts = Spread.Joined(SupplyVolts, other.SupplyVolts),
    };
}
