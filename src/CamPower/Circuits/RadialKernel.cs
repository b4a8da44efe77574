namespace CamPower.Circuits;

/// <summary>Operating point of a tree of loops fed from one ideal source, in time linear in its size. SI doubles.</summary>
/// <remarks>
/// Newton's method as ladder reduction: each load is linearised to I = a + b·V, a subtree seen through a loop of
/// resistance r is again of that form with a and b divided by 1 + r·b, and one sweep back gives the voltages. The
/// currents of all loads are convex in V, so from the source voltage the iterates descend to the stable branch; a
/// divisor that is not positive, or a voltage that is not, proves that there is no operating point.
/// Source: <see cref="Sources.Kirchhoff"/>.
/// </remarks>
internal static class RadialKernel
{
    private const int MostIterations = 200;
    private const double Converged = 1e-14;

    // A step this small that no longer shrinks is rounding: without an operating point the steps of a load that is
    // too large by the share e stay above √e of the source voltage before they grow again.
    private const double Rounding = 1e-7;

    /// <summary>Solves the tree, or says that it has no operating point.</summary>
    /// <param name="parents">For each node the index of the node that feeds it, smaller than its own; -1 for the source.</param>
    /// <param name="ohms">For each node the loop resistance from its parent, at least 0. [Ω]</param>
    /// <param name="loads">For each node its load.</param>
    /// <param name="sourceVolts">Voltage of the source. [V]</param>
    /// <param name="volts">Receives the voltage of each node; meaningless without an operating point. [V]</param>
    internal static bool TrySolve(int[] parents, double[] ohms, Load[] loads, double sourceVolts, double[] volts)
    {
        int count = parents.Length;
        var fixedAmperes = new double[count];
        var slope = new double[count];
        for (int i = 0; i < count; i++) volts[i] = sourceVolts;

        double lastDescent = double.PositiveInfinity;
        for (int iteration = 0; iteration < MostIterations; iteration++)
        {
            Linearise(loads, volts, fixedAmperes, slope);
            if (!TryFold(parents, ohms, fixedAmperes, slope)) return false;
            double descent = Unfold(parents, ohms, fixedAmperes, slope, sourceVolts, volts, out double lowest);
            if (!(lowest > 0)) return false;

            bool stalled = descent >= lastDescent && descent <= Rounding * sourceVolts;
            if (stalled || descent <= Converged * sourceVolts) return true;
            lastDescent = descent;
        }

        return false;
    }

    private static void Linearise(Load[] loads, double[] volts, double[] fixedAmperes, double[] slope)
    {
        for (int i = 0; i < loads.Length; i++)
        {
            Load load = loads[i];
            double amperes = load.AmperesAt(volts[i]);
            slope[i] = load.SlopeAt(volts[i]);
            fixedAmperes[i] = amperes - (slope[i] * volts[i]);
        }
    }

    private static bool TryFold(int[] parents, double[] ohms, double[] fixedAmperes, double[] slope)
    {
        for (int i = parents.Length - 1; i >= 0; i--)
        {
            double divisor = 1 + (ohms[i] * slope[i]);
            if (!(divisor > 0)) return false;
            fixedAmperes[i] /= divisor;
            slope[i] /= divisor;
            int parent = parents[i];
            if (parent < 0) continue;
            fixedAmperes[parent] += fixedAmperes[i];
            slope[parent] += slope[i];
        }

        return true;
    }

    private static double Unfold(int[] parents, double[] ohms, double[] fixedAmperes, double[] slope, double sourceVolts,
        double[] volts, out double lowest)
    {
        double largest = 0;
        lowest = sourceVolts;
        for (int i = 0; i < parents.Length; i++)
        {
            double feeding = parents[i] < 0 ? sourceVolts : volts[parents[i]];
            double now = feeding - (ohms[i] * (fixedAmperes[i] + (slope[i] * feeding)));
            double step = System.Math.Abs(volts[i] - now);
            if (step > largest) largest = step;
            if (!(now >= lowest)) lowest = now;
            volts[i] = now;
        }

        return largest;
    }
}
