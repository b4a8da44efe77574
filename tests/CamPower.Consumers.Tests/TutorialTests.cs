using System.IO;
using System.Linq;
using System.Threading.Tasks;
using CamPower.Tests.Repository;

namespace CamPower.Consumers.Tests;

public class TutorialTests
{
    private const string Page = "docs/tutorial/first-site.md";

    // Command by command, from an empty folder to a site without findings.
    [Fact]
    public async Task FirstSite_CanBeFollowedAsItStands()
    {
        await ForgetPackagesAsync();
        string folder = Directory.CreateTempSubdirectory("campower-tutorial").FullName;
        try
        {
            GeneratedPage.AssertCurrent(Page, await new Tutorial(Page, folder).FollowAsync());
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
            await ForgetPackagesAsync();
        }
    }

    [Fact]
    public void FirstSite_EndsWithoutFindings()
    {
        string[] shown = [.. File.ReadAllLines(RepositoryFiles.PathOf(Page)).Where(l => l is "No findings." || l.StartsWith("exit status", System.StringComparison.Ordinal))];
        Assert.Equal(["exit status 2", "exit status 0", "exit status 0", "No findings.", "exit status 0"], shown);
    }

    // What was restored before, of the same version, would be taken in place of what the page packs.
    private static async Task ForgetPackagesAsync()
    {
        string restored = (await Command.DotnetAsync(".", "nuget", "locals", "global-packages", "--list")).Output.Split(": ", 2)[1].Trim();
        foreach (string package in new[] { "campower", "campower.files" }.Select(p => Path.Combine(restored, p)).Where(Directory.Exists)) Directory.Delete(package, recursive: true);
    }
}
