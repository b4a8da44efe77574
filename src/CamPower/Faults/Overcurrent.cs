using System;
using System.Collections.Generic;
using System.Linq;
using CamPower.Faults;
using UnitsNet;

namespace CamPower;

/// <summary>A current that should not flow: what the protective device does, and what the conductors withstand.</summary>
/// <remarks>
/// Immutable. Either a <see cref="ShortCircuit"/> or an <see cref="Overload"/>. Up to 5 s the let-through I²t is compared with what the
/// insulation withstands, k²S² (<see cref="Sources.AdiabaticWithstand"/>). After 5 s the temperature of the conductor decides: the current
/// heats it, and the air cools it as its installation method states (<see cref="Sources.LumpedHeatCapacity"/>). The temperature before the
/// fault is also that of the air. The current stays constant in this calculation; the real current falls as the conductors warm. If the
/// installation method is not stated, the conductor loses no heat.
/// </remarks>
public abstract class Overcurrent
{
    private readonly double _letThrough, _peak;
    private readonly bool _knowsSupply;
    private readonly HeatedPiece[] _heated;
    private SelfHeating? _ifItLasts;

    /// <param name="setting">What is behind and before it.</param>
    /// <param name="cases">The currents that may flow.</param>
    /// <param name="way">The conductors that carry it.</param>
    /// <param name="pieces">Pieces of cable that begin at its place.</param>
    /// <param name="throughLink">What would flow with a link in place of the device; 0 where a load draws it. [A]</param>
    private protected Overcurrent(FaultSetting setting, IReadOnlyList<FaultCase> cases, IReadOnlyList<LaidConductor> way,
        IReadOnlyList<HeatedPiece> pieces, double throughLink = 0)
    {
        _knowsSupply = setting.KnowsSupply;
        double letThrough = 0, smallest = double.PositiveInfinity;
        OpeningTimes opening = cases[0].Opening;
        foreach (FaultCase each in cases)
        {
            _peak = Math.Max(_peak, each.PeakAmperes);
            letThrough = Math.Max(letThrough, each.LetThrough);
            smallest = Math.Min(smallest, each.RmsAmperes);
            opening = opening.Or(each.Opening);
        }

        HeatedPiece[] heated = [new(cases, way), .. pieces];
        List<LaidConductor> conductors = [.. heated.SelectMany(piece => piece.Conductors)];
        _letThrough = setting.AllowsVerdict ? letThrough : double.PositiveInfinity;
        Smallest = ElectricCurrent.FromAmperes(_knowsSupply ? smallest : 0);
        Opening = setting.AllowsVerdict ? opening : default;
        InterruptedAmperes = Math.Max(_peak, throughLink);
        IsWithinBreakingCapacity = WithinBreakingCapacity(setting);
        IsWithinVoltageRating = setting.IsWithinVoltageRating;
        Withstand = conductors.Count > 0 && conductors.TrueForAll(c => c.WithstandIntegral is not null)
            ? JouleIntegral.FromAmpereSquaredSeconds(conductors.Min(c => c.WithstandIntegral!.Value))
            : null;
        WithstandVerdict = conductors.Count == 0 ? WithstandVerdict.NoConductor : Worst(setting, heated);
        _heated = heated;
        Missing |= setting.MissingForAnyFault;
        if (_knowsSupply && !setting.Device.IsShownToInterrupt(_peak)) Missing |= FaultData.MaximumCurrent;
        if (WithstandVerdict == WithstandVerdict.Unknown) Missing = conductors.Aggregate(Missing, (all, c) => all | c.Missing);
    }

    /// <summary>Largest current at any moment after capacitors are discharged, limited by the supply and the protective device; null where
    /// nothing that is stated limits it. [A]</summary>
    /// <remarks>If the overload behavior of the supply is not stated, this is the prospective current.</remarks>
    public ElectricCurrent? Largest => double.IsInfinity(_peak) ? null : ElectricCurrent.FromAmperes(_peak);

    /// <summary>Smallest current that heats the protective device: RMS where it pulses, 0 where the supply shuts down or its overload
    /// behavior is not stated. [A]</summary>
    /// <remarks>On a site the other outputs take their largest current. Warm conductors count where they could prevent operation.</remarks>
    public ElectricCurrent Smallest { get; }

    /// <summary>Whether and when the protective device interrupts it; the default value where <see cref="Missing"/> allows no
    /// verdict.</summary>
    /// <remarks>Above its current or voltage rating a protective device may fail to interrupt: see <see cref="Verdict"/>. A limit that
    /// tries again interrupts it again and again.</remarks>
    public OpeningTimes Opening { get; }

