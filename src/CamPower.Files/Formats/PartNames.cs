using System;
using System.Collections.Generic;
using System.Linq;

namespace CamPower.Files.Formats;

/// <summary>The names of parts that others refer to: equal ones are written once, nameless ones are named by what they are.</summary>
internal sealed class PartNames
{
    private readonly Dictionary<object, string> _names = new(ReferenceEqualityComparer.Instance);

    internal string Of(object part) => _names[part];

    /// <summary>Names the parts of a list, and gives those to write, in the order of their first use.</summary>
    /// <exception cref="ArgumentException">Two parts that differ have the same name.</exception>
    internal IReadOnlyList<T> Add<T>(PartList<T> list, IEnumerable<T> uses)
        where T : class
    {
        foreach ((string name, T part) in list.Known) _names.TryAdd(part, name);
        var texts = new Dictionary<string, string>(StringComparer.Ordinal);
        var parts = new List<T>();
        T[] used = [.. uses.Where(part => !_names.ContainsKey(part)).Distinct((IEqualityComparer<T>)ReferenceEqualityComparer.Instance)];
        var taken = new HashSet<string>(used.Select(list.NameOf).OfType<string>(), StringComparer.Ordinal);
        foreach (T part in used)
        {
            (T named, string name, string text) = Named(list, part, taken, texts);
            if (list.Known.ContainsKey(name) || (texts.TryGetValue(name, out string? other) && other != text))
            {
                throw new ArgumentException(
                    $"Two {list.Noun}s of the site that differ are both named '{name}': a site file needs a name for each.", nameof(uses));
            }

            if (texts.TryAdd(name, text)) parts.Add(named);
            _names.Add(part, name);
        }

        return parts;
    }

    // A number makes the name of a nameless part its own.
    private (T Part, string Name, string Text) Named<T>(PartList<T> list, T part, HashSet<string> taken, Dictionary<string, string> texts)
        where T : class
    {
        if (list.NameOf(part) is string given) return (part, given, SiteWriter.Text(list.Part, part, this));
        string plain = part.ToString()!;
        for (int i = 1; ; i++)
        {
            string name = i == 1 ? plain : FormattableString.Invariant($"{plain} ({i})");
            T named = list.Rename!(part, name);
            string text = SiteWriter.Text(list.Part, named, this);
            bool isFree = !taken.Contains(name) && (!texts.TryGetValue(name, out string? other) || other == text);
            if (isFree) return (named, name, text);
        }
    }
}
