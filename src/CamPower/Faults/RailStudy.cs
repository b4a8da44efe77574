using System;
using System.Collections.Generic;
using System.Linq;
using System.Threading;
using CamPower.Assessment;
using CamPower.Sites;
using CamPower.Supplies;

namespace CamPower.Faults;

/// <summary>Voltage of the supply of a box in one condition while one output is shorted, and the state of the devices at the other
/// outputs.</summary>
/// <remarks>Every other output counts by its own way, out and back: what shared negatives carry of the faulted output too is left
/// out.</remarks>
internal sealed class RailStudy
{
    private readonly SupplyOutput _supply;
    private readonly OverloadBehavior? _overload;
    private readonly Condition _condition;
    private readonly RailLoad _load;
    private readonly RailBranch? _faulted;
    private readonly double _otherAmperes, _sourceOhms;
    private readonly Func<double, double> _given;

    /// <param name="box">The box.</param>
    /// <param name="output">The output that is shorted.</param>
    /// <param name="condition">Index of the condition.</param>
    /// <param name="cancellationToken">Cancels it.</param>
    /// <param name="isBatteryDead">Whether the supply feeds all alone, though the box has a battery.</param>
    internal RailStudy(
        BoxAssessment box, BoxOutput output, int condition, CancellationToken cancellationToken, bool isBatteryDead = false)
    {
        cancellationToken.ThrowIfCancellationRequested();
        BoxInCondition inCondition = box.InConditions[condition];
        _supply = isBatteryDead ? box.Box.Supply.Output : box.Box.RailSourceIn(inCondition.Condition.At.BoxCelsius);
        _overload = _supply.Overload;
        _sourceOhms = _supply.SourceOhms;
        _condition = inCondition.Condition;
        _given = GivenAt;
        _load = isBatteryDead ? inCondition.OutputsOnSupplyAlone : inCondition.OutputsAsItFalls;
        _faulted = Array.Find(_load.Branches, b => b.IsOf(output));
        _otherAmperes = Math.Max(0, _load.AmperesAtFull - (_faulted?.AmperesAt(_load.FullVolts, _load.FullVolts) ?? 0));
    }

    /// <summary>Whether the other outputs take anything at all.</summary>
    internal bool HasOthers => _otherAmperes > 0;

    /// <summary>The rail while a resistance behind the output's device is shorted.</summary>
    /// <param name="ohms">Resistance of device and way, cold. [Ω]</param>
    /// <param name="mostAmperes">The most that the device lets through; infinite where it limits nothing. [A]</param>
    internal SupplyDuringFault During(double ohms, double mostAmperes)
    {
        if (_overload is null) return Everybody(SupplyState.Unknown);
        if (!IsOverloadedBy(ohms, mostAmperes))
        {
            return MayDarken(ohms, mostAmperes) ? Dips(ohms, mostAmperes) : StaysUp(ohms, mostAmperes);
        }

        if (_overload.ShutsDown) return Everybody(SupplyState.Off);
        if (_overload.Pulses) return Everybody(SupplyState.Pulses);
        return RailBalance.IsKnown(_supply) ? Dips(ohms, mostAmperes) : Everybody(SupplyState.Unknown);
    }

    /// <summary>How many devices at other outputs take anything.</summary>
    internal int Others
    {
        get
        {
            int others = 0;
            foreach (RailBranch branch in _load.Branches) others += branch == _faulted ? 0 : branch.Taking.Length;
            return others;
        }
    }

    /// <summary>What the other outputs take. [A]</summary>
    internal double OtherAmperes => _otherAmperes;

    /// <summary>Whether a current asks the supply for more than its limit, beside what the other outputs take. [A]</summary>
    internal bool IsOverloadedBy(double faultAmperes) => faultAmperes + _otherAmperes > RailBalance.LimitOf(_supply);

    /// <summary>The same of a resistance behind the output's device that is shorted.</summary>
    internal bool IsOverloadedBy(double ohms, double mostAmperes) => IsOverloadedBy(Prospective(ohms, mostAmperes));

