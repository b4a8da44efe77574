using System;

namespace CamPower.Circuits;

/// <summary>Factors a small symmetric matrix as L·Lᵀ and solves with L, in arrays that are given: it allocates nothing.</summary>
/// <remarks>Matrices are flat, row after row, and only their lower triangle counts. A pivot that rounding has made too small, or negative,
/// is replaced by the least that is given.</remarks>
internal static class DenseCholesky
{
    /// <summary>Puts L in the place of the matrix.</summary>
    internal static void Factor(double[] matrix, int size, double leastPivot)
    {
        for (int i = 0; i < size; i++)
        {
            for (int j = 0; j <= i; j++)
            {
                double sum = matrix[(i * size) + j];
                for (int k = 0; k < j; k++) sum -= matrix[(i * size) + k] * matrix[(j * size) + k];
                matrix[(i * size) + j] = i == j ? Math.Sqrt(Math.Max(sum, leastPivot)) : sum / matrix[(j * size) + j];
            }
        }
    }

    /// <summary>Solves L·x = values.</summary>
    internal static void Forward(double[] root, int size, double[] values, double[] x)
    {
        for (int i = 0; i < size; i++)
        {
            double sum = values[i];
            for (int k = 0; k < i; k++) sum -= root[(i * size) + k] * x[k];
            x[i] = sum / root[(i * size) + i];
        }
    }

    /// <summary>Solves Lᵀ·x = values, which may be the same array.</summary>
    internal static void Backward(double[] root, int size, double[] values, double[] x)
    {
        for (int i = size - 1; i >= 0; i--)
        {
            double sum = values[i];
            for (int k = i + 1; k < size; k++) sum -= root[(k * size) + i] * x[k];
            x[i] = sum / root[(i * size) + i];
        }
    }
}
