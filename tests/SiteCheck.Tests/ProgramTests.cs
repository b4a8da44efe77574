using System;
using System.Diagnostics;
using System.IO;
using System.Linq;
using CamPower.Tests.Repository;

namespace SiteCheck.Tests;

/// <summary>The program as a shell sees it: what it prints when piped, and its exit status.</summary>
public class ProgramTests
{
    [Theory]
    [InlineData("boat-shed.json", 0)]
    [InlineData("boatyard.json", 1)]
    [InlineData("boatyard-as-found.json", 2)]
    public void Run_GivesTheExitStatusOfItsWorstFinding(string site, int status)
    {
        (int exit, string printed) = Run(RepositoryFiles.PathOf("samples/SiteCheck/sites/" + site));
        Assert.Equal(status, exit);
        AssertPlain(printed);
    }

    [Fact]
    public void Run_WithoutAFile_AssessesTheBoatyard()
    {
        (int exit, string printed) = Run();
        Assert.Equal(1, exit);
        Assert.Contains("slipway foot 16 AWG 190 ft    12.19 11.26 b 10.8-13.2 +0.46  0.97/1.1", printed, StringComparison.Ordinal);

        // By hand: 10.8 V + 2.508 Ω · 8.4 W/10.8 V, over 0.99, is 12.88 V; a label promises no least load, so 13.2 V over 1.01.
        Assert.Contains("  Trim to 13.03 V: 12.99 (storage west, night) to 13.07 (gate house, light load)", printed, StringComparison.Ordinal);
        Assert.Contains("CAUTION storage west (thin-voltage-margin)", printed, StringComparison.Ordinal);
    }

    // By hand: 2·320 ft of 18 AWG copper-clad aluminium at 25 °C are 6.76 Ω, so that 10.8 V + 6.76 Ω · 8.4 W/10.8 V, over 0.99,
    // is 16.22 V; 2·10 ft of 16 AWG are 0.0835 Ω, and 13.2 V + 0.0835 Ω · 18 W/13.2 V, over 1.01, is 13.18 V.
    [Fact]
    public void Run_WhereNoTrimIsRight_NamesWhoConflicts() => Assert.Contains(
        "Trim: none is right, 3.04 V short: at least 16.22 (storage west, night), at most 13.18 (recorder, light load)",
        string.Join(' ', Run(RepositoryFiles.PathOf("samples/SiteCheck/sites/boatyard-as-found.json")).Printed.Split([' ', '\n', '\r'], StringSplitOptions.RemoveEmptyEntries)),
        StringComparison.Ordinal);

    // By hand: 13 V and 1 % over the supply's 15 mΩ and a new fuse's 50 mΩ are 202 A, 13 V less 1 % over 155 mΩ 83 A; the supply makes pulses of 26 A of
    // it, 26 A·√(0.1/1.5) = 6.7 A RMS; the two heated cameras, which declare no drop-out, may keep some of it.
    // An adapter that holds 3.6 A leaves 3.6 A · 0.27 Ω = 1.0 V of its voltage when 60 ft of cold 14 AWG are shorted.
    [Theory]
    [InlineData("boatyard.json", "1-14          terminals 83-202  6.1-26  clears, untimed         pulses all dark")]
    [InlineData("boatyard.json", "1   far end   29-37   3.6     does not clear stand 1.0 V  -")]
    [InlineData("boatyard.json", "Not declared: insulation.")]

    // 12 V and 3 % over 70 mΩ are 177 A, and a fuse marked L interrupts 35 A; 166 A leave 11.64 V - 166 A · 20 mΩ = 8.3 V. The gates of the others: IEC 60127-2
    // at 5.6 times and at 1.8 times the rating, ISO 8820-3 at 1.5 times.
    [InlineData("boatyard-as-found.json", "1   terminals 166-177 166-177 over its rating       8.3 V  -")]
    [InlineData("boatyard-as-found.json", "1   far end   32-37     8.1-15  may clear, not   may burn 5.1 V  -")]
    [InlineData("boatyard-as-found.json", "to 10 min")]
    [InlineData("boatyard-as-found.json", "1-2 terminals 146-155 7.0     clears in 0.3 s       0.6 V  all dark")]
    [InlineData("boatyard-as-found.json", "1-2 2x limit          2.2     may clear, not")]
    [InlineData("boat-shed.json", "1   far end   16-20   6.0     clears, untimed stand 3.6 V  -")]
    public void Run_ShowsWhatFaultsDo(string site, string line) =>
        Assert.Contains(line, Run(RepositoryFiles.PathOf("samples/SiteCheck/sites/" + site)).Printed, StringComparison.Ordinal);

    // 10.47 VA at 120 V, and 80 % of 0.1 A; nothing is known of the other outlet's box.
    [Fact]
    public void Run_SaysWhatTheOutletsCarry()
    {
        string printed = Run(RepositoryFiles.PathOf("samples/SiteCheck/sites/boatyard-as-found.json")).Printed;
        Assert.Contains("  socket of the mooring inverter: day: 0.09 A of 0.08 A", printed, StringComparison.Ordinal);
        Assert.Contains("  loft outlet: day: at least 0.00 A of 12.00 A", printed, StringComparison.Ordinal);
    }

