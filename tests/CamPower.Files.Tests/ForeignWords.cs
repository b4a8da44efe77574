using System.Text.RegularExpressions;

namespace CamPower.Files.Tests;

/// <summary>Words of the exceptions of the units library, the JSON parser and the CSV parser, which no reader of a message understands.</summary>
internal static partial class ForeignWords
{
    internal static void AssertNone(string message) => Assert.DoesNotMatch(Words(), message);

    [GeneratedRegex(@"Parameter '|parameter name|in this mode|\b0x[0-9A-Fa-f]{2}|BytePosition|LineNumber|Exception|UnitsNet|System\.|QuantityValue|\bUnit\b")]
    private static partial Regex Words();
}
