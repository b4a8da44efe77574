using System.Linq;
using CamPower.Files.Entries;
using CamPower.Files.Formats;
using UnitsNet;

namespace CamPower.Files.Writing;

/// <summary>From boxes to entries.</summary>
internal static class BoxWriting
{
    internal static BoxEntry Entry(DistributionBox box, NamedEntries<ProtectiveDevice, ProtectiveDeviceEntry> devices,
        NamedEntries<Cabinet, CabinetEntry> cabinets, NamedEntries<Outlet, OutletEntry> outlets)
    {
        BoxOutput first = box.Outputs[0];
        bool areAlike = box.Outputs.All(o => IsSame(o.Limit, first.Limit) && ReferenceEquals(o.Protection, first.Protection) && o.ClaimedClass == first.ClaimedClass);
        bool isEqualBox = areAlike && !box.IsAdapter && box.Outputs.Count <= Building.StandIn.MostOutputs;
        return new BoxEntry
        {
            Name = box.Name,
            Supply = SupplyWriting.Entry(box.Supply),
            Outputs = isEqualBox ? box.Outputs.Count : null,
            OutputLimit = isEqualBox ? new(first.Limit) : null,
            OutputProtection = isEqualBox ? NameOf(first) : null,
            OutputList = isEqualBox || box.IsAdapter ? null : [.. box.Outputs.Select(o => new OutputEntry { Limit = new(o.Limit), Protection = NameOf(o), ClaimedClass = ClassOf(o) })],
            Adapter = box.IsAdapter ? true : null,
            LeadProtection = box.IsAdapter ? NameOf(first) : null,
            ClaimedClass = isEqualBox || box.IsAdapter ? ClassOf(first) : null,
            Terminals = box.Terminals is TerminalRange terminals ? Entry(terminals) : null,
            Enclosure = box.Enclosure is Enclosure enclosure && box.Cabinet is null ? EnclosureWriting.Entry(enclosure) : null,
            Cabinet = box.Cabinet is Cabinet cabinet ? cabinets.NameOf(cabinet) : null,
            Outlet = box.Outlet is Outlet outlet ? outlets.NameOf(outlet) : null,
        };

        static Written<PowerLimitClass>? ClassOf(BoxOutput output) => output.ClaimedClass is PowerLimitClass claimed ? new(claimed) : null;

        string? NameOf(BoxOutput output) => output.Protection is ProtectiveDevice device ? KnownDevices.NameOf(device) ?? devices.NameOf(device) : null;
    }

    internal static OutletEntry Entry(Outlet outlet) => new()
    {
        Name = outlet.Name,
        Voltage = new(outlet.Voltage),
        Rating = new(outlet.Rating),
        Share = new(outlet.Share),
    };

    internal static TerminalsEntry Entry(TerminalRange range) => new() { Smallest = new(range.Smallest), Largest = new(range.Largest) };

    /// <summary>The same number in the same unit.</summary>
    internal static bool IsSame<T>(T a, T b) where T : IQuantity => a.Unit.Equals(b.Unit) && ((double)a.Value).Equals((double)b.Value);
}
