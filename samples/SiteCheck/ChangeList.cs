using System;
using System.Collections.Generic;
using System.Linq;
using CamPower;
using static System.FormattableString;

namespace SiteCheck;

/// <summary>What differs from another version of the site.</summary>
internal static class ChangeList
{
    private const int MostMargins = 10;

    public static Page Page(SiteComparison comparison, int width)
    {
        var page = new Page(width);
        page.Line(comparison.After.Name);
        page.Line(comparison.IsEmpty ? "The two versions do not differ." : $"{comparison}.", ConsoleColor.White);
        Write(page, "New findings", comparison.Gained.Select(f => $"{f.Severity}: {f.About}: {f.Message}"));
        Write(page, "Findings that are gone", comparison.Lost.Select(f => $"{f.Severity}: {f.About}: {f.Title}"));
        Write(page, "Added", comparison.Added);
        Write(page, "Removed", comparison.Removed);
        Write(page, "Changed", comparison.Changed);
        Write(page, "Margins that changed, largest loss first", comparison.Margins.Take(MostMargins).Select(m => m.ToString()));
        if (comparison.Margins.Count > MostMargins) page.Text(Invariant($"and {comparison.Margins.Count - MostMargins} more"), indent: 2);
        Write(page, "Material", comparison.Material.Select(line => line.ToString()));
        if (comparison.Material.Count > 0) page.Text(Invariant($"Material cost: {Math.Abs(comparison.Cost):0.##} {PriceList.Neutral.Unit} {(comparison.Cost < 0 ? "less" : "more")}. Labor is not counted."), indent: 2);
        return page;
    }

    private static void Write(Page page, string heading, IEnumerable<string> items)
    {
        string[] all = [.. items];
        if (all.Length == 0) return;
        page.Blank();
        page.Line($"{heading}:");
        foreach (string item in all) page.Text($"- {item}", indent: 2);
    }
}
