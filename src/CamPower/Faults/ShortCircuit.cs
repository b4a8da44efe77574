using System;
using System.Collections.Generic;
using System.Linq;
using CamPower.Faults;
using UnitsNet;

namespace CamPower;

/// <summary>A short at one place: what flows, what the protective device does, what the conductors withstand.</summary>
/// <remarks>A short without resistance of its own. Currents lie between those of hot conductors at the lowest voltage and of
/// cold ones at the highest; every answer holds for all of them.</remarks>
public sealed class ShortCircuit : Overcurrent
{
    private readonly bool _hasSite;
    private readonly FaultLoop _loop;
    private readonly FaultSetting _setting;
    private SupplyDuringFault? _supply;

    internal ShortCircuit(FaultLoop loop, FaultSetting setting)
        : base(setting, setting.ShortCases(loop), loop.Conductors,
            [.. loop.Pieces.Select(piece => new HeatedPiece(setting.PieceCases(loop, piece), piece.Conductors))],
            setting.AmperesThroughLink(loop))
    {
        Devices = [];
        _loop = loop;
        _setting = setting;
    }

    /// <summary>One on a site.</summary>
    internal ShortCircuit(FaultLoop loop, FaultSetting setting, SiteRun? run, IReadOnlyList<SiteDevice> devices)
        : this(loop, setting)
    {
        _hasSite = true;
        Run = run;
        Devices = devices;
    }

    /// <summary>The one with the smallest current.</summary>
    internal static ShortCircuit WeakestOf(IReadOnlyList<ShortCircuit> shorts) =>
        shorts.OrderBy(s => s.SmallestProspective?.Amperes ?? double.PositiveInfinity).First();

    /// <summary>What any of them misses.</summary>
    internal static FaultData MissingOf(IReadOnlyList<ShortCircuit> shorts) =>
        shorts.Aggregate(FaultData.None, (all, s) => all | s.Missing);

    /// <summary>Where: "terminals", the name of a joint, "change of cable" or "far end"; on a site the name of a junction.</summary>
    public string Place => _loop.Place;

    /// <summary>The run of the site that it is on; null at the terminals of an output, and where a run was studied without a
    /// site.</summary>
    public SiteRun? Run { get; }

    /// <summary>The devices of the site that are connected there; none at the terminals and at a joint.</summary>
    public IReadOnlyList<SiteDevice> Devices { get; }

    /// <summary>State of the supply while the short lasts, and the devices at its other outputs that go dark.</summary>
    /// <exception cref="InvalidOperationException">A run was studied without a site: nothing is known of other outputs.</exception>
    public SupplyDuringFault Supply => _hasSite ? _supply ??= _setting.RailDuring(_loop) : throw new InvalidOperationException(
        "A run was studied without its site: nothing is known of the other outputs of its supply. Ask a site for its faults.");

    /// <summary>How far along the route, one way. [m]</summary>
    public Length Distance => Length.FromMeters(_loop.Meters);

    /// <summary>The most current that the resistances alone let flow; null where none is declared. [A]</summary>
    public ElectricCurrent? LargestProspective => Amperes(_setting.MostProspective(_loop));

    /// <summary>The least current that the resistances alone let flow; null where none is declared. [A]</summary>
    public ElectricCurrent? SmallestProspective => Amperes(_setting.LeastProspective(_loop));

    /// <summary>The most that the supply's output capacitors discharge, at the first moment: 0 without any that are declared, null where no
    /// resistance limits it. [A]</summary>
    public ElectricCurrent? DischargePeak => Amperes(_setting.DischargePeak(_loop));

    /// <summary>The maximum power that a short with a resistance of its own dissipates there as long as it lasts, whatever that resistance;
    /// null where nothing that is stated bounds it. [W]</summary>
    /// <remarks>A poor contact is the hot spot that a dead short is not: V²/4R, or less where the supply or an electronic limit holds the
    /// current (<see cref="Sources.MaximumPower"/>), or where the protective device is certain to open at less in its coldest
    /// air.</remarks>
    /// <example>12 V behind 1 Ω: 36 W in a short of 1 Ω; behind a supply that holds 2 A 20 W in one of 5 Ω.</example>
    public Power? PoorShortPower => double.IsInfinity(PoorShortWatts) ? null : Power.FromWatts(PoorShortWatts);

    internal double PoorShortWatts => _setting.PoorShortWatts(_loop);

    internal double PoorShortAmperes => _setting.PoorShortAmperes(_loop);

    /// <summary>Whether a resettable fuse stays tripped while the short lasts; null for another device, and where no tripped power is
    /// stated.</summary>
    public bool? StaysTripped => (_setting.Device as ResettableFuse)?.StaysTripped(_setting.Output.LowestVoltage, Rest);

    /// <summary>What a tripped resettable fuse still lets through; null where it does not stay tripped, or no tripped power is stated.
    /// [A]</summary>
    public ElectricCurrent? TrippedCurrent =>
        (_setting.Device as ResettableFuse)?.TrippedCurrent(_setting.Output.LowestVoltage, Rest);

    /// <summary>Place, currents and opening, or what is missing, in the invariant culture; never throws.</summary>
    public override string ToString() => $"{Place}: {Words}";

    /// <summary>When the protective device opens while the supply is as <see cref="Supply"/> says: with its battery in order, where it has
    /// one. A dead battery is a fault of its own.</summary>
    internal OpeningTimes OpeningInTime => Verdict == OperatingVerdict.None ? Opening : _setting.OpeningOnBattery(_loop) ?? Opening;

    /// <summary>State of the supply while the short lasts with the battery of the box dead, or its fuse open; null where it has
    /// none.</summary>
    internal SupplyDuringFault? SupplyWithDeadBattery => _hasSite ? _setting.OnSupplyAlone?.RailDuring(_loop) : null;

    /// <summary>When the protective device opens meanwhile.</summary>
    internal OpeningTimes OpeningWithDeadBattery => Verdict == OperatingVerdict.None
        ? Opening
        : _setting.OnSupplyAlone?.OpeningWithoutOthersAlone(_loop) ?? Opening;

    private ElectricResistance Rest => ElectricResistance.FromOhms(_setting.GreatestRest(_loop));

    private static ElectricCurrent? Amperes(double amperes) => double.IsInfinity(amperes) ? null : ElectricCurrent.FromAmperes(amperes);
}
