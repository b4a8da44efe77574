namespace CamPower.Circuits;

/// <summary>L·D·Lᵀ of a sparse symmetric matrix, and the solution of linear systems with it.</summary>
/// <remarks>
/// Ours, because the package depends on UnitsNet alone; 200 lines with the ordering and the analysis, and far from the bottleneck (the
/// measurements are with the network benchmarks). Up-looking, row by row. A pivot that is not positive ends it: the matrix is not positive
/// definite. Holds working memory: one thread at a time.
/// </remarks>
internal sealed class SparseFactor(SparsePattern pattern)
{
    private readonly double[] _lower = new double[pattern.FactorRows.Length];
    private readonly double[] _perPivot = new double[pattern.Count];
    private readonly double[] _row = new double[pattern.Count];
    private readonly int[] _filled = new int[pattern.Count];

    /// <summary>Factors a matrix.</summary>
    /// <param name="diagonal">Its diagonal, in the order of elimination.</param>
    /// <param name="entries">Its entries above the diagonal, in the order of the pattern.</param>
    /// <returns>False where the matrix is not positive definite.</returns>
    internal bool TryFactor(double[] diagonal, double[] entries)
    {
        int[] factorStart = pattern.FactorStart, factorRows = pattern.FactorRows, rowColumns = pattern.RowColumns;
        double[] lower = _lower, row = _row;
        System.Array.Clear(row, 0, row.Length);
        for (int k = 0; k < pattern.Count; k++)
        {
            _filled[k] = factorStart[k];
            for (int p = pattern.ColumnStart[k]; p < pattern.ColumnStart[k + 1]; p++) row[pattern.Rows[p]] = entries[p];

            double pivot = diagonal[k];
            for (int q = pattern.RowStart[k]; q < pattern.RowStart[k + 1]; q++)
            {
                int i = rowColumns[q];
                double value = row[i];
                row[i] = 0;
                int end = _filled[i]++;
                for (int p = factorStart[i]; p < end; p++) row[factorRows[p]] -= lower[p] * value;
                double scaled = value * _perPivot[i];
                pivot -= scaled * value;
                lower[end] = scaled;
            }

            if (!(pivot > 0)) return false;
            _perPivot[k] = 1 / pivot;
        }

        return true;
    }

    /// <summary>Solves for a right-hand side, in place, in the order of elimination.</summary>
    internal void Solve(double[] x)
    {
        int[] factorStart = pattern.FactorStart, factorRows = pattern.FactorRows;
        for (int k = 0; k < x.Length; k++)
        {
            double value = x[k];
            for (int p = factorStart[k]; p < factorStart[k + 1]; p++) x[factorRows[p]] -= _lower[p] * value;
        }

        for (int k = x.Length - 1; k >= 0; k--)
        {
            double value = x[k] * _perPivot[k];
            for (int p = factorStart[k]; p < factorStart[k + 1]; p++) value -= _lower[p] * x[factorRows[p]];
            x[k] = value;
        }
    }
}
