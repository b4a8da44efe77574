using System;
using CamPower.Tests.Protection;
using UnitsNet;

namespace CamPower.Tests.Faults;

/// <summary>What the device itself and the supply's capacitors do to a fault, and what is said where something is not declared. All by hand.</summary>
public class DeviceInFaultTests
{
    // 12 V behind 2 Ω would be 6 A. A limit of 1.5 A ± 10 % lets 1.65 A through for 50 ms: 0.136 A²s. Trying again after 0.2 s, 1.65 × √(0.05/0.25).
    [Fact]
    public void ElectronicLimit_HoldsTheCurrentAndEndsIt()
    {
        ShortCircuit latched = SmallFault.Behind(2, ElectronicLimitTests.Limit(ohms: 0));
        Assert.Equal(1.65, latched.Largest!.Value.Amperes, 1e-12);
        Assert.Equal(6, latched.LargestProspective!.Value.Amperes, 1e-12);
        Assert.Equal(OperatingVerdict.Operates, latched.Verdict);
        Assert.Equal(0.05, latched.Opening.Latest!.Value.Seconds);
        Assert.Equal(0.136125, latched.LetThrough!.Value.AmpereSquaredSeconds, 1e-12);

        ShortCircuit retrying = SmallFault.Behind(2, ElectronicLimitTests.Limit(ohms: 0, pause: 0.2));
        Assert.Equal(OperatingVerdict.Operates, retrying.Verdict);
        Assert.Null(retrying.LetThrough);
        Assert.Equal(1.65 * Math.Sqrt(0.2), retrying.Smallest.Amperes, 1e-9);
    }

    // A supply that holds 1.6 A never reaches the limit of 1.65 A for certain; one that holds 1.3 A is below 1.35 A.
    [Theory]
    [InlineData(1.6, OperatingVerdict.MayOperate)]
    [InlineData(1.3, OperatingVerdict.DoesNotOperate)]
    [InlineData(4, OperatingVerdict.Operates)]
    public void ElectronicLimit_NeedsASupplyThatGivesMore(double supplyAmperes, OperatingVerdict verdict) => Assert.Equal(verdict,
        SmallFault.Behind(2, ElectronicLimitTests.Limit(), OverloadBehavior.ConstantCurrent(ElectricCurrent.FromAmperes(supplyAmperes))).Verdict);

    // A supply that folds back from 1.3 A to 0.3 A gives a dead short of 2 Ω 0.3/(1 − 1·2/12) = 0.36 A. A limit of 1.2 A ± 15 % may act below 1.3 A and open, or
    // above, and then sees 0.36 A for ever; one of ± 5 % acts at 1.26 A at the latest, one of 1.6 A ± 10 % never.
    [Theory]
    [InlineData(1.2, 15, OperatingVerdict.MayOperate, 0.36)]
    [InlineData(1.2, 5, OperatingVerdict.Operates, 1.26)]
    [InlineData(1.6, 10, OperatingVerdict.DoesNotOperate, 0.36)]
    public void ElectronicLimit_AboveASupplyThatFoldsBack_IsLeftWithNothing(double limit, double percent, OperatingVerdict verdict, double least)
    {
        var device = new ElectronicLimit("limit", ElectricCurrent.FromAmperes(limit), Ratio.FromPercent(percent), Duration.FromMilliseconds(50), ElectricResistance.Zero,
            ElectricPotential.FromVolts(30));
        ShortCircuit fault = SmallFault.Behind(2, device, OverloadBehavior.Foldback(ElectricCurrent.FromAmperes(1.3), ElectricCurrent.FromAmperes(0.3)));
        Assert.Equal(verdict, fault.Verdict);
        Assert.Equal(least, fault.Smallest.Amperes, 1e-9);
    }

    // An adapter that holds 2 A never opens a fuse F of 2 A. 1 mF at 12 V into 0.5 Ω are 24 A at first, and beside the 2 A C·11²/(2R) + 2·2·C·11 = 0.165 A²s,
    // less than the 0.63 A²s that do not melt it; 4.7 mF give 0.7755 A²s: they may. So may 0.15 F, 24.75 A²s: nobody states what resistance is inside of them.
    [Theory]
    [InlineData(0, OperatingVerdict.DoesNotOperate, 0)]
    [InlineData(1e-3, OperatingVerdict.DoesNotOperate, 24)]
    [InlineData(4.7e-3, OperatingVerdict.MayOperate, 24)]
    [InlineData(0.15, OperatingVerdict.MayOperate, 24)]
    public void OutputCapacitors_MayDecideAFastFuse(double farads, OperatingVerdict verdict, double peak)
    {
        ShortCircuit fault = SmallFault.Behind(0.6, SmallFault.QuickActing(2), OverloadBehavior.ConstantCurrent(ElectricCurrent.FromAmperes(2)), farads);
        Assert.Equal(verdict, fault.Verdict);
        Assert.Null(fault.LetThrough);
        Assert.Equal(peak, fault.DischargePeak!.Value.Amperes, 1e-9);
        Assert.Equal(2, fault.Largest!.Value.Amperes, 1e-12);
    }

