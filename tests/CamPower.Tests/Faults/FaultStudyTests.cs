using System;
using System.Linq;
using CamPower.Tests.Protection;
using UnitsNet;

namespace CamPower.Tests.Faults;

public class FaultStudyTests
{
    // By hand, NBS Handbook 100: 18 AWG solid is 6.385 Ω/1000 ft at 20 °C. 250 ft one way are 3.1925 Ω out and back; with 50 mΩ
    // of supply and 12.0 V, 3.70 A. At 60 °C the copper is 1 + 0.00393 × 40 = 1.1572 times that: 3.6944 Ω, 3.2048 A. A fuse of 2 A
    // sees 1.60 to 1.85 times its rating: below 2.1, the first gate with a latest time of IEC 60127-2 F.
    [Fact]
    public void FarEndShort_OfALongThinRun_MayNeverBlowItsFuse()
    {
        FaultStudy study = SmallFault.Study(new CableRun(Runs.Eighteen, oneWayLength: Length.FromFeet(250)), SmallFault.QuickActing(2), SmallFault.Source(ohms: 0.05),
            SmallFault.Between(20, 60));
        ShortCircuit far = study.AtFarEnd;
        Assert.Equal(3.701, far.Largest!.Value.Amperes, 0.001);
        Assert.Equal(3.205, far.Smallest.Amperes, 0.001);
        Assert.Equal(OperatingVerdict.MayOperate, far.Verdict);
        Assert.Null(far.Opening.Latest);
        Assert.Equal(0.05, far.Opening.Earliest!.Value.Seconds);
        Assert.Equal(WithstandVerdict.Unknown, far.WithstandVerdict);

        // At the terminals the same fuse is gone in 10 ms: 240 A. The cable that begins there carries it too, and its insulation is not stated.
        Assert.Equal(OperatingVerdict.Operates, study.AtTerminals.Verdict);
        Assert.Equal(240, study.AtTerminals.Largest!.Value.Amperes, 1e-9);
        Assert.Equal(0.01, study.AtTerminals.Opening.Latest!.Value.Seconds);
        Assert.Equal(WithstandVerdict.Unknown, study.AtTerminals.WithstandVerdict);
        Assert.Null(study.AtTerminals.Withstand);
    }

    // An adapter that holds 2 A need not trip a resettable fuse of 1.1 A, which trips for certain from 2.2 A on, and never blows a
    // fuse of 2 A; not even at its terminals.
    [Fact]
    public void AdapterInCurrentLimit_ProtectsNothing()
    {
        Supply adapter = SmallFault.Source(OverloadBehavior.ConstantCurrent(ElectricCurrent.FromAmperes(2)));
        FaultStudy resettable = SmallFault.Study(SmallFault.Run(1), SmallDevices.Printed(1.10), adapter);
        Assert.All(resettable.Shorts, s => Assert.Equal(OperatingVerdict.MayOperate, s.Verdict));
        Assert.All(SmallFault.Study(SmallFault.Run(1), SmallFault.QuickActing(2), adapter).Shorts, s => Assert.Equal(OperatingVerdict.DoesNotOperate, s.Verdict));
    }

    // The same run as above, 3.70 A cold and 3.20 A hot, whatever a supply that holds 2 A makes of it.
    [Fact]
    public void Prospective_IsFromColdToHotConductors_WhateverTheSupplyHolds()
    {
        ShortCircuit far = SmallFault.Study(new CableRun(Runs.Eighteen, oneWayLength: Length.FromFeet(250)), SmallFault.QuickActing(2),
            SmallFault.Source(OverloadBehavior.ConstantCurrent(ElectricCurrent.FromAmperes(2)), ohms: 0.05), SmallFault.Between(20, 60)).AtFarEnd;
        Assert.Equal(3.701, far.LargestProspective!.Value.Amperes, 0.001);
        Assert.Equal(3.205, far.SmallestProspective!.Value.Amperes, 0.001);
        Assert.Equal(2, far.Largest!.Value.Amperes, 1e-9);
    }

