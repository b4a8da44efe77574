using System;
using System.Collections.Generic;
using System.Linq;
using CamPower.Supplies;
using CamPower.Tests.Protection;
using UnitsNet;
using static CamPower.Tests.Supplies.LimitedOutputs;

namespace CamPower.Tests.Supplies;

/// <summary>What numbers say of an output and a power-limit class. Every limit is worked out by hand from the tables as
/// the sources print them: IEC 60950-1 Tables 2B and 2C, IEC 62368-1 Tables Q.1 and Q.2 (from memory), NEC Chapter 9 Tables 11(A) and 11(B).</summary>
public class PowerLimitTests
{
    private const PowerLimitClass Lps = PowerLimitClass.LimitedPowerSourceIec60950, Lps62368 = PowerLimitClass.LimitedPowerSourceIec62368, Class2 = PowerLimitClass.Class2;

    private const PowerLimitVerdict Exceeds = PowerLimitVerdict.Exceeds, Within = PowerLimitVerdict.WithinNumbers, Unknown = PowerLimitVerdict.Unknown;

    // Each voltage at, and just above, the end of a band. 5·U, 100; 8, 150/U.
    [Theory]
    [InlineData(5, 8, 25)]
    [InlineData(20, 8, 100)]
    [InlineData(20.01, 8, 100)]
    [InlineData(30, 8, 100)]
    [InlineData(30.01, 4.998333889, 100)]
    [InlineData(48, 3.125, 100)]
    [InlineData(60, 2.5, 100)]
    public void LimitedPower_InherentDc(double volts, double amperes, double voltAmperes)
    {
        Assert.Equal(amperes, LimitOf(Lps, PowerLimiting.Inherent, PowerLimitQuantity.Current, CurrentKind.Dc, volts), 1e-9);
        Assert.Equal(voltAmperes, LimitOf(Lps, PowerLimiting.Inherent, PowerLimitQuantity.ApparentPower, CurrentKind.Dc, volts), 1e-9);
    }

    // IEC 62368-1 Table Q.1, from memory: one row to 30 V, 8 A and 100 VA; 150/U above. The 5·U of the older table is not in it.
    [Theory]
    [InlineData(5, 8)]
    [InlineData(12, 8)]
    [InlineData(30, 8)]
    [InlineData(30.01, 4.998333889)]
    [InlineData(60, 2.5)]
    public void LimitedPowerOfIec62368_InherentDc(double volts, double amperes)
    {
        Assert.Equal(amperes, LimitOf(Lps62368, PowerLimiting.Inherent, PowerLimitQuantity.Current, CurrentKind.Dc, volts), 1e-9);
        Assert.Equal(100, LimitOf(Lps62368, PowerLimiting.Inherent, PowerLimitQuantity.ApparentPower, CurrentKind.Dc, volts), 1e-9);
    }

    // 12 V: 5 A are 60 VA, the end of the older table; 8 A are the end of the newer one; with a fuse 250 VA are 20.83 A in both.
    // A claim without a standard is refuted only where both are.
    [Theory]
    [InlineData(5.0, false, Within, Within, Within)]
    [InlineData(5.01, false, Exceeds, Within, Within)]
    [InlineData(8.0, false, Exceeds, Within, Within)]
    [InlineData(8.01, false, Exceeds, Exceeds, Exceeds)]
    [InlineData(20.83, true, Within, Within, Within)]
    [InlineData(20.84, true, Exceeds, Exceeds, Exceeds)]
    public void AClaimWithoutAStandard_IsRefutedOnlyWhereBothAre(double limitAmperes, bool isFused, PowerLimitVerdict iec60950, PowerLimitVerdict iec62368, PowerLimitVerdict neither)
    {
        DistributionBox box = Box(Holding(12, 4, limitAmperes), isFused ? FuseOf(5) : ProtectiveDevice.None);
        Assert.Equal((iec60950, iec62368, neither), (Of(Lps), Of(Lps62368), Of(PowerLimitClass.LimitedPowerSource)));
        PowerLimitAssessment both = box.AssessPowerLimit(1, PowerLimitClass.LimitedPowerSource);
        Assert.Equal([Lps, Lps62368], both.Routes.Select(r => r.Class).Distinct());
        Assert.Contains("IEC 62368-1, inherently limited", string.Join("; ", both.Routes), StringComparison.Ordinal);

        PowerLimitVerdict Of(PowerLimitClass limitClass) => box.AssessPowerLimit(1, limitClass).Verdict;
    }

