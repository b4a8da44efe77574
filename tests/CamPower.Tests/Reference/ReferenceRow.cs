using System;
using System.Globalization;
using System.Text.RegularExpressions;

namespace CamPower.Tests.Reference;

/// <summary>One figure from outside the project, as its source printed it.</summary>
internal sealed record ReferenceRow(
    string Id, string Quantity, string Conditions, string Value, string Unit, string Tolerance, string Source, string Provenance)
{
    /// <summary>The source's own figure is wrong, or contradicts the source itself: never an expected value.</summary>
    internal bool IsMisprint => Conditions.Contains("FLAG", StringComparison.Ordinal) || Source.Contains("FLAG", StringComparison.Ordinal)
        || Tolerance.StartsWith("invalid", StringComparison.Ordinal);

    /// <summary>A maximum of a standard: every nominal value lies below it.</summary>
    internal bool IsMaximum => Tolerance.StartsWith("exact limit", StringComparison.Ordinal)
        || (Quantity.StartsWith("Max DC resistance", StringComparison.Ordinal) && Tolerance.StartsWith("as printed", StringComparison.Ordinal));

    internal bool IsFromMemory => Provenance.StartsWith("from memory", StringComparison.Ordinal);

    /// <summary>The number; of "awg(10) = 2.5" what stands after the sign of equality.</summary>
    internal double Number => Unit == "AWG" ? Gauge(Digits) : double.Parse(Digits, CultureInfo.InvariantCulture);

    /// <summary>Half a unit of the last digit that is printed.</summary>
    internal double HalfLastDigit
    {
        get
        {
            string[] parts = Digits.Split('E');
            int point = parts[0].IndexOf('.', StringComparison.Ordinal);
            int decimals = point < 0 ? 0 : parts[0].Length - point - 1;
            int exponent = parts.Length > 1 ? int.Parse(parts[1], CultureInfo.InvariantCulture) : 0;
            return 0.5 * Math.Pow(10, exponent - decimals);
        }
    }

    /// <summary>The tolerance that the row states, in its unit.</summary>
    internal double Allowed
    {
        get
        {
            if (Tolerance.StartsWith("exact", StringComparison.Ordinal)) return 1e-12 * Math.Abs(Number);
            Match stated = Regex.Match(Tolerance, @"^±([\d.]+(?:[eE]-?\d+)?)( %)?");
            if (!stated.Success) return HalfLastDigit;
            double number = double.Parse(stated.Groups[1].Value, CultureInfo.InvariantCulture);
            return stated.Groups[2].Success ? number / 100 * Math.Abs(Number) : number;
        }
    }

    /// <summary>A gauge as a number that falls as wires get thicker: 2/0 is -1.</summary>
    internal static double Gauge(string text) => text.EndsWith("/0", StringComparison.Ordinal)
        ? 1 - double.Parse(text[..^2], CultureInfo.InvariantCulture)
        : double.Parse(text, CultureInfo.InvariantCulture);

    private string Digits => Value[(Value.IndexOf('=', StringComparison.Ordinal) + 1)..].Trim();
}
