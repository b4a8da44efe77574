using System;
using System.Collections.Generic;
using System.Linq;
using CamPower.Protection;
using CamPower.Supplies;
using UnitsNet;

namespace CamPower.Faults;

/// <summary>What is behind and before every fault of one output: the supply, the protective device, and the temperatures of each
/// condition.</summary>
/// <remarks>
/// Where a device or an overload behavior is not stated, the currents are worked out without either, and no verdict is given.
/// A supply that has a limit of its own keeps its tolerance up to it, so that a source resistance is needed of an unlimited one
/// alone. A fault belongs to one condition: a cold box and a hot cable do not meet unless a condition says so.
/// </remarks>
internal sealed class FaultSetting
{
    // Just below a step of the device, by more than a multiple may be rounded, its latest time is the longer one.
    private const double JustBelow = 1 - 1e-8;

    private readonly OverloadBehavior _overload;
    private readonly OverloadBehavior[] _ends;
    private readonly double _sourceOhms, _farads;
    private readonly IReadOnlyList<FaultAir> _air;
    private readonly double[][] _factors;
    private readonly IReadOnlyList<Lazy<RailStudy>>? _rails;

    /// <param name="output">The supply's output.</param>
    /// <param name="device">The protective device; null where it is not stated.</param>
    /// <param name="air">The temperatures of each condition, each pair once.</param>
    /// <param name="rails">What the other outputs of the supply do meanwhile, for each of those temperatures; null where there are
    /// none.</param>
    internal FaultSetting(SupplyOutput output, ProtectiveDevice? device, IReadOnlyList<FaultAir> air,
        IReadOnlyList<Lazy<RailStudy>>? rails = null)
    {
        Output = output;
        Device = device ?? ProtectiveDevice.None;
        _overload = output.Overload ?? OverloadBehavior.Unlimited;
        _ends = ReferenceEquals(_overload.Lowest, _overload.Highest) ? [_overload] : [_overload.Lowest, _overload.Highest];
        _sourceOhms = output.SourceResistance?.Ohms ?? 0;
        _farads = (output as DcOutput)?.Capacitance?.Farads ?? 0;
        _air = air;
        _factors = [.. air.Select(a => Device.FactorsIn(a.DeviceCelsius))];
        Missing = (device is null ? FaultData.Protection : FaultData.None)
            | (output.Overload is null ? FaultData.Overload : FaultData.None)
            | (output.SourceResistance is null && output.Overload?.Limit is null ? FaultData.SourceResistance : FaultData.None)
            | (output is DcOutput { Capacitance: null } ? FaultData.OutputCapacitance : FaultData.None)
            | (_factors.Any(f => f.Length == 0) ? FaultData.DeviceTemperature : FaultData.None);
        _rails = rails;
    }

    internal SupplyOutput Output { get; }

    /// <summary>The protective device; none where it is not stated.</summary>
    internal ProtectiveDevice Device { get; }

    internal FaultData Missing { get; }

    /// <summary>Whether all is known that a verdict on the device needs.</summary>
    internal bool AllowsVerdict => MissingForVerdict == FaultData.None;

    /// <summary>What a verdict on the device needs and is not stated.</summary>
    internal FaultData MissingForVerdict => Missing & ~FaultData.OutputCapacitance;

    /// <summary>Whether the limit of the supply is known, so that the largest current is one and not only a bound.</summary>
    internal bool KnowsSupply => (Missing & (FaultData.Overload | FaultData.SourceResistance)) == FaultData.None;

    /// <summary>The greatest current that the supply keeps up in an overload; infinite where none is stated: a nameplate is no limit.
    /// [A]</summary>
    /// <remarks>What its capacitors discharge is counted apart.</remarks>
    internal double GreatestSustainedAmperes => _overload.Highest.LimitAmperes;

    /// <summary>What the supply does while a short lasts: in the condition in which most devices suffer, with cold conductors to
    /// it.</summary>
    internal SupplyDuringFault RailDuring(FaultLoop loop)
    {
        SupplyDuringFault? worst = null;
        foreach (int c in Conditions.OrderByDescending(c => _rails![c].Value.OtherAmperes))
        {
            SupplyDuringFault rail = _rails![c].Value.During(LeastOhms(loop, c), Device.MostAmperes);
            if (worst is null || rail.Suffering > worst.Suffering) worst = rail;
            if (worst.Suffering == _rails[c].Value.Others) break;
        }

        return worst!;
    }

    // Null where there are no others, or it is not known what the supply does.
    private RailStudy? Rail(int c) => KnowsSupply && _rails?[c].Value is { HasOthers: true } rail ? rail : null;

    private IEnumerable<int> Conditions => Enumerable.Range(0, _air.Count);

    /// <summary>The most prospective current of a fault: that of the resistances alone. [A]</summary>
    internal double MostProspective(FaultLoop loop) => Output.HighestVolts / (_sourceOhms + LeastOhms(loop));

