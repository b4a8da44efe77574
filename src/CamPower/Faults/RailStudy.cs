using System;
using System.Linq;
using System.Threading;
using CamPower.Assessment;
using CamPower.Supplies;

namespace CamPower.Faults;

/// <summary>What the supply of a box does in one condition while an output of it is shorted, and what that does to what the others feed.</summary>
/// <remarks>Every other output counts by its own way, out and back: what shared negatives carry of the faulted output too is left out.</remarks>
internal sealed class RailStudy
{
    private readonly SupplyOutput _supply;
    private readonly OverloadBehaviour? _overload;
    private readonly Condition _condition;
    private readonly RailLoad _load;
    private readonly RailBranch? _faulted;
    private readonly DeviceInCondition[] _up;
    private readonly double _otherAmperes;

    /// <summary>The study in the condition in which the other outputs take most.</summary>
    internal RailStudy(SiteAssessment assessment, BoxAssessment box, BoxOutput output, CancellationToken cancellationToken)
        : this(assessment, box, output, WorstFor(box, output), cancellationToken)
    {
    }

    /// <param name="assessment">The solved site.</param>
    /// <param name="box">The box.</param>
    /// <param name="output">The output that is shorted.</param>
    /// <param name="condition">Index of the condition.</param>
    /// <param name="cancellationToken">Breaks it off.</param>
    internal RailStudy(SiteAssessment assessment, BoxAssessment box, BoxOutput output, int condition, CancellationToken cancellationToken)
    {
        cancellationToken.ThrowIfCancellationRequested();
        BoxInCondition inCondition = box.InConditions[condition];
        _supply = box.Box.Supply.Output;
        _overload = _supply.Overload;
        _condition = inCondition.Condition;
        _load = inCondition.OutputsAsItFalls;
        _faulted = _load.Branches.FirstOrDefault(b => b.IsOf(output));
        _up = [.. assessment.Devices.Where(d => ReferenceEquals(d.Box, box.Box) && d.Output != output).Select(d => d.InConditions[condition]).Where(d => d.State == DeviceState.Up)];
        _otherAmperes = _up.Sum(d => d.AmperesDrawn);
    }

    /// <summary>Whether the other outputs take anything at all.</summary>
    internal bool HasOthers => _otherAmperes > 0;

    /// <summary>The rail while a resistance behind the output's device is shorted.</summary>
    /// <param name="ohms">Resistance of device and way, cold. [Ω]</param>
    /// <param name="mostAmperes">The most that the device lets through; infinite where it limits nothing. [A]</param>
    internal RailDuringFault During(double ohms, double mostAmperes)
    {
        if (_overload is null) return Everybody(RailState.Unknown, []);
        if (!IsOverloadedBy(Math.Min(_supply.HighestVolts / ohms, mostAmperes))) return StaysUp();
        if (_overload.ShutsDown) return Everybody(RailState.Off, _up);
        if (_overload.Pulses) return Everybody(RailState.Pulses, _up);
        return RailBalance.IsKnown(_supply) ? Dragged(ohms, mostAmperes) : Everybody(RailState.Unknown, []);
    }

    /// <summary>Whether a fault takes the supply's voltage down, beside what the other outputs take. [A]</summary>
    internal bool IsOverloadedBy(double faultAmperes) => faultAmperes + _otherAmperes > RailBalance.LimitOf(_supply);

    /// <summary>What a fault is left with by an overloaded supply, in a pulse where it pulses, while the other outputs take what they can. [A]</summary>
    /// <param name="ohms">Resistance of device and way. [Ω]</param>
    /// <param name="mostAmperes">The most that the device lets through; infinite where it limits nothing. [A]</param>
    internal double FaultAmperes(double ohms, double mostAmperes)
    {
        double volts = Settled(ohms, mostAmperes);
        return volts > 0 ? Math.Min(volts / ohms, mostAmperes) : Math.Min(RailBalance.GivenAt(_supply, _supply.LowestVolts, volts), mostAmperes);
    }

    private static int WorstFor(BoxAssessment box, BoxOutput output) => Enumerable.Range(0, box.InConditions.Count)
        .OrderByDescending(c => box.Outputs.Where(o => o.Output != output).Sum(o => o.InConditions[c].Amperes)).First();

    private RailDuringFault StaysUp() => new(RailState.StaysUp, _supply.LowestVolts, _condition, [], []);

    private RailDuringFault Everybody(RailState state, DeviceInCondition[] dark) =>
        new(state, 0, _condition, Array.AsReadOnly(Array.ConvertAll(dark, d => d.Device)), []);

    private RailDuringFault Dragged(double ohms, double mostAmperes)
    {
        double volts = Settled(ohms, mostAmperes);
        var on = _load.Branches.Where(b => b != _faulted).SelectMany(b => b.OnAt(volts)).ToDictionary(d => d.Device.Device, d => d.Volts);
        SiteDevice[] dark = [.. _up.Select(d => d.Device).Where(d => !on.ContainsKey(d))];
        SiteDevice[] below = [.. _up.Where(d => d.Device.Model.Starting is null && on.TryGetValue(d.Device, out double has) && Limits.IsBelow(has, d.Accepted!.LowestVolts)).Select(d => d.Device)];
        return new RailDuringFault(RailState.Dragged, volts, _condition, Array.AsReadOnly(dark), Array.AsReadOnly(below));
    }

    // Down to where the supply gives what the fault and the others take; no higher than where it gives the fault alone enough. What a device limits is
    // level from its limit up, and not convex at the knee: the two parts are looked at one after the other. 0 where the fault alone is too much. [V]
    private double Settled(double ohms, double mostAmperes)
    {
        double full = _supply.LowestVolts, knee = Math.Min(full, mostAmperes * ohms);
        double above = knee < full ? Rest(full, _ => mostAmperes) : 0;
        return above >= knee && above > 0 ? above : ohms > 0 ? Rest(knee, v => v / ohms) : 0;

        double Rest(double from, Func<double, double> fault)
        {
            double most = RailBalance.Between(_supply, full, from, 0, fault);
            return most > 0 ? _load.Rest(most, fault, _faulted).Volts : 0;
        }
    }
}
