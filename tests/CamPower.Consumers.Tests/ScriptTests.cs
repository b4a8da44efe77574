using System;
using System.Globalization;
using System.Linq;
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
        Assert.StartsWith("6 W over 30 m, from 24 V, at least 21.6 V", run.Output, StringComparison.Ordinal);
    }

    // Feet in, feet out; meters in, meters out. One meter is 1/0.3048 feet.
    [Fact]
    public async Task ChooseGauge_AnswersInTheUnitOfTheQuestion()
    {
        string feet = (await RunAsync("choose-gauge", "120 ft")).Output, meters = (await RunAsync("choose-gauge", "36.576 m")).Output;
        Assert.Equal(ReachOf18Awg(feet, " ft") * 0.3048, ReachOf18Awg(meters, " m"), tolerance: 0.06);

        static double ReachOf18Awg(string output, string unit) => double.Parse(
            output.Split('\n').Single(l => l.StartsWith("18 AWG", StringComparison.Ordinal) && l.EndsWith(unit, StringComparison.Ordinal)).Split(' ', StringSplitOptions.RemoveEmptyEntries)[^2],
            CultureInfo.InvariantCulture);
    }

    [Theory]
    [InlineData("choose-gauge", "has a comma", "30,5 m")]
    [InlineData("choose-gauge", "a length is written in m, cm, mm, km, ft, in or yd", "30")]
    [InlineData("choose-gauge", "-30", "-30 m")]
    [InlineData("choose-gauge", "There are 8 arguments", "30", "m", "6", "W", "24", "V", "21.6", "V")]
    [InlineData("check-yard", "Usage:")]
    [InlineData("check-yard", "File not found: no-such-file.json", "no-such-file.json")]
    [InlineData("check-yard", "not JSON", "check-yard.cs")]
    [InlineData("own-rules", "Usage:")]
    [InlineData("own-rules", "File not found: ..", "..")]
    public async Task ArgumentThatCannotBeRead_IsAnsweredWithoutAStackTrace(string name, string message, params string[] arguments)
    {
        CommandResult run = await RunAsync(name, arguments);
        Assert.Equal(3, run.ExitStatus);
        Assert.Contains(message, run.Errors, StringComparison.Ordinal);
        Assert.DoesNotContain("   at ", run.Errors, StringComparison.Ordinal);
    }

    // What was built from an older package of the same version is not taken.
    private static Task<CommandResult> RunAsync(string name, params string[] arguments) =>
        Command.DotnetAsync(Folder, ["run", "--no-cache", name + ".cs", "--", .. arguments]);
}
