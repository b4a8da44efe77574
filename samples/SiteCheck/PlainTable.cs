using System;
using System.Collections.Generic;
using System.Linq;

namespace SiteCheck;

/// <summary>A table without lines, one blank between columns. It fits a width by leaving out columns that may go, then by wrapping the widest.</summary>
internal sealed class PlainTable(params string[] headings)
{
    private const int Gap = 1;

    private readonly List<string[]> _rows = [headings];

    public void Add(params string[] cells) => _rows.Add(cells);

    /// <param name="page">Where it goes.</param>
    /// <param name="mayGo">Headings of the columns that may be left out, the first one first.</param>
    public void WriteTo(Page page, params IEnumerable<string> mayGo)
    {
        List<int> columns = [.. Enumerable.Range(0, headings.Length).Where(column => _rows.Skip(1).Any(row => row[column].Length > 0))];
        foreach (string heading in mayGo.TakeWhile(_ => !Fits(columns, page.Width))) columns.Remove(Array.IndexOf(headings, heading));
        int[] widths = [.. columns.Select(WidthOf)];
        while (TotalOf(widths) > page.Width && widths.Max() > 1) widths[Array.IndexOf(widths, widths.Max())]--;
        foreach (string[] row in _rows) Write(page, [.. columns.Select(column => row[column])], widths);
    }

    private static int TotalOf(int[] widths) => widths.Sum() + (Gap * (widths.Length - 1));

    private static void Write(Page page, string[] cells, int[] widths)
    {
        List<string>[] wrapped = [.. cells.Select((cell, i) => Page.Wrapped(cell, widths[i]).ToList())];
        for (int line = 0; line < wrapped.Max(cell => cell.Count); line++)
        {
            page.Line(string.Join(new string(' ', Gap), wrapped.Select((cell, i) => (line < cell.Count ? cell[line] : "").PadRight(widths[i]))).TrimEnd());
        }
    }

    private bool Fits(IReadOnlyCollection<int> columns, int width) => TotalOf([.. columns.Select(WidthOf)]) <= width;

    private int WidthOf(int column) => _rows.Max(row => row[column].Length);
}
