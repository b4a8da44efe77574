using System.IO;
using System.Linq;
using System.Xml.Linq;
using CamPower.Tests.Repository;

namespace CamPower.Docs.Tests;

/// <summary>The pictures of what the samples print hold what the committed files say that they print.</summary>
public class TerminalPictureTests
{
    [Theory]
    [InlineData("site-check", "What the site check prints", "dotnet run --project samples/SiteCheck", "samples/SiteCheck/boatyard.txt", 43)]
    [InlineData("script-choose-gauge", "What a script prints", "dotnet run choose-gauge.cs", "samples/scripts/choose-gauge.txt", int.MaxValue)]
    [InlineData("plan-service-short", "A part of what the plan service answers",
        "curl … http://127.0.0.1:5080/assessments | jq '.boxes[0].outputs[1].shorts[1]'", "samples/PlanService/slip-gate.short.json", int.MaxValue)]
    public void Picture_IsOfWhatTheSamplePrints(string name, string title, string command, string file, int lines)
    {
        string printed = File.ReadAllText(RepositoryFiles.PathOf(file));
        string picture = TerminalPicture.Of(title, command, printed, lines);
        GeneratedPage.AssertCurrent($"docs/images/{name}.svg", picture);

        string[] drawn = [.. XElement.Parse(picture).Descendants().Where(e => e.Name.LocalName == "text").Select(e => e.Value.Replace('\u00a0', ' '))];
        string[] expected = [.. printed.Split('\n').Take(lines).Select(l => l.Trim()).Where(l => l.Length > 0)];
        Assert.Equal(expected, drawn.Skip(1).Take(expected.Length));
    }
}
