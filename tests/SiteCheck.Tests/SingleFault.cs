using System;
using System.Collections.Generic;
using System.Linq;
using System.Text.Json.Nodes;

namespace SiteCheck.Tests;

/// <summary>The boatyard as designed with one thing wrong, and what that must add to its findings and take from them.</summary>
public sealed record SingleFault(string What, string Changes, params string[] Found)
{
    /// <summary>Findings of the yard as designed that the fault takes away: another finding speaks now, or the cause is gone.</summary>
    public IReadOnlyList<string> Gone { get; init; } = [];

    /// <summary>The rules that speak now.</summary>
    public IEnumerable<string> Rules => Found.Select(f => f.Split(": ")[0]);

    /// <summary>The site file with the fault in it.</summary>
    public string In(string site)
    {
        JsonNode changed = JsonNode.Parse(site)!;
        foreach (SiteChange change in SiteChange.Read(Changes)) change.ApplyTo(changed);
        return changed.ToJsonString();
    }

    /// <summary>What is wrong.</summary>
    public override string ToString() => What;
}
