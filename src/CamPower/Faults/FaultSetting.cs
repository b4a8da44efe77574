using System;
using System.Collections.Generic;
using System.Linq;
using CamPower.Protection;
using CamPower.Supplies;
using UnitsNet;

namespace CamPower.Faults;

/// <summary>Data that all faults of one output share: the supply, the protective device, and the temperatures of each condition.</summary>
/// <remarks>
/// Where a device or an overload behavior is not stated, the currents are worked out without either, and no verdict is given.
/// A supply that has a limit of its own keeps its tolerance up to it, so that a source resistance is needed of an unlimited one
/// alone. A fault belongs to one condition: a cold box and a hot cable do not meet unless a condition says so.
/// </remarks>
internal sealed class FaultSetting
{
    // Just below a step of the device, by more than a multiple may be rounded, its latest time is the longer one.
    private const double JustBelow = 1 - 1e-8;

    // Of one condition, most often: a list of cases need not grow.
    private const int UsualCases = 8;

    private readonly OverloadBehavior _overload;

    // At the two ends of its tolerance, or alone where it has none.
    private readonly OverloadBehavior[] _overloads;

    private readonly double _leastSourceOhms, _mostSourceOhms, _farads;
    private readonly IReadOnlyList<FaultAir> _air;
    private readonly double[][] _factors, _steps;
    private readonly FaultSetting? _alone, _onSupplyAlone;
    private readonly Func<FaultAir, RailStudy>? _railIn;
    private readonly RailStudy?[] _rails = [];
    private int[]? _mostTakenFirst;

    /// <param name="output">The supply's output.</param>
    /// <param name="device">The protective device; null where it is not stated.</param>
    /// <param name="air">The temperatures of each condition, each pair once.</param>
    /// <param name="alone">What may feed the fault alone in the place of <paramref name="output"/>: the supply where the battery beside it
    /// is dead, or its fuse open; each of two supplies where the other has failed.</param>
    internal FaultSetting(SupplyOutput output, ProtectiveDevice? device, IReadOnlyList<FaultAir> air, params SupplyOutput[] alone)
    {
        _alone = alone.Length == 0 ? null : new FaultSetting(alone[0], device, air, [.. alone.Skip(1)]);
        Output = output;
        Device = device ?? ProtectiveDevice.None;
        _overload = output.Overload ?? OverloadBehavior.Unlimited;
        _overloads = ReferenceEquals(_overload.Lowest, _overload.Highest) ? [_overload] : [_overload.Lowest, _overload.Highest];
        _leastSourceOhms = output.SourceOhms;
        _mostSourceOhms = output.GreatestSourceOhms;
        _farads = (output as DcOutput)?.Capacitance?.Farads ?? 0;
        _air = air;
        double[][] factors = [.. air.Select(a => Device.FactorsIn(a.DeviceCelsius))];
        _factors = Array.ConvertAll(factors, known => known.Length == 0 ? [1] : known);
        _steps = Array.ConvertAll(_factors, each => each.SelectMany(Device.StepsAt).Select(step => step * JustBelow).ToArray());
        Missing = (device is null ? FaultData.Protection : FaultData.None)
            | (output.Overload is null ? FaultData.Overload : FaultData.None)
            | (output.SourceResistance is null && output.Overload?.Limit is null ? FaultData.SourceResistance : FaultData.None)
            | (output is DcOutput { Capacitance: null } ? FaultData.OutputCapacitance : FaultData.None)
            | (Array.Exists(factors, known => known.Length == 0) ? FaultData.DeviceTemperature : FaultData.None)
            | (_alone?.Missing ?? FaultData.None);
        Judgment voltage = Device.JudgeVoltage(output.HighestVolts, output.Kind == CurrentKind.Dc);
        IsWithinVoltageRating = voltage.Value is null ? null : !voltage.IsViolated;
        MissingForAnyFault = voltage.NotStated is null ? Missing : Missing | FaultData.DcVoltageRating;
    }

