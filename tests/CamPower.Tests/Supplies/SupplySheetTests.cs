using System;
using System.Collections.Generic;
using System.Linq;
using CamPower.Tests.Faults;
using CamPower.Tests.Sites;
using FsCheck;
using FsCheck.Fluent;
using UnitsNet;
using static CamPower.Tests.Sites.SmallSite;

namespace CamPower.Tests.Supplies;

/// <summary>What a data sheet says beyond voltage and current: derating by line and altitude, the input, the fault side, terminals.</summary>
public class SupplySheetTests
{
    // Generic ambient curve; 80 % at 90 V, all of it from 115 V on; 5 K for every 1000 m above 2000 m.
    private static readonly Derating Full = new(
        Derating.GenericEnclosed.Ambient,
        new ShareCurve<ElectricPotential>(Line(90, 80), Line(115, 100), Line(264, 100)),
        AltitudeDerating.Generic);

    // By hand. 60 °C: 75 %. 102.5 V: 90 %. 3000 m: 5 K more, at 60 °C 62.5 %. Factors multiply.
    [Theory]
    [InlineData(60, null, null, 75)]
    [InlineData(25, 90.0, null, 80)]
    [InlineData(25, 102.5, null, 90)]
    [InlineData(25, 230.0, null, 100)]
    [InlineData(60, 102.5, null, 67.5)]
    [InlineData(60, null, 2000.0, 75)]
    [InlineData(60, null, 3000.0, 62.5)]
    [InlineData(60, 102.5, 3000.0, 56.25)]
    [InlineData(60, null, -100.0, 75)]
    [InlineData(40, null, 4000.0, 100)]
    [InlineData(66, null, 3000.0, 0)]
    [InlineData(25, 89.99, null, 0)]
    [InlineData(25, 265.0, null, 0)]
    public void Derating_MultipliesLineAndHeat_AndAltitudeCountsAsHeat(double celsius, double? line, double? meters, double percent)
    {
        Temperature ambient = Temperature.FromDegreesCelsius(celsius);
        ElectricPotential? volts = line is double v ? Volts(v) : null;
        Length? altitude = meters is double m ? Length.FromMeters(m) : null;
        Assert.Equal(percent, Full.ShareAt(ambient, volts, altitude).Percent, 1e-9);
        var supply = new Supply("s", Dc(amperes: 8).Output, Full);
        Assert.Equal(8 * percent / 100, supply.DeratedCurrentAt(ambient, volts, altitude).Amperes, 1e-9);
    }

    [Fact]
    public void WhatTheSheetDoesNotState_DeratesNothing()
    {
        var plain = new Derating(Derating.GenericEnclosed.Ambient);
        Assert.Equal(75, plain.ShareAt(Temperature.FromDegreesCelsius(60), Volts(50), Length.FromMeters(5000)).Percent, 1e-9);
    }

    // A supply for 90 V to 264 V is not rated to run at 80 V, whatever its derating says of it.
    [Theory]
    [InlineData(89.9, 0)]
    [InlineData(90, 4)]
    [InlineData(264, 4)]
    [InlineData(264.1, 0)]
    public void OutsideItsInput_NothingIsRated(double line, double amperes)
    {
        var supply = new Supply("s", Dc(amperes: 4).Output, Derating.GenericEnclosed, new SupplyInput(Range(90, 264)));
        Assert.Equal(amperes, supply.DeratedCurrentAt(Temperature.FromDegreesCelsius(25), Volts(line)).Amperes);
        BoxInCondition solved = Star(Box(supply), [Condition.Day(At()).WithLineVoltage(Volts(line))], (0, Camera(Amperes(1)))).Assess().Boxes[0].Worst;
        Assert.Equal(amperes, solved.DeratedRating.Amperes);
    }

    // 12 V and 10 A are 120 W: 120/14 = 8.571 A at 14 V, and 10 A, not 10.9 A, at 11 V. A sheet that rates 140 W allows 10 A at 14 V, one that rates 98 W 7 A.
    [Theory]
    [InlineData(12, null, 10)]
    [InlineData(14, null, 120 / 14.0)]
    [InlineData(11, null, 10)]
    [InlineData(14, 140.0, 10)]
    [InlineData(14, 98.0, 7)]
    public void TrimmedUp_ItKeepsItsPower(double setPoint, double? ratedWatts, double amperes)
    {
        var output = new DcOutput(Volts(12), ElectricCurrent.FromAmperes(10), Ratio.Zero, Range(11, 14), ratedPower: ratedWatts is double watts ? Power.FromWatts(watts) : null);
        Supply supply = new Supply("s", output, Derating.GenericEnclosed).WithSetPoint(Volts(setPoint));
        Assert.Equal(amperes, supply.DeratedCurrentAt(Temperature.FromDegreesCelsius(25)).Amperes, 1e-9);

        Site site = Star(Box(supply), [Condition.Day(At())], (0, Camera(Amperes(amperes + 0.01))));
        Finding finding = Assert.Single(RuleSet.Standard.Check(site.Assess()), f => f.Rule == "supply-above-derated-rating");
        Assert.Equal(amperes < 10, finding.Message.Contains("derated from 10.00 A for a set point of 14 V.", StringComparison.Ordinal));
        Assert.Equal(amperes < 10 ? amperes : 10, ((ElectricCurrent)finding.Limit!).Amperes, 1e-9);
    }

