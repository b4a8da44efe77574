using System;

namespace CamPower.Tolerance;

/// <summary>Points and weights of Gauss and Legendre on the interval from 0 to 1.</summary>
internal static class GaussLegendre
{
    private const int MostSteps = 100;

    /// <summary>So many points, by Newton's method on the Legendre polynomial; exact for polynomials up to degree 2n − 1.</summary>
    internal static (double[] At, double[] Weights) OnUnit(int points)
    {
        double[] at = new double[points], weights = new double[points];
        for (int i = 0; i < points; i++)
        {
            double z = Math.Cos(Math.PI * (i + 0.75) / (points + 0.5)), slope = 1;
            for (int step = 0; step < MostSteps; step++)
            {
                (double value, double derivative) = Legendre(points, z);
                slope = derivative;
                double next = z - (value / derivative);
                bool isSettled = Math.Abs(next - z) <= 1e-15;
                z = next;
                if (isSettled) break;
            }

            at[points - 1 - i] = (1 + z) / 2;
            weights[points - 1 - i] = 1 / ((1 - (z * z)) * slope * slope);
        }

        return (at, weights);
    }

    private static (double Value, double Derivative) Legendre(int n, double z)
    {
        double before = 1, value = z;
        for (int k = 2; k <= n; k++) (before, value) = (value, ((((2 * k) - 1) * z * value) - ((k - 1) * before)) / k);
        return (value, n * ((z * value) - before) / ((z * z) - 1));
    }
}