    private FaultSetting(FaultSetting by, Func<FaultAir, RailStudy> railIn, Func<FaultAir, RailStudy>? railOnSupplyAlone)
    {
        Output = by.Output;
        Device = by.Device;
        Missing = by.Missing;
        MissingForAnyFault = by.MissingForAnyFault;
        IsWithinVoltageRating = by.IsWithinVoltageRating;
        _overload = by._overload;
        _overloads = by._overloads;
        _leastSourceOhms = by._leastSourceOhms;
        _mostSourceOhms = by._mostSourceOhms;
        _farads = by._farads;
        _air = by._air;
        _factors = by._factors;
        _steps = by._steps;
        _alone = by._alone;
        _onSupplyAlone = Output is DcOutput { IsBesideBattery: true } && railOnSupplyAlone is not null && _alone is not null
            ? new FaultSetting(_alone, railOnSupplyAlone, railOnSupplyAlone: null)
            : null;
        _railIn = railIn;
        _rails = new RailStudy?[_air.Count];
    }

    internal SupplyOutput Output { get; }

    /// <summary>The protective device; none where it is not stated.</summary>
    internal ProtectiveDevice Device { get; }

    internal FaultData Missing { get; }

    /// <summary>Whether the device may interrupt at the supply's highest voltage; null where its voltage rating is not stated.</summary>
    internal bool? IsWithinVoltageRating { get; }

    /// <summary>What is missing whatever the fault and its conductors.</summary>
    internal FaultData MissingForAnyFault { get; }

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

    /// <summary>The same at one output, given what the other outputs of the supply do meanwhile at a temperature.</summary>
    /// <param name="railIn">What they do with the battery of the box in order, where it has one.</param>
    /// <param name="railOnSupplyAlone">What they do with it dead, or its fuse open.</param>
    internal FaultSetting Beside(Func<FaultAir, RailStudy> railIn, Func<FaultAir, RailStudy> railOnSupplyAlone) =>
        new(this, railIn, railOnSupplyAlone);

    /// <summary>The same of the supply of a box alone, its battery being dead; null where it has none.</summary>
    internal FaultSetting? OnSupplyAlone => _onSupplyAlone;

    /// <summary>What the supply does while a short lasts: in the condition in which most devices suffer, with cold conductors to
    /// it.</summary>
    internal SupplyDuringFault RailDuring(FaultLoop loop)
    {
        SupplyDuringFault? worst = null;
        foreach (int c in _mostTakenFirst ??= [.. Enumerable.Range(0, _air.Count).OrderByDescending(c => KnownRail(c).OtherAmperes)])
        {
            SupplyDuringFault rail = KnownRail(c).During(LeastOhms(loop, c), Device.MostAmperes);
            if (worst is null || rail.Suffering > worst.Suffering) worst = rail;
            if (worst.Suffering == KnownRail(c).Others) break;
        }

        return worst!;
    }

    private IEnumerable<SupplyOutput> OthersAlone => _alone is null ? [] : _alone.OthersAlone.Prepend(_alone.Output);

    // Null where there are no others, or it is not known what the supply does.
    private RailStudy? Rail(int c) => KnowsSupply && _railIn is not null && KnownRail(c) is { HasOthers: true } rail ? rail : null;

    private RailStudy KnownRail(int c) => _rails[c] ??= _railIn!(_air[c]);

    /// <summary>The most prospective current of a fault: that of the resistances alone. [A]</summary>
    internal double MostProspective(FaultLoop loop) => Output.HighestVolts / (_leastSourceOhms + LeastOhms(loop));

    /// <summary>The least prospective current of a fault: that of the resistances alone. [A]</summary>
    internal double LeastProspective(FaultLoop loop) => Math.Min(_alone?.LeastProspective(loop) ?? double.PositiveInfinity,
        Output.LowestVolts / (_mostSourceOhms + Greatest(c => GreatestOhms(loop.OhmsIn(c), c))));

    /// <summary>The greatest resistance of a loop beside the device, source included. [Ω]</summary>
    internal double GreatestRest(FaultLoop loop) => _mostSourceOhms + Greatest(loop.OhmsIn);

