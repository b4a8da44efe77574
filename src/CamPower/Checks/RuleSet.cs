using System;
using System.Collections.Generic;
using System.Linq;
using System.Threading;
using CamPower.Checks;

namespace CamPower;

/// <summary>A set of rules that a site is checked against.</summary>
/// <remarks>Immutable: <see cref="With"/> and <see cref="Without"/> return another set.</remarks>
/// <example>
/// <code>
/// RuleSet mine = RuleSet.Standard
///     .Without("copper-clad-aluminum")
///     .With(Rules.SupplyAboveHeadroomPolicy(Ratio.FromPercent(70)));
/// IReadOnlyList&lt;Finding&gt; findings = mine.Check(site.Assess());
/// </code>
/// </example>
public sealed class RuleSet
{
    private readonly IReadOnlyList<Rule> _speakersFirst;

    /// <summary>Makes a set.</summary>
    /// <param name="rules">The rules, no identifier twice.</param>
    /// <exception cref="ArgumentNullException"><paramref name="rules"/> or one of them is null.</exception>
    /// <exception cref="ArgumentException">An identifier is used twice, or some rules replace each other.</exception>
    public RuleSet(IEnumerable<Rule> rules)
    {
        Rules = Require.Items(rules, nameof(rules));
        if (Identifier.FirstRepeated(Rules.Select(r => r.Id)) is string repeated)
        {
            throw new ArgumentException($"The rule {repeated} is in the set twice.", nameof(rules));
        }

        _speakersFirst = StandingBack.SpeakersFirst(Rules)
            ?? throw new ArgumentException("Some rules replace each other, so that none of them would give a finding.", nameof(rules));
    }

    /// <summary>All rules of this package (<see cref="CamPower.Rules"/>), with their default limits.</summary>
    public static RuleSet Standard { get; } = new(CamPower.Rules.Standard());

    /// <summary>The rules, in the order in which they are asked.</summary>
    public IReadOnlyList<Rule> Rules { get; }

    /// <summary>Returns a set with one more rule; a rule of the same identifier is replaced in its place.</summary>
    /// <param name="rule">The rule.</param>
    /// <exception cref="ArgumentNullException"><paramref name="rule"/> is null.</exception>
    public RuleSet With(Rule rule)
    {
        Require.NotNull(rule, nameof(rule));
        return Holds(rule.Id)
            ? new RuleSet(Rules.Select(r => string.Equals(r.Id, rule.Id, StringComparison.Ordinal) ? rule : r))
            : new RuleSet([.. Rules, rule]);
    }

    /// <summary>Returns a set without a rule.</summary>
    /// <param name="id">Identifier of the rule.</param>
    /// <exception cref="ArgumentNullException"><paramref name="id"/> is null.</exception>
    /// <exception cref="ArgumentException">The set has no such rule.</exception>
    public RuleSet Without(string id)
    {
        Require.NotNull(id, nameof(id));
        if (!Holds(id)) throw new ArgumentException($"There is no rule {id} in this set.", nameof(id));
        return new RuleSet(Rules.Where(r => !string.Equals(r.Id, id, StringComparison.Ordinal)));
    }

    /// <summary>Checks a solved site: all findings of the rules, worst first, and of one severity in the order of the rules.</summary>
    /// <remarks>A rule gives no finding where another rule of the set replaces it (<see cref="Rule.YieldsTo"/>,
    /// <see cref="Rule.YieldsInConditionsOf"/>).</remarks>
    /// <param name="assessment">The solved site.</param>
    /// <param name="cancellationToken">Cancels the check between two findings, and the study of faults at any time.</param>
    /// <exception cref="ArgumentNullException"><paramref name="assessment"/> is null.</exception>
    /// <exception cref="OperationCanceledException"><paramref name="cancellationToken"/> was canceled.</exception>
    public IReadOnlyList<Finding> Check(SiteAssessment assessment, CancellationToken cancellationToken = default) =>
        Check(new Evidence(assessment, cancellationToken));

    /// <summary>Checks evidence: all findings of the rules, worst first, and of one severity in the order of the rules.</summary>
    /// <param name="evidence">The solved site and the studies of it.</param>
    /// <exception cref="ArgumentNullException"><paramref name="evidence"/> is null.</exception>
    /// <exception cref="OperationCanceledException">The cancellation token of <paramref name="evidence"/> was canceled.</exception>
    public IReadOnlyList<Finding> Check(Evidence evidence)
    {
        Require.NotNull(evidence, nameof(evidence));
        var standing = new StandingBack();
        var heard = new Dictionary<Rule, List<Finding>>();
        foreach (Rule rule in _speakersFirst) heard.Add(rule, [.. standing.Heard(rule, Cancellable(rule.Check(evidence), evidence))]);
        return Rules.SelectMany(rule => heard[rule]).OrderByDescending(f => f.Severity).ToList().AsReadOnly();
    }

    /// <summary>The identifiers of the rules; never throws.</summary>
    public override string ToString() => string.Join(", ", Rules);

    private static IEnumerable<Finding> Cancellable(IEnumerable<Finding> found, Evidence evidence)
    {
        foreach (Finding finding in found)
        {
            evidence.CancellationToken.ThrowIfCancellationRequested();
            yield return finding;
        }
    }

    private bool Holds(string id) => Rules.Any(r => string.Equals(r.Id, id, StringComparison.Ordinal));
}
