using System;
using System.Collections.Generic;
using System.Diagnostics;
using System.Globalization;
using System.IO;
using System.Linq;
using System.Text;
using System.Threading.Tasks;
using CamPower;
using CamPower.Files;
using CamPower.Reports;
using CamPower.Tests.Repository;

namespace SiteCheck.Tests;

/// <summary>The program as a shell sees it: what it prints when piped, and its exit status.</summary>
public class ProgramTests
{
    [Theory]
    [InlineData("boat-shed")]
    [InlineData("boatyard")]
    [InlineData("boatyard-as-found")]
    public void Run_GivesTheExitStatusOfItsWorstFinding_AndSaysTheHeadlineFirst(string site)
    {
        SiteReport report = ReportOf(site);
        ProgramRun run = Run(PathOf(site));
        Assert.Equal(report.Findings.Select(f => f.Severity).DefaultIfEmpty(Severity.Note).Max() switch { Severity.Note => 0, Severity.Caution => 1, _ => 2 }, run.Exit);
        Assert.Equal([report.Assessment.Site.Name, report.Headline], run.Lines.Take(2));
        Assert.Contains(report.FindingSummary, run.Printed, StringComparison.OrdinalIgnoreCase);
        Assert.Empty(run.Errors);
        AssertPlain(run);
    }

    [Fact]
    public void Run_WithoutAFile_ChecksTheBoatyard() => Assert.Equal(Run(PathOf("boatyard")), Run());

    // The bar: the yard in which every rule finds something, at the width of a file.
    [Fact]
    public void YardAsFound_FitsIn120Lines() => Assert.InRange(Run(PathOf("boatyard-as-found")).Lines.Count, 20, 120);

    [Theory]
    [InlineData("boat-shed")]
    [InlineData("boatyard")]
    [InlineData("boatyard-as-found")]
    public void FindingsOfARule_TakeAtMostFourLines(string site)
    {
        int lines = 0;
        foreach (string line in Run(PathOf(site)).Lines.Skip(4).TakeWhile(line => !line.StartsWith("Not stated", StringComparison.Ordinal)))
        {
            // Where there are too many, those of one severity have a line each.
            if (RuleSet.Standard.Rules.Any(rule => line.EndsWith($": {rule.Title}", StringComparison.Ordinal))) break;
            lines = line.StartsWith(' ') ? lines + 1 : 1;
            Assert.True(lines <= 4, line);
        }

        Assert.True(lines > 0 || ReportOf(site).Findings.All(f => f.IsNotStated));
    }

    // Nothing is named and not found, whatever the width; names stand whole.
    [Theory]
    [InlineData(60)]
    [InlineData(80)]
    [InlineData(120)]
    public void Run_KeepsToTheWidthThatItIsGiven_AndShowsEveryDeviceThatDoesNotWork(int columns)
    {
        ProgramRun run = RunWith(new() { ["COLUMNS"] = columns.ToString(CultureInfo.InvariantCulture) }, PathOf("boatyard-as-found"));
        Assert.All(run.Lines, line => Assert.True(line.Length <= columns, line));
        foreach (DeviceAssessment device in ReportOf("boatyard-as-found").Assessment.Devices.Where(d => d.Verdict != Verdict.Holds))
        {
            Assert.Contains(device.Device.Name.Split(' ')[0], run.Printed, StringComparison.Ordinal);
        }
    }

    [Theory]
    [InlineData("boat-shed")]
    [InlineData("boatyard-as-found")]
    public void Details_HaveEveryFindingWithItsRuleAndRemedy_EveryConditionAndFaults(string site)
    {
        string printed = Run(PathOf(site), "--details").Unwrapped;
        SiteReport report = ReportOf(site);
        Assert.All(report.Findings, f =>
        {
            Assert.Contains($"[{f.Rule}]", printed, StringComparison.Ordinal);
            Assert.Contains(Plain(f.Message), printed, StringComparison.Ordinal);
        });
        Assert.All(report.Findings.GroupBy(f => f.Rule), alike => Assert.Contains(Plain(alike.First().Remedy), printed, StringComparison.Ordinal));
        Assert.All(report.Assessment.Site.Conditions, c => Assert.Contains($"{c.Name}: cables ", printed, StringComparison.Ordinal));
        Assert.Contains("Faults, ", printed, StringComparison.Ordinal);
    }

