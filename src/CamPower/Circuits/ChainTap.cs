using System;
using UnitsNet;

namespace CamPower;

/// <summary>Voltage of one camera of a chain, and the current of the cable before it.</summary>
/// <remarks>Immutable.</remarks>
public sealed class ChainTap
{
    internal ChainTap(ChainLink link, double meters, double volts, double segmentAmperes, double droppedVolts)
    {
        Link = link;
        Meters = meters;
        Volts = volts;
        SegmentAmperes = segmentAmperes;
        DroppedVolts = droppedVolts;
    }

    /// <summary>The camera and the run before it.</summary>
    public ChainLink Link { get; }

    /// <summary>Length along the route from the source, one way. [m]</summary>
    public Length Distance => Length.FromMeters(Meters);

    /// <summary>Voltage at the camera. [V]</summary>
    public ElectricPotential LoadVoltage => ElectricPotential.FromVolts(Volts);

    /// <summary>Current of the camera. [A]</summary>
    public ElectricCurrent LoadCurrent => ElectricCurrent.FromAmperes(LoadAmperes);

    /// <summary>Current in the run before it: its own and that of every camera behind it. [A]</summary>
    public ElectricCurrent SegmentCurrent => ElectricCurrent.FromAmperes(SegmentAmperes);

    /// <summary>Voltage lost from the source to the camera, out and back. [V]</summary>
    public ElectricPotential Drop => ElectricPotential.FromVolts(DroppedVolts);

    internal double Meters { get; }

    internal double Volts { get; }

    internal double LoadAmperes => Link.Load.AmperesAt(Volts);

    internal double SegmentAmperes { get; }

    private double DroppedVolts { get; }

    /// <summary>Distance, voltage and currents in the invariant culture; never throws.</summary>
    public override string ToString() => FormattableString.Invariant(
        $"{Meters:0.###} m: {Volts:0.###} V, {LoadAmperes:0.###} A of {SegmentAmperes:0.###} A");
}