    // 1 nF across a fuse of which 0 Ω are declared: nothing bounds its discharge at the terminals, and nothing makes it certain. Behind 50 mΩ it is 1.4 µA²s, and nothing to a fuse of 10 A.
    [Theory]
    [InlineData(0, OperatingVerdict.MayOperate)]
    [InlineData(0.05, OperatingVerdict.DoesNotOperate)]
    public void AFuseOfNoResistance_IsNeverCertainToOpenByCapacitors(double ohms, OperatingVerdict verdict) => Assert.Equal(verdict,
        SmallFault.Study(SmallFault.Run(2), SmallDevices.Fuse(FuseCharacteristic.IecQuickActing, 10, ohms: ohms),
            SmallFault.Source(OverloadBehavior.ConstantCurrent(ElectricCurrent.FromAmperes(2)), farads: 1e-9)).AtTerminals.Verdict);

    // A fuse F of 8 A opens 80 A, ten times its rating, within 20 ms: 128 A²s. 10 mF at 12 V into the 0.05 Ω of its run add to the 80 A of the loop of 0.15 Ω:
    // 12 − 80 × 0.05 = 8 V above the rest, through 0.05 Ω beside 0.1 Ω: C·(2/3)·(8²/0.1 + 2 × 80 × 8), over after some milliseconds.
    [Fact]
    public void OutputCapacitors_AddToTheLetThrough()
    {
        double with = Short(10e-3), without = Short(0);
        Assert.Equal(80 * 80 * 0.02, without, 1e-9);
        Assert.Equal(10e-3 * 2 / 3 * ((8 * 8 / 0.1) + (2 * 80 * 8)), with - without, 1e-6);

        static double Short(double farads) => SmallFault.Behind(0.15, SmallFault.QuickActing(8), farads: farads).LetThrough!.Value.AmpereSquaredSeconds;
    }

    // Without resistance outside the supply nothing bounds the first moment, and nothing invents a bound.
    [Fact]
    public void OutputCapacitors_IntoNoResistance_HaveNoBound()
    {
        ShortCircuit terminals = SmallFault.Study(SmallFault.Run(10), SmallFault.QuickActing(2), SmallFault.Source(farads: 1e-3)).AtTerminals;
        Assert.Null(terminals.DischargePeak);
        Assert.Null(terminals.LetThrough);
        Assert.Equal(OperatingVerdict.Operates, terminals.Verdict);
    }

    // 1 W behind 11.9 Ω at most 12 V: (12 − 11.9 I)·I = 1. It stays tripped in any short that a loop of up to 36 Ω feeds.
    [Fact]
    public void ResettableFuse_StaysTrippedInAShort()
    {
        ShortCircuit fault = SmallFault.Behind(3, SmallDevices.Resettable(least: 0, greatest: 0.15, trippedWatts: 1));
        Assert.True(fault.StaysTripped);
        double amperes = fault.TrippedCurrent!.Value.Amperes;
        Assert.Equal(1, (12 - (3 * amperes)) * amperes, 1e-9);
        Assert.Null(SmallFault.Behind(3, SmallDevices.Resettable()).StaysTripped);
        Assert.Null(SmallFault.Behind(3, SmallFault.QuickActing(2)).StaysTripped);
    }

    // In a box between 20 °C and 40 °C a resettable fuse of 1.1 A trips for certain at 2 A when warm (1.76 A), when cold only perhaps (2.2 A).
    [Fact]
    public void ARangeAroundTheDevice_HoldsBothEnds()
    {
        Supply adapter = SmallFault.Source(OverloadBehavior.ConstantCurrent(ElectricCurrent.FromAmperes(2)));
        Assert.Equal(OperatingVerdict.MayOperate, At(20, 40));
        Assert.Equal(OperatingVerdict.Operates, At(40, 50));

        OperatingVerdict At(double cold, double hot) =>
            SmallFault.Study(Runs.OfOhms(1), SmallDevices.Printed(1.10), adapter, SmallFault.Between(device: cold, deviceHottest: hot)).AtFarEnd.Verdict;
    }

