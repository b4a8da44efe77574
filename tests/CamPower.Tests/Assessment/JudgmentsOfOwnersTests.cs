using System;
using System.Linq;
using CamPower.Tests.Sites;
using UnitsNet;
using static CamPower.Tests.Sites.SmallSite;

namespace CamPower.Tests.Assessment;

/// <summary>A device, a box and an output judge their own numbers; exactly at a limit, a hair inside and a hair outside.</summary>
public class JudgmentsOfOwnersTests
{
    // 12 V and 10 % more are 13.2 V, to everybody.
    [Theory]
    [InlineData(13.2, Verdict.Holds)]
    [InlineData(13.2001, Verdict.Holds)]
    [InlineData(13.1999, Verdict.Violated)]
    public void TooMuchVoltage_IsOneAnswerForEveryReader(double accepts, Verdict verdict)
    {
        Site site = Site(Dc(percent: 10), Camera(new LabelDraw(Volts(12), ElectricCurrent.FromAmperes(0.5), InputStage.Switching), Range(9, accepts)));
        SiteAssessment assessment = site.Assess();
        DeviceAssessment device = assessment.Devices[0];
        bool isWell = verdict == Verdict.Holds;
        Assert.Equal(verdict, device.AtLightLoad.Verdict);
        Assert.Equal(verdict, device.BeforeItDraws.Verdict);
        Assert.Equal(Verdict.Holds, device.OfSupply.Verdict);
        Assert.Equal(verdict, device.Verdict);
        Assert.Equal(isWell, !RuleSet.Standard.Check(assessment).Any(f => f.Rule.StartsWith("overvoltage", StringComparison.Ordinal)));
        Assert.Equal(isWell, !site.TrimWindowOf(BoxName).IsEmpty);
        Assert.Equal(isWell ? 1 : 0, site.LayoutOf(BoxName).DevicesInWindow);
    }

    // 1 A through 1 Ω leaves 11 V.
    [Theory]
    [InlineData(11, 0, Verdict.Holds)]
    [InlineData(11.0001, 0, Verdict.Violated)]
    [InlineData(10.9, 0.02, Verdict.ThinMargin)]
    [InlineData(10, 0.1, Verdict.Holds)]
    public void LowestVoltage_HasTheMarginOfThePolicy(double accepts, double margin, Verdict verdict)
    {
        DeviceInCondition device = Single(1, Camera(Amperes(1), Range(accepts, 15))).Assess().Devices[0].Worst;
        Judgment judged = device.LowestVoltage(Ratio.FromDecimalFractions(margin));
        Assert.Equal(verdict, judged.Verdict);
        Assert.Equal(11, ((ElectricPotential)judged.Value!).Volts, 1e-9);
        Assert.Equal(verdict == Verdict.Violated ? Verdict.Violated : Verdict.Holds, device.Verdict);
        Assert.Throws<ArgumentOutOfRangeException>(nameof(margin), () => device.LowestVoltage(Ratio.FromPercent(-1)));
    }

    // 8 A of 10 A are 80 %.
    [Theory]
    [InlineData(8, 0.8, Verdict.Holds)]
    [InlineData(8.001, 0.8, Verdict.ThinMargin)]
    [InlineData(10, 1, Verdict.Holds)]
    [InlineData(10.001, 0.8, Verdict.Violated)]
    public void Load_HasTheHeadroomOfThePolicy(double amperes, double headroom, Verdict verdict)
    {
        Site site = Site(Dc(amperes: 10), Camera(Amperes(amperes)));
        Assert.Equal(verdict, site.Assess().Boxes[0].Worst.Load(Ratio.FromDecimalFractions(headroom)).Verdict);
        var policy = new SizingPolicy(Ratio.Zero, Ratio.FromDecimalFractions(headroom));
        DistributionBox offered = DistributionBox.OfEqualOutputs("offered", Dc(amperes: 10), 1, ElectricCurrent.FromAmperes(20));
        Assert.Equal(verdict == Verdict.Holds, site.SmallestBoxFor(BoxName, [offered], policy).Chosen is not null);
    }

