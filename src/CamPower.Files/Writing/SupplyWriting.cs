using System.Collections.Generic;
using System.Linq;
using CamPower.Files.Entries;
using UnitsNet;

namespace CamPower.Files.Writing;

/// <summary>From supplies to entries.</summary>
internal static class SupplyWriting
{
    internal static SupplyEntry Entry(Supply supply)
    {
        SupplyOutput output = supply.Output;
        var dc = output as DcOutput;
        return new SupplyEntry
        {
            Name = supply.Name,
            Output = new(output.Kind),
            Nominal = new(output.Nominal),
            RatedCurrent = new(output.RatedCurrent),
            Tolerance = new(output.Tolerance),
            Derating = Entry(supply.Derating),
            Trim = ModelWriting.Entry(dc?.Trim),
            SetPoint = dc is null || BoxWriting.IsSame(dc.SetPoint, dc.Nominal) ? null : new(dc.SetPoint),
            RatedPower = dc?.RatedPower is Power power ? new(power) : null,
            Ripple = dc?.Ripple is Ratio ripple ? new(ripple) : null,
            SourceResistance = output.SourceResistance is ElectricResistance resistance ? new(resistance) : null,
            Overload = output.Overload is OverloadBehaviour overload ? Entry(overload) : null,
            Capacitance = dc?.Capacitance is ElectricCapacitance capacitance ? new(capacitance) : null,
            Inlet = supply.Inlet is SupplyInlet inlet ? Entry(inlet) : null,
        };
    }

    internal static List<SharePointEntry<T>?>? Entry<T>(ShareCurve<T>? curve) where T : struct, IQuantity =>
        curve is null ? null : [.. curve.Points.Select(p => new SharePointEntry<T> { At = new(p.At), Share = new(p.Share) })];

    private static OverloadEntry Entry(OverloadBehaviour overload) => overload switch
    {
        { Limit: null } => new() { Named = OverloadBehaviour.Unlimited },
        { Limit: ElectricCurrent limit, ShortCircuitCurrent: ElectricCurrent folded } => new() { Foldback = new(limit), ShortCircuit = new(folded) },
        { Limit: ElectricCurrent limit, Pulse: Duration pulse, Period: Duration period } => new() { Hiccup = new(limit), Pulse = new(pulse), Period = new(period) },
        { Limit: ElectricCurrent limit, Pulse: Duration within } => new() { Shutdown = new(limit), Within = new(within) },
        _ => new() { ConstantCurrent = new(overload.Limit.Value) },
    };

    private static DeratingEntry Entry(Derating derating) => ReferenceEquals(derating, Derating.GenericEnclosed)
        ? new() { Named = derating }
        : new()
        {
            Ambient = Entry(derating.Ambient),
            LineVoltage = Entry(derating.LineVoltage),
            Altitude = derating.Altitude is AltitudeDerating altitude
                ? new() { Above = new(altitude.Above), PerThousandMetres = new(altitude.PerThousandMetres) }
                : null,
        };

    private static InletEntry Entry(SupplyInlet inlet) => new()
    {
        Voltage = ModelWriting.Entry(inlet.Voltage),
        InrushCurrent = inlet.InrushCurrent is ElectricCurrent inrush ? new(inrush) : null,
        Efficiency = Entry(inlet.Efficiency),
        PowerFactor = Entry(inlet.PowerFactor),
    };
}
