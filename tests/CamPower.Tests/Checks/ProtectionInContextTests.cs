using System;
using System.Collections.Generic;
using System.Linq;
using CamPower.Checks;
using CamPower.Sites;
using CamPower.Tests.Protection;
using CamPower.Tests.Sites;
using UnitsNet;
using static CamPower.Tests.Sites.SmallSite;

namespace CamPower.Tests.Checks;

/// <summary>What protects opens later in the cold, a crest counts where it does harm, and what is stated is not asked for. Numbers by hand.</summary>
public class ProtectionInContextTests
{
    // 22 AWG of PVC carries 5.08 A in 40 °C: √(30/60) of its 6.98 A at 90 °C in 30 °C, at the resistances of either temperature; 1.45 times that are 7.37 A. A resettable fuse of 3.5 A
    // trips for certain from 7 A on in 20 °C, and from 1.37 × 7 = 9.59 A in −20 °C: in a cold box before a warm cable, not where either has its own season.
    [Theory]
    [InlineData(-20, 40, null, 9.59)]
    [InlineData(20, 40, null, null)]
    [InlineData(-20, -20, 40.0, null)]
    public void AResettableFuseInTheCold_OpensLater(double box, double cable, double? otherSeason, double? certain)
    {
        var run = new CableRun(Cable.Pair(WireSize.Awg(22), Stranding.Solid, ConductorMaterial.AnnealedCopper, insulation: Insulation.Pvc70), Length.FromMeters(1));
        List<Condition> conditions = [new("cold", LoadComponents.None, At(cable, box))];
        if (otherSeason is double warm) conditions.Add(new("warm", LoadComponents.None, At(warm, 20)));
        var site = new Site("site", conditions, [Box(protection: SmallDevices.Resettable(hold: 3.5, trip: 7))],
            [new SiteRun(RunOrigin.Output(BoxName, 1), "end", run, installationMethod: InstallationMethod.InCableOrRaceway(2))], [new SiteDevice("camera 1", Camera(Amperes(0.1)), "end")]);
        Finding? found = Found(Rules.ProtectionAboveConductorAmpacity, site).SingleOrDefault();
        Assert.Equal(certain, found is null ? null : Math.Round(((ElectricCurrent)found.Measured!).Amperes, 9));
        if (found is null) return;
        Assert.Equal("cold", found.Condition!.Name);
        Assert.Equal(7.37, ((ElectricCurrent)found.Limit!).Amperes, 0.03);
        Assert.Contains(" in air of -20 °C", found.Message, StringComparison.Ordinal);
    }

    // A supply that says that it pulses or shuts down has said what it does: what is not known is whether it does so within the inrush.
    [Theory]
    [InlineData("hiccup", "shortest time for which the supply holds its limit")]
    [InlineData("shutdown", "shortest time for which the supply holds its limit")]
    [InlineData(null, "overload behavior of the supply")]
    public void WhatIsStated_IsNotAskedFor(string? overload, string asked)
    {
        ElectricCurrent limit = ElectricCurrent.FromAmperes(3);
        OverloadBehavior? behavior = overload switch
        {
            "hiccup" => OverloadBehavior.Hiccup(limit, Duration.FromMilliseconds(50), Duration.FromSeconds(1)),
            "shutdown" => OverloadBehavior.Shutdown(limit, Duration.FromMilliseconds(50)),
            _ => null,
        };
        var supply = new Supply("supply", new DcOutput(Volts(12), ElectricCurrent.FromAmperes(2.5), Ratio.Zero, overload: behavior), Derating.GenericEnclosed);
        var holding = Camera(Amperes(0.5), starting: new Starting(Volts(9), Volts(8), softStart: true, holdUp: Duration.FromMilliseconds(5)));
        var charging = new Device("charging", DeviceKind.Camera, new ComponentDraw(Amperes(0.5)), Wide, starting: Starts(6, 5),
            inrush: new Inrush(ElectricCurrent.FromAmperes(8), Duration.FromMilliseconds(2)));
        Judgment judged = Star(Box(supply), [Condition.Day(At())], (0.1, holding), (0.1, charging)).Assess().Devices[0].Worst.DuringInrush;
        Assert.Equal((Verdict.Unknown, asked), (judged.Verdict, judged.NotStated));
    }