    // 1000/U; 250; 5, then 100/U.
    [Theory]
    [InlineData(Lps62368, 12, 83.333333333, 5)]
    [InlineData(Lps62368, 20, 50, 5)]
    [InlineData(Lps62368, 50, 20, 2)]
    [InlineData(Lps, 12, 83.333333333, 5)]
    [InlineData(Lps, 20, 50, 5)]
    [InlineData(Lps, 24, 41.666666667, 4.166666667)]
    [InlineData(Lps, 50, 20, 2)]
    [InlineData(Class2, 12, 83.333333333, 5)]
    [InlineData(Class2, 24, 41.666666667, 4.166666667)]
    [InlineData(Class2, 50, 20, 2)]
    public void WithDevice_Dc(PowerLimitClass limitClass, double volts, double amperes, double rating)
    {
        Assert.Equal(amperes, LimitOf(limitClass, PowerLimiting.OvercurrentDevice, PowerLimitQuantity.Current, CurrentKind.Dc, volts), 1e-9);
        Assert.Equal(250, LimitOf(limitClass, PowerLimiting.OvercurrentDevice, PowerLimitQuantity.ApparentPower, CurrentKind.Dc, volts));
        Assert.Equal(rating, LimitOf(limitClass, PowerLimiting.OvercurrentDevice, PowerLimitQuantity.DeviceRating, CurrentKind.Dc, volts), 1e-9);
    }

    // The nameplate: 5·U and 100 VA over U. Above 30 V AC and 60 V DC 5 mA are left.
    [Theory]
    [InlineData(CurrentKind.Dc, 12, 8, 5)]
    [InlineData(CurrentKind.Dc, 24, 8, 4.166666667)]
    [InlineData(CurrentKind.Dc, 48, 3.125, 2.083333333)]
    [InlineData(CurrentKind.Dc, 61, 0.005, 0.005)]
    [InlineData(CurrentKind.Ac, 24, 8, 4.166666667)]
    [InlineData(CurrentKind.Ac, 31, 0.005, 0.005)]
    public void Class2_Inherent(CurrentKind kind, double volts, double amperes, double nameplate)
    {
        Assert.Equal(amperes, LimitOf(Class2, PowerLimiting.Inherent, PowerLimitQuantity.Current, kind, volts), 1e-9);
        Assert.Equal(nameplate, LimitOf(Class2, PowerLimiting.Inherent, PowerLimitQuantity.NameplateCurrent, kind, volts), 1e-9);
    }

    [Theory]
    [InlineData(Lps, CurrentKind.Dc, 60)]
    [InlineData(Lps, CurrentKind.Ac, 30)]
    [InlineData(Lps62368, CurrentKind.Dc, 60)]
    [InlineData(Lps62368, CurrentKind.Ac, 30)]
    [InlineData(Class2, CurrentKind.Dc, 150)]
    [InlineData(Class2, CurrentKind.Ac, 150)]
    public void Voltage_HasAnEnd(PowerLimitClass limitClass, CurrentKind kind, double highest)
    {
        Assert.Equal(Within, Figure(PowerLimitQuantity.OpenCircuitVoltage, highest).Verdict);
        PowerLimitFigure above = Figure(PowerLimitQuantity.OpenCircuitVoltage, highest + 0.01);
        Assert.Equal((Exceeds, highest), (above.Verdict, ((ElectricPotential)above.Limit).Volts));

        PowerLimitFigure Figure(PowerLimitQuantity quantity, double volts) =>
            Box(Rated(volts, 0.001, kind)).AssessPowerLimit(1, limitClass).Routes[0].Figures.Single(f => f.Quantity == quantity);
    }

    // 12 V with no tolerance: 60 VA, so 5 A; with a fuse 250 VA, so 20.83 A, and a fuse of 5 A.
    [Theory]
    [InlineData(5.0, null, Within)]
    [InlineData(5.01, null, Exceeds)]
    [InlineData(20.8, 5.0, Within)]
    [InlineData(20.84, 5.0, Exceeds)]
    [InlineData(6.0, 6.3, Exceeds)]
    [InlineData(5.0, 6.3, Within)]
    public void TwelveVolts_ByOverloadLimit(double limitAmperes, double? fuseAmperes, PowerLimitVerdict expected)
    {
        ProtectiveDevice device = fuseAmperes is double rated ? FuseOf(rated) : ProtectiveDevice.None;
        Assert.Equal(expected, Box(Holding(12, 4, limitAmperes), device).AssessPowerLimit(1, Lps).Verdict);
    }

