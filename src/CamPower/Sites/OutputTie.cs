using System;

namespace CamPower;

/// <summary>Two outputs that are joined, positive to positive: two supplies in parallel, or one output doubled.</summary>
/// <remarks>
/// Immutable. It is there to be found, not to be solved: nothing that is worked out of a site counts on a tie, and everything
/// holds for the site once the tie is gone. What flows through it depends on data that no sheet of the two supplies gives.
/// </remarks>
/// <example><code>var tie = new OutputTie("yard box", 3, "old adapter", 1);</code></example>
public sealed class OutputTie
{
    /// <summary>Names two outputs that are joined.</summary>
    /// <param name="oneBox">Name of one box. Not empty.</param>
    /// <param name="oneOutput">Number of its output, from 1.</param>
    /// <param name="otherBox">Name of the other box, or the same one. Not empty.</param>
    /// <param name="otherOutput">Number of its output, from 1.</param>
    /// <exception cref="ArgumentNullException">A name is null.</exception>
    /// <exception cref="ArgumentException">A name is empty, or an output is joined to itself.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A number is below 1.</exception>
    public OutputTie(string oneBox, int oneOutput, string otherBox, int otherOutput)
    {
        OneBox = Require.Name(oneBox, nameof(oneBox));
        OneOutput = (int)Require.Within(oneOutput, 1, int.MaxValue, nameof(oneOutput), "");
        OtherBox = Require.Name(otherBox, nameof(otherBox));
        OtherOutput = (int)Require.Within(otherOutput, 1, int.MaxValue, nameof(otherOutput), "");
        if (IsWithinOneBox && oneOutput == otherOutput)
        {
            throw new ArgumentException("An output is not joined to itself.", nameof(otherOutput));
        }
    }

    /// <summary>Name of one box.</summary>
    public string OneBox { get; }

    /// <summary>Number of its output.</summary>
    public int OneOutput { get; }

    /// <summary>Name of the other box, or the same one.</summary>
    public string OtherBox { get; }

    /// <summary>Number of its output.</summary>
    public int OtherOutput { get; }

    /// <summary>Whether both outputs are of one box, and so of one supply.</summary>
    public bool IsWithinOneBox => string.Equals(OneBox, OtherBox, StringComparison.Ordinal);

    /// <summary>Whether it is at an output of a box.</summary>
    internal bool IsAt(string box) =>
        string.Equals(OneBox, box, StringComparison.Ordinal) || string.Equals(OtherBox, box, StringComparison.Ordinal);

    /// <summary>Both outputs in words; never throws.</summary>
    public override string ToString() =>
        FormattableString.Invariant($"tie of {OneBox} output {OneOutput} and {OtherBox} output {OtherOutput}");
}
