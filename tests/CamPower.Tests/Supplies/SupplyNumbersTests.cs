using System;
using System.Linq;
using CamPower.Supplies;
using CamPower.Tests.Protection;
using UnitsNet;
using static CamPower.Tests.Supplies.LimitedOutputs;

namespace CamPower.Tests.Supplies;

/// <summary>Numbers of supplies and boxes of which none is 1, 0 or equal to another. All by hand.</summary>
public class SupplyNumbersTests
{
    // 7 K for every 1000 m above 1500 m: 8.4 K at 2700 m.
    [Fact]
    public void Altitude_CountsFromItsStart()
    {
        var derating = new AltitudeDerating(Length.FromMeters(1500), TemperatureDelta.FromKelvins(7));
        Assert.Equal(8.4, derating.RiseAt(Length.FromMeters(2700)).Kelvins, 1e-9);
        Assert.Equal(0, derating.RiseAt(Length.FromMeters(1400)).Kelvins);
        Assert.Equal("7 K for every 1000 m above 1500 m", derating.ToString());
    }

    // Half of its rating at -20 °C, all of it from 10 °C to 50 °C, 40 % at 70 °C; a low line leaves 80 %; 5 K for every 1000 m above 2000 m.
    // From 60 °C on at 3000 m: 65 °C, (1 + 3 × 0.4)/4 = 55 %. From -30 °C on somewhere all of it.
    [Theory]
    [InlineData(-30, 200, 3000, 1)]
    [InlineData(50, 200, 0, 1)]
    [InlineData(60, 200, 0, 0.7)]
    [InlineData(60, 200, 3000, 0.55)]
    [InlineData(60, 100, 3000, 0.44)]
    [InlineData(71, 200, 0, 0)]
    public void LargestShare_IsThatOfAnyWarmerAir(double celsius, double line, double meters, double share) =>
        Assert.Equal(share, Sheet.LargestShareFrom(celsius, line, meters), 1e-9);

    // 2·(0.25 × 0.125 + 0.25 × 0.5 + 0.125 × 0.5) = 0.4375 m² are all that the sun can shine on.
    [Theory]
    [InlineData(0.4375, true)]
    [InlineData(0.438, false)]
    public void TheSun_ShinesOnNoMoreThanThereIs(double squareMeters, bool isPossible)
    {
        if (isPossible) Assert.Equal(squareMeters, Steel(squareMeters).SunlitArea!.Value.SquareMeters);
        else Assert.Throws<ArgumentOutOfRangeException>("sunlitArea", () => Steel(squareMeters));
    }

    [Fact]
    public void AnEnclosure_SaysItsSizeAndWhetherAirPasses()
    {
        Assert.Equal($"250 × 500 × 125 mm, {EnclosureWall.PaintedSteel}", Steel(0.1).ToString());
        Assert.Equal($"250 × 500 × 125 mm, {EnclosureWall.PaintedSteel}, ventilated", Steel(0.1, isVentilated: true).ToString());
    }

    // 12 V that hold 7 A behind 0.4 Ω. Up to its rating a supply keeps its voltage: rated 7 A it gives at least 84 VA; rated 5 A 7·(12 − 2.8) = 64.4 VA.
    [Theory]
    [InlineData(7, 84)]
    [InlineData(5, 64.4)]
    public void BeyondItsRating_ItsResistanceCounts(double rated, double voltAmperes)
    {
        var supply = new DcOutput(Volts(12), Amps(rated), Ratio.Zero, sourceResistance: ElectricResistance.FromOhms(0.4), overload: OverloadBehavior.ConstantCurrent(Amps(7)));
        var delivered = new OutputDelivery(supply, new BoxOutput(1, Amps(9), ProtectiveDevice.None));
        Assert.Equal(7, delivered.LeastAmperes, 1e-9);
        Assert.Equal(voltAmperes, delivered.LeastVoltAmperes, 1e-9);
        Assert.Equal(64.4, delivered.MostVoltAmperes, 1e-9);
    }

    // A resettable fuse caps what an output delivers by the current of its test, if it has tripped there by the 5 s of the soonest measurement (IEC 62368-1, from memory).
    [Theory]
    [InlineData(4.9, 7.5)]
    [InlineData(5, 7.5)]
    [InlineData(5.1, 11)]
    public void AResettableFuse_CapsByItsTest(double seconds, double most)
    {
        var supply = new DcOutput(Volts(12), Amps(10), Ratio.Zero, overload: OverloadBehavior.ConstantCurrent(Amps(11)));
        ResettableFuse fuse = SmallDevices.Resettable(hold: 1.3, trip: 2.6, timed: 7.5, seconds: seconds);
        var delivered = new OutputDelivery(supply, new BoxOutput(1, Amps(2), fuse));
        Assert.Equal((1.3, most), (delivered.LeastAmperes, delivered.MostAmperes));
    }

