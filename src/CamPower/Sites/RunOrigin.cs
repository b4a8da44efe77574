using System;

namespace CamPower;

/// <summary>Where a run of a site starts: at a numbered output of a box, or at a junction where another run ends.</summary>
/// <remarks>Immutable.</remarks>
/// <example><code>RunOrigin start = RunOrigin.Output("yard box", 3);</code></example>
public sealed class RunOrigin
{
    private RunOrigin(string? box, int outputNumber, string? junction)
    {
        BoxName = box;
        OutputNumber = outputNumber;
        JunctionName = junction;
    }

    /// <summary>The name of the box, or null where the run starts at a junction.</summary>
    public string? BoxName { get; }

    /// <summary>The number of the output, from 1; 0 where the run starts at a junction.</summary>
    public int OutputNumber { get; }

    /// <summary>The name of the junction, or null where the run starts at an output.</summary>
    public string? JunctionName { get; }

    /// <summary>The output of a box.</summary>
    /// <param name="box">Name of the box. Not empty.</param>
    /// <param name="number">Number of the output, from 1.</param>
    /// <exception cref="ArgumentNullException"><paramref name="box"/> is null.</exception>
    /// <exception cref="ArgumentException"><paramref name="box"/> is empty.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="number"/> is less than 1.</exception>
    public static RunOrigin Output(string box, int number) =>
        new(Require.Name(box, nameof(box)), (int)Require.Within(number, 1, int.MaxValue, nameof(number), ""), null);

    /// <summary>A junction where another run ends.</summary>
    /// <param name="name">Name of the junction. Not empty.</param>
    /// <exception cref="ArgumentNullException"><paramref name="name"/> is null.</exception>
    /// <exception cref="ArgumentException"><paramref name="name"/> is empty.</exception>
    public static RunOrigin Junction(string name) => new(null, 0, Require.Name(name, nameof(name)));

    /// <summary>The place in words; never throws.</summary>
    public override string ToString() => JunctionName is null ? NameOf(BoxName!, OutputNumber) : $"junction {JunctionName}";

    /// <summary>Name of an output of a box, by which findings and readings know it: "yard box output 3".</summary>
    internal static string NameOf(string box, int output) => FormattableString.Invariant($"{box} output {output}");
}
