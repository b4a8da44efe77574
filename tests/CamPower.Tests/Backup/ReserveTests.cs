using System;
using System.Linq;
using CamPower.Backup;
using CamPower.Circuits;
using CamPower.Tests.Working;
using UnitsNet;
using static CamPower.Tests.Sites.SmallSite;

namespace CamPower.Tests.Backup;

/// <summary>Two supplies through diodes of 0.5 V.</summary>
public class ReserveTests
{
    // kT/q at 27 °C times 1.05.
    private const double Slope = 1.05 * 0.025865;

    private static readonly Condition Night = Condition.Night(At());

    // A general circuit simulator, ngspice 39, with the same diodes: equal set points, 30 mV and 150 mV apart, and ratings of 5 A and 3 A.
    [Theory]
    [InlineData("i(vequal)", 12.1, 12.1, 5, 2)]
    [InlineData("i(vnear)", 12.13, 12.1, 5, 2)]
    [InlineData("i(vfar)", 12.25, 12.1, 5, 2)]
    [InlineData("i(vsmall)", 12.1, 12.12, 3, 2.5)]
    public void Shares_AreThoseOfTheSimulator(string value, double mainVolts, double reserveVolts, double reserveAmperes, double amperes)
    {
        double simulated = BackupDecks.All.Read("two-supplies-through-diodes", value);
        Assert.Equal(simulated, Studied(Doubled(mainVolts, reserveVolts, reserveAmperes: reserveAmperes), amperes).Worst.ReserveCurrent.Amperes, 1e-4 * simulated);
    }

    // By hand: equal diodes differ by s·ln(I1/I2), and 27.16 mV·ln 10 are 62.5 mV.
    [Fact]
    public void SixtyTwoMillivolts_AreTenTimesTheCurrent()
    {
        ReserveInCondition both = Studied(Doubled(12 + (Slope * Math.Log(10)), 12), 2.2).Worst;
        Assert.Equal(2, both.MainCurrent.Amperes, 1e-6);
        Assert.Equal(0.2, both.ReserveCurrent.Amperes, 1e-6);
    }

    // Behind both diodes is one voltage: each set point less s·ln(1 + I/Is).
    [Theory]
    [InlineData(12.02, 12, 0.5, 5, 5)]
    [InlineData(12, 12.04, 4, 5, 2)]
    [InlineData(24, 24.001, 1e-6, 10, 1)]
    public void Shares_LeaveOneVoltageBehindBothDiodes(double mainVolts, double reserveVolts, double amperes, double mainRated, double reserveRated)
    {
        double own = DiodePair.Saturation(mainRated, 0.5, Slope), other = DiodePair.Saturation(reserveRated, 0.5, Slope);
        bool isMain = mainVolts > reserveVolts;
        double higher = DiodePair.HigherAmperes(amperes, Math.Abs(mainVolts - reserveVolts), isMain ? own : other, isMain ? other : own, Slope);
        double main = isMain ? higher : amperes - higher, reserve = amperes - main;
        Assert.InRange(higher, amperes * 0.05, amperes);
        Assert.Equal(mainVolts - (Slope * Math.Log(1 + (main / own))), reserveVolts - (Slope * Math.Log(1 + (reserve / other))), 1e-9);
    }

    // 12 V more than the other, and 2 A: that diode blocks.
    [Fact]
    public void FarLowerSupply_GivesNothing() => Assert.Equal(2, Studied(Doubled(24, 12), 2).Worst.MainCurrent.Amperes, 1e-15);

    // 12 V and 12.1 V, each within 1 %: at its highest the reserve has 12.22 V, the main at its lowest 11.88 V.
    [Fact]
    public void WithinTheTolerances_TheReserveMayGiveAll()
    {
        ReserveInCondition both = Studied(Doubled(12.2, 12.1, percent: 1), 2).Worst;
        Assert.InRange(both.ReserveCurrent.Amperes, 0.01, 0.1);
        Assert.InRange(both.LargestReserveCurrent.Amperes, 1.98, 2);
        Assert.True(both.ReserveRests.IsViolated);
        Assert.False(Studied(Doubled(13, 12.1, percent: 1), 2).Worst.ReserveRests.IsViolated);
    }