    // A transformer of 24 V behind 1 Ω: 24 A into a short, 24²/4 = 144 VA into 1 Ω. No limit but its resistance: 8 A and 100 VA
    // are exceeded. A fuse of 4 A leaves 1000/24 A, 250 VA and 4.17 A; one of 5 A is too large.
    [Fact]
    public void Transformer_WithAFuseOrWithout()
    {
        PowerLimitAssessment bare = Of(ProtectiveDevice.None);
        Assert.Equal(Exceeds, bare.Verdict);
        Assert.Equal(24, ((ElectricCurrent)FigureOf(bare, PowerLimitQuantity.Current).Least).Amperes);
        Assert.Equal(144, ((ElectricApparentPower)FigureOf(bare, PowerLimitQuantity.ApparentPower).Least).Voltamperes, 1e-9);
        Assert.Equal((Within, Exceeds), (Of(FuseOf(4)).Verdict, Of(FuseOf(5)).Verdict));

        static PowerLimitAssessment Of(ProtectiveDevice device) => Box(
            new Supply("transformer", new AcOutput(Volts(24), Amps(4), Ratio.Zero, ElectricResistance.FromOhms(1), OverloadBehavior.Unlimited), Derating.GenericEnclosed), device).AssessPowerLimit(1, Lps);
    }

    // The tables limit what flows until it opens.
    [Fact]
    public void Fuse_DoesNotCapTheCurrentOrThePower()
    {
        PowerLimitAssessment small = Box(Holding(12, 20, 24), FuseOf(0.5)).AssessPowerLimit(1, Lps), none = Box(Holding(12, 20, 24)).AssessPowerLimit(1, Lps);
        Assert.Equal(Exceeds, small.Verdict);
        Assert.All(small.Routes, route => Assert.Equal(
            (24.0, 288.0),
            (((ElectricCurrent)route.Figures.Single(f => f.Quantity == PowerLimitQuantity.Current).Least).Amperes,
             ((ElectricApparentPower)route.Figures.Single(f => f.Quantity == PowerLimitQuantity.ApparentPower).Least).Voltamperes)));
        Assert.Equal(FigureOf(none, PowerLimitQuantity.Current).ToString(), FigureOf(small, PowerLimitQuantity.Current).ToString());
    }

    // IEC 60950-1, 2.5: a resettable fuse does not count for Table 2C. For Table 2B it limits: it holds 1.1 A continuously, and between
    // that and 8 A its sheet does not say what flows after 5 s. 12 V at 4.9 A are 58.8 VA, at 5.5 A 66 VA.
    [Theory]
    [InlineData(4.9, Within)]
    [InlineData(5.5, Unknown)]
    [InlineData(24, Unknown)]
    public void ResettableFuse_OpensNoSecondRoute_AndRefutesNothing(double limitAmperes, PowerLimitVerdict expected)
    {
        PowerLimitAssessment assessment = Box(Holding(12, 4, limitAmperes), SmallDevices.Printed(1.10)).AssessPowerLimit(1, Lps);
        Assert.Equal(PowerLimiting.Inherent, Assert.Single(assessment.Routes).Limiting);
        Assert.Equal(expected, assessment.Verdict);
        Assert.Equal(1.1, ((ElectricCurrent)FigureOf(assessment, PowerLimitQuantity.Current).Least).Amperes, 1e-12);
        Assert.Equal(Math.Min(limitAmperes, 8), ((ElectricCurrent)FigureOf(assessment, PowerLimitQuantity.Current).Most!).Amperes, 1e-12);
    }

    // A limit of 1.5 A and 10 %: 1.35 A to 1.65 A of 12.24 V, 16.2 VA to 20.2 VA, whatever the 24 A behind it could. 4.5 A may be 4.95 A: 60.6 VA
    // where 61.2 VA are allowed, and 5 A may be 5.5 A or 4.5 A; 6 A are 5.4 A at least, 63.5 VA of 11.76 V, which allows 58.8 VA.
    [Theory]
    [InlineData(Class2, 1.5, Within)]
    [InlineData(Lps, 1.5, Within)]
    [InlineData(Lps, 4.5, Within)]
    [InlineData(Lps, 5, Unknown)]
    [InlineData(Lps, 6, Exceeds)]
    public void ElectronicLimit_LimitsByItself(PowerLimitClass limitClass, double amperes, PowerLimitVerdict expected)
    {
        var limit = new ElectronicLimit("limit", Amps(amperes), Ratio.FromPercent(10), Duration.FromMilliseconds(50), ElectricResistance.Zero, Volts(30));
        PowerLimitAssessment assessment = new DistributionBox("box", Holding(12, 20, 24, percent: 2), [new BoxOutput(1, Amps(1.1), limit)]).AssessPowerLimit(1, limitClass);
        Assert.Equal(PowerLimiting.Inherent, Assert.Single(assessment.Routes).Limiting);
        Assert.Equal(expected, assessment.Verdict);
        PowerLimitFigure current = FigureOf(assessment, PowerLimitQuantity.Current);
        Assert.Equal((0.9 * amperes, 1.1 * amperes), (((ElectricCurrent)current.Least).Amperes, ((ElectricCurrent)current.Most!).Amperes));
    }

