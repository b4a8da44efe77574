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

    private readonly IReadOnlyList<FaultAir> _air;
    private readonly double[][] _factors, _steps;
    private readonly FaultSetting? _alone;
    private Func<FaultAir, RailStudy>? _railIn;
    private RailStudy?[] _rails = [];
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
        Overload = output.Overload ?? OverloadBehavior.Unlimited;
        Overloads = ReferenceEquals(Overload.Lowest, Overload.Highest) ? [Overload] : [Overload.Lowest, Overload.Highest];
        Farads = (output as DcOutput)?.Capacitance?.Farads ?? 0;
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
        Judgment voltage = Device.JudgeVoltage(output.HighestVolts, output.IsDc);
        IsWithinVoltageRating = voltage.Value is null ? null : !voltage.IsViolated;
        MissingForAnyFault = voltage.NotStated is null ? Missing : Missing | FaultData.DcVoltageRating;
    }

    internal SupplyOutput Output { get; }

    /// <summary>The protective device; none where it is not stated.</summary>
    internal ProtectiveDevice Device { get; }

    /// <summary>What the supply does in overload; without a limit where that is not stated.</summary>
    internal OverloadBehavior Overload { get; }

    /// <summary>The same at the two ends of its tolerance, or alone where it has none.</summary>
    internal OverloadBehavior[] Overloads { get; }

    /// <summary>Capacitance of the output; 0 where it is not stated. [F]</summary>
    internal double Farads { get; }

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
    internal double GreatestSustainedAmperes => Overload.Highest.LimitAmperes;

    private IEnumerable<SupplyOutput> OthersAlone => _alone is null ? [] : _alone.OthersAlone.Prepend(_alone.Output);

    /// <summary>The same at one output, given what the other outputs of the supply do meanwhile at a temperature.</summary>
    /// <param name="railIn">What they do with the battery of the box in order, where it has one.</param>
    /// <param name="railOnSupplyAlone">What they do with it dead, or its fuse open.</param>
    internal FaultSetting Beside(Func<FaultAir, RailStudy> railIn, Func<FaultAir, RailStudy> railOnSupplyAlone)
    {
        FaultSetting beside = On(railIn);
        if (Output is DcOutput { IsBesideBattery: true }) beside.OnSupplyAlone = _alone?.On(railOnSupplyAlone);
        return beside;
    }

    /// <summary>The same of the supply of a box alone, its battery being dead; null where it has none.</summary>
    internal FaultSetting? OnSupplyAlone { get; private set; }

    private FaultSetting On(Func<FaultAir, RailStudy> railIn)
    {
        var on = (FaultSetting)MemberwiseClone();
        (on._railIn, on._rails, on._mostTakenFirst) = (railIn, new RailStudy?[_air.Count], null);
        return on;
    }

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

    /// <summary>The most prospective current of a fault: that of the resistances alone. [A]</summary>
    internal double MostProspective(FaultLoop loop) => Output.HighestVolts / (Output.SourceOhms + LeastOhms(loop));

    /// <summary>The largest current of a fault with a link of no resistance in place of the device: what the device is asked to interrupt.
    /// Infinite where nothing limits it. [A]</summary>
    /// <remarks>The supply limits it; the resistance of the device does not count (IEC 60269-1 and IEC 60127-1, prospective current of a
    /// circuit, from memory).</remarks>
    internal double AmperesThroughLink(FaultLoop loop)
    {
        double most = _alone?.AmperesThroughLink(loop) ?? 0;
        OverloadBehavior overload = Overload.Highest;
        for (int c = 0; c < _air.Count; c++)
        {
            double unlimited = Output.HighestVolts / (Output.SourceOhms + loop.OhmsIn(c));
            most = Math.Max(most, unlimited > overload.LimitAmperes ? overload.Limited(unlimited).PeakAmperes : unlimited);
        }

        return most;
    }

    /// <summary>The least prospective current of a fault: that of the resistances alone. [A]</summary>
    internal double LeastProspective(FaultLoop loop) => Math.Min(_alone?.LeastProspective(loop) ?? double.PositiveInfinity,
        Output.LowestVolts / (Output.GreatestSourceOhms + Greatest(c => GreatestOhms(loop.OhmsIn(c), c))));

    /// <summary>The greatest resistance of a loop beside the device, source included. [Ω]</summary>
    internal double GreatestRest(FaultLoop loop) => Output.GreatestSourceOhms + Greatest(loop.OhmsIn);

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
        Math.Min(Output.LowestVolts / (Output.GreatestSourceOhms + GreatestOhms(loopOhms, condition)), GreatestSustainedAmperes));

    /// <summary>The largest current of the output capacitors' discharge; infinite where no resistance is stated that limits it.
    /// [A]</summary>
    internal double DischargePeak(FaultLoop loop) =>
        double.IsInfinity(Device.MostAmperes) && Farads > 0 ? Output.HighestVolts / LeastOhms(loop) : 0;

    /// <summary>The maximum power that a short with a resistance of its own has at a place, whatever that resistance; infinite where
    /// nothing that is stated bounds it. [W]</summary>
    /// <remarks>Maximum power transfer, V²/4R, or less where the supply or an electronic limit holds the current below V/2R. What opens the
    /// device for certain does not last: its smallest such current, in the coldest condition, is the most that does.</remarks>
    /// <example>12 V behind 2 Ω: 3 A and 18 W in a short of 2 Ω.</example>
    internal double PoorShortWatts(FaultLoop loop)
    {
        double amperes = PoorShortAmperes(loop);
        return double.IsInfinity(amperes)
            ? double.PositiveInfinity
            : amperes * (Output.HighestVolts - (amperes * (Output.SourceOhms + LeastOhms(loop))));
    }

    /// <summary>The current of a short at <see cref="PoorShortWatts"/>. [A]</summary>
    internal double PoorShortAmperes(FaultLoop loop) => Math.Min(Output.HighestVolts / (2 * (Output.SourceOhms + LeastOhms(loop))),
        Math.Min(GreatestSustainedAmperes, MostLastingAmperes));

    // In the coldest air a thermal element carries most before it is certain to open.
    private double MostLastingAmperes => AllowsVerdict && IsWithinVoltageRating != false
        ? Math.Min(Device.MostAmperes, Device.CertainAmperes(_factors.Max(factors => factors.Max())))
        : Device.MostAmperes;

    /// <summary>The cases of a short at the end of a loop, in each condition.</summary>
    internal IReadOnlyList<FaultCase> ShortCases(FaultLoop loop) => CasesOf(each => each.AddShort(loop));

    /// <summary>The cases of a short anywhere along a piece of cable, from the end of one loop to that of another, which is left
    /// out.</summary>
    internal IReadOnlyList<FaultCase> PieceCases(FaultLoop origin, FaultLoop end) => CasesOf(each => each.AddPiece(origin, end));

    /// <summary>The cases of a current that a load draws.</summary>
    internal IReadOnlyList<FaultCase> OverloadCases(double amperes) => CasesOf(each => each.AddOverload(amperes));

    /// <summary>When the device opens at a short with the battery in order; null where there is none.</summary>
    internal OpeningTimes? OpeningOnBattery(FaultLoop loop) =>
        Output is DcOutput { IsBesideBattery: true } ? OpeningWithoutOthersAlone(loop) : null;

    /// <summary>When the device opens at a short that this source feeds, whatever else may feed it alone.</summary>
    internal OpeningTimes OpeningWithoutOthersAlone(FaultLoop loop)
    {
        var cases = new List<FaultCase>();
        AddCases(cases, each => each.AddShort(loop));
        return cases.Skip(1).Aggregate(cases[0].Opening, (opening, each) => opening.Or(each.Opening));
    }

    /// <summary>The same without a protective device.</summary>
    internal FaultSetting Unprotected() => new(Output, ProtectiveDevice.None, _air, [.. OthersAlone]);

    /// <summary>What the other outputs do meanwhile; null where there are none, or it is not known what the supply does.</summary>
    internal RailStudy? Rail(int condition) =>
        KnowsSupply && _railIn is not null && KnownRail(condition) is { HasOthers: true } rail ? rail : null;

    /// <summary>Factors of the surroundings on the device's rated currents.</summary>
    internal double[] FactorsIn(int condition) => _factors[condition];

    /// <summary>Just below every current at which the device gets faster. [A]</summary>
    internal double[] StepsIn(int condition) => _steps[condition];

    internal double LeastOhms(FaultLoop loop, int condition) => Device.LeastOhms + loop.OhmsIn(condition);

    internal double GreatestOhms(double loopOhms, int condition) => loopOhms
        + (Device.GreatestOhms * (_air[condition].DeviceCelsius is double known ? Device.ResistanceGrowthIn(known) : 1));

    private RailStudy KnownRail(int condition) => _rails[condition] ??= _railIn!(_air[condition]);

    // With what may feed it alone as well.
    private List<FaultCase> CasesOf(Action<FaultCases> add)
    {
        var cases = new List<FaultCase>(UsualCases * _air.Count);
        for (FaultSetting? setting = this; setting is not null; setting = setting._alone) setting.AddCases(cases, add);
        return cases;
    }

    private void AddCases(List<FaultCase> cases, Action<FaultCases> add)
    {
        for (int condition = 0; condition < _air.Count; condition++) add(new FaultCases(this, condition, cases));
    }

    private double Greatest(Func<int, double> inCondition)
    {
        double greatest = inCondition(0);
        for (int c = 1; c < _air.Count; c++) greatest = Math.Max(greatest, inCondition(c));
        return greatest;
    }
}
