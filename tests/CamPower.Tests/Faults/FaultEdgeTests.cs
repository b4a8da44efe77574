using System;
using System.Linq;
using CamPower.Tests.Protection;
using UnitsNet;
using static CamPower.Tests.Faults.SmallFaultSite;
using static CamPower.Tests.Sites.SmallSite;

namespace CamPower.Tests.Faults;

/// <summary>What decides at an edge: a pulse as long as an operating time, a current at a limit, a place between two cables, what is not stated and what is. All by hand.</summary>
public class FaultEdgeTests
{
    // A fuse F of 1 A opens 10 A within 20 ms (IEC 60127-2, from memory). Pulses of 10 A that last 20 ms open it; of 19 ms they count by 10·√(0.019/1.9) = 1 A RMS, which it carries for ever.
    // It withstands 4 A for 10 ms: pulses as long as that never open it in a pulse, and of 4·√(0.01/1) = 0.4 A RMS they never do.
    [Theory]
    [InlineData(10, 20, OperatingVerdict.Operates)]
    [InlineData(10, 19, OperatingVerdict.MayOperate)]
    [InlineData(4, 10, OperatingVerdict.DoesNotOperate)]
    [InlineData(4, 11, OperatingVerdict.MayOperate)]
    public void APulse_IsHeldAgainstTheOperatingTime(double amperes, double milliseconds, OperatingVerdict verdict) =>
        Assert.Equal(verdict, SmallFault.Behind(0.3, SmallFault.QuickActing(1), Hiccup(amperes, milliseconds, 100 * milliseconds)).Verdict);

    // 12 V / 1.5 Ω are 8 A: at the limit a supply does not pulse yet.
    [Theory]
    [InlineData(8, 8)]
    [InlineData(7.5, 0.75)]
    public void AtItsLimit_ASupplyStaysUp(double limit, double least) =>
        Assert.Equal(least, SmallFault.Behind(1.5, SmallFault.QuickActing(2), Hiccup(limit, 30, 3000)).Smallest.Amperes, 1e-12);

    // 4.2 A of a supply that pulses from 9 A on are no pulses: 2.1 times a fuse F of 2 A, 30 min.
    [Fact]
    public void AnOverloadBelowTheLimit_IsSteady()
    {
        Overload overload = SmallFault.Study(SmallFault.Run(10), SmallFault.QuickActing(2), SmallFault.Source(Hiccup(9, 200, 1000))).OverloadOf(ElectricCurrent.FromAmperes(4.2));
        Assert.Equal(4.2, overload.Smallest.Amperes, 1e-12);
        Assert.Equal(OperatingVerdict.Operates, overload.Verdict);
    }

    // A limit of 1.5 A ± 10 % holds what 10 mF discharge as well: 1.65 A for 50 ms.
    [Fact]
    public void AnElectronicLimit_HoldsTheDischargeToo()
    {
        ShortCircuit fault = SmallFault.Behind(2, ElectronicLimitTests.Limit(ohms: 0), farads: 0.01);
        Assert.Equal(0, fault.DischargePeak!.Value.Amperes);
        Assert.Equal(1.65 * 1.65 * 0.05, fault.LetThrough!.Value.AmpereSquaredSeconds, 1e-12);
    }

    // Only what is not stated is missing, and is named.
    [Theory]
    [InlineData(0, false, FaultData.Protection | FaultData.OutputCapacitance, "protective device, output capacitance of the supply")]
    [InlineData(1e-3, false, FaultData.Protection, "protective device")]
    [InlineData(0, true, FaultData.OutputCapacitance, null)]
    [InlineData(1e-3, true, FaultData.None, null)]
    public void OnlyWhatIsNotStated_IsMissing(double farads, bool hasDevice, FaultData missing, string? words)
    {
        FaultStudy study = SmallFault.Study(Runs.OfOhms(1.9), hasDevice ? SmallFault.QuickActing(2) : null, SmallFault.Source(farads: farads));
        Assert.Equal(missing, study.Missing);
        Assert.Equal(missing, study.AtFarEnd.Missing);
        Assert.Equal(words is null ? $"far end: 6 A to 6 A, {study.AtFarEnd.Opening}" : $"far end: unknown; not stated: {words}", study.AtFarEnd.ToString());
    }

    // A voltage that is not stated to be interrupted is missing at every place; an insulation only where a cable carries the fault.
    [Fact]
    public void WhatIsMissingAnywhere_IsMissingOfTheStudy()
    {
        FaultStudy study = SmallFault.Study(new CableRun(Cable.Pair(new Conductor(WireSize.Awg(18), Stranding.Solid, ConductorMaterial.AnnealedCopper)), Length.FromMeters(3)),
            SmallFault.QuickActing(2), SmallFault.Source(farads: 1e-3), installationMethod: InstallationMethod.InCableOrRaceway(2));
        Assert.Equal(FaultData.Insulation, study.AtFarEnd.Missing);
        Assert.Equal(FaultData.Insulation, study.Missing);
    }