    [Fact]
    public void AnUndeclaredDevice_GivesCurrentsAndNoVerdict()
    {
        ShortCircuit fault = SmallFault.Study(Runs.OfOhms(1.9), device: null).AtFarEnd;
        Assert.Equal(6, fault.Largest!.Value.Amperes, 1e-9);
        Assert.Equal(6, fault.Smallest.Amperes, 1e-9);
        Assert.Equal(OperatingVerdict.None, fault.Verdict);
        Assert.Null(fault.LetThrough);
        Assert.True(fault.Missing.HasFlag(FaultData.Protection));
        Assert.Equal("far end: unknown; not stated: protective device, output capacitance of the supply", fault.ToString());

        // What no device at all would let happen is the worst: 3 A do no harm to 18 AWG in a cable, for ever.
        CableRun run = new CableRun(Cable.Pair(WireSize.Awg(18), Stranding.Solid, ConductorMaterial.AnnealedCopper, insulation: Insulation.Pvc70), Length.FromMeters(1))
            .Then(new Joint("rest", ElectricResistance.FromOhms(3.8)));
        InstallationMethod installationMethod = InstallationMethod.InCableOrRaceway(2);
        Assert.Equal(WithstandVerdict.Withstands, SmallFault.Study(run, device: null, conditions: SmallFault.Between(), installationMethod: installationMethod).AtFarEnd.WithstandVerdict);
        Assert.Equal(WithstandVerdict.Unknown, SmallFault.Study(SmallFault.Run(1), device: null, conditions: SmallFault.Between(), installationMethod: InstallationMethod.LargeBundle).AtFarEnd.WithstandVerdict);
    }

    // A supply of which nobody says what it does in overload may give anything up to what the resistances let flow.
    [Fact]
    public void AnUndeclaredOverload_GivesABoundAndNoVerdict()
    {
        ShortCircuit fault = SmallFault.Study(Runs.OfOhms(1.9), SmallDevices.Fuse(FuseCharacteristic.IecQuickActing, 1, breaking: 35), Sheet(ohms: 0.1, overload: null)).AtFarEnd;
        Assert.Equal(6, fault.Largest!.Value.Amperes, 1e-9);
        Assert.Equal(0, fault.Smallest.Amperes);
        Assert.Equal(OperatingVerdict.None, fault.Verdict);
        Assert.True(fault.IsWithinBreakingCapacity);
        Assert.Null(fault.LetThrough);
        Assert.Equal(FaultData.Overload, fault.Missing & (FaultData.Overload | FaultData.SourceResistance | FaultData.Protection));

        // 240 A might be too much, or the supply might never give it.
        Assert.Null(SmallFault.Study(SmallFault.Run(50), SmallDevices.Fuse(FuseCharacteristic.IecQuickActing, 2, breaking: 35), Sheet(0.05, null)).AtTerminals.IsWithinBreakingCapacity);
    }

    // A limit needs no source resistance: up to it the tolerance covers what is lost inside. Without a limit it is missing.
    [Fact]
    public void SourceResistance_IsNeededOfAnUnlimitedSupplyAlone()
    {
        Supply limited = Sheet(ohms: null, OverloadBehavior.ConstantCurrent(ElectricCurrent.FromAmperes(5)));
        ShortCircuit terminals = SmallFault.Study(SmallFault.Run(5), SmallFault.QuickActing(2), limited).AtTerminals;
        Assert.Equal(5, terminals.Largest!.Value.Amperes, 1e-12);
        Assert.Equal(OperatingVerdict.Operates, terminals.Verdict);
        Assert.Null(terminals.LargestProspective);

        ShortCircuit unlimited = SmallFault.Study(SmallFault.Run(5), SmallFault.QuickActing(2), Sheet(ohms: null, OverloadBehavior.Unlimited)).AtTerminals;
        Assert.Null(unlimited.Largest);
        Assert.Equal(OperatingVerdict.None, unlimited.Verdict);
        Assert.True(unlimited.Missing.HasFlag(FaultData.SourceResistance));
    }

    // 2.1 times the 2 A of a fuse F: within 30 min, not sooner than its gate at 2.75 times allows. A supply that holds 3 A gives 1.5 times: it may never open.
    [Fact]
    public void Overload_IsLimitedByTheSupplyAsWell()
    {
        Overload free = SmallFault.Study(SmallFault.Run(10), SmallFault.QuickActing(2)).OverloadOf(ElectricCurrent.FromAmperes(4.2));
        Assert.Equal(4.2, free.Largest!.Value.Amperes, 1e-12);
        Assert.Equal(1800, free.Opening.Latest!.Value.Seconds, 1e-6);
        Assert.Equal(0.05, free.Opening.Earliest!.Value.Seconds);

        Overload held = SmallFault.Study(SmallFault.Run(10), SmallFault.QuickActing(2), SmallFault.Source(OverloadBehavior.ConstantCurrent(ElectricCurrent.FromAmperes(3))))
            .OverloadOf(ElectricCurrent.FromAmperes(4.2));
        Assert.Equal(4.2, held.Drawn.Amperes, 1e-12);
        Assert.Equal(3, held.Largest!.Value.Amperes, 1e-12);
        Assert.Equal(OperatingVerdict.MayOperate, held.Verdict);
        Assert.Null(held.Opening.Latest);
    }

    private static Supply Sheet(double? ohms, OverloadBehavior? overload) => new("sheet", new DcOutput(ElectricPotential.FromVolts(12), ElectricCurrent.FromAmperes(20), Ratio.Zero,
        sourceResistance: ohms is double given ? ElectricResistance.FromOhms(given) : null, overload: overload), Derating.GenericEnclosed);
}