    // 24 V are a crest of 33.9 V, which a semiconductor rated for 30 V does not block; 28 V direct it does. A fuse is rated by the RMS.
    [Theory]
    [InlineData(24, CurrentKind.Ac, 30, true)]
    [InlineData(24, CurrentKind.Ac, 34, false)]
    [InlineData(28, CurrentKind.Dc, 30, false)]
    [InlineData(31, CurrentKind.Dc, 30, true)]
    public void AnElectronicLimit_IsRatedByTheCrest(double volts, CurrentKind kind, double rated, bool isFound)
    {
        var limit = new ElectronicLimit("limit", ElectricCurrent.FromAmperes(2), Ratio.FromPercent(10), Duration.FromMilliseconds(50), ElectricResistance.Zero, ElectricPotential.FromVolts(rated));
        Finding? found = Found(Rules.ProtectionVoltageRatingExceeded, Protected(limit)).SingleOrDefault();
        Assert.Equal(isFound, found is not null);
        if (found is not null) Assert.Equal(volts * (kind == CurrentKind.Ac ? Math.Sqrt(2) : 1), ((ElectricPotential)found.Measured!).Volts, 1e-9);
        Assert.Equal(kind == CurrentKind.Ac && isFound, found?.Message.Contains(" V at the crest; ", StringComparison.Ordinal) == true);
        Assert.Empty(Found(Rules.ProtectionVoltageRatingExceeded, Protected(SmallDevices.Fuse(FuseCharacteristic.IecQuickActing, 2, volts: 32))));

        Site Protected(ProtectiveDevice device) => Star(Box(Dc(volts, kind: kind), protection: device), [Condition.Day(At())],
            (0, new Device("model", DeviceKind.Camera, new ComponentDraw(Amperes(0.1)), Wide, Wide)));
    }

    // A start of 1.29 A on a fuse T of 1 A: below the 2.1 A that open it for certain (IEC 60127-2, from memory) it is not known whether the start is over before. Within 10 s it is.
    [Theory]
    [InlineData(1.29, null, Verdict.Unknown)]
    [InlineData(1.29, 10.0, Verdict.Holds)]
    [InlineData(2.2, null, Verdict.Violated)]
    [InlineData(0.99, null, Verdict.Holds)]
    public void AStartOfUnknownLength_IsUnknown(double amperes, double? seconds, Verdict verdict)
    {
        Fuse fuse = SmallDevices.Fuse(FuseCharacteristic.IecTimeLag, 1);
        var start = new Condition("start", LoadComponents.StartUp, At(), duration: seconds is double s ? Duration.FromSeconds(s) : null);
        Site site = Star(Box(protection: fuse), [start], (0, Camera(Amperes(amperes))));
        Judgment judged = site.Assess().StudyFaults()[0].InConditions[0].Load;
        Assert.Equal(verdict, judged.Verdict);
        Assert.Equal(verdict == Verdict.Unknown ? "duration of \"start\"" : null, judged.NotStated);
        Assert.Equal(verdict == Verdict.Violated ? 1 : 0, Found(Rules.NuisanceTrip, site).Count);
        var lasting = new Site("site", [new Condition("day", LoadComponents.None, At())], site.Boxes, site.Runs, site.Devices);
        Assert.Equal(amperes > 1 ? 1 : 0, Found(Rules.NuisanceTrip, lasting).Count);
    }

