using System;

namespace CamPower.Circuits;

/// <summary>One Newton step of a network of any shape: sparse L·D·Lᵀ of its Jacobian.</summary>
/// <remarks>The Jacobian of a stable operating point is positive definite; a pivot that is not positive says that the path has left the
/// stable branch.</remarks>
internal sealed class MeshSolver(Mesh mesh) : LinearizedCircuit
{
    private const int None = -1;
    private readonly SparseFactor _factor = new(mesh.Pattern);
    private readonly double[] _diagonal = new double[mesh.Pattern.Count];
    private readonly double[] _entries = new double[mesh.Entries.Length];
    private readonly double[] _unknowns = new double[mesh.Pattern.Count];
    private readonly double[] _nothing = new double[mesh.RowOf.Length];
    private readonly double _highestVolts = mesh.HighestSourceVolts;

    /// <summary>What multiplies the voltage of every source. [1]</summary>
    internal double SourceShare { get; set; } = 1;

    internal override int Rows => mesh.RowOf.Length;

    internal override double ScaleVolts => _highestVolts * SourceShare;

    internal override void OpenCircuit(double[] volts)
    {
        if (!mesh.StartsFlat) SolveFor(_nothing, _unknowns);
        for (int k = 0; k < volts.Length; k++)
        {
            double open = mesh.StartsFlat ? ScaleVolts : VoltsOf(k, AboveOf(k));

            // A load whose voltage only other loads bring about: its tangent is put where the voltages are.
            volts[k] = open > 0 ? open : ScaleVolts;
        }
    }

    /// <summary>The unknown voltages where each load draws a given current. [V]</summary>
    internal void SolveFor(double[] loadAmperes, double[] unknowns)
    {
        Start();
        Inject(unknowns);
        for (int k = 0; k < loadAmperes.Length; k++) Draw(k, loadAmperes[k], unknowns);
        if (!_factor.TryFactor(_diagonal, _entries))
        {
            throw new InvalidOperationException("A connected network of resistances has positive pivots.");
        }

        _factor.Solve(unknowns);
    }

    internal override bool TryStep(LoadShares loads, double[] volts, out double largestStep)
    {
        largestStep = 0;
        if (!TrySolveTangents(loads, volts)) return false;
        for (int k = 0; k < volts.Length; k++)
        {
            double now = VoltsOf(k, AboveOf(k));
            if (!(now > 0)) return false;
            largestStep = Math.Max(largestStep, Math.Abs(now - volts[k]));
            volts[k] = now;
        }

        return true;
    }

    /// <summary>Where the loads' tangents at some voltages balance, whatever the sign.</summary>
    /// <returns>False where the Jacobian is not positive definite.</returns>
    internal bool TrySolveTangents(LoadShares loads, double[] tangentsAt, double[] volts)
    {
        if (!TrySolveTangents(loads, tangentsAt)) return false;
        for (int k = 0; k < volts.Length; k++) volts[k] = VoltsOf(k, AboveOf(k));
        return true;
    }

    private bool TrySolveTangents(LoadShares loads, double[] volts)
    {
        loads.ChooseLarger(volts);
        Start();
        Inject(_unknowns);
        for (int k = 0; k < volts.Length; k++)
        {
            double slope = AddSlope(k, loads, volts[k]);
            double fixedAmperes = (2 * loads.Rows[k].Watts / volts[k]) + loads.Rows[k].Amperes;
            Draw(k, fixedAmperes + (slope * AboveOf(k)), _unknowns);
        }

        if (!_factor.TryFactor(_diagonal, _entries)) return false;
        _factor.Solve(_unknowns);
        return true;
    }

    internal override bool TryTangent(LoadShares loads, double[] volts, double[] voltsPerScale)
    {
        loads.ChooseLarger(volts);
        Start();
        Array.Clear(_unknowns, 0, _unknowns.Length);
        for (int k = 0; k < volts.Length; k++)
        {
            AddSlope(k, loads, volts[k]);
            Draw(k, loads.Rows[k].WattsPerScale / volts[k], _unknowns);
        }

        if (!_factor.TryFactor(_diagonal, _entries)) return false;
        _factor.Solve(_unknowns);
        for (int k = 0; k < volts.Length; k++) voltsPerScale[k] = VoltsOf(k, 0);
        return true;
    }

    private void Start()
    {
        Array.Copy(mesh.Diagonal, _diagonal, _diagonal.Length);
        Array.Copy(mesh.Entries, _entries, _entries.Length);
    }

    private void Inject(double[] unknowns)
    {
        for (int i = 0; i < unknowns.Length; i++) unknowns[i] = mesh.Injected[i] * SourceShare;
    }

    private double AboveOf(int load) => mesh.LoadAbove[load] * SourceShare;

    private double AddSlope(int load, LoadShares loads, double volts)
    {
        double slope = loads.Rows[load].SlopeAt(volts);
        int plus = mesh.LoadPlus[load], minus = mesh.LoadMinus[load];
        if (plus == minus) return slope;
        if (plus != None) _diagonal[plus] += slope;
        if (minus != None) _diagonal[minus] += slope;
        if (mesh.LoadEntry[load] != None) _entries[mesh.LoadEntry[load]] -= slope;
        return slope;
    }

    private void Draw(int load, double amperes, double[] injected)
    {
        if (mesh.LoadPlus[load] != None) injected[mesh.LoadPlus[load]] -= amperes;
        if (mesh.LoadMinus[load] != None) injected[mesh.LoadMinus[load]] += amperes;
    }

    private double VoltsOf(int load, double above)
    {
        double plus = mesh.LoadPlus[load] == None ? 0 : _unknowns[mesh.LoadPlus[load]];
        double minus = mesh.LoadMinus[load] == None ? 0 : _unknowns[mesh.LoadMinus[load]];
        return above + (plus - minus);
    }
}
