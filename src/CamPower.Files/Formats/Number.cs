using System.Globalization;
using System.Linq;
using System.Text.RegularExpressions;
using UnitsNet;

namespace CamPower.Files.Formats;

/// <summary>The grammar of a number with its unit: sign, digits with a decimal point, exponent, at most one space, unit.</summary>
internal static partial class Number
{
    /// <summary>The number alone, as a pattern that the schema shares.</summary>
    internal const string Pattern = @"[+-]?([0-9]+(\.[0-9]+)?|\.[0-9]+)([eE][+-]?[0-9]+)?";

    private const RegexOptions Options = RegexOptions.ExplicitCapture | RegexOptions.CultureInvariant | RegexOptions.Singleline;

    /// <summary>Takes a text apart, or says that it does not begin with a number.</summary>
    internal static bool TrySplit(string text, out string number, out string unit)
    {
        Match match = NumberAndUnit().Match(text);
        number = match.Groups["number"].Value;
        unit = match.Groups["unit"].Value;
        return match.Success;
    }

    /// <summary>The number, or null where it is too large or too small for its type.</summary>
    internal static double? Value(string number)
    {
        double value = double.Parse(number, NumberStyles.Float, CultureInfo.InvariantCulture);
        bool vanished = value == 0 && HasSignificantDigit(number);
        return double.IsFinite(value) && !vanished ? value : null;
    }

    /// <summary>The same as a decimal.</summary>
    internal static decimal? DecimalValue(string number)
    {
        bool isKnown = decimal.TryParse(number, NumberStyles.Float, CultureInfo.InvariantCulture, out decimal value);
        bool vanished = value == 0 && HasSignificantDigit(number);
        return isKnown && !vanished ? value : null;
    }

    // Whether a number is not zero as it is written.
    private static bool HasSignificantDigit(string number) =>
        number.TakeWhile(c => c is not ('e' or 'E')).Any(c => c is >= '1' and <= '9');

    /// <summary>The shortest text that gives the number back.</summary>
    internal static string Text(double value) => value.ToString("R", CultureInfo.InvariantCulture);

    /// <summary>Whether two quantities have the same number in the same unit.</summary>
    internal static bool IsSame<T>(T a, T b)
        where T : IQuantity => a.Unit.Equals(b.Unit) && ((double)a.Value).Equals((double)b.Value);

    [GeneratedRegex($"^(?<number>{Pattern}) ?(?<unit>.*)$", Options, 1000)]
    private static partial Regex NumberAndUnit();
}