    // The joint's own 0.5 Ω lies behind a short at the joint: 10 m of 1.5 mm² are 10 × 2/58/1.5 = 0.2299 Ω, 12/0.3299 = 36.38 A.
    [Fact]
    public void Places_AreTheTerminalsEveryJointAndTheFarEnd()
    {
        CableRun run = SmallFault.Run(10, 1.5).Then(new Joint("splice", ElectricResistance.FromOhms(0.5))).Then(new CableSegment(SmallFault.Pair(0.5), Length.FromMeters(5)));
        FaultStudy study = SmallFault.Study(run, SmallFault.QuickActing(2));
        Assert.Equal(["terminals", "splice", "far end"], study.Shorts.Select(s => s.Place));
        Assert.Equal([0, 10, 15], study.Shorts.Select(s => s.Distance.Meters));
        Assert.Equal(36.38, study.Shorts[1].Largest!.Value.Amperes, 0.005);

        // The smaller cable counts from where it begins: (115 × 1.5)² and (115 × 0.5)².
        Assert.Equal(115.0 * 115 * 2.25, study.AtTerminals.Withstand!.Value.AmpereSquaredSeconds, 5.0);
        Assert.Equal(115.0 * 115 * 0.25, study.Shorts[1].Withstand!.Value.AmpereSquaredSeconds, 1.0);
        Assert.Equal(115.0 * 115 * 0.25, study.AtFarEnd.Withstand!.Value.AmpereSquaredSeconds, 1.0);
    }

    // The supply's tolerance and the device's resistance widen the range: 12 V ± 5 %, 0.1 Ω, and 0.050 to 0.140 Ω.
    [Fact]
    public void Range_HoldsTheToleranceAndTheDevicesResistance()
    {
        ShortCircuit fault = SmallFault.Study(Runs.OfOhms(1), SmallDevices.Printed(1.10), SmallFault.Source(percent: 5)).AtFarEnd;
        Assert.Equal(12.6 / 1.15, fault.Largest!.Value.Amperes, 1e-9);
        Assert.Equal(11.4 / 1.24, fault.Smallest.Amperes, 1e-9);
    }

    // 240 A at the terminals are more than the 35 A of a fuse marked L, and 24 V more than the 16 V of the resettable fuse.
    [Fact]
    public void DeviceAskedForMoreThanItsRating_NeverOperatesForCertain()
    {
        Fuse low = SmallDevices.Fuse(FuseCharacteristic.IecQuickActing, 2, breaking: 35);
        FaultStudy study = SmallFault.Study(SmallFault.Run(50), low, SmallFault.Source(ohms: 0.05));
        Assert.Equal(OperatingVerdict.MayOperate, study.AtTerminals.Verdict);
        Assert.False(study.AtTerminals.IsWithinBreakingCapacity);
        Assert.True(study.AtTerminals.IsWithinVoltageRating);
        Assert.True(study.AtFarEnd.IsWithinBreakingCapacity);

        ShortCircuit tooHigh = SmallFault.Study(Runs.OfOhms(1), SmallDevices.Printed(1.10), SmallFault.Source(volts: 24)).AtFarEnd;
        Assert.Equal(OperatingVerdict.MayOperate, tooHigh.Verdict);
        Assert.Equal(OperatingVerdict.Operates, tooHigh.Opening.Verdict);
        Assert.False(tooHigh.IsWithinVoltageRating);
        Assert.Null(tooHigh.IsWithinBreakingCapacity);

        // The top of the tolerance counts: 16 V and 5 % are 16.8 V.
        Assert.True(SmallFault.Study(Runs.OfOhms(1), SmallDevices.Printed(1.10), SmallFault.Source(volts: 16)).AtFarEnd.IsWithinVoltageRating);
        Assert.False(SmallFault.Study(Runs.OfOhms(1), SmallDevices.Printed(1.10), SmallFault.Source(volts: 16, percent: 5)).AtFarEnd.IsWithinVoltageRating);
    }

    // 12 V behind 1.1 Ω would be 10.9 A. Held to 9 A and 10 %: from 8.1 A to 9.9 A, and a fuse F of 4 A opens for certain from 8.4 A.
    [Fact]
    public void TheToleranceOfTheLimit_WidensTheRange()
    {
        Supply source = SmallFault.Source(OverloadBehavior.ConstantCurrent(ElectricCurrent.FromAmperes(9)).WithTolerance(Ratio.FromPercent(10)));
        ShortCircuit fault = SmallFault.Study(Runs.OfOhms(1), SmallFault.QuickActing(4), source).AtFarEnd;
        Assert.Equal(9.9, fault.Largest!.Value.Amperes, 1e-9);
        Assert.Equal(8.1, fault.Smallest.Amperes, 1e-9);
        Assert.Equal(OperatingVerdict.MayOperate, fault.Verdict);
        Supply exact = SmallFault.Source(OverloadBehavior.ConstantCurrent(ElectricCurrent.FromAmperes(9)));
        Assert.Equal(OperatingVerdict.Operates, SmallFault.Study(Runs.OfOhms(1), SmallFault.QuickActing(4), exact).AtFarEnd.Verdict);
    }

