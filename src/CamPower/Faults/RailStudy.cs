using System;
using System.Collections.Generic;
using System.Linq;
using System.Threading;
using CamPower.Supplies;
using UnitsNet;

namespace CamPower.Faults;

/// <summary>What the supply of a box does while an output of it is shorted, and what that does to what the others feed.</summary>
internal sealed class RailStudy
{
    private const double LeastVolts = 1e-6;
    private const int CoarseSteps = 20, Halvings = 30;

    private readonly SupplyOutput _supply;
    private readonly OverloadBehaviour? _overload;
    private readonly DistributionBox _box;
    private readonly Condition _condition;
    private readonly Lazy<Site>? _others;
    private readonly DeviceInCondition[] _up;
    private readonly double _otherAmperes;
    private readonly CancellationToken _cancellationToken;

    /// <param name="assessment">The solved site.</param>
    /// <param name="box">The box.</param>
    /// <param name="output">The output that is shorted.</param>
    /// <param name="cancellationToken">Breaks it off.</param>
    internal RailStudy(SiteAssessment assessment, BoxAssessment box, BoxOutput output, CancellationToken cancellationToken)
    {
        _cancellationToken = cancellationToken;
        _box = box.Box;
        _supply = _box.Supply.Output;
        _overload = _supply.Overload;
        OutputAssessment[] others = [.. box.Outputs.Where(o => o.Output != output)];
        int worst = Enumerable.Range(0, assessment.Site.Conditions.Count).OrderByDescending(c => others.Sum(o => o.InConditions[c].Amperes)).First();
        _condition = assessment.Site.Conditions[worst];
        DeviceAssessment[] fed = [.. assessment.Devices.Where(d => d.Box == _box && d.Output != output)];
        _up = [.. fed.Select(d => d.InConditions[worst]).Where(d => d.State == DeviceState.Up)];
        _otherAmperes = _up.Sum(d => d.AmperesDrawn);
        _others = fed.Length == 0 ? null : new Lazy<Site>(() => OnlyOf(assessment.Site, fed));
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
        if (_overload.Limit is null && _supply.SourceResistance is null) return Everybody(RailState.Unknown, []);
        return At(RailState.Dragged, Balanced(volts => Math.Min(volts / ohms, mostAmperes)));
    }

    /// <summary>Whether a fault takes the supply's voltage down, beside what the other outputs take. [A]</summary>
    internal bool IsOverloadedBy(double faultAmperes) => faultAmperes + _otherAmperes > (_overload?.Limit is null ? _supply.RatedAmperes : _overload.LimitAmperes);

    /// <summary>What a fault is left with by an overloaded supply, in a pulse where it pulses, while the other outputs take what they can. [A]</summary>
    /// <param name="ohms">Resistance of device and way. [Ω]</param>
    /// <param name="mostAmperes">The most that the device lets through; infinite where it limits nothing. [A]</param>
    internal double FaultAmperes(double ohms, double mostAmperes)
    {
        double volts = Balanced(v => Math.Min(v / ohms, mostAmperes));
        return volts > LeastVolts ? Math.Min(volts / ohms, mostAmperes) : Math.Min(GivenAt(volts), mostAmperes);
    }

    private RailDuringFault StaysUp() => new(RailState.StaysUp, _supply.LowestVolts, _condition, [], []);

    private RailDuringFault Everybody(RailState state, DeviceInCondition[] dark) =>
        new(state, 0, _condition, Array.AsReadOnly(Array.ConvertAll(dark, d => d.Device)), []);

    private RailDuringFault At(RailState state, double volts)
    {
        var dark = new List<SiteDevice>();
        var below = new List<SiteDevice>();
        if (_others is not null)
        {
            DeviceAssessment[] now = [.. OthersAt(volts).Devices];
            foreach (DeviceInCondition before in _up)
            {
                DeviceInCondition during = now.Single(d => string.Equals(d.Device.Name, before.Device.Name, StringComparison.Ordinal)).Worst;
                if (during.State != DeviceState.Up) dark.Add(before.Device);
                else if (before.Device.Model.Starting is null && during.MarginVolts < 0) below.Add(before.Device);
            }
        }

        return new RailDuringFault(state, volts, _condition, dark.AsReadOnly(), below.AsReadOnly());
    }

    // From the full voltage down, the first at which the supply gives what the fault and the others take; then close to it.
    private double Balanced(Func<double, double> fault)
    {
        double above = _supply.LowestVolts, below = above;
        for (int step = 1; step <= CoarseSteps && !IsEnough(below); step++)
        {
            above = below;
            below = _supply.LowestVolts * (CoarseSteps - step) / CoarseSteps;
        }

        for (int halving = 0; halving < Halvings && above > below; halving++)
        {
            double middle = (above + below) / 2;
            if (IsEnough(middle)) below = middle;
            else above = middle;
        }

        return below;

        bool IsEnough(double volts) => (volts > LeastVolts ? fault(volts) + OtherAmperesAt(volts) : 0) <= GivenAt(volts);
    }

    // Without a limit it gives what its source resistance lets through.
    private double GivenAt(double volts) => _overload?.Limit is null && _supply.SourceResistance is ElectricResistance source
        ? (_supply.LowestVolts - volts) / source.Ohms
        : _overload!.AmperesAt(volts / _supply.LowestVolts);

    private double OtherAmperesAt(double volts) => _others is null ? 0 : OthersAt(volts).Devices.Sum(d => d.Worst.AmperesDrawn);

    private SiteAssessment OthersAt(double volts) =>
        _others!.Value.With(_box.With(_box.Supply.Giving(Math.Max(volts, LeastVolts) / (1 - _supply.Tolerance.DecimalFractions)))).Assess(_cancellationToken);

    // What the other outputs feed, in the one condition. Shields are left out: they carry return current of the faulted output too.
    private Site OnlyOf(Site site, DeviceAssessment[] fed)
    {
        var ways = new HashSet<SiteRun>(fed.SelectMany(d => d.Path));
        return site.With([_condition], [_box], ways.Select(run => run.WithOwnReturn()), fed.Select(d => d.Device), videoLinks: [], bonds: [], ties: []);
    }
}
