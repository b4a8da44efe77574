using System;
using System.Collections.Generic;
using System.Linq;
using CamPower.Checks;
using CamPower.Protection;

namespace CamPower;

/// <summary>What a person must look at before a site is energized and when it is maintained.</summary>
/// <remarks>Immutable. It stands beside the <see cref="RuleSet"/> and never answers itself: a site without findings still wants it.
/// Work on mains and inside enclosures is for whom the local code allows it.</remarks>
/// <example>
/// <code>
/// var mine = new InspectionList([.. InspectionList.Standard.Items,
///     new Inspection("drip-loop", "Look for a drip loop under every gland.", "Water runs along the cable into the box.",
///         "Mind the ladder.", new Citation("House rule of the stable", CitationKind.CommonPractice))]);
/// </code>
/// </example>
public sealed class InspectionList
{
    private const string Isolated =
        "Isolate the box from the mains and prove it dead first; capacitors hold their charge for a while, batteries always.";

    /// <summary>Makes a list.</summary>
    /// <param name="items">The inspections, no identifier twice.</param>
    /// <exception cref="ArgumentNullException"><paramref name="items"/> or one of them is null.</exception>
    /// <exception cref="ArgumentException">An identifier is used twice.</exception>
    public InspectionList(IEnumerable<Inspection> items)
    {
        Items = Require.Items(items, nameof(items));
        if (Identifier.FirstRepeated(Items.Select(i => i.Id)) is string repeated)
        {
            throw new ArgumentException($"The inspection {repeated} is there twice.", nameof(items));
        }
    }

    /// <summary>The inspections of this package.</summary>
    public static InspectionList Standard { get; } = new(
    [
        new("bare-conductor-beyond-terminal",
            "Look at every terminal from the side: no bare metal beyond the clamp, no strand outside it, no insulation under it.",
            "A bare end or a single strand reaches the neighboring pole or the box and shorts it.",
            Isolated, Sources.TerminalWorkmanship),
        new("opposite-poles-side-by-side",
            "Where a positive and a negative are landed side by side, look for a barrier, a ferrule or a sleeve between them.",
            "One loose strand joins the two poles, in front of the output's protection or behind it.",
            Isolated, Sources.CommonPractice),
        new("knockout-without-bushing",
            "Look at every cable where it enters metal: a bushing, gland or clamp in the knockout, and no open knockout left.",
            "The edge works through the insulation and puts a conductor on the box; an open knockout lets in fingers, insects and water.",
            Isolated, Sources.CableEntries),
        new("loose-metal-in-box",
            "Look for filings, strands, screws and washers, on the bottom and on the circuit boards.",
            "Loose metal lies still until somebody moves the box, and then it bridges what it falls on.",
            Isolated + " Do not blow it out with compressed air: take it out.", Sources.CommonPractice),
        new("lid-closed-and-locked",
            "Look at lid, seal and lock: closed on its whole seal, every screw in place, no cable pinched.",
            "Behind the lid are mains terminals; a lid that stands open lets in water and children.",
            "Do not drill into or change an enclosure: its protection is tested as it is sold.", Sources.CommonPractice),
        new("tug-test",
            "Pull at every conductor, one by one, in the direction of its cable: none moves. "
                + "Tighten a loose one to the torque that the terminal's maker states, not by feel; "
                + FormattableString.Invariant($"where nothing is stated, {ProtectionConstants.SmallTerminalTorque.Value} N·m for M2.5, ")
                    + FormattableString.Invariant($"{ProtectionConstants.TerminalTorque.Value} N·m for M3, ")
                    + FormattableString.Invariant(
                    $"{ProtectionConstants.SlottedTerminalTorque.Value} lb-in for a slotted screw of 18 to 10 AWG (from memory)."),
            "A loose contact has ohms in place of milliohms: it drops the camera's voltage and heats itself.",
            Isolated, Sources.TerminalWorkmanship),
        new("polarity-measured",
            "Measure at every device's plug before it is connected, "
                + "red probe on what should be positive: the reading is positive, and inside the device's range.",
            "A camera that is connected with its leads reversed may be destroyed at once, and one of the wrong voltage too.",
            "The circuit is live: use insulated probes, and do not measure on the mains side without the training for it.",
                Sources.CommonPractice),
    ]);

    /// <summary>The inspections, in the order in which a person goes through them.</summary>
    public IReadOnlyList<Inspection> Items { get; }

    /// <summary>The identifiers of the inspections; never throws.</summary>
    public override string ToString() => string.Join(", ", Items);
}
