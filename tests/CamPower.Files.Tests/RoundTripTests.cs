using System;
using System.IO;
using System.Linq;
using System.Text;
using CamPower.Tests;
using UnitsNet;

namespace CamPower.Files.Tests;

public class RoundTripTests
{
    [Fact]
    public void FullExample_ComesBackTheSame() => AssertRoundTrip(SiteFile.Read(Samples.Full).Site!);

    [Fact]
    public void MinimalExample_ComesBackTheSame() => AssertRoundTrip(SiteFile.Read(Samples.Minimal).Site!);

    [SeededProperty(Arbitrary = [typeof(RandomSites)], MaxTest = 500)]
    public void AnySite_ComesBackTheSame(Site site) => AssertRoundTrip(site);

    // What is the same in every member is judged the same: to every bit of every answer, on some of them.
    [SeededProperty(Arbitrary = [typeof(RandomSites)], MaxTest = 40)]
    public void AnySite_IsAssessedTheSame(Site site) => Same.Assert(site.Assess(), AssertRoundTrip(site).Assess());

    [Fact]
    public void AuthorsNumbersAndUnits_StandInTheText()
    {
        string text = SiteFile.Write(SiteFile.Read(Samples.Full).Site!);
        string[] asWritten = ["\"180 ft\"", "\"3 m\"", "\"6 ft\"", "\"10 mohm\"", "\"5000 mW\"", "\"104 F\"", "\"308.15 K\"", "\"1.5 mm2\"", "\"24 ohm\"", "\"2 %\"", "\"10 h\"", "\"6 W\"", "\"0.1 A\"", "\"12.6 V\"", "\"22 AWG\"", "\"generic enclosed\""];
        Assert.All(asWritten, quantity => Assert.Contains(quantity, text, StringComparison.Ordinal));
        Assert.DoesNotContain("\r", text, StringComparison.Ordinal);
        Assert.DoesNotContain("given", text, StringComparison.Ordinal);
        Assert.EndsWith("}\n", text, StringComparison.Ordinal);
    }

    [Fact]
    public void EveryDigitOfAPower_IsKept()
    {
        string text = Samples.Minimal.Replace("\"label\": { \"voltage\": \"12 V\", \"current\": \"500 mA\", \"stage\": \"unknown\" }", "\"draw\": { \"base\": \"4.1234567890123456789 W\" }", StringComparison.Ordinal);
        Assert.Contains("\"4.1234567890123456789 W\"", SiteFile.Write(SiteFile.Read(text).Site!), StringComparison.Ordinal);
    }

    [Fact]
    public void Stream_IsReadLikeText_AndLeftOpen()
    {
        using var stream = new MemoryStream(Encoding.UTF8.GetBytes(Samples.Full));
        Same.Assert(SiteFile.Read(Samples.Full).Site, SiteFile.Read(stream).Site);
        Assert.True(stream.CanRead);
    }

    [Fact]
    public void GivenConditions_AreThoseOfTheLibrary()
    {
        Site site = SiteFile.Read(Samples.Full).Site!;
        Same.Assert(Condition.Day(new Surroundings(Temperature.FromDegreesFahrenheit(104), Temperature.FromDegreesCelsius(45), Temperature.FromKelvins(308.15), Irradiance.FromWattsPerSquareMeter(800))).WithLineVoltage(ElectricPotential.FromVolts(104)), site.Conditions[0]);
        Assert.Equal(LoadComponents.Infrared | LoadComponents.Motor, site.Conditions[1].On);
        Assert.Equal("heated night", site.Conditions[2].Name);
        Assert.Equal(LoadComponents.Infrared | LoadComponents.Heater, site.Conditions[2].On);
    }

    [Fact]
    public void NamelessCables_AreNamedByTheirConductors_EqualOnesOnce()
    {
        Cable Nameless(bool preTerminated = false) => Cable.Pair(WireSize.Awg(18), Stranding.Solid, ConductorMaterial.AnnealedCopper, preTerminated);
        const string Plain = "pair of 18 AWG solid annealed copper";
        Cable taken = Cable.Pair(WireSize.Awg(20), Stranding.Solid, ConductorMaterial.AnnealedCopper, name: Plain);
        Site site = SiteOf(Nameless(), Nameless(), taken, Nameless(preTerminated: true), Nameless());
        string text = SiteFile.Write(site);
        Site again = SiteFile.Read(text).Site!;
        Assert.Equal([Plain + " (2)", Plain + " (2)", Plain, Plain + " (3)", Plain + " (2)"], again.Runs.Select(r => r.Run.Segments.Single().Cable.Name));
        Assert.Equal(text, SiteFile.Write(again));
        Assert.Equal(3, text.Split("\"stranding\"").Length - 1);
    }

    internal static Site SiteOf(params Cable[] cables)
    {
        var supply = new Supply("12 V", new DcOutput(ElectricPotential.FromVolts(12), ElectricCurrent.FromAmperes(9), Ratio.FromPercent(2)), Derating.GenericEnclosed);
        var warm = Temperature.FromDegreesCelsius(20);
        return new Site("site", [Condition.Day(new Surroundings(warm, warm, warm))],
            [DistributionBox.OfEqualOutputs("box", supply, 20, ElectricCurrent.FromAmperes(1))],
            cables.Select((cable, i) => new SiteRun(RunOrigin.Output("box", i + 1), FormattableString.Invariant($"end {i}"), new CableRun(cable, Length.FromMeters(10)))), []);
    }

    private static Site AssertRoundTrip(Site site)
    {
        string text = SiteFile.Write(site);
        SiteFileResult result = SiteFile.Read(text);
        Assert.Empty(result.Errors);
        Same.Assert(site, result.Site);
        Assert.Equal(text, SiteFile.Write(result.Site!));
        return result.Site!;
    }
}
