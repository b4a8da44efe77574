using System;
using System.IO;
using System.Linq;
using System.Text.Json.Nodes;
using CamPower.Tests.Repository;

namespace SiteCheck.Tests;

/// <summary>Causes by probability and the next reading at the console, on a hunt in the boatyard.</summary>
public sealed class DiagnosisTests : IDisposable
{
    private const int MostLines = 40;
    private const string Seen = "slipway head: flickers at dusk";

    private static readonly string Yard = RepositoryFiles.PathOf("samples/SiteCheck/sites/boatyard.json"),
        Hunt = RepositoryFiles.PathOf("samples/SiteCheck/sites/slipway.readings.csv"),
        Whole = RepositoryFiles.PathOf("samples/SiteCheck/sites/boatyard.readings.csv");

    private readonly string _folder = Directory.CreateTempSubdirectory("campower-").FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    // docs/how-to/hunt-a-fault.md shows all three.
    [Theory]
    [InlineData(0, "slipway.hunt-1.txt")]
    [InlineData(2, "slipway.hunt-2.txt")]
    [InlineData(3, "slipway.hunt-3.txt")]
    public void CommittedHunt_IsCurrent(int readings, string name) =>
        GeneratedPage.AssertCurrent("samples/SiteCheck/" + name, Advice(AfterReadings(readings)));

    [Fact]
    public void Hunt_EndsAtThePoorJointThatWasPlanted()
    {
        ProgramRun run = AfterReadings(3);
        Assert.Contains("poor joint", Advice(run).Split('\n')[1], StringComparison.Ordinal);
        Assert.Contains("run to slipway head", run.Unwrapped, StringComparison.Ordinal);
        Assert.Contains("Settled:", run.Printed, StringComparison.Ordinal);
    }

    // The record of the yard has noise in every reading, and one cause: the red cable.
    [Fact]
    public void WholeRecord_NamesTheRunToStorageEastFirst()
    {
        ProgramRun run = CommissioningTests.Run(Yard, "--readings", Whole);
        string[] causes = Advice(run).Split('\n');
        Assert.Contains("run to winter storage east", string.Join(' ', causes.Take(3)), StringComparison.Ordinal);
        Assert.Contains("Not used here: output current, yard box output 5, running.", run.Unwrapped, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(2)]
    [InlineData(3)]
    public void Advice_IsShort(int readings) => Assert.InRange(Advice(AfterReadings(readings)).Split('\n').Length, 5, MostLines + 1);

    [Fact]
    public void Json_HoldsTheSame()
    {
        JsonNode json = JsonNode.Parse(CommissioningTests.Run(Yard, "--readings", Hunt, "--symptom", Seen, "--json").Printed)!;
        Assert.Contains("poor-joint", json["groups"]![0]!["causes"]!.AsArray().Select(c => (string)c!));
        Assert.True((bool)json["settled"]!);
        Assert.InRange((double)json["groups"]![0]!["probability"]!["number"]!, 95, 100);
    }

    [Fact]
    public void SoundReadings_AreNotDiagnosed()
    {
        string path = Path.Combine(_folder, "sound.csv");
        File.WriteAllText(path, "what,where,state,value\nsupply voltage,yard box,unloaded,13.00 V\n");
        Assert.DoesNotContain("Most probable causes", CommissioningTests.Run(Yard, "--readings", path).Printed, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("slipway head: sulks", "--symptom: 'slipway head: sulks' is no symptom")]
    [InlineData("slipway heat: dark", "--symptom: the site has no device named slipway heat.")]
    public void StrangeSymptom_IsRefused(string symptom, string error)
    {
        ProgramRun run = CommissioningTests.Run(Yard, "--symptom", symptom);
        Assert.Equal(3, run.Exit);
        Assert.Contains(error, run.Errors, StringComparison.Ordinal);
    }

    private static string Advice(ProgramRun run) => string.Join('\n', run.Lines.SkipWhile(l => l != "Most probable causes:" && !l.StartsWith("Isolate first", StringComparison.Ordinal))) + "\n";

    private ProgramRun AfterReadings(int readings)
    {
        if (readings == 0) return CommissioningTests.Run(Yard, "--symptom", Seen);
        string path = Path.Combine(_folder, "hunt.csv");
        File.WriteAllLines(path, File.ReadLines(Hunt).Take(1 + readings));
        return CommissioningTests.Run(Yard, "--readings", path, "--symptom", Seen);
    }
}