    // Insulation that is known, and holds, needs no installation method; one of two that is not known leaves no I²t to hold it against.
    [Fact]
    public void WhatHolds_MissesNothing()
    {
        ShortCircuit holds = SmallFault.Study(SmallFault.Run(3), SmallFault.QuickActing(2), SmallFault.Source(farads: 1e-3)).AtFarEnd;
        Assert.Equal((WithstandVerdict.Withstands, FaultData.None), (holds.WithstandVerdict, holds.Missing));
        Assert.NotNull(holds.Withstand);
        var bare = new CableSegment(Cable.Pair(new Conductor(WireSize.Awg(18), Stranding.Solid, ConductorMaterial.AnnealedCopper)), Length.FromMeters(3));
        Assert.Null(SmallFault.Study(SmallFault.Run(3).Then(bare), SmallFault.QuickActing(2)).AtFarEnd.Withstand);
    }

    // One conductor in two coats: (115 × 0.5)² under PVC, (143 × 0.5)² under XLPE (IEC 60364-4-43, Table 43A). The weaker counts, whichever comes first.
    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void OneConductorInTwoCoats_IsTwo(bool isWeakerFirst)
    {
        var conductor = new Conductor(WireSize.SquareMillimeters(0.5), Stranding.Solid, ConductorMaterial.AnnealedCopper);
        CableSegment weak = In(Insulation.Pvc70), strong = In(Insulation.CrossLinked);
        ShortCircuit far = SmallFault.Study(isWeakerFirst ? new CableRun(weak, strong) : new CableRun(strong, weak), SmallFault.QuickActing(2)).AtFarEnd;
        Assert.Equal(3306.25, far.Withstand!.Value.AmpereSquaredSeconds, 1.0);

        CableSegment In(Insulation insulation) => new(new Cable(conductor, conductor, insulation: insulation), Length.FromMeters(3));
    }

    // 4 A for ever in four wires of 24 AWG side by side are 1 A in each (2.5 A in a large bundle, FAA AC 43.13-1B); in one wire it is more than PVC is for.
    [Theory]
    [InlineData(4, WithstandVerdict.Withstands)]
    [InlineData(1, WithstandVerdict.HotterThanInService)]
    public void WiresSideBySide_ShareACurrentThatLasts(int wires, WithstandVerdict verdict)
    {
        Conductor conductor = new Conductor(WireSize.Awg(24), Stranding.Solid, ConductorMaterial.AnnealedCopper).InParallel(wires);
        var run = new CableRun(new Cable(conductor, conductor, insulation: Insulation.Pvc70), Length.FromMeters(5));
        FaultStudy study = SmallFault.Study(run, SmallFault.QuickActing(4), SmallFault.Source(OverloadBehavior.ConstantCurrent(ElectricCurrent.FromAmperes(4))),
            installationMethod: InstallationMethod.LargeBundle);
        Assert.Equal(OperatingVerdict.DoesNotOperate, study.AtFarEnd.Verdict);
        Assert.Equal(verdict, study.AtFarEnd.WithstandVerdict);
    }

    // A piece of no length begins nothing, and a run of joints alone has no piece.
    [Fact]
    public void APieceOfNoLength_IsNoPlace()
    {
        CableSegment some = new(SmallFault.Pair(0.5), Length.FromMeters(3)), none = new(SmallFault.Pair(1.5), Length.Zero), other = new(SmallFault.Pair(2.5), Length.FromMeters(4));
        Assert.Equal(["terminals", "far end"], Places(new CableRun(some, none, other)));
        Assert.Equal(["terminals", "change of cable", "far end"], Places(new CableRun(some, other)));
        Assert.Equal(["terminals", "first", "second", "far end"], Places(new CableRun(none, 
            new Joint("first", ElectricResistance.FromOhms(0.1)), new Joint("second", ElectricResistance.FromOhms(0.2)))));

        static string[] Places(CableRun run) => [.. SmallFault.Study(run, SmallFault.QuickActing(2)).Shorts.Select(s => s.Place)];
    }

    [Fact]
    public void WithoutAnyResistance_NothingBoundsAPoorShort()
    {
        var supply = new Supply("sheet", new DcOutput(Volts(12), ElectricCurrent.FromAmperes(20), Ratio.Zero, overload: OverloadBehavior.Unlimited), Derating.GenericEnclosed);
        Assert.Null(SmallFault.Study(SmallFault.Run(5), SmallFault.QuickActing(2), supply).AtTerminals.PoorShortPower);
    }