    /// <summary>Resistance of device and way to a fault where it is least. [Ω]</summary>
    internal double LeastOhms(FaultLoop loop)
    {
        double least = LeastOhms(loop, 0);
        for (int c = 1; c < _air.Count; c++) least = Math.Min(least, LeastOhms(loop, c));
        return least;
    }

    internal double ConductorCelsiusIn(int condition) => _air[condition].ConductorCelsius;

    /// <summary>The most that heats the conductors at a resistance of the loop, never rising with it: as if the supply neither folded back
    /// nor paused. [A]</summary>
    internal double HeatingAt(double loopOhms, int condition) => Math.Min(Device.MostAmperes,
        Math.Min(Output.LowestVolts / (_mostSourceOhms + GreatestOhms(loopOhms, condition)), GreatestSustainedAmperes));

    /// <summary>The largest current of the output capacitors' discharge; infinite where no resistance is stated that limits it.
    /// [A]</summary>
    internal double DischargePeak(FaultLoop loop) =>
        double.IsInfinity(Device.MostAmperes) && _farads > 0 ? Output.HighestVolts / LeastOhms(loop) : 0;

    /// <summary>The maximum power that a short with a resistance of its own has at a place, whatever that resistance; infinite where
    /// nothing that is stated bounds it. [W]</summary>
    /// <remarks>Maximum power transfer, V²/4R, or less where the supply or an electronic limit holds the current below V/2R. A fuse does
    /// not: until it operates the spot has it all.</remarks>
    /// <example>12 V behind 2 Ω: 3 A and 18 W in a short of 2 Ω.</example>
    internal double PoorShortWatts(FaultLoop loop)
    {
        double amperes = PoorShortAmperes(loop);
        return double.IsInfinity(amperes)
            ? double.PositiveInfinity
            : amperes * (Output.HighestVolts - (amperes * (_leastSourceOhms + LeastOhms(loop))));
    }

    /// <summary>The current of a short at <see cref="PoorShortWatts"/>. [A]</summary>
    internal double PoorShortAmperes(FaultLoop loop) => Math.Min(Output.HighestVolts / (2 * (_leastSourceOhms + LeastOhms(loop))),
        Math.Min(GreatestSustainedAmperes, Device.MostAmperes));

    /// <summary>The cases of a short at the end of a loop: in each condition the ends of the range of current, and where something changes
    /// between them.</summary>
    /// <remarks>The ends; the limit of the supply; what is left while the other outputs take most; just below every current at which the
    /// device gets faster. Between these nothing gets worse.</remarks>
    internal IReadOnlyList<FaultCase> ShortCases(FaultLoop loop)
    {
        var cases = new List<FaultCase>(UsualCases * _air.Count);
        for (int c = 0; c < _air.Count; c++) AddShort(cases, loop, c);
        if (_alone is not null) cases.AddRange(_alone.ShortCases(loop));
        return cases;
    }

    /// <summary>When the device opens at a short with the battery in order; null where there is none.</summary>
    internal OpeningTimes? OpeningOnBattery(FaultLoop loop) =>
        Output is DcOutput { IsBesideBattery: true } ? OpeningWithoutOthersAlone(loop) : null;

    /// <summary>When the device opens at a short that this source feeds, whatever else may feed it alone.</summary>
    internal OpeningTimes OpeningWithoutOthersAlone(FaultLoop loop)
    {
        var cases = new List<FaultCase>();
        for (int c = 0; c < _air.Count; c++) AddShort(cases, loop, c);
        return cases.Skip(1).Aggregate(cases[0].Opening, (opening, each) => opening.Or(each.Opening));
    }

