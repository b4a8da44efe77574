using System;
using System.Collections.Generic;

namespace CamPower.Circuits;

/// <summary>Names in the order in which they came, each once, and the index of each.</summary>
internal sealed class NetworkNames
{
    private readonly string _kind;
    private readonly List<string> _names;
    private readonly Dictionary<string, int> _indexOf;

    internal NetworkNames(string kind, IReadOnlyCollection<string>? names = null)
    {
        _kind = kind;
        _names = new List<string>(names?.Count ?? 0);
        _indexOf = new Dictionary<string, int>(names?.Count ?? 0, StringComparer.Ordinal);
        foreach (string name in names ?? []) Take(name);
    }

    private NetworkNames(NetworkNames other)
    {
        _kind = other._kind;
        _names = [.. other._names];
        _indexOf = new Dictionary<string, int>(other._indexOf, StringComparer.Ordinal);
    }

    internal int Count => _names.Count;

    internal IReadOnlyList<string> All => _names.AsReadOnly();

    internal string this[int index] => _names[index];

    internal bool Contains(string name) => _indexOf.ContainsKey(name);

    internal bool TryIndexOf(string name, out int index) => _indexOf.TryGetValue(name, out index);

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
    internal int IndexOf(string name, string parameter) => _indexOf.TryGetValue(Require.Name(name, parameter), out int index)
        ? index
        : throw new ArgumentException($"The network has no {_kind} '{name}'.", parameter);

    /// <summary>A copy that later names do not change.</summary>
    internal NetworkNames Copy() => new(this);
}
