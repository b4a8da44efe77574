using System.Linq;
using CamPower.Sites;

namespace CamPower.Assessment;

/// <summary>A group of outputs with everything on in one condition, from boxes that hold their voltage.</summary>
internal sealed class GroupInCondition
{
    internal GroupInCondition(FeedGroup group, Condition condition, AirOfBoxes air, RailVolts lowest, RailVolts highest)
    {
        Condition = condition;
        Air = air;
        Lowest = lowest;
        Circuit = FeedCircuit.Of(group, condition.At.CableCelsius, air);
        Loads = FeedSolver.LoadsIn(condition, group, condition.MotorsMoving == 0 ? 0 : int.MaxValue);
        Solved = FeedSolver.Solved(Circuit, lowest, Loads);
        var all = new OutputCurrents(Circuit, lowest, highest, Loads, Solved);
        int? limit = group.HasMotor ? condition.MotorsMoving : null;
        OutputCurrents currents = limit is int most ? With(most) : all;
        OutputCurrents atRest = limit is null ? currents : With(0);
        AreDemandOnly = currents.AreDemandOnly;
        Amperes = Of(currents);
        AmperesAtRest = Of(atRest);
        AmperesOfAll = Of(all);

        OutputCurrents With(int motorsOfAnOutput)
        {
            Load[] loads = FeedSolver.LoadsIn(condition, group, motorsOfAnOutput);
            return new OutputCurrents(Circuit, lowest, highest, loads, FeedSolver.Solved(Circuit, lowest, loads));
        }

        double[] Of(OutputCurrents of)
        {
            int first = 0;
            var amperes = new double[group.Feeds.Count];
            for (int f = 0; f < amperes.Length; first += group.Feeds[f++].Devices.Count) amperes[f] = of.Of(group.Feeds[f], first);
            return amperes;
        }
    }

    internal Condition Condition { get; }

    /// <summary>The air in its boxes.</summary>
    internal AirOfBoxes Air { get; }

    /// <summary>What feeds it.</summary>
    internal RailVolts Lowest { get; }

    internal FeedCircuit Circuit { get; }

    internal FeedGroup Group => Circuit.Group;

    /// <summary>What each device takes, every motor moving that may.</summary>
    internal Load[] Loads { get; }

    /// <summary>What each device has, 0 without an operating point. [V]</summary>
    internal double[] Solved { get; }

    /// <summary>Whether the currents are what the loads ask for, because there is no operating point.</summary>
    internal bool AreDemandOnly { get; }

    /// <summary>For each output its current with as many motors moving as may. [A]</summary>
    internal double[] Amperes { get; }

    /// <summary>With every motor at rest. [A]</summary>
    internal double[] AmperesAtRest { get; }

    /// <summary>With every motor moving that may: more than an output carries where they take turns. [A]</summary>
    internal double[] AmperesOfAll { get; }

    /// <summary>Its outputs in every condition.</summary>
    internal static SolvedOutput[] Outputs(GroupInCondition[] inConditions) =>
        [.. inConditions[0].Group.Feeds.Select((feed, f) => new SolvedOutput(feed,
        [.. inConditions.Select(g => g.Amperes[f])], [.. inConditions.Select(g => g.AmperesAtRest[f])],
            [.. inConditions.Select(g => g.AreDemandOnly)]))];
}
