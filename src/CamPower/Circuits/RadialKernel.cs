using System;

namespace CamPower.Circuits;

/// <summary>Operating point of a tree of loops fed from one ideal source, in time linear in its size. SI doubles.</summary>
/// <remarks>
/// Newton's method as ladder reduction: each load is linearized to I = a + b·V, a subtree seen through a loop of
/// resistance r is again of that form with a and b divided by 1 + r·b, and one sweep back gives the voltages. The
/// currents of all loads are convex in V, so from the source voltage the iterates descend to the stable branch; a
/// divisor that is not positive, or a voltage that is not, proves that there is no operating point. The divisors
/// are the pivots of the Jacobian eliminated from the leaves to the source, but need no conductance: a loop may
/// have no resistance at all. Source: <see cref="Sources.Kirchhoff"/>.
/// </remarks>
internal sealed class RadialKernel : LinearizedCircuit
{
    private readonly Rung[] _rungs;
    private double _sourceVolts;

    // What lies behind each node. All zero between calls: folding adds to it, unfolding takes it away.
    private readonly Tangent[] _behind;

    internal RadialKernel(Rung[] rungs, double sourceVolts)
    {
        _rungs = rungs;
        _sourceVolts = sourceVolts;
        _behind = new Tangent[rungs.Length];
    }

    internal override int Rows => _rungs.Length;

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
        var rungs = new Rung[loads.Length];
        for (int i = 0; i < rowOf.Length; i++)
        {
            rowOf[i] = i;
            rungs[i] = new Rung(parents[i], ohms[i]);
        }

        int iterations = 0;
        var kernel = new RadialKernel(rungs, sourceVolts);
        kernel.OpenCircuit(volts);
        return Newton.TryDescend(kernel, new LoadShares(loads, rowOf, loads.Length), volts, ref iterations);
    }

    /// <summary>Sets the voltage of the source. [V]</summary>
    internal void Feed(double sourceVolts) => _sourceVolts = sourceVolts;

    internal override void OpenCircuit(double[] volts)
    {
        for (int i = 0; i < volts.Length; i++) volts[i] = _sourceVolts;
    }

    internal override bool TryStep(LoadShares loads, double[] volts, out double largestStep)
    {
        largestStep = 0;
        loads.ChooseLarger(volts);
        if (TryFold(loads.Rows, volts, tangent: false) && TryUnfold(volts, out largestStep)) return true;
        Array.Clear(_behind, 0, _behind.Length);
        return false;
    }

    internal override bool TryTangent(LoadShares loads, double[] volts, double[] voltsPerScale)
    {
        loads.ChooseLarger(volts);
        bool folded = TryFold(loads.Rows, volts, tangent: true);
        for (int i = 0; folded && i < voltsPerScale.Length; i++)
        {
            double feeding = _rungs[i].Parent < 0 ? 0 : voltsPerScale[_rungs[i].Parent];
            voltsPerScale[i] = feeding - (_rungs[i].Ohms * (_behind[i].Amperes + (_behind[i].Siemens * feeding)));
        }

        Array.Clear(_behind, 0, _behind.Length);
        return folded;
    }

    // From the leaves to the source. Each load's tangent a = 2·P/V + I₀, b = G − P/V² (or a = P/V alone, for the change
    // with P) joins what its children gave, and both are divided by 1 + r·b; all is multiplied by V², so that one
    // division does for everything.
    private bool TryFold(LoadRow[] loads, double[] volts, bool tangent)
    {
        Rung[] rungs = _rungs;
        Tangent[] behind = _behind;
        for (int i = rungs.Length - 1; i >= 0; i--)
        {
            double v = volts[i], square = v * v;
            ref LoadRow load = ref loads[i];
            ref Rung rung = ref rungs[i];
            ref Tangent own = ref behind[i];
            double slope = (load.Siemens * square) - load.Watts;
            double divisor = square + (rung.Ohms * slope) + (rung.Ohms * square * own.Siemens);
            if (!(divisor > 0)) return false;
            double share = 1 / divisor;
            double drawn = tangent ? load.WattsPerScale : (load.Amperes * v) + (2 * load.Watts);
            double a = ((own.Amperes * v) + drawn) * v * share;
            double b = ((own.Siemens * square) + slope) * share;
            own.Amperes = a;
            own.Siemens = b;
            int parent = rung.Parent;
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
        Rung[] rungs = _rungs;
        Tangent[] behind = _behind;
        double largest = largestStep = 0;
        for (int i = 0; i < rungs.Length; i++)
        {
            ref Rung rung = ref rungs[i];
            ref Tangent own = ref behind[i];
            double feeding = rung.Parent < 0 ? _sourceVolts : volts[rung.Parent];
            double now = feeding - (rung.Ohms * (own.Amperes + (own.Siemens * feeding)));
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
