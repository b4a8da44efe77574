using System.Collections.Generic;
using System.Linq;

namespace CamPower.Files.Formats;

/// <summary>The reading of one file: the faults that were found, and the parts that others refer to by name.</summary>
internal sealed class SiteReading(SourceText source, int maxDepth)
{
    private readonly List<(int Offset, string Path, string Message)> _faults = [];
    private readonly Dictionary<Cell, string> _faultsOfCells = [];
    private readonly Dictionary<object, object> _catalogs = [];

    internal SourceText Source => source;
    internal int MaxDepth => maxDepth;

    /// <summary>The faults in the order of the file, and then in that of its schedule.</summary>
    internal IReadOnlyList<SiteFileError> Faults() =>
    [
        .. _faults.OrderBy(f => f.Offset).Select(Located),
        .. _faultsOfCells.OrderBy(f => f.Key.Row).ThenBy(f => f.Key.Column).Select(f => new SiteFileError(f.Key, f.Value)),
    ];

    /// <summary>Notes a fault: of a place, or of the whole file where there are no places.</summary>
    internal void Add(string message, int offset, Place? at = null)
    {
        if (at?.Cell is Cell cell) Add(message, cell);
        else _faults.Add((offset, at?.Path ?? "$", message));
    }

    /// <summary>Notes a fault of a cell; the first, for others follow from it.</summary>
    internal void Add(string message, Cell cell) => _faultsOfCells.TryAdd(cell, message);

    /// <summary>The parts of one list, as far as they were read by now.</summary>
    internal Catalog<T> CatalogOf<T>(PartList<T> list) where T : class
    {
        if (!_catalogs.TryGetValue(list, out object? catalog)) _catalogs.Add(list, catalog = new Catalog<T>(list));
        return (Catalog<T>)catalog;
    }

    private SiteFileError Located((int Offset, string Path, string Message) fault)
    {
        (int line, int column) = source.Locate(fault.Offset);
        return new SiteFileError(fault.Path, line, column, fault.Message);
    }
}
