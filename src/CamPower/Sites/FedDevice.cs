using System.Collections.Generic;

namespace CamPower.Sites;

/// <summary>A device of an <see cref="OutputFeed"/>: what feeds it, its place in the site, and the runs that it hangs on.</summary>
internal sealed class FedDevice(DistributionBox box, SiteDevice device, int indexInSite, int runIndex, IReadOnlyList<SiteRun> path)
{
    internal DistributionBox Box { get; } = box;

    internal SiteDevice Device { get; } = device;

    /// <summary>Index in the site's devices.</summary>
    internal int IndexInSite { get; } = indexInSite;

    /// <summary>Index of the last run in the feed's runs.</summary>
    internal int RunIndex { get; } = runIndex;

    /// <summary>The runs between the output and the device, in order.</summary>
    internal IReadOnlyList<SiteRun> Path { get; } = path;

    /// <summary>The voltage that it accepts of the current that its box gives, or null where it accepts none, or none that way
    /// round.</summary>
    internal VoltageRange? Accepted { get; } = IsReversed(device, box) ? null : device.Model.InputFor(box.Supply.Output.Kind);

    /// <summary>Its turn-on and drop-out voltages, or null where they are not stated. Nothing is worked out for a device that is fed the
    /// wrong kind of current.</summary>
    internal Starting? Starting => Accepted is null ? null : Device.Model.Starting;

    /// <summary>Whether an inrush is declared of it, of what it draws at first or of what is switched on later.</summary>
    internal bool HasInrush => Accepted is not null && (Device.Model.Inrush ?? Device.Model.SwitchedInrush) is not null;

    private static bool IsReversed(SiteDevice device, DistributionBox box) => device.LeadsReversed && box.Supply.Output.IsDc;
}
