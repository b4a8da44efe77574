namespace CamPower.Circuits;

/// <summary>Newton's method on a network, until its steps are rounding or its path leaves the stable branch.</summary>
internal static class Newton
{
    private const int MostIterations = 200;
    private const double Converged = 1e-14, Negligible = 1e-16;

    // A step this small that no longer shrinks is rounding: without an operating point the steps of a load that is
    // too large by the share e stay above √e of the source voltage before they grow again.
    private const double Rounding = 1e-7;

    /// <summary>Goes from the given voltages to the operating point, in place; false where the path ends before one.</summary>
    internal static bool TryDescend(LinearizedCircuit circuit, LoadShares loads, double[] volts, ref int iterations)
    {
        double lastStep = double.PositiveInfinity;
        for (int iteration = 0; iteration < MostIterations; iteration++)
        {
            iterations++;
            if (!circuit.TryStep(loads, volts, out double step)) return false;
            if (IsLast(step / circuit.ScaleVolts, lastStep / circuit.ScaleVolts)) return true;
            lastStep = step;
        }

        return false;
    }

    // Steps as shares of the source voltage. Where the convergence is quadratic the next step will be about
    // step·(step/last)²: no need to take it to know that it is nothing.
    internal static bool IsLast(double step, double last)
    {
        if (step <= Converged || (step >= last && step <= Rounding)) return true;
        double shrink = double.IsInfinity(last) ? 1 : step / last;
        return step * shrink * shrink <= Negligible;
    }
}