    // 12.6 V less the diode at the least; without a load the higher of the two.
    [Fact]
    public void Devices_SeeTheDiodeAndTheHigherSupply()
    {
        DeviceAssessment camera = Site(Doubled(12.6, 13), 1).Assess().Devices[0];
        Assert.Equal(12.1, camera.InConditions[0].Voltage.Volts, 1e-9);
        Assert.Equal(13, camera.NoLoadVoltage.Volts, 1e-9);
    }

    // 11.2 V less 0.5 V of the diode and 0.5 V in 1 Ω are 10.2 V: under a drop-out of 10.5 V. From 11.6 V it has 10.6 V, and 11 V is more than that.
    [Theory]
    [InlineData(11.2, 2, "camera 1")]
    [InlineData(11.6, 2, "")]
    [InlineData(11.6, 11, "camera 1")]
    public void MainSupplyFails_DevicesThatTheReserveDoesNotHold_AreLost(double reserveVolts, double accepts, string lost)
    {
        Site site = Star(Doubled(13, reserveVolts), [Night], (1, Camera(Amperes(0.5), Range(accepts, 60), Starts(11, 10.5))), (0, Camera(Amperes(0.1), starting: Starts(9, 8))));
        ReserveAssessment studied = site.Assess().StudyReserves().Single();
        Assert.Equal(lost, string.Join(", ", studied.Worst.Lost));
        Assert.Equal(reserveVolts - 0.5, studied.OnReserve.Boxes[0].InConditions[0].SupplyVoltage!.Value.Volts, 1e-9);
    }

    // 2 A of a reserve of 1.5 A.
    [Fact]
    public void MainSupplyFails_TheReserveIsHeldAgainstItsRating()
    {
        ReserveInCondition worst = Studied(Doubled(13, 12, reserveAmperes: 1.5), 2).Worst;
        Assert.True(worst.ReserveLoad.IsViolated);
        Assert.Equal((2, 1.5), (((ElectricCurrent)worst.ReserveLoad.Value!).Amperes, ((ElectricCurrent)worst.ReserveLoad.Limit!).Amperes));
    }

    // A short gets the limits of both, 6 A and 4 A, or that of either alone.
    [Fact]
    public void Short_GetsTheCurrentsOfBothOrOfOne()
    {
        ShortCircuit atTerminals = Site(Doubled(13, 12, limit: 6, reserveLimit: 4), 1).Assess().StudyFaults()[0].Shorts[0];
        Assert.Equal(10, atTerminals.Largest!.Value.Amperes, 1e-9);
        Assert.Equal(4, atTerminals.Smallest.Amperes, 1e-9);
    }

    // 0.5 V times 3 A in the diode, and the 2 W that the reserve takes in at rest.
    [Fact]
    public void Losses_CountTheDiodeAndTheReserveAtRest()
    {
        ShareCurve<Ratio> efficiency = new(new(Ratio.FromPercent(10), Ratio.FromPercent(90)), new(Ratio.FromPercent(100), Ratio.FromPercent(90)));
        var input = new SupplyInput(efficiency: efficiency, standbyPower: Power.FromWatts(2));
        var enclosure = new Enclosure(Length.FromMeters(0.3), Length.FromMeters(0.4), Length.FromMeters(0.15), EnclosureWall.PaintedSteel, EnclosureFaces.OnWall);
        DistributionBox box = Box(Supply("main", 13, 5, input: input), limit: 5).WithEnclosure(enclosure)
            .WithReserve(Supply("reserve", 12, 5, input: input), Volts(0.5));
        Assert.Equal(2 + (0.5 * 3), (double)Star(box, [Night], (0, Camera(Amperes(3)))).Assess().Boxes[0].InConditions[0].Losses!.Other.Watts, 1e-9);
    }