    /// <summary>The verdict of <see cref="Opening"/>, but never "operates" where the device is asked for more than its rating.</summary>
    public OperatingVerdict Verdict =>
        Opening.Verdict == OperatingVerdict.Operates && (IsWithinBreakingCapacity == false || IsWithinVoltageRating == false)
        ? OperatingVerdict.MayOperate
        : Opening.Verdict;

    /// <summary>Whether the device may interrupt the largest current; null where its breaking capacity or the supply's limit is not
    /// stated.</summary>
    /// <remarks>Of a short that is the current with a link of no resistance in place of the device, for which a breaking capacity is
    /// stated (IEC 60269-1 and IEC 60127-1, from memory). The discharge of capacitors is not compared with the breaking capacity: it
    /// lasts milliseconds and has little energy.</remarks>
    public bool? IsWithinBreakingCapacity { get; }

    /// <summary>Whether the device may interrupt at the supply's highest voltage; null where its voltage rating is not stated.</summary>
    public bool? IsWithinVoltageRating { get; }

    /// <summary>The most I²t until the device or the supply ends it, discharged capacitors included; null where nothing that is declared
    /// bounds it. [A²·s]</summary>
    public JouleIntegral? LetThrough => double.IsInfinity(_letThrough) ? null : JouleIntegral.FromAmpereSquaredSeconds(_letThrough);

    /// <summary>The I²t that the weakest conductor withstands within 5 s, of those on the way and those that begin at the place; null where
    /// there is none, and where a limit in a fault is not known. [A²·s]</summary>
    public JouleIntegral? Withstand { get; }

    /// <summary>Whether the conductors on the way, and those that begin at the place, withstand it.</summary>
    /// <remarks>The current is largest at the origin of a cable (IEC 60364-4-43, 434): a short just behind the place heats the next cable
    /// as well.</remarks>
    public WithstandVerdict WithstandVerdict { get; }

    /// <summary>The conductor that gets hottest if nothing ever ends it, of those on the way and those that begin at the place; null where
    /// none carries it, or an installation method or the supply's overload behavior is not stated.</summary>
    public SelfHeating? IfItLasts => _knowsSupply ? _ifItLasts ??= Hottest(_heated) : null;

    /// <summary>Data that is not stated. With it an unknown verdict becomes known, or a wide one exact.</summary>
    public FaultData Missing { get; }

    /// <summary>The current that the device is asked to interrupt: infinite where nothing limits it. [A]</summary>
    internal double InterruptedAmperes { get; }

    /// <summary>Currents and opening, or what is missing, in words.</summary>
    private protected string Words => Opening.Verdict == OperatingVerdict.None
        ? FormattableString.Invariant($"unknown; not stated: {FaultDataText.Words(Missing)}")
        : FormattableString.Invariant($"{Smallest.Amperes:G4} A to {_peak:G4} A, {Opening}");

    private bool? WithinBreakingCapacity(FaultSetting setting)
    {
        if (setting.Device.BreakingCapacity is not ElectricCurrent capacity) return null;
        if (!Limits.IsAbove(InterruptedAmperes, capacity.Amperes)) return true;
        return _knowsSupply ? false : null;
    }

    // Where the protective device is not stated, at worst it does nothing; where the overload behavior is not stated, nothing is certain.
    private static WithstandVerdict Worst(FaultSetting setting, HeatedPiece[] heated)
    {
        if (!setting.KnowsSupply) return WithstandVerdict.Unknown;
        var worst = WithstandVerdict.Withstands;
        foreach (HeatedPiece piece in heated)
        {
            foreach (LaidConductor conductor in piece.Conductors)
            {
                foreach (FaultCase fault in piece.Cases)
                {
                    WithstandVerdict verdict = conductor.Of(fault);
                    if (Rank(verdict) > Rank(worst)) worst = verdict;
                }
            }
        }

        return setting.AllowsVerdict || worst == WithstandVerdict.Withstands ? worst : WithstandVerdict.Unknown;
    }

    private static int Rank(WithstandVerdict verdict) => verdict switch
    {
        WithstandVerdict.DoesNotWithstand => 3,
        WithstandVerdict.Unknown => 2,
        WithstandVerdict.HotterThanInService => 1,
        _ => 0,
    };

    private static SelfHeating? Hottest(HeatedPiece[] heated)
    {
        SelfHeating? hottest = null;
        foreach (HeatedPiece piece in heated)
        {
            foreach (FaultCase fault in piece.Cases)
            {
                foreach (LaidConductor conductor in piece.Conductors)
                {
                    if (conductor.HeatOf(fault) is not SelfHeating heat) return null;
                    if (hottest is null || IsHotter(heat, hottest)) hottest = heat;
                }
            }
        }

        return hottest;
    }

    private static bool IsHotter(SelfHeating heat, SelfHeating than) =>
        than.ConductorTemperature is Temperature known
            && (heat.ConductorTemperature is not Temperature other || other.DegreesCelsius > known.DegreesCelsius);
}
