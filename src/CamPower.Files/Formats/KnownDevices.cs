using System.Collections.Generic;
using System.Linq;

namespace CamPower.Files.Formats;

/// <summary>The protective devices that every file may refer to by name: those of the library, and none.</summary>
internal static class KnownDevices
{
    internal static IReadOnlyList<(string Name, ProtectiveDevice Device)> All { get; } =
        [("none", ProtectiveDevice.None), .. ResettableFuse.Generic16Volt.Select(f => (f.Name, (ProtectiveDevice)f))];

    /// <summary>The name of a device of the library, or null where it is one of the user's.</summary>
    internal static string? NameOf(ProtectiveDevice device) =>
        All.Where(known => ReferenceEquals(known.Device, device)).Select(known => known.Name).FirstOrDefault();
}
