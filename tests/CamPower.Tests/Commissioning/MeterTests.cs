using System;
using CamPower.Commissioning;
using CamPower.Tests.Sites;
using CamPower.Tests.Tolerance;
using CamPower.Tolerance;
using UnitsNet;

namespace CamPower.Tests.Commissioning;

/// <summary>What a meter adds to a band, and what it says.</summary>
public class MeterTests
{
    // Source: JCGM 100:2008, 4.3.7, second example: 14e-6 of a reading of 0.928571 V and 2e-6 of the range of 1 V are 15 µV, u = 8.7 µV.
    [Fact]
    public void Voltmeter_HasTheUncertaintyOfTheGuide()
    {
        var range = new MeterRange(Ratio.FromDecimalFractions(14e-6), 2, 1e-6);
        Assert.Equal(15e-6, range.LimitAt(0.928571), 0.05e-6);
        Assert.Equal(8.7e-6, range.StandardAt(0.928571), 0.05e-6);
    }

    // By hand: 0.5 % of 12.00 V is 0.06 V, two counts are 0.02 V.
    [Theory]
    [InlineData(12, 0.08)]
    [InlineData(-12, 0.08)]
    [InlineData(0, 0.02)]
    public void Handheld_IsOffByShareAndCounts(double volts, double limit) => Assert.Equal(limit, Meter.Handheld.Volts.LimitAt(volts), 1e-12);

    private static CommissioningSheet SheetOf(Meter meter) => new(
        SmallSite.Star(SmallSite.Box(SmallSite.Dc(percent: 2)), [Condition.Night(CommissioningSamples.Mild)], (1.5, SmallSite.Camera(SmallSite.Watts(9)))),
        Ranges.Only((UncertainQuantity.SupplyVoltage, Ranges.Uniform(-0.02, 0.02))), meter, CommissioningSamples.Mild);

    // 12 V ± 2 %: from 11.76 V less 0.0788 V to 12.24 V and 0.0812 V.
    [Fact]
    public void BandOfASetPoint_IsItsToleranceAndTheMeter()
    {
        ExpectedReading supply = SheetOf(Meter.Handheld).Expect(ReadingPoint.AtSupply("box", ReadingState.Unloaded));
        Assert.Equal(11.76 - 0.0788, supply.LowestSi, 1e-9);
        Assert.Equal(12.24 + 0.0812, supply.HighestSi, 1e-9);
        Assert.Equal(12, ((ElectricPotential)supply.Expected!).Volts, 1e-9);

        // u² = (0.24² + 0.08²)/3.
        Assert.Equal(Math.Sqrt(((0.24 * 0.24) + (0.08 * 0.08)) / 3), ((ElectricPotential)supply.StandardUncertainty).Volts, 1e-9);
    }

    // 1.5 Ω through leads of 0.2 Ω and tips of at most 0.1 Ω: 1.70 Ω to 1.80 Ω, less and more 1 % and 0.3 Ω.
    [Fact]
    public void BandOfALoop_HasLeadsAndTips()
    {
        var meter = new Meter("m", Meter.Handheld.Volts, Meter.Handheld.Amperes, Meter.Handheld.Ohms, ElectricResistance.FromOhms(0.2), ElectricResistance.FromOhms(0.1));
        ExpectedReading loop = SheetOf(meter).Expect(ReadingPoint.AtDevice(ReadingKind.LoopResistance, "camera 1", ReadingState.FarEndJumpered));
        Assert.Equal(1.75, ((ElectricResistance)loop.Expected!).Ohms, 1e-9);
        Assert.Equal(1.7 - 0.317, loop.LowestSi, 1e-9);
        Assert.Equal(1.8 + 0.318, loop.HighestSi, 1e-9);
    }

    // The last count inside, and the first outside, at each end.
    [Theory]
    [InlineData(11.6813, ReadingVerdict.Inside)]
    [InlineData(11.6811, ReadingVerdict.Outside)]
    [InlineData(12.3211, ReadingVerdict.Inside)]
    [InlineData(12.3213, ReadingVerdict.Outside)]
    [InlineData(-12, ReadingVerdict.Outside)]
    [InlineData(36.8, ReadingVerdict.Impossible)]
    [InlineData(11800, ReadingVerdict.Impossible)]
    public void Judge_SaysInsideOutsideOrImpossible(double volts, ReadingVerdict verdict)
    {
        ExpectedReading supply = SheetOf(Meter.Handheld).Expect(ReadingPoint.AtSupply("box", ReadingState.Unloaded));
        Assert.Equal(verdict, supply.Judge(new MeterReading(supply.Point, ElectricPotential.FromVolts(volts))));
    }

    [Fact]
    public void OpenPair_IsOpenFromAMegohm_AndNoResistanceIsNegative()
    {
        ExpectedReading pair = SheetOf(Meter.Handheld).Lines[0];
        Assert.Null(pair.Expected);
        Assert.Null(pair.Highest);
        Assert.Equal(ReadingVerdict.Inside, pair.Judge(new MeterReading(pair.Point, null)));
        Assert.Equal(ReadingVerdict.Inside, pair.Judge(new MeterReading(pair.Point, ElectricResistance.FromMegaohms(1))));
        Assert.Equal(ReadingVerdict.Outside, pair.Judge(new MeterReading(pair.Point, ElectricResistance.FromOhms(0.4))));
        Assert.Equal(ReadingVerdict.Impossible, pair.Judge(new MeterReading(pair.Point, ElectricResistance.FromOhms(-0.4))));
    }

    [Fact]
    public void Reading_RefusesAValueOfAnotherKind()
    {
        ReadingPoint plug = ReadingPoint.AtDevice(ReadingKind.PlugVoltage, "camera 1", ReadingState.Running);
        Assert.Throws<ArgumentException>(() => new MeterReading(plug, ElectricCurrent.FromAmperes(1)));
        Assert.Throws<ArgumentException>(() => new MeterReading(plug, null));
        Assert.Throws<ArgumentException>(() => ReadingPoint.AtDevice(ReadingKind.OutputCurrent, "camera 1", ReadingState.Running));
        Assert.Throws<ArgumentException>(() => ReadingPoint.AtDevice(ReadingKind.PlugVoltage, "camera 1", ReadingState.Dead));
    }
}
