using System.Globalization;
using System.Text.RegularExpressions;

namespace CamPower.Files.Formats;

/// <summary>The grammar of a number with its unit: sign, digits with a decimal point, exponent, at most one space, unit.</summary>
internal static partial class Number
{
    /// <summary>The number alone, as a pattern that the schema shares.</summary>
    internal const string Pattern = @"[+-]?([0-9]+(\.[0-9]+)?|\.[0-9]+)([eE][+-]?[0-9]+)?";

    /// <summary>Takes a text apart, or says that it does not begin with a number.</summary>
    internal static bool TrySplit(string text, out string number, out string unit)
    {
        Match match = NumberAndUnit().Match(text);
        number = match.Groups["number"].Value;
        unit = match.Groups["unit"].Value;
        return match.Success;
    }

    /// <summary>The shortest text that gives the number back.</summary>
    internal static string Text(double value) => value.ToString("R", CultureInfo.InvariantCulture);

    [GeneratedRegex($"^(?<number>{Pattern}) ?(?<unit>.*)$", RegexOptions.ExplicitCapture | RegexOptions.CultureInvariant | RegexOptions.Singleline, 1000)]
    private static partial Regex NumberAndUnit();
}
