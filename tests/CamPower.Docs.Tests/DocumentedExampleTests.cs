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
        foreach (string page in Pages())
        {
            for (int i = 0; i < DocumentedExample.In(Root, page).Count; i++) data.Add(page, i + 1);
        }

        return data;
    }

    // By number and not by line: while a page is made anew its lines move.
    [Theory]
    [MemberData(nameof(Examples))]
    public async Task Example_Run_PrintsWhatThePageSays(string page, int number)
    {
        DocumentedExample example = DocumentedExample.In(Root, page)[number - 1];
        string printed = await example.RunAsync();
        if (example.Printed is null) return;
        if (GeneratedPage.IsRegenerating) example.Rewrite(Root, printed);
        else Assert.Equal(DocumentedExample.Trimmed(example.Printed), printed);
    }

    [Fact]
    public void Readme_HasAnExampleThatSaysWhatItPrints() =>
        Assert.Contains(DocumentedExample.In(Root, "README.md"), e => e.Printed is not null);

    private static string[] Pages() => ["README.md", .. DocumentedExample.Pages(Path.Combine(Root, "docs")).Select(p => "docs/" + p)];
}
