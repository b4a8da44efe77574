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

    internal FaultSetting(SupplyOutput output, ProtectiveDevice? device, FaultConditions conditions, bool isDeviceTemperatureUnknown = false)
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
    }

    internal SupplyOutput Output { get; }

    /// <summary>The protective device; none where nobody declares it.</summary>
    internal ProtectiveDevice Device { get; }

    internal FaultData Missing { get; }

    /// <summary>Whether all is known that a verdict on the device needs.</summary>
    internal bool AllowsVerdict => (Missing & ~FaultData.OutputCapacitance) == FaultData.None;

    /// <summary>Whether the limit of the supply is known, so that the largest current is one and not only a bound.</summary>
    internal bool KnowsSupply => (Missing & (FaultData.Overload | FaultData.SourceResistance)) == FaultData.None;

    /// <summary>The most current that the resistances alone let flow into a fault. [A]</summary>
    internal double MostProspective(FaultLoop loop) => Output.HighestVolts / (_sourceOhms + Device.LeastOhms + loop.ColdOhms);

    /// <summary>The least current that the resistances alone let flow into a fault. [A]</summary>
    internal double LeastProspective(FaultLoop loop) => Output.LowestVolts / (_sourceOhms + Device.GreatestOhms + loop.HotOhms);

    /// <summary>The largest current of the output capacitors' discharge; infinite where no resistance is declared that limits it. [A]</summary>
    internal double DischargePeak(FaultLoop loop) =>
        double.IsInfinity(Device.MostAmperes) && _farads > 0 ? Output.HighestVolts / (Device.LeastOhms + loop.ColdOhms) : 0;

    /// <summary>The cases of a short at the end of a loop: the ends of the range of current, and where something changes between them.</summary>
    /// <remarks>The ends; the limit of the supply; just below every current at which the device gets faster. Between these nothing
    /// gets worse. Conductors are taken as cold only where the current is the largest: the air around them is then cold too.</remarks>
    internal FaultCase[] ShortCases(FaultLoop loop)
    {
        End most = EndOf(Output.HighestVolts, Device.LeastOhms + loop.ColdOhms, _coldCelsius);
        End mostHot = EndOf(Output.HighestVolts, Device.LeastOhms + loop.HotOhms, _hotCelsius);
        End least = EndOf(Output.LowestVolts, Device.GreatestOhms + loop.HotOhms, _hotCelsius);
        var between = new List<double>();
        if (_overload.LimitAmperes < most.Prospective && _overload.LimitAmperes > least.Prospective) between.Add(_overload.LimitAmperes);
        double low = Math.Min(least.Current.PeakAmperes, most.Current.PeakAmperes), high = Math.Max(most.Current.PeakAmperes, least.Current.PeakAmperes);
        foreach (double amperes in between) high = Math.Max(high, amperes);
        between.AddRange(_currentFactors.SelectMany(Device.StepsAt).Select(s => s * JustBelow).Where(s => s > low && s < high));
        return
        [
            .. new[] { most, mostHot, least }.SelectMany(end => Cases(end.Current, end.Surge, end.Surge, end.StartCelsius)),
            .. between.SelectMany(amperes => Cases(LimitedCurrent.Steady(amperes), least.Surge, most.Surge, _hotCelsius)),
        ];
    }

    /// <summary>The cases of a current that a load draws.</summary>
    internal FaultCase[] OverloadCases(double amperes) =>
        [.. Cases(_overload.Limited(Math.Min(amperes, Device.MostAmperes)), CurrentSurge.None, CurrentSurge.None, _hotCelsius)];

    private IEnumerable<FaultCase> Cases(LimitedCurrent current, CurrentSurge leastSurge, CurrentSurge mostSurge, double startCelsius) =>
        _currentFactors.DefaultIfEmpty(1).Select(factor => new FaultCase(current, leastSurge, mostSurge, Device, factor, startCelsius));

    private End EndOf(double volts, double ohms, double celsius)
    {
        double prospective = Math.Min(volts / (_sourceOhms + ohms), Device.MostAmperes);
        LimitedCurrent current = _overload.Limited(prospective);
        double sourceOhms = prospective > _overload.LimitAmperes ? double.PositiveInfinity : _sourceOhms;
        CurrentSurge surge = double.IsInfinity(Device.MostAmperes)
            ? CurrentSurge.Discharge(_farads, volts, ohms, sourceOhms, current.PeakAmperes)
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
