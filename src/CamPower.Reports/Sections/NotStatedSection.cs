using System;
using System.Collections.Generic;
using System.Linq;
using CamPower.Reports.Contents;
using static System.FormattableString;

namespace CamPower.Reports.Sections;

/// <summary>Section of what is not stated, so that a verdict is unknown, by boxes, outputs or models.</summary>
internal static class NotStatedSection
{
    private const int MostExceptions = 3;

    internal static Section Of(SiteReport report)
    {
        string[] boxes = [.. report.Assessment.Boxes.Where(b => b.Outputs.Count > 0).Select(b => b.Box.Name)];
        return new Section("Not stated",
        [
            new Paragraph("Not in the site file, and so not checked. Take it from data sheets, or ask the maker."),
            new DataTable("What is not stated", [new("What"), new("Of")],
                [.. report.NotStated.Select(what => (string[])[what.Key, Places([.. what], boxes)])]),
        ]);
    }

    // Of most boxes it is shorter to say which ones are fine.
    private static string Places(IReadOnlyList<string> places, string[] boxes)
    {
        string[] fine = [.. boxes.Except(places, StringComparer.Ordinal)];
        bool isNamed = places.Count == 1 || fine.Length is > MostExceptions || fine.Length >= places.Count
            || places.Except(boxes, StringComparer.Ordinal).Any();
        if (isNamed) return string.Join(", ", places);
        return fine.Length == 0
            ? Invariant($"all {places.Count} boxes and adapters")
            : $"all boxes and adapters except {string.Join(", ", fine)}";
    }
}
