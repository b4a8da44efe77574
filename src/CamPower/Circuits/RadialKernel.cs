using System;

namespace CamPower.Circuits;

/// <summary>Operating point of a tree of loops fed from one ideal source, in time linear in its size. SI doubles.</summary>
/// <remarks>
/// Newton's method as ladder reduction: each load is linearised to I = a + b·V, a subtree seen through a loop of
/// resistance r is again of that form with a and b divided by 1 + r·b, and one sweep back gives the voltages. The
/// currents of all loads are convex in V, so from the source voltage the iterates descend to the stable branch; a
/// divisor that is not positive, or a voltage that is not, proves that there is no operating point. The divisors
/// are the pivots of the Jacobian eliminated from the leaves to the source, but need no conductance: a loop may
/// have no resistance at all. Source: <see cref="Sources.Kirchhoff"/>.
/// </remarks>
internal sealed class RadialKernel : LinearisedCircuit
{
    private readonly int[] _parents;
    private readonly double[] _ohms, _fixedAmperes, _slope;
    private readonly double _sourceVolts;

    internal RadialKernel(int[] parents, double[] ohms, double sourceVolts)
    {
        _parents = parents;
        _ohms = ohms;
        _sourceVolts = sourceVolts;
        _fixedAmperes = new double[parents.Length];
        _slope = new double[parents.Length];
    }

    internal override int Rows => _parents.Length;

    internal override double ScaleVolts => _sourceVolts;

    /// <summary>Solves the tree, or says that it has no operating point.</summary>
    /// <param name="parents">For each node the index of the node that feeds it, smaller than its own; -1 for the source.</param>
    /// <param name="ohms">For each node the loop resistance from its parent, at least 0. [Ω]</param>
    /// <param name="loads">For each node its load.</param>
    /// <param name="sourceVolts">Voltage of the source. [V]</param>
    /// <param name="volts">Receives the voltage of each node; meaningless without an operating point. [V]</param>
    internal static bool TrySolve(int[] parents, double[] ohms, Load[] loads, double sourceVolts, double[] volts)
    {
        var rowOf = new int[loads.Length];
        for (int i = 0; i < rowOf.Length; i++) rowOf[i] = i;
        int iterations = 0;
        var kernel = new RadialKernel(parents, ohms, sourceVolts);
        kernel.OpenCircuit(volts);
        return Newton.TryDescend(kernel, new LoadShares(loads, rowOf, loads.Length), volts, ref iterations);
    }

    internal override void OpenCircuit(double[] volts)
    {
        for (int i = 0; i < volts.Length; i++) volts[i] = _sourceVolts;
    }

    internal override bool TryStep(LoadShares loads, double[] volts, out double largestStep)
    {
        largestStep = 0;
        loads.ChooseLarger(volts);
        return TryFold(loads, loads.Amperes, 2, loads.Watts, volts) && TryUnfold(volts, out largestStep);
    }

    internal override bool TryTangent(LoadShares loads, double[] powerShares, double[] volts, double[] voltsPerScale)
    {
        loads.ChooseLarger(volts);
        if (!TryFold(loads, null, 1, powerShares, volts)) return false;
        for (int i = 0; i < voltsPerScale.Length; i++)
        {
            double feeding = _parents[i] < 0 ? 0 : voltsPerScale[_parents[i]];
            voltsPerScale[i] = feeding - (_ohms[i] * (_fixedAmperes[i] + (_slope[i] * feeding)));
        }

        return true;
    }

    // From the leaves to the source: a = times·W/V + I₀ and b = G − P/V² of each load joins what its children gave.
    private bool TryFold(LoadShares loads, double[]? amperes, double times, double[] watts, double[] volts)
    {
        int[] parents = _parents;
        double[] ohms = _ohms, fixedAmperes = _fixedAmperes, slope = _slope, power = loads.Watts, siemens = loads.Siemens;
        Array.Clear(fixedAmperes, 0, fixedAmperes.Length);
        Array.Clear(slope, 0, slope.Length);
        for (int i = parents.Length - 1; i >= 0; i--)
        {
            double perVolt = 1 / volts[i];
            double a = fixedAmperes[i] + (times * watts[i] * perVolt);
            if (amperes is not null) a += amperes[i];
            double b = slope[i] + (siemens[i] - (power[i] * perVolt * perVolt));
            double divisor = 1 + (ohms[i] * b);
            if (!(divisor > 0)) return false;
            double share = 1 / divisor;
            fixedAmperes[i] = a *= share;
            slope[i] = b *= share;
            int parent = parents[i];
            if (parent < 0) continue;
            fixedAmperes[parent] += a;
            slope[parent] += b;
        }

        return true;
    }

    // From the source to the leaves: the voltages.
    private bool TryUnfold(double[] volts, out double largestStep)
    {
        int[] parents = _parents;
        double[] ohms = _ohms, fixedAmperes = _fixedAmperes, slope = _slope;
        largestStep = 0;
        for (int i = 0; i < parents.Length; i++)
        {
            int parent = parents[i];
            double feeding = parent < 0 ? _sourceVolts : volts[parent];
            double now = feeding - (ohms[i] * (fixedAmperes[i] + (slope[i] * feeding)));
            if (!(now > 0)) return false;
            double step = Math.Abs(volts[i] - now);
            if (step > largestStep) largestStep = step;
            volts[i] = now;
        }

        return true;
    }
}
