using System;
using System.Linq;
using CamPower.Files.Formats;
using UnitsNet;

namespace CamPower.Files.Parts;

/// <summary>Protective devices.</summary>
internal static class ProtectionFormats
{
    private static readonly ObjectFormat<ProtectiveDevice> Device = new(o =>
    {
        var name = o.Required("name", "The name by which outputs refer to it.", Words.Name, d => d.Name);
        var fuse = o.OfForm("fuse", "A fuse.", FuseNamed(name), d => d as Fuse);
        var resettable = o.OfForm("resettable", "A resettable fuse, as its data sheet describes it in still air of 20 C.",
            ResettableNamed(name), d => d as ResettableFuse);
        var limit = o.OfForm("electronicLimit", "An electronic limit, which holds the current and then opens.", LimitNamed(name),
            d => d as ElectronicLimit);
        o.OneOf(new Form(fuse), new Form(resettable), new Form(limit));
        return at =>
        {
            if (fuse.IsGiven(at)) return fuse[at];
            if (limit.IsGiven(at)) return limit[at];
            return resettable.IsGiven(at) ? resettable[at] : ProtectiveDevice.None;
        };
    });

    /// <summary>The protective devices of the outputs, beside those of the library, and none.</summary>
    internal static PartList<ProtectiveDevice> Devices { get; } = new("protective device", Device, d => d.Name)
    {
        MayBeLeftOut = true,
        Known = ResettableFuse.Generic16Volt.Append(ProtectiveDevice.None)
            .ToDictionary(d => ReferenceEquals(d, ProtectiveDevice.None) ? "none" : d.Name, StringComparer.Ordinal),
    };

    private static ObjectFormat<Fuse> FuseNamed(Member<string> name) => new(o =>
    {
        var characteristic = o.Required("characteristic", "The time limits of its standard.", Words.Characteristic, f => f.Characteristic)
            .Else(StandIn.Characteristic);
        var ratedCurrent = o.Required("ratedCurrent", "Its rated current.", Quantities.Current, f => f.RatedCurrent);
        var voltageRating = o.Required("voltageRating", "The highest AC voltage that it interrupts.", Quantities.Voltage,
            f => f.VoltageRating!.Value);
        var dcVoltageRating = o.Optional("dcVoltageRating", "The highest DC voltage that it interrupts.", Quantities.Voltage,
            f => f.DcVoltageRating);
        var breakingCapacity = o.Required("breakingCapacity", "The largest current that it interrupts.", Quantities.Current,
            f => f.BreakingCapacity!.Value);
        var coldResistance = o.Required("coldResistance", "Its resistance cold.", Quantities.Resistance, f => f.MinimumResistance);
        var melting = o.Optional("minimumMeltingIntegral", "The minimum I2t that melts it, not a typical value.",
            Quantities.JouleIntegral, f => f.MinimumMeltingIntegral);
        var rerating = o.Optional("rerating", "How its rated current changes with the air around it.", CurveFormats.Ambient,
            f => f.Rerating);
        return at => new Fuse(
            name[at.Parent!], ratedCurrent.Or(at, characteristic[at].RatedFrom), characteristic[at], voltageRating[at],
            breakingCapacity[at], coldResistance[at], melting[at], rerating[at], dcVoltageRating[at]);
    });

    private static ObjectFormat<ResettableFuse> ResettableNamed(Member<string> name) => new(o =>
    {
        var hold = o.Required("holdCurrent", "The largest current that it carries without tripping.", Quantities.Current,
            f => f.HoldCurrent).Else(StandIn.LowCurrent);
        var trip = o.Required("tripCurrent", "The smallest current that trips it for certain.", Quantities.Current, f => f.TripCurrent);
        var timed = o.Required("testCurrent", "The current at which its time to trip is stated.", Quantities.Current, f => f.TestCurrent)
            .Else(StandIn.HighCurrent);
        var longest = o.Required("longestTimeToTrip", "It has tripped by then at that current.", Quantities.Duration,
            f => f.LongestTimeToTrip).Else(StandIn.LongTime);
        var least = o.Required("minimumResistance", "Its resistance new.", Quantities.Resistance, f => f.MinimumResistance)
            .Else(ElectricResistance.Zero);
        var greatest = o.Required("maximumResistance", "Its resistance an hour after a trip.", Quantities.Resistance,
            f => f.MaximumResistance).Else(StandIn.HighResistance);
        var thermal = o.Required("thermal", "How its currents change with the air around it.", CurveFormats.Ambient, f => f.Thermal);
        var voltage = o.Required("maximumVoltage", "The highest voltage that it withstands when tripped.", Quantities.Voltage,
            f => f.VoltageRating!.Value).Parameter("voltageRating");
        var current = o.Optional("maximumCurrent", "The largest current that it interrupts.", Quantities.Current, f => f.BreakingCapacity)
            .Parameter("breakingCapacity");
        var power = o.Optional("trippedPower", "The power that keeps it tripped.", Quantities.Power, f => f.TrippedPower);
        return at => new ResettableFuse(
            name[at.Parent!], hold[at], trip.Or(at, timed[at]), timed[at], longest[at], least[at], greatest[at], thermal[at],
            voltage[at], current[at], power[at]);
    }) { Else = ResettableFuse.Generic16Volt[0] };

    private static ObjectFormat<ElectronicLimit> LimitNamed(Member<string> name) => new(o =>
    {
        var limit = o.Required("limit", "The current that it holds.", Quantities.Current, l => l.Limit);
        var tolerance = o.Required("tolerance", "How far that current may be off.", Quantities.Share, l => l.Tolerance).Else(Ratio.Zero);
        var opensWithin = o.Required("opensWithin", "It has opened when the limit has lasted so long.", Quantities.Duration,
            l => l.OpensWithin).Else(StandIn.LongTime);
        var resistance = o.Required("resistance", "Its resistance while it carries current without limiting.", Quantities.Resistance,
            l => l.MinimumResistance);
        var voltageRating = o.Required("voltageRating", "The highest voltage that it interrupts.", Quantities.Voltage,
            l => l.VoltageRating!.Value);
        var retriesAfter = o.Optional("retriesAfter", "The pause until it tries again; left out where it stays open until it is reset.",
            Quantities.Duration, l => l.RetriesAfter);
        var opensNotBefore = o.Optional("opensNotBefore",
            "Its shortest operating time: it stays closed until the limit has lasted so long.", Quantities.Duration, l => l.OpensNotBefore);
        return at => new ElectronicLimit(name[at.Parent!], limit[at], tolerance[at], opensWithin[at], resistance[at], voltageRating[at],
            retriesAfter[at], opensNotBefore[at]);
    });
}
