using System;
using System.Collections.Generic;
using System.Globalization;
using System.IO;
using System.Linq;
using CamPower;
using CamPower.Files;
using CamPower.Tests.Checks;
using CamPower.Tests.Repository;
using UnitsNet;

namespace SiteCheck.Tests;

/// <summary>The yards against their tables of findings, written by hand before they were run.</summary>
public class BoatyardTests
{
    [Theory]
    [InlineData("boatyard")]
    [InlineData("boatyard-as-found")]
    [InlineData("lock")]
    [InlineData("lock-as-found")]
    [InlineData("glasshouse")]
    [InlineData("glasshouse-as-found")]
    [InlineData("bakery-as-found")]
    [InlineData("kiosk-as-found")]
    [InlineData("pier-as-found")]
    [InlineData("ferry-as-found")]
    [InlineData("reading-room-as-found")]
    public void Site_GivesTheFindingsOfItsTable_AndNoOther(string site)
    {
        IReadOnlyList<Finding> findings = RuleSet.Standard.Check(Read(site).Assess());
        IReadOnlyList<ExpectedFinding> expected = ExpectedFinding.TableOf(site);

        Assert.Equal(expected.Select(e => $"{e.Severity} {e.Rule} {e.About} {e.Condition}").Order(), findings.Select(f => $"{f.Severity} {f.Rule} {f.About} {f.Condition}").Order());
        Assert.All(expected, e =>
        {
            Finding finding = findings.Single(f => f.Rule == e.Rule && f.About.Name == e.About);
            AssertClose(e.Measured, finding.Measured, e.Unit);
            AssertClose(e.Limit, finding.Limit, e.Unit);
        });
    }

    [Fact]
    public void Boatyard_IsNineteenCamerasOnEverySourceThatAYardHas()
    {
        Site yard = Read("boatyard");
        Assert.Equal(19, yard.Devices.Count(d => d.Model.Kind == DeviceKind.Camera));
        Assert.Equal([16, 1, 1, 2, 1, 1], yard.Boxes.Select(b => b.Outputs.Count));
        Assert.Equal(["lighthouse box"], yard.Boxes.Where(b => b.Battery is not null).Select(b => b.Name));
        Assert.Equal(["barge converter"], yard.Boxes.Where(b => b.FedFrom is not null).Select(b => b.Name));
        Assert.Equal(["chapel transformer"], yard.Boxes.Where(b => b.Supply.Output.Kind == CurrentKind.Ac).Select(b => b.Name));
    }

    // Every rule that the package has fires somewhere in the yard, at the lock, in the bakery, the reading room, the glasshouse or at the ferry as found: they are the acceptance of them all.
    [Fact]
    public void SitesAsFound_BreakEveryRule() => Assert.Empty(RuleSet.Standard.Rules.Select(r => r.Id)
        .Except(new[] { "boatyard-as-found", "lock-as-found", "bakery-as-found", "reading-room-as-found", "glasshouse-as-found", "ferry-as-found" }.SelectMany(ExpectedFinding.TableOf).Select(e => e.Rule)));

    [Theory]
    [InlineData("boatyard-as-found")]
    [InlineData("lock-as-found")]
    [InlineData("glasshouse-as-found")]
    [InlineData("bakery-as-found")]
    [InlineData("kiosk-as-found")]
    [InlineData("pier-as-found")]
    [InlineData("ferry-as-found")]
    [InlineData("reading-room-as-found")]
    [InlineData("boat-shed")]
    public void Findings_AreShortAndInTheWordsOfTheTrade(string site)
    {
        Site read = Read(site);
        Assert.Equal(string.Empty, string.Join("\n", Wording.FaultsOf(RuleSet.Standard.Check(read.Assess()), read)));
    }

    [Theory]
    [InlineData("boat-shed")]
    [InlineData("bakery")]
    [InlineData("kiosk")]
    [InlineData("pier")]
    [InlineData("ferry")]
    [InlineData("reading-room")]
    public void SoundSite_HasNoFindings(string site) => Assert.Empty(RuleSet.Standard.Check(Read(site).Assess()));

    private static Site Read(string site)
    {
        SiteFileResult read = SiteFile.Read(File.ReadAllText(RepositoryFiles.PathOf($"samples/SiteCheck/sites/{site}.json")));
        Assert.Empty(read.Errors);
        return read.Site!;
    }

    // The tables hold three or four digits.
    private static void AssertClose(double? expected, IQuantity? found, string unit)
    {
        Assert.Equal(expected is null, found is null);
        if (expected is not double value) return;
        double number = unit switch
        {
            "V" => ((ElectricPotential)found!).Volts,
            "A" => ((ElectricCurrent)found!).Amperes,
            "C" => ((Temperature)found!).DegreesCelsius,
            "m" => ((Length)found!).Meters,
            "s" => ((Duration)found!).Seconds,
            "VA" => ((ElectricApparentPower)found!).Voltamperes,
            "W" => (double)((Power)found!).Watts,
            "mm2" => ((Area)found!).SquareMillimeters,
            _ => ((Scalar)found!).Amount,
        };
        Assert.True(Math.Abs(number - value) <= 0.001 * Math.Abs(value), string.Create(CultureInfo.InvariantCulture, $"{number} is not {value} {unit}"));
    }
}
