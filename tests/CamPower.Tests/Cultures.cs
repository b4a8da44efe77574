using System;
using System.Globalization;

namespace CamPower.Tests;

/// <summary>Cultures whose commas, minus signs, digits and dotless i have broken programs before.</summary>
internal static class Cultures
{
    private static readonly string[] Names = ["tr-TR", "de-DE", "ar-SA"];

    /// <summary>Runs the same action in the invariant culture and in each of the others.</summary>
    internal static void ForEach(Action<CultureInfo> action)
    {
        CultureInfo before = CultureInfo.CurrentCulture, uiBefore = CultureInfo.CurrentUICulture;
        try
        {
            foreach (string name in (string[])["", .. Names])
            {
                var culture = CultureInfo.GetCultureInfo(name);
                CultureInfo.CurrentCulture = culture;
                CultureInfo.CurrentUICulture = culture;
                action(culture);
            }
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
            CultureInfo.CurrentUICulture = uiBefore;
        }
    }

    /// <summary>Asserts that a text is the same in every culture.</summary>
    internal static void AssertSame(Func<string?> text)
    {
        string? expected = null;
        ForEach(culture =>
        {
            if (culture.Name.Length == 0) expected = text();
            else Assert.Equal(expected, text());
        });
    }
}