    [Fact]
    public void RatedPower_IsAboveNothing() => Assert.Throws<ArgumentOutOfRangeException>("ratedPower", () =>
        new DcOutput(Volts(12), ElectricCurrent.FromAmperes(10), Ratio.Zero, ratedPower: Power.Zero));

    // 3 A of 4 A is well in the valley at 230 V. At 4000 m the box of 55 °C counts as 65 °C, 62.5 %; at 102.5 V 90 % of that.
    [Fact]
    public void AssessmentOfASite_TakesItsAltitudeAndTheLineOfTheCondition()
    {
        var supply = new Supply("s", Dc(amperes: 4).Output, Full);
        Condition warm = Condition.Day(At(box: 55));
        Site valley = Star(Box(supply), [warm, Condition.Night(warm.At).WithLineVoltage(Volts(102.5))], (0, Camera(Amperes(3))));
        Assert.Equal([3.5, 3.15], valley.Assess().Boxes[0].InConditions.Select(c => Math.Round(c.DeratedRating.Amperes, 9)));
        Assert.DoesNotContain("supply-above-derated-rating", RuleSet.Standard.Check(valley.Assess()).Select(f => f.Rule));

        var mountain = new Site(valley.Name, valley.Conditions, valley.Boxes, valley.Runs, valley.Devices, altitude: Length.FromMeters(4000));
        Assert.Equal([2.5, 2.25], mountain.With(valley.Boxes[0]).Assess().Boxes[0].InConditions.Select(c => Math.Round(c.DeratedRating.Amperes, 9)));
        Finding finding = Assert.Single(RuleSet.Standard.Check(mountain.Assess()), f => f.Rule == "supply-above-derated-rating");
        Assert.Contains("2.25 A, derated from 4.00 A for 55 °C, 102.5 V at its input, an altitude of 4000 m.", finding.ToString(), StringComparison.Ordinal);
    }

    // Nothing but a cooler, lower or better-fed supply keeps more of its rating, and no share leaves 0 to 1.
    [SeededProperty]
    public Property Derating_NeverGrowsWithHeatNorHeight()
    {
        Gen<double[]> cases = Gen.Choose(0, 10000).Select(n => n / 10000.0).ArrayOf(4);
        return Prop.ForAll(cases.ToArbitrary(), x =>
        {
            double celsius = -20 + (90 * x[0]), more = 10 * x[1], meters = 6000 * x[2], volts = 90 + (160 * x[3]);
            double share = Share(celsius, meters), warmer = Share(celsius + more, meters), higher = Share(celsius, meters + (300 * more));
            Assert.InRange(share, 0, 1);
            Assert.True(warmer <= share && higher <= share);

            // The line is a factor of its own.
            double byLine = Full.ShareAt(Temperature.FromDegreesCelsius(25), Volts(volts)).DecimalFractions;
            Assert.Equal(share * byLine, Full.ShareAt(Temperature.FromDegreesCelsius(celsius), Volts(volts), Length.FromMeters(meters)).DecimalFractions, 1e-12);
        });

        double Share(double celsius, double meters) =>
            Full.ShareAt(Temperature.FromDegreesCelsius(celsius), altitude: Length.FromMeters(meters)).DecimalFractions;
    }

    // Straight lines by hand; what the sheet does not state is not guessed.
    [Theory]
    [InlineData(10, null)]
    [InlineData(20, 80.0)]
    [InlineData(60, 84.0)]
    [InlineData(100, 88.0)]
    [InlineData(101, null)]
    public void Efficiency_IsReadOffTheSheet(double loadPercent, double? efficiencyPercent)
    {
        var curve = new ShareCurve<Ratio>(new(Ratio.FromPercent(20), Ratio.FromPercent(80)), new(Ratio.FromPercent(100), Ratio.FromPercent(88)));
        Ratio load = Ratio.FromPercent(loadPercent);
        Assert.Equal(efficiencyPercent, Rounded(new SupplyInput(efficiency: curve).EfficiencyAt(load)));
        Assert.Equal(efficiencyPercent, Rounded(new SupplyInput(powerFactor: curve).PowerFactorAt(load)));
        Assert.Null(new SupplyInput(efficiency: curve).PowerFactorAt(load));

        static double? Rounded(Ratio? share) => share is Ratio known ? Math.Round(known.Percent, 9) : null;
    }

