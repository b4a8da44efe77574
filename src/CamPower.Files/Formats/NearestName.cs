using System;
using System.Collections.Generic;
using System.Linq;

namespace CamPower.Files.Formats;

/// <summary>The known name that a mistyped one was most likely meant to be.</summary>
internal static class NearestName
{
    // Enough for people; a hostile file cannot make the search long.
    private const int LongestName = 100, MostNames = 200, Slip = 2;

    /// <summary>The first of the names that differ by a slip; else the first that has the name as a word; else the nearest, at most half of
    /// the letters away; null where there is none.</summary>
    internal static string? Of(string name, IEnumerable<string> known)
    {
        if (name.Length > LongestName) return null;
        string[] names = [.. known.Take(MostNames).Where(k => k.Length <= LongestName)];
        List<(string Name, int Distance)> near = [.. names
            .Select(k => (Name: k, Distance: Distance(name.ToUpperInvariant(), k.ToUpperInvariant())))
            .Where(x => x.Distance <= Math.Max(1, Math.Max(name.Length, x.Name.Length) / 2)).OrderBy(x => x.Distance)];
        if (near.Count > 0 && near[0].Distance <= Slip) return near[0].Name;
        return Array.Find(names, k => $" {k} ".Contains($" {name} ", StringComparison.OrdinalIgnoreCase))
            ?? near.Select(x => x.Name).FirstOrDefault();
    }

    /// <summary>Letters to insert, delete, replace or swap with their neighbor: the optimal string alignment distance.</summary>
    internal static int Distance(string a, string b)
    {
        var d = new int[a.Length + 1, b.Length + 1];
        for (int i = 0; i <= a.Length; i++) d[i, 0] = i;
        for (int j = 0; j <= b.Length; j++) d[0, j] = j;
        for (int i = 1; i <= a.Length; i++)
        {
            for (int j = 1; j <= b.Length; j++)
            {
                int replaced = d[i - 1, j - 1] + (a[i - 1] == b[j - 1] ? 0 : 1);
                d[i, j] = Math.Min(replaced, Math.Min(d[i - 1, j], d[i, j - 1]) + 1);
                bool swapped = i > 1 && j > 1 && a[i - 1] == b[j - 2] && a[i - 2] == b[j - 1];
                if (swapped) d[i, j] = Math.Min(d[i, j], d[i - 2, j - 2] + 1);
            }
        }

        return d[a.Length, b.Length];
    }
}
