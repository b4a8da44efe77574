using System;
using System.Linq;
using CamPower.Conductors;
using UnitsNet;

namespace CamPower.Tests.Conductors;

/// <summary>The currents of metric sizes, IEC 60364-5-52 Tables B.52.2 and B.52.17, all from memory, against what they must be like.</summary>
public class IecAmpacityTests
{
    private static readonly double[] Sizes = [1.5, 2.5, 4, 6, 10, 16];

    public static TheoryData<string, double, double, double, double, double, double> Rows => new()
    {
        { "A2", 14, 18.5, 25, 32, 43, 57 },
        { "B2", 16.5, 23, 30, 38, 52, 69 },
        { "C", 19.5, 27, 36, 46, 63, 85 },
    };

    [Theory]
    [MemberData(nameof(Rows))]
    public void Ampacity_IsThatOfTheTable(string method, double at1, double at2, double at4, double at6, double at10, double at16) =>
        Assert.All(Sizes.Zip([at1, at2, at4, at6, at10, at16]), x => Assert.Equal(x.Second, Most(Of(method), x.First, 30), 1e-9));

    // IEC 60364-5-52 Annex D, from memory: the tables are I = A·S^m, rounded, with (A; m) of (10.8; 0.6015), (13.1; 0.600) and (15.0; 0.625).
    [Theory]
    [InlineData("A2", 10.8, 0.6015)]
    [InlineData("B2", 13.1, 0.600)]
    [InlineData("C", 15.0, 0.625)]
    public void TheTable_IsThePowerLawOfItsAnnex(string method, double factor, double exponent) =>
        Assert.All(Sizes, size => Assert.Equal(factor * Math.Pow(size, exponent), Most(Of(method), size, 30), 0.025 * Most(Of(method), size, 30)));

    // Table B.52.14, PVC, from memory: the model's √((70 − t)/40) is its row.
    [Theory]
    [InlineData(10, 1.22)]
    [InlineData(20, 1.12)]
    [InlineData(25, 1.06)]
    [InlineData(35, 0.94)]
    [InlineData(40, 0.87)]
    [InlineData(45, 0.79)]
    [InlineData(50, 0.71)]
    [InlineData(60, 0.50)]
    public void OtherAir_IsTheFactorOfItsTable(double celsius, double factor) =>
        Assert.Equal(factor, Most(InstallationMethod.OnWall(), 2.5, celsius) / Most(InstallationMethod.OnWall(), 2.5, 30), 0.006);

    // Table B.52.17, item 1, from memory. Bunched cables share a surface: n of them keep at least 1/√n of the current each.
    [Theory]
    [InlineData(1, 1)]
    [InlineData(2, 0.8)]
    [InlineData(3, 0.7)]
    [InlineData(4, 0.65)]
    [InlineData(5, 0.6)]
    [InlineData(6, 0.57)]
    [InlineData(7, 0.54)]
    [InlineData(8, 0.52)]
    [InlineData(9, 0.5)]
    [InlineData(10, 0.45)]
    [InlineData(12, 0.45)]
    [InlineData(13, 0.41)]
    [InlineData(16, 0.41)]
    [InlineData(20, 0.38)]
    public void BunchedCircuits_CarryLess(int circuits, double factor)
    {
        Assert.Equal(factor, Most(InstallationMethod.InConduitOnWall(circuits), 4, 30) / Most(InstallationMethod.InConduitOnWall(), 4, 30), 1e-9);
        Assert.InRange(factor, 1 / Math.Sqrt(circuits), 1);
    }

    // A size between two gauges carries between them: the US table at 70 °C is for a cable or raceway, and that is method B2, to 8 %.
    [Theory]
    [InlineData(1.5)]
    [InlineData(2.5)]
    [InlineData(4)]
    public void ConduitOnWall_IsNearTheGaugesOfTheOtherTable(double size) =>
        Assert.Equal(Most(InstallationMethod.InCableOrRaceway(2), size, 30), Most(InstallationMethod.InConduitOnWall(), size, 30), 0.08 * Most(InstallationMethod.InConduitOnWall(), size, 30));

    [Fact]
    public void MoreWallAroundIt_CarriesLess_AndMoreMetalMore()
    {
        Assert.All(Sizes, s => Assert.True(Most(InstallationMethod.InInsulatedWall(), s, 30) < Most(InstallationMethod.InConduitOnWall(), s, 30) && Most(InstallationMethod.InConduitOnWall(), s, 30) < Most(InstallationMethod.OnWall(), s, 30)));
        Assert.All(Sizes.Zip(Sizes.Skip(1)), x => Assert.True(Most(InstallationMethod.OnWall(), x.First, 30) < Most(InstallationMethod.OnWall(), x.Second, 30)));
    }

    [Fact]
    public void Methods_AreNamed_AndRefuseWhatTheTableEndsBefore()
    {
        Assert.Equal(["installation method A2", "installation method B2, 3 circuits bunched", "installation method C"],
            new[] { InstallationMethod.InInsulatedWall(), InstallationMethod.InConduitOnWall(3), InstallationMethod.OnWall() }.Select(l => l.Name));
        Assert.All(new[] { 0, 21 }, count => Assert.Throws<ArgumentOutOfRangeException>("circuits", () => InstallationMethod.OnWall(count)));
        Assert.Equal(CitationKind.FromMemory, InstallationMethod.OnWall().Source.Kind);
        Assert.False(InstallationMethod.OnWall().Covers(WireSize.SquareMillimeters(25)));
    }

    private static InstallationMethod Of(string method) => method switch { "A2" => InstallationMethod.InInsulatedWall(), "B2" => InstallationMethod.InConduitOnWall(), _ => InstallationMethod.OnWall() };

    private static double Most(InstallationMethod installationMethod, double squareMillimeters, double air) => installationMethod.Ampacity(
        new Conductor(WireSize.SquareMillimeters(squareMillimeters), Stranding.Solid, ConductorMaterial.AnnealedCopper),
        Temperature.FromDegreesCelsius(70), Temperature.FromDegreesCelsius(air)).Amperes;
}
