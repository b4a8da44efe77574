using System;
using System.Collections.Generic;
using System.Globalization;
using System.IO;
using System.Linq;
using System.Threading.Tasks;
using Microsoft.CodeAnalysis.CSharp.Scripting;
using Microsoft.CodeAnalysis.Scripting;

namespace CamPower.Docs.Tests;

/// <summary>A C# block of a page with the text block after it: what it must print.</summary>
public sealed class DocumentedExample
{
    private const string CodeFence = "```csharp", OutputFence = "```text", Fence = "```";

    // Console is one for the whole process: examples run one after the other.
    private static readonly System.Threading.SemaphoreSlim OneAtATime = new(1);

    private DocumentedExample(string page, int line, string code, string? printed)
    {
        Page = page;
        Line = line;
        Code = code;
        Printed = printed;
    }

    public string Page { get; }

    /// <summary>Line of the code fence in the page, from 1.</summary>
    public int Line { get; }

    public string Code { get; }

    /// <summary>What the page says that it prints, or null where the page only shows how something is written.</summary>
    public string? Printed { get; }

    /// <summary>Every page of a folder and of those in it, as paths from that folder.</summary>
    public static IEnumerable<string> Pages(string folder) =>
        Directory.EnumerateFiles(folder, "*.md", SearchOption.AllDirectories).Select(f => Path.GetRelativePath(folder, f).Replace('\\', '/')).Order(StringComparer.Ordinal);

    /// <summary>Every C# block of a page; the text block belongs to the C# block right before it.</summary>
    public static IReadOnlyList<DocumentedExample> In(string root, string page)
    {
        string[] lines = File.ReadAllLines(Path.Combine(root, page));
        var examples = new List<DocumentedExample>();
        for (int i = 0; i < lines.Length; i++)
        {
            if (!lines[i].Equals(CodeFence, StringComparison.Ordinal)) continue;
            int end = Array.IndexOf(lines, Fence, i + 1);
            int next = Array.FindIndex(lines, end + 1, l => l.StartsWith(Fence, StringComparison.Ordinal));
            bool hasOutput = next >= 0 && lines[next].Equals(OutputFence, StringComparison.Ordinal);
            string? printed = hasOutput ? string.Join('\n', lines[(next + 1)..Array.IndexOf(lines, Fence, next + 1)]) : null;
            examples.Add(new DocumentedExample(page, i + 1, string.Join('\n', lines[(i + 1)..end]), printed));
            i = end;
        }

        return examples;
    }

    /// <summary>Compiles and runs the code in the invariant culture and gives back what it printed.</summary>
    public async Task<string> RunAsync()
    {
        var options = ScriptOptions.Default
            .WithReferences(typeof(Load).Assembly, typeof(Files.SiteFile).Assembly, typeof(Reports.Chart).Assembly,
                typeof(Planning.SitePlan).Assembly, typeof(UnitsNet.Length).Assembly)
            .WithImports("System", "System.Collections.Generic", "System.Linq", "System.Threading");
        await OneAtATime.WaitAsync();
        TextWriter console = Console.Out;
        CultureInfo culture = CultureInfo.CurrentCulture;
        try
        {
            CultureInfo.CurrentCulture = CultureInfo.InvariantCulture;
            using var captured = new StringWriter(CultureInfo.InvariantCulture);
            Console.SetOut(captured);
            await CSharpScript.RunAsync(Code, options);
            return Trimmed(captured.ToString());
        }
        finally
        {
            Console.SetOut(console);
            CultureInfo.CurrentCulture = culture;
            OneAtATime.Release();
        }
    }

    /// <summary>Puts what the code printed into the page, in place of the text block after it.</summary>
    public void Rewrite(string root, string printed)
    {
        string path = Path.Combine(root, Page);
        var lines = File.ReadAllLines(path).ToList();
        int start = lines.FindIndex(Line, l => l.Equals(OutputFence, StringComparison.Ordinal)) + 1;
        lines.RemoveRange(start, lines.IndexOf(Fence, start) - start);
        lines.InsertRange(start, printed.Split('\n'));
        File.WriteAllText(path, string.Join('\n', lines) + '\n');
    }

    public override string ToString() => FormattableString.Invariant($"{Page}:{Line}");

    // Trailing blanks and blank lines at the end do not show on a page.
    public static string Trimmed(string text) =>
        string.Join('\n', text.Replace("\r", "", StringComparison.Ordinal).Split('\n').Select(l => l.TrimEnd())).TrimEnd('\n');
}
