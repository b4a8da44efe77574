using System;
using System.Collections.Generic;
using System.IO;
using System.Linq;
using CamPower.Commissioning;
using CamPower.Tolerance;
using UnitsNet;

namespace CamPower.Files.Tests;

/// <summary>Readings as tables and records: every error with its place, and everything back as it was written.</summary>
public class ReadingsFileTests
{
    private static readonly Surroundings Mild = new(Temperature.FromDegreesCelsius(15), Temperature.FromDegreesCelsius(16), Temperature.FromDegreesCelsius(17));

    private static Site Site { get; } = SiteFile.Read(File.ReadAllText(Samples.PathOfDoc("../samples/SiteCheck/sites/boatyard.json"))).Site!;

    private static CommissioningSheet Sheet { get; } = new(Site, SiteTolerance.Standard, Meter.Handheld, Mild);

    private static string Box => Site.Boxes[0].Name;

    private static string Camera => Site.Devices[0].Name;

    // Every line of the sheet with a value of its own: read from the table and from the record as it was.
    [Fact]
    public void RecordAndTable_RoundTrip()
    {
        MeterReading[] all =
        [
            .. Sheet.Lines.Select((l, i) => new MeterReading(l.Point, l.Expected is null ? null : l.Point.Kind switch
            {
                ReadingKind.OutputCurrent => ElectricCurrent.FromMilliamperes(100.5 + i),
                ReadingKind.LoopResistance => i % 2 == 0 ? ElectricResistance.FromOhms(1.25) : ElectricResistance.FromMegaohms(2.5),
                _ => ElectricPotential.FromVolts(12.25 - (i / 100.0)),
            }, "meter 2", "12:3" + (i % 10), i % 3 == 0 ? "windy, \"dry\"; ünïcode" : null)),
        ];
        var record = new CommissioningRecord(Sheet, all, by: "A. Tern", on: "2026-03-09");
        ReadingsFileResult back = ReadingsFile.Read(ReadingsFile.Write(record), Site);
        Assert.Empty(back.Errors);
        AssertSame(all, back.Readings);
        Assert.Equal(("A. Tern", "2026-03-09", Mild.ToString()), (back.By, back.On, back.At!.ToString()));
        Assert.Equal(ReadingsFile.Write(record), ReadingsFile.Write(new CommissioningRecord(Sheet, back.Readings, back.By, back.On)));
        AssertSame(all, ReadingsFile.Read(ReadingsFile.WriteTable(record), Site).Readings);
    }

    public static TheoryData<string> Yards =>
        [.. Directory.EnumerateFiles(Path.GetDirectoryName(Samples.PathOfDoc("../samples/SiteCheck/sites/boatyard.json"))!, "*.json").Select(f => Path.GetFileName(f)!)];

    // Sound sites and sites as found, with adapters, shields, batteries, converters and alternating current.
    [Theory]
    [MemberData(nameof(Yards))]
    public void EverySample_HasASheet_ThatAcceptsWhatItExpects(string yard)
    {
        Site site = SiteFile.Read(File.ReadAllText(Samples.PathOfDoc("../samples/SiteCheck/sites/" + yard))).Site!;
        var sheet = new CommissioningSheet(site, SiteTolerance.Standard, Meter.Handheld, Mild);
        Assert.NotEmpty(sheet.Lines);
        ExpectedReading[] expected = [.. sheet.Lines.Where(l => l.Expected is not null || l.Highest is null && l.Point.Kind == ReadingKind.PairResistance)];
        var record = new CommissioningRecord(sheet, expected.Select(l => new MeterReading(l.Point, l.Expected)));
        Assert.Equal(expected.Length, record.Count(ReadingVerdict.Inside));
        string table = ReadingsFile.WriteTable(record);
        Assert.Empty(ReadingsFile.Read(table, site).Errors);
        Assert.Equal(sheet.Dangers.Count, table.Split("DO NOT ENERGIZE").Length - 1);
        Assert.All(sheet.Dangers, danger => Assert.Contains(danger.Remedy, table, StringComparison.Ordinal));
    }

    // Supplies drive current one way. A reversed lead reads below 0, and is not inside a band that begins there.
    [Theory]
    [MemberData(nameof(Yards))]
    public void NoBandBeginsBelowZero_WhereTheSiteGivesNothingBelowIt(string yard)
    {
        Site site = SiteFile.Read(File.ReadAllText(Samples.PathOfDoc("../samples/SiteCheck/sites/" + yard))).Site!;
        var sheet = new CommissioningSheet(site, SiteTolerance.Standard, Meter.Handheld, Mild);
        Assert.All(sheet.Lines.Where(l => l.Lowest is ElectricCurrent), l => Assert.InRange(((ElectricCurrent)l.Lowest).Amperes, 0, double.MaxValue));
        Assert.All(sheet.Lines.Where(l => l.Lowest is ElectricPotential { Volts: 0 }), l =>
            Assert.NotEqual(ReadingVerdict.Inside, l.Judge(new MeterReading(l.Point, ElectricPotential.FromVolts(-1)))));
    }

