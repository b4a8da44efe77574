using System;
using System.IO;
using System.Linq;
using UnitsNet;

namespace CamPower.Files.Tests;

/// <summary>What the boatyard is built of, against a list made by hand from its file.</summary>
public class SiteMaterialTests
{
    private static readonly Lazy<Site> Yard = new(() =>
    {
        string path = Path.Combine(Path.GetDirectoryName(Path.GetDirectoryName(Samples.PathOfDoc("json.md")))!, "samples", "SiteCheck", "sites", "boatyard.json");
        return SiteFile.Read(File.ReadAllText(path)).TryGetSite(out Site? site) ? site : throw new InvalidOperationException(path);
    });

    // By hand, from the runs of the file. Feet of 18 AWG: 60 + 45 + 130 + 95 + 110 + 12 + 10 + 90 = 552 in 8 lengths; 16 AWG: 190 + 150
    // + 120 + 60 = 520 in 4; 14 AWG: 330 + 280 + 60 + 120 = 790 in 4; 20 AWG: 80 + 65 + 70 + 15 = 230 in 4; 48 m of 1.5 mm2 in one. A foot
    // is 0.3048 m; a tenth more, and a meter a length. Eighteen outputs with a limit each; a fuse for the battery and one for the
    // transformer, each with a spare; one splice; two boxes, and four adapters, of which the converter is one.
    [Fact]
    public void Boatyard_IsBuiltOfWhatTheListMadeByHandHas()
    {
        (string Kind, string Item, double Quantity)[] expected =
        [
            ("cable", "18 AWG pair", (552 * 0.3048 * 1.1) + 8),
            ("cable", "16 AWG pair", (520 * 0.3048 * 1.1) + 4),
            ("cable", "20 AWG pair", (230 * 0.3048 * 1.1) + 4),
            ("cable", "1.5 mm2 pair", (48 * 1.1) + 1),
            ("cable", "14 AWG pair", (790 * 0.3048 * 1.1) + 4),
            ("joint", "gel splice at the mast", 1),
            ("protective device", "1.4 A electronic limit", 18),
            ("protective device", "15 A battery fuse", 1),
            ("spare fuse", "15 A battery fuse", 1),
            ("protective device", "2 A slow fuse", 1),
            ("spare fuse", "2 A slow fuse", 1),
            ("box", "12 V 20 A enclosed supply, 16 outputs", 1),
            ("adapter", "12 V 3 A adapter", 1),
            ("adapter", "12 V 1 A adapter", 1),
            ("box", "12 V 5 A charging supply, 2 outputs", 1),
            ("adapter", "12 to 12 V converter", 1),
            ("adapter", "24 V 40 VA transformer", 1),
            ("battery", "12 V 65 Ah", 1),
        ];
        MaterialList list = Yard.Value.ListMaterial();
        Assert.Equal(expected.Select(line => (line.Kind, line.Item)), list.Lines.Select(line => (line.Kind, line.Item)));
        Assert.All(expected.Zip(list.Lines), pair => Assert.Equal(pair.First.Quantity, pair.Second.Quantity, 1e-6));
        Assert.Equal(21, list.Pulls.Count);
    }

    [Fact]
    public void PullList_LabelsBothEnds_AndJointsBetween()
    {
        PulledCable[] west = [.. Yard.Value.ListMaterial().Pulls.Where(p => p.Run.To == "winter storage west")];
        Assert.Equal(["yard box output 11: to winter storage west", "joint 1 of the run to winter storage west: to winter storage west"], west.Select(p => p.StartLabel));
        Assert.Equal(["joint 1 of the run to winter storage west: from yard box output 11", "winter storage west: from yard box output 11"], west.Select(p => p.EndLabel));
        Assert.Equal(12, west[1].Route.Feet, 1e-9);
        Assert.Equal((12 * 1.1) + (1 / 0.3048), west[1].Cut.Feet, 1e-9);
    }

    // Seven fuses and half of them more is four spares; rises go to both ends.
    [Fact]
    public void Policy_AddsSparesRisesAndSlack()
    {
        var fuse = new Fuse("F2AL", ElectricCurrent.FromAmperes(2), FuseCharacteristic.IecQuickActing, ElectricPotential.FromVolts(250), ElectricCurrent.FromAmperes(35), ElectricResistance.FromMilliohms(50));
        DistributionBox box = DistributionBox.OfEqualOutputs("box", Yard.Value.Boxes[0].Supply, outputs: 7, ElectricCurrent.FromAmperes(1.1), fuse);
        var site = new Site("shed", Yard.Value.Conditions, [box],
            [new SiteRun(RunOrigin.Output("box", 1), "door", new CableRun(CableCatalog.Pair18, Length.FromMeters(20)))], [new SiteDevice("door", Yard.Value.Devices[0].Model, "door")]);
        var policy = new MaterialPolicy(Ratio.FromPercent(5), Length.FromMeters(0.25), Ratio.FromPercent(50), rise: Length.FromMeters(2));
        MaterialList list = site.ListMaterial(policy, PriceList.Neutral.With("F2AL", 0.4).With(CableCatalog.Pair18.ToString(), 2));
        Assert.Equal(21 + 4.5, Assert.Single(list.Lines, l => l.Kind == "cable").Quantity, 1e-9);
        Assert.Equal(2 * 25.5, list.Lines[0].Cost, 1e-9);
        Assert.Equal(4, Assert.Single(list.Lines, l => l.Kind == "spare fuse").Quantity);
        Assert.Equal(7 * 0.4, Assert.Single(list.Lines, l => l.Kind == "protective device").Cost, 1e-9);
    }

    [Fact]
    public void Tables_HaveARowForEachLine_AndNoFormula()
    {
        MaterialList list = Yard.Value.ListMaterial();
        Assert.Equal(list.Lines.Count + 1, Rows(SiteMaterial.WriteBill(list)).Length);
        Assert.Equal("cable,1.5 mm2 pair,53.8,m,26.9", Rows(SiteMaterial.WriteBill(list))[4]);
        Assert.Equal(list.Pulls.Count + 1, Rows(SiteMaterial.WritePulls(list)).Length);
        string[] outputs = Rows(SiteMaterial.WriteOutputs(Yard.Value.Assess()));
        Assert.Equal(1 + 16 + 2 + 2 + 2, outputs.Length);
        Assert.Contains("yard box,16,1.1,1.4 A electronic limit,spare,", outputs);

        var formula = new Site("=1+1", Yard.Value.Conditions, [DistributionBox.OfEqualOutputs("=cmd", Yard.Value.Boxes[0].Supply, 1, ElectricCurrent.FromAmperes(1))],
            [new SiteRun(RunOrigin.Output("=cmd", 1), "@door", new CableRun(CableCatalog.Pair18, Length.FromMeters(20)))], []);
        Assert.Contains(",'=cmd output 1,'@door,", SiteMaterial.WritePulls(formula.ListMaterial()), StringComparison.Ordinal);
    }

    private static string[] Rows(string csv) => csv.Split("\r\n", StringSplitOptions.RemoveEmptyEntries);
}
