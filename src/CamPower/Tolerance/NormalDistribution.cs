using System;

namespace CamPower.Tolerance;

/// <summary>The standard normal distribution: its probability and its inverse. SI doubles, nothing allocated.</summary>
/// <remarks>The inverse is algorithm AS 241 (PPND16), accurate to about 1 in 10^16: <see cref="Sources.NormalQuantile"/>.</remarks>
internal static class NormalDistribution
{
    private const double CentralHalfWidth = 0.425, CentralConstant = 0.180625, TailFrom = 5, TailShift = 1.6;

    // Coefficients of the powers 7 to 0.
    private static readonly double[] CentralOver =
        [
            2509.0809287301226727, 33430.575583588128105, 67265.770927008700853, 45921.953931549871457, 13731.693765509461125,
            1971.5909503065514427, 133.14166789178437745, 3.387132872796366608,
        ],
        CentralUnder =
        [
            5226.495278852545925, 28729.085735721942674, 39307.89580009271061, 21213.794301586595867, 5394.1960214247511077,
            687.1870074920579083, 42.313330701600911252, 1,
        ],
        TailOver =
        [
            7.7454501427834140764e-4, 0.0227238449892691845833, 0.24178072517745061177, 1.27045825245236838258, 3.64784832476320460504,
            5.7694972214606914055, 4.6303378461565452959, 1.42343711074968357734,
        ],
        TailUnder =
        [
            1.05075007164441684324e-9, 5.475938084995344946e-4, 0.0151986665636164571966, 0.14810397642748007459, 0.68976733498510000455,
            1.6763848301838038494, 2.05319162663775882187, 1,
        ],
        FarOver =
        [
            2.01033439929228813265e-7, 2.71155556874348757815e-5, 0.0012426609473880784386, 0.026532189526576123093,
            0.29656057182850489123, 1.7848265399172913358, 5.4637849111641143699, 6.6579046435011037772,
        ],
        FarUnder =
        [
            2.04426310338993978564e-15, 1.4215117583164458887e-7, 1.8463183175100546818e-5, 7.868691311456132591e-4,
            0.0148753612908506148525, 0.13692988092273580531, 0.59983220655588793769, 1,
        ];

    /// <summary>The probability of a value below <paramref name="z"/>: from the series near 0, from the continued fraction far
    /// out.</summary>
    internal static double Below(double z)
    {
        double at = Math.Abs(z), density = Math.Exp(-z * z / 2) / Math.Sqrt(2 * Math.PI);
        double inside = at < 3 ? BySeries(at, density) : 0.5 - (density * TailFraction(at));
        return z < 0 ? 0.5 - inside : 0.5 + inside;
    }

    /// <summary>The value below which a probability lies, above 0 and below 1.</summary>
    internal static double Quantile(double probability)
    {
        double q = probability - 0.5;
        if (Math.Abs(q) <= CentralHalfWidth)
        {
            double s = CentralConstant - (q * q);
            return q * Ratio(s, CentralOver, CentralUnder);
        }

        double r = Math.Sqrt(-Math.Log(q < 0 ? probability : 1 - probability));
        double value = r <= TailFrom ? Ratio(r - TailShift, TailOver, TailUnder) : Ratio(r - TailFrom, FarOver, FarUnder);
        return q < 0 ? -value : value;
    }

    // φ(z)·(z + z³/3 + z⁵/15 + …): all terms positive, nothing cancels.
    private static double BySeries(double z, double density)
    {
        double term = z, sum = z;
        for (int n = 1; term > sum * 1e-17; n++)
        {
            term *= z * z / ((2 * n) + 1);
            sum += term;
        }

        return density * sum;
    }

    // 1/(z + 1/(z + 2/(z + 3/(z + …)))).
    private static double TailFraction(double z)
    {
        double below = z;
        for (int n = 60; n >= 1; n--) below = z + (n / below);
        return 1 / below;
    }

    private static double Ratio(double r, double[] over, double[] under)
    {
        double above = 0, below = 0;
        for (int i = 0; i < over.Length; i++)
        {
            above = (above * r) + over[i];
            below = (below * r) + under[i];
        }

        return above / below;
    }
}
