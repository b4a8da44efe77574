using CamPower.Sites;

namespace CamPower.Assessment;

/// <summary>A group of outputs with everything on in one condition, from boxes that hold their voltage.</summary>
internal sealed class GroupInCondition
{
    private readonly OutputCurrents _currents, _atRest, _ofAll;

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
    internal bool AreDemandOnly => _currents.AreDemandOnly;

    /// <summary>For each output its current with as many motors moving as may. [A]</summary>
    internal double[] Amperes => _currents.Amperes;

    /// <summary>With every motor at rest. [A]</summary>
    internal double[] AmperesAtRest => _atRest.Amperes;

    /// <summary>With every motor moving that may: more than an output carries where they take turns. [A]</summary>
    internal double[] AmperesOfAll => _ofAll.Amperes;

    private OutputCurrents With(int motorsOfAnOutput, RailVolts highest)
    {
        Load[] loads = FeedSolver.LoadsIn(Condition, Group, motorsOfAnOutput);
        return new OutputCurrents(Circuit, Lowest, highest, loads, FeedSolver.Solved(Circuit, Lowest, loads));
    }
}