    // At 210 % of 5 A a fuse F of 5 A may take 30 min, one of 3 A, at 3.5 times its rating, 2 s; a fuse T of 5 A 2 min (IEC 60127-2).
    // Class 2 asks nothing of the kind here.
    [Theory]
    [InlineData(Lps, 5, false, Unknown)]
    [InlineData(Lps, 3, false, Within)]
    [InlineData(Lps, 5, true, Within)]
    [InlineData(Class2, 5, false, Within)]
    public void Device_MustOpenIn120Seconds_AtTwiceItsRatingAndATenth(PowerLimitClass limitClass, double amperes, bool timeLag, PowerLimitVerdict expected)
    {
        var fuse = new Fuse("fuse", Amps(amperes), timeLag ? FuseCharacteristic.IecTimeLag : FuseCharacteristic.IecQuickActing, Volts(250), Amps(1500), ElectricResistance.Zero);
        PowerLimitAssessment assessment = Box(Holding(12, 5, 12), fuse).AssessPowerLimit(1, limitClass);
        Assert.Equal(expected, assessment.Routes[1].Verdict);
        if (expected == Unknown) Assert.EndsWith("opening of the overcurrent device at 210 % of that 0 s to 1,800 s, limit 120 s", assessment.Routes[1].ToString(), StringComparison.Ordinal);
    }

    // NEC Tables 11(A), from memory: a transformer of at most 15 V may give 350 VA behind its overcurrent device. 12 V behind 0.12 Ω: 144/0.48 = 300 VA,
    // behind 0.1 Ω 360 VA; 16 V behind 0.22 Ω 291 VA, where 250 VA are allowed. A direct source of 300 VA is no transformer.
    [Theory]
    [InlineData(12, 0.12, Within)]
    [InlineData(12, 0.1, Exceeds)]
    [InlineData(16, 0.22, Exceeds)]
    public void Class2Transformer_MayGiveMoreUpTo15Volts(double volts, double ohms, PowerLimitVerdict expected)
    {
        var output = new AcOutput(Volts(volts), Amps(4), Ratio.Zero, ElectricResistance.FromOhms(ohms), OverloadBehavior.Unlimited);
        PowerLimitRoute route = Box(new Supply("transformer", output, Derating.GenericEnclosed), FuseOf(5)).AssessPowerLimit(1, Class2).Routes[1];
        PowerLimitFigure power = FigureOf(route, PowerLimitQuantity.ApparentPower);
        Assert.Equal(expected, power.Verdict);
        Assert.Equal(Exceeds, FigureOf(Box(Holding(12, 5, 25), FuseOf(5)).AssessPowerLimit(1, Class2).Routes[1], PowerLimitQuantity.ApparentPower).Verdict);
    }

    // The 1.85 A one needs up to 10 s at 8 A: at 5 s nothing stops the whole current of the supply.
    [Fact]
    public void ResettableFuse_ThatTripsAfterTheMeasurement_CapsNothing()
    {
        PowerLimitAssessment slow = Box(Holding(12, 10, 12), SmallDevices.Printed(1.85)).AssessPowerLimit(1, Lps);
        Assert.Equal(12, ((ElectricCurrent)FigureOf(slow, PowerLimitQuantity.Current).Most!).Amperes);
    }

    [Fact]
    public void ResettableFuse_ThatHoldsTooMuch_IsRefuted() => Assert.Equal(
        Exceeds, Box(Holding(50, 10, 10), SmallDevices.Printed(2.50)).AssessPowerLimit(1, Lps).Verdict);

