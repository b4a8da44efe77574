using System;
using System.Diagnostics;
using System.IO;
using System.Linq;
using System.Text;
using CamPower.Tests.Repository;

namespace SiteCheck.Tests;

/// <summary>The commissioning sheet and the readings at the console.</summary>
public sealed class CommissioningTests : IDisposable
{
    private static readonly string Yard = RepositoryFiles.PathOf("samples/SiteCheck/sites/boatyard.json"),
        Readings = RepositoryFiles.PathOf("samples/SiteCheck/sites/boatyard.readings.csv");

    private readonly string _folder = Directory.CreateTempSubdirectory("campower-").FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Theory]
    [InlineData("sheet.html", "<h1>Commissioning sheet of Ternfield boatyard</h1>")]
    [InlineData("sheet.md", "# Commissioning sheet of Ternfield boatyard")]
    [InlineData("sheet.csv", "what,where,state,value,meter,time,remark")]
    public void Sheet_IsWrittenInEveryForm(string name, string head)
    {
        string path = Path.Combine(_folder, name);
        ProgramRun run = Run(Yard, "--sheet", path, "--at", "12 C");
        Assert.Equal(0, run.Exit);
        Assert.Empty(run.Errors);
        Assert.Contains(head, File.ReadAllText(path), StringComparison.Ordinal);
    }

    // What a reader sees of the yard's sheet and record without running anything.
    [Fact]
    public void CommittedSheetAndRecord_AreCurrent()
    {
        string sheet = Path.Combine(_folder, "sheet.md"), record = Path.Combine(_folder, "record.md");
        Run(Yard, "--sheet", sheet);
        Run(Yard, "--readings", Readings, "--sheet", record, "--author", "A. Tern", "--date", "2026-03-09");
        GeneratedPage.AssertCurrent("samples/SiteCheck/boatyard.sheet.md", File.ReadAllText(sheet));
        GeneratedPage.AssertCurrent("samples/SiteCheck/boatyard.record.md", File.ReadAllText(record));
    }

    // The demo: one loop is too long and its camera gets too little, one meter was on the wrong range, and the office was not visited.
    [Fact]
    public void DemoReadings_AreJudged()
    {
        ProgramRun run = Run(Yard, "--readings", Readings);
        Assert.Equal(2, run.Exit);
        Assert.Contains("loop resistance, storage east, far end jumpered: 2.70 Ω; band", run.Unwrapped, StringComparison.Ordinal);
        Assert.Contains("plug voltage, storage east, infrared forced", run.Unwrapped, StringComparison.Ordinal);
        Assert.Contains("Impossible: look at the meter", run.Printed, StringComparison.Ordinal);
        Assert.Contains("output current, yard box output 5, running", run.Unwrapped, StringComparison.Ordinal);
        Assert.Contains("plug voltage, office, running", run.Unwrapped, StringComparison.Ordinal);
    }

    [Fact]
    public void Record_IsReadBack()
    {
        string record = Path.Combine(_folder, "record.json");
        ProgramRun first = Run(Yard, "--readings", Readings, "--sheet", record, "--author", "A. Tern", "--date", "2026-03-09");
        ProgramRun second = Run(Yard, "--readings", record);
        Assert.Equal(first, second);
        Assert.Contains("\"by\": \"A. Tern\"", File.ReadAllText(record), StringComparison.Ordinal);
    }

    [Fact]
    public void WrongReadings_AreAllSaid()
    {
        string path = Path.Combine(_folder, "wrong.csv");
        File.WriteAllText(path, "what,where,state,value\nplug voltage,carne,running,12 V\nplug voltage,crane,running,12\n");
        ProgramRun run = Run(Yard, "--readings", path);
        Assert.Equal(3, run.Exit);
        Assert.Contains("readings, row 2, column B (where): the site has no device 'carne' to read; did you mean 'crane'?", run.Errors, StringComparison.Ordinal);
        Assert.Contains("readings, row 3, column D (value)", run.Errors, StringComparison.Ordinal);
    }

    [Fact]
    public void YardAsFound_IsNotToBeEnergized()
    {
        ProgramRun run = Run(RepositoryFiles.PathOf("samples/SiteCheck/sites/boatyard-as-found.json"), "--sheet", Path.Combine(_folder, "s.html"));
        Assert.Matches("Do not energize: [0-9]+ dangers in the plan[.]", run.Printed);
        Assert.Contains("- chandlery: Its leads from chandlery adapter output 1 are reversed. Fix: Do not energize. Swap the leads", run.Unwrapped, StringComparison.Ordinal);
        Assert.Contains("Stop before a box is switched on", run.Unwrapped, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("--sheet", "sheet.pdf")]
    [InlineData("--at", "12")]
    [InlineData("--readings", "nowhere.csv")]
    public void WrongArguments_AreRefused(string option, string value)
    {
        ProgramRun run = Run(Yard, option, value);
        Assert.Equal(3, run.Exit);
        Assert.NotEmpty(run.Errors);
    }

    internal static ProgramRun Run(params string[] arguments)
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
        using Process process = Process.Start(start)!;
        System.Threading.Tasks.Task<string> errors = process.StandardError.ReadToEndAsync();
        string printed = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        return new ProgramRun(process.ExitCode, printed, errors.GetAwaiter().GetResult());
    }
}
