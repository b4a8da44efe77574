using System;
using UnitsNet;
using static System.FormattableString;

namespace CamPower;

/// <summary>Where a box may be set: every device that it feeds is up and inside its accepted range, in every condition of the
/// site.</summary>
/// <remarks>
/// Immutable. A supply gives its set point within a tolerance: the lowest voltage of it counts for staying up, starting and undervoltage,
/// the highest, at the least load and the coldest cable, for overvoltage. For the moment before a device draws anything see
/// <see cref="HighestBeforeLoad"/>: the window itself counts on the least load. Where the two limits cross the window is empty, and they
/// name who conflicts; <see cref="Spoiler"/> and <see cref="OfOthers"/> say what to do about it. A supply that cannot be trimmed has one
/// set point, and a window of that one voltage or none.
/// </remarks>
/// <example>
/// <code>
/// TrimWindow window = site.TrimWindowOf("yard box");
/// Console.WriteLine(window.IsEmpty ? $"{window.Conflict} short" : $"set to {window.Middle}");
/// </code>
/// </example>
public sealed class TrimWindow
{
    internal TrimWindow(DistributionBox box, TrimLimit lowest, TrimLimit highest, TrimLimit highestBeforeLoad,
        SiteDevice? spoiler = null, TrimWindow? ofOthers = null)
    {
        Spoiler = spoiler;
        OfOthers = ofOthers;
        HighestBeforeLoad = highestBeforeLoad;
        Box = box;
        Lowest = lowest;
        Highest = highest;
    }

    /// <summary>The box.</summary>
    public DistributionBox Box { get; }

    /// <summary>The lowest set point that will do, and what is out below it.</summary>
    public TrimLimit Lowest { get; }

    /// <summary>The highest set point that will do, and what is out above it.</summary>
    public TrimLimit Highest { get; }

    /// <summary>The highest set point at which no device sees more than it accepts even before it draws anything, and who does above
    /// it.</summary>
    /// <remarks>It may lie below <see cref="Highest"/>, and below <see cref="Lowest"/>: a device that is plugged in, or switched on, then
    /// sees the whole voltage of the supply for a moment. Most inputs withstand that; only the data sheet says so.</remarks>
    public TrimLimit HighestBeforeLoad { get; }

    /// <summary>The device that spoils an empty window: without it the others have the widest one; null where the window is not empty, or
    /// the supply ends it on both sides.</summary>
    public SiteDevice? Spoiler { get; }

    /// <summary>The window of the devices other than <see cref="Spoiler"/>, which stays connected; it may be empty too. Null where nothing
    /// spoils the window.</summary>
    public TrimWindow? OfOthers { get; }

    /// <summary>Whether no set point will do: what the one limit asks for, the other does not allow.</summary>
    public bool IsEmpty => Limits.IsAbove(Lowest.Volts, Highest.Volts);

    /// <summary>Voltage by which the lower limit is above the upper one; 0 where the window is not empty. [V]</summary>
    public ElectricPotential Conflict => ElectricPotential.FromVolts(IsEmpty ? Lowest.Volts - Highest.Volts : 0);

    /// <summary>The set point with the most room on both sides. [V]</summary>
    /// <exception cref="InvalidOperationException">The window is empty.</exception>
    public ElectricPotential Middle => IsEmpty
        ? throw new InvalidOperationException($"No set point will do. {this}")
        : ElectricPotential.FromVolts((Lowest.Volts + Highest.Volts) / 2);

    /// <summary>Whether a set point lies inside the window, its ends included.</summary>
    /// <param name="setPoint">The set point. [V]</param>
    public bool Contains(ElectricPotential setPoint) =>
        !Limits.IsBelow(setPoint.Volts, Lowest.Volts) && !Limits.IsAbove(setPoint.Volts, Highest.Volts);

    /// <summary>Both ends, or what conflicts, in words without the name of the box; in the invariant culture.</summary>
    public string Summary => IsEmpty
        ? $"no set point works: {Lowest.Asked("needs", "at least")}, {Highest.Asked("allows", "at most")}{Others}"
        : $"{Lowest} to {Highest}{Warning}";

    /// <summary>The box and both ends, or what conflicts, in the invariant culture; never throws.</summary>
    public override string ToString() => $"{Box}: {Summary}";

    private string Others => OfOthers is null ? ""
        : OfOthers.IsEmpty ? $"; without {Spoiler} no set point works either"
        : $"; without {Spoiler}: {OfOthers.Lowest} to {OfOthers.Highest}";

    private string Warning => Limits.IsBelow(HighestBeforeLoad.Volts, Highest.Volts) ? $"; without load at most {HighestBeforeLoad}" : "";
}