    [Fact]
    public void SetPoint_OfTheMainSupply_LeavesTheReserve()
    {
        DistributionBox box = Box(new Supply("main", new DcOutput(Volts(12), ElectricCurrent.FromAmperes(5), Ratio.Zero, trim: Range(11, 14)), Derating.GenericEnclosed))
            .WithReserve(Supply("reserve", 12, 5), Volts(0.5)).WithSetPoint(Volts(13));
        Assert.Equal(12.5, box.Supply.Output.LowestVoltage.Volts, 1e-12);
        Assert.Equal((11.5, 13), (box.Reserve!.Output.LowestVoltage.Volts, box.Reserve.Output.HighestVoltage.Volts));
    }

    [Theory]
    [InlineData(12.1, 12)]
    [InlineData(12, 12.1)]
    public void Explain_EvaluatesToTheCurrent(double mainVolts, double reserveVolts)
    {
        ReserveInCondition both = Studied(Doubled(mainVolts, reserveVolts, reserveAmperes: 3), 2).Worst;
        Derivation working = both.Explain();
        Assert.All(working.Steps, step => Assert.Equal(step.Value, Arithmetic.Evaluate(step.Substitution), 1e-6 * step.Value));
        Assert.Equal(Math.Max(both.MainCurrent.Amperes, both.ReserveCurrent.Amperes), working.Steps[^1].Value, 1e-12);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(2.1)]
    public void DiodeDrop_OutsideItsRange_IsRefused(double volts) =>
        Assert.Equal("diodeDrop", Assert.Throws<ArgumentOutOfRangeException>(() => Box().WithReserve(Dc(), Volts(volts))).ParamName);

    [Fact]
    public void WhatCannotHaveAReserve_SaysWhy()
    {
        Assert.Contains("direct voltage", Refused(Box(Dc(kind: CurrentKind.Ac)), Dc()), StringComparison.Ordinal);
        Assert.Contains("direct voltage", Refused(Box(), Dc(kind: CurrentKind.Ac)), StringComparison.Ordinal);
        Assert.Contains("adapter", Refused(Adapter(), Dc()), StringComparison.Ordinal);
        Assert.Contains("battery", Refused(Box().WithBattery(BatteryCatalog.Generic12Volt[0]), Dc()), StringComparison.Ordinal);
        Assert.Throws<InvalidOperationException>(() => Doubled(13, 12).WithBattery(BatteryCatalog.Generic12Volt[0]));
        Assert.Throws<ArgumentOutOfRangeException>(() => Box(Dc(1)).WithReserve(Dc(1), Volts(1)));
    }

    private static string Refused(DistributionBox box, Supply reserve) =>
        Assert.Throws<InvalidOperationException>(() => box.WithReserve(reserve, Volts(0.5))).Message;

    private static ReserveAssessment Studied(DistributionBox box, double amperes) => Site(box, amperes).Assess().StudyReserves().Single();

    private static Site Site(DistributionBox box, double amperes) => Star(box, [Night], (0, Camera(Amperes(amperes))));

    private static DistributionBox Doubled(
        double mainVolts, double reserveVolts, double percent = 0, double reserveAmperes = 5, double? limit = null, double? reserveLimit = null) =>
        Box(Supply("main", mainVolts, 5, percent, limit)).WithReserve(Supply("reserve", reserveVolts, reserveAmperes, percent, reserveLimit), Volts(0.5));

    private static Supply Supply(string name, double volts, double amperes, double percent = 0, double? limit = null, SupplyInput? input = null) => new(name,
        new DcOutput(Volts(volts), ElectricCurrent.FromAmperes(amperes), Ratio.FromPercent(percent),
            overload: limit is double held ? OverloadBehavior.ConstantCurrent(ElectricCurrent.FromAmperes(held)) : null),
        Derating.GenericEnclosed, input);
}
