using System;

namespace CamPower.Circuits;

/// <summary>Which entries of a sparse symmetric matrix and of its factor are not zero: the analysis that serves every
/// factorisation.</summary>
/// <remarks>
/// Immutable. Nodes are renumbered by <see cref="MinimumDegree"/>; the factor's columns and the order in which its
/// rows are worked out follow from the elimination tree, after Davis, "Algorithm 849: a concise sparse Cholesky
/// factorization package", ACM Trans. Math. Softw. 31 (2005).
/// </remarks>
internal sealed class SparsePattern
{
    /// <summary>Analyses a matrix whose off-diagonal entries are the pairs; a pair may come more than once and either way round.</summary>
    internal SparsePattern(int count, int[] first, int[] second)
    {
        Count = count;
        int[] order = OrderOf(count, first, second);
        PlaceOf = new int[count];
        for (int k = 0; k < count; k++) PlaceOf[order[k]] = k;
        EntryOf = new int[first.Length];
        ColumnStart = Columns(first, second, out int[] rows);
        Rows = rows;
        AnalyseFactor();
    }

    /// <summary>Number of unknowns.</summary>
    internal int Count { get; }

    /// <summary>The place of each unknown in the order of elimination.</summary>
    internal int[] PlaceOf { get; }

    /// <summary>Of each pair given, the index of its entry above the diagonal.</summary>
    internal int[] EntryOf { get; }

    /// <summary>Where the entries above the diagonal of each column start.</summary>
    internal int[] ColumnStart { get; }

    /// <summary>The row of each entry above the diagonal.</summary>
    internal int[] Rows { get; }

    /// <summary>Where the entries of each column of the factor start.</summary>
    internal int[] FactorStart { get; private set; } = [];

    /// <summary>The row of each entry of the factor, column by column.</summary>
    internal int[] FactorRows { get; private set; } = [];

    /// <summary>Where the columns of each row of the factor start in <see cref="RowColumns"/>.</summary>
    internal int[] RowStart { get; private set; } = [];

    /// <summary>The columns of each row of the factor, in an order in which they can be worked out.</summary>
    internal int[] RowColumns { get; private set; } = [];

    private static int[] OrderOf(int count, int[] first, int[] second)
    {
        // Both ways round, then each neighbor once.
        var from = new int[2 * first.Length];
        var to = new int[from.Length];
        Array.Copy(first, from, first.Length);
        Array.Copy(second, 0, from, first.Length, first.Length);
        Array.Copy(second, to, first.Length);
        Array.Copy(first, 0, to, first.Length, first.Length);
        int[] start = Group(count, from, to, new int[from.Length], out int[] neighbors);
        return MinimumDegree.Order(start, neighbors);
    }

    private int[] Columns(int[] first, int[] second, out int[] rows)
    {
        var column = new int[first.Length];
        var row = new int[first.Length];
        for (int e = 0; e < first.Length; e++)
        {
            int a = PlaceOf[first[e]], b = PlaceOf[second[e]];
            column[e] = Math.Max(a, b);
            row[e] = Math.Min(a, b);
        }

        return Group(Count, column, row, EntryOf, out rows);
    }

    // The distinct members of each group; a counting sort, so that it is linear.
    private static int[] Group(int count, int[] group, int[] member, int[] indexOf, out int[] members)
    {
        var start = new int[count + 1];
        foreach (int g in group) start[g + 1]++;
        for (int g = 0; g < count; g++) start[g + 1] += start[g];
        var next = (int[])start.Clone();
        var sorted = new int[group.Length];
        for (int e = 0; e < group.Length; e++) sorted[next[group[e]]++] = e;

        members = new int[group.Length];
        var seenAt = new int[count];
        var distinct = new int[count + 1];
        int found = 0;
        for (int g = 0; g < count; g++)
        {
            for (int p = start[g]; p < start[g + 1]; p++)
            {
                int m = member[sorted[p]];
                if (seenAt[m] <= distinct[g])
                {
                    members[found++] = m;
                    seenAt[m] = found;
                }

                indexOf[sorted[p]] = seenAt[m] - 1;
            }

            distinct[g + 1] = found;
        }

        Array.Resize(ref members, found);
        return distinct;
    }

    private void AnalyseFactor()
    {
        var parent = new int[Count];
        var size = new int[Count];
        RowStart = new int[Count + 1];
        WalkRows(parent, size, null);
        FactorStart = new int[Count + 1];
        for (int k = 0; k < Count; k++) FactorStart[k + 1] = FactorStart[k] + size[k];
        FactorRows = new int[FactorStart[Count]];
        RowColumns = new int[FactorStart[Count]];
        WalkRows(parent, size, RowColumns);
    }

    // Row k of the factor reaches from each entry of column k up the elimination tree. The first walk finds the
    // tree and the sizes, the second writes the entries down.
    private void WalkRows(int[] parent, int[] size, int[]? rowColumns)
    {
        var reached = new int[Count];
        var path = new int[Count];
        Array.Clear(size, 0, size.Length);
        for (int k = 0; k < Count; k++)
        {
            if (rowColumns is null) parent[k] = -1;
            reached[k] = k + 1;
            int top = RowStart[k + 1];
            for (int p = ColumnStart[k]; p < ColumnStart[k + 1]; p++)
            {
                int length = 0;
                for (int i = Rows[p]; reached[i] != k + 1; i = parent[i])
                {
                    if (parent[i] < 0) parent[i] = k;
                    reached[i] = k + 1;
                    if (rowColumns is null) { size[i]++; RowStart[k + 1]++; }
                    path[length++] = i;
                }

                while (rowColumns is not null && length > 0) Note(rowColumns, --top, path[--length], k, size);
            }

            if (rowColumns is null) RowStart[k + 1] += RowStart[k];
        }
    }

    private void Note(int[] rowColumns, int place, int column, int row, int[] size)
    {
        rowColumns[place] = column;
        FactorRows[FactorStart[column] + size[column]++] = row;
    }
}