    // 12 V and 10 % that hold 8 A: at least 10.8 V x 8 A = 86.4 VA, above the 5 x 10.8 = 54 VA of IEC 60950-1 (from memory). At 4.5 A 48.6 VA to 59.4 VA, against the 66 VA of 13.2 V.
    [Theory]
    [InlineData(8, PowerLimitVerdict.Exceeds, 54)]
    [InlineData(4.5, PowerLimitVerdict.WithinNumbers, 66)]
    public void AFigure_HasTheLimitOfItsOwnVoltage(double holds, PowerLimitVerdict verdict, double limit)
    {
        PowerLimitFigure figure = FigureOf(Box(Holding(12, 4, holds, percent: 10)).AssessPowerLimit(1, PowerLimitClass.LimitedPowerSourceIec60950), PowerLimitQuantity.ApparentPower);
        Assert.Equal(verdict, figure.Verdict);
        Assert.Equal(limit, ((ElectricApparentPower)figure.Limit).Voltamperes, 1e-9);
    }

    // 72 VA at least, and nobody says how much at most: beyond the 60 VA of IEC 60950-1, and perhaps within the 100 VA of IEC 62368-1.
    [Fact]
    public void OneStandardThatIsNotRefuted_LeavesItUnknown() =>
        Assert.Equal(PowerLimitVerdict.Unknown, Box(Rated(12, 6)).AssessPowerLimit(1, PowerLimitClass.LimitedPowerSource).Verdict);

    // Without a word on ripple the peak matters above 30 V alone, and of limited power sources on direct current alone.
    [Theory]
    [InlineData(30, PowerLimitClass.LimitedPowerSourceIec62368, CurrentKind.Dc, false)]
    [InlineData(30.1, PowerLimitClass.LimitedPowerSourceIec62368, CurrentKind.Dc, true)]
    [InlineData(30.1, PowerLimitClass.LimitedPowerSourceIec62368, CurrentKind.Ac, false)]
    [InlineData(30.1, PowerLimitClass.Class2, CurrentKind.Dc, false)]
    public void ThePeak_CountsAboveThirtyVoltsOfDirectCurrent(double volts, PowerLimitClass limitClass, CurrentKind kind, bool counts)
    {
        SupplyOutput output = kind == CurrentKind.Dc ? new DcOutput(Volts(volts), Amps(1.5), Ratio.Zero) : new AcOutput(Volts(volts), Amps(1.5), Ratio.Zero);
        PowerLimitAssessment assessed = Box(new Supply("supply", output, Derating.GenericEnclosed)).AssessPowerLimit(1, limitClass);
        Assert.Equal(counts, assessed.Routes[0].Figures.Any(f => f.Quantity == PowerLimitQuantity.PeakVoltage));
    }

    // Words that a person reads say what there is, and nothing of what there is not.
    [Fact]
    public void Words_SayWhatThereIs()
    {
        Assert.Equal("12 V DC, 6 A", Rated(12, 6).Output.ToString());
        Assert.Equal("24 V AC, 6 A", Rated(24, 6, CurrentKind.Ac).Output.ToString());
        var shares = new ShareCurve<Ratio>(new(Ratio.Zero, Ratio.FromPercent(80)), new(Ratio.FromPercent(100), Ratio.FromPercent(90)));
        Assert.Equal("input of unknown voltage", new SupplyInput().ToString());
        Assert.Equal($"input of unknown voltage, efficiency {shares}", new SupplyInput(efficiency: shares).ToString());
        Assert.Equal($"input of unknown voltage, power factor {shares}", new SupplyInput(powerFactor: shares).ToString());
        string exact = OverloadBehavior.ConstantCurrent(Amps(9)).ToString();
        Assert.DoesNotContain("±", exact, StringComparison.Ordinal);
        Assert.Equal($"{exact} ± 15 %", OverloadBehavior.ConstantCurrent(Amps(9)).WithTolerance(Ratio.FromPercent(15)).ToString());
        Assert.Equal(["inherently limited", "limited by an overcurrent device"], Box(Rated(12, 1), FuseOf(2)).AssessPowerLimit(1, PowerLimitClass.Class2).Routes
            .Select(r => r.ToString().Split(':')[0]));
    }

    private static Derating Sheet { get; } = new(
        new ShareCurve<Temperature>(At(-20, 0.5), At(10, 1), At(50, 1), At(70, 0.4)),
        new ShareCurve<ElectricPotential>(new(Volts(100), Ratio.FromPercent(80)), new(Volts(200), Ratio.FromPercent(100))), AltitudeDerating.Generic);

    private static SharePoint<Temperature> At(double celsius, double share) => new(Temperature.FromDegreesCelsius(celsius), Ratio.FromDecimalFractions(share));

    private static Enclosure Steel(double sunlit, bool isVentilated = false) => new(Length.FromMeters(0.25), Length.FromMeters(0.5), Length.FromMeters(0.125),
        EnclosureWall.PaintedSteel, EnclosureFaces.OnWall, Area.FromSquareMeters(sunlit), isVentilated: isVentilated);
}
