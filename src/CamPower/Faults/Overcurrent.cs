using System;
using System.Collections.Generic;
using System.Linq;
using CamPower.Faults;
using UnitsNet;

namespace CamPower;

/// <summary>A current that should not flow: what the protective device does, and what the conductors withstand.</summary>
/// <remarks>
/// Immutable. Either a <see cref="ShortCircuit"/> or an <see cref="Overload"/>. Up to 5 s the I²t that flows is held against what the
/// insulation withstands, k²S² (<see cref="Sources.AdiabaticWithstand"/>). Beyond, by the temperature: a conductor warms by its current and
/// loses heat to the air as it lies, from the temperature at which the fault finds it, which is taken for that of the air as well
/// (<see cref="Sources.LumpedHeatCapacity"/>). For that the current is held constant while the conductors warm, which is more than flows.
/// Where it is not known how a cable lies, no heat is taken to leave it.
/// </remarks>
public abstract class Overcurrent
{
    private readonly double _letThrough, _peak;
    private readonly bool _knowsSupply;

    /// <param name="setting">What is behind and before it.</param>
    /// <param name="cases">The currents that may flow.</param>
    /// <param name="way">The conductors that carry it.</param>
    /// <param name="pieces">Pieces of cable that begin at its place: the currents of a fault along each, and the conductors that carry
    /// it.</param>
    private protected Overcurrent(
        FaultSetting setting, FaultCase[] cases, IReadOnlyList<LaidConductor> way,
        IReadOnlyList<(FaultCase[] Cases, IReadOnlyList<LaidConductor> Conductors)> pieces)
    {
        (FaultCase[] Cases, IReadOnlyList<LaidConductor> Conductors)[] heated = [(cases, way), .. pieces];
        LaidConductor[] conductors = [.. heated.SelectMany(h => h.Conductors)];
        _knowsSupply = setting.KnowsSupply;
        _peak = cases.Max(c => c.PeakAmperes);
        _letThrough = setting.AllowsVerdict ? cases.Max(c => c.LetThrough) : double.PositiveInfinity;
        Smallest = ElectricCurrent.FromAmperes(_knowsSupply ? cases.Min(c => c.RmsAmperes) : 0);
        Opening = setting.AllowsVerdict ? OpeningTimes.AnyOf([.. cases.Select(c => c.Opening)]) : default;
        IsWithinBreakingCapacity = WithinBreakingCapacity(setting);
        Judgment voltage = setting.Device.JudgeVoltage(setting.Output.HighestVolts, setting.Output.Kind == CurrentKind.Dc);
        IsWithinVoltageRating = voltage.Value is null ? null : !voltage.IsViolated;
        Withstand = conductors.Length > 0 && conductors.All(c => c.WithstandIntegral is not null)
            ? JouleIntegral.FromAmpereSquaredSeconds(conductors.Min(c => c.WithstandIntegral!.Value))
            : null;
        WithstandVerdict = conductors.Length == 0 ? WithstandVerdict.NoConductor : Worst(setting, heated);
        IfItLasts = _knowsSupply ? Hottest(heated) : null;
        Missing = setting.Missing | (voltage.NotStated is null ? FaultData.None : FaultData.DcVoltageRating)
            | (_knowsSupply && !setting.Device.IsShownToInterrupt(_peak) ? FaultData.MaximumCurrent : FaultData.None)
            | (WithstandVerdict == WithstandVerdict.Unknown
                ? conductors.Aggregate(FaultData.None, (all, c) => all | c.Missing)
                : FaultData.None);
    }

    /// <summary>The most current at any moment once capacitors are discharged, limited by the supply and the device; null where nothing
    /// that is declared bounds it. [A]</summary>
    /// <remarks>Where the overload behavior of the supply is not stated, what the resistances let flow.</remarks>
    public ElectricCurrent? Largest => double.IsInfinity(_peak) ? null : ElectricCurrent.FromAmperes(_peak);

