using System;
using System.Collections.Generic;
using System.Globalization;
using System.Linq;
using System.Text.Json.Nodes;

namespace SiteCheck.Tests;

/// <summary>One change to a site file, written as "place = value".</summary>
/// <remarks>
/// The place names the members on the way, with slashes between: <c>runs/office/parts/0/length = "40 ft"</c>. In a list it names the
/// entry, by its name, by where a run goes to or by which condition is given, or counts it from 0; "+" adds one. The value is JSON,
/// or the word nothing for a member that goes.
/// </remarks>
public sealed record SiteChange(IReadOnlyList<string> Place, string Value)
{
    private static readonly string[] Names = ["name", "to", "given"];

    /// <summary>Reads changes, one a line.</summary>
    public static IReadOnlyList<SiteChange> Read(string lines) =>
    [
        .. from line in lines.Split('\n', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries)
           let sides = line.Split(" = ", 2)
           select new SiteChange(sides[0].Split('/'), sides[1]),
    ];

    /// <summary>Makes the change; throws where the place is not there.</summary>
    public void ApplyTo(JsonNode site)
    {
        JsonNode parent = Place.SkipLast(1).Aggregate(site, Child);
        string last = Place[^1];
        if (parent is JsonObject members)
        {
            if (Value == "nothing" ? !members.Remove(last) : !Changed(members, last)) throw new ArgumentException($"{this} changes nothing.");
        }
        else if (last == "+") parent.AsArray().Add(JsonNode.Parse(Value));
        else parent.AsArray()[IndexOf(parent.AsArray(), last)] = JsonNode.Parse(Value);
    }

    /// <summary>The change as it was written.</summary>
    public override string ToString() => $"{string.Join('/', Place)} = {Value}";

    private bool Changed(JsonObject members, string name)
    {
        JsonNode? value = JsonNode.Parse(Value);
        if (JsonNode.DeepEquals(members[name], value)) return false;
        members[name] = value;
        return true;
    }

    private JsonNode Child(JsonNode parent, string name) => (parent is JsonArray list ? list[IndexOf(list, name)] : parent[name])
        ?? throw new ArgumentException($"{this}: there is no {name}.");

    private int IndexOf(JsonArray list, string name)
    {
        if (int.TryParse(name, CultureInfo.InvariantCulture, out int index)) return index;
        int[] found = [.. Enumerable.Range(0, list.Count).Where(i => Names.Any(n => (string?)list[i]![n] == name))];
        return found.Length == 1 ? found[0] : throw new ArgumentException($"{this}: {found.Length} are called {name}.");
    }
}