    /// <summary>Whether such a short takes the supply's voltage down: by its limit, or beyond its rating by its source
    /// resistance.</summary>
    internal bool IsTakenDownBy(double ohms, double mostAmperes) => IsOverloadedBy(ohms, mostAmperes)
        || (_sourceOhms > 0 && Prospective(ohms, mostAmperes) + _otherAmperes > _supply.RatedAmperes);

    /// <summary>What a fault is left with by an overloaded supply, in a pulse where it pulses, while the other outputs take what they can.
    /// [A]</summary>
    /// <param name="ohms">Resistance of device and way. [Ω]</param>
    /// <param name="mostAmperes">The most that the device lets through; infinite where it limits nothing. [A]</param>
    internal double FaultAmperes(double ohms, double mostAmperes)
    {
        double volts = Settled(ohms, mostAmperes);
        return volts > 0 ? Math.Min(volts / ohms, mostAmperes) : Math.Min(GivenAt(volts), mostAmperes);
    }

    private IEnumerable<RailBranch> OtherBranches => _load.Branches.Where(branch => branch != _faulted);

    private bool IsAnyStartUnknown => Array.Exists(_load.Branches, branch => branch.IsAnyStartUnknown && branch != _faulted);

    private double Prospective(double ohms, double mostAmperes) => Math.Min(_supply.HighestVolts / (_sourceOhms + ohms), mostAmperes);

    private double GivenAt(double volts) => RailBalance.GivenInFault(_supply, _supply.LowestVolts, volts);

    // Below its limit a supply loses what its resistance takes: nobody lets go while it gives enough at the first voltage at which anybody
    // would.
    private bool MayDarken(double ohms, double mostAmperes) => _sourceOhms > 0 && HasOthers && (IsAnyStartUnknown
        || _load.TakenAtFirstStep + Math.Min(_load.FirstStepVolts / ohms, mostAmperes) > GivenAt(_load.FirstStepVolts));

    private SupplyDuringFault StaysUp(double ohms, double mostAmperes) =>
        new(SupplyState.StaysUp, () => _sourceOhms > 0 ? Settled(ohms, mostAmperes) : _supply.LowestVolts, _condition, [], []);

    // Nobody has any voltage, or nobody knows.
    private SupplyDuringFault Everybody(SupplyState state)
    {
        SiteDevice[] dark = state == SupplyState.Unknown
            ? []
            : [.. OtherBranches.SelectMany(branch => branch.Taking).Select(d => d.Device)];
        return new SupplyDuringFault(state, () => 0, _condition, Array.AsReadOnly(dark), []);
    }

    private SupplyDuringFault Dips(double ohms, double mostAmperes)
    {
        double volts = Settled(ohms, mostAmperes);
        List<SiteDevice> dark = [], below = [];
        foreach ((FedDevice device, bool isOn, double has) in _load.DevicesAt(volts, _faulted))
        {
            if (!isOn) dark.Add(device.Device);
            else if (device.Starting is null && Limits.IsBelow(has, device.Accepted!.LowestVolts)) below.Add(device.Device);
        }

        SupplyState state = dark.Count + below.Count > 0 || IsOverloadedBy(ohms, mostAmperes) ? SupplyState.Dips : SupplyState.StaysUp;
        return new SupplyDuringFault(state, () => volts, _condition, dark.AsReadOnly(), below.AsReadOnly());
    }

    // Down to where the supply gives what the fault and the others take; no higher than where it gives the fault alone enough. What a
    // device limits is level from its limit up, and not convex at the knee: the two parts are looked at one after the other. 0 where the
    // fault alone is too much. [V]
    private double Settled(double ohms, double mostAmperes)
    {
        double full = _supply.LowestVolts, knee = Math.Min(full, mostAmperes * ohms);
        double above = double.IsInfinity(mostAmperes) ? 0 : Rest(full, _ => mostAmperes);
        return above >= knee && above > 0 ? above : Rest(knee, v => v / ohms);

        double Rest(double from, Func<double, double> fault)
        {
            double most = RailBalance.Between(_given, full, from, 0, fault);
            return most > 0 ? _load.Rest(most, fault, _faulted).Volts : 0;
        }
    }
}
