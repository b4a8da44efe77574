using System;
using System.Collections.Generic;
using System.IO;
using System.Linq;
using System.Text;
using CamPower.Files.Schedules;
using CamPower.Tests;
using UnitsNet;

namespace CamPower.Files.Tests;

/// <summary>A site as installers keep it: a small site file, and a row for each camera.</summary>
public class ScheduleTests
{
    // No cables, runs or devices: what the schedule brings.
    private const string Small =
        """
        {
          "formatVersion": 1, "name": "ferry landing",
          "models": [ { "name": "dome", "kind": "camera", "dc": { "lowest": "10.8 V", "highest": "13.2 V" }, "draw": { "base": "5 W" } } ],
          "conditions": [ { "given": "day", "cable": "40 C", "box": "40 C", "camera": "30 C" } ],
          "boxes": [ { "name": "quay box", "outputs": 4, "outputLimit": "1 A",
            "supply": { "name": "12 V 4 A", "output": "DC", "nominal": "12 V", "ratedCurrent": "4 A", "tolerance": "2 %", "derating": "generic enclosed" } } ]
        }
        """;

    private const string Yard =
        """
        name,model,watts,lowest,highest,box,output,cable,length
        ramp,dome,,,,quay box,1,18 AWG/2 stranded,120 ft
        kiosk,,6.5,10.5 V,14 V,quay box,2,16 AWG/2 stranded,36.5 m
        """;

    [Fact]
    public void Rows_AreRunsAndDevicesOfTheSite()
    {
        Site site = SiteSchedule.Read(Small, Yard).Site!;
        Assert.Equal(["ramp", "kiosk"], site.Devices.Select(d => d.Name));
        Assert.Equal(["quay box output 1 to ramp", "quay box output 2 to kiosk"], site.Runs.Select(r => r.ToString()));
        Assert.Equal("dome", site.Devices[0].Model.Name);
        Assert.Equal((6.5, 10.5, 14.0), (6.5, site.Devices[1].Model.DcInput!.Lowest.Volts, site.Devices[1].Model.DcInput!.Highest.Volts));
        Assert.Equal(6.5m, ((ComponentDraw)site.Devices[1].Model.Draw).Base.PowerComponent.Watts);
        CableSegment segment = Assert.Single(site.Runs[0].Run.Segments);
        Assert.Equal((120, "18 AWG/2 stranded"), (segment.OneWayLength.Feet, segment.Cable.Name));
        Assert.Equal(36.5, site.Runs[1].Run.Segments.Single().OneWayLength.Meters);
    }

    // As spreadsheets write it: a mark before it, semicolons or tabs, CRLF, blank rows below, columns of one's own, units in the headings.
    [Theory]
    [InlineData("\uFEFF", ";", "\r\n")]
    [InlineData("", ";", "\n")]
    [InlineData("\uFEFF", "\t", "\r\n")]
    [InlineData("", ",", "\r\n")]
    public void Spreadsheets_AreRead(string mark, string separator, string newLine)
    {
        string[][] rows =
        [
            ["Name", "Remark", "Model", "Box", "Output", "Cable", "Length (ft)"],
            ["ramp", "by the \"\"gate\"\"", "dome", "quay box", "1", "18 AWG/2 stranded", "120"],
            ["", "", "", "", "", "", ""],
            ["kiosk", "", "dome", "quay box", "2", "18 AWG/2 stranded", "30.5 m"],
        ];
        string csv = mark + string.Concat(rows.Select(row => string.Join(separator, row.Select(c => c.Contains('"', StringComparison.Ordinal) ? $"\"{c}\"" : c)) + newLine));
        using var small = new MemoryStream(Encoding.UTF8.GetBytes(Small));
        using var schedule = new MemoryStream(Encoding.UTF8.GetBytes(csv));
        Site site = SiteSchedule.Read(small, schedule).Site!;
        Assert.Equal([120, 30.5 / 0.3048], site.Runs.Select(r => Math.Round(r.Run.Segments.Single().OneWayLength.Feet, 9)).Select(f => f), (a, b) => Math.Abs(a - b) < 1e-6);
    }

