using System;
using System.Collections.Generic;
using System.Linq;
using CamPower.Files.Entries;
using CamPower.Files.Formats;

namespace CamPower.Files.Building;

/// <summary>From the entries of a file to a site.</summary>
internal static class SiteBuilder
{
    /// <summary>The site, or null where the file has a fault.</summary>
    internal static Site? Build(SiteEntry entry, Place root)
    {
        CheckVersion(entry.FormatVersion, root.Member("formatVersion"));
        var cables = Catalog<Cable>.Of("cable", StandIn.Cable, entry.Cables, root.Member("cables"), c => c.Name, CableBuilding.Build);
        var models = Catalog<Device>.Of("model", StandIn.Model, entry.Models, root.Member("models"), m => m.Name, ModelBuilding.Build);
        var devices = Catalog<ProtectiveDevice>.OfOptional("protective device", ProtectiveDevice.None, entry.ProtectiveDevices, root.Member("protectiveDevices"),
            d => d.Name, ProtectionBuilding.Build, KnownDevices.All);
        var cabinets = Catalog<Cabinet>.OfOptional("cabinet", StandIn.Cabinet, entry.Cabinets, root.Member("cabinets"), c => c.Name, BoxBuilding.Build);
        var outlets = Catalog<Outlet>.OfOptional("outlet", StandIn.Outlet, entry.Outlets, root.Member("outlets"), o => o.Name, BoxBuilding.Build);
        string name = root.Name("name", entry.Name);
        Condition[] conditions = All(entry.Conditions, root.Member("conditions"), ConditionBuilding.Build);
        if (entry.Conditions is { Count: 0 }) root.Member("conditions").Fault("a site needs at least one condition");
        DistributionBox[] boxes = All(entry.Boxes, root.Member("boxes"), (box, at) => BoxBuilding.Build(box, at, devices, cabinets, outlets));
        SiteRun[] runs = All(entry.Runs, root.Member("runs"), (run, at) => RunBuilding.Build(run, at, cables));
        SiteDevice[] siteDevices = All(entry.Devices, root.Member("devices"), (device, at) => Build(device, at, models));
        VideoLink[] videoLinks = All(entry.VideoLinks, root.Member("videoLinks"), Build);
        GroundBond[] bonds = All(entry.Bonds, root.Member("bonds"), Build);
        OutputTie[] ties = All(entry.Ties, root.Member("ties"), Build);
        StructureCheck.Note(entry, root, conditions, boxes, runs, siteDevices, videoLinks, bonds, ties);
        CheckAltitude(entry, root);
        return root.IsFaulty ? null : new Site(name, conditions, boxes, runs, siteDevices, videoLinks, bonds, entry.Altitude?.Value, ties);
    }

    private static void CheckVersion(int? version, Place at)
    {
        if (version is int number and not SiteEntry.CurrentVersion)
        {
            at.Fault(FormattableString.Invariant(
                $"version {number} is unknown: version {SiteEntry.CurrentVersion} is known, and the rest was read as if it were that"));
        }
    }

    // Of a site that is a list of sound parts, nothing else can be wrong.
    private static void CheckAltitude(SiteEntry entry, Place root) => root.Build(() =>
        new Site("stand-in", [StandIn.Condition], [], [], [], altitude: root.Optional("altitude", entry.Altitude)));

    private static T[] All<TEntry, T>(IReadOnlyList<TEntry?>? entries, Place list, Func<TEntry, Place, T> build) where TEntry : class, new() =>
        [.. (entries ?? []).Select((entry, i) => build(entry ?? new(), list.Item(i)))];

    private static SiteDevice Build(DeviceEntry entry, Place at, Catalog<Device> models) => new(
        at.Name("name", entry.Name), models.Find(entry.Model, at.Member("model")), at.Name("at", entry.At),
        at.Value("leadsReversed", entry.LeadsReversed, false));

    private static VideoLink Build(VideoLinkEntry entry, Place at) => at.Build(() => new VideoLink(
        at.Name("device", entry.Device), at.Name("ground", entry.Ground), at.Value("shieldResistance", entry.ShieldResistance, StandIn.Resistance)));

    private static GroundBond Build(BondEntry entry, Place at) => at.Build(() => new GroundBond(
        at.Name("ground", entry.Ground), at.Name("box", entry.Box), at.Value("resistance", entry.Resistance, StandIn.Resistance)));

    private static OutputTie Build(TieEntry entry, Place at)
    {
        Place one = at.Member("one"), other = at.Member("other");
        string oneBox = one.Name("box", entry.One?.Box), otherBox = other.Name("box", entry.Other?.Box);
        RunOrigin from = Output(oneBox, entry.One, one), to = Output(otherBox, entry.Other, other);
        bool isItself = string.Equals(oneBox, otherBox, StringComparison.Ordinal) && from.OutputNumber == to.OutputNumber;
        if (isItself && !at.IsFaulty) other.Fault("an output is not joined to itself");
        return new OutputTie(oneBox, from.OutputNumber, otherBox, isItself ? to.OutputNumber + 1 : to.OutputNumber);
    }

    private static RunOrigin Output(string box, OutputNameEntry? entry, Place at) =>
        at.Build(() => RunOrigin.Output(box, at.Value("output", entry?.Output, 1)));
}