    // Illuminators alone draw from it, at night: by day it is energized all the same, in air of 75 °C, and is rated up to 70 °C (common practice, no source).
    [Fact]
    public void AnIdleSupply_IsInTheHeatToo()
    {
        Site site = Star(Box(), [Condition.Day(At(box: 75)), Condition.Night(At())], (0, Camera(new ComponentDraw(Load.None, infrared: Amperes(1)))));
        Assert.Equal("The air around it is at 75 °C in \"day\"; its supply is rated up to 70 °C.", Assert.Single(Found(Rules.SupplyTooHot, site)).Message);
    }

    // A plug of 10.5 V to 13.5 V (EIAJ RC-5320A class 4, from memory) on a supply of 12 V that is set to 14.4 V, and on one that is left as it is.
    [Theory]
    [InlineData(14.4, 14.4)]
    [InlineData(13.5, null)]
    [InlineData(10.4, 10.4)]
    public void ASetPoint_IsOutsideAConnectorsClassToo(double set, double? measured)
    {
        Connector plug = Connector.UnifiedBarrels.Single(c => c.VoltageClass!.HighestVolts.Equals(13.5));
        var output = new DcOutput(Volts(12), ElectricCurrent.FromAmperes(10), Ratio.Zero, trim: Range(10, 15), setPoint: Volts(set));
        Site site = Single(0, new Device("model", DeviceKind.Camera, new ComponentDraw(Amperes(0.1)), Wide, connector: plug), new Supply("supply", output, Derating.GenericEnclosed));
        Assert.Equal(measured, ((ElectricPotential?)Found(Rules.VoltageOutsideConnectorClass, site).SingleOrDefault()?.Measured)?.Volts);
    }

    // The lead that a camera comes with is up to 1 m (common practice, no source); a ready-made cable of 3 m is extended.
    [Theory]
    [InlineData(0.3, 0)]
    [InlineData(1.0, 0)]
    [InlineData(1.01, 1)]
    public void ThePigtailOfACamera_IsNoExtendedCable(double meters, int found)
    {
        var run = new CableRun(new CableSegment(CableCatalog.Pair18, Length.FromMeters(20)), new CableSegment(CableCatalog.ReadyMadeLead22, Length.FromMeters(meters)));
        var site = new Site("site", [Condition.Day(At())], [Box()], [new SiteRun(RunOrigin.Output(BoxName, 1), "end", run)], [new SiteDevice("camera 1", Camera(Amperes(0.1)), "end")]);
        Assert.Equal(found, Found(Rules.PreTerminatedCableExtended, site).Count);
    }

    // 57 W from 24 V through a bridge on 470 µF: 2.4 A for some 7 ms are 17 mAs, more than 470 µF × 34 V = 16 mAs hold. No cable is the cause, and there is no other device.
    [Fact]
    public void ARectifierThatRunsEmpty_IsToldSo()
    {
        var camera = new Device("model", DeviceKind.Camera, new ComponentDraw(Watts(57)), acInput: Range(20, 30), acStage: AcStage.FullWave(ElectricCapacitance.FromMicrofarads(470)));
        Finding found = Assert.Single(Found(Rules.NoOperatingPoint, Single(0.36, camera, Dc(24, kind: CurrentKind.Ac))));
        Assert.EndsWith(" in \"day\"; the capacitor of its AC input runs empty between two crests.", found.Message, StringComparison.Ordinal);
        Assert.DoesNotContain("conductor", found.Remedy, StringComparison.Ordinal);
    }

    // 24 V and 10 % are 26.4 V, above the 26 V of a camera: no transformer can be set lower.
    [Fact]
    public void ATransformer_IsNotSetLower()
    {
        var camera = new Device("model", DeviceKind.Camera, new ComponentDraw(Amperes(0.01)), acInput: Range(20, 26));
        Finding found = Assert.Single(Found(Rules.OvervoltageAtLightLoad, Single(0.1, camera, Dc(24, percent: 10, kind: CurrentKind.Ac))));
        Assert.StartsWith("Do not energize. Use a transformer of a lower voltage", found.Remedy, StringComparison.Ordinal);
    }

