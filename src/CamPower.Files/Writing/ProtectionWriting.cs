using System;
using System.Collections.Generic;
using System.Linq;
using CamPower.Files.Entries;
using CamPower.Files.Formats;
using UnitsNet;

namespace CamPower.Files.Writing;

/// <summary>From protective devices to entries.</summary>
internal static class ProtectionWriting
{
    /// <summary>The devices of the boxes that are not of the library.</summary>
    /// <exception cref="ArgumentException">A device has the name of one of the library, or two that differ have the same name.</exception>
    internal static NamedEntries<ProtectiveDevice, ProtectiveDeviceEntry> Entries(IEnumerable<DistributionBox> boxes) => new("protective devices",
        boxes.SelectMany(box => box.Outputs).Select(output => output.Protection).OfType<ProtectiveDevice>().Where(device => KnownDevices.NameOf(device) is null),
        device => device.Name, Entry);

    private static ProtectiveDeviceEntry Entry(ProtectiveDevice device, string name)
    {
        if (KnownDevices.All.Any(known => string.Equals(known.Name, name, StringComparison.Ordinal)))
        {
            throw new ArgumentException($"A protective device of the site is named '{name}', as one that every site file knows is: it needs another name.", nameof(device));
        }

        return device switch
        {
            Fuse fuse => new() { Name = name, Fuse = Entry(fuse) },
            ResettableFuse resettable => new() { Name = name, Resettable = Entry(resettable) },
            ElectronicLimit limit => new() { Name = name, ElectronicLimit = Entry(limit) },
            _ => throw new NotSupportedException($"A site file cannot express the protective device '{device}'."),
        };
    }

    private static FuseEntry Entry(Fuse fuse) => new()
    {
        Characteristic = new(fuse.Characteristic),
        RatedCurrent = new(fuse.RatedCurrent),
        VoltageRating = new(fuse.VoltageRating!.Value),
        BreakingCapacity = new(fuse.BreakingCapacity!.Value),
        ColdResistance = new(fuse.LeastResistance),
        LeastMeltingIntegral = fuse.LeastMeltingIntegral is JouleIntegral melting ? new(melting) : null,
        Rerating = fuse.Rerating is AmbientCurve rerating ? Entry(rerating) : null,
    };

    private static ElectronicLimitEntry Entry(ElectronicLimit limit) => new()
    {
        Limit = new(limit.Limit),
        Tolerance = new(limit.Tolerance),
        OpensWithin = new(limit.OpensWithin),
        Resistance = new(limit.LeastResistance),
        VoltageRating = new(limit.VoltageRating!.Value),
        RetriesAfter = limit.RetriesAfter is Duration pause ? new(pause) : null,
    };

    private static ResettableFuseEntry Entry(ResettableFuse fuse) => new()
    {
        HoldCurrent = new(fuse.HoldCurrent),
        TripCurrent = new(fuse.TripCurrent),
        TimedCurrent = new(fuse.TimedCurrent),
        LongestTimeToTrip = new(fuse.LongestTimeToTrip),
        LeastResistance = new(fuse.LeastResistance),
        GreatestResistance = new(fuse.GreatestResistance),
        Thermal = Entry(fuse.Thermal),
        MaximumVoltage = new(fuse.VoltageRating!.Value),
        MaximumCurrent = fuse.BreakingCapacity is ElectricCurrent largest ? new(largest) : null,
        TrippedPower = fuse.TrippedPower is Power power ? new(power) : null,
    };

    private static AmbientCurveEntry Entry(AmbientCurve curve)
    {
        if (ReferenceEquals(curve, AmbientCurve.GenericResettable)) return new() { Named = curve };
        if (curve.Source is not { Kind: CitationKind.Declared, Edition: null, Locator: null })
        {
            throw new NotSupportedException($"A site file cannot express the source '{curve.Source}' of an ambient curve: it knows a title that is declared.");
        }

        return new()
        {
            Source = curve.Source.Title,
            Points = [.. curve.Points.Select(p => new SharePointEntry<Temperature> { At = new(p.Ambient), Share = new(p.Factor) })],
        };
    }
}