    // Folded back to 3 A and 10 %: behind 1.1 Ω, from 2.7/(1 − 5.4/10.91) = 5.35 A to 3.3/(1 − 6.6/10.91) = 8.35 A.
    [Fact]
    public void TheToleranceOfAFoldback_ScalesItsLine()
    {
        Supply source = SmallFault.Source(OverloadBehavior.Foldback(ElectricCurrent.FromAmperes(9), ElectricCurrent.FromAmperes(3)).WithTolerance(Ratio.FromPercent(10)));
        ShortCircuit fault = SmallFault.Study(Runs.OfOhms(1), SmallFault.QuickActing(4), source).AtFarEnd;
        Assert.Equal(2.7 / (1 - (5.4 / (12 / 1.1))), fault.Smallest.Amperes, 1e-9);
        Assert.Equal(3.3 / (1 - (6.6 / (12 / 1.1))), fault.Largest!.Value.Amperes, 1e-9);
    }

    // 12 V behind 0.1 Ω: 144/0.4 = 360 W in a poor short. What lasts behind T2A is below the 2.1 × 2 A that open it for certain (IEC 60127-2): 4.2·(12 − 0.42) = 48.636 W. A resettable
    // fuse of 0.05 Ω at the least is in the loop as well, and 1.1 A trip it for certain from 2.2 A on: 2.2·(12 − 0.33) = 25.674 W. A supply that holds 3 A leaves 3·(12 − 0.3) = 35.1 W.
    [Fact]
    public void APoorShort_CountsAsFarAsItLasts()
    {
        Assert.Equal(360, Watts(ProtectiveDevice.None), 1e-9);
        Assert.Equal(48.636, Watts(SmallDevices.Fuse(FuseCharacteristic.IecTimeLag, 2)), 1e-9);
        Assert.Equal(25.674, Watts(SmallDevices.Printed(1.10)), 1e-9);
        Assert.Equal(35.1, Watts(SmallDevices.Fuse(FuseCharacteristic.IecTimeLag, 2), OverloadBehavior.ConstantCurrent(ElectricCurrent.FromAmperes(3))), 1e-9);

        static double Watts(ProtectiveDevice device, OverloadBehavior? overload = null) =>
            (double)SmallFault.Study(Runs.OfOhms(1), device, SmallFault.Source(overload)).AtTerminals.PoorShortPower!.Value.Watts;
    }

    // A glass fuse of 250 V AC says nothing of 24 V DC, unless its sheet states 63 V DC; above 250 V it is refuted by that (rating of the sheet).
    [Theory]
    [InlineData(24, 63.0, CurrentKind.Dc, true)]
    [InlineData(72, 63.0, CurrentKind.Dc, false)]
    [InlineData(24, null, CurrentKind.Dc, null)]
    [InlineData(251, null, CurrentKind.Dc, false)]
    [InlineData(72, null, CurrentKind.Ac, true)]
    public void AcRatingOfAFuse_IsNoDcRating(double volts, double? rated, CurrentKind kind, bool? isWithin)
    {
        Fuse fuse = SmallDevices.Fuse(FuseCharacteristic.IecQuickActing, 2, dcVolts: rated);
        SupplyOutput output = kind == CurrentKind.Dc
            ? new DcOutput(ElectricPotential.FromVolts(volts), ElectricCurrent.FromAmperes(10), Ratio.Zero, overload: OverloadBehavior.Unlimited, sourceResistance: ElectricResistance.FromOhms(0.1))
            : new AcOutput(ElectricPotential.FromVolts(volts), ElectricCurrent.FromAmperes(10), Ratio.Zero, ElectricResistance.FromOhms(0.1), OverloadBehavior.Unlimited);
        ShortCircuit fault = SmallFault.Study(Runs.OfOhms(1), fuse, new Supply("supply", output, Derating.GenericEnclosed)).AtFarEnd;
        Assert.Equal(isWithin, fault.IsWithinVoltageRating);
        Assert.Equal(isWithin is null, fault.Missing.HasFlag(FaultData.DcVoltageRating));
    }

