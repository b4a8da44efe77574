using System;
using System.Collections.Generic;
using System.Linq;
using CamPower.Tests.Protection;
using CamPower.Tests.Sites;
using UnitsNet;
using static CamPower.Tests.Sites.SmallSite;

namespace CamPower.Tests.Checks;

/// <summary>Where a model reaches, and that somebody says so where it does not.</summary>
public class ValueOutsideValidatedRangeRuleTests
{
    // Published currents reach from 18 to 10 AWG in a cable and from 24 to 10 AWG in a bundle, the estimate below them to 28 AWG.
    // 29 AWG is 0.0642 mm², 28 AWG 0.0810 mm² (ASTM B258). A larger one carries at least what the largest of them does.
    [Theory]
    [InlineData(28, null, null, null)]
    [InlineData(10, null, null, null)]
    [InlineData(29, null, 0.0642, 0.0810)]
    [InlineData(9, null, null, null)]
    [InlineData(29, "large bundle", 0.0642, 0.0810)]
    [InlineData(9, "large bundle", null, null)]
    public void Conductor_OutsideThePublishedSizes(int gauge, string? installationMethod, double? measured, double? limit)
    {
        IReadOnlyList<Finding> found = Found(OnCable(gauge, installationMethod is null ? null : InstallationMethod.LargeBundle));
        Assert.Equal(measured is null, found.Count == 0);
        if (measured is null) return;
        Finding finding = Assert.Single(found);
        Assert.Equal("box output 1 to end", finding.About.Name);
        Assert.Equal(measured.Value, ((Area)finding.Measured!).SquareMillimeters, 0.0005);
        Assert.Equal(limit!.Value, ((Area)finding.Limit!).SquareMillimeters, 0.0005);
    }

    // Between the sizes that are published nothing is outside, however little is declared of the insulation.
    [Fact]
    public void Conductor_OfNoLengthIsNone() => Assert.Empty(Found(OnCable(40, null, meters: 0)));

    // The generic thermal curve ends at 85 °C, and what a resettable fuse holds beyond is not known: until now nobody said so.
    [Theory]
    [InlineData(85, false)]
    [InlineData(86, true)]
    [InlineData(-41, true)]
    public void Device_OutsideItsAmbientCurve(double celsius, bool isFound)
    {
        DistributionBox box = DistributionBox.OfEqualOutputs(BoxName, Dc(), 2, ElectricCurrent.FromAmperes(5), SmallDevices.Printed(1.10));
        IReadOnlyList<Finding> found = Found(Star(box, [Condition.Day(At()), Condition.Night(At(box: celsius))], (0, Camera(Amperes(0.1))), (0, Camera(Amperes(0.1)))));
        Assert.Equal(isFound, found.Count == 1);
        if (!isFound) return;
        Assert.Equal(("box", "night"), (found[0].About.Name, found[0].Condition!.Name));
        Assert.Equal(celsius > 0 ? 85 : -40, ((Temperature)found[0].Limit!).DegreesCelsius);
    }

    [Fact]
    public void Device_OfOneOutputIsNamedByIt()
    {
        DistributionBox box = DistributionBox.OfEqualOutputs(BoxName, Dc(), 2, ElectricCurrent.FromAmperes(5), SmallDevices.Printed(1.10));
        Assert.Equal("box output 1", Assert.Single(Found(Star(box, [Condition.Day(At(box: 90))], (0, Camera(Amperes(0.1)))))).About.Name);
    }

    // Boxes of one cabinet have one enclosure: one finding, of the cabinet.
    [Fact]
    public void Enclosure_OfACabinetIsSaidOnce()
    {
        var cabinet = new Cabinet("flat cabinet", new Enclosure(Length.FromMeters(0.3), Length.FromMeters(0.4), Length.FromMeters(0.08), EnclosureWall.PaintedSteel, EnclosureFaces.OnWall));
        var site = new Site("site", [Condition.Day(At(box: 75))], [.. new[] { "a", "b" }.Select(name =>
            DistributionBox.OfEqualOutputs(name, Dc().WithEfficiency(0.9), 1, ElectricCurrent.FromAmperes(5)).WithCabinet(cabinet))], [], []);
        Finding finding = Assert.Single(Found(site));
        Assert.Equal((SubjectKind.Cabinet, "flat cabinet"), (finding.About.Kind, finding.About.Name));
    }

    // Where the installation method decides and nobody declares it, the finding says what was taken.
    [Fact]
    public void UndeclaredLaying_IsSaidWhereItDecides()
    {
        string Message(InstallationMethod? installationMethod) => Assert.Single(Rules.ConductorOverAmpacity.Check(new Evidence(OnCable(24, installationMethod, amperes: 9).Assess()))).Message;
        Assert.Contains("2 current-carrying conductors in a cable or raceway (assumed)", Message(null), StringComparison.Ordinal);
        Assert.DoesNotContain("raceway (assumed)", Message(InstallationMethod.LargeBundle), StringComparison.Ordinal);
    }

    private static Site OnCable(int gauge, InstallationMethod? installationMethod, double meters = 1, double amperes = 0.1) => new("site", [Condition.Day(At())], [Box()],
        [new SiteRun(RunOrigin.Output(BoxName, 1), "end", new CableRun(Cable.Pair(WireSize.Awg(gauge), Stranding.Solid, ConductorMaterial.AnnealedCopper), Length.FromMeters(meters)), installationMethod: installationMethod)],
        [new SiteDevice("camera 1", Camera(Amperes(amperes)), "end")]);

    private static IReadOnlyList<Finding> Found(Site site) => [.. Rules.ValueOutsideValidatedRange.Check(new Evidence(site.Assess()))];
}
