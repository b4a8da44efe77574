using System;
using System.Collections.Generic;
using System.Linq;
using System.Text.Json.Nodes;

namespace SiteCheck.Tests;

/// <summary>The boatyard as designed, which has no findings, with one thing wrong, and the findings that it must then have.</summary>
public sealed record SingleFault(string What, string Changes, params string[] Found)
{
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
