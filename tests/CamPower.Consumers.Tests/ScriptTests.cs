using System.Threading.Tasks;
using CamPower.Tests.Repository;

namespace CamPower.Consumers.Tests;

public class ScriptTests
{
    private const string Folder = "samples/scripts", Yard = "../SiteCheck/sites/boatyard-as-found.json";

    [Theory]
    [InlineData("first-look", 0)]
    [InlineData("choose-gauge", 0)]
    [InlineData("what-if", 0)]
    [InlineData("check-yard", 2, Yard)]
    [InlineData("own-rules", 0, Yard)]
    public async Task Script_PrintsWhatIsCommittedBesideIt(string name, int exitStatus, params string[] arguments)
    {
        CommandResult run = await RunAsync(name, arguments);
        Assert.True(exitStatus == run.ExitStatus, run.Errors);
        GeneratedPage.AssertCurrent($"{Folder}/{name}.txt", run.Output);
    }

    [Theory]
    [InlineData("../SiteCheck/sites/boat-shed.json", 0)]
    [InlineData("../SiteCheck/sites/boatyard.json", 0)]
    [InlineData("../SiteCheck/sites/boatyard-as-found.json", 2)]
    [InlineData("no-such-file.json", 3)]
    [InlineData("check-yard.cs", 3)]
    public async Task CheckYard_TellsTheShellHowBadItIs(string site, int exitStatus) =>
        Assert.Equal(exitStatus, (await RunAsync("check-yard", site)).ExitStatus);

    [Fact]
    public async Task ChooseGauge_TakesItsArguments()
    {
        CommandResult run = await RunAsync("choose-gauge", "30 m", "6 W", "24 V", "21.6 V");
        Assert.StartsWith("6 W over 30 m, from 24 V, at least 21.6 V", run.Output, System.StringComparison.Ordinal);
    }

    // What was built from an older package of the same version is not taken.
    private static Task<CommandResult> RunAsync(string name, params string[] arguments) =>
        Command.DotnetAsync(Folder, ["run", "--no-cache", name + ".cs", "--", .. arguments]);
}
