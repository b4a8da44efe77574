using System;
using System.IO;
using System.Text.Json.Nodes;
using System.Threading.Tasks;
using CamPower.Tests.Repository;

namespace CamPower.Consumers.Tests;

public class SiteCheckTests
{
    private const string Project = "samples/SiteCheck";

    [Fact]
    public async Task OnThePackage_ItPrintsWhatItPrintsOnTheSources()
    {
        CommandResult sources = await Command.DotnetAsync(".", "run", "--project", Project);
        CommandResult package = await Command.DotnetAsync(".", "run", "--project", Project, "-p:CamPowerFrom=package");
        GeneratedPage.AssertCurrent(Project + "/boatyard.txt", package.Output);
        Assert.Equal((sources.ExitStatus, sources.Output), (package.ExitStatus, package.Output));

        string dependencies = await File.ReadAllTextAsync(RepositoryFiles.PathOf(Project + "/bin/package/Debug/net10.0/SiteCheck.deps.json"));
        foreach ((string name, JsonNode? library) in JsonNode.Parse(dependencies)!["libraries"]!.AsObject())
        {
            if (name.StartsWith("CamPower", StringComparison.Ordinal)) Assert.Equal("package", (string)library!["type"]!);
        }

        Assert.Contains("\"CamPower.Files/", dependencies, StringComparison.Ordinal);
    }
}
