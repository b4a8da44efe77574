using System;
using System.Collections.Generic;
using System.Linq;

namespace CamPower.Files.Writing;

/// <summary>The parts that others refer to by name: equal ones are written once, nameless ones are named by what they are.</summary>
internal sealed class NamedEntries<TPart, TEntry>
    where TPart : class
    where TEntry : class
{
    private readonly Func<TPart, string, TEntry> _entryOf;
    private readonly Dictionary<TPart, string> _names = new(ReferenceEqualityComparer.Instance);
    private readonly Dictionary<string, string> _texts = new(StringComparer.Ordinal);
    private readonly HashSet<string> _taken;
    private readonly List<TEntry> _entries = [];

    /// <summary>Names the parts, in the order of their first use.</summary>
    /// <exception cref="ArgumentException">Two parts that differ have the same name.</exception>
    internal NamedEntries(string noun, IEnumerable<TPart> uses, Func<TPart, string?> givenName, Func<TPart, string, TEntry> entryOf)
    {
        _entryOf = entryOf;
        TPart[] parts = [.. uses.Distinct((IEqualityComparer<TPart>)ReferenceEqualityComparer.Instance)];
        _taken = new HashSet<string>(parts.Select(givenName).OfType<string>(), StringComparer.Ordinal);
        foreach (TPart part in parts)
        {
            string name = givenName(part) ?? FreeName(part);
            if (!TryAdd(part, name)) throw new ArgumentException($"Two {noun} of the site that differ are both named '{name}': a site file needs a name for each.", noun);
        }
    }

    internal IReadOnlyList<TEntry> Entries => _entries;

    internal string NameOf(TPart part) => _names[part];

    // False where the name is that of another part.
    private bool TryAdd(TPart part, string name)
    {
        TEntry entry = _entryOf(part, name);
        string text = EntryWriter.Text(entry);
        if (_texts.TryAdd(name, text)) _entries.Add(entry);
        else if (!string.Equals(_texts[name], text, StringComparison.Ordinal)) return false;
        _names.Add(part, name);
        return true;
    }

    private string FreeName(TPart part)
    {
        string plain = part.ToString()!;
        string name = plain;
        for (int i = 2; _taken.Contains(name) || IsAnother(part, name); i++) name = FormattableString.Invariant($"{plain} ({i})");
        return name;
    }

    private bool IsAnother(TPart part, string name) =>
        _texts.TryGetValue(name, out string? text) && !string.Equals(text, EntryWriter.Text(_entryOf(part, name)), StringComparison.Ordinal);
}