    /// <summary>The cases of a short anywhere along a piece of cable, that at its end left out.</summary>
    /// <remarks>What capacitors discharge counts as at its end: the closer to a supply of no resistance, the shorter what it
    /// heats.</remarks>
    /// <param name="origin">The loop to where it begins.</param>
    /// <param name="end">The loop to where it ends.</param>
    internal IReadOnlyList<FaultCase> PieceCases(FaultLoop origin, FaultLoop end)
    {
        var cases = new List<FaultCase>(UsualCases * _air.Count);
        for (int c = 0; c < _air.Count; c++)
        {
            CurrentRange[] ranges = RangesOf(origin, end.OhmsIn(c), c);
            CurrentSurge surge = Most(end, c, _overload.Highest).Surge;
            foreach (CurrentRange range in ranges) Add(cases, range.Most.Current, surge, c);
            AddBetween(cases, ranges, shared: null, surge, c);
        }

        if (_alone is not null) cases.AddRange(_alone.PieceCases(origin, end));
        return cases;
    }

    /// <summary>The same without a protective device.</summary>
    internal FaultSetting Unprotected() => new(Output, ProtectiveDevice.None, _air, [.. OthersAlone]);

    /// <summary>The cases of a current that a load draws.</summary>
    internal IReadOnlyList<FaultCase> OverloadCases(double amperes)
    {
        double drawn = Math.Min(amperes, Device.MostAmperes);
        LimitedCurrent[] alone = Array.ConvertAll(_overloads, overload => overload.Limited(drawn));
        var cases = new List<FaultCase>();
        for (int c = 0; c < _air.Count; c++)
        {
            foreach (LimitedCurrent current in alone) Add(cases, current, CurrentSurge.None, c);
            if (Rail(c)?.IsOverloadedBy(drawn) != true) continue;
            foreach (LimitedCurrent current in alone) Add(cases, _overload.InOverload(current.PeakAmperes), CurrentSurge.None, c);
        }

        if (_alone is not null) cases.AddRange(_alone.OverloadCases(amperes));
        return cases;
    }

    private void AddShort(List<FaultCase> cases, FaultLoop loop, int c)
    {
        double ohms = loop.OhmsIn(c);
        CurrentRange[] ranges = RangesOf(loop, ohms, c);
        foreach (CurrentRange range in ranges) Add(cases, range.Most.Current, range.Most.Surge, c);
        for (int i = 0; i < ranges.Length; i++)
        {
            OverloadBehavior overload = _overloads[i];
            Add(cases, ranges[i].Least.Current, ranges[i].Least.Surge, c, WarmingOf(loop, c, warm => Least(warm, c, overload).Current));
        }

        bool isShared = Rail(c)?.IsTakenDownBy(LeastOhms(loop, c), Device.MostAmperes) == true;
        LimitedCurrent? shared = isShared ? SharedAt(ohms, c) : null;
        if (shared is LimitedCurrent left) Add(cases, left, ranges[0].Least.Surge, c, WarmingOf(loop, c, warm => SharedAt(warm, c)));
        AddBetween(cases, ranges, shared, ranges[ranges.Length - 1].Most.Surge, c);
    }

    // Null where there is nothing to warm.
    private FaultWarming? WarmingOf(FaultLoop loop, int c, Func<double, LimitedCurrent> flowing) =>
        loop.Conductors.Count > 0 ? new FaultWarming(this, loop, c, flowing) : null;

    private void Add(List<FaultCase> cases, LimitedCurrent current, CurrentSurge surge, int c, FaultWarming? warming = null)
    {
        foreach (double factor in _factors[c])
        {
            cases.Add(new FaultCase(current, surge, Device, factor, ConductorCelsiusIn(c), warming));
        }
    }

    private double Greatest(Func<int, double> inCondition)
    {
        double greatest = inCondition(0);
        for (int c = 1; c < _air.Count; c++) greatest = Math.Max(greatest, inCondition(c));
        return greatest;
    }

    private CurrentRange[] RangesOf(FaultLoop most, double leastOhms, int c)
    {
        var ranges = new CurrentRange[_overloads.Length];
        for (int i = 0; i < ranges.Length; i++)
        {
            ranges[i] = new CurrentRange(Most(most, c, _overloads[i]), Least(leastOhms, c, _overloads[i]));
        }

        return ranges;
    }

    private double LeastOhms(FaultLoop loop, int c) => Device.LeastOhms + loop.OhmsIn(c);

    private CurrentEnd Most(FaultLoop loop, int c, OverloadBehavior overload) =>
        CurrentFrom(Output.HighestVolts, _leastSourceOhms, LeastOhms(loop, c), overload);

