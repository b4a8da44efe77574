using System;
using System.Collections.Generic;
using CamPower.Files.Formats;

namespace CamPower.Files.Building;

/// <summary>The parts of one kind, by the names by which other parts refer to them.</summary>
internal sealed class Catalog<T>(string noun, T standIn)
{
    private readonly Dictionary<string, T> _byName = new(StringComparer.Ordinal);
    private bool _isComplete = true;

    /// <summary>Builds every entry of a list and remembers each under its name.</summary>
    internal static Catalog<T> Of<TEntry>(string noun, T standIn, IReadOnlyList<TEntry?>? entries, Place list,
        Func<TEntry, string?> nameOf, Func<TEntry, Place, T> build, params IEnumerable<(string Name, T Part)> known)
        where TEntry : class
    {
        var catalog = new Catalog<T>(noun, standIn) { _isComplete = entries is not null };
        foreach ((string name, T part) in known) catalog._byName.Add(name, part);
        for (int i = 0; i < (entries?.Count ?? 0); i++)
        {
            if (entries![i] is TEntry entry) catalog.Add(nameOf(entry), build(entry, list.Item(i)), list.Item(i).Member("name"));
            else catalog._isComplete = false;
        }

        return catalog;
    }

    /// <summary>The same of a list that may be left out: nothing is missing from it then.</summary>
    internal static Catalog<T> OfOptional<TEntry>(string noun, T standIn, IReadOnlyList<TEntry?>? entries, Place list,
        Func<TEntry, string?> nameOf, Func<TEntry, Place, T> build, params IEnumerable<(string Name, T Part)> known)
        where TEntry : class =>
        Of(noun, standIn, entries ?? (list.IsFaulty ? null : []), list, nameOf, build, known);

    /// <summary>The part of a name; where there is none, a fault and a stand-in.</summary>
    internal T Find(string? name, Place at)
    {
        if (name is null || at.IsFaulty) return standIn;
        if (_byName.TryGetValue(name, out T? part)) return part;

        // The one that is meant may be the one whose name could not be read.
        if (_isComplete) at.Fault($"there is no {noun} named {Phrase.Quoted(name)}{Phrase.DidYouMean(name, _byName.Keys)}");
        return standIn;
    }

    private void Add(string? name, T part, Place nameAt)
    {
        if (name is null || nameAt.IsFaulty) _isComplete = false;
        else if (!_byName.TryAdd(name, part)) nameAt.Fault($"the name {Phrase.Quoted(name)} is used twice");
    }
}