    // 12 V that can be trimmed to 14 V at 5 A and 2 %: what counts is 14 V; 5 A are then 70 VA and the limit 5·14 = 70 VA.
    // At 22 V instead the limit is 100 VA: 4.4 A are 96.8 VA at 22 V, but 98.7 VA at the end of the tolerance, and 4.5 A 101 VA there.
    [Theory]
    [InlineData(14, 5.0, Within)]
    [InlineData(14, 5.1, Exceeds)]
    [InlineData(22, 4.4, Within)]
    [InlineData(22, 4.5, Unknown)]
    [InlineData(22, 4.7, Exceeds)]
    public void Trim_CountsAtItsTop_AndToleranceDecidesNothing(double trimTop, double limitAmperes, PowerLimitVerdict expected)
    {
        var output = new DcOutput(Volts(12), Amps(4), Ratio.FromPercent(2), new VoltageRange(Volts(12), Volts(trimTop)), Volts(12.5),
            overload: OverloadBehavior.ConstantCurrent(Amps(limitAmperes)));
        Assert.Equal(expected, Box(new Supply("s", output, Derating.GenericEnclosed)).AssessPowerLimit(1, Lps).Verdict);
    }

    // Without a word on overload a supply gives its rating for certain: 12 V, 6 A are 72 VA; 12 V, 1 A may be anything.
    [Theory]
    [InlineData(6, Exceeds)]
    [InlineData(1, Unknown)]
    public void OverloadNotDeclared(double ratedAmperes, PowerLimitVerdict expected) =>
        Assert.Equal(expected, Box(Rated(12, ratedAmperes)).AssessPowerLimit(1, Lps).Verdict);

    // Protection not declared: either table may be the one, and what its output is rated for flows for certain.
    [Fact]
    public void ProtectionNotDeclared_LeavesBothRoutesOpen()
    {
        PowerLimitAssessment assessment = new DistributionBox("box", Holding(12, 20, 24), [new BoxOutput(1, Amps(1.1))]).AssessPowerLimit(1, Lps);
        Assert.Equal([PowerLimiting.Inherent, PowerLimiting.OvercurrentDevice], assessment.Routes.Select(r => r.Limiting));
        Assert.Equal(Unknown, assessment.Verdict);
        Assert.Equal("0 A to no known end", FigureOf(assessment.Routes[1], PowerLimitQuantity.DeviceRating).ToString().Split("device ")[1].Split(",")[0]);
    }

    // IEC 60950-1 Table 2B, note 1: 42.4 V peak with more than 10 % ripple. 28 V with 40 %: 28·(1 + 0.4·√2) = 43.84 V.
    [Theory]
    [InlineData(28, 0.1, null)]
    [InlineData(28, 0.36, Within)]
    [InlineData(28, 0.4, Exceeds)]
    [InlineData(28, null, null)]
    [InlineData(48, null, Unknown)]
    [InlineData(48, 0.02, null)]
    [InlineData(48, 0.11, Exceeds)]
    public void Ripple_LimitsThePeak(double volts, double? ripple, PowerLimitVerdict? expected)
    {
        var output = new DcOutput(Volts(volts), Amps(0.1), Ratio.Zero, ripple: ripple is double share ? Ratio.FromDecimalFractions(share) : null);
        PowerLimitRoute route = Box(new Supply("s", output, Derating.GenericEnclosed)).AssessPowerLimit(1, Lps).Routes[0];
        Assert.Equal(expected, route.Figures.SingleOrDefault(f => f.Quantity == PowerLimitQuantity.PeakVoltage)?.Verdict);
    }

    // NEC Chapter 9, Tables 11, notes 2 and 4, pocket guide of 2005: 15 V AC, 30 V DC.
    [Theory]
    [InlineData(CurrentKind.Ac, 15, false)]
    [InlineData(CurrentKind.Ac, 24, true)]
    [InlineData(CurrentKind.Dc, 30, false)]
    [InlineData(CurrentKind.Dc, 48, true)]
    public void WetContact_OfClass2(CurrentKind kind, double volts, bool exceeded)
    {
        Assert.Equal(exceeded, Box(Rated(volts, 1, kind)).AssessPowerLimit(1, Class2).MayExceedWetContactVoltage);
        Assert.Null(Box(Rated(volts, 1, kind)).AssessPowerLimit(1, Lps).MayExceedWetContactVoltage);
    }

