using System;
using System.Linq;
using CamPower.Tests.Protection;
using UnitsNet;

namespace CamPower.Tests.Faults;

/// <summary>
/// One supply, one way and three devices of which no end of a range is zero or like the other: which end counts where. By hand, 12.5 V ± 4 % behind 0.11 Ω, 17 m of
/// 0.75 mm² (2 × 17/58/0.75 = 0.78161 Ω at 20 °C, 0.00393 more a kelvin) at -7 °C and 43 °C, a box of 8 °C and 37 °C.
/// </summary>
public class WrongEndTests
{
    private const double Lowest = 12, Highest = 13, Source = 0.11, Way = 2 * 17 / 58.0 / 0.75, Cold = Way * (1 - (0.00393 * 27)), Hot = Way * (1 + (0.00393 * 23));

    // The largest: the highest voltage, the cold cable, the least of the device. The smallest: the lowest, the hot one, and the greatest, which grows by 1 % a kelvin above 20 °C.
    [Fact]
    public void Resettable_ProspectiveCurrents()
    {
        ShortCircuit far = Study(SmallDevices.Resettable(hold: 1.3, trip: 2.7, timed: 7.5, seconds: 2.4, least: 0.06, greatest: 0.17)).AtFarEnd;
        Assert.Equal(Highest / (Source + 0.06 + Cold), far.LargestProspective!.Value.Amperes, 1e-9);
        Assert.Equal(Lowest / (Source + (0.17 * 1.17) + Hot), far.SmallestProspective!.Value.Amperes, 1e-9);
        Assert.Equal(far.LargestProspective!.Value.Amperes, far.Largest!.Value.Amperes, 1e-9);
        Assert.Equal(far.SmallestProspective!.Value.Amperes, far.Smallest.Amperes, 1e-9);
    }

    // Timed by the cold one: 7.5 A × 1.108 (8 °C, between 1.18 at 0 °C and 1 at 20 °C) for 2.4 s, at 13/(0.11 + 0.06 + 0.699) = 14.96 A in winter; in summer by 7.5 A × 0.83 at the least of 10.4 A.
    [Fact]
    public void Resettable_OperatingTime_IsTheWorstOfTheSeasons()
    {
        ResettableFuse fuse = SmallDevices.Resettable(hold: 1.3, trip: 2.7, timed: 7.5, seconds: 2.4, least: 0.06, greatest: 0.17);
        double winterLeast = Lowest / (Source + 0.17 + Cold), winter = 2.4 * Math.Pow(7.5 * 1.108 / winterLeast, 2);
        Assert.Equal(winter, Study(fuse, winter: true).AtFarEnd.Opening.Latest!.Value.Seconds, 0.02 * winter);
        double summerLeast = Lowest / (Source + (0.17 * 1.17) + Hot), summer = 2.4 * Math.Pow(7.5 * 0.83 / summerLeast, 2);
        Assert.Equal(summer, Study(fuse, winter: false).AtFarEnd.Opening.Latest!.Value.Seconds, 0.02 * summer);
        Assert.Equal(Math.Max(winter, summer), Study(fuse).AtFarEnd.Opening.Latest!.Value.Seconds, 0.02 * winter);
    }

    // Tripped it needs 1.6 W: the rest of the loop is most in summer, and the voltage least. (12 − R·I)·I = 1.6.
    [Fact]
    public void Resettable_TrippedState()
    {
        ShortCircuit far = Study(SmallDevices.Resettable(hold: 1.3, trip: 2.7, timed: 7.5, seconds: 2.4, least: 0.06, greatest: 0.17, trippedWatts: 1.6)).AtFarEnd;
        double amperes = far.TrippedCurrent!.Value.Amperes;
        Assert.True(far.StaysTripped);
        Assert.Equal(1.6, (Lowest - ((Source + Hot) * amperes)) * amperes, 1e-9);
        Assert.True(amperes < 0.2);
    }

