using System;
using System.Collections.Generic;
using System.IO;
using CamPower.Files;
using CamPower.Tests.Repository;
using UnitsNet;

namespace CamPower.Reports.Tests;

/// <summary>Sites and runs to report on. Invented.</summary>
internal static class Samples
{
    internal static Cable EighteenAwg { get; } = Pair(18, ConductorMaterial.AnnealedCopper);

    internal static VoltageRange Window { get; } = new(Volts(10.8), Volts(13.2));

    internal static Temperature Warm { get; } = Temperature.FromDegreesCelsius(40);

    internal static Load NineWatts { get; } = Load.ConstantPower(Power.FromWatts(9));

    /// <summary>150 ft, a splice and 30 ft more.</summary>
    internal static CableRun SplicedRun { get; } = new CableRun(EighteenAwg, Length.FromFeet(150))
        .Then(new Joint("splice", ElectricResistance.FromMilliohms(150)))
        .Then(new CableSegment(Pair(20, ConductorMaterial.AnnealedCopper), Length.FromFeet(30)));

    internal static Fuse TwoAmpereFuse { get; } = new("F2AL", ElectricCurrent.FromAmperes(2), FuseCharacteristic.IecQuickActing, Volts(250),
        Fuse.IecLowBreakingCapacity(ElectricCurrent.FromAmperes(2)), ElectricResistance.FromMilliohms(50));

    internal static FaultStudy ShortsOnSplicedRun { get; } = ShortsBehind(TwoAmpereFuse);

    internal static Cable[] FiveCables { get; } =
    [
        Pair(20, ConductorMaterial.AnnealedCopper), EighteenAwg, Pair(18, ConductorMaterial.CopperCladAluminum15),
        Pair(16, ConductorMaterial.AnnealedCopper), Pair(14, ConductorMaterial.AnnealedCopper),
    ];

    /// <summary>Every kind of chart.</summary>
    internal static IReadOnlyDictionary<string, Chart> Charts()
    {
        SiteAssessment yard = Read("boatyard").Assess();
        RunResult fed = SplicedRun.Feed(NineWatts, Volts(12), Warm);
        return new Dictionary<string, Chart>(StringComparer.Ordinal)
        {
            ["volts-along-a-run"] = Chart.VoltageAlong(fed, Window),
            ["volts-along-an-output"] = Chart.VoltageAlong([yard.Devices[10].Worst, yard.Devices[0].Worst]),
            ["volts-against-length"] = Chart.VoltageAgainstLength(FiveCables, NineWatts, Volts(12), Warm, Length.FromFeet(400), Window),
            ["output-load"] = Chart.OutputLoad(yard.Boxes[0]),
            ["one-line"] = OneLine("boatyard", 1),
            ["one-line-as-found"] = OneLine("boatyard-as-found", 0),
            ["device-volts"] = Chart.DeviceVolts(yard, yard.Boxes[0]),
            ["load-line"] = Chart.LoadLine(fed),
            ["load-line-without-an-operating-point"] = Chart.LoadLine(SplicedRun.Feed(Load.ConstantPower(Power.FromWatts(30)), Volts(12), Warm)),
            ["opening-times-fuse"] = Chart.OpeningTimes(TwoAmpereFuse, Warm, [ShortsOnSplicedRun.AtTerminals, ShortsOnSplicedRun.AtFarEnd]),
            ["opening-times-resettable"] = Chart.OpeningTimes(ResettableFuse.Generic16Volt[1], Warm, ShortsBehind(ResettableFuse.Generic16Volt[1]).Shorts),
        };
    }

    internal static Chart OneLine(string site, int box)
    {
        SiteAssessment assessment = Read(site).Assess();
        return Chart.OneLine(assessment, assessment.Boxes[box], RuleSet.Standard.Check(assessment));
    }

    internal static Site Read(string site) => SiteFile.Read(Text(site)).Site!;

    internal static string Text(string site) => File.ReadAllText(RepositoryFiles.PathOf($"samples/SiteCheck/sites/{site}.json"));

    internal static SiteReport Report(Site site)
    {
        SiteAssessment assessment = site.Assess();
        return new SiteReport(assessment, RuleSet.Standard.Check(assessment));
    }

    internal static ElectricPotential Volts(double volts) => ElectricPotential.FromVolts(volts);

    private static FaultStudy ShortsBehind(ProtectiveDevice device) => new(SplicedRun,
        new Supply("12 V, 20 A", new DcOutput(Volts(12), ElectricCurrent.FromAmperes(20), Ratio.FromPercent(2), sourceResistance: ElectricResistance.FromMilliohms(100),
            overload: OverloadBehavior.ConstantCurrent(ElectricCurrent.FromAmperes(22))), Derating.GenericEnclosed),
        device, [new Surroundings(Temperature.FromDegreesCelsius(-10), Warm, Warm), new Surroundings(Temperature.FromDegreesCelsius(60), Warm, Warm)]);

    private static Cable Pair(int awg, ConductorMaterial material) => Cable.Pair(WireSize.Awg(awg), Stranding.ClassB, material);
}