    // 99 m of 16 AWG (13.17 mΩ/m at 20 °C, NBS Handbook 100): 12/(0.06 + 2.608) = 4.50 A, 2.25 times a fuse F of 2 A: 26 min. In a large bundle (7 A for 35 K, FAA AC 43.13-1B) the wire
    // settles some 10 K warmer, at 4.33 A: still above 2.1 times. Without any heat that leaves it, it would be 100 K warmer in that time.
    // No way to lie is published for 8 AWG: 630 m at 4.5 A warm by 0.0015 K/s, some 2.3 K in those 26 min.
    [Theory]
    [InlineData(16, 99, 4.327)]
    [InlineData(8, 630, 4.477)]
    public void WhereNobodySaysHowItLies_TheHarshestPublishedWayCounts(int awg, double meters, double warm)
    {
        ShortCircuit fault = WarmingFaultTests.Short(null, meters, Cable.Pair(WireSize.Awg(awg), Stranding.Solid, ConductorMaterial.AnnealedCopper, insulation: Insulation.Pvc70));
        Assert.Equal(OperatingVerdict.Operates, fault.Verdict);
        Assert.Equal(4.5, fault.Smallest.Amperes, 0.03);
        Assert.Equal(warm, 4.2 * Math.Sqrt(1800 / fault.Opening.Latest!.Value.Seconds), 0.01);
    }

    // 8 AWG is larger than any wire of the table of cables: what is said of it is what its I²t says, 4 A for ever and more are not.
    [Fact]
    public void AMethodThatIsNotPublishedForASize_SaysNothingOfIt()
    {
        ShortCircuit fault = WarmingFaultTests.Short(InstallationMethod.InCableOrRaceway(2), 630,
            Cable.Pair(WireSize.Awg(8), Stranding.Solid, ConductorMaterial.AnnealedCopper, insulation: Insulation.Pvc70));
        Assert.Equal(OperatingVerdict.Operates, fault.Verdict);
        Assert.Equal(WithstandVerdict.Withstands, fault.WithstandVerdict);
        Assert.Null(fault.IfItLasts);
    }

    // 0.5 mm² in PVC withstand (115 × 0.5)² = 3306 A²s, 2.5 mm² 82 656 A²s (IEC 60364-4-43, Table 43A). A short at the hub, just behind which the thin one begins, heats that as well.
    [Fact]
    public void AtAJunction_TheCableThatBeginsThereCounts()
    {
        Site site = Hub();
        Assert.Equal(3306.25, ShortAt(site, "hub").Withstand!.Value.AmpereSquaredSeconds, 0.3);
        Assert.Equal(82656.25, ShortAt(site, "terminals").Withstand!.Value.AmpereSquaredSeconds, 10.0);
    }

    // Devices are connected where their run ends, not at a splice on the way.
    [Fact]
    public void ASplice_HasNoDevices()
    {
        Site site = Hub();
        Assert.Empty(ShortAt(site, "splice on the way to camera").Devices);
        Assert.Equal("camera", Assert.Single(ShortAt(site, "camera").Devices).Name);
    }

    // 4 m to the hub, 3 m to the splice, and 5 m more; another camera 6 m behind the hub, its negative back at the end of the first.
    [Fact]
    public void Distance_IsAlongTheRoute()
    {
        Site site = Hub();
        Assert.Equal([0, 4, 7, 12, 10], new[] { "terminals", "hub", "splice on the way to camera", "camera", "other" }.Select(p => Math.Round(ShortAt(site, p).Distance.Meters, 9)));
    }

    private static Site Hub()
    {
        Cable thin = SmallFault.Pair(0.5);
        CableRun spliced = new CableRun(thin, Length.FromMeters(3)).Then(new Joint("splice", ElectricResistance.FromOhms(0.02))).Then(new CableSegment(thin, Length.FromMeters(5)));
        return new Site("site", [Condition.Day(At())], [Box(SmallFault.QuickActing(2), OverloadBehavior.Unlimited)],
            [
                new SiteRun(RunOrigin.Output(BoxName, 1), "hub", SmallFault.Run(4, 2.5)),
                new SiteRun(RunOrigin.Junction("hub"), "camera", spliced),
                new SiteRun(RunOrigin.Junction("hub"), "other", SmallFault.Run(6), returnAt: "camera"),
            ],
            [new SiteDevice("camera", Camera(Amperes(0.1)), "camera"), new SiteDevice("other", Camera(Amperes(0.1)), "other")]);
    }

    private static OverloadBehavior Hiccup(double amperes, double milliseconds, double period) =>
        OverloadBehavior.Hiccup(ElectricCurrent.FromAmperes(amperes), Duration.FromMilliseconds(milliseconds), Duration.FromMilliseconds(period));
}