    [Fact]
    public void Transformer_IsAsLargeAsItsVoltageTimesItsCurrent()
    {
        Assert.Equal(96, ((AcOutput)Dc(24, 4, kind: CurrentKind.Ac).Output).RatedApparentPower.Voltamperes, 1e-9);
    }

    // Everything that a data sheet says survives being set to another voltage.
    [Fact]
    public void SetTo_ChangesTheVoltageAlone()
    {
        var output = new DcOutput(Volts(12), ElectricCurrent.FromAmperes(5), Ratio.FromPercent(2), Range(11, 15), Volts(12.5), Ratio.FromPercent(1),
            ElectricResistance.FromMilliohms(20), OverloadBehavior.Unlimited, ElectricCapacitance.FromMicrofarads(2200));
        Supply supply = new Supply("s", output, Full, new SupplyInput(Range(90, 264))).WithSetPoint(Volts(14));
        var set = (DcOutput)supply.Output;
        Assert.Equal(14, set.SetPoint.Volts);
        Assert.Equal((13.72, 14.28), (Math.Round(set.LowestVoltage.Volts, 9), Math.Round(set.HighestVoltage.Volts, 9)));
        Assert.Same(output.Trim, set.Trim);
        Assert.Equal((output.Nominal, output.RatedCurrent, output.Tolerance, output.Ripple), (set.Nominal, set.RatedCurrent, set.Tolerance, set.Ripple));
        Assert.Equal((output.SourceResistance, output.Overload, output.Capacitance), (set.SourceResistance, set.Overload, set.Capacitance));
        Assert.Same(Full, supply.Derating);
        Assert.NotNull(supply.Input);
    }

    // A transformer's short is its voltage over its resistance: 24 V behind 0.1 Ω and a joint of 0.5 Ω.
    [Fact]
    public void Transformer_FeedsAFaultByItsRmsVoltage()
    {
        var supply = new Supply("t", new AcOutput(Volts(24), ElectricCurrent.FromAmperes(4), Ratio.Zero, ElectricResistance.FromOhms(0.1), OverloadBehavior.Unlimited), Derating.GenericEnclosed);
        Assert.Equal(40, SmallFault.Study(Runs.OfOhms(0.5), ProtectiveDevice.None, supply).AtFarEnd.Largest!.Value.Amperes, 1e-9);
    }

    [Fact]
    public void Outputs_SayWhatProtectsThem_OrThatNobodySaid()
    {
        ResettableFuse fuse = ResettableFuse.Generic16Volt[1];
        var terminals = new TerminalRange(WireSize.Awg(24), WireSize.Awg(14));
        DistributionBox box = DistributionBox.OfEqualOutputs("b", Dc(), 3, ElectricCurrent.FromAmperes(1.1), fuse, terminals);
        Assert.All(box.Outputs, o => Assert.Same(fuse, o.Protection));
        Assert.Same(terminals, box.Terminals);
        Assert.Null(Box().Outputs[0].Protection);
        Assert.Same(ProtectiveDevice.None, DistributionBox.Adapter("a", Dc(), ProtectiveDevice.None).Outputs[0].Protection);
        var trimmed = new Supply("s", new DcOutput(Volts(12), ElectricCurrent.FromAmperes(5), Ratio.Zero, Range(11, 15)), Derating.GenericEnclosed);
        DistributionBox set = new DistributionBox("b", trimmed, [new BoxOutput(1, ElectricCurrent.FromAmperes(1), fuse)], terminals).WithSetPoint(Volts(14));
        Assert.Same(fuse, set.Outputs[0].Protection);
        Assert.Same(terminals, set.Terminals);
    }

    // IEC 60228 and ASTM B258 sizes: 14 AWG is 2.08 mm², 24 AWG 0.205 mm².
    [Theory]
    [InlineData("24 AWG", true)]
    [InlineData("14 AWG", true)]
    [InlineData("1.5 mm2", true)]
    [InlineData("2.5 mm2", false)]
    [InlineData("0.2 mm2", false)]
    [InlineData("26 AWG", false)]
    public void Terminals_TakeTheSizesBetweenTheirEnds(string size, bool fits) =>
        Assert.Equal(fits, new TerminalRange(WireSize.Awg(24), WireSize.Awg(14)).Accepts(WireSize.Parse(size)));

    private static SharePoint<ElectricPotential> Line(double volts, double percent) => new(Volts(volts), Ratio.FromPercent(percent));
}
