using System;
using System.Globalization;

namespace CamPower.Tests.Reference;

/// <summary>What the project does with one reference row: computed, input, from-memory, out-of-scope or later, and how or why.</summary>
/// <remarks>For a computed row the detail is an expression for <see cref="Calculator"/>, and after bars a tolerance of its
/// own with the reason: "expression | 0.5 % | reason".</remarks>
internal sealed record InventoryEntry(string Id, string Use, string Detail)
{
    internal bool IsCalculated => Use is "computed" or "from-memory";

    /// <summary>Whether the library is asked for a standard's maximum itself, and not for the nominal value under it.</summary>
    internal bool StatesTheMaximum => Detail.Contains("AtIecMaximum", StringComparison.Ordinal);

    internal string Expression => Detail.Split(" | ")[0];

    /// <summary>The share of the value that may differ, where the source's own rounding is not the measure.</summary>
    internal double? OwnTolerance
    {
        get
        {
            string[] parts = Detail.Split(" | ");
            if (parts.Length == 1) return null;
            Assert.True(parts.Length == 3 && parts[1].EndsWith(" %", StringComparison.Ordinal) && parts[2].Length > 0, $"{Id}: a tolerance needs a reason.");
            return double.Parse(parts[1][..^2], CultureInfo.InvariantCulture) / 100;
        }
    }
}