    [Fact]
    public void Tables_ShowEachDeviceWithItsVolts()
    {
        ProgramRun run = Run(PathOf("boatyard"));
        foreach (DeviceAssessment device in ReportOf("boatyard").Assessment.Devices)
        {
            VoltageRange accepts = (device.Device.Model.DcInput ?? device.Device.Model.AcInput)!;
            string input = string.Create(CultureInfo.InvariantCulture, $" {accepts.Lowest.Volts:0.##}-{accepts.Highest.Volts:0.##} ");
            string row = Assert.Single(run.Lines, line => line.Contains($" {device.Device.Name} ", StringComparison.Ordinal) && line.Contains(input, StringComparison.Ordinal));
            Assert.Contains(string.Create(CultureInfo.InvariantCulture, $"{device.Worst.Voltage.Volts:0.00}-{device.LightLoadVoltage.Volts:0.00}"), row, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void Json_IsThatOfTheReport()
    {
        ProgramRun run = Run(PathOf("boatyard-as-found"), "--json");
        using var expected = new MemoryStream();
        ReportOf("boatyard-as-found").WriteJson(expected);
        Assert.Equal(Encoding.UTF8.GetString(expected.ToArray()) + "\n", run.Printed);
        Assert.Equal(2, run.Exit);
    }

    [Fact]
    public void Csv_HasARowForEachDevice_AndAsManyCellsInEach()
    {
        IReadOnlyList<string> lines = Run(PathOf("boatyard"), "--csv").Lines;
        IReadOnlyList<DeviceAssessment> devices = ReportOf("boatyard").Assessment.Devices;
        Assert.Equal("name,model,box,output,cable,length,lowest voltage (V),highest voltage (V),accepts from (V),accepts to (V),output current (A),output limit (A),verdict", lines[0]);
        Assert.Equal(devices.Select(d => d.Device.Name).Order(), lines.Skip(1).Select(line => line.Split(',')[0]).Order());
        Assert.All(lines, line => Assert.Equal(13, line.Split(',').Length));
        DeviceAssessment foot = devices.Single(d => d.Device.Name == "slipway foot");
        Assert.Contains(string.Create(CultureInfo.InvariantCulture, $"slipway foot,{foot.Device.Model.Name},yard box,4,{foot.Path[0].Run.Segments.First().Cable.Name},190 ft,{foot.Worst.Voltage.Volts:0.###},"), string.Join('\n', lines), StringComparison.Ordinal);
    }

    // RFC 4180: a cell with a comma or a quotation mark is in quotation marks.
    [Fact]
    public void Csv_QuotesNames()
    {
        string site = File.ReadAllText(PathOf("boat-shed")).Replace("\"name\": \"door\"", "\"name\": \"door, \\\"old\\\"\"", StringComparison.Ordinal);
        Assert.Contains("\"door, \"\"old\"\"\",infrared dome,", RunOn(site, "--csv").Printed, StringComparison.Ordinal);
    }

    [Fact]
    public void Run_WritesTheReportThatIsAskedFor()
    {
        string html = Path.Combine(Path.GetTempPath(), Path.GetRandomFileName() + ".html"), markdown = Path.ChangeExtension(html, ".md");
        try
        {
            Assert.Equal(0, Run(PathOf("boat-shed"), "--html", html, "--markdown", markdown).Exit);
            Assert.Equal(ReportOf("boat-shed").ToHtml(), File.ReadAllText(html));
            Assert.Equal(ReportOf("boat-shed").ToMarkdown(), File.ReadAllText(markdown));
        }
        finally
        {
            File.Delete(html);
            File.Delete(markdown);
        }
    }

    [Fact]
    public void Run_ThatCannotWrite_SaysSoInALine()
    {
        ProgramRun run = Run(PathOf("boat-shed"), "--html", Path.Combine(Path.GetTempPath(), Path.GetRandomFileName(), "shed.html"));
        Assert.Equal(3, run.Exit);
        Assert.Contains("shed.html", run.Errors, StringComparison.Ordinal);
        Assert.DoesNotContain("   at ", run.Errors, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("--html takes the name of a file", "--html")]
    [InlineData("--schedule takes the name of a file", "--schedule")]
    [InlineData("--date takes a date such as 2026-03-09, not 9.3.2026", "--date", "9.3.2026")]
    [InlineData("--author is given twice", "--author", "A", "--author", "B")]
    [InlineData("Unknown option --pdf", "--pdf", "yard.pdf")]
    [InlineData("The site file is given twice", "one.json", "two.json")]
    [InlineData("--json and --csv both print", "--json", "--csv")]
    public void Run_WithWhatItDoesNotUnderstand_SaysWhatAndHowItIsUsed(string error, params string[] arguments)
    {
        ProgramRun run = Run(arguments);
        Assert.Equal(3, run.Exit);
        Assert.Empty(run.Printed);
        Assert.StartsWith(error, run.Errors, StringComparison.Ordinal);
        Assert.Contains("--help", run.Errors, StringComparison.Ordinal);
    }

    // The options are those of the README, each with an example that names it.
    [Fact]
    public void Help_ShowsEachOptionWithAnExample()
    {
        ProgramRun run = Run("--help");
        Assert.Equal(0, run.Exit);
        AssertPlain(run);
        foreach (string option in new[] { "--details", "--json", "--csv", "--schedule", "--split", "--html", "--markdown", "--profiles", "--remedies", "--compare", "--materials", "--date", "--author", "--revision", "--help" })
        {
            Assert.Contains(run.Lines, line => line.Trim().StartsWith("SiteCheck", StringComparison.Ordinal) && line.Contains(option, StringComparison.Ordinal));
            Assert.Contains(option, File.ReadAllText(RepositoryFiles.PathOf("samples/SiteCheck/README.md")), StringComparison.Ordinal);
        }
    }

    [Fact]
    public void Run_PrintsTheSameInEveryCulture() => Assert.Single(
        new[] { "en-US", "tr-TR", "de-DE", "ar-SA" }.Select(culture => culture.Replace('-', '_') + ".UTF-8")
            .Select(culture => RunWith(new() { ["LANG"] = culture, ["LC_ALL"] = culture }).Printed).Distinct());

    [Fact]
    public void Run_WithAFileThatCannotBeRead_ListsEveryErrorWithItsPlace()
    {
        string shed = File.ReadAllText(PathOf("boat-shed"));
        ProgramRun run = RunOn(shed.Replace("40 m", "40 kg", StringComparison.Ordinal).Replace("\"at\": \"door\"", "\"at\": \"window\"", StringComparison.Ordinal));
        Assert.Equal(3, run.Exit);
        Assert.Empty(run.Printed);
        Assert.Contains("$.runs[0].parts[0].length (line 24,", run.Errors, StringComparison.Ordinal);
        Assert.Contains("$.devices[0].at (line 25,", run.Errors, StringComparison.Ordinal);
    }

    // The yard as a small site file and a schedule is the same yard, and an error in the schedule is told by its cell.
    [Fact]
    public void Schedule_IsWrittenAndRead()
    {
        string name = Path.Combine(Path.GetTempPath(), Path.GetRandomFileName());
        try
        {
            ProgramRun whole = Run(PathOf("boatyard"), "--split", name);
            Assert.Equal(0, whole.Exit);
            string csv = File.ReadAllText(name + ".csv");
            Assert.Contains("\r\nmast,", csv, StringComparison.Ordinal);
            Assert.DoesNotContain("\"name\": \"mast\"", File.ReadAllText(name + ".json"), StringComparison.Ordinal);
            ProgramRun split = Run(name + ".json", "--schedule", name + ".csv");
            Assert.Equal(0, split.Exit);
            Assert.Equal(whole.Lines.Take(4), split.Lines.Take(4));

            File.WriteAllText(name + ".csv", "\uFEFF" + csv.Replace(",120 ft,", ",\"120,5 ft\",", StringComparison.Ordinal).Replace("\r\n", "\n", StringComparison.Ordinal));
            ProgramRun wrong = Run(name + ".json", "--schedule", name + ".csv");
            Assert.Equal(3, wrong.Exit);
            Assert.Matches(@"schedule, row \d+, column I \(length\): '120,5 ft' has a comma", wrong.Errors);
        }
        finally
        {
            File.Delete(name + ".json");
            File.Delete(name + ".csv");
        }
    }

    [Fact]
    public void Remedies_AreShown_InTextAndJson()
    {
        string low = File.ReadAllText(PathOf("boatyard")).Replace("\"setPoint\": \"13 V\"", "\"setPoint\": \"12 V\"", StringComparison.Ordinal);
        ProgramRun run = RunOn(low, "--remedies");
        Assert.Contains("The cheapest way to no danger and no failure, ", run.Unwrapped, StringComparison.Ordinal);
        Assert.Contains("- Set the supply of yard box to 1", run.Unwrapped, StringComparison.Ordinal);
        Assert.Contains("slipway foot: voltage too low", run.Unwrapped, StringComparison.Ordinal);
        string json = RunOn(low, "--remedies", "--json").Printed;
        Assert.Contains("\"remedies\": [", json, StringComparison.Ordinal);
        Assert.Contains("\"repair\": {", json, StringComparison.Ordinal);
    }

    [Fact]
    public void Compare_SaysWhatDiffers_AndEndsAsWhatWasGained()
    {
        ProgramRun same = Run(PathOf("boatyard"), "--compare", PathOf("boatyard"));
        Assert.Equal((0, "The two versions do not differ."), (same.Exit, same.Lines[1]));
        string low = File.ReadAllText(PathOf("boatyard")).Replace("\"setPoint\": \"13 V\"", "\"setPoint\": \"12 V\"", StringComparison.Ordinal);
        ProgramRun run = RunOn(low, "--compare", PathOf("boatyard"));
        Assert.Equal(2, run.Exit);
        Assert.Contains("box yard box: set point 13 V DC -> 12 V DC", run.Unwrapped, StringComparison.Ordinal);
        Assert.Contains("- Failure: slipway foot: ", run.Printed, StringComparison.Ordinal);
        Assert.Contains("\"gained\": [", RunOn(low, "--compare", PathOf("boatyard"), "--json").Printed, StringComparison.Ordinal);
    }

    [Fact]
    public void Materials_AreWrittenBesideEachOther()
    {
        string name = Path.Combine(Path.GetTempPath(), Path.GetRandomFileName());
        try
        {
            Assert.Equal(0, Run(PathOf("boatyard"), "--materials", name + ".csv").Exit);
            Assert.StartsWith("kind,item,quantity,unit,cost (points)\r\ncable,18 AWG pair,", File.ReadAllText(name + ".csv"), StringComparison.Ordinal);
            Assert.Contains("yard box output 1: to gate post", File.ReadAllText(name + ".pulls.csv"), StringComparison.Ordinal);
            Assert.Contains("yard box,16,", File.ReadAllText(name + ".outputs.csv"), StringComparison.Ordinal);
        }
        finally
        {
            foreach (string end in new[] { ".csv", ".pulls.csv", ".outputs.csv" }) File.Delete(name + end);
        }
    }

    [Fact]
    public void Run_WithNoSuchFile_SaysSo()
    {
        ProgramRun run = Run("no-such-file.json");
        Assert.Equal((3, "", "File not found: no-such-file.json"), (run.Exit, run.Printed, run.Errors.TrimEnd()));
    }

    private static string PathOf(string site) => RepositoryFiles.PathOf($"samples/SiteCheck/sites/{site}.json");

    private static SiteReport ReportOf(string site)
    {
        SiteAssessment assessment = SiteFile.Read(File.ReadAllText(PathOf(site))).Site!.Assess();
        return new SiteReport(assessment, RuleSet.Standard.Check(assessment));
    }

    private static void AssertPlain(ProgramRun run) => Assert.All(run.Lines, line =>
    {
        Assert.True(line.Length <= 80, line);
        Assert.DoesNotContain('\u001b', line);
    });

    private static string Plain(string text) => string.Join(' ', text.Split(' ', StringSplitOptions.RemoveEmptyEntries));

    private static ProgramRun RunOn(string site, params string[] options)
    {
        string path = Path.Combine(Path.GetTempPath(), Path.GetRandomFileName() + ".json");
        File.WriteAllText(path, site);
        try
        {
            return Run([path, .. options]);
        }
        finally
        {
            File.Delete(path);
        }
    }

    private static ProgramRun Run(params string[] arguments) => RunWith([], arguments);

    private static ProgramRun RunWith(Dictionary<string, string> environment, params string[] arguments)
    {
        var start = new ProcessStartInfo("dotnet")
        {
            RedirectStandardOutput = true,
            RedirectStandardError = true,
            StandardOutputEncoding = Encoding.UTF8,
            StandardErrorEncoding = Encoding.UTF8,
        };
        start.ArgumentList.Add(Path.Combine(AppContext.BaseDirectory, "SiteCheck.dll"));
        foreach (string argument in arguments) start.ArgumentList.Add(argument);
        start.Environment.Remove("COLUMNS");
        foreach ((string name, string value) in environment) start.Environment[name] = value;
        using Process process = Process.Start(start)!;
        Task<string> errors = process.StandardError.ReadToEndAsync();
        string printed = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        return new ProgramRun(process.ExitCode, printed, errors.Result);
    }
}
