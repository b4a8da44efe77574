using System;
using System.Linq;
using UnitsNet;

namespace CamPower.Files.Tests;

/// <summary>What the format cannot express is refused by name: nothing is lost in silence.</summary>
public class WriteRefusalTests
{
    private static readonly Conductor Plain = new(WireSize.Awg(18), Stranding.Solid, ConductorMaterial.AnnealedCopper);

    [Fact]
    public void AMaterialOfTheUsers_IsRefused()
    {
        ConductorMaterial copper = ConductorMaterial.AnnealedCopper;
        var own = new ConductorMaterial("tinned copper", copper.ResistivityAt20C, copper.TemperatureCoefficientAt20C, copper.ValidFrom, copper.ValidTo, copper.Source);
        AssertRefused<NotSupportedException>(RoundTripTests.SiteOf(Cable.Pair(WireSize.Awg(18), Stranding.Solid, own)), "tinned copper");
    }

    [Fact]
    public void AStrandingOfTheUsers_IsRefused()
    {
        var own = new Stranding("rope lay", 1.05, Stranding.ClassB.Source);
        AssertRefused<NotSupportedException>(RoundTripTests.SiteOf(Cable.Pair(WireSize.Awg(18), own, ConductorMaterial.AnnealedCopper)), "rope lay");
    }

    [Fact]
    public void AUnitWithoutASpelling_IsRefused()
    {
        Site site = RoundTripTests.SiteOf(new Cable(Plain, Plain));
        SiteRun run = site.Runs[0];
        var far = new SiteRun(run.From, run.To, new CableRun(run.Run.Segments.Single().Cable, Length.FromNauticalMiles(0.1)));
        AssertRefused<NotSupportedException>(new Site(site.Name, site.Conditions, site.Boxes, [far], []), "NauticalMile");
    }

    [Fact]
    public void ATableOfTheUsers_IsRefused_AlsoUnderTheNameOfAGivenOne()
    {
        Conductor Stating(double ohmsPerKilometer, string name) => new(WireSize.SquareMillimeters(1.5), Stranding.IecClass5, ConductorMaterial.AnnealedCopper,
            TabulatedResistance.Maximum(name, LinearResistance.FromOhmsPerKilometer(ohmsPerKilometer), Temperature.FromDegreesCelsius(20), CamPower.Sources.Iec60228));

        AssertRefused<NotSupportedException>(RoundTripTests.SiteOf(Cable.Pair(Stating(13.3, "my table"))), "my table");
        AssertRefused<NotSupportedException>(RoundTripTests.SiteOf(Cable.Pair(Stating(13.4, "IEC 60228 maximum"))), "IEC 60228 maximum");
        Assert.Contains("IEC 60228 maximum", SiteFile.Write(RoundTripTests.SiteOf(Cable.Pair(Stating(13.3, "IEC 60228 maximum")))), StringComparison.Ordinal);
    }

    [Fact]
    public void ACoaxialCableOrASourceOfTheUsers_IsRefused()
    {
        AssertRefused<NotSupportedException>(RoundTripTests.SiteOf(new Cable(Plain, Plain, name: "video", coax: CableCatalog.CoaxWithPair18.Coax)), "video");
        AssertRefused<NotSupportedException>(RoundTripTests.SiteOf(new Cable(Plain, Plain, name: "drum", source: CamPower.Sources.CommonPractice)), "drum");
    }

    [Fact]
    public void AnInsulationOfTheUsers_IsRefused()
    {
        var silicone = new Insulation("silicone", Temperature.FromDegreesCelsius(180), Temperature.FromDegreesCelsius(350), CamPower.Sources.CommonPractice);
        AssertRefused<NotSupportedException>(RoundTripTests.SiteOf(new Cable(Plain, Plain, insulation: silicone)), "silicone");
    }

    [Fact]
    public void ASourceOfAJoint_IsRefused()
    {
        Site site = RoundTripTests.SiteOf(new Cable(Plain, Plain));
        SiteRun run = site.Runs[0];
        var far = new SiteRun(run.From, run.To, run.Run.Then(new Joint("splice", ElectricResistance.FromOhms(0.01), CamPower.Sources.CommonPractice)));
        AssertRefused<NotSupportedException>(new Site(site.Name, site.Conditions, site.Boxes, [far], []), "splice");
    }

    [Fact]
    public void AInstallationMethodOfTheUsers_IsRefused_AlsoUnderTheNameOfAGivenOne()
    {
        Site site = RoundTripTests.SiteOf(new Cable(Plain, Plain));
        SiteRun run = site.Runs[0];
        Site Lying(InstallationMethod installationMethod) => new(site.Name, site.Conditions, site.Boxes, [new SiteRun(run.From, run.To, run.Run, installationMethod: installationMethod)], []);
        InstallationMethod Of(string name, double amperes, InstallationMethod like) => new(name, like.Points.ToDictionary(p => p.Key, p => p.Key == like.Points.Keys.Min() ? ElectricCurrent.FromAmperes(amperes) : p.Value),
            Temperature.FromDegreesCelsius(70), Temperature.FromDegreesCelsius(30), like.Source);

        AssertRefused<NotSupportedException>(Lying(Of("tray", 9, InstallationMethod.OnWall())), "tray");
        AssertRefused<NotSupportedException>(Lying(Of("installation method C", 9, InstallationMethod.OnWall())), "installation method C");
        AssertRefused<NotSupportedException>(Lying(Of("installation method C, 21 circuits bunched", 9, InstallationMethod.OnWall())), "21 circuits bunched");
        Assert.Contains("\"installation method C, 20 circuits\"", SiteFile.Write(Lying(InstallationMethod.OnWall(20))), StringComparison.Ordinal);
    }