    // Two runs of 14 AWG, 2 × 2.08 mm² (ASTM B258), in terminals for one (NEC 110.14(A), from memory: one conductor a terminal unless it is marked for more); two of 18 AWG, 1.65 mm², go in.
    [Theory]
    [InlineData(14, 2, 4.16)]
    [InlineData(18, 2, null)]
    [InlineData(14, 1, null)]
    public void TwoRunsInOneTerminal_CountTogether(int gauge, int runs, double? squareMillimeters)
    {
        var terminals = new TerminalRange(WireSize.Awg(24), WireSize.Awg(14));
        DistributionBox box = DistributionBox.OfEqualOutputs(BoxName, Dc(), 2, ElectricCurrent.FromAmperes(3), terminals: terminals);
        var run = new CableRun(Cable.Pair(WireSize.Awg(gauge), Stranding.Solid, ConductorMaterial.AnnealedCopper), Length.FromMeters(1));
        var site = new Site("site", [Condition.Day(At())], [box], Enumerable.Range(1, runs).Select(n => new SiteRun(RunOrigin.Output(BoxName, 1), $"end {n}", run)),
            Enumerable.Range(1, runs).Select(n => new SiteDevice($"camera {n}", Camera(Amperes(0.1)), $"end {n}")));
        Finding? found = Found(Rules.TerminalWrongSize, site).SingleOrDefault();
        Assert.Equal(squareMillimeters is null, found is null);
        if (found is null) return;
        Assert.Equal(("box output 1", squareMillimeters!.Value), (found.About.Name, Math.Round(((Area)found.Measured!).SquareMillimeters, 2)));
    }

    // A resettable fuse in −20 °C states a time at 1.37 × 17.5 A = 24 A alone. A short at the terminals draws that, and 24² × 1.5 A²s = 864 A²s are less than the 1400 A²s of 22 AWG in PVC
    // (115² × 0.326², IEC 60364-4-43); the 19 A at the far end have no time at all. That one is told, and no size that is there already is its remedy.
    [Fact]
    public void TheShortThatHeatsMost_IsTold()
    {
        var fuse = new ResettableFuse("fuse", ElectricCurrent.FromAmperes(3.5), ElectricCurrent.FromAmperes(7), ElectricCurrent.FromAmperes(17.5), Duration.FromSeconds(1.5), ElectricResistance.FromMilliohms(20),
            ElectricResistance.FromMilliohms(50), ResettableFuse.GenericThermal, Volts(30), ElectricCurrent.FromAmperes(40), Power.FromWatts(1));
        var supply = new Supply("supply", new DcOutput(Volts(24), ElectricCurrent.FromAmperes(20), Ratio.FromPercent(1), sourceResistance: ElectricResistance.FromMilliohms(20),
            overload: OverloadBehavior.ConstantCurrent(ElectricCurrent.FromAmperes(24)), capacitance: ElectricCapacitance.FromMicrofarads(2200)), Derating.GenericEnclosed);
        var run = new CableRun(Cable.Pair(WireSize.Awg(22), Stranding.ClassB, ConductorMaterial.AnnealedCopper, insulation: Insulation.Pvc70), Length.FromMeters(10));
        var site = new Site("site", [Condition.Day(At(40, -20))], [Box(supply, protection: fuse)],
            [new SiteRun(RunOrigin.Output(BoxName, 1), "end", run, installationMethod: InstallationMethod.InCableOrRaceway(2))], [new SiteDevice("camera 1", Camera(Watts(20)), "end")]);
        Finding found = Assert.Single(Found(Rules.LetThroughAboveConductorWithstand, site));
        Assert.StartsWith("A short at end draws up to ", found.Message, StringComparison.Ordinal);
        Assert.DoesNotContain("22 AWG", found.Remedy, StringComparison.Ordinal);
    }

    private static IReadOnlyList<Finding> Found(Rule rule, Site site) => [.. rule.Check(new Evidence(site.Assess()))];
}
