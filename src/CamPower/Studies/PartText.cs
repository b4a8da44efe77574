using System;
using System.Globalization;
using System.Linq;
using UnitsNet;

namespace CamPower.Studies;

/// <summary>All that is stated of a thing of a site as one line: two that differ in anything read differently.</summary>
internal static class PartText
{
    internal const string NotStated = "not stated";

    internal static string Of(object? value) => value switch
    {
        null => NotStated,
        IQuantity quantity => quantity.ToString("s6", CultureInfo.InvariantCulture),
        Receptacle receptacle => OfReceptacle(receptacle),
        CircuitBreaker breaker => $"{breaker.Name}, {Of(breaker.Rating)}, opens at once from {Of(breaker.InstantaneousFrom)} to "
            + $"{Of(breaker.InstantaneousTo)} times that, residual current {Of(breaker.ResidualCurrent)}",
        UninterruptibleSupply unit => OfUninterruptible(unit),
        Enclosure enclosure => OfEnclosure(enclosure),
        Cabinet cabinet => $"{cabinet.Name}, {Of(cabinet.Enclosure)}",
        Battery battery => $"{battery.Name}, {battery.Chemistry}, {Of(battery.Cells)} cells, {Of(battery.Capacity)} in "
            + $"{Of(battery.RatedOver)}, {Of(battery.Resistance)}, down to {Of(battery.CutOff)}",
        ProtectiveDevice device => OfProtection(device),
        SupplyInput input => OfInput(input),
        Starting starting => $"turns on at {Of(starting.TurnOn)}, drops out at {Of(starting.DropOut)}, soft start "
            + $"{Of(starting.HasSoftStart)}, delay {Of(starting.Delay)}, hold-up {Of(starting.HoldUp)}",
        Inrush inrush => $"{Of(inrush.Peak)}, {Of(inrush.Integral)}, duration {Of(inrush.Duration)}",
        Connector connector =>
            $"{connector.Name}, {Of(connector.RatedCurrent)}, class {Of(connector.VoltageClass)}, wires {Of(connector.Wires)}",
        bool isSo => isSo ? "yes" : "no",
        IFormattable formattable => formattable.ToString(null, CultureInfo.InvariantCulture),
        _ => value.ToString()!,
    };

    private static string OfReceptacle(Receptacle receptacle) =>
        $"{receptacle.Name}, {Of(receptacle.Voltage)}, {Of(receptacle.Share)} of {Of(receptacle.Rating)}, "
            + $"breaker {Of(receptacle.Breaker)}, uninterruptible supply {Of(receptacle.Uninterruptible)}";

    private static string OfUninterruptible(UninterruptibleSupply unit) =>
        $"{unit.Name}, {Of(unit.ApparentPower)}, {Of(unit.Power)}, crest factor {Of(unit.CrestFactor)}, wanted for {Of(unit.BackupTime)}, "
            + "runs " + string.Join(" and ", unit.Runtimes.Select(point => $"{Of(point.Runtime)} at {Of(point.Load)}"));

    private static string OfEnclosure(Enclosure enclosure) =>
        $"{Of(enclosure.Width)} × {Of(enclosure.Height)} × {Of(enclosure.Depth)}, {enclosure.Wall}, free {enclosure.FreeFaces}, "
            + $"in the sun {Of(enclosure.SunlitArea)}, other heat {Of(enclosure.OtherHeat)}, "
            + (enclosure.IsVentilated ? "ventilated" : "not ventilated");

    private static string OfProtection(ProtectiveDevice device)
    {
        string own = device switch
        {
            Fuse fuse => $", {Of(fuse.RatedCurrent)}, {fuse.Characteristic}, direct {Of(fuse.DcVoltageRating)}, "
                + $"melting {Of(fuse.MinimumMeltingIntegral)}, re-rating {Of(fuse.Rerating)}",
            ResettableFuse fuse => $", hold {Of(fuse.HoldCurrent)}, trip {Of(fuse.TripCurrent)}, within {Of(fuse.LongestTimeToTrip)} at "
                + $"{Of(fuse.TestCurrent)}, thermal {Of(fuse.Thermal)}, tripped {Of(fuse.TrippedPower)}",
            ElectronicLimit limit => $", {Of(limit.Limit)} ± {Of(limit.Tolerance)}, "
                + $"from {Of(limit.OpensNotBefore)} to {Of(limit.OpensWithin)}, again after {Of(limit.RetriesAfter)}",
            _ => string.Empty,
        };
        return $"{device.Name}{own}, up to {Of(device.VoltageRating)}, breaks {Of(device.BreakingCapacity)}, "
            + $"{Of(device.MinimumResistance)} to {Of(device.MaximumResistance)}";
    }

    private static string OfInput(SupplyInput input) =>
        $"{Of(input.Voltage)}, inrush {Of(input.InrushCurrent)} cold, {Of(input.WarmInrushCurrent)} warm, {Of(input.InrushIntegral)}, "
            + $"leakage {Of(input.LeakageCurrent)}, standby {Of(input.StandbyPower)}, crest factor {Of(input.CrestFactor)}, "
            + $"efficiency {Of(input.Efficiency)}, power factor {Of(input.PowerFactor)}";
}
