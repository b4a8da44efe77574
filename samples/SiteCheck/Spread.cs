using System;
using System.Globalization;
using static System.FormattableString;

namespace SiteCheck;

/// <summary>From the least to the most of a number, or of several alike.</summary>
internal readonly record struct Spread(double Least, double Most)
{
    public Spread Joined(Spread other) => new(Math.Min(Least, other.Least), Math.Max(Most, other.Most));

    public static Spread? Joined(Spread? one, Spread? other) => one is Spread known ? known.Joined(other ?? known) : other;

    /// <summary>Two digits: more is not known of the current of a fault.</summary>
    public string Amperes() => Text(a => a.ToString(a < 9.95 ? "0.0" : "0", CultureInfo.InvariantCulture));

    public string Volts() => Text(v => Invariant($"{v:0.0}")) + " V";

    private string Text(Func<double, string> number) => number(Least) == number(Most) ? number(Least) : $"{number(Least)}-{number(Most)}";
}