    [Fact]
    public void TwoCablesOfOneName_AreRefusedWhereTheyDiffer()
    {
        var thin = new Conductor(WireSize.Awg(20), Stranding.Solid, ConductorMaterial.AnnealedCopper);
        AssertRefused<ArgumentException>(RoundTripTests.SiteOf(new Cable(Plain, Plain, name: "yard"), new Cable(thin, thin, name: "yard")), "'yard'");
        Assert.NotEmpty(SiteFile.Write(RoundTripTests.SiteOf(new Cable(Plain, Plain, name: "yard"), new Cable(Plain, Plain, name: "yard"))));
    }

    [Fact]
    public void GatesOfTheUsers_AreRefused()
    {
        var own = new FuseCharacteristic("gates of my maker", ElectricCurrent.FromAmperes(1), ElectricCurrent.FromAmperes(5), [.. FuseCharacteristic.IecQuickActing.TimeLimits]);
        AssertRefused<NotSupportedException>(Protected(Fuse("fuse", characteristic: own)), "gates of my maker");
    }

    [Fact]
    public void ASourceOfAnAmbientCurveThatIsNoTitle_IsRefused()
    {
        ShareCurve<Temperature> Of(Citation source) => new ShareCurve<Temperature>(Point(0, 110), Point(25, 100)).WithSource(source);
        static SharePoint<Temperature> Point(double celsius, double percent) => new(Temperature.FromDegreesCelsius(celsius), Ratio.FromPercent(percent));
        AssertRefused<NotSupportedException>(Protected(Fuse("fuse", rerating: Of(CamPower.Sources.CommonPractice))), "Common practice");
        AssertRefused<NotSupportedException>(Protected(Fuse("fuse", rerating: Of(new Citation("sheet", CitationKind.Declared, locator: "p. 3")))), "p. 3");
        Assert.NotEmpty(SiteFile.Write(Protected(Fuse("fuse", rerating: Of(new Citation("sheet", CitationKind.Declared))))));
    }

    [Fact]
    public void TwoProtectiveDevicesOfOneName_AreRefusedWhereTheyDiffer()
    {
        AssertRefused<ArgumentException>(Protected(Fuse("fuse"), Fuse("fuse", amperes: 3)), "'fuse'");
        Assert.NotEmpty(SiteFile.Write(Protected(Fuse("fuse"), Fuse("fuse"))));
        AssertRefused<ArgumentException>(Protected(Fuse("none")), "'none'");
    }

    [Fact]
    public void TwoModelsOfOneName_AreRefusedWhereTheyDiffer()
    {
        AssertRefused<ArgumentException>(WithModels(Model("dome", 4), Model("dome", 5)), "'dome'");
        Assert.NotEmpty(SiteFile.Write(WithModels(Model("dome", 4), Model("dome", 4))));
    }

    [Fact]
    public void ANameThatIsNoUnicode_IsRefused()
    {
        Site site = RoundTripTests.SiteOf(new Cable(Plain, Plain));
        Assert.ThrowsAny<ArgumentException>(() => SiteFile.Write(new Site("half \uD800", site.Conditions, site.Boxes, site.Runs, [])));
    }

    [Fact]
    public void NullArguments_AreRefused()
    {
        Assert.Throws<ArgumentNullException>(() => SiteFile.Write(null!));
        Assert.Throws<ArgumentNullException>(() => SiteFile.Read((string)null!));
        Assert.Throws<ArgumentNullException>(() => SiteFile.Read((System.IO.Stream)null!));
        Assert.Throws<ArgumentNullException>(() => SiteFile.Read("{}", null!));
    }

    [Fact]
    public void ANameThatNoFileMayHold_IsRefused()
    {
        Site site = RoundTripTests.SiteOf(new Cable(Plain, Plain));
        AssertRefused<ArgumentException>(new Site("yard\u202E", site.Conditions, site.Boxes, site.Runs, []), "U+202E");
    }

    private static Device Model(string name, double watts, DeviceKind kind = DeviceKind.Camera) => new(name, kind, new ComponentDraw(Load.ConstantPower(Power.FromWatts(watts))),
        new VoltageRange(ElectricPotential.FromVolts(11), ElectricPotential.FromVolts(13)));

    private static Fuse Fuse(string name, double amperes = 2, FuseCharacteristic? characteristic = null, ShareCurve<Temperature>? rerating = null) => new(name,
        ElectricCurrent.FromAmperes(amperes), characteristic ?? FuseCharacteristic.IecQuickActing, ElectricPotential.FromVolts(250),
        ElectricCurrent.FromAmperes(35), ElectricResistance.Zero, rerating: rerating);

    private static Site Protected(params ProtectiveDevice[] devices)
    {
        Site site = RoundTripTests.SiteOf(new Cable(Plain, Plain));
        return site.With(new DistributionBox("box", site.Boxes[0].Supply, devices.Select((d, i) => new BoxOutput(i + 1, ElectricCurrent.FromAmperes(1), d))));
    }

    private static Site WithModels(params Device[] models)
    {
        Site site = RoundTripTests.SiteOf(new Cable(Plain, Plain));
        return new Site(site.Name, site.Conditions, site.Boxes, site.Runs, models.Select((m, i) => new SiteDevice(FormattableString.Invariant($"device {i}"), m, "end 0")));
    }

    private static void AssertRefused<T>(Site site, string named) where T : Exception =>
        Assert.Contains(named, Assert.Throws<T>(() => SiteFile.Write(site)).Message, StringComparison.Ordinal);
}