    /// <summary>The least prospective current of a fault: that of the resistances alone. [A]</summary>
    internal double LeastProspective(FaultLoop loop) =>
        Output.LowestVolts / (_sourceOhms + Conditions.Max(c => GreatestOhms(loop.OhmsIn(c), c)));

    /// <summary>The greatest resistance of a loop beside the device, source included. [Ω]</summary>
    internal double GreatestRest(FaultLoop loop) => _sourceOhms + Conditions.Max(loop.OhmsIn);

    /// <summary>Resistance of device and way to a fault where it is least. [Ω]</summary>
    internal double LeastOhms(FaultLoop loop) => Conditions.Min(c => LeastOhms(loop, c));

    /// <summary>The largest current of the output capacitors' discharge; infinite where no resistance is stated that limits it.
    /// [A]</summary>
    internal double DischargePeak(FaultLoop loop) =>
        double.IsInfinity(Device.MostAmperes) && _farads > 0 ? Output.HighestVolts / LeastOhms(loop) : 0;

    /// <summary>The maximum power that a short with a resistance of its own has at a place, whatever that resistance; infinite where
    /// nothing that is stated bounds it. [W]</summary>
    /// <remarks>Maximum power transfer, V²/4R, or less where the supply or an electronic limit holds the current below V/2R. A fuse does
    /// not: until it operates the spot has it all.</remarks>
    internal double PoorShortWatts(FaultLoop loop)
    {
        double volts = Output.HighestVolts,
            ohms = _sourceOhms + LeastOhms(loop);
        double amperes = Math.Min(volts / (2 * ohms), Math.Min(GreatestSustainedAmperes, Device.MostAmperes));
        return double.IsInfinity(amperes) ? double.PositiveInfinity : amperes * (volts - (amperes * ohms));
    }

    /// <summary>The cases of a short at the end of a loop: in each condition the ends of the range of current, and where something changes
    /// between them.</summary>
    /// <remarks>The ends; the limit of the supply; what is left while the other outputs take most; just below every current at which the
    /// device gets faster. Between these nothing gets worse.</remarks>
    internal FaultCase[] ShortCases(FaultLoop loop) => [.. Conditions.SelectMany(c => ShortCases(loop, c))];

    /// <summary>The cases of a short anywhere along a piece of cable, that at its end left out.</summary>
    /// <remarks>What capacitors discharge counts as at its end: the closer to a supply of no resistance, the shorter what it
    /// heats.</remarks>
    /// <param name="origin">The loop to where it begins.</param>
    /// <param name="end">The loop to where it ends.</param>
    internal FaultCase[] PieceCases(FaultLoop origin, FaultLoop end) => [.. Conditions.SelectMany(c =>
    {
        Ends[] ends = [.. _ends.Select(overload => new Ends(Most(origin, c, overload), Least(end.OhmsIn(c), c, overload)))];
        CurrentSurge surge = Most(end, c, _overload.Highest).Surge;
        return ends.Select(e => e.Most.Current).Concat(Between(ends, shared: null, c)).SelectMany(current => Cases(current, surge, c));
    })];

    /// <summary>The same without a protective device.</summary>
    internal FaultSetting Unprotected() => new(Output, ProtectiveDevice.None, _air);

    /// <summary>The cases of a current that a load draws.</summary>
    internal FaultCase[] OverloadCases(double amperes)
    {
        double drawn = Math.Min(amperes, Device.MostAmperes);
        LimitedCurrent[] alone = [.. _ends.Select(overload => overload.Limited(drawn))];
        return [.. Conditions.SelectMany(c => Currents(c).SelectMany(current => Cases(current, CurrentSurge.None, c)))];

        IEnumerable<LimitedCurrent> Currents(int c) =>
            Rail(c)?.IsOverloadedBy(drawn) == true
                ? alone.Concat(alone.Select(current => _overload.InOverload(current.PeakAmperes)))
                : alone;
    }

    private IEnumerable<FaultCase> ShortCases(FaultLoop loop, int c)
    {
        double ohms = loop.OhmsIn(c), celsius = _air[c].ConductorCelsius;
        Ends[] ends = [.. _ends.Select(overload => new Ends(Most(loop, c, overload), Least(ohms, c, overload)))];
        bool isShared = Rail(c)?.IsTakenDownBy(LeastOhms(loop, c), Device.MostAmperes) == true;
        LimitedCurrent? shared = isShared ? SharedAt(ohms, c) : null;
        FaultWarming beside = new(loop, ohms, warm => HeatingAt(warm, c), warm => SharedAt(warm, c), celsius);
        return
        [
            .. ends.SelectMany(e => Cases(e.Most.Current, e.Most.Surge, c)),
            .. ends.SelectMany((e, i) => Cases(e.Least.Current, e.Least.Surge, c, Alone(_ends[i]))),
            .. shared is LimitedCurrent left ? Cases(left, ends[0].Least.Surge, c, beside) : [],
            .. Between(ends, shared, c).SelectMany(current => Cases(current, ends[ends.Length - 1].Most.Surge, c)),
        ];

        FaultWarming Alone(OverloadBehavior overload) =>
            new(loop, ohms, warm => HeatingAt(warm, c), warm => Least(warm, c, overload).Current, celsius);
    }

