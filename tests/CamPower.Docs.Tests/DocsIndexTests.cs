using System;
using System.IO;
using System.Linq;
using CamPower.Tests.Repository;

namespace CamPower.Docs.Tests;

public class DocsIndexTests
{
    // A page that nobody is sent to is not read.
    [Fact]
    public void EveryPage_IsInTheIndex() => AssertNamesEveryPage("docs/README.md", page => $"]({page})");

    [Fact]
    public void EveryPage_IsInTheContentsOfTheSite() => AssertNamesEveryPage("docs/toc.yml", page => $"href: {page}\n");

    private static void AssertNamesEveryPage(string index, Func<string, string> mention)
    {
        string text = File.ReadAllText(RepositoryFiles.PathOf(index));
        string[] pages = [.. DocumentedExample.Pages(RepositoryFiles.PathOf("docs")).Where(p => p != "README.md")];
        Assert.NotEmpty(pages);
        Assert.All(pages, page => Assert.Contains(mention(page), text, StringComparison.Ordinal));
    }
}
