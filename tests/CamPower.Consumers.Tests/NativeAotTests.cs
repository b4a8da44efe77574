using System;
using System.IO;
using System.Linq;
using System.Text.RegularExpressions;
using System.Threading.Tasks;
using CamPower.Tests.Repository;

namespace CamPower.Consumers.Tests;

public sealed partial class NativeAotTests(NativeAotTests.Publication published) : IClassFixture<NativeAotTests.Publication>
{
    private const string Project = "tests/Consumers/NativeAot", Site = "samples/SiteCheck/sites/boatyard-as-found.json";

    [Fact]
    public void Publish_Succeeds() => Assert.True(published.Log.ExitStatus == 0, published.Log.Output);

    // UnitsNet looks for its own members by name where it registers conversions, and CsvHelper where it maps records to classes; nothing here calls that.
    [Fact]
    public void Publish_WarnsOfUnitsNetAndCsvHelperAlone()
    {
        string[] warnings = [.. Warning().Matches(published.Log.Output).Select(m => m.Groups[1].Value).Distinct(StringComparer.Ordinal)];
        Assert.Equal(["IL2104: Assembly 'CsvHelper' produced trim warnings", "IL2104: Assembly 'UnitsNet' produced trim warnings"], warnings.Order(StringComparer.Ordinal));
    }

    [Fact]
    public async Task GatePlan_IsThatOfTheOtherBuild()
    {
        CommandResult run = await Command.RunAsync(published.Program, ".");
        Assert.Equal((0, await File.ReadAllTextAsync(RepositoryFiles.PathOf(NetStandardTests.Expected))), (run.ExitStatus, run.Output));
    }

    [Fact]
    public async Task SiteFile_GivesWhatTheManagedBuildGives()
    {
        CommandResult managed = await Command.DotnetAsync(".", "run", "--project", Project, "--", Site);
        CommandResult native = await Command.RunAsync(published.Program, ".", Site);
        Assert.Contains("Danger: crane rail:", native.Output, StringComparison.Ordinal);
        Assert.Equal((managed.ExitStatus, managed.Output), (native.ExitStatus, native.Output));
    }

    [Fact]
    public async Task FaultySiteFile_IsRefusedWithItsFaults()
    {
        CommandResult native = await Command.RunAsync(published.Program, ".", Project + "/NativeAot.csproj");
        Assert.Equal((1, "$ (line 1, column 1): this is not JSON: '<' is not expected here\n"), (native.ExitStatus, native.Output));
    }

    [GeneratedRegex(@": warning (\w+: .*?)(?:\. | \[|$)", RegexOptions.Multiline)]
    private static partial Regex Warning();

    /// <summary>The program, published once for all these tests.</summary>
    public sealed class Publication : IAsyncLifetime
    {
        private readonly string _folder = Directory.CreateTempSubdirectory("campower-native").FullName;

        internal CommandResult Log { get; private set; } = null!;

        internal string Program => Path.Combine(_folder, OperatingSystem.IsWindows() ? "NativeAot.exe" : "NativeAot");

        // From nothing: warnings are told only when the code is made.
        public async Task InitializeAsync()
        {
            foreach (string made in new[] { "bin", "obj" }.Select(f => RepositoryFiles.PathOf(Project + "/" + f)).Where(Directory.Exists)) Directory.Delete(made, recursive: true);
            Log = await Command.DotnetAsync(".", "publish", Project, "-c", "Release", "--use-current-runtime", "-o", _folder);
        }

        public Task DisposeAsync()
        {
            Directory.Delete(_folder, recursive: true);
            return Task.CompletedTask;
        }
    }
}