    [Fact]
    public void Words_NameWhatDecides()
    {
        Assert.Equal("box output 1 (4 A), a limited power source (IEC 60950-1): within the numbers (check the listing)", Box(Holding(12, 4, 5)).AssessPowerLimit(1, Lps).ToString());
        Assert.Equal("box output 1 (4 A), a limited power source (IEC 60950-1): exceeds (IEC 60950-1, inherently limited: apparent power 72 VA, limit 60 VA)",
            Box(Holding(12, 4, 6)).AssessPowerLimit(1, Lps).ToString());
        Assert.Equal("box output 1 (1 A), Class 2: unknown (inherently limited: current 1 A to no known end, limit 8 A)",
            Box(Rated(12, 1)).AssessPowerLimit(1, Class2).ToString());
    }

    // A source of voltage U behind R that holds a current: every load from a short to open, tried one by one.
    [SeededProperty(MaxTest = 100)]
    public void MostIntoAnyLoad_IsWhatTryingEveryLoadFinds(int seed)
    {
        var random = new Random(seed);
        double volts = 5 + (50 * random.NextDouble()), ohms = 0.05 + (3 * random.NextDouble()), limit = 0.2 + (20 * random.NextDouble());
        double amperes = 0, power = 0;
        for (int i = 0; i <= 40_000; i++)
        {
            double load = ohms * Math.Pow(10, (i - 20_000) / 4000.0), current = Math.Min(limit, volts / (ohms + load));
            amperes = Math.Max(amperes, current);
            power = Math.Max(power, current * Math.Min(current * load, volts - (current * ohms)));
        }

        Assert.Equal(amperes, PowerLimitKernel.MostAmperes(volts, ohms, limit), 1e-4 * amperes);
        Assert.Equal(power, PowerLimitKernel.MostVoltAmperes(volts, ohms, limit), 1e-3 * power);
    }

    // More current, more voltage, a larger fuse: never a better verdict, with either class and any protection.
    [SeededProperty(MaxTest = 300)]
    public void Verdict_NeverGetsBetterAsAnythingGrows(int seed)
    {
        var random = new Random(seed);
        double volts = 4 + (60 * random.NextDouble()), limit = 0.3 + (25 * random.NextDouble()), fuse = 0.5 + (8 * random.NextDouble()), more = 1 + random.NextDouble();
        var kind = (CurrentKind)random.Next(2);
        foreach (PowerLimitClass limitClass in new[] { Lps, Lps62368, PowerLimitClass.LimitedPowerSource, Class2 })
        {
            int before = Rank(volts, limit, fuse);
            Assert.InRange(Rank(volts, limit * more, fuse), before, 2);
            Assert.InRange(Rank(volts, limit, fuse * more), before, 2);
            Assert.InRange(Rank(volts * more, limit, fuse), before, 2);

            int Rank(double v, double a, double f) => RankOf(Box(Holding(v, 0.2, a, kind, percent: 2), FuseOf(f)).AssessPowerLimit(1, limitClass).Verdict);
        }
    }

    // What is known better never turns a verdict round: a narrower tolerance keeps one that is not unknown.
    [SeededProperty(MaxTest = 300)]
    public void Verdict_StandsWhenMoreIsKnown(int seed)
    {
        var random = new Random(seed);
        double volts = 4 + (60 * random.NextDouble()), limit = 0.3 + (25 * random.NextDouble()), percent = 20 * random.NextDouble();
        foreach (PowerLimitClass limitClass in new[] { Lps, Lps62368, PowerLimitClass.LimitedPowerSource, Class2 })
        {
            PowerLimitVerdict wide = Of(percent), narrow = Of(percent * random.NextDouble());
            Assert.True(wide == Unknown || wide == narrow, $"{volts} V, {limit} A: {wide}, then {narrow}");

            PowerLimitVerdict Of(double p) => Box(Holding(volts, 0.2, limit, percent: p)).AssessPowerLimit(1, limitClass).Verdict;
        }
    }

    [Fact]
    public void ImpossibleArguments_Throw()
    {
        DistributionBox box = Box(Rated(12, 1));
        Assert.Throws<ArgumentOutOfRangeException>("outputNumber", () => box.AssessPowerLimit(0, Lps));
        Assert.Throws<ArgumentOutOfRangeException>("outputNumber", () => box.AssessPowerLimit(2, Lps));
        Assert.Throws<ArgumentOutOfRangeException>("limitClass", () => box.AssessPowerLimit(1, (PowerLimitClass)7));
        Assert.Throws<ArgumentOutOfRangeException>("claimedClass", () => new BoxOutput(1, Amps(1), claimedClass: (PowerLimitClass)7));
    }

    private static int RankOf(PowerLimitVerdict verdict) => Array.IndexOf([Within, Unknown, Exceeds], verdict);
}
