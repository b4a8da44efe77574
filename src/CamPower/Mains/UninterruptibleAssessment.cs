using System;
using System.Collections.Generic;
using System.Linq;

namespace CamPower.Mains;

/// <summary>An uninterruptible supply in every condition.</summary>
/// <remarks>Immutable. A stepped output voltage may stop supplies with active power factor correction: that no number here shows.</remarks>
/// <example>
/// <code>
/// foreach (UninterruptibleAssessment standby in site.Assess().StudyUninterruptible()) Console.WriteLine(standby);
/// </code>
/// </example>
public sealed class UninterruptibleAssessment
{
    private UninterruptibleAssessment(UninterruptibleSupply supply, IReadOnlyList<UninterruptibleInCondition> inConditions)
    {
        Supply = supply;
        InConditions = inConditions;
        Worst = inConditions.Aggregate((worst, other) => other.KnownWatts > worst.KnownWatts ? other : worst);
    }

    /// <summary>The uninterruptible supply.</summary>
    public UninterruptibleSupply Supply { get; }

    /// <summary>It in each condition, in the site's order.</summary>
    public IReadOnlyList<UninterruptibleInCondition> InConditions { get; }

    /// <summary>The condition of the largest known power.</summary>
    public UninterruptibleInCondition Worst { get; }

    /// <summary>Every uninterruptible supply of a site, in the order of the boxes.</summary>
    internal static IReadOnlyList<UninterruptibleAssessment> Of(IReadOnlyList<ReceptacleAssessment> receptacles) => Array.AsReadOnly(
        [.. receptacles.Where(r => r.Receptacle.Uninterruptible is not null).GroupBy(r => r.Receptacle.Uninterruptible!)
            .Select(fed => new UninterruptibleAssessment(fed.Key, Array.AsReadOnly([.. Enumerable.Range(0, fed.First().InConditions.Count)
                .Select(c => new UninterruptibleInCondition(fed.Key, fed.First().InConditions[c].Condition, fed.First().Receptacle.Volts,
                    Array.AsReadOnly([.. fed.SelectMany(r => r.InConditions[c].Draws)])))])))]);

    /// <summary>The supply and its worst condition in the invariant culture; never throws.</summary>
    public override string ToString() => $"{Supply}: {Worst}";
}
