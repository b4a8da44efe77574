using System;
using System.Collections.Generic;

namespace CamPower.Circuits;

/// <summary>Names in the order in which they came, each once, and the index of each.</summary>
internal sealed class NetworkNames
{
    private readonly string _kind;
    private readonly List<string> _names;
    private readonly Dictionary<string, int> _indexOf;

    internal NetworkNames(string kind, IEnumerable<string>? names = null)
    {
        _kind = kind;
        _names = [];
        _indexOf = new Dictionary<string, int>(StringComparer.Ordinal);
        foreach (string name in names ?? []) Take(name);
    }

    internal int Count => _names.Count;

    internal IReadOnlyList<string> All => _names.AsReadOnly();

    internal string this[int index] => _names[index];

    /// <summary>Notes a name; false where it was there already.</summary>
    internal bool Take(string name)
    {
        if (_indexOf.ContainsKey(name)) return false;
        _indexOf.Add(name, _names.Count);
        _names.Add(name);
        return true;
    }

    /// <summary>The index of a name.</summary>
    /// <exception cref="ArgumentException">The name is unknown.</exception>
    internal int IndexOf(string name, string? namedBy = null)
    {
        if (_indexOf.TryGetValue(Require.Name(name, nameof(name)), out int index)) return index;
        string by = namedBy is null ? string.Empty : $", which {namedBy} names";
        throw new ArgumentException($"The network has no {_kind} '{name}'{by}.", nameof(name));
    }

    /// <summary>A copy that later names do not change.</summary>
    internal NetworkNames Freeze() => new(_kind, _names);
}
