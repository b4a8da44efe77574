using System;

namespace CamPower.Files;

/// <summary>What one rule found in many sites.</summary>
public sealed class FleetRule
{
    internal FleetRule(string rule) => Rule = rule;

    /// <summary>Identifier of the rule.</summary>
    public string Rule { get; }

    /// <summary>The greatest severity of its findings.</summary>
    public Severity Severity { get; private set; }

    /// <summary>How many sites it found something in.</summary>
    public long Sites { get; private set; }

    /// <summary>How many findings it made in all of them.</summary>
    public long Findings { get; private set; }

    /// <summary>The rule and its counts in one line, in the invariant culture; never throws.</summary>
    public override string ToString() => FormattableString.Invariant($"{Severity}: {Rule}: {Sites} {(Sites == 1 ? "site" : "sites")}, ")
        + FormattableString.Invariant($"{Findings} {(Findings == 1 ? "finding" : "findings")}");

    internal void Add(Severity severity, int findings)
    {
        Sites++;
        Findings += findings;
        if (severity > Severity) Severity = severity;
    }
}