    // A supply that holds 26 A leaves 26 A · 50 mΩ = 1.3 V: under every drop-out voltage that is declared. The two heated cameras declare none.
    [Fact]
    public void Run_WhereFewOfSeveralGoDark_NamesThem()
    {
        var held = new SingleFault("a supply that holds its current", """boxes/yard box/supply/overload = { "constantCurrent": "26 A" }""");
        (_, string printed) = RunOn(held.In(File.ReadAllText(RepositoryFiles.PathOf("samples/SiteCheck/sites/boatyard.json"))));
        Assert.Contains("5           terminals 83-202  24-26   clears in 2.3 s         1.3 V  12 dark,", printed, StringComparison.Ordinal);
        Assert.Contains("mast", printed.Split("5           terminals")[1].Split("12          terminals")[0], StringComparison.Ordinal);
        AssertPlain(printed);
    }

    [Fact]
    public void Run_WritesTheReportThatIsAskedFor()
    {
        string html = Path.Combine(Path.GetTempPath(), Path.GetRandomFileName() + ".html"), markdown = Path.ChangeExtension(html, ".md");
        try
        {
            Assert.Equal(0, Run(RepositoryFiles.PathOf("samples/SiteCheck/sites/boat-shed.json"), "--html", html, "--markdown", markdown).Exit);
            Assert.Equal(File.ReadAllText(RepositoryFiles.PathOf("tests/CamPower.Reports.Tests/boat-shed.html")).ReplaceLineEndings("\n"), File.ReadAllText(html));
            Assert.Equal(File.ReadAllText(RepositoryFiles.PathOf("tests/CamPower.Reports.Tests/boat-shed.md")).ReplaceLineEndings("\n"), File.ReadAllText(markdown));
        }
        finally
        {
            File.Delete(html);
            File.Delete(markdown);
        }
    }

    [Theory]
    [InlineData("--html")]
    [InlineData("--pdf", "yard.pdf")]
    [InlineData("one.json", "two.json")]
    public void Run_WithWhatItDoesNotUnderstand_SaysHowItIsUsed(params string[] arguments)
    {
        (int exit, string printed) = Run(arguments);
        Assert.Equal(3, exit);
        Assert.StartsWith("Usage: SiteCheck", printed, StringComparison.Ordinal);
    }

    [Fact]
    public void Run_PrintsTheSameInEveryCulture() => Assert.Single(
        new[] { "en-US", "tr-TR", "de-DE", "ar-SA" }.Select(culture => RunIn(culture).Printed).Distinct());

    [Fact]
    public void Run_WithAFileThatCannotBeRead_ListsEveryFaultWithItsPlace()
    {
        string shed = File.ReadAllText(RepositoryFiles.PathOf("samples/SiteCheck/sites/boat-shed.json"));
        (int exit, string printed) = RunOn(shed.Replace("40 m", "40 kg", StringComparison.Ordinal).Replace("\"at\": \"door\"", "\"at\": \"window\"", StringComparison.Ordinal));
        Assert.Equal(3, exit);
        Assert.Contains("$.runs[0].parts[0].length (line 23,", printed, StringComparison.Ordinal);
        Assert.Contains("$.devices[0].at (line 24,", printed, StringComparison.Ordinal);
    }

    [Fact]
    public void Run_WithNoSuchFile_SaysSo()
    {
        (int exit, string printed) = Run("no-such-file.json");
        Assert.Equal(3, exit);
        Assert.Contains("no-such-file.json is no file", printed, StringComparison.Ordinal);
    }

    private static void AssertPlain(string printed) => Assert.All(printed.Split('\n'), line =>
    {
        Assert.True(line.Length <= 80, line);
        Assert.DoesNotContain('\u001b', line);
    });

    private static (int Exit, string Printed) RunOn(string site)
    {
        string path = Path.Combine(Path.GetTempPath(), Path.GetRandomFileName() + ".json");
        File.WriteAllText(path, site);
        try
        {
            return Run(path);
        }
        finally
        {
            File.Delete(path);
        }
    }

    private static (int Exit, string Printed) Run(params string[] arguments) => RunIn("en-US", arguments);

    private static (int Exit, string Printed) RunIn(string culture, params string[] arguments)
    {
        var start = new ProcessStartInfo("dotnet") { RedirectStandardOutput = true, StandardOutputEncoding = System.Text.Encoding.UTF8 };
        start.ArgumentList.Add(Path.Combine(AppContext.BaseDirectory, "SiteCheck.dll"));
        foreach (string argument in arguments) start.ArgumentList.Add(argument);
        start.Environment["LANG"] = culture.Replace('-', '_') + ".UTF-8";
        start.Environment["LC_ALL"] = start.Environment["LANG"];
        using Process process = Process.Start(start)!;
        string printed = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        return (process.ExitCode, printed);
    }
}
