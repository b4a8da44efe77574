using System;

namespace CamPower.Tolerance;

/// <summary>How the voltages and currents of a circuit change with each part, about given deviations. SI doubles.</summary>
/// <remarks>Central differences: good to about 1e-8 of the value. All 0 where there is no operating point.</remarks>
internal sealed class CircuitSensitivity
{
    private const double ShareStep = 1e-5, KelvinStep = 1e-2;

    private CircuitSensitivity(int devices, int feeds, int parts)
    {
        VoltsPerPart = Empty(devices, parts);
        AmperesPerPart = Empty(feeds, parts);
        DeviceVolts = new double[devices];
        FeedAmperes = new double[feeds];
    }

    /// <summary>Whether the circuit has an operating point there.</summary>
    internal bool HasOperatingPoint { get; private set; }

    /// <summary>The voltage of each device. [V]</summary>
    internal double[] DeviceVolts { get; }

    /// <summary>The current of each feed. [A]</summary>
    internal double[] FeedAmperes { get; }

    /// <summary>For each device its change with each part of the site. [V per share, or per kelvin]</summary>
    internal double[][] VoltsPerPart { get; }

    /// <summary>For each feed the change of its current with each part of the site. [A per share, or per kelvin]</summary>
    internal double[][] AmperesPerPart { get; }

    /// <summary>About given deviations.</summary>
    internal static CircuitSensitivity Of(UncertainCircuit circuit, double[] about)
    {
        int devices = circuit.Loads.Length, feeds = circuit.Group.Feeds.Count;
        var result = new CircuitSensitivity(devices, feeds, about.Length);
        result.HasOperatingPoint = Solve(about, result.DeviceVolts, result.FeedAmperes);
        if (!result.HasOperatingPoint) return result;
        double[] x = (double[])about.Clone(), up = new double[devices], down = new double[devices], more = new double[feeds],
            less = new double[feeds];
        foreach (int part in circuit.Relevant)
        {
            double step = circuit.Parts.All[part].Range.IsInKelvins ? KelvinStep : ShareStep;
            x[part] = about[part] + step;
            bool isSolved = Solve(x, up, more);
            x[part] = about[part] - step;
            isSolved &= Solve(x, down, less);
            x[part] = about[part];
            if (!isSolved) continue;
            for (int i = 0; i < devices; i++) result.VoltsPerPart[i][part] = (up[i] - down[i]) / (2 * step);
            for (int f = 0; f < feeds; f++) result.AmperesPerPart[f][part] = (more[f] - less[f]) / (2 * step);
        }

        return result;

        bool Solve(double[] deviations, double[] volts, double[] amperes)
        {
            bool isSolved = circuit.TrySolve(deviations, circuit.Loads, volts);
            for (int f = 0; f < feeds; f++) amperes[f] = isSolved ? circuit.FeedAmperes(f, deviations, circuit.Loads, volts) : 0;
            return isSolved;
        }
    }

    private static double[][] Empty(int rows, int columns)
    {
        var rowsOf = new double[rows][];
        for (int i = 0; i < rows; i++) rowsOf[i] = new double[columns];
        return rowsOf;
    }
}