    // Every error at its cell, and no other that only follows from it.
    [Theory]
    [InlineData("120 ft", "120 kg", "schedule, row 2, column I (length): '120 kg' has the wrong unit: a length is written in m, cm, mm, km, ft, in or yd")]
    [InlineData("120 ft", "\"36,5 m\"", "schedule, row 2, column I (length): '36,5 m' has a comma: write a decimal point, as in 1.5 m, and nothing between thousands")]
    [InlineData("120 ft", "120", "schedule, row 2, column I (length): '120' has no unit: a length is written in m, cm, mm, km, ft, in or yd")]
    [InlineData("120 ft", "", "schedule, row 2, column I (length): this cell is empty: write a length, such as 120 ft or 36.5 m")]
    [InlineData("36.5 m", "36,5 m", "schedule, row 3: 10 cells, but 9 headings: write a decimal point, not a comma, and put a cell with a comma in quotation marks; the row is 'kiosk,,6.5,10.5 V,14 V,quay box,2,16 AWG...'")]
    [InlineData("ramp,dome", "ramp,dom", "schedule, row 2, column B (model): there is no model named 'dom'; did you mean 'dome'?")]
    [InlineData("ramp,dome", "ramp,", "schedule, row 2, column B (model): this cell is empty: write a model, or watts")]
    [InlineData("ramp,dome,,", "ramp,dome,5 W,", "schedule, row 2, column C (watts): a row has a model or watts, not both")]
    [InlineData("kiosk,,6.5,10.5 V", "kiosk,,6.5,", "schedule, row 3, column D (lowest): this cell is empty: write beside watts the lowest voltage that the camera accepts")]
    [InlineData("10.5 V,14 V", "10.5 V,9 V", "schedule, row 3, column E (highest): highest must be")]
    [InlineData("kiosk,", "ramp,", "schedule, row 3, column A (name): the name 'ramp' is used twice")]
    [InlineData("kiosk,", "\" \",", "schedule, row 3, column A (name): this cell is empty: write the name of the device")]
    [InlineData("dome,,,,quay box", "dome,,,,key box", "schedule, row 2, column F (box): there is no box")]
    [InlineData("quay box,2", "quay box,5", "schedule, row 3, column G (output): quay box has 4 outputs, there is no output 5")]
    [InlineData("quay box,2", "quay box,two", "schedule, row 3, column G (output): 'two' is not a whole number")]
    [InlineData("18 AWG/2 stranded", "18 AWG/2 solid", "schedule, row 2, column H (cable): there is no cable named '18 AWG/2 solid'; did you mean '16 AWG/2 stranded'?")]
    [InlineData(",length", ",lenght", "schedule, row 1: there is no column 'length'; did you mean it by 'lenght'?")]
    [InlineData("name,model,watts", "name,kind,wats", "schedule, row 1: there is no column 'model', and none 'watts'")]
    [InlineData(",cable,length", ",length,length", "schedule, row 1: there is no column 'cable'|schedule, row 1, column I (length): the column 'length' is there twice")]
    [InlineData("ramp,dome", "ra\"mp,dome", "schedule, row 2: a quotation mark is not closed, or is inside a cell; write it twice and put the cell in quotation marks")]
    public void Errors_NameRowAndColumn(string piece, string with, string errors)
    {
        Assert.Contains(piece, Yard, StringComparison.Ordinal);
        int at = Yard.IndexOf(piece, StringComparison.Ordinal);
        SiteFileResult result = SiteSchedule.Read(Small, Yard[..at] + with + Yard[(at + piece.Length)..]);
        Assert.Null(result.Site);
        string[] expected = errors.Split('|'), found = [.. result.Errors.Select(f => f.ToString())];
        Assert.Equal(expected.Length, found.Length);
        Assert.All(expected.Zip(found), pair => Assert.StartsWith(pair.First, pair.Second, StringComparison.Ordinal));
        Assert.All(result.Errors, f => Assert.True(f.IsOfSchedule));
    }

    [Fact]
    public void ErrorsOfBothFiles_AreToldTogether()
    {
        SiteFileResult result = SiteSchedule.Read(Small.Replace("10.8 V", "10.8 kg", StringComparison.Ordinal), Yard.Replace("36.5 m", "long", StringComparison.Ordinal).Replace("120 ft", "-1 ft", StringComparison.Ordinal));
        Assert.Equal(["$.models[0].dc.lowest", "schedule, row 2, column I (length)", "schedule, row 3, column I (length)"], result.Errors.Select(f => f.Path));
        Assert.Equal([(3, 9)], result.Errors.Skip(2).Select(f => (f.Line, f.Column)));
    }

    [Theory]
    [InlineData(",,\n , ,\n", "schedule, row 1: the schedule is empty")]
    [InlineData("", "schedule, row 1: the schedule is empty")]
    [InlineData("\uFEFF\r\n\r\n", "schedule, row 1: the schedule is empty")]
    public void EmptySchedule_IsAnError(string csv, string error) => Assert.Equal([error], SiteSchedule.Read(Small, csv).Errors.Select(f => f.ToString()));