    /// <summary>The least current that heats the device: RMS where it pulses, 0 where the supply shuts down or its overload behavior
    /// is not stated. [A]</summary>
    /// <remarks>On a site, while the other outputs of the supply take most; and with the conductors warmed by it, where that keeps the
    /// device from being certain to operate.</remarks>
    public ElectricCurrent Smallest { get; }

    /// <summary>Whether and when the protective device interrupts it; the default value where <see cref="Missing"/> allows no
    /// verdict.</summary>
    /// <remarks>Asked for more than its rating, a device is not certain to interrupt anything: see <see cref="Verdict"/>. A limit that
    /// tries again interrupts it again and again.</remarks>
    public OpeningTimes Opening { get; }

    /// <summary>The verdict of <see cref="Opening"/>, but never "operates" where the device is asked for more than its rating.</summary>
    public OperatingVerdict Verdict =>
        Opening.Verdict == OperatingVerdict.Operates && (IsWithinBreakingCapacity == false || IsWithinVoltageRating == false)
        ? OperatingVerdict.MayOperate
        : Opening.Verdict;

    /// <summary>Whether the device may interrupt the largest current; null where its breaking capacity or the supply's limit is not
    /// stated.</summary>
    /// <remarks>What capacitors discharge in milliseconds is not held against it: there is no power behind that.</remarks>
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
    public SelfHeating? IfItLasts { get; }

    /// <summary>What a verdict that is not given would need; what it could be narrowed with.</summary>
    public FaultData Missing { get; }

    /// <summary>Currents and opening, or what is missing, in words.</summary>
    private protected string Words => Opening.Verdict == OperatingVerdict.None
        ? FormattableString.Invariant($"unknown; not stated: {FaultDataText.Words(Missing)}")
        : FormattableString.Invariant($"{Smallest.Amperes:G4} A to {_peak:G4} A, {Opening}");

    private bool? WithinBreakingCapacity(FaultSetting setting)
    {
        if (setting.Device.BreakingCapacity is not ElectricCurrent capacity) return null;
        if (!Limits.IsAbove(_peak, capacity.Amperes)) return true;
        return _knowsSupply ? false : null;
    }

    // Where the protective device is not stated, at worst it does nothing; where the overload behavior is not stated, nothing is certain.
    private static WithstandVerdict Worst(FaultSetting setting, (FaultCase[] Cases, IReadOnlyList<LaidConductor> Conductors)[] heated)
    {
        if (!setting.KnowsSupply) return WithstandVerdict.Unknown;
        WithstandVerdict worst = heated.SelectMany(Pairs, (_, pair) => pair.Conductor.Of(pair.Fault)).OrderByDescending(Rank).First();
        return setting.AllowsVerdict || worst == WithstandVerdict.Withstands ? worst : WithstandVerdict.Unknown;
    }

    private static int Rank(WithstandVerdict verdict) => verdict switch
    {
        WithstandVerdict.DoesNotWithstand => 3,
        WithstandVerdict.Unknown => 2,
        WithstandVerdict.HotterThanInService => 1,
        _ => 0,
    };

    private static IEnumerable<(FaultCase Fault, LaidConductor Conductor)> Pairs(
        (FaultCase[] Cases, IReadOnlyList<LaidConductor> Conductors) heated) =>
        heated.Cases.SelectMany(_ => heated.Conductors, (fault, conductor) => (fault, conductor));

    private static SelfHeating? Hottest((FaultCase[] Cases, IReadOnlyList<LaidConductor> Conductors)[] heated)
    {
        SelfHeating? hottest = null;
        foreach ((FaultCase fault, LaidConductor conductor) in heated.SelectMany(Pairs))
        {
            if (conductor.HeatOf(fault) is not SelfHeating heat) return null;
            if (hottest is null || IsHotter(heat, hottest)) hottest = heat;
        }

        return hottest;
    }

    private static bool IsHotter(SelfHeating heat, SelfHeating than) =>
        than.ConductorTemperature is Temperature known
            && (heat.ConductorTemperature is not Temperature other || other.DegreesCelsius > known.DegreesCelsius);
}
