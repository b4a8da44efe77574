namespace CamPower.Circuits;

/// <summary>A network whose loads are replaced by their tangents I = a + b·V: one step of Newton's method, however it is solved.</summary>
/// <remarks>Holds working memory: one thread at a time.</remarks>
internal abstract class LinearizedCircuit
{
    /// <summary>Number of rows in the columns of loads and voltages.</summary>
    internal abstract int Rows { get; }

    /// <summary>The largest source voltage, by which steps are judged. [V]</summary>
    internal abstract double ScaleVolts { get; }

    /// <summary>Voltages without any load: where the search starts. [V]</summary>
    internal abstract void OpenCircuit(double[] volts);

    /// <summary>One Newton step from the given voltages, in place.</summary>
    /// <param name="loads">The loads.</param>
    /// <param name="volts">Voltage of each row, above 0. [V]</param>
    /// <param name="largestStep">The largest change of a voltage. [V]</param>
    /// <returns>False where the Jacobian is not positive definite or a new voltage is not above 0.</returns>
    internal abstract bool TryStep(LoadShares loads, double[] volts, out double largestStep);

    /// <summary>Rate of change of the voltages as the constant-power components grow, at an operating point.</summary>
    /// <param name="loads">The loads.</param>
    /// <param name="volts">The operating point. [V]</param>
    /// <param name="voltsPerScale">Receives dV/dλ. [V]</param>
    /// <returns>False where the Jacobian is not positive definite.</returns>
    internal abstract bool TryTangent(LoadShares loads, double[] volts, double[] voltsPerScale);
}
