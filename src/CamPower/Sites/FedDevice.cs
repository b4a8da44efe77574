namespace CamPower.Sites;

/// <summary>A device of an <see cref="OutputFeed"/>: its place in the site and the run that it hangs on.</summary>
internal sealed class FedDevice(SiteDevice device, int siteIndex, int runIndex)
{
    internal SiteDevice Device { get; } = device;

    /// <summary>Index in the site's devices.</summary>
    internal int SiteIndex { get; } = siteIndex;

    /// <summary>Index in the feed's runs.</summary>
    internal int RunIndex { get; } = runIndex;
}
