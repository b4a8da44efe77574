using System;
using System.Collections.Generic;
using System.IO;
using System.Linq;
using CamPower.Tests.Repository;

namespace CamPower.Docs.Tests;

/// <summary>A block after a line <c>&lt;!-- file: path --&gt;</c> holds that file's text: what a sample printed.</summary>
public class ShownFileTests
{
    private const string Mark = "<!-- file: ", MarkEnd = " -->", Fence = "```";

    public static TheoryData<string> Pages => [.. new[] { "docs", "samples" }
        .SelectMany(f => Directory.EnumerateFiles(RepositoryFiles.PathOf(f), "*.md", SearchOption.AllDirectories))
        .Where(f => File.ReadAllText(f).Contains(Mark, StringComparison.Ordinal))
        .Select(f => Path.GetRelativePath(RepositoryFiles.Root, f).Replace('\\', '/')).Order(StringComparer.Ordinal)];

    [Theory]
    [MemberData(nameof(Pages))]
    public void ShownBlocks_AreTheirFiles(string page)
    {
        string[] lines = File.ReadAllLines(RepositoryFiles.PathOf(page));
        GeneratedPage.AssertCurrent(page, string.Join('\n', WithFiles(lines)) + "\n");
    }

    private static IEnumerable<string> WithFiles(string[] lines)
    {
        for (int i = 0; i < lines.Length; i++)
        {
            yield return lines[i];
            if (!lines[i].StartsWith(Mark, StringComparison.Ordinal)) continue;

            string path = lines[i][Mark.Length..^MarkEnd.Length];
            Assert.StartsWith(Fence, lines[i + 1], StringComparison.Ordinal);
            yield return lines[i + 1];
            foreach (string line in File.ReadAllText(RepositoryFiles.PathOf(path)).TrimEnd().Split('\n')) yield return line.TrimEnd();
            i = Array.IndexOf(lines, Fence, i + 2);
            yield return Fence;
        }
    }
}
