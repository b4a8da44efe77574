using System;
using System.Collections;
using System.Collections.Generic;
using System.Linq;
using System.Reflection;
using System.Text.RegularExpressions;
using CamPower.Files.Formats;

namespace CamPower.Files.Tests;

public class DocumentedExampleTests
{
    [Fact]
    public void MinimalExample_IsASite()
    {
        SiteFileResult result = SiteFile.Read(Samples.Minimal);
        Assert.Empty(result.Errors);
        Assert.True(result.TryGetSite(out Site? site));
        Assert.Equal("garden gate", site.Name);
        Assert.Equal(15, Assert.Single(site.Runs).Run.OneWayLength.Meters);
    }

    // A cell with a comma is an error at the place that the page names.
    [Theory]
    [InlineData("schedule.md", "120 ft", "schedule, row 2, column I (length)")]
    [InlineData("how-to/from-a-spreadsheet.md", "120", "schedule, row 2, column H (length)")]
    public void SchedulesOfThePages_AreSites(string page, string cell, string place)
    {
        string text = Samples.Doc(page), json = Block("json"), csv = Block("csv");
        SiteFileResult result = SiteSchedule.Read(json, csv);
        Assert.Empty(result.Errors);
        Assert.Equal(["ramp", "kiosk"], result.Site!.Devices.Select(d => d.Name));
        Assert.Equal(place, Assert.Single(SiteSchedule.Read(json, csv.Replace(cell, "\"36,5 m\"", StringComparison.Ordinal)).Errors).Path);
        Assert.Contains(place, text, StringComparison.Ordinal);

        string Block(string kind) =>
            Regex.Match(text, $"^```{kind}\n(.*?)^```$", RegexOptions.Multiline | RegexOptions.Singleline).Groups[1].Value;
    }

    [Fact]
    public void FullExample_IsASite_AndUsesEveryMember()
    {
        SiteFileResult result = SiteFile.Read(Samples.Full);
        Assert.Empty(result.Errors);

        // Five, and the input of the converter.
        Assert.Equal(6, result.Site!.Devices.Count);
        IEnumerable<string> members = Regex.Matches(SiteFile.Schema, "^ +\"([a-zA-Z]+)\": \\{$", RegexOptions.Multiline)
            .Select(m => m.Groups[1].Value).Where(m => m is not ("properties" or "items")).Distinct();
        Assert.All(members, member => Assert.Contains($"\"{member}\"", Samples.Full, StringComparison.Ordinal));
        Assert.All(members, member => Assert.Contains($"`{member}`", Samples.Doc("site-file.md"), StringComparison.Ordinal));
    }

    // Coaxial cables and sources come from the catalog, by name; the largest current is the breaking capacity of every device.
    private static readonly string[] SaidOtherwise = ["Cable.coax", "Cable.source", "Joint.source", "ResettableFuse.maximumCurrent"];

    [Fact]
    public void FullExample_GivesEveryOptionalArgumentOfTheLibrary()
    {
        object[] parts = [.. PartsOf(SiteFile.Read(Samples.Full).Site!)];
        IEnumerable<string> missing =
            from part in parts
            where part is not Citation
            from argument in part.GetType().GetConstructors().SelectMany(c => c.GetParameters())
            where argument is { HasDefaultValue: true, DefaultValue: null }
            group (part, argument) by $"{part.GetType().Name}.{argument.Name}" into uses
            where !uses.Any(use => PropertyOf(use.part, use.argument.Name!) is not null)
            select uses.Key;
        Assert.True(parts.OfType<Starting>().Any() && parts.OfType<AcOutput>().Any() && parts.OfType<Fuse>().Any());
        Assert.Empty(missing.Except(SaidOtherwise));
    }

    [Theory]
    [MemberData(nameof(Tables))]
    public void UnitTable_IsTheOneThatIsRead(string quantity, string[] spellings)
    {
        string row = Regex.Match(Samples.Doc("site-file.md"), $"^\\| {quantity} \\| (.*) \\|$", RegexOptions.Multiline).Groups[1].Value;
        Assert.Equal(spellings, row.Split(' ').Select(unit => unit.Trim('`')));
    }

    public static TheoryData<string, string[]> Tables => new()
    {
        { "length", [.. Quantities.Length.Spellings] },
        { "voltage", [.. Quantities.Voltage.Spellings] },
        { "current", [.. Quantities.Current.Spellings] },
        { "resistance", [.. Quantities.Resistance.Spellings] },
        { "power", [.. Quantities.Power.Spellings] },
        { "temperature", [.. Quantities.Temperature.Spellings] },
        { "share", [.. Quantities.Share.Spellings] },
        { "duration", [.. Quantities.Duration.Spellings] },
        { "charge", [.. Quantities.Charge.Spellings] },
        { "capacitance", [.. Quantities.Capacitance.Spellings] },
        { "frequency", [.. Quantities.Frequency.Spellings] },
        { "area", [.. Quantities.Area.Spellings] },
        { "sunlight", [.. Quantities.Sunlight.Spellings] },
        { "thermal resistance", [.. Quantities.Insulance.Spellings] },
        { "rise of temperature", [.. Quantities.Rise.Spellings] },
    };

    private static object? PropertyOf(object part, string argument) =>
        part.GetType().GetProperty(char.ToUpperInvariant(argument[0]) + argument[1..])?.GetValue(part);

    // A part of the library and all that its public properties hold.
    private static IEnumerable<object> PartsOf(object? value) => value switch
    {
        string => [],
        IEnumerable items => items.Cast<object?>().SelectMany(PartsOf),
        not null when value.GetType() is { IsClass: true, Namespace: "CamPower" } type => type.GetProperties(BindingFlags.Public | BindingFlags.Instance)
            .SelectMany(p => PartsOf(p.GetValue(value))).Prepend(value),
        _ => [],
    };
}