    // The generic supply is rated from -20 °C to 70 °C. A stated temperature has no margin.
    [Theory]
    [InlineData(70, Verdict.Holds, Verdict.Holds)]
    [InlineData(70.001, Verdict.Violated, Verdict.Holds)]
    [InlineData(-20, Verdict.Holds, Verdict.Holds)]
    [InlineData(-20.001, Verdict.Holds, Verdict.Violated)]
    public void StatedAir_HasNoMargin(double celsius, Verdict hottest, Verdict coldest)
    {
        BoxInCondition box = Star(Box(), [Condition.Day(At(box: celsius))], (0, Camera(Amperes(1)))).Assess().Boxes[0].Worst;
        Assert.Equal((hottest, coldest), (box.HottestAir.Verdict, box.ColdestAir.Verdict));
    }

    // A calculated one has a quarter of its rise: holds while the air around leaves room for 1.25 times the rise, thin up to the rise itself.
    [Theory]
    [InlineData(1.26, Verdict.Holds)]
    [InlineData(1.24, Verdict.ThinMargin)]
    [InlineData(1.01, Verdict.ThinMargin)]
    [InlineData(0.99, Verdict.Violated)]
    public void CalculatedAir_HasAQuarterOfItsRise(double rises, Verdict verdict)
    {
        double rise = Enclosed(65, 0.8).Heat!.RiseKelvins;
        Assert.InRange(rise, 1, 40);
        Assert.Equal(verdict, Enclosed(70 - (rises * rise), 0.8).HottestAir.Verdict);
    }

    // Without an efficiency nobody knows how warm it gets: what is broken in the air around is broken, the rest unknown.
    [Theory]
    [InlineData(25, Verdict.Unknown)]
    [InlineData(71, Verdict.Violated)]
    public void UnknownAir_IsUnknownUntilItIsBroken(double celsius, Verdict verdict)
    {
        BoxInCondition box = Enclosed(celsius, null);
        Assert.Equal(verdict, box.HottestAir.Verdict);
        Assert.Equal(verdict, box.Load(Ratio.FromPercent(80)).Verdict);
        Assert.Equal(Verdict.Holds, box.ColdestAir.Verdict);
        Assert.Equal(verdict == Verdict.Unknown, box.HottestAir.NotStated is not null);
    }

    // The resettable fuse of 1.10 A holds 0.77 A in 50 °C, and 0.715 A where its curve is 5 % of its hold current too high; the output may carry 1 A.
    [Theory]
    [InlineData(0.715, Verdict.Holds, Verdict.Holds)]
    [InlineData(0.7151, Verdict.ThinMargin, Verdict.Holds)]
    [InlineData(0.77, Verdict.ThinMargin, Verdict.Holds)]
    [InlineData(0.7701, Verdict.Violated, Verdict.Holds)]
    [InlineData(1, Verdict.Violated, Verdict.Holds)]
    [InlineData(1.0001, Verdict.Violated, Verdict.Violated)]
    public void Output_IsHeldAgainstItsLimitAndItsProtection(double amperes, Verdict protection, Verdict limit)
    {
        OutputInCondition output = Star(Box(limit: 1, protection: ResettableFuse.Generic16Volt[1]), [Condition.Day(At(box: 50))], (0, Camera(Amperes(amperes)))).Assess().Boxes[0].Outputs[0].Worst;
        Assert.Equal((protection, limit), (output.OfProtection.Verdict, output.OfLimit.Verdict));
        Assert.Equal(0.77, ((ElectricCurrent)output.OfProtection.Limit!).Amperes, 1e-9);
    }

    [Fact]
    public void NoProtection_IsNothingToJudge_AndAnUndeclaredOneUnknown()
    {
        Assert.Equal(default, Of(ProtectiveDevice.None));
        Assert.NotNull(Of(null).NotStated);

        static Judgment Of(ProtectiveDevice? device) => Star(Box(protection: device), [Condition.Day(At())], (0, Camera(Amperes(1)))).Assess().Boxes[0].Outputs[0].Worst.OfProtection;
    }

    private static Site Site(Supply supply, Device device) => Star(Box(supply), [Condition.Day(At())], (0, device));

    private static BoxInCondition Enclosed(double celsius, double? efficiency)
    {
        Supply supply = Dc(amperes: 5);
        var enclosure = new Enclosure(Length.FromMeters(0.3), Length.FromMeters(0.4), Length.FromMeters(0.15), EnclosureWall.PaintedSteel, EnclosureFaces.OnWall);
        DistributionBox box = Box(efficiency is double share ? supply.WithEfficiency(share) : supply).WithEnclosure(enclosure);
        return Star(box, [Condition.Day(At(box: celsius))], (0, Camera(Amperes(2)))).Assess().Boxes[0].Worst;
    }
}
