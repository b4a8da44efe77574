using System.Collections.Generic;
using System.Linq;
using CamPower.Files.Entries;

namespace CamPower.Files.Building;

/// <summary>From entries to boxes.</summary>
internal static class BoxBuilding
{
    internal static Cabinet Build(CabinetEntry entry, Place at) =>
        new(at.Name("name", entry.Name), EnclosureBuilding.Build(entry.Enclosure ?? new(), at.Member("enclosure")));

    internal static DistributionBox Build(BoxEntry entry, Place at, Catalog<ProtectiveDevice> devices, Catalog<Cabinet> cabinets, Catalog<Outlet> outlets)
    {
        DistributionBox box = Placed(entry, Bare(entry, at, devices), at, cabinets);
        return entry.Outlet is null ? box : box.PluggedInto(outlets.Find(entry.Outlet, at.Member("outlet")));
    }

    internal static Outlet Build(OutletEntry entry, Place at)
    {
        string name = at.Name("name", entry.Name);
        return at.Build(() => new Outlet(name, at.Value("voltage", entry.Voltage, StandIn.Voltage), at.Value("rating", entry.Rating, StandIn.Current),
            at.Optional("share", entry.Share)), StandIn.Outlet);
    }

    private static DistributionBox Placed(BoxEntry entry, DistributionBox box, Place at, Catalog<Cabinet> cabinets)
    {
        Place enclosureAt = at.Member("enclosure");
        Enclosure? enclosure = entry.Enclosure is null ? null : EnclosureBuilding.Build(entry.Enclosure, enclosureAt);
        if (entry.Cabinet is null) return enclosure is null ? box : box.In(enclosure);
        if (entry.Enclosure is not null && !enclosureAt.IsFaulty) enclosureAt.Fault("a box in a cabinet has no enclosure of its own");
        return box.In(cabinets.Find(entry.Cabinet, at.Member("cabinet")));
    }

    private static DistributionBox Bare(BoxEntry entry, Place at, Catalog<ProtectiveDevice> devices)
    {
        string name = at.Name("name", entry.Name);
        Supply supply = SupplyBuilding.Build(entry.Supply ?? new(), at.Member("supply"));
        TerminalRange? terminals = entry.Terminals is null ? null : Build(entry.Terminals, at.Member("terminals"));
        if (entry.Adapter == false) at.Member("adapter").Fault("adapter can only be true; leave it out for a box");
        if (entry.Adapter == true && entry.Terminals is not null && !HasSeveralForms(entry)) at.Member("terminals").Fault("an adapter has no terminals, only its lead");
        ProtectiveDevice? ofEach = Protection(entry.OutputProtection, at.Member("outputProtection"), devices);
        ProtectiveDevice? ofLead = Protection(entry.LeadProtection, at.Member("leadProtection"), devices);
        if (entry.OutputList is not null && entry.ClaimedClass is not null && !HasSeveralForms(entry)) at.Member("claimedClass").Fault("outputs that are listed claim it one by one");
        PowerLimitClass? claimed = at.Optional("claimedClass", entry.ClaimedClass);
        if (HasSeveralForms(entry)) return new DistributionBox(name, supply, StandIn.Outputs);
        if (entry.OutputList is not null) return new DistributionBox(name, supply, Outputs(entry.OutputList, at.Member("outputList"), devices), terminals);
        if (entry.Adapter == true) return DistributionBox.Adapter(name, supply, ofLead, claimed);
        return at.Build(() => DistributionBox.WithEqualOutputs(name, supply,
            at.Value("outputs", entry.Outputs, StandIn.MostOutputs), at.Value("outputLimit", entry.OutputLimit, StandIn.Current), ofEach, terminals, claimed));
    }

    // The reader has noted it; nobody knows then how many outputs were meant.
    private static bool HasSeveralForms(BoxEntry entry) => new[]
    {
        entry.OutputList is not null, entry.Adapter is not null, entry.Outputs is not null || entry.OutputLimit is not null,
    }.Count(given => given) > 1;

    private static IEnumerable<BoxOutput> Outputs(List<OutputEntry?> entries, Place at, Catalog<ProtectiveDevice> devices)
    {
        if (entries.Count == 0) at.Fault("a box needs at least one output");
        return entries.Count > 0 ? entries.Select((entry, i) => Output(i, entry ?? new(), at.Item(i), devices)) : StandIn.Outputs;
    }

    private static BoxOutput Output(int index, OutputEntry entry, Place at, Catalog<ProtectiveDevice> devices)
    {
        ProtectiveDevice? protection = Protection(entry.Protection, at.Member("protection"), devices);
        return at.Build(() => new BoxOutput(index + 1, at.Value("limit", entry.Limit, StandIn.Current), protection, at.Optional("claimedClass", entry.ClaimedClass)), standIn: null, ("limit", "limit"));
    }

    private static ProtectiveDevice? Protection(string? name, Place at, Catalog<ProtectiveDevice> devices) =>
        name is null ? null : devices.Find(name, at);

    internal static TerminalRange Build(TerminalsEntry entry, Place at) => at.Build(() => new TerminalRange(
        at.Value("smallest", entry.Smallest, StandIn.ThinWire), at.Value("largest", entry.Largest, StandIn.ThickWire)));
}
