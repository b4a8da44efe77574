using System.Collections.Generic;
using System.Linq;
using Spectre.Console;

namespace SiteCheck;

/// <summary>A table without lines: headings that are underlined, one blank between columns.</summary>
internal sealed class PlainTable
{
    private readonly Table _table = new Table().NoBorder();

    /// <param name="headings">A heading for each column.</param>
    public PlainTable(params string[] headings)
    {
        foreach (string heading in headings)
        {
            _table.AddColumn(new TableColumn(new Text(heading, new Style(decoration: Decoration.Underline))).Padding(0, 0, 1, 0));
        }
    }

    /// <summary>Keeps a column as wide as its longest cell; the others are wrapped first.</summary>
    public PlainTable Unwrapped(params int[] columns)
    {
        foreach (int column in columns) _table.Columns[column].NoWrap();
        return this;
    }

    public void Add(IEnumerable<string> cells) => _table.AddRow([.. cells.Select(cell => new Text(cell))]);

    public void WriteTo(IAnsiConsole console) => console.Write(_table);
}
