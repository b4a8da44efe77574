using System;
using System.Collections.Generic;
using System.Linq;
using CamPower.Sites;

namespace CamPower.Assessment;

/// <summary>All that a box feeds in one condition, as the voltage at its terminals falls because its supply is asked for more than its
/// limit.</summary>
/// <remarks>
/// From one voltage at which something lets go to the next, what is taken is convex: a tangent at the upper end says in most cases that
/// there is no balance between them. Those tangents are worked out once, for whatever fault is added.
/// </remarks>
internal sealed class RailLoad
{
    private const double TangentStep = 1e-4, JustAbove = 1 + 1e-9;

    private readonly Func<double, double> _given;
    private readonly Lazy<double[]> _steps;
    private readonly Lazy<double> _atFull, _atFirstStep;
    private readonly Lazy<(double At, double Below)[]> _taken;

    /// <param name="given">What the supply gives at a voltage. [A]</param>
    /// <param name="fullVolts">The voltage from which it falls. [V]</param>
    /// <param name="branches">What it feeds.</param>
    internal RailLoad(Func<double, double> given, double fullVolts, RailBranch[] branches)
    {
        _given = given;
        FullVolts = fullVolts;
        Branches = branches;
        _steps = new Lazy<double[]>(
            () => [fullVolts, .. branches.SelectMany(b => b.Steps).Where(v => v < fullVolts).Distinct().OrderByDescending(v => v), 0]);
        _atFull = new Lazy<double>(() => TakenAt(fullVolts, fullVolts));
        _atFirstStep = new Lazy<double>(() => FirstStepVolts > 0 ? TakenAt(FirstStepVolts, FirstStepVolts * JustAbove) : 0);
        _taken = new Lazy<(double, double)[]>(
            () => Array.ConvertAll(_steps.Value, v => (TakenAt(v, v), TakenAt(v * (1 - TangentStep), v))));
    }

    internal double FullVolts { get; }

    internal RailBranch[] Branches { get; }

    /// <summary>Current of all of it while the voltage stays up. [A]</summary>
    internal double AmperesAtFull => _atFull.Value;

    /// <summary>The highest voltage at which anything lets go on the way down; 0 where nothing does. [V]</summary>
    internal double FirstStepVolts => _steps.Value[1];

    /// <summary>What all of it takes there, while it is still on. [A]</summary>
    internal double TakenAtFirstStep => _atFirstStep.Value;

    /// <summary>What all of it takes at a voltage, those off that let go on the way down to another one. [A]</summary>
    internal double TakenAt(double volts, double downToVolts)
    {
        double amperes = 0;
        foreach (RailBranch branch in Branches) amperes += branch.AmperesAt(volts, downToVolts);
        return amperes;
    }

    /// <summary>The devices that take anything at first, but for those of a branch: on at a voltage on the way down, with what they have
    /// there, or off.</summary>
    internal List<(FedDevice Device, bool IsOn, double Volts)> DevicesAt(double volts, RailBranch? without)
    {
        var found = new List<(FedDevice, bool, double)>();
        foreach (RailBranch branch in Branches)
        {
            if (branch != without) branch.AddAt(volts, found);
        }

        return found;
    }

    /// <summary>Where it comes to rest on the way down.</summary>
    /// <param name="fromVolts">Where to begin: above it there is no rest. [V]</param>
    /// <param name="added">What else is taken at a voltage: convex too. [A]</param>
    /// <param name="without">The branch that takes nothing, because it is where the fault is; null for none.</param>
    internal RailRest Rest(double fromVolts, Func<double, double> added, RailBranch? without)
    {
        double[] steps = _steps.Value;
        int step = 0;
        while (step < steps.Length - 1 && steps[step + 1] >= fromVolts) step++;
        for (double from = fromVolts; step < steps.Length - 1; from = steps[++step])
        {
            double down = from, to = steps[step + 1];
            if (HasNone(step, from, to)) continue;
            double volts = RailBalance.Between(
                _given, FullVolts, from, to, v => TakenAt(v, down) - (without?.AmperesAt(v, down) ?? 0) + added(v));
            if (volts > 0) return new RailRest(volts, isBalance: true);
        }

        return default;

        bool HasNone(int at, double from, double to)
        {
            if (!steps[at].Equals(from)) return false;
            double left = from * (1 - TangentStep),
                atFrom = Missing(from, _taken.Value[at].At),
                atLeft = Missing(left, _taken.Value[at].Below);
            return atFrom > 0 && atLeft > 0 && !(left - (atLeft * (from - left) / (atFrom - atLeft)) > to && atFrom > atLeft);

            double Missing(double v, double taken) => taken - (without?.AmperesAt(v, from) ?? 0) + added(v) - _given(v);
        }
    }
}
