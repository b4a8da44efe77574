using System;
using System.Collections.Generic;
using CamPower.Protection;
using CamPower.Supplies;

namespace CamPower.Faults;

/// <summary>Makes the cases of a fault in one condition: the ends of the range of current, and where something changes between
/// them.</summary>
/// <remarks>The ends; the limit of the supply; what is left while the other outputs take most; just below every current at which the
/// device gets faster. Between these nothing gets worse.</remarks>
/// <param name="setting">What is behind the fault.</param>
/// <param name="condition">The place of the condition in its list.</param>
/// <param name="cases">Where they are added.</param>
internal sealed class FaultCases(FaultSetting setting, int condition, List<FaultCase> cases)
{
    private readonly OverloadBehavior[] _overloads = setting.Overloads;

    private RailStudy? Rail => setting.Rail(condition);

    private double LimitOfDevice => setting.Device.MostAmperes;

    /// <summary>Adds those of a short at the end of a loop.</summary>
    internal void AddShort(FaultLoop loop)
    {
        double ohms = loop.OhmsIn(condition);
        CurrentRange[] ranges = RangesOf(loop, ohms);
        foreach (CurrentRange range in ranges) Add(range.Most.Current, range.Most.Surge);
        for (int i = 0; i < ranges.Length; i++)
        {
            OverloadBehavior overload = _overloads[i];
            Add(ranges[i].Least.Current, ranges[i].Least.Surge, WarmingOf(loop, warm => Least(warm, overload).Current));
        }

        bool isShared = Rail?.IsTakenDownBy(setting.LeastOhms(loop, condition), LimitOfDevice) == true;
        LimitedCurrent? shared = isShared ? SharedAt(ohms) : null;
        if (shared is LimitedCurrent left) Add(left, ranges[0].Least.Surge, WarmingOf(loop, SharedAt));
        AddBetween(ranges, shared, ranges[ranges.Length - 1].Most.Surge);
    }

    /// <summary>Adds those of a short anywhere along a piece of cable, that at its end left out.</summary>
    /// <remarks>What capacitors discharge counts as at its end: the closer to a supply of no resistance, the shorter what it
    /// heats.</remarks>
    /// <param name="origin">The loop to where it begins.</param>
    /// <param name="end">The loop to where it ends.</param>
    internal void AddPiece(FaultLoop origin, FaultLoop end)
    {
        CurrentRange[] ranges = RangesOf(origin, end.OhmsIn(condition));
        CurrentSurge surge = Most(end, setting.Overload.Highest).Surge;
        foreach (CurrentRange range in ranges) Add(range.Most.Current, surge);
        AddBetween(ranges, shared: null, surge);
    }

    /// <summary>Adds those of a current that a load draws.</summary>
    internal void AddOverload(double amperes)
    {
        double drawn = Math.Min(amperes, LimitOfDevice);
        LimitedCurrent[] alone = Array.ConvertAll(_overloads, overload => overload.Limited(drawn));
        foreach (LimitedCurrent current in alone) Add(current, CurrentSurge.None);
        if (Rail?.IsOverloadedBy(drawn) != true) return;
        foreach (LimitedCurrent current in alone) Add(setting.Overload.InOverload(current.PeakAmperes), CurrentSurge.None);
    }

    private void Add(LimitedCurrent current, CurrentSurge surge, FaultWarming? warming = null)
    {
        foreach (double factor in setting.FactorsIn(condition))
        {
            cases.Add(new FaultCase(current, surge, setting.Device, factor, setting.ConductorCelsiusIn(condition), warming));
        }
    }

    // Null where there is nothing to warm.
    private FaultWarming? WarmingOf(FaultLoop loop, Func<double, LimitedCurrent> flowing) =>
        loop.Conductors.Count > 0 ? new FaultWarming(setting, loop, condition, flowing) : null;

    // What matters between the ends: the limit of the supply, and the currents at which the protective device gets faster.
    private void AddBetween(CurrentRange[] ranges, LimitedCurrent? shared, CurrentSurge surge)
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
            Add(LimitedCurrent.Steady(limit), surge);
        }

        bool pulses = shared is { PulseSeconds: < double.PositiveInfinity };
        if (shared is LimitedCurrent steady && !pulses) low = Math.Min(low, steady.PeakAmperes);
        foreach (double amperes in setting.StepsIn(condition))
        {
            if (amperes > low && amperes < high) Add(LimitedCurrent.Steady(amperes), surge);
        }

        if (pulses) AddPulsedSteps(shared!.Value, high, surge);
    }

    // A protective device that limits lower may keep the supply from its limit, also where the resistances alone do not.
    private bool IsBetween(double limit, CurrentRange range) =>
        limit < range.Most.Prospective && (limit > range.Least.Prospective || !double.IsInfinity(LimitOfDevice));

    // Pulses heat by their RMS, and the steps are heating currents.
    private void AddPulsedSteps(LimitedCurrent shared, double high, CurrentSurge surge)
    {
        if (!(shared.RmsAmperes > 0)) return;
        double peakOverRms = shared.PeakAmperes / shared.RmsAmperes;
        foreach (double rms in setting.StepsIn(condition))
        {
            if (rms > shared.RmsAmperes && rms * peakOverRms < high) Add(setting.Overload.InOverload(rms * peakOverRms), surge);
        }
    }

    private CurrentRange[] RangesOf(FaultLoop most, double leastOhms) =>
        Array.ConvertAll(_overloads, overload => new CurrentRange(Most(most, overload), Least(leastOhms, overload)));

    private CurrentEnd Most(FaultLoop loop, OverloadBehavior overload) => CurrentFrom(
        setting.Output.HighestVolts, setting.Output.SourceOhms, setting.LeastOhms(loop, condition), overload);

    private CurrentEnd Least(double loopOhms, OverloadBehavior overload) => CurrentFrom(
        setting.Output.LowestVolts, setting.Output.GreatestSourceOhms, setting.GreatestOhms(loopOhms, condition), overload);

    // What a fault is left with while the other outputs take what they can. Below its limit a supply does not pulse.
    private LimitedCurrent SharedAt(double loopOhms)
    {
        double amperes = Rail!.FaultAmperes(setting.GreatestOhms(loopOhms, condition), LimitOfDevice);
        return Rail.IsOverloadedBy(setting.Device.LeastOhms + loopOhms, LimitOfDevice)
            ? setting.Overload.InOverload(amperes)
            : LimitedCurrent.Steady(amperes);
    }

    private CurrentEnd CurrentFrom(double volts, double sourceOhms, double ohms, OverloadBehavior overload)
    {
        // A device that limits below the supply's limit keeps the supply from it.
        double unlimited = volts / (sourceOhms + ohms), prospective = Math.Min(unlimited, LimitOfDevice);
        bool isOverloaded = prospective > overload.LimitAmperes;
        LimitedCurrent current = isOverloaded ? overload.Limited(unlimited) : LimitedCurrent.Steady(prospective);
        CurrentSurge surge = double.IsInfinity(LimitOfDevice)
            ? CurrentSurge.Discharge(setting.Farads, volts, ohms, isOverloaded ? double.PositiveInfinity : sourceOhms, current.PeakAmperes)
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