    private CurrentEnd Least(double loopOhms, int c, OverloadBehavior overload) =>
        CurrentFrom(Output.LowestVolts, _mostSourceOhms, GreatestOhms(loopOhms, c), overload);

    private double GreatestOhms(double loopOhms, int c) =>
        loopOhms + (Device.GreatestOhms * (_air[c].DeviceCelsius is double known ? Device.ResistanceGrowthIn(known) : 1));

    // What matters between the ends: the limit of the supply, and the currents at which the protective device gets faster.
    private void AddBetween(List<FaultCase> cases, CurrentRange[] ranges, LimitedCurrent? shared, CurrentSurge surge, int c)
    {
        double low = double.PositiveInfinity, high = 0;
        foreach (CurrentRange range in ranges)
        {
            low = Math.Min(low, range.Lowest);
            high = Math.Max(high, range.Highest);
        }

        for (int i = 0; i < ranges.Length; i++)
        {
            double limit = _overloads[i].LimitAmperes;
            if (!IsBetween(limit, ranges[i])) continue;
            high = Math.Max(high, limit);
            Add(cases, LimitedCurrent.Steady(limit), surge, c);
        }

        bool pulses = shared is { PulseSeconds: < double.PositiveInfinity };
        if (shared is LimitedCurrent steady && !pulses) low = Math.Min(low, steady.PeakAmperes);
        foreach (double amperes in _steps[c])
        {
            if (amperes > low && amperes < high) Add(cases, LimitedCurrent.Steady(amperes), surge, c);
        }

        if (pulses) AddPulsedSteps(cases, shared!.Value, high, surge, c);
    }

    // A protective device that limits lower may keep the supply from its limit, also where the resistances alone do not.
    private bool IsBetween(double limit, CurrentRange range) => limit < range.Most.Prospective
        && (limit > range.Least.Prospective || !double.IsInfinity(Device.MostAmperes));

    // Pulses heat by their RMS, and the steps are heating currents.
    private void AddPulsedSteps(List<FaultCase> cases, LimitedCurrent shared, double high, CurrentSurge surge, int c)
    {
        if (!(shared.RmsAmperes > 0)) return;
        double peakOverRms = shared.PeakAmperes / shared.RmsAmperes;
        foreach (double rms in _steps[c])
        {
            if (rms > shared.RmsAmperes && rms * peakOverRms < high) Add(cases, _overload.InOverload(rms * peakOverRms), surge, c);
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

    private CurrentEnd CurrentFrom(double volts, double sourceOhms, double ohms, OverloadBehavior overload)
    {
        // A device that limits below the supply's limit keeps the supply from it.
        double unlimited = volts / (sourceOhms + ohms), prospective = Math.Min(unlimited, Device.MostAmperes);
        bool isOverloaded = prospective > overload.LimitAmperes;
        LimitedCurrent current = isOverloaded ? overload.Limited(unlimited) : LimitedCurrent.Steady(prospective);
        CurrentSurge surge = double.IsInfinity(Device.MostAmperes)
            ? CurrentSurge.Discharge(_farads, volts, ohms, isOverloaded ? double.PositiveInfinity : sourceOhms, current.PeakAmperes)
            : CurrentSurge.None;
        return new CurrentEnd(prospective, current, surge);
    }

    /// <summary>The two ends of a range of currents, the supply at one end of its tolerance.</summary>
    private readonly struct CurrentRange(CurrentEnd most, CurrentEnd least)
    {
        internal CurrentEnd Most => most;

        internal CurrentEnd Least => least;

        internal double Lowest => Math.Min(most.Current.PeakAmperes, least.Current.PeakAmperes);

        internal double Highest => Math.Max(most.Current.PeakAmperes, least.Current.PeakAmperes);
    }

    private readonly struct CurrentEnd(double prospective, LimitedCurrent current, CurrentSurge surge)
    {
        internal double Prospective => prospective;

        internal LimitedCurrent Current => current;

        internal CurrentSurge Surge => surge;
    }
}
