using System;
using System.Collections.Generic;
using System.Linq;
using CamPower;

namespace SiteCheck;

/// <summary>What was found, worst first, and what to do about it; what one rule found stands together.</summary>
internal static class FindingList
{
    private const int Indent = 9, MostAlso = 5, LeastOfASentence = 2;

    public static void Write(Page page, IReadOnlyList<Finding> all, Shown shown)
    {
        // What is not stated has a list of its own.
        List<Finding> findings = [.. all.Where(f => shown.IsEverything || !f.IsNotStated)];
        foreach (var alike in findings.Where(f => f.Severity >= shown.SentencesFrom).GroupBy(f => (f.Rule, f.Severity, FixOf(f, shown))))
        {
            IEnumerable<string> texts = shown.IsEverything ? Everything([.. alike]) : InBrief([.. alike], shown, page.Width - Indent);
            Write(page, alike.First().Severity, [.. texts]);
        }

        foreach (IGrouping<Severity, Finding> alike in findings.Where(f => f.Severity < shown.SentencesFrom).GroupBy(f => f.Severity))
        {
            Write(page, alike.Key, [.. Named(alike, shown.MostNames)]);
        }
    }

    private static void Write(Page page, Severity severity, IReadOnlyList<string> texts)
    {
        page.Labeled(severity.ToString().ToUpperInvariant(), Color(severity), texts[0], Indent);
        foreach (string text in texts.Skip(1)) page.Text(text, Indent);
    }

    private static IEnumerable<string> Everything(IReadOnlyList<Finding> alike) => [$"[{alike[0].Rule}]", .. alike.Select(Sentence), Remedy(alike[0])];

    // The sentence goes before the others, and those before what to do; but what to do about a danger keeps its place.
    private static List<string> InBrief(IReadOnlyList<Finding> alike, Shown shown, int width)
    {
        bool isDanger = alike[0].Severity == Severity.Danger;
        string kept = isDanger ? "Fix: " + FirstStep(alike[0].Remedy) : "";
        int most = isDanger ? Math.Max(LeastOfASentence, shown.MostLines - LinesOf(kept, width)) : shown.MostLines;
        List<string> texts = [Shortened(Sentence(alike[0]), width, most)];
        if (alike.Count > 1) Add("Also: " + Spoken.Names([.. alike.Skip(1).Select(f => $"{f.About.Name} {Spoken.Short(f.Measured)}".TrimEnd())], MostAlso));
        if (isDanger) texts.Add(texts.Sum(before => LinesOf(before, width)) + LinesOf(Remedy(alike[0]), width) > shown.MostLines ? kept : Remedy(alike[0]));
        else if (alike[0].Severity >= shown.RemediesFrom) Add(Remedy(alike[0]));
        return texts;

        void Add(string text)
        {
            int left = most - texts.Sum(before => LinesOf(before, width));
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

    // A line for each title: the parts, then what is wrong with them in the fewest words.
    private static IEnumerable<string> Named(IEnumerable<Finding> findings, int most) =>
        findings.GroupBy(f => f.Title).Select(alike => $"{Spoken.Names([.. alike.Select(f => f.About.Name).Distinct()], most)}: {alike.Key}");

    // What to do first, once nothing is energized.
    private static string FirstStep(string remedy)
    {
        string[] steps = [.. remedy.Split(". ").Select(step => step.TrimEnd('.')).Where(step => step != "Do not energize")];
        return steps.Length == 0 ? remedy : steps[0] + ".";
    }

    // In the details every remedy stands; in brief findings of a rule stand together, but for dangers that are mended otherwise.
    private static string FixOf(Finding finding, Shown shown) =>
        shown.IsEverything ? finding.Remedy : finding.Severity == Severity.Danger ? FirstStep(finding.Remedy) : "";

    private static string Sentence(Finding finding) => $"{finding.About.Name}: {finding.Message}";

    private static string Remedy(Finding finding) => "Fix: " + finding.Remedy;

    private static ConsoleColor Color(Severity severity) => severity switch
    {
        Severity.Danger or Severity.Failure => ConsoleColor.Red,
        Severity.Caution => ConsoleColor.Yellow,
        _ => ConsoleColor.Cyan,
    };
}
