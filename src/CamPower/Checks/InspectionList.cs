using System;
using System.Collections.Generic;
using System.Linq;
using CamPower.Checks;
using CamPower.Protection;
using static System.FormattableString;

namespace CamPower;

/// <summary>Inspections that a person does before a site is energized and during maintenance.</summary>
/// <remarks>Immutable. It adds to the <see cref="RuleSet"/>: a site without findings needs it too. Work on mains and inside enclosures is
/// for people whom the local code allows to do it.</remarks>
/// <example>
/// <code>
/// var mine = new InspectionList([.. InspectionList.Standard.Items,
///     new Inspection("drip-loop", "Look for a drip loop under every gland.", "Water runs along the cable into the box.",
///         "Secure the ladder.", new Citation("House rule of the stable", CitationKind.CommonPractice))]);
/// </code>
/// </example>
public sealed class InspectionList
{
    private const string Isolated =
        "First disconnect the box from line power and check that it reads 0 V. Capacitors hold their charge for a while, batteries always.";

    /// <summary>Makes a list.</summary>
    /// <param name="items">The inspections, no identifier twice.</param>
    /// <exception cref="ArgumentNullException"><paramref name="items"/> or one of them is null.</exception>
    /// <exception cref="ArgumentException">An identifier is used twice.</exception>
    public InspectionList(IEnumerable<Inspection> items)
    {
        Items = Require.Items(items, nameof(items));
        if (Identifier.FirstRepeated(Items.Select(i => i.Id)) is string repeated)
        {
            throw new ArgumentException($"The inspection {repeated} is in the list twice.", nameof(items));
        }
    }

    /// <summary>The inspections of this package.</summary>
    public static InspectionList Standard { get; } = new(
    [
        new("bare-conductor-beyond-terminal",
            "Look at every terminal from the side. No bare metal is beyond the clamp, no strand outside it, no insulation under it.",
            "A bare end or a single strand touches the neighboring pole or the box and shorts it.",
            Isolated, Sources.TerminalWorkmanship),
        new("opposite-poles-side-by-side",
            "Where a positive and a negative conductor are side by side, look for a barrier, a ferrule or a sleeve between them.",
            "One loose strand joins the two poles, before or after the protective device of the output.",
            Isolated, Sources.CommonPractice),
        new("knockout-without-bushing",
            "Look at every cable where it enters metal. It has a bushing, gland or clamp, and no open knockout is left.",
            "The edge cuts through the insulation and connects a conductor to the box. " +
            "An open knockout lets in fingers, insects and water.",
            Isolated, Sources.CableEntries),
        new("loose-metal-in-box",
            "Look for filings, strands, screws and washers on the bottom and on the circuit boards.",
            "Loose metal moves when the box is moved, and then it shorts what it falls on.",
            Isolated + " Do not use compressed air: take the metal out.", Sources.CommonPractice),
        new("lid-closed-and-locked",
            "Look at lid, seal and lock. The lid is closed on its whole seal, every screw is in place, and no cable is pinched.",
            "Mains terminals are behind the lid. An open lid lets in water and children.",
            "Do not drill into or change an enclosure: its protection was tested as it is sold.", Sources.CommonPractice),
        new("tug-test",
            "Pull at every conductor, one by one, in the direction of its cable. None moves. " +
            "Tighten a loose one to the torque that the maker of the terminal states, not by feel. " +
            Invariant($"Where no torque is stated, use {ProtectionConstants.SmallTerminalTorque.Value} N·m for M2.5 ") +
            Invariant($"or {ProtectionConstants.TerminalTorque.Value} N·m for M3. ") +
            Invariant($"For a slotted screw of 18 to 10 AWG use {ProtectionConstants.SlottedTerminalTorque.Value} lb-in (from memory)."),
            "A loose contact has ohms in place of milliohms. It lowers the voltage of the camera and heats itself.",
            Isolated, Sources.TerminalWorkmanship),
        new("battery-place-and-terminals",
            "Where a box has a battery, look at its place, its terminals and its fuse. Gas can leave the box, the terminals are covered, " +
            "and the fuse is at the terminal.",
            "A lead-acid battery gives off hydrogen, which can explode. A short before the fuse burns until the battery is empty.",
            "A battery is always live. Take off rings and watches, use insulated tools, and cover the other terminal. " +
            "Old batteries go where the local code says.", Sources.CommonPractice),
        new("polarity-measured",
            "Before you connect a device, measure at its plug, with the red probe on the positive contact. " +
            "The reading is positive and within the range of the device.",
            "Reversed leads or a wrong voltage can destroy a camera at once.",
            "The circuit is live. Use insulated probes, and do not measure on the mains side without training.", Sources.CommonPractice),
    ]);

    /// <summary>The inspections, in the order in which a person does them.</summary>
    public IReadOnlyList<Inspection> Items { get; }

    /// <summary>The identifiers of the inspections; never throws.</summary>
    public override string ToString() => string.Join(", ", Items);
}
