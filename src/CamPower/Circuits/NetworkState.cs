namespace CamPower.Circuits;

/// <summary>Every voltage and current of a solved network, by index. SI doubles.</summary>
internal sealed class NetworkState(Circuit circuit)
{
    /// <summary>Voltage of each node against the reference. [V]</summary>
    internal double[] NodeVolts { get; } = new double[circuit.NodeCount];

    /// <summary>Current of each branch, from its first node to its second. [A]</summary>
    internal double[] BranchAmperes { get; } = new double[circuit.BranchCount];

    /// <summary>Current that each source delivers. [A]</summary>
    internal double[] SourceAmperes { get; } = new double[circuit.SourceCount];

    /// <summary>Voltage of each load. [V]</summary>
    internal double[] LoadVolts { get; } = new double[circuit.Loads.Length];

    /// <summary>Current of each load. [A]</summary>
    internal double[] LoadAmperes { get; } = new double[circuit.Loads.Length];

    /// <summary>Fills in voltage and current of each load from the rows of the solver.</summary>
    internal void TakeLoads(LoadShares loads, int[] rowOf, double[] volts)
    {
        for (int k = 0; k < rowOf.Length; k++)
        {
            LoadVolts[k] = volts[rowOf[k]];
            LoadAmperes[k] = loads.Rows[rowOf[k]].AmperesAt(LoadVolts[k]);
        }
    }

    /// <summary>Twice the node voltages and source currents of this state less those of another.</summary>
    internal NetworkState TwiceLess(NetworkState other)
    {
        var state = new NetworkState(circuit);
        for (int i = 0; i < NodeVolts.Length; i++) state.NodeVolts[i] = (2 * NodeVolts[i]) - other.NodeVolts[i];
        for (int s = 0; s < SourceAmperes.Length; s++) state.SourceAmperes[s] = (2 * SourceAmperes[s]) - other.SourceAmperes[s];
        return state;
    }

    internal PowerBalance Balance()
    {
        double delivered = 0, taken = 0, lost = 0;
        for (int s = 0; s < SourceAmperes.Length; s++)
        {
            delivered += circuit.SourceVolts[s] * SourceAmperes[s];
            lost += SourceAmperes[s] * SourceAmperes[s] * circuit.SourceOhms[s];
        }

        for (int b = 0; b < BranchAmperes.Length; b++) lost += BranchAmperes[b] * BranchAmperes[b] * circuit.BranchOhms[b];
        for (int k = 0; k < LoadAmperes.Length; k++) taken += LoadVolts[k] * LoadAmperes[k];
        return new PowerBalance(delivered, taken, lost);
    }
}
