using System;
using System.Collections.Generic;
using CamPower.Circuits;

namespace CamPower.Commissioning;

/// <summary>What the readings of one unit say of what is common to the site, with everything that is the unit's own integrated
/// out.</summary>
/// <remarks>
/// The readings are normal about their prediction, with covariance S = D + L·Lᵀ: D of the meter, a column of L for each uncertain number of
/// the unit. What is common (temperature, gains of the meter, set points, reels of cable) is a vector z of independent standard normals,
/// with columns C. The logarithm of the likelihood of a site is then −½(c + log|I + A| − bᵀ(I + A)⁻¹b) and a constant, with A = CᵀS⁻¹C, b =
/// CᵀS⁻¹r and c = rᵀS⁻¹r + log|S| summed over the units: exact for a linear model, and one unit is replaced without touching the others.
/// </remarks>
internal sealed class EvidenceBlock
{
    // In the place of what rounding makes 0 or less of a variance.
    private const double LeastPivot = 1e-300;

    private double _residualSquare;

    internal EvidenceBlock(int commons)
    {
        A = new double[commons * commons];
        B = new double[commons];
    }

    /// <summary>Standard deviations of readings: of the meter, and of each number that is uncertain in them.</summary>
    internal static double[] Sigmas(double[] variances, IEnumerable<double[]> columns)
    {
        var sums = (double[])variances.Clone();
        foreach (double[] column in columns)
        {
            for (int r = 0; r < sums.Length; r++) sums[r] += column[r] * column[r];
        }

        return Array.ConvertAll(sums, Math.Sqrt);
    }

    internal double[] A { get; }

    internal double[] B { get; }

    internal double C { get; private set; }

    /// <summary>How badly the unit fits by itself: its residuals squared, over all that is uncertain in them.</summary>
    internal double MisfitSquare()
    {
        int commons = B.Length;
        var information = (double[])A.Clone();
        for (int k = 0; k < commons; k++) information[(k * commons) + k] += 1;
        DenseCholesky.Factor(information, commons, LeastPivot);
        double[] whitened = Whiten(information, B, commons);
        return _residualSquare - Dot(whitened, whitened);
    }

    /// <summary>The logarithm of how likely the symptoms of its devices are.</summary>
    internal double LogSymptoms { get; set; }

    /// <param name="residuals">Reading less prediction.</param>
    /// <param name="variances">Of the meter.</param>
    /// <param name="own">A column for each uncertain number of the unit.</param>
    /// <param name="common">A column for each number that is common; null where it does not move this unit.</param>
    internal static EvidenceBlock Of(double[] residuals, double[] variances, IReadOnlyList<double[]> own, double[]?[] common)
    {
        int count = residuals.Length, commons = common.Length;
        var block = new EvidenceBlock(commons);
        if (count == 0) return block;
        double[] root = Covariance(variances, own, count);
        DenseCholesky.Factor(root, count, LeastPivot);
        double[] whitened = Whiten(root, residuals, count);
        block._residualSquare = Dot(whitened, whitened);
        block.C = block._residualSquare;
        for (int i = 0; i < count; i++) block.C += 2 * Math.Log(root[(i * count) + i]);
        var columns = new double[commons][];
        for (int k = 0; k < commons; k++)
        {
            if (common[k] is not double[] column) continue;
            columns[k] = Whiten(root, column, count);
            block.B[k] = Dot(columns[k], whitened);
            for (int j = 0; j <= k; j++)
            {
                if (columns[j] is null) continue;
                block.A[(k * commons) + j] = block.A[(j * commons) + k] = Dot(columns[k], columns[j]);
            }
        }

        return block;
    }

    /// <summary>The likeliest of numbers that are standard normal before anything is read, each of all that is uncertain with its
    /// column.</summary>
    /// <param name="residuals">Reading less prediction.</param>
    /// <param name="variances">Of the meter.</param>
    /// <param name="all">The columns of all that is uncertain.</param>
    /// <param name="asked">The columns of those that are asked for.</param>
    internal static double[] Estimate(double[] residuals, double[] variances, IReadOnlyList<double[]> all, double[][] asked)
    {
        int count = residuals.Length;
        double[] root = Covariance(variances, all, count);
        DenseCholesky.Factor(root, count, LeastPivot);
        double[] whitened = Whiten(root, residuals, count);
        return Array.ConvertAll(asked, column => Dot(Whiten(root, column, count), whitened));
    }

    /// <summary>The logarithm of the likelihood of this unit by itself, but for a constant.</summary>
    internal double LogLikelihoodAlone()
    {
        var copy = new EvidenceBlock(B.Length);
        copy.CopyFrom(this);
        return copy.LogLikelihood();
    }

    internal void Add(EvidenceBlock other, double sign)
    {
        for (int i = 0; i < A.Length; i++) A[i] += sign * other.A[i];
        for (int i = 0; i < B.Length; i++) B[i] += sign * other.B[i];
        C += sign * other.C;
        LogSymptoms += sign * other.LogSymptoms;
    }

    internal void CopyFrom(EvidenceBlock other)
    {
        Array.Copy(other.A, A, A.Length);
        Array.Copy(other.B, B, B.Length);
        (C, LogSymptoms) = (other.C, other.LogSymptoms);
    }

    /// <summary>The logarithm of the likelihood, but for a constant, with what is common integrated out. Uses up the block.</summary>
    internal double LogLikelihood()
    {
        int commons = B.Length;
        for (int k = 0; k < commons; k++) A[(k * commons) + k] += 1;
        DenseCholesky.Factor(A, commons, LeastPivot);
        double log = C;
        double[] whitened = Whiten(A, B, commons);
        for (int k = 0; k < commons; k++) log += 2 * Math.Log(A[(k * commons) + k]);
        return (-0.5 * (log - Dot(whitened, whitened))) + LogSymptoms;
    }

    private static double[] Covariance(double[] variances, IReadOnlyList<double[]> own, int count)
    {
        var covariance = new double[count * count];
        for (int i = 0; i < count; i++) covariance[(i * count) + i] = variances[i];
        for (int c = 0; c < own.Count; c++)
        {
            double[] column = own[c];
            for (int i = 0; i < count; i++)
            {
                if (column[i] == 0) continue;
                for (int j = 0; j <= i; j++) covariance[(i * count) + j] += column[i] * column[j];
            }
        }

        return covariance;
    }

    private static double[] Whiten(double[] root, double[] values, int size)
    {
        var whitened = new double[size];
        DenseCholesky.Forward(root, size, values, whitened);
        return whitened;
    }

    private static double Dot(double[] one, double[] other)
    {
        double sum = 0;
        for (int i = 0; i < one.Length; i++) sum += one[i] * other[i];
        return sum;
    }
}