    // Tripped by its sheet at 8 A: a battery of 12 V and 0.1 Ω gives 80 A at the terminals, and 7.5 A behind 1.5 Ω.
    [Fact]
    public void AResettableFuseWithoutALargestCurrent_IsShownToInterruptItsTestCurrent()
    {
        FaultStudy study = SmallFault.Study(Runs.OfOhms(1.5), SmallDevices.Printed(1.10));
        Assert.True(study.AtTerminals.Missing.HasFlag(FaultData.MaximumCurrent));
        Assert.False(study.AtFarEnd.Missing.HasFlag(FaultData.MaximumCurrent));
        Assert.False(SmallFault.Study(Runs.OfOhms(1.5), SmallDevices.Resettable(1.1)).AtTerminals.Missing.HasFlag(FaultData.MaximumCurrent));
    }

    // Current falls with distance where the supply gives what the resistances allow or holds a limit; a fuse then never clears
    // sooner, nor surer, farther out, as long as it may break what a link in its place would carry. Foldback and hiccup let a farther short draw more: there it is no law.
    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void Farther_IsLessCurrentAndNeverSooner(bool isLimited)
    {
        Supply source = SmallFault.Source(isLimited ? OverloadBehavior.ConstantCurrent(ElectricCurrent.FromAmperes(9)) : null, percent: 2);
        foreach (ProtectiveDevice device in new ProtectiveDevice[] { SmallFault.QuickActing(1), SmallDevices.Fuse(FuseCharacteristic.UlFast, 2), SmallDevices.Resettable(least: 0.1, greatest: 0.1) })
        {
            ShortCircuit[] shorts = [.. Enumerable.Range(2, 119).Select(i => SmallFault.Study(SmallFault.Run(2.5 * i), device, source, SmallFault.Between(-10, 50), InstallationMethod.LargeBundle).AtFarEnd)];
            Assert.All(shorts.Zip(shorts.Skip(1)), pair =>
            {
                Assert.True(pair.Second.LargestProspective!.Value.Amperes < pair.First.LargestProspective!.Value.Amperes);
                Assert.True(pair.Second.SmallestProspective!.Value.Amperes < pair.First.SmallestProspective!.Value.Amperes);
                Assert.True(pair.Second.Largest!.Value.Amperes <= pair.First.Largest!.Value.Amperes);
                Assert.True(pair.Second.Verdict <= pair.First.Verdict);
                Assert.True(Seconds(pair.Second.Opening.Earliest) >= Seconds(pair.First.Opening.Earliest));
                Assert.True(Seconds(pair.Second.Opening.Latest) >= Seconds(pair.First.Opening.Latest));
            });
            Assert.Equal(OperatingVerdict.DoesNotOperate, shorts[^1].Verdict);
            Assert.Equal(OperatingVerdict.Operates, shorts[0].Verdict);
        }
    }

    [Fact]
    public void HiccupSupply_HeatsAFartherFaultMore()
    {
        Supply source = SmallFault.Source(OverloadBehavior.Hiccup(ElectricCurrent.FromAmperes(10), Duration.FromMilliseconds(50), Duration.FromSeconds(1)));
        Assert.True(SmallFault.Study(SmallFault.Run(50), ProtectiveDevice.None, source).AtFarEnd.Smallest.Amperes
            > SmallFault.Study(SmallFault.Run(1), ProtectiveDevice.None, source).AtFarEnd.Smallest.Amperes);
    }

    // Cold the supply pulses, hot it does not: the least heating is that of the pulses, the most that of the limit.
    [Fact]
    public void RangeAcrossTheLimit_HoldsBothBehaviors()
    {
        Supply source = SmallFault.Source(OverloadBehavior.Hiccup(ElectricCurrent.FromAmperes(10), Duration.FromMilliseconds(40), Duration.FromSeconds(1)), ohms: 1e-6);
        double meters = 1.15 / SmallFault.Run(1).LoopResistanceAt(SmallDevices.Room).Ohms;
        ShortCircuit fault = SmallFault.Study(SmallFault.Run(meters), ProtectiveDevice.None, source, SmallFault.Between(20, 60)).AtFarEnd;
        Assert.Equal(10, fault.Largest!.Value.Amperes, 1e-9);
        Assert.Equal(2, fault.Smallest.Amperes, 1e-9);
    }

    private static double Seconds(Duration? time) => time?.Seconds ?? double.PositiveInfinity;
}
