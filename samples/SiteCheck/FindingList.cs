using System;
using System.Collections.Generic;
using System.Linq;
using CamPower;

namespace SiteCheck;

/// <summary>What was found, worst first, and what to do about it; what one rule found stands together.</summary>
internal static class FindingList
{
    private const int Indent = 9, MostAlso = 5;

    public static void Write(Page page, IReadOnlyList<Finding> all, Shown shown)
    {
        // What is not stated has a list of its own.
        List<Finding> findings = [.. all.Where(f => shown.IsEverything || !f.IsNotStated)];
        foreach (IGrouping<string, Finding> alike in findings.Where(f => f.Severity >= shown.SentencesFrom).GroupBy(f => f.Rule))
        {
            IEnumerable<string> texts = shown.IsEverything ? Everything([.. alike]) : InBrief([.. alike], shown, page.Width - Indent);
            Write(page, alike.First().Severity, [.. texts]);
        }

        foreach (IGrouping<Severity, Finding> alike in findings.Where(f => f.Severity < shown.SentencesFrom).GroupBy(f => f.Severity))
        {
            Write(page, alike.Key, [ByName(alike, shown.MostNames)]);
        }
    }

    private static void Write(Page page, Severity severity, IReadOnlyList<string> texts)
    {
        page.Labeled(severity.ToString().ToUpperInvariant(), Color(severity), texts[0], Indent);
        foreach (string text in texts.Skip(1)) page.Text(text, Indent);
    }

    private static IEnumerable<string> Everything(IReadOnlyList<Finding> alike) => [$"[{alike[0].Rule}]", .. alike.Select(Sentence), Remedy(alike[0])];

    // The sentence goes before the others, and those before what to do.
    private static List<string> InBrief(IReadOnlyList<Finding> alike, Shown shown, int width)
    {
        List<string> texts = [Shortened(Sentence(alike[0]), width, shown.MostLines)];
        if (alike.Count > 1) Add("Also: " + Spoken.Names([.. alike.Skip(1).Select(f => $"{f.About.Name} {Spoken.Short(f.Measured)}".TrimEnd())], MostAlso));
        if (alike[0].Severity >= shown.RemediesFrom) Add(Remedy(alike[0]));
        return texts;

        void Add(string text)
        {
            int left = shown.MostLines - texts.Sum(before => LinesOf(before, width));
            string shortened = Shortened(text, width, left);
            if (LinesOf(shortened, width) <= left) texts.Add(shortened);
        }
    }

    // What stands behind the last semicolon or full stop says the least.
    private static string Shortened(string text, int width, int lines)
    {
        while (LinesOf(text, width) > lines && Math.Max(text.LastIndexOf("; ", StringComparison.Ordinal), text.LastIndexOf(". ", StringComparison.Ordinal)) is > 0 and int end)
        {
            text = text[..end] + ".";
        }

        return text;
    }

    private static int LinesOf(string text, int width) => Page.Wrapped(text, width).Count();

    // Rules have names in words, which say what the finding is in the fewest.
    private static string ByName(IEnumerable<Finding> findings, int most) =>
        string.Join("; ", findings.GroupBy(f => f.Rule).Select(alike => $"{alike.Key.Replace('-', ' ')}: {Spoken.Names([.. alike.Select(f => f.About.Name)], most)}"));

    private static string Sentence(Finding finding) => $"{finding.About.Name}: {finding.Message}";

    private static string Remedy(Finding finding) => "Fix: " + finding.Remedy;

    private static ConsoleColor Color(Severity severity) => severity switch
    {
        Severity.Danger or Severity.Failure => ConsoleColor.Red,
        Severity.Caution => ConsoleColor.Yellow,
        _ => ConsoleColor.Cyan,
    };
}
