using System.Globalization;

namespace CamPower.Checks;

/// <summary>The digits of a number that a finding compares with a limit.</summary>
internal static class Digits
{
    private const int Most = 12;

    /// <summary>The number in the invariant culture, with more decimals where it would read like the limit.</summary>
    /// <param name="value">The number.</param>
    /// <param name="limit">The limit that it is compared with.</param>
    /// <param name="format">Format with the fewest decimals.</param>
    /// <example>9.9996 against 10 is "9.9996", 9.2 against 10 is "9.20".</example>
    internal static string Of(double value, double limit, string format = "0.00")
    {
        for (int more = 0; more < Most && Text(value, format) == Text(limit, format); more++)
        {
            format += format.IndexOf('.') >= 0 ? format[format.Length - 1] : ".0";
        }

        return Text(value, format);
    }

    private static string Text(double number, string format) => number.ToString(format, CultureInfo.InvariantCulture);
}
