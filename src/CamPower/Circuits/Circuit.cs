namespace CamPower.Circuits;

/// <summary>A network as numbers: nodes are indices, every element a row of its columns. SI doubles.</summary>
internal sealed class Circuit
{
    internal required int NodeCount { get; init; }

    /// <summary>The node at 0 V.</summary>
    internal required int Reference { get; init; }

    internal required int[] SourcePlus { get; init; }

    internal required int[] SourceMinus { get; init; }

    internal required double[] SourceVolts { get; init; }

    internal required double[] SourceOhms { get; init; }

    /// <summary>Whether each source may sink current.</summary>
    internal required bool[] SourceMaySink { get; init; }

    internal required int[] BranchFrom { get; init; }

    internal required int[] BranchTo { get; init; }

    internal required double[] BranchOhms { get; init; }

    internal required int[] LoadPlus { get; init; }

    internal required int[] LoadMinus { get; init; }

    internal required Load[] Loads { get; init; }

    internal int SourceCount => SourceVolts.Length;

    internal int BranchCount => BranchOhms.Length;

    /// <summary>The same network with other loads at the same places.</summary>
    internal Circuit With(Load[] loads) => With(loads, SourceVolts);

    /// <summary>The same network with other voltages of its sources. [V]</summary>
    internal Circuit WithSourceVolts(double[] volts) => With(Loads, volts);

    private Circuit With(Load[] loads, double[] sourceVolts) => new()
    {
        NodeCount = NodeCount,
        Reference = Reference,
        SourcePlus = SourcePlus,
        SourceMinus = SourceMinus,
        SourceVolts = sourceVolts,
        SourceOhms = SourceOhms,
        SourceMaySink = SourceMaySink,
        BranchFrom = BranchFrom,
        BranchTo = BranchTo,
        BranchOhms = BranchOhms,
        LoadPlus = LoadPlus,
        LoadMinus = LoadMinus,
        Loads = loads,
    };
}
