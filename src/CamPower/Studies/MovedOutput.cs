using System.Collections.Generic;

namespace CamPower;

/// <summary>An output of a box whose wires go to an output of another one.</summary>
/// <remarks>Immutable.</remarks>
public sealed class MovedOutput
{
    internal MovedOutput(BoxOutput from, BoxOutput to, IReadOnlyList<SiteDevice> devices)
    {
        From = from;
        To = to;
        Devices = devices;
    }

    /// <summary>The output of the box that is divided.</summary>
    public BoxOutput From { get; }

    /// <summary>The output that takes its place.</summary>
    public BoxOutput To { get; }

    /// <summary>The devices that it feeds.</summary>
    public IReadOnlyList<SiteDevice> Devices { get; }

    /// <summary>Both outputs and the devices; never throws.</summary>
    public override string ToString() => $"{From} to {To}: {string.Join(", ", Devices)}";
}
