using System.Collections.Generic;
using CamPower.Sites;

namespace CamPower.Assessment;

/// <summary>The currents of one output of a group in every condition.</summary>
internal sealed class SolvedOutput(GroupInCondition[] inConditions, int place)
{
    private readonly FeedGroup _group = inConditions[0].Group;

    internal DistributionBox Box => Feed.Box;

    internal BoxOutput Output => Feed.Output;

    private OutputFeed Feed => _group.Feeds[place];

    /// <summary>The outputs of a group.</summary>
    internal static IEnumerable<SolvedOutput> AllOf(GroupInCondition[] inConditions)
    {
        for (int place = 0; place < inConditions[0].Group.Feeds.Count; place++) yield return new SolvedOutput(inConditions, place);
    }

    /// <summary>The current in a condition with everything on. [A]</summary>
    internal double AmperesIn(int condition) => inConditions[condition].Amperes[place];

    /// <summary>The transformer of its box in a condition, where that was solved as alternating current; otherwise null.</summary>
    internal AlternatingBank? BankIn(int condition) => inConditions[condition].BankOf(Box);

    /// <summary>The current in a condition with every motor at rest. [A]</summary>
    internal double AmperesAtRestIn(int condition) => inConditions[condition].AmperesAtRest[place];

    /// <summary>Whether its circuit has no operating point in a condition.</summary>
    internal bool IsDemandOnlyIn(int condition) => inConditions[condition].AreDemandOnly;

    /// <summary>Whether another output carries the same currents.</summary>
    internal bool IsLike(SolvedOutput other)
    {
        for (int c = 0; c < inConditions.Length; c++)
        {
            if (!AmperesIn(c).Equals(other.AmperesIn(c)) || !AmperesAtRestIn(c).Equals(other.AmperesAtRestIn(c))) return false;
        }

        return true;
    }

    /// <summary>The output in a box that was solved.</summary>
    internal OutputAssessment In(IReadOnlyList<BoxInCondition> box)
    {
        var solved = new OutputInCondition[box.Count];
        for (int c = 0; c < solved.Length; c++) solved[c] = new OutputInCondition(Output, box[c], AmperesIn(c), IsDemandOnlyIn(c));
        return new OutputAssessment(_group, Feed, solved);
    }
}
