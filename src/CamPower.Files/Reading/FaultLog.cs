using System;
using System.Collections.Generic;
using System.Linq;

namespace CamPower.Files.Reading;

/// <summary>The faults of a file as they are found, and where in the file each path lies.</summary>
internal sealed class FaultLog(SourceText source)
{
    private readonly Dictionary<string, int> _offsets = new(StringComparer.Ordinal);
    private readonly HashSet<string> _faulty = new(StringComparer.Ordinal);
    private readonly List<(int Offset, JsonPath Path, string Message)> _faults = [];

    /// <summary>The faults in the order of the file.</summary>
    internal IReadOnlyList<SiteFileFault> InOrder() => _faults.OrderBy(f => f.Offset).Select(Located).ToList().AsReadOnly();

    internal bool IsEmpty => _faults.Count == 0;

    /// <summary>Remembers where a value begins.</summary>
    internal void Place(JsonPath path, int offset) => _offsets.TryAdd(path.Text, offset);

    /// <summary>Notes a fault at a path, or at an offset of its own.</summary>
    internal void Add(JsonPath path, string message, int? offset = null)
    {
        _faults.Add((offset ?? OffsetOf(path), path, message));
        for (JsonPath? at = path; at is not null && _faulty.Add(at.Text); at = at.Parent)
        {
            // Whatever holds a fault is faulty.
        }
    }

    /// <summary>Whether there is a fault at a path or inside it.</summary>
    internal bool Has(JsonPath path) => _faulty.Contains(path.Text);

    // What is missing lies where the object lies that lacks it.
    private int OffsetOf(JsonPath path)
    {
        JsonPath? at = path;
        while (at is not null && !_offsets.ContainsKey(at.Text)) at = at.Parent;
        return at is null ? 0 : _offsets[at.Text];
    }

    private SiteFileFault Located((int Offset, JsonPath Path, string Message) fault)
    {
        (int line, int column) = source.Locate(fault.Offset);
        return new SiteFileFault(fault.Path.Text, line, column, fault.Message);
    }
}
