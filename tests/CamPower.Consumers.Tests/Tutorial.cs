using System;
using System.Collections.Generic;
using System.IO;
using System.Linq;
using System.Text.RegularExpressions;
using System.Threading.Tasks;
using CamPower.Tests.Repository;

namespace CamPower.Consumers.Tests;

/// <summary>A page that is followed as it is: its console blocks are run, its files saved, its changes made.</summary>
/// <param name="page">Path of the page below the top of the repository.</param>
/// <param name="folder">The empty folder in which it is followed.</param>
internal sealed partial class Tutorial(string page, string folder)
{
    private const string Fence = "```";
    private readonly List<string> _lines = [.. File.ReadAllLines(RepositoryFiles.PathOf(page))];
    private readonly string _ended = Path.Combine(folder, "ended-in.txt");
    private string _at = folder, _file = string.Empty;

    /// <summary>Follows the page, and gives it back with what its commands print today.</summary>
    public async Task<string> FollowAsync()
    {
        string printed = string.Empty;
        for (int i = 0; i < _lines.Count; i++)
        {
            // Prose names the file that the next block is or changes.
            if (NamedFile().Match(_lines[i]) is { Success: true } named) _file = named.Groups[1].Value;
            if (!_lines[i].StartsWith(Fence, StringComparison.Ordinal)) continue;

            string kind = _lines[i][Fence.Length..];
            int end = _lines.IndexOf(Fence, i + 1);
            List<string> block = _lines[(i + 1)..end];
            switch (kind)
            {
                case "console": printed = await RunAsync(block, isShown: ShowsOutput(end)); break;
                case "text": end = Show(i + 1, block.Count, printed); break;
                case "diff": Change(block); break;
                case "sh": break;
                default: await File.WriteAllLinesAsync(Path.Combine(_at, _file), block); break;
            }

            i = end;
        }

        return string.Join('\n', _lines) + "\n";
    }

    private bool ShowsOutput(int end) => _lines.Skip(end + 1).FirstOrDefault(l => l.Length > 0) == Fence + "text";

    // One shell for each block, which begins where the last one ended. What nobody is shown must succeed.
    private async Task<string> RunAsync(List<string> commands, bool isShown)
    {
        string script = string.Join('\n', [isShown ? "set +e" : "set -e", $"CAMPOWER='{RepositoryFiles.Root}'", $"cd '{_at}'", .. commands, $"pwd > '{_ended}'"]);
        CommandResult run = await Command.RunAsync("bash", ".", "-c", script);
        Assert.True(run.ExitStatus == 0, $"{string.Join('\n', commands)}\n{run.Output}{run.Errors}");
        _at = (await File.ReadAllTextAsync(_ended)).Trim();
        return run.Output;
    }

    private int Show(int first, int count, string printed)
    {
        string[] shown = printed.TrimEnd().Split('\n');
        _lines.RemoveRange(first, count);
        _lines.InsertRange(first, shown);
        return first + shown.Length;
    }

    // The lines with a minus stand in the file once, one after the other.
    private void Change(List<string> diff)
    {
        string path = Path.Combine(_at, _file), text = File.ReadAllText(path);
        string before = Marked(diff, '-'), after = Marked(diff, '+');
        Assert.True(text.Split(before).Length == 2, $"{_file} must hold once:\n{before}");
        File.WriteAllText(path, text.Replace(before, after, StringComparison.Ordinal));
    }

    private static string Marked(List<string> diff, char mark) => string.Concat(diff.Where(l => l[0] == mark).Select(l => l[1..] + Environment.NewLine));

    [GeneratedRegex(@"(?:as|[Ii]n) `([\w.]+\.\w+)`")]
    private static partial Regex NamedFile();
}
