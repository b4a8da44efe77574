using System;
using System.IO;
using System.Linq;
using System.Threading.Tasks;
using CamPower.Tests.Repository;

namespace CamPower.Docs.Tests;

public class DocumentedExampleTests
{
    private static readonly string Root = RepositoryFiles.Root;

    public static TheoryData<string, int> Examples()
    {
        var data = new TheoryData<string, int>();
        foreach (DocumentedExample example in Pages().SelectMany(page => DocumentedExample.In(Root, page))) data.Add(example.Page, example.Line);
        return data;
    }

    [Theory]
    [MemberData(nameof(Examples))]
    public async Task Example_Run_PrintsWhatThePageSays(string page, int line)
    {
        DocumentedExample example = DocumentedExample.In(Root, page).Single(e => e.Line == line);
        string printed = await example.RunAsync();
        if (example.Printed is null) return;
        if (GeneratedPage.IsRegenerating) example.Rewrite(Root, printed);
        else Assert.Equal(DocumentedExample.Trimmed(example.Printed), printed);
    }

    [Fact]
    public void Readme_HasAnExampleThatSaysWhatItPrints() =>
        Assert.Contains(DocumentedExample.In(Root, "README.md"), e => e.Printed is not null);

    private static string[] Pages() =>
    [
        "README.md",
        .. Directory.EnumerateFiles(Path.Combine(Root, "docs"), "*.md").Order(StringComparer.Ordinal).Select(f => Path.GetRelativePath(Root, f)),
    ];
}
