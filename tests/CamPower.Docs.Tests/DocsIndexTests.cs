using System;
using System.IO;
using System.Linq;
using CamPower.Tests.Repository;

namespace CamPower.Docs.Tests;

public class DocsIndexTests
{
    // A page that nobody is sent to is not read.
    [Fact]
    public void EveryPage_IsInTheIndex()
    {
        string index = File.ReadAllText(RepositoryFiles.PathOf("docs/README.md"));
        string[] pages = [.. Directory.EnumerateFiles(RepositoryFiles.PathOf("docs"), "*.md").Select(f => Path.GetFileName(f)).Where(f => f != "README.md")];
        Assert.NotEmpty(pages);
        Assert.All(pages, page => Assert.Contains($"]({page})", index, StringComparison.Ordinal));
    }
}