    // A limit of 2.4 A ± 15 %, open within 70 ms: up to 2.76 A for 70 ms, and again after 0.63 s: 2.76·√(0.07/0.70) A to the device.
    [Fact]
    public void ElectronicLimit_RetryPulses()
    {
        ShortCircuit far = Study(new ElectronicLimit("limit", ElectricCurrent.FromAmperes(2.4), Ratio.FromPercent(15), Duration.FromSeconds(0.07), ElectricResistance.FromOhms(0.06),
            ElectricPotential.FromVolts(30), Duration.FromSeconds(0.63))).AtFarEnd;
        Assert.Equal(2.76, far.Largest!.Value.Amperes, 1e-9);
        Assert.Equal(2.76 * Math.Sqrt(0.1), far.Smallest.Amperes, 1e-9);
        Assert.Equal(0.07, far.Opening.Latest!.Value.Seconds, 1e-12);
        Assert.Null(far.LetThrough);
        Assert.Equal(2.76 * (Highest - (2.76 * (Source + 0.06 + Cold))), (double)far.PoorShortPower!.Value.Watts, 1e-9);
    }

    // With a link in place of the fuse of 40 mΩ: 13/0.11 = 118.18 A at the terminals, and 13/(0.11 + 0.699) = 16.07 A at the end in the cold, against what it breaks (IEC 60127-1 and 60269-1).
    [Theory]
    [InlineData(118.1, false, true)]
    [InlineData(118.2, true, true)]
    [InlineData(16.0, false, false)]
    public void Fuse_BreakingCapacity_IsHeldAgainstTheLargest(double breaking, bool atTerminals, bool atFarEnd)
    {
        FaultStudy study = Study(SmallDevices.Fuse(FuseCharacteristic.IecQuickActing, 1.6, breaking: breaking, ohms: 0.04));
        Assert.Equal((atTerminals, atFarEnd), (study.AtTerminals.IsWithinBreakingCapacity, study.AtFarEnd.IsWithinBreakingCapacity));
    }

    // A re-rating of 1.1 at 8 °C and 0.9 at 37 °C: in winter 12/(0.11 + 0.04 + 0.699) = 14.1 A are 6.42 times 1.6 A × 1.1 × 1.25, in summer 11.6 A are 6.4 times; by 0.3·(4·rated/I)².
    [Fact]
    public void Fuse_OperatingTime_IsThatOfItsOwnSeason()
    {
        Fuse fuse = SmallDevices.Fuse(FuseCharacteristic.IecQuickActing, 2, ohms: 0.04, rerating: SmallDevices.Curve((8, 1.1), (37, 0.9)));
        double winter = 0.3 * Math.Pow(8 * 1.1 / (Lowest / (Source + 0.04 + Cold)), 2), summer = 0.3 * Math.Pow(8 * 0.9 / (Lowest / (Source + 0.04 + Hot)), 2);
        Assert.Equal(winter, Study(fuse, winter: true).AtFarEnd.Opening.Latest!.Value.Seconds, 0.02 * winter);
        Assert.Equal(summer, Study(fuse, winter: false).AtFarEnd.Opening.Latest!.Value.Seconds, 0.02 * summer);
    }

    // Not stated, the re-rating of a fuse to IEC 60127 is 1 at 23 °C (from memory), and up to a fifth more in 8 °C and less in 37 °C (common practice, no source).
    [Fact]
    public void Fuse_OfUnstatedRerating_IsBoundedByAFifth()
    {
        Fuse fuse = SmallDevices.Fuse(FuseCharacteristic.IecQuickActing, 2, ohms: 0.04);
        double winter = 0.3 * Math.Pow(8 * 1.2 / (Lowest / (Source + 0.04 + Cold)), 2), summer = 0.3 * Math.Pow(8 / (Lowest / (Source + 0.04 + Hot)), 2);
        Assert.Equal(winter, Study(fuse, winter: true).AtFarEnd.Opening.Latest!.Value.Seconds, 0.02 * winter);
        Assert.Equal(summer, Study(fuse, winter: false).AtFarEnd.Opening.Latest!.Value.Seconds, 0.02 * summer);
    }

    private static FaultStudy Study(ProtectiveDevice device, bool? winter = null) => SmallFault.Study(SmallFault.Run(17, 0.75), device, SmallFault.Source(volts: 12.5, ohms: Source, percent: 4),
        [.. new[] { SmallFault.In(-7, 8), SmallFault.In(43, 37) }.Where((_, season) => winter is not bool wanted || wanted == (season == 0))], InstallationMethod.InCableOrRaceway(2));
}