    private IEnumerable<FaultCase> Cases(LimitedCurrent current, CurrentSurge surge, int c, FaultWarming? warming = null) =>
        FactorsIn(c).Select(factor => new FaultCase(current, surge, Device, factor, _air[c].ConductorCelsius, warming));

    private double[] FactorsIn(int c) => _factors[c].Length == 0 ? [1] : _factors[c];

    private double LeastOhms(FaultLoop loop, int c) => Device.LeastOhms + loop.OhmsIn(c);

    private End Most(FaultLoop loop, int c, OverloadBehavior overload) => EndOf(Output.HighestVolts, LeastOhms(loop, c), overload);

    private End Least(double loopOhms, int c, OverloadBehavior overload) => EndOf(Output.LowestVolts, GreatestOhms(loopOhms, c), overload);

    private double GreatestOhms(double loopOhms, int c) =>
        loopOhms + (Device.GreatestOhms * (_air[c].DeviceCelsius is double known ? Device.ResistanceGrowthIn(known) : 1));

    // The limit of the supply, where it lies between the ends or a device that limits lower may keep the supply from it; and the steps of
    // the device.
    private IEnumerable<LimitedCurrent> Between(Ends[] ends, LimitedCurrent? shared, int c)
    {
        double low = ends.Min(e => e.Lowest), high = ends.Max(e => e.Highest);
        for (int i = 0; i < ends.Length; i++)
        {
            double limit = _ends[i].LimitAmperes;
            if (!(limit < ends[i].Most.Prospective) || (limit <= ends[i].Least.Prospective && double.IsInfinity(Device.MostAmperes)))
            {
                continue;
            }

            high = Math.Max(high, limit);
            yield return LimitedCurrent.Steady(limit);
        }

        bool pulses = shared is { PulseSeconds: < double.PositiveInfinity };
        if (shared is LimitedCurrent steady && !pulses) low = Math.Min(low, steady.PeakAmperes);
        double[] steps = [.. FactorsIn(c).SelectMany(Device.StepsAt).Select(s => s * JustBelow)];
        foreach (double amperes in steps.Where(s => s > low && s < high)) yield return LimitedCurrent.Steady(amperes);
        if (shared is not LimitedCurrent left || !pulses || !(left.RmsAmperes > 0)) yield break;
        double peakOverRms = left.PeakAmperes / left.RmsAmperes;
        foreach (double rms in steps.Where(s => s > left.RmsAmperes && s * peakOverRms < high))
        {
            yield return _overload.InOverload(rms * peakOverRms);
        }
    }

    // What a fault is left with while the other outputs take what they can. Below its limit a supply does not pulse.
    private LimitedCurrent SharedAt(double loopOhms, int c)
    {
        double ohms = GreatestOhms(loopOhms, c), amperes = Rail(c)!.FaultAmperes(ohms, Device.MostAmperes);
        return Rail(c)!.IsOverloadedBy(Device.LeastOhms + loopOhms, Device.MostAmperes)
            ? _overload.InOverload(amperes)
            : LimitedCurrent.Steady(amperes);
    }

    // As if the supply neither folded back nor paused.
    private double HeatingAt(double loopOhms, int c) =>
        Math.Min(Math.Min(Output.LowestVolts / (_sourceOhms + GreatestOhms(loopOhms, c)), GreatestSustainedAmperes), Device.MostAmperes);

    private End EndOf(double volts, double ohms, OverloadBehavior overload)
    {
        // A device that limits below the supply's limit keeps the supply from it.
        double unlimited = volts / (_sourceOhms + ohms), prospective = Math.Min(unlimited, Device.MostAmperes);
        bool isOverloaded = prospective > overload.LimitAmperes;
        LimitedCurrent current = isOverloaded ? overload.Limited(unlimited) : LimitedCurrent.Steady(prospective);
        CurrentSurge surge = double.IsInfinity(Device.MostAmperes)
            ? CurrentSurge.Discharge(_farads, volts, ohms, isOverloaded ? double.PositiveInfinity : _sourceOhms, current.PeakAmperes)
            : CurrentSurge.None;
        return new End(prospective, current, surge);
    }

    /// <summary>The two ends of a range of currents, the supply at one end of its tolerance.</summary>
    private readonly struct Ends(End most, End least)
    {
        internal End Most => most;

        internal End Least => least;

        internal double Lowest => Math.Min(most.Current.PeakAmperes, least.Current.PeakAmperes);

        internal double Highest => Math.Max(most.Current.PeakAmperes, least.Current.PeakAmperes);
    }

    private readonly struct End(double prospective, LimitedCurrent current, CurrentSurge surge)
    {
        internal double Prospective => prospective;

        internal LimitedCurrent Current => current;

        internal CurrentSurge Surge => surge;
    }
}
