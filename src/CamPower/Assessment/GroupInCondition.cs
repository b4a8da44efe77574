using System.Collections.Generic;
using System.Linq;
using CamPower.Sites;

namespace CamPower.Assessment;

/// <summary>A group of outputs with everything on in one condition, from boxes that hold their voltage.</summary>
internal sealed class GroupInCondition
{
    private readonly OutputCurrents _currents, _atRest, _ofAll;
    private readonly List<AlternatingBank> _banks = [];

    internal GroupInCondition(FeedGroup group, Condition condition, AirOfBoxes air, RailVolts lowest, RailVolts highest)
    {
        Condition = condition;
        Air = air;
        Lowest = lowest;
        Circuit = FeedCircuit.Of(group, condition.At.CableCelsius, air);
        Loads = FeedSolver.LoadsIn(condition, group, condition.MotorsMoving == 0 ? 0 : int.MaxValue);
        Solved = FeedSolver.Solved(Circuit, lowest, Loads);
        _currents = _atRest = _ofAll = new OutputCurrents(Circuit, lowest, highest, Loads, Solved);
        if (!group.HasMotor || condition.MotorsMoving is not int most) return;
        _currents = With(most, highest);
        _atRest = With(0, highest);
    }

    internal Condition Condition { get; }

    /// <summary>The air in its boxes.</summary>
    internal AirOfBoxes Air { get; }

    /// <summary>Voltages that feed it, the lowest.</summary>
    internal RailVolts Lowest { get; }

    internal FeedCircuit Circuit { get; }

    internal FeedGroup Group => Circuit.Group;

    /// <summary>What each device takes, every motor moving that may.</summary>
    internal Load[] Loads { get; }

    /// <summary>What each device has, 0 without an operating point. [V]</summary>
    internal double[] Solved { get; }

    /// <summary>Whether the currents are what the loads ask for, because there is no operating point.</summary>
    internal bool AreDemandOnly => _banks.Count == 0 ? _currents.AreDemandOnly : _banks.Exists(b => b.IsDemandOnly);

    /// <summary>For each output its current with as many motors moving as may. [A]</summary>
    internal double[] Amperes => Alternating(_currents.Amperes);

    /// <summary>With every motor at rest. [A]</summary>
    internal double[] AmperesAtRest => Alternating(_atRest.Amperes);

    /// <summary>With every motor moving that may: more than an output carries where they take turns. [A]</summary>
    internal double[] AmperesOfAll => Alternating(_ofAll.Amperes);

    /// <summary>The transformer of a box, where what it feeds was solved as alternating current; otherwise null.</summary>
    internal AlternatingBank? BankOf(DistributionBox box) => _banks.Find(b => ReferenceEquals(b.Box, box));

    /// <summary>Takes what the transformer of a box feeds: the currents of its outputs are those.</summary>
    internal void Take(AlternatingBank bank) => _banks.Add(bank);

    // On alternating current every motor moves that may.
    private double[] Alternating(double[] amperes) => _banks.Count == 0
        ? amperes
        : [.. amperes.Select((a, f) => BankOf(Group.Feeds[f].Box)?.AmperesOf(Group.Feeds[f]) ?? a)];

    private OutputCurrents With(int motorsOfAnOutput, RailVolts highest)
    {
        Load[] loads = FeedSolver.LoadsIn(Condition, Group, motorsOfAnOutput);
        return new OutputCurrents(Circuit, Lowest, highest, loads, FeedSolver.Solved(Circuit, Lowest, loads));
    }
}
