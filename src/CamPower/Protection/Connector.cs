using System;
using System.Collections.Generic;
using UnitsNet;

namespace CamPower;

/// <summary>The connector at which a device takes its power: what it carries, for which voltages it is meant, which wire it
/// takes.</summary>
/// <remarks>Immutable. A barrel plug fits by its size and says nothing of its rating: two that fit each other may be rated 1 A and 5
/// A.</remarks>
/// <example>
/// <code>
/// var plug = new Connector("barrel plug of the dome", Sources.CommonBarrel, ratedCurrent: ElectricCurrent.FromAmperes(2.5));
/// var dome = new Device("dome", DeviceKind.Camera, draw, dcInput: window, connector: plug);
/// </code>
/// </example>
public sealed class Connector
{
    /// <summary>Describes a connector.</summary>
    /// <param name="name">Name. Not empty.</param>
    /// <param name="source">Where its ratings come from.</param>
    /// <param name="ratedCurrent">What each contact carries all the time, above 0; null where it is not stated. [A]</param>
    /// <param name="voltageClass">The supply voltages that it is meant for; null where it is meant for any.</param>
    /// <param name="wires">The wire that it takes; null where it comes with its own or is not stated.</param>
    /// <exception cref="ArgumentNullException"><paramref name="name"/> or <paramref name="source"/> is null.</exception>
    /// <exception cref="ArgumentException"><paramref name="name"/> is empty.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="ratedCurrent"/> is not above 0.</exception>
    public Connector(string name, Citation source, ElectricCurrent? ratedCurrent = null, VoltageRange? voltageClass = null,
        TerminalRange? wires = null)
    {
        Name = Require.Name(name, nameof(name));
        Source = Require.NotNull(source, nameof(source));
        if (ratedCurrent is ElectricCurrent rated) RatedAmperes = Require.Positive(rated.Amperes, nameof(ratedCurrent), "A");
        RatedCurrent = ratedCurrent;
        VoltageClass = voltageClass;
        Wires = wires;
    }

    /// <summary>The barrel plugs whose size tells their voltage: classes 2 to 5, from 3.15 V to 18 V, 2 A each.</summary>
    /// <remarks>Class 4 is that of 12 V. Source: <see cref="Sources.UnifiedBarrelPlugs"/>; the ends of class 5 from memory.</remarks>
    public static IReadOnlyList<Connector> UnifiedBarrels { get; } = Array.AsReadOnly<Connector>(
    [
        Unified(2, 3.15, 6.3, Sources.UnifiedBarrelPlugs),
        Unified(3, 6.3, 10.5, Sources.UnifiedBarrelPlugs),
        Unified(4, 10.5, 13.5, Sources.UnifiedBarrelPlugs),
        Unified(5, 13.5, 18, Sources.UnifiedBarrelPlugsFromMemory),
    ]);

    /// <summary>The common barrel plug, 5.5 mm with a pin of 2.1 or 2.5 mm, of which nothing else is known: 1 A.</summary>
    /// <remarks>Makers rate it 1 A to 5 A; the least counts until one is named. Source: <see cref="Sources.CommonBarrel"/>.</remarks>
    public static Connector CommonBarrel { get; } = new("common barrel plug", Sources.CommonBarrel, ElectricCurrent.FromAmperes(1));

    /// <summary>A screw terminal of 5 mm pitch: 24 to 12 AWG, its current not stated.</summary>
    /// <remarks>Source: <see cref="Sources.ScrewTerminals"/>.</remarks>
    public static Connector ScrewTerminal { get; } =
        new("screw terminal", Sources.ScrewTerminals, wires: new TerminalRange(WireSize.Awg(24), WireSize.Awg(12)));

    /// <summary>All that are given here.</summary>
    public static IReadOnlyList<Connector> Usual { get; } = Array.AsReadOnly<Connector>([.. UnifiedBarrels, CommonBarrel, ScrewTerminal]);

    /// <summary>Name.</summary>
    public string Name { get; }

    /// <summary>Where its ratings come from.</summary>
    public Citation Source { get; }

    /// <summary>Continuous current of each contact, or null where it is not stated. [A]</summary>
    public ElectricCurrent? RatedCurrent { get; }

    /// <summary>The supply voltages that it is meant for, or null where it is meant for any.</summary>
    public VoltageRange? VoltageClass { get; }

    /// <summary>The wire that it takes, or null where it comes with its own or is not stated.</summary>
    public TerminalRange? Wires { get; }

    internal double? RatedAmperes { get; }

    /// <summary>The name; never throws.</summary>
    public override string ToString() => Name;

    private static Connector Unified(int number, double lowest, double highest, Citation source) => new(
        FormattableString.Invariant($"EIAJ RC-5320A class {number}"), source, ElectricCurrent.FromAmperes(2),
        new VoltageRange(ElectricPotential.FromVolts(lowest), ElectricPotential.FromVolts(highest)));
}
