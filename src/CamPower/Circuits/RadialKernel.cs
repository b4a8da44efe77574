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
    private readonly double[] _ohms;
    private readonly double _sourceVolts;

    // What lies behind each node. All zero between calls: folding adds to it, unfolding takes it away.
    private readonly Tangent[] _behind;

    internal RadialKernel(int[] parents, double[] ohms, double sourceVolts)
    {
        _parents = parents;
        _ohms = ohms;
        _sourceVolts = sourceVolts;
        _behind = new Tangent[parents.Length];
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
        if (TryFold(loads, loads.Watts, 2, loads.Amperes, volts) && TryUnfold(volts, out largestStep)) return true;
        Array.Clear(_behind, 0, _behind.Length);
        return false;
    }

    internal override bool TryTangent(LoadShares loads, double[] powerShares, double[] volts, double[] voltsPerScale)
    {
        loads.ChooseLarger(volts);
        bool folded = TryFold(loads, powerShares, 1, new double[Rows], volts);
        for (int i = 0; folded && i < voltsPerScale.Length; i++)
        {
            double feeding = _parents[i] < 0 ? 0 : voltsPerScale[_parents[i]];
            voltsPerScale[i] = feeding - (_ohms[i] * (_behind[i].Amperes + (_behind[i].Siemens * feeding)));
        }

        Array.Clear(_behind, 0, _behind.Length);
        return folded;
    }

    // From the leaves to the source. Each load's tangent a = times·W/V + I₀, b = G − P/V² joins what its children gave,
    // and both are divided by 1 + r·b; all is multiplied by V², so that one division does for everything.
    private bool TryFold(LoadShares loads, double[] watts, double times, double[] amperes, double[] volts)
    {
        int[] parents = _parents;
        double[] ohms = _ohms, power = loads.Watts, siemens = loads.Siemens;
        Tangent[] behind = _behind;
        for (int i = parents.Length - 1; i >= 0; i--)
        {
            double v = volts[i], r = ohms[i], square = v * v, load = (siemens[i] * square) - power[i];
            ref Tangent own = ref behind[i];
            double divisor = square + (r * load) + (r * square * own.Siemens);
            if (!(divisor > 0)) return false;
            double share = 1 / divisor;
            double a = (((own.Amperes + amperes[i]) * v) + (times * watts[i])) * v * share;
            double b = ((own.Siemens * square) + load) * share;
            own.Amperes = a;
            own.Siemens = b;
            int parent = parents[i];
            if (parent < 0) continue;
            ref Tangent feeding = ref behind[parent];
            feeding.Amperes += a;
            feeding.Siemens += b;
        }

        return true;
    }

    // From the source to the leaves: the voltages.
    private bool TryUnfold(double[] volts, out double largestStep)
    {
        int[] parents = _parents;
        double[] ohms = _ohms;
        Tangent[] behind = _behind;
        double largest = largestStep = 0;
        for (int i = 0; i < parents.Length; i++)
        {
            int parent = parents[i];
            double feeding = parent < 0 ? _sourceVolts : volts[parent];
            ref Tangent own = ref behind[i];
            double now = feeding - (ohms[i] * (own.Amperes + (own.Siemens * feeding)));
            own = default;
            if (!(now > 0)) return false;
            double step = Math.Abs(volts[i] - now);
            if (step > largest) largest = step;
            volts[i] = now;
        }

        largestStep = largest;
        return true;
    }
}
