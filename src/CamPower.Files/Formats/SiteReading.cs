using System.Collections.Generic;
using System.Linq;

namespace CamPower.Files.Formats;

/// <summary>The reading of one file: the errors that were found, and the parts that others refer to by name.</summary>
internal sealed class SiteReading(SourceText source, int maxDepth)
{
    private readonly List<(int Offset, string Path, string Message)> _errors = [];
    private readonly Dictionary<Cell, string> _errorsOfCells = [];
    private readonly Dictionary<object, object> _catalogs = [];

    internal SourceText Source => source;
    internal int MaxDepth => maxDepth;

    /// <summary>The errors in the order of the file, and then in that of its schedule.</summary>
    internal IReadOnlyList<SiteFileError> Errors() =>
    [
        .. _errors.OrderBy(f => f.Offset).Select(Located),
        .. _errorsOfCells.OrderBy(f => f.Key.Row).ThenBy(f => f.Key.Column).Select(f => new SiteFileError(f.Key, f.Value)),
    ];

    /// <summary>Notes an error: of a place, or of the whole file where there are no places.</summary>
    internal void Add(string message, int offset, Place? at = null)
    {
        if (at?.Cell is Cell cell) Add(message, cell);
        else _errors.Add((offset, at?.Path ?? "$", message));
    }

    /// <summary>Notes an error of a cell; the first, for others follow from it.</summary>
    internal void Add(string message, Cell cell) => _errorsOfCells.TryAdd(cell, message);

    /// <summary>The parts of one list, as far as they were read by now.</summary>
    internal Catalog<T> CatalogOf<T>(PartList<T> list) where T : class
    {
        if (!_catalogs.TryGetValue(list, out object? catalog)) _catalogs.Add(list, catalog = new Catalog<T>(list));
        return (Catalog<T>)catalog;
    }

    private SiteFileError Located((int Offset, string Path, string Message) error)
    {
        (int line, int column) = source.Locate(error.Offset);
        return new SiteFileError(error.Path, line, column, error.Message);
    }
}