    [Fact]
    public void BlankTable_HasEveryLineOfTheSheet_AndNoReading()
    {
        string table = ReadingsFile.WriteTable(new CommissioningRecord(Sheet, []));
        Assert.Equal(Sheet.Lines.Count + 1, table.TrimEnd().Split("\r\n").Length);
        ReadingsFileResult read = ReadingsFile.Read(table, Site);
        Assert.Empty(read.Errors);
        Assert.Empty(read.Readings);
    }

    private static void AssertSame(MeterReading[] expected, IReadOnlyList<MeterReading> actual)
    {
        Assert.Equal(expected.Length, actual.Count);
        for (int i = 0; i < expected.Length; i++)
        {
            Assert.Equal(expected[i].Point, actual[i].Point);
            Assert.Equal(expected[i].ToString(), actual[i].ToString());
            Assert.Equal((expected[i].Meter, expected[i].Time, expected[i].Remark), (actual[i].Meter, actual[i].Time, actual[i].Remark));
        }
    }

    public static TheoryData<string, string> Wrong => new()
    {
        { "plug volts,C,running,12 V", "readings, row 2, column A (what): 'plug volts' is not what was read" },
        { "plug voltage,nowhere at all,running,12 V", "readings, row 2, column B (where): the site has no device 'nowhere at all' to read" },
        { "plug voltage,C,dead,12 V", "readings, row 2, column C (state): There is no plug voltage in the state \"dead\"" },
        { "plug voltage,C,running,12", "readings, row 2, column D (value): '12' is not what the meter showed" },
        { "plug voltage,C,running,0.4 A", "readings, row 2, column D (value): A plug voltage needs a value in V" },
        { "plug voltage,C,running,over range", "readings, row 2, column D (value): A plug voltage needs a value in V" },
        { "plug voltage,C,running,\"11,9 V\"", "readings, row 2, column D (value): '11,9 V' has a comma" },
        { "output current,B,running,0.4 A", "readings, row 2, column B (where): 'B' is no output: write the box and the number" },
        { "output current,B output 99,running,0.4 A", "readings, row 2, column B (where): 'B output 99' is not in use on this site" },
        { "plug voltage,,running,12 V", "readings, row 2: 'where' is missing" },
    };

    [Theory]
    [MemberData(nameof(Wrong))]
    public void Table_SaysWhatIsWrongAndWhere(string row, string error)
    {
        ReadingsFileResult read = ReadingsFile.Read("what,where,state,value\n" + row.Replace(",C,", $",{Camera},", StringComparison.Ordinal)
            .Replace("B output", $"{Box} output", StringComparison.Ordinal).Replace(",B,", $",{Box},", StringComparison.Ordinal), Site);
        string expected = error.Replace("'B output", $"'{Box} output", StringComparison.Ordinal).Replace("'B'", $"'{Box}'", StringComparison.Ordinal);
        Assert.StartsWith(expected, Assert.Single(read.Errors).ToString(), StringComparison.Ordinal);
        Assert.Empty(read.Readings);
    }

    [Fact]
    public void EveryError_IsFoundAtOnce_WithItsPath()
    {
        string json = $$"""
            {
              "formatVersion": 1, "site": "another yard",
              "readings": [
                { "what": "plug voltage", "where": "{{Camera}}", "state": "runing", "value": "12 V" },
                { "what": "plug voltage", "where": "{{Camera}}", "state": "running", "value": 12 },
                { "what": "plug voltage", "where": "{{Camera}}x", "state": "running", "value": "12 V" }
              ]
            }
            """;
        string[] errors = [.. ReadingsFile.Read(json, Site).Errors.Select(e => e.ToString())];
        Assert.Equal(4, errors.Length);
        Assert.StartsWith("$.site (line 2, column", errors[0], StringComparison.Ordinal);
        Assert.Contains("did you mean 'running'?", errors[1], StringComparison.Ordinal);
        Assert.StartsWith("$.readings[1].value (line 5", errors[2], StringComparison.Ordinal);
        Assert.Contains($"did you mean '{Camera}'?", errors[3], StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("", "the table is empty")]
    [InlineData("what,where,value\n", "there is no column 'state'")]
    [InlineData("{", "this is not JSON")]
    [InlineData("what,where,state,value\n\"a,b", "a quotation mark is not closed")]
    public void WhatIsNoTableAndNoRecord_IsSaidSo(string text, string message) =>
        Assert.Contains(message, ReadingsFile.Read(text, Site).Errors[0].ToString(), StringComparison.Ordinal);
}
