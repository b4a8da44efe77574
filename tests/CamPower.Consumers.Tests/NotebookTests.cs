using System;
using System.IO;
using System.Linq;
using System.Text.RegularExpressions;
using System.Threading.Tasks;
using System.Xml.Linq;
using CamPower.Tests.Repository;

namespace CamPower.Consumers.Tests;

public sealed partial class NotebookTests(NotebookTests.Tool tool) : IClassFixture<NotebookTests.Tool>
{
    public static TheoryData<string> Notebooks => [.. Directory.EnumerateFiles(RepositoryFiles.PathOf(Notebook.Folder), "*.ipynb").Select(f => Path.GetFileName(f)).Order()];

    [Theory]
    [MemberData(nameof(Notebooks))]
    public async Task Cells_ShowWhatIsCommitted(string name)
    {
        Assert.True(tool.Restored.ExitStatus == 0, tool.Restored.Errors);
        Notebook ran = await Notebook.Committed(name).RunAsync();
        GeneratedPage.AssertCurrent(ran.Path, ran.ToString());
    }

    // The package shows its results itself.
    [Theory]
    [MemberData(nameof(Notebooks))]
    public void Cells_FormatNothing(string name)
    {
        string[] sources = [.. Notebook.Committed(name).CodeCells.Select(c => string.Concat(c["source"]!.AsArray().Select(l => (string)l!)))];
        Assert.NotEmpty(sources);
        Assert.All(sources, s => Assert.DoesNotMatch(Formatting(), s));
    }

    // What the extension does not know would be shown member by member, in a tree.
    [Theory]
    [MemberData(nameof(Notebooks))]
    public void Outputs_AreAllOfTheExtension(string name)
    {
        string[] shown = [.. Notebook.Committed(name).Shown];
        Assert.NotEmpty(shown);
        Assert.All(shown, s => Assert.DoesNotContain("dni-", s, StringComparison.Ordinal));
    }

    [Theory]
    [MemberData(nameof(Notebooks))]
    public void TablesAndCharts_AreWellFormed(string name)
    {
        string[] markup = [.. Notebook.Committed(name).Shown.Where(s => s.StartsWith('<'))];
        Assert.NotEmpty(markup);
        foreach (string html in markup)
        {
            XElement body = XElement.Parse("<body>" + html + "</body>");
            foreach (XElement row in body.Descendants("tr").Where(r => r.Parent!.Name.LocalName == "tbody"))
            {
                Assert.Equal(row.Parent!.Parent!.Element("thead")!.Descendants("th").Count(), row.Elements("td").Count());
            }

            foreach (XElement svg in body.Descendants().Where(e => e.Name.LocalName == "svg"))
            {
                Assert.Equal("img", (string?)svg.Attribute("role"));
                Assert.False(string.IsNullOrEmpty((string?)svg.Element(svg.Name.Namespace + "title")));
            }
        }
    }

    // Four sizes, four lines, each told apart by its dashes and named at its end.
    [Fact]
    public void ChartOfGauges_HasANamedLineForEach()
    {
        XElement svg = Chart("choose-the-gauge.ipynb", 0);
        string[] dashes = [.. Parts(svg, "polyline").Select(l => (string)l.Attribute("stroke-dasharray")!)];
        Assert.Equal(4, dashes.Distinct().Count());
        string[] texts = [.. Parts(svg, "text").Select(t => t.Value)];
        Assert.All(new[] { "14 AWG", "16 AWG", "18 AWG", "20 AWG", "one-way length, ft" }, t => Assert.Contains(t, texts));
    }

    [Fact]
    public void PictureOfTheDocs_IsTheChartOfGauges() =>
        GeneratedPage.AssertCurrent("docs/images/voltage-against-length.svg", Chart("choose-the-gauge.ipynb", 0) + "\n");

    // The drawn points, put back through the axes, are the voltages of the table beneath.
    [Fact]
    public void ChartOfTemperatures_ShowsTheNumbersOfItsTable()
    {
        string html = Notebook.Committed("what-if.ipynb").Shown.First(s => s.Contains("<svg", StringComparison.Ordinal));
        XElement body = XElement.Parse("<body>" + html + "</body>");
        double[] inTable = [.. body.Descendants("tbody").Single().Elements("tr").Select(r => Number(r.Elements("td").ElementAt(1).Value))];
        XElement svg = body.Elements().First();
        (double At, double Volts)[] axis = [.. Parts(svg, "text").Where(t => (string?)t.Attribute("text-anchor") == "end").Select(t => (Number((string)t.Attribute("y")!), Number(t.Value)))];
        double voltsPerPixel = (axis[^1].Volts - axis[0].Volts) / (axis[^1].At - axis[0].At);
        double[] drawn = [.. ((string)Parts(svg, "polyline").Single().Attribute("points")!).Split(' ').Select(p => axis[0].Volts + ((Number(p.Split(',')[1]) - axis[0].At) * voltsPerPixel))];
        Assert.Equal(inTable.Length, drawn.Length);
        Assert.All(inTable.Zip(drawn), p => Assert.Equal(p.First, p.Second, tolerance: 0.002));
    }

    [Fact]
    public void FirstLook_ShowsTheRunOfTheReadmeAndItsWorking()
    {
        string[] shown = [.. Notebook.Committed("first-look.ipynb").Shown];
        Assert.Contains("10.564\u00A0V", System.Net.WebUtility.HtmlDecode(shown[0]), StringComparison.Ordinal);
        Assert.StartsWith("### 9 W at the end of 120 ft", shown[1], StringComparison.Ordinal);
        Assert.Contains("$$", shown[1], StringComparison.Ordinal);
    }

    [GeneratedRegex(@"Formatter|display|HTML|svg|<table|MimeType|Console", RegexOptions.IgnoreCase)]
    private static partial Regex Formatting();

    private static XElement Chart(string notebook, int number) => Notebook.Committed(notebook).Shown
        .SelectMany(s => XElement.Parse("<body>" + s.Replace("&nbsp;", " ", StringComparison.Ordinal) + "</body>").Elements().Where(e => e.Name.LocalName == "svg")).ElementAt(number);

    private static XElement[] Parts(XElement svg, string name) => [.. svg.Descendants(svg.Name.Namespace + name)];

    private static double Number(string text) =>
        double.Parse(text.Split(' ', '\u00A0')[0], System.Globalization.CultureInfo.InvariantCulture);

    /// <summary>The program that runs notebooks, restored once.</summary>
    public sealed class Tool : IAsyncLifetime
    {
        internal CommandResult Restored { get; private set; } = null!;

        public async Task InitializeAsync() => Restored = await Command.DotnetAsync("samples", "tool", "restore");

        public Task DisposeAsync() => Task.CompletedTask;
    }
}
