using System;
using System.Collections.Generic;
using System.Linq;
using CamPower.Reports;

namespace SiteCheck;

/// <summary>What is not stated, so that something is not known, and what to state; what the same boxes lack stands together.</summary>
internal static class UnstatedList
{
    private const int Indent = 2, MostExceptions = 3;

    private const string Rerating = "re-rating of ";

    public static void Write(Page page, SiteReport report, Shown shown)
    {
        if (report.NotStated.Count == 0) return;
        page.Blank();
        if (!shown.HasUnstatedPlaces)
        {
            page.Text($"Not stated, and so not checked: {string.Join(", ", report.NotStated.Select(what => Short(what.Key)).Distinct())}.");
            return;
        }

        page.Text("Not stated, and so not checked. Take it from data sheets or ask the maker:");
        string[] boxes = [.. report.Assessment.Boxes.Where(box => box.Outputs.Count > 0).Select(box => box.Box.Name)];
        foreach (IGrouping<string, string> alike in report.NotStated.GroupBy(what => Places([.. what], boxes, shown.MostNames), what => what.Key))
        {
            page.Text($"{string.Join(", ", alike)}: {alike.Key}", Indent);
        }
    }

    // Of several fuses it is the same.
    private static string Short(string what) => what.StartsWith(Rerating, StringComparison.Ordinal) ? Rerating + "fuses" : what;

    // Of most boxes it is shorter to say which ones are fine, or how many are not.
    private static string Places(IReadOnlyList<string> places, string[] boxes, int most)
    {
        string[] fine = [.. boxes.Except(places)];
        if (places.Count == 1 || fine.Length >= places.Count || places.Except(boxes).Any()) return Spoken.Names(places, most);
        if (fine.Length == 0) return $"all {places.Count} boxes and adapters";
        if (fine.Length <= MostExceptions) return $"all boxes and adapters except {string.Join(", ", fine)}";
        return places.Count > most ? $"{places.Count} of {boxes.Length} boxes and adapters" : string.Join(", ", places);
    }
}
