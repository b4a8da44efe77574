using System.Collections.Generic;
using System.Globalization;
using System.Linq;
using CamPower;
using Spectre.Console;
using UnitsNet;
using static System.FormattableString;

namespace SiteCheck;

/// <summary>The conditions of a site, each with the letter that the tables call it by.</summary>
internal static class ConditionList
{
    public static void Write(IAnsiConsole console, Site site)
    {
        console.WriteLine("Conditions, with the temperatures of cable and box:");
        foreach (Condition condition in site.Conditions)
        {
            console.WriteLine(Invariant($"  {LetterOf(condition, site)}  {condition.Name}, {Text(condition.At.Cable)} and {Text(condition.At.Box)}"));
        }
    }

    public static char LetterOf(Condition condition, Site site) => (char)('a' + site.Conditions.ToList().IndexOf(condition));

    private static string Text(Temperature temperature) => temperature.ToString("s4", CultureInfo.InvariantCulture);
}
