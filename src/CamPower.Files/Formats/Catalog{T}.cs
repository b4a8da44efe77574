using System;
using System.Collections.Generic;

namespace CamPower.Files.Formats;

/// <summary>The parts of one list of a file, by the names by which other parts refer to them.</summary>
internal sealed class Catalog<T>(PartList<T> list)
    where T : class
{
    private readonly Dictionary<string, T> _byName = new(list.Known, StringComparer.Ordinal);
    private bool _isComplete = list.MayBeLeftOut;

    /// <summary>Remembers every part of the list under its name. The content of a list that could not be read is not known.</summary>
    internal void Fill(IReadOnlyList<T>? parts, Place at)
    {
        _isComplete = parts is not null;
        for (int i = 0; i < (parts?.Count ?? 0); i++) Add(parts![i], at.Children[i].Member("name"));
    }

    /// <summary>The part of a name; where there is none, an error and null.</summary>
    internal T? Find(string name, Place at)
    {
        if (_byName.TryGetValue(name, out T? part)) return part;

        // The one that is meant may be the one whose name could not be read.
        if (_isComplete) at.Error($"there is no {list.Noun} named {Phrase.Quoted(name)}{Phrase.DidYouMean(name, _byName.Keys)}");
        return null;
    }

    private void Add(T part, Place nameAt)
    {
        if (nameAt.IsMissing || nameAt.HasError) _isComplete = false;
        else if (!_byName.TryAdd(nameAt.Text!, part)) nameAt.Error($"the name {Phrase.Quoted(nameAt.Text!)} is used twice");
    }
}
