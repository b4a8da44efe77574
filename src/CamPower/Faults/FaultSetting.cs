using System;
using System.Collections.Generic;
using System.Linq;
using CamPower.Devices;
using CamPower.Supplies;
using UnitsNet;

namespace CamPower.Faults;

/// <summary>What stands behind and before every fault of one output: the supply, the protective device, the temperatures.</summary>
/// <remarks>
/// Where nobody declares a device or an overload behaviour, the currents are worked out without either, and no verdict is given.
/// A supply that has a limit of its own keeps its tolerance up to it, so that a source resistance is needed of an unlimited one
/// alone.
/// </remarks>
internal sealed class FaultSetting
{
    // Just below a step of the device, by more than a multiple may be rounded, its latest time is the longer one.
    private const double JustBelow = 1 - 1e-8;

    private readonly OverloadBehaviour _overload;
    private readonly double _sourceOhms, _farads, _coldCelsius, _hotCelsius;
    private readonly double[] _currentFactors;
    private readonly Lazy<RailStudy>? _rail;

    /// <param name="output">The supply's output.</param>
    /// <param name="device">The protective device; null where nobody declares it.</param>
    /// <param name="conditions">The temperatures.</param>
    /// <param name="isDeviceTemperatureUnknown">Whether nobody knows how warm the device gets.</param>
    /// <param name="rail">What the other outputs of the supply do meanwhile; null where there are none.</param>
    internal FaultSetting(SupplyOutput output, ProtectiveDevice? device, FaultConditions conditions, bool isDeviceTemperatureUnknown = false, Lazy<RailStudy>? rail = null)
    {
        Output = output;
        Device = device ?? ProtectiveDevice.None;
        _overload = output.Overload ?? OverloadBehaviour.Unlimited;
        _sourceOhms = output.SourceResistance?.Ohms ?? 0;
        _farads = (output as DcOutput)?.Capacitance?.Farads ?? 0;
        _coldCelsius = Celsius.Of(conditions.Coldest);
        _hotCelsius = Celsius.Of(conditions.Hottest);
        _currentFactors = isDeviceTemperatureUnknown ? [] : FactorsOf(Device, conditions);
        Missing = (device is null ? FaultData.Protection : FaultData.None)
            | (output.Overload is null ? FaultData.Overload : FaultData.None)
            | (output.SourceResistance is null && output.Overload?.Limit is null ? FaultData.SourceResistance : FaultData.None)
            | (output is DcOutput { Capacitance: null } ? FaultData.OutputCapacitance : FaultData.None)
            | (_currentFactors.Length == 0 ? FaultData.DeviceTemperature : FaultData.None);
        _rail = rail;
    }

    internal SupplyOutput Output { get; }

    /// <summary>The protective device; none where nobody declares it.</summary>
    internal ProtectiveDevice Device { get; }

    internal FaultData Missing { get; }

    /// <summary>Whether all is known that a verdict on the device needs.</summary>
    internal bool AllowsVerdict => MissingForVerdict == FaultData.None;

    /// <summary>What a verdict on the device needs and nobody declares.</summary>
    internal FaultData MissingForVerdict => Missing & ~FaultData.OutputCapacitance;

    /// <summary>Whether the limit of the supply is known, so that the largest current is one and not only a bound.</summary>
    internal bool KnowsSupply => (Missing & (FaultData.Overload | FaultData.SourceResistance)) == FaultData.None;

    // Null where there are no others, or it is not known what the supply does.
    private RailStudy? Rail => KnowsSupply && _rail?.Value is { HasOthers: true } rail ? rail : null;

    /// <summary>The most current that the resistances alone let flow into a fault. [A]</summary>
    internal double MostProspective(FaultLoop loop) => Output.HighestVolts / (_sourceOhms + Device.LeastOhms + loop.ColdOhms);

    /// <summary>The least current that the resistances alone let flow into a fault. [A]</summary>
    internal double LeastProspective(FaultLoop loop) => Output.LowestVolts / (_sourceOhms + Device.GreatestOhms + loop.HotOhms);

    /// <summary>The largest current of the output capacitors' discharge; infinite where no resistance is declared that limits it. [A]</summary>
    internal double DischargePeak(FaultLoop loop) =>
        double.IsInfinity(Device.MostAmperes) && _farads > 0 ? Output.HighestVolts / (Device.LeastOhms + loop.ColdOhms) : 0;

