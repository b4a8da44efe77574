using UnitsNet;
using static System.FormattableString;

namespace CamPower;

/// <summary>A line of a pull list: a length of cable, how much is cut for it, and the labels of its ends.</summary>
/// <remarks>Immutable.</remarks>
/// <example><code>foreach (PulledCable cable in site.ListMaterial().Pulls) Console.WriteLine(cable);</code></example>
public sealed class PulledCable
{
    internal PulledCable(SiteRun run, CableSegment segment, Length cut, string startLabel, string endLabel)
    {
        Run = run;
        Cable = segment.Cable;
        Route = segment.OneWayLength;
        Cut = cut;
        StartLabel = startLabel;
        EndLabel = endLabel;
    }

    /// <summary>The run that it is of.</summary>
    public SiteRun Run { get; }

    /// <summary>The cable.</summary>
    public Cable Cable { get; }

    /// <summary>Its length along the route, one way, as the site has it. [any length unit]</summary>
    public Length Route { get; }

    /// <summary>What is cut: the route with slack, rises and tails, in the unit of the route. [any length unit]</summary>
    public Length Cut { get; }

    /// <summary>Text of the label at its start: where it is, and where the cable goes.</summary>
    public string StartLabel { get; }

    /// <summary>Text of the label at its end: where it is, and where the cable comes from.</summary>
    public string EndLabel { get; }

    /// <summary>Cable, length and both ends in the invariant culture; never throws.</summary>
    public override string ToString() => Invariant($"{Cut.Meters:0.#} m of {Cable}: {StartLabel} / {EndLabel}");
}