    [Fact]
    public void WhatIsNotUtf8_AndWhatIsTooLarge_IsRefused()
    {
        using var small = new MemoryStream(Encoding.UTF8.GetBytes(Small));
        using var latin = new MemoryStream([.. Encoding.UTF8.GetBytes(Yard), 0xE9]);
        Assert.Contains("save it as CSV UTF-8", Assert.Single(SiteSchedule.Read(small, latin).Errors).Message, StringComparison.Ordinal);
        using var again = new MemoryStream(Encoding.UTF8.GetBytes(Small));
        using var large = new MemoryStream(Encoding.UTF8.GetBytes(Yard));
        Assert.Contains("the schedule is too large", Assert.Single(SiteSchedule.Read(again, large, new SiteFileOptions { MaxBytes = 50 }).Errors).Message, StringComparison.Ordinal);
        Assert.Throws<ArgumentNullException>("json", () => SiteSchedule.Read(null!, Yard));
        Assert.Throws<ArgumentNullException>("csv", () => SiteSchedule.Read(Small, null!));
        Assert.Throws<ArgumentNullException>("site", () => SiteSchedule.Write(null!));
    }

    [Fact]
    public void Written_IsWhatWasRead()
    {
        (string json, string csv) = SiteSchedule.Write(SiteSchedule.Read(Small, Yard).Site!);
        Assert.Equal("name,model,watts,lowest,highest,box,output,cable,length,junction,installation\r\nramp,dome,,,,quay box,1,18 AWG/2 stranded,120 ft,,\r\nkiosk,,6.5 W,10.5 V,14 V,quay box,2,16 AWG/2 stranded,36.5 m,,\r\n", csv);
        Assert.DoesNotContain("ramp", json, StringComparison.Ordinal);
        Assert.DoesNotContain("kiosk", json, StringComparison.Ordinal);
    }

    // Home runs of whatever names among runs of every shape: what a row can say stands in the schedule, the rest in the site file, and nothing is lost.
    [SeededProperty(Arbitrary = [typeof(RandomSites)], MaxTest = 200)]
    public void AnySite_ComesBackTheSame_ThroughBothFiles(Site site, int seed)
    {
        Site whole = WithHomeRuns(site, new Random(seed));
        (string json, string csv) = SiteSchedule.Write(whole);
        SiteFileResult back = SiteSchedule.Read(json, csv);
        Assert.Empty(back.Errors);
        Same.Assert(RowsLast(whole), back.Site);
        Assert.Equal(csv, SiteSchedule.Write(back.Site!).Csv);
    }

    private static Site RowsLast(Site site)
    {
        IReadOnlyList<(SiteDevice Device, SiteRun Run)> rows = ScheduleWriter.RowsOf(site);
        return new Site(site.Name, site.Conditions, site.Boxes, [.. site.Runs.Except(rows.Select(r => r.Run)), .. rows.Select(r => r.Run)],
            [.. site.Devices.Except(rows.Select(r => r.Device)), .. rows.Select(r => r.Device)], site.VideoLinks, site.Bonds, site.Altitude, site.Ties);
    }

    private static Site WithHomeRuns(Site site, Random random)
    {
        string[] odd = ["mast, old", "the \"eye\"", "two, \"lines\"", " spaced ", "é;ß", "=1+1", "\U0001F4F7"];
        var watts = new Device("6500 mW camera, 10.5 V to 14 V", DeviceKind.Camera, new ComponentDraw(Load.ConstantPower(Power.FromMilliwatts(6500))),
            new VoltageRange(ElectricPotential.FromVolts(10.5), ElectricPotential.FromVolts(14)));
        List<Device> models = [watts, .. site.Devices.Select(d => d.Model)];
        List<Cable> cables = [CableCatalog.Pair16, .. site.Runs.SelectMany(r => r.Run.Segments).Select(s => s.Cable).Where(c => c.Name is not null and not "16 AWG/2 stranded")];
        var added = Enumerable.Range(0, random.Next(1, 6)).Select(i =>
        {
            string name = odd[random.Next(odd.Length)] + i;
            DistributionBox box = site.Boxes[random.Next(site.Boxes.Count)];
            var run = new CableRun(cables[random.Next(cables.Count)], Length.FromFeet(Math.Round(random.NextDouble() * 300, 3)));
            return (Run: new SiteRun(RunOrigin.Output(box.Name, random.Next(1, box.Outputs.Count + 1)), name, run), Device: new SiteDevice(name, models[random.Next(models.Count)], name));
        }).ToList();
        return new Site(site.Name, site.Conditions, site.Boxes, [.. site.Runs, .. added.Select(a => a.Run)], [.. site.Devices, .. added.Select(a => a.Device)],
            site.VideoLinks, site.Bonds, site.Altitude, site.Ties);
    }
}