    /// <summary>The cases of a short at the end of a loop: the ends of the range of current, and where something changes between them.</summary>
    /// <remarks>The ends; the limit of the supply; what is left while the other outputs take most; just below every current at which the device gets
    /// faster. Between these nothing gets worse. Conductors are taken as cold only where the current is the largest: the air around them is then cold too.</remarks>
    internal FaultCase[] ShortCases(FaultLoop loop)
    {
        End most = EndOf(Output.HighestVolts, Device.LeastOhms + loop.ColdOhms, _coldCelsius);
        End mostHot = EndOf(Output.HighestVolts, Device.LeastOhms + loop.HotOhms, _hotCelsius);
        End least = EndOf(Output.LowestVolts, Device.GreatestOhms + loop.HotOhms, _hotCelsius);
        LimitedCurrent? shared = Rail?.IsOverloadedBy(Math.Min(Output.HighestVolts / (Device.LeastOhms + loop.ColdOhms), Device.MostAmperes)) == true
            ? SharedAt(loop.HotOhms)
            : null;
        return
        [
            .. new[] { most, mostHot }.SelectMany(end => Cases(end.Current, end.Surge, end.StartCelsius)),
            .. Cases(least.Current, least.Surge, _hotCelsius, new FaultWarming(loop, HeatingAt, ohms => EndOf(Output.LowestVolts, Device.GreatestOhms + ohms, _hotCelsius).Current, _hotCelsius)),
            .. shared is LimitedCurrent left ? Cases(left, least.Surge, _hotCelsius, new FaultWarming(loop, HeatingAt, SharedAt, _hotCelsius)) : [],
            .. Between(most, least, shared).SelectMany(current => Cases(current, most.Surge, _hotCelsius)),
        ];
    }

    /// <summary>The cases of a current that a load draws.</summary>
    internal FaultCase[] OverloadCases(double amperes)
    {
        double drawn = Math.Min(amperes, Device.MostAmperes);
        LimitedCurrent alone = _overload.Limited(drawn);
        return
        [
            .. Cases(alone, CurrentSurge.None, _hotCelsius),
            .. Rail?.IsOverloadedBy(drawn) == true ? Cases(_overload.InOverload(alone.PeakAmperes), CurrentSurge.None, _hotCelsius) : [],
        ];
    }

    private IEnumerable<FaultCase> Cases(LimitedCurrent current, CurrentSurge surge, double startCelsius, FaultWarming? warming = null) =>
        _currentFactors.DefaultIfEmpty(1).Select(factor => new FaultCase(current, surge, Device, factor, startCelsius, warming));

    // The limit of the supply, where it lies between the ends or a device that limits lower may keep the supply from it; and the steps of the device.
    private IEnumerable<LimitedCurrent> Between(End most, End least, LimitedCurrent? shared)
    {
        double limit = _overload.LimitAmperes, low = Math.Min(least.Current.PeakAmperes, most.Current.PeakAmperes);
        double high = Math.Max(most.Current.PeakAmperes, least.Current.PeakAmperes);
        if (limit < most.Prospective && (limit > least.Prospective || !double.IsInfinity(Device.MostAmperes)))
        {
            high = Math.Max(high, limit);
            yield return LimitedCurrent.Steady(limit);
        }

        double[] steps = [.. _currentFactors.SelectMany(Device.StepsAt).Select(s => s * JustBelow)];
        foreach (double amperes in steps.Where(s => s > low && s < high)) yield return LimitedCurrent.Steady(amperes);
        if (shared is not LimitedCurrent left || !(left.RmsAmperes > 0)) yield break;
        double peakOverRms = left.PeakAmperes / left.RmsAmperes;
        foreach (double rms in steps.Where(s => s > left.RmsAmperes && s * peakOverRms < high)) yield return _overload.InOverload(rms * peakOverRms);
    }

    // What a fault is left with while the other outputs take most.
    private LimitedCurrent SharedAt(double loopOhms) => _overload.InOverload(Rail!.FaultAmperes(Device.GreatestOhms + loopOhms, Device.MostAmperes));

    // As if the supply neither folded back nor paused.
    private double HeatingAt(double loopOhms) =>
        Math.Min(Math.Min(Output.LowestVolts / (_sourceOhms + Device.GreatestOhms + loopOhms), _overload.LimitAmperes), Device.MostAmperes);

    private End EndOf(double volts, double ohms, double celsius)
    {
        // A device that limits below the supply's limit keeps the supply from it.
        double unlimited = volts / (_sourceOhms + ohms), prospective = Math.Min(unlimited, Device.MostAmperes);
        bool isOverloaded = prospective > _overload.LimitAmperes;
        LimitedCurrent current = isOverloaded ? _overload.Limited(unlimited) : LimitedCurrent.Steady(prospective);
        CurrentSurge surge = double.IsInfinity(Device.MostAmperes)
            ? CurrentSurge.Discharge(_farads, volts, ohms, isOverloaded ? double.PositiveInfinity : _sourceOhms, current.PeakAmperes)
            : CurrentSurge.None;
        return new End(prospective, current, surge, celsius);
    }

    // None where the device says nothing of such temperatures.
    private static double[] FactorsOf(ProtectiveDevice device, FaultConditions conditions)
    {
        Temperature[] air = [conditions.DeviceColdest, conditions.DeviceHottest];
        return air.All(t => device.Ambient?.Covers(Celsius.Of(t)) != false)
            ? [.. air.Select(t => device.CurrentFactorAt(t, nameof(conditions))).Distinct()]
            : [];
    }

    private readonly struct End(double prospective, LimitedCurrent current, CurrentSurge surge, double startCelsius)
    {
        internal double Prospective => prospective;

        internal LimitedCurrent Current => current;

        internal CurrentSurge Surge => surge;

        internal double StartCelsius => startCelsius;
    }
}
