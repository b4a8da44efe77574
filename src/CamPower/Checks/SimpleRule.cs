using System;
using System.Collections.Generic;
using UnitsNet;

namespace CamPower.Checks;

/// <summary>A rule that is stated by its words and a function.</summary>
/// <remarks>A rule whose check needs functions of its own is a class on <see cref="Rule"/> instead.</remarks>
internal sealed class SimpleRule(string id, string? title, Severity severity, string purpose, string remedy, Citation source,
    Func<Rule, Evidence, IEnumerable<Finding>> check, IQuantity? limit = null, bool isAboutWhatIsNotStated = false,
    IReadOnlyList<string>? yieldsTo = null, IReadOnlyList<string>? yieldsInConditionsOf = null)
    : Rule(id, severity, purpose, remedy, source, title)
{
    /// <summary>One whose identifier, in words, is what its findings are called.</summary>
    internal SimpleRule(string id, Severity severity, string purpose, string remedy, Citation source,
        Func<Rule, Evidence, IEnumerable<Finding>> check, IQuantity? limit = null, bool isAboutWhatIsNotStated = false,
        IReadOnlyList<string>? yieldsTo = null, IReadOnlyList<string>? yieldsInConditionsOf = null)
        : this(id, title: null, severity, purpose, remedy, source, check, limit, isAboutWhatIsNotStated, yieldsTo, yieldsInConditionsOf)
    {
    }

    public override IQuantity? Limit { get; } = limit;

    public override bool IsAboutWhatIsNotStated { get; } = isAboutWhatIsNotStated;

    public override IReadOnlyList<string> YieldsTo { get; } = yieldsTo ?? [];

    public override IReadOnlyList<string> YieldsInConditionsOf { get; } = yieldsInConditionsOf ?? [];

    public override IEnumerable<Finding> Check(Evidence evidence) => check(this, Require.NotNull(evidence, nameof(evidence)));
}
