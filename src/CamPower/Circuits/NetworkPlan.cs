namespace CamPower.Circuits;

/// <summary>Plan of the solution of a network, made once: the place of each load, and the way from loads back to nodes.</summary>
/// <remarks>Immutable: shared by every solution, on any thread.</remarks>
internal abstract class NetworkPlan
{
    /// <summary>The row of each load in the columns of the solver.</summary>
    internal abstract int[] RowOf { get; }

    /// <summary>Whether a source may come on or be blocked as the loads change.</summary>
    internal abstract bool SourcesMaySwitch { get; }

    /// <summary>The same plan for the same network at other voltages of its sources.</summary>
    internal abstract NetworkPlan At(Circuit circuit);

    /// <summary>A solver with working memory of its own.</summary>
    internal abstract LinearizedCircuit NewSolver();

    /// <summary>Whether Newton's path from the voltages without load, ended early, proves that there is no operating point.</summary>
    internal abstract bool IsConclusive(Load[] loads);

    /// <summary>Every voltage and current of the network from those of its loads.</summary>
    internal abstract NetworkState Expand(LoadShares loads, double[] volts);
}
