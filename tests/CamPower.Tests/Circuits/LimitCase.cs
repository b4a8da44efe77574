using System;
using UnitsNet;

namespace CamPower.Tests.Circuits;

/// <summary>A load, a run with a trunk, a last length and a joint, and what is accepted at the load.</summary>
public sealed record LimitCase(FeedCase Feeding, double LowestShare, double DropShare, double JointShare, double DegreesCelsius)
{
    private static readonly Cable Trunk = new(
        new Conductor(WireSize.Awg(14), Stranding.ClassB, ConductorMaterial.AnnealedCopper),
        new Conductor(WireSize.SquareMillimeters(1.5), Stranding.Solid, ConductorMaterial.CopperCladAluminum15));

    internal double Volts => Feeding.Volts;

    internal Load Load => Feeding.Load;

    internal ElectricPotential From => ElectricPotential.FromVolts(Volts);

    internal Temperature At => Temperature.FromDegreesCelsius(DegreesCelsius);

    internal double LowestVolts => LowestShare * Volts;

    internal VoltageLimit Accepted
    {
        get
        {
            VoltageLimit? lowest = LowestShare > 0 ? VoltageLimit.AtLeast(ElectricPotential.FromVolts(LowestVolts)) : null;
            VoltageLimit? drop = DropShare < 1 ? VoltageLimit.DropAtMost(Ratio.FromPercent(DropShare * 100)) : null;
            return lowest is null ? drop! : drop is null ? lowest : lowest.And(drop);
        }
    }

    /// <summary>Resistance of about that of the case, at 20 °C: some of it joint, a little of it trunk.</summary>
    internal CableRun Run
    {
        get
        {
            double ohms = Feeding.Ohms, cable = ohms * (1 - JointShare) * 0.9, trunk = ohms * (1 - JointShare) * 0.1;
            return new CableRun(
                new CableSegment(Trunk, Length.FromMeters(trunk / PerMeter(Trunk))),
                new CableSegment(Runs.Eighteen, Length.FromMeters(cable / PerMeter(Runs.Eighteen))),
                new Joint("plug", ElectricResistance.FromOhms(ohms * JointShare)));
        }
    }

    /// <summary>What is accepted at the load from a source, worked out apart from the library.</summary>
    internal double AcceptedFrom(double sourceVolts) => Math.Max(LowestVolts, DropShare < 1 ? sourceVolts * (1 - DropShare) : 0);

    internal bool Meets(RunResult result, double slack = 0) =>
        result.HasOperatingPoint && result.LoadVoltage.Volts >= AcceptedFrom(result.SourceVoltage.Volts) * (1 - slack);

    public override string ToString() => FormattableString.Invariant($"{Feeding}, at least {LowestShare:R} of it, drop at most {DropShare:R}, joints {JointShare:R}, {DegreesCelsius:R} °C");

    private static double PerMeter(Cable cable) => cable.LoopResistancePerLengthAt(Temperature.FromDegreesCelsius(20)).OhmsPerMeter;
}
