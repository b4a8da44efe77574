using System;
using System.Collections.Generic;
using System.IO;
using System.Linq;
using System.Text;
using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
using CamPower.Commissioning;
using CamPower.Tolerance;
using UnitsNet;

namespace CamPower.Reports.Tests;

/// <summary>The advice in sentences and as JSON: it says the same, in short sentences, and talks nobody into danger.</summary>
public partial class DiagnosisReportTests
{
    private const int MostWords = 25;

    private static readonly Temperature Twenty = Temperature.FromDegreesCelsius(20);

    private static readonly Surroundings Mild = new(Twenty, Twenty, Twenty);

    // A yard, one on battery, and one whose boxes are adapters: every kind of thing that may go wrong is the likeliest of some case.
    private static IEnumerable<DiagnosisReport> Reports()
    {
        foreach (string name in new[] { "boatyard", "lock", "kiosk" })
        {
            Site site = Samples.Read(name);
            var sheet = new CommissioningSheet(site, SiteTolerance.Standard, Meter.Handheld, Mild);
            foreach (SiteDevice device in site.Devices.Take(2))
            {
                foreach (Func<string, Symptom> seen in new Func<string, Symptom>[] { Symptom.Dark, Symptom.Restarts, Symptom.HumBars, Symptom.FlickersAtDusk })
                {
                    yield return Of(sheet, [], [seen(device.Name)]);
                }
            }

            foreach (ExpectedReading line in sheet.Lines.Where((l, i) => i % 5 == 0 && l.Expected is not null))
            {
                double factor = line.Point.Kind is ReadingKind.OutputCurrent or ReadingKind.LoopResistance ? 2 : 0.7;
                yield return Of(sheet, [new MeterReading(line.Point, Times(line.Expected!, factor))], []);
            }

            foreach (ExpectedReading line in sheet.Lines.Where(l => l.Point.Kind == ReadingKind.PairResistance).Take(2))
            {
                yield return Of(sheet, [new MeterReading(line.Point, ElectricResistance.FromOhms(0.4))], []);
            }
        }
    }

    private static readonly DiagnosisReport[] All = [.. Reports()];

    private static IEnumerable<string> Sentences => All.SelectMany(r => SentenceEnd().Split(r.ToText().Replace("\n", " ", StringComparison.Ordinal)))
        .Select(s => s.Trim()).Where(s => s.Length > 0).Distinct(StringComparer.Ordinal);

    // A sentence with mains in it says who works there, pulls the plug or keeps the cover closed.
    [Fact]
    public void NoSentence_SendsALeadToTheMains() => Assert.All(Sentences, s =>
    {
        if (!Mains().IsMatch(s)) return;
        Assert.Matches("licensed electrician|pull its mains plug, or have it isolated|Keep the cover of the mains side closed|^(To do: )?Unplug .* from its receptacle", s);
        Assert.DoesNotMatch("(?i)(measure|read|probe|check)[^.]*(mains|receptacle|line voltage|primary)", s.Replace(DiagnosisClosing, "", StringComparison.Ordinal));
    });

    [Fact]
    public void NoSentence_OpensABatteryUnderLoad()
    {
        Assert.All(
            Sentences.Where(s => Regex.IsMatch(s, "(?i)(disconnect|open|touch)[^.]*battery")),
            s => Assert.Matches("(?i)with no load on it|load off|only after every output is switched off and every device is unplugged", s));
    }

    [Fact]
    public void NoSentence_SendsAnybodyUpALadderAlone()
    {
        Assert.All(All.Where(r => r.Diagnosis.Next is { Cost: >= 4 }), r => Assert.Contains("second person", r.ToText(), StringComparison.Ordinal));
        Assert.All(Sentences.Where(s => s.Contains("ladder", StringComparison.OrdinalIgnoreCase)), s => Assert.Contains("second person", s, StringComparison.Ordinal));
    }

    [Fact]
    public void NoSentence_BridgesAProtectiveDevice() => Assert.DoesNotContain(Sentences, s => Regex.IsMatch(s, "(?i)(?<!never |do not )bridge"));

    [Fact]
    public void DangerAboveOnePercent_IsIsolatedFirst()
    {
        DiagnosisReport[] dangers = [.. All.Where(r => r.Diagnosis.MustIsolateFirst)];
        Assert.NotEmpty(dangers);
        Assert.All(dangers, r => Assert.StartsWith("Isolate first", r.ToText(), StringComparison.Ordinal));
        Assert.All(All.Except(dangers), r => Assert.StartsWith("Most probable causes:", r.ToText(), StringComparison.Ordinal));
    }

    [Fact]
    public void EveryReport_EndsWithWhoMayDoWhat() =>
        Assert.All(All, r => Assert.EndsWith(DiagnosisClosing + "\n", r.ToText(), StringComparison.Ordinal));

    [Fact]
    public void Sentences_AreShort() => Assert.All(
        Sentences.SelectMany(s => s.Split([':', ';'], StringSplitOptions.RemoveEmptyEntries)),
        s => Assert.InRange(s.Split(' ', StringSplitOptions.RemoveEmptyEntries).Length, 0, MostWords));

    [Fact]
    public void Json_HoldsGroupsAndNextReading() => Assert.All(All, report =>
    {
        using var stream = new MemoryStream();
        report.WriteJson(stream);
        JsonNode json = JsonNode.Parse(Encoding.UTF8.GetString(stream.ToArray()))!;
        Diagnosis diagnosis = report.Diagnosis;
        Assert.Equal(diagnosis.Groups.Select(g => g.Probability.Percent), json["groups"]!.AsArray().Select(g => (double)g!["probability"]!["number"]!));
        Assert.Equal(diagnosis.Groups.Select(g => g.Causes.Count), json["groups"]!.AsArray().Select(g => g!["causes"]!.AsArray().Count));
        Assert.Equal(diagnosis.IsSettled, (bool)json["settled"]!);
        Assert.Equal(diagnosis.Next?.Point.Where, (string?)json["next"]?["reading"]?["where"]);
        Assert.Equal(diagnosis.Next?.Step, (string?)json["next"]?["toDo"]);
    });

    private static string DiagnosisClosing => Writing.DiagnosisText.Closing;

    private static DiagnosisReport Of(CommissioningSheet sheet, MeterReading[] readings, Symptom[] symptoms) =>
        new(new CommissioningRecord(sheet, readings), sheet.Diagnose(readings, symptoms));

    private static IQuantity Times(IQuantity quantity, double factor) => quantity switch
    {
        ElectricPotential volts => ElectricPotential.FromVolts(Math.Round(volts.Volts * factor, 2)),
        ElectricCurrent amperes => ElectricCurrent.FromAmperes(Math.Round(amperes.Amperes * factor, 2)),
        ElectricResistance ohms => ElectricResistance.FromOhms(Math.Round(ohms.Ohms * factor, 1)),
        _ => throw new ArgumentOutOfRangeException(nameof(quantity)),
    };

    [GeneratedRegex(@"(?<=\.)\s")]
    private static partial Regex SentenceEnd();

    [GeneratedRegex("(?i)mains|receptacle")]
    private static partial Regex Mains();
}
