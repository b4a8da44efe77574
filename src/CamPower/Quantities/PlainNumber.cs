using System.Globalization;
using System.Linq;

namespace CamPower;

/// <summary>A number above 0 as people write it: without an exponent, and without losing a digit.</summary>
internal static class PlainNumber
{
    /// <summary>The shortest digits that give back the number, with the decimal point where it belongs.</summary>
    internal static string Text(double value)
    {
        string text = value.ToString("R", CultureInfo.InvariantCulture);
        string[] parts = text.Split('E');
        if (parts.Length == 1) return text;

        string digits = string.Concat(parts[0].Where(char.IsDigit));
        int exponent = int.Parse(parts[1], CultureInfo.InvariantCulture);
        return exponent < 0
            ? "0." + new string('0', -exponent - 1) + digits
            : digits.PadRight(exponent + 1, '0');
    }
}
