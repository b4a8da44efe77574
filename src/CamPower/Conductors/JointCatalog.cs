using System;
using System.Collections.Generic;
using CamPower.Conductors;
using UnitsNet;

namespace CamPower;

/// <summary>Usual joints and connectors: each is the two contacts, one a pole, that a run passes there.</summary>
/// <remarks>
/// The resistances are orders of magnitude of sound contacts, common practice with no source: a loose or corroded one
/// is worse by any amount. Measure where it matters, and state it with <see cref="Joint"/> itself.
/// </remarks>
/// <example>
/// <code>
/// CableRun run = new CableRun(cable, oneWayLength: Length.FromFeet(120)).Then(JointCatalog.GelSplices).Then(JointCatalog.BarrelConnector);
/// </code>
/// </example>
public static class JointCatalog
{
    private const int ContactsOnTheLoop = 2;

    /// <summary>Two crimped splices.</summary>
    public static Joint Crimps { get; } = OnBothPoles("crimped splices", ConductorConstants.CrimpResistance);

    /// <summary>Two twist-on connectors.</summary>
    public static Joint TwistOns { get; } = OnBothPoles("twist-on connectors", ConductorConstants.TwistOnResistance);

    /// <summary>Two screw terminals.</summary>
    public static Joint ScrewTerminals { get; } = OnBothPoles("screw terminals", ConductorConstants.ScrewTerminalResistance);

    /// <summary>Two gel-filled displacement splices.</summary>
    public static Joint GelSplices { get; } = OnBothPoles("gel-filled splices", ConductorConstants.GelSpliceResistance);

    /// <summary>A barrel plug in its jack, rated for 5 A: makers rate such plugs from 1 A to 5 A.</summary>
    public static Joint BarrelConnector { get; } = OnBothPoles("barrel plug and jack", ConductorConstants.BarrelContactResistance,
        ElectricCurrent.FromAmperes(ConductorConstants.BarrelMostAmperes.Value));

    /// <summary>Every joint of the catalog.</summary>
    public static IReadOnlyList<Joint> All { get; } = Array.AsReadOnly([Crimps, TwistOns, ScrewTerminals, GelSplices, BarrelConnector]);

    private static Joint OnBothPoles(string name, CitedValue contact, ElectricCurrent? ratedCurrent = null) =>
        new(name, ElectricResistance.FromOhms(ContactsOnTheLoop * contact.Value), contact.Source, ratedCurrent);
}
