using System;
using System.Collections.Generic;
using System.Linq;
using CamPower.Conductors;
using CamPower.Tests.Assessment.Returns;
using CamPower.Tests.Backup;
using CamPower.Tests.Protection;
using CamPower.Tests.Mains;
using CamPower.Tests.Sites;
using CamPower.Tests.Supplies;
using UnitsNet;
using static CamPower.Tests.Sites.SmallSite;

namespace CamPower.Tests.Checks;

/// <summary>For every rule a small site that it speaks of and a neighbor a hair inside the limit. The numbers are worked out by hand.</summary>
internal static class RuleCases
{
    private const double Hair = 1e-6, Sqrt2 = 1.4142135623730951;

    // 12 V, 2.6 Ω, 12.5 W: (12 ± √14)/2.
    private const double Settles = 7.870828693386971, Unstable = 4.129171306613029;

    private const double HalfDraw = 12 * 5 / (0.85 * 0.95 * 120);

    private static readonly Condition Day = Condition.Day(At()), Night = Condition.Night(At()), Warm = Condition.Night(At(box: 60));

    internal static IReadOnlyList<RuleCase> All { get; } =
    [
        new("ac-into-dc-device", Severity.Danger, AcCamera(acceptsAc: false), DcCamera(acceptsDc: true), "camera 1"),
        new("dc-into-ac-device", Severity.Failure, DcCamera(acceptsDc: false), DcCamera(acceptsDc: true), "camera 1"),
        new("mixed-voltages-in-one-cabinet", Severity.Caution, Banks(24, CurrentKind.Dc, isShared: true), Banks(12, CurrentKind.Dc, isShared: true), "cabinet"),
        new("supply-voltage-too-high", Severity.Danger, TooHigh(13.2 + Hair), TooHigh(13.2), "camera 1", 13.2 + Hair, 13.2),

        // 3 Ω carries 12²/(4·3) = 12 W.
        new("no-operating-point", Severity.Failure, Infrared(3, 12 + Hair), Infrared(3, 12 - Hair), "camera 1", 12 + Hair, 12, "W", "night"),
        new("unloaded-voltage-below-turn-on", Severity.Failure, Started(0, 6, 12 + Hair, 5), Started(0, 6, 12, 5), "camera 1", 12, 12 + Hair, Condition: "night"),
        new("settles-below-drop-out", Severity.Failure, Started(2.6, 12.5, 9.5, Settles + Hair), Started(2.6, 12.5, 9.5, Settles - Hair), "camera 1",
            Settles, Settles + Hair, Condition: "night"),
        new("turn-on-below-unstable-voltage", Severity.Failure, Started(2.6, 12.5, Unstable - Hair, 3), Started(2.6, 12.5, Unstable + Hair, 3), "camera 1",
            Unstable - Hair, Unstable, Condition: "night"),

        // 10 W over 2 Ω leave (12 + √(144 − 80))/2 = 10 V.
        new("undervoltage", Severity.Failure, Windowed(2, 10, 10 + Hair, 60), Windowed(2, 10, 10 - Hair, 60), "camera 1", 10, 10 + Hair, Condition: "night"),

        // The base of 0.1 A over 2 Ω leaves 13 V of 13.2 V.
        new("overvoltage-at-light-load", Severity.Danger, LightLoad(13 - Hair), LightLoad(13 + Hair), "camera 1", 13, 13 - Hair),

        // 12 V and 10 %, which its own draw brings down to 13 V.
        new("overvoltage-at-no-load", Severity.Caution, LightLoad(13.2 - Hair), LightLoad(13.2 + Hair), "camera 1", 13.2, 13.2 - Hair),

        // 12 V at 5 A are the 60 VA that an inherently limited source of 12 V may give: 5 VA a volt, IEC 60950-1 Table 2B.
        new("power-limit-exceeded", Severity.Failure, Limited(5 + Hair), Limited(5), "box output 1", 60 + (12 * Hair), 60, "VA"),
        new("reversed-polarity", Severity.Danger, Polarized(leadsReversed: true), Polarized(leadsReversed: false), "camera 1"),

        // IEC 61140: 120 V DC; 80 V and 50 % are that. IEC 60335-1, 3.4.2: 60 V DC; 40 V and 50 % are that.
        new("voltage-above-extra-low", Severity.Danger, Feeding(Dc(80 + Hair, percent: 50)), Feeding(Dc(80, percent: 50)), "box", 120 + (1.5 * Hair), 120),
        new("voltage-above-accessible", Severity.Caution, Feeding(Dc(40 + Hair, percent: 50)), Feeding(Dc(40, percent: 50)), "box", 60 + (1.5 * Hair), 60),

        // 12 V and 5 % over 12 V less 5 %.
        new("outputs-tied-together", Severity.Danger, Tied(new OutputTie("box", 2, "old adapter", 1)), Tied(), "box output 2", 1.2, 0),

        // 18 AWG of 60 °C in a cable in 40 °C air carries 8.485 A (θ = 60/(14²·0.026711)) and 5.6 A continuously (NEC 240.4(D)(1), from memory).
        new("conductor-over-ampacity", Severity.Danger, OnCable(5.6 + Hair), OnCable(5.6 - Hair), "box output 1 to end", 5.6 + Hair, 5.6, "A", "night"),

        // A 5 A fuse is the most for 20 AWG (FAA AC 43.13-1B Table 11-3).
        new("protection-above-conductor-ampacity", Severity.Danger, Fused(5 + Hair), Fused(5), "box output 1", 5 + Hair, 5, "A"),

        // 433.1 of IEC 60364-4-43, from memory: 1.45 times the limit.
        new("protection-above-output-limit", Severity.Caution, OnWeakOutput((2 / 1.45) - Hair), OnWeakOutput(2 / 1.45), "box output 1", 2, 2 - (1.45 * Hair), "A"),

        // NEC 450.3(B), from memory: 167 % below 9 A.
        new("supply-not-protected", Severity.Failure, BehindWinding(1.67 + Hair), BehindWinding(1.67), "box", 1.67 + Hair, 1.67, "A"),

        // 1 A through 2 Ω.
        new("joint-overloaded", Severity.Caution, WarmJoint(2 + Hair), WarmJoint(2), "box output 1 to place 1", 2 + Hair, 2, "W", "night"),
        new("connector-overloaded", Severity.Failure, Plugged(2 + Hair, Connector.UnifiedBarrels[2]), Plugged(2, Connector.UnifiedBarrels[2]), "camera 1", 2 + Hair, 2, "A", "night"),

        // EIAJ RC-5320A class 4 ends at 13.5 V.
        new("voltage-outside-connector-class", Severity.Caution, Plugged(1, Connector.UnifiedBarrels[2], 13.5 + Hair), Plugged(1, Connector.UnifiedBarrels[2], 13.5), "camera 1",
            13.5 + Hair, 13.5),

        // 12 AWG is 3.309 mm² (ASTM B258).
        new("terminal-wrong-size", Severity.Caution, Landed(12), Landed(14), "box output 1 to end", 3.308772876, 2.080907717, "mm²"),

        // 20 A in 18 AWG of PVC in a cable settle near 170 °C, 10 A near 43 °C: see LastingFaultTests.
        new("protection-missing", Severity.Danger, Guarded(ProtectiveDevice.None, 20), Guarded(ProtectiveDevice.None, 10), "box output 1"),
        new("protection-voltage-rating-exceeded", Severity.Danger, Guarded(Quick(2, volts: 12 - Hair)), Guarded(Quick(2, volts: 12)), "box output 1", 12, 12 - Hair),

        // 12 V behind 0.1 Ω.
        new("breaking-capacity-exceeded", Severity.Danger, Guarded(Quick(2, breaking: 120 - Hair)), Guarded(Quick(2, breaking: 120)), "box output 1", 120, 120 - Hair, "A"),

        // A fuse of 7 A (UL 248-14) may take 2 min at 25 A, and 18 AWG has no steady temperature there; one of 5 A (IEC 60127-2 F) 0.3 s.
        new("let-through-above-conductor-withstand", Severity.Danger, Guarded(SmallDevices.Fuse(FuseCharacteristic.UlFast, 7), 28), Guarded(Quick(5), 28), "box output 1"),

        // A fuse F of 2 A opens for certain from 4.2 A on, and in 30 min then.
        new("short-may-not-be-interrupted", Severity.Note, Guarded(Quick(2), 4.2 - Hair), Guarded(Quick(2), 4.2 + Hair), "box output 1", 4.2 - Hair, Unit: "A"),
        new("nuisance-trip", Severity.Failure, Guarded(Quick(1), drawn: 1 + Hair), Guarded(Quick(1), drawn: 1), "box output 1", 1 + Hair, 1, "A", "night"),
        new("output-overloaded", Severity.Failure, OnOutput(1, 1 - Hair), OnOutput(1, 1), "box output 1", 1, 1 - Hair, "A", "night"),

        // The generic curve ends at 70 °C (common practice, no source).
        new("supply-too-hot", Severity.Failure, AtBox(70 + Hair), AtBox(70), "box", 70 + Hair, 70, "°C", "day"),

        // The generic curve begins at -20 °C (common practice, no source).
        new("supply-too-cold", Severity.Failure, AtBox(-20 - Hair), AtBox(-20), "box", -20 - Hair, -20, "°C", "day"),
        // The model is good to a quarter of the rise (common practice, no source): a supply that is rated to run up to a quarter of the rise above what is worked out.
        new("thin-heat-margin", Severity.Caution, NearlyTooHot(-Hair), NearlyTooHot(Hair), "box", WarmBox.Inside.DegreesCelsius, WarmBox.Inside.DegreesCelsius - Hair, "°C", "day"),
        new("enclosure-temperature-unknown", Severity.Note, Enclosed(0.1, isEfficiencyDeclared: false), Enclosed(0.1, isEfficiencyDeclared: true), "box"),

        // All of it is declared of the neighbor.
        new("faults-unknown", Severity.Note, OnOutput(1, 50), Neighbors(Quick(0.85)), "site"),

        // A range ends where its label says.
        new("receptacle-voltage-outside-supply-range", Severity.Danger, OnLine(120 - Hair), OnLine(120), "box", 120, 120 - Hair, Condition: "day"),

        // 12 V and 5 A at 85 % and a power factor of 0.95 take 0.6192 A at 120 V; 80 % of the rating may be plugged in.
        new("receptacle-overloaded", Severity.Failure, Receptacles.Plugged(5, Receptacles.Sheet(), (HalfDraw / 0.8) - Hair), Receptacles.Plugged(5, Receptacles.Sheet(), (HalfDraw / 0.8) + Hair),
            "receptacle", HalfDraw, HalfDraw - (0.8 * Hair), "A", "day"),

        // Two of them on receptacles of their own, of 15 A: 80 % of the breaker's rating may be drawn.
        new("breaker-overloaded", Severity.Failure, TwoOnBreaker((2 * HalfDraw / 0.8) - Hair), TwoOnBreaker((2 * HalfDraw / 0.8) + Hair),
            "breaker", 2 * HalfDraw, (2 * HalfDraw) - (0.8 * Hair), "A", "day"),
        new("ground-loop-hum-unknown", Severity.Note, Hum(null), Hum(0), "returns"),
        new("receptacle-load-unknown", Severity.Note, Receptacles.Plugged(1, Dc().WithEfficiency(0.9)), Receptacles.Plugged(1, Receptacles.Sheet()), "receptacle", Condition: "day"),

        // 16 A of type B hold 48 A, a crest of 67.88 A (IEC 60898-1, from memory).
        new("start-may-trip-breaker", Severity.Note, Breakers.On(Breakers.B16, peak: (48 * Sqrt2) + Hair), Breakers.On(Breakers.B16, peak: 48 * Sqrt2), "breaker", 48 + (Hair / Sqrt2), 48, "A"),

        // 30 % of 30 mA are 9 mA (IEC 60364-5-53, from memory).
        new("leakage-may-trip-residual-device", Severity.Caution, Breakers.On(Breakers.B16, leakage: 0.009 + Hair), Breakers.On(Breakers.B16, leakage: 0.009), "breaker", 0.009 + Hair, 0.009, "A"),

        // 12 V and 5 A at 85 % are 70.59 W.
        new("uninterruptible-supply-overloaded", Severity.Failure, UninterruptibleTests.Behind(UninterruptibleTests.Unit(watts: (60 / 0.85) - Hair), 5),
            UninterruptibleTests.Behind(UninterruptibleTests.Unit(watts: 60 / 0.85), 5), "unit", 60 / 0.85, (60 / 0.85) - Hair, "W", "day"),

        // At those watts it runs for a minute, and for 48 s with 80 % of its battery.
        new("uninterruptible-runtime-too-short", Severity.Failure, UninterruptibleTests.Behind(UninterruptibleTests.ForAMinute(60 / 0.85, 60 + Hair), 5),
            UninterruptibleTests.Behind(UninterruptibleTests.ForAMinute(60 / 0.85, 48), 5), "unit", 60, 60 + Hair, "s", "day"),

        // A 12.5 A supply gives 9.375 A at 60 °C by the generic curve (common practice, no source).
        new("supply-above-derated-rating", Severity.Failure, Loaded(9.375 + Hair, 12.5, Warm), Loaded(9.375, 12.5, Warm), "box", 9.375 + Hair, 9.375, "A", "night"),
        new("split-adapter-beyond-rating", Severity.Failure, Split(1 + Hair), Split(1), "box", 2 + (2 * Hair), 2, "A", "night"),

        // 76.8 W in 8 cameras: 6.4 A at 12 V, 12.8 A at the 6 V from which they start.
        new("start-beyond-supply-limit", Severity.Failure, Starting(12.7), Starting(12.9), "box", 12.8, 12.7, "A", "night"),

        // 8 A at 80 % loading want a 10 A supply (common practice, no source).
        new("supply-above-headroom-policy", Severity.Caution, Loaded(8 + Hair, 10, Night), Loaded(8, 10, Night), "box", 8 + Hair, 8, "A", "night"),

        // A supply that holds 9 A opens a fuse F of 2 A within 0.3 s, one of 0.85 A within 20 ms, beside the 0.1 A of the other camera as well.
        new("short-collapses-supply-voltage", Severity.Caution, Neighbors(Quick(2)), Neighbors(Quick(0.85)), "box", Condition: "night"),

        // 8 A of 12 V are 1.5 Ω: behind 1 Ω and beside 0.5 A 6.9 V for 2 ms · 8/4.6.
        new("inrush-below-drop-out", Severity.Caution, Dipped(0.016 / 4.6 - Hair), Dipped((0.016 / 4.6) + Hair), "camera 1", 0.016 / 4.6, (0.016 / 4.6) - Hair, "s", "day"),

        // 75 % of 4 A (common practice); a fuse to IEC 60127 carries its rating.
        new("fuse-above-continuous-policy", Severity.Caution, Guarded(Blade(4), drawn: 3 + Hair), Guarded(Blade(4), drawn: 3), "box output 1", 3 + Hair, 3, "A", "night"),

        // 2 % above 10 V is 10.2 V: what 1 A over 1.8 Ω leaves.
        new("thin-voltage-margin", Severity.Caution, ThinAt(1.8 + Hair), ThinAt(1.8 - Hair), "camera 1", 10.2 - Hair, 10.2, Condition: "night"),
        new("more-cameras-than-outputs", Severity.Caution, Many(DeviceKind.Camera), Many(DeviceKind.Other), "box", 3, 2, ""),
        new("recorder-on-camera-output", Severity.Caution, Recorder(isBesideCamera: true), Recorder(isBesideCamera: false), "camera 1"),
        new("pre-terminated-cable-extended", Severity.Caution, Lead(extended: true), Lead(extended: false), "box output 1 to end"),
        new("copper-clad-aluminum", Severity.Caution, Of(ConductorMaterial.CopperCladAluminum15), Of(ConductorMaterial.AnnealedCopper), "box output 1 to end"),

        // A third of 1 A along 0.9 Ω is 0.3 V: 10 mV are a thirtieth of it.
        new("ground-loop-hum", Severity.Caution, Hum(3.3334), Hum(3.3333), "camera 1", 0.0100002, 0.01, Condition: "day"),
        new("mixed-resistance-bases", Severity.Note, Tail(ofTable: true), Tail(ofTable: false), "box output 1 to end"),
        new("sun-on-box-without-enclosure", Severity.Note, Sunlit(Hair), Sunlit(0), "box", Condition: "day"),
        new("value-outside-validated-range", Severity.Caution, Enclosed(0.1 - Hair, isNearlyTooHot: true), Enclosed(0.1, isNearlyTooHot: true), "box", 0.1 - Hair, 0.1, "m"),
        new("ac-input-not-stated", Severity.Note, AcCamera(acceptsAc: true), Powered(CurrentKind.Ac, acceptsAc: true, acceptsDc: true, AcStage.Resistive), "camera 1"),

        // 24 V over 1 Ω, 1 Ω and 1 Ω of half loops and shields: as half-waves through a diode 33.9 V/(2 x 3 Ω) less its drop.
        new("rectifiers-share-a-common", Severity.Danger, Joined(AcStage.HalfWave()), Joined(AcStage.FullWave()), "a", JoinedAmperes, 0, "A"),

        // 12 V behind 0.1 Ω.
        new("battery-fuse-missing", Severity.Danger, Backed(ProtectiveDevice.None), Backed(), "box", 120, Unit: "A"),
        new("battery-fuse-rating-exceeded", Severity.Danger, Backed(DcFuse(120 - Hair)), Backed(DcFuse(150)), "box", 120, 120 - Hair, "A"),
        new("battery-charged-too-cold", Severity.Danger, Backed(coldestCharging: 25 + Hair), Backed(coldestCharging: 25), "box", 25, 25 + Hair, "°C", "night"),

        // The charger gives 12 V. An IEC 60127-2 fuse carries its rating.
        new("battery-charged-too-hard", Severity.Danger, Backed(highestCharging: 12 - Hair), Backed(highestCharging: 12), "box", 12, 12 - Hair),
        new("battery-cut-off-too-low", Severity.Caution, Backed(cutOff: 0.5 - Hair), Backed(cutOff: 0.5), "box", 0.5 - Hair, 0.5),
        new("battery-fuse-may-open", Severity.Failure, Backed(SixAmpereFuse, charging: 6.3 + Hair), Backed(SixAmpereFuse, charging: 6.3), "box", 6.3 + Hair, 6.3, "A"),

        // 12 W from 12 V through 1 mΩ are 1.0001 A; through the 0.1 Ω of the battery as well 1.0086 A.
        new("output-overloaded-on-battery", Severity.Failure, Backed(watts: 12, limit: TwelveWattsOnBattery - Hair), Backed(watts: 12, limit: TwelveWattsOnBattery + Hair),
            "box output 1", TwelveWattsOnBattery, TwelveWattsOnBattery - Hair, "A", "night"),

        // 12 V to 6 V less 1 A through 0.101 Ω: 9 V with 3.101/6 of the charge, of 3.6 s.
        new("undervoltage-on-battery", Severity.Caution, Backed(wanted: 1.7394 + Hair, empty: 6, accepts: 9), Backed(wanted: 1.7394 - Hair, empty: 6, accepts: 9),
            "box", 1.7394, 1.7394 + Hair, "s", "night"),

        // 2 % below a float voltage of 12.2449 V is 12 V (common practice, no source).
        new("float-voltage-wrong", Severity.Failure, Backed(floating: (12 + Hair) / 0.98), Backed(floating: (12 - Hair) / 0.98), "box", 12, 12 + Hair),

        // 1 A from 1 mAh: 3.6 s new, 2.88 s with 80 % of the capacity (IEEE 485, from memory).
        new("battery-backup-too-short", Severity.Failure, Backed(wanted: 3.6 + Hair), Backed(wanted: 3.6), "box", 3.6, 3.6 + Hair, "s", "night"),
        new("thin-battery-backup", Severity.Caution, Backed(wanted: 2.88 + Hair), Backed(wanted: 2.88), "box", 2.88, 2.88 + Hair, "s", "night"),

        // 1 A of a reserve. A diode that loses 0.5 V at 100 A loses 1.05·kT/q·ln 100 less at 1 A: the main supply then gives 12 V as the reserve does.
        new("reserve-does-not-carry-load", Severity.Failure, Doubled(reserveAmperes: 1 - Hair), Doubled(reserveAmperes: 1), "box", 1, 1 - Hair, "A", "night"),
        new("reserve-carries-in-service", Severity.Note, Doubled(BesideTwelveVolts - Hair), Doubled(BesideTwelveVolts + Hair), "box", 12 - Hair, 12, "V", "night"),

        // 1 A beside what charges the battery, of 100 A.
        new("charging-above-derated-rating", Severity.Caution, Backed(charging: 99 + Hair), Backed(charging: 99), "box", 100 + Hair, 100, "A"),
    ];

    // A bank of 12 V DC, with another one beside it or in a cabinet of its own.
    internal static Site Banks(double volts, CurrentKind kind, bool isShared)
    {
        var enclosure = new Enclosure(Length.FromMeters(0.3), Length.FromMeters(0.4), Length.FromMeters(0.15), EnclosureWall.PaintedSteel, EnclosureFaces.OnWall);
        Cabinet cabinet = new("cabinet", enclosure), other = isShared ? cabinet : new("other cabinet", enclosure);
        DistributionBox Bank(string name, Supply supply) => DistributionBox.OfEqualOutputs(name, supply.WithEfficiency(0.9), 4, ElectricCurrent.FromAmperes(1));
        return new Site("site", [Day], [Bank("bank A", Dc()).WithCabinet(cabinet), Bank("bank B", Dc(volts, kind: kind)).WithCabinet(other)], [], []);
    }

    // A receptacle of 120 V, and a supply for 100 V and more.
    private static Site TwoOnBreaker(double amperes)
    {
        var breaker = CircuitBreaker.TypeC("breaker", ElectricCurrent.FromAmperes(amperes));
        Receptacle On(int number) => new($"receptacle {number}", Volts(120), ElectricCurrent.FromAmperes(15), breaker: breaker);
        return Receptacles.Boxes((On(1), 5), (On(2), 5));
    }

    private static Site OnLine(double highest)
    {
        Supply sheet = Receptacles.Sheet();
        return Receptacles.Plugged(1, new Supply("supply", sheet.Output, sheet.Derating,
            new SupplyInput(Range(100, highest), efficiency: sheet.Input!.Efficiency, powerFactor: sheet.Input.PowerFactor)));
    }

    private static Site Hum(double? ripplePercent) => ReturnSites.Of([ReturnSites.Box("a", 12, ripplePercent)], [ReturnSites.Run("a", 1, "1", 1.0)],
        [ReturnSites.Amperes(1, 1)], [ReturnSites.Link(1, "g", 0.9)], [ReturnSites.Bond("g", "a", 0.1)]);

    private static Site Sunlit(double wattsPerSquareMeter) => Single(0, Camera(Watts(3)), null,
        Condition.Day(new Surroundings(At().Cable, At().Box, At().Camera, Irradiance.FromWattsPerSquareMeter(wattsPerSquareMeter))));

    private static Site AcCamera(bool acceptsAc) => Powered(CurrentKind.Ac, acceptsAc, acceptsDc: true);

    private static Site DcCamera(bool acceptsDc) => Powered(CurrentKind.Dc, acceptsAc: true, acceptsDc);

    // What a diode of 1 V at 10 A leaves of it, to a hair; the kernel's own tests hold the number to a transient.
    private static double JoinedAmperes => ((ElectricCurrent)Joined(AcStage.HalfWave()).Assess().Boxes[0].ThroughJoinedCommons.Value!).Amperes;

    private static Site Joined(AcStage second) => ReturnSites.Of([ReturnSites.Box("a", 24, kind: CurrentKind.Ac)],
        [ReturnSites.Run("a", 1, "1", 2), ReturnSites.Run("a", 2, "2", 2)], [OnAc(1, AcStage.FullWave()), OnAc(2, second)],
        [ReturnSites.Link(1, "g", 0.5), ReturnSites.Link(2, "g", 0.5)]);

    private static SiteDevice OnAc(int number, AcStage stage) => new($"camera {number}",
        new Device("model", DeviceKind.Camera, new ComponentDraw(Watts(3)), acInput: Wide, acStage: stage), $"{number}");

    private static Site Powered(CurrentKind kind, bool acceptsAc, bool acceptsDc, AcStage? stage = null) => Single(1,
        new Device("model", DeviceKind.Camera, new ComponentDraw(Watts(3)), acceptsDc ? Wide : null, acceptsAc ? Wide : null, acStage: stage), Dc(kind: kind), Day, Night);

    private static Site Polarized(bool leadsReversed) => new("site", [Day], [Box()],
        [new SiteRun(RunOrigin.Output(BoxName, 1), "end", Runs.OfOhms(0.1))], [new SiteDevice("camera 1", Camera(Watts(3)), "end", leadsReversed)]);

    private static Site Feeding(Supply supply) => Single(0, Camera(Watts(3), Range(2, 200)), supply);

    private static Site Tied(params OutputTie[] ties) => new("site", [Day], [Box(Dc(percent: 5)), DistributionBox.Adapter("old adapter", Dc(percent: 5))],
        [new SiteRun(RunOrigin.Output(BoxName, 1), "end", Runs.OfOhms(0.1))], [new SiteDevice("camera 1", Camera(Watts(3)), "end")], ties: ties);

    private static Site OnCable(double amperes) => new("site", [Condition.Day(At(40)), Condition.Night(At(40))], [Box()],
        [new SiteRun(RunOrigin.Output(BoxName, 1), "end", new CableRun(Pair(ConductorMaterial.AnnealedCopper), Length.FromMeters(1)))],
        [new SiteDevice("camera 1", Camera(AtNight(amperes: amperes)), "end")]);

    private static Site Fused(double amperes)
    {
        var fuse = new Fuse("fuse", ElectricCurrent.FromAmperes(amperes), FuseCharacteristic.Blade, Volts(32), ElectricCurrent.FromAmperes(1000), ElectricResistance.Zero);
        Cable thin = Cable.Pair(WireSize.Awg(20), Stranding.Solid, ConductorMaterial.AnnealedCopper);
        return new Site("site", [Day], [DistributionBox.OfEqualOutputs(BoxName, Dc(), 2, ElectricCurrent.FromAmperes(4), protection: fuse)],
            [new SiteRun(RunOrigin.Output(BoxName, 1), "end", new CableRun(thin, Length.FromMeters(1)))], [new SiteDevice("camera 1", Camera(Watts(3)), "end")]);
    }

    private static Site WarmJoint(double ohms) => Single(ohms, Camera(AtNight(amperes: 1)), Dc(), Day, Night);

    private static Site OnWeakOutput(double limit) => GuardedBy(Quick(2), 100, limit);

    private static Site BehindWinding(double fuse) => GuardedBy(Quick(fuse), 1, outputLimit: 50);

    private static Site GuardedBy(ProtectiveDevice device, double rated, double outputLimit) => new("site", [Day, Night],
        [new DistributionBox(BoxName, new Supply("supply", new DcOutput(Volts(12), ElectricCurrent.FromAmperes(rated), Ratio.Zero, sourceResistance: ElectricResistance.FromOhms(0.1),
            overload: OverloadBehavior.Unlimited), Derating.GenericEnclosed), [new BoxOutput(1, ElectricCurrent.FromAmperes(outputLimit), device)])],
        [GuardedRun(1)], [new SiteDevice("camera 1", Camera(AtNight(amperes: 0.1)), "end 1")]);

    private static Site Plugged(double amperes, Connector connector, double volts = 12) => Single(0,
        new Device("model", DeviceKind.Camera, AtNight(amperes: amperes), Wide, connector: connector), Dc(volts), Day, Night);

    private static Site Landed(int gauge) => new("site", [Day],
        [DistributionBox.OfEqualOutputs(BoxName, Dc(), 2, ElectricCurrent.FromAmperes(3), terminals: new TerminalRange(WireSize.Awg(24), WireSize.Awg(14)))],
        [new SiteRun(RunOrigin.Output(BoxName, 1), "end", new CableRun(Cable.Pair(WireSize.Awg(gauge), Stranding.Solid, ConductorMaterial.AnnealedCopper), Length.FromMeters(1)))],
        [new SiteDevice("camera 1", Camera(Watts(3)), "end")]);

    private static Site TooHigh(double nominal) => Single(0, Camera(Watts(3), Range(8, 13.2)), Dc(nominal), Day, Night);

    private static Site Infrared(double ohms, double watts) => Single(ohms, Camera(AtNight(watts)), null, Day, Night);

    private static Site Started(double ohms, double watts, double turnOn, double dropOut) =>
        Single(ohms, Camera(AtNight(watts), starting: Starts(turnOn, dropOut, soft: false)), null, Night);

    private static Site Windowed(double ohms, double watts, double lowest, double highest) =>
        Single(ohms, Camera(AtNight(watts), Range(lowest, highest)), null, Day, Night);

    private static Site LightLoad(double highest) => Single(2, Camera(new ComponentDraw(Amperes(0.1), infrared: Amperes(1)), Range(5, highest)), Dc(percent: 10), Day, Night);

    private static Site Limited(double amperes) => new("site", [Day], [new DistributionBox(BoxName, LimitedOutputs.Holding(12, 4, amperes),
            [new BoxOutput(1, ElectricCurrent.FromAmperes(4), ProtectiveDevice.None, PowerLimitClass.LimitedPowerSourceIec60950)])],
        [GuardedRun(1)], [new SiteDevice("camera 1", Camera(Watts(1)), "end 1")]);

    private static Fuse Blade(double amperes) => SmallDevices.Fuse(FuseCharacteristic.Blade, amperes);

    private static Fuse Quick(double amperes, double volts = 250, double breaking = 1500) =>
        SmallDevices.Fuse(FuseCharacteristic.IecQuickActing, amperes, volts: volts, breaking: breaking);

    // A camera on 18 AWG of PVC in a cable; a supply of 12 V and 0.1 Ω that holds a limit, if it has one.
    private static Site Guarded(ProtectiveDevice device, double? limit = null, double drawn = 0.1) => new("site", [Day, Night], [GuardedBox(limit, device)],
        [GuardedRun(1)], [new SiteDevice("camera 1", Camera(AtNight(amperes: drawn)), "end 1")]);

    // Two outputs of a supply that holds 9 A; the second opens within 20 ms. Both cameras drop out at 8 V.
    private static Site Neighbors(ProtectiveDevice first) => new("site", [Day, Night], [GuardedBox(9, first, Quick(0.85))], [GuardedRun(1), GuardedRun(2)],
        [.. new[] { 1, 2 }.Select(n => new SiteDevice($"camera {n}", Camera(AtNight(amperes: 0.1), starting: Starts(9, 8)), $"end {n}"))]);

    private static DistributionBox GuardedBox(double? limit, params ProtectiveDevice[] devices) => new(BoxName,
        new Supply("supply", new DcOutput(Volts(12), ElectricCurrent.FromAmperes(100), Ratio.Zero, sourceResistance: ElectricResistance.FromOhms(0.1),
            overload: limit is double amperes ? OverloadBehavior.ConstantCurrent(ElectricCurrent.FromAmperes(amperes)) : OverloadBehavior.Unlimited), Derating.GenericEnclosed),
        devices.Select((device, i) => new BoxOutput(i + 1, ElectricCurrent.FromAmperes(50), device)));

    // A battery of 1 mAh and 12 V behind 0.1 Ω, whatever its charge, at a supply of 12 V; one camera of 1 A.
    internal static Site Backed(ProtectiveDevice? fuse = null, double? coldestCharging = null, double floating = 12, double wanted = 1, double charging = 1,
        double? highestCharging = null, double? watts = null, double limit = 50, double empty = 12, double accepts = 2, double? cutOff = null)
    {
        var output = new DcOutput(Volts(12), ElectricCurrent.FromAmperes(100), Ratio.Zero).WithCharging(Volts(0), ElectricCurrent.FromAmperes(charging));
        var battery = new Battery("battery", Batteries.Chemistry(12, empty, 1, 0.5, coldestCharging, floating: floating, highestCharging: highestCharging), cells: 1,
            ElectricCharge.FromMilliampereHours(1), Duration.FromHours(20), ElectricResistance.FromOhms(0.1), cutOff is double volts ? Volts(volts) : null);
        DistributionBox box = Box(new Supply("supply", output, Derating.GenericEnclosed), limit: limit).WithBattery(battery, fuse ?? DcFuse(200), Duration.FromSeconds(wanted));
        Draw draw = watts is double power ? AtNight(power) : AtNight(amperes: 1);
        return Star(box, [Night], (0.001, Camera(draw, Range(accepts, 60), Starts(3, 2))));
    }

    // A supply and a reserve of 12 V through diodes of 0.5 V; one camera of 1 A.
    private static Site Doubled(double mainVolts = 13, double reserveAmperes = 100) =>
        Star(Box(Dc(mainVolts)).WithReserve(Dc(12, reserveAmperes), Volts(0.5)), [Night], (0, Camera(AtNight(amperes: 1))));

    private static double BesideTwelveVolts => 12 + (SchottkySlope * Math.Log(1 + ((Math.Exp(0.5 / SchottkySlope) - 1) / 100)));

    private static double SchottkySlope => 1.05 * 0.025865;

    private static double TwelveWattsOnBattery => 2 * 12 / (12 + Math.Sqrt(144 - (4 * 0.101 * 12)));

    internal static Fuse DcFuse(double breaking) => new("battery fuse", ElectricCurrent.FromAmperes(200),
        new FuseCharacteristic("slow", ElectricCurrent.FromAmperes(100), ElectricCurrent.FromAmperes(200),
            new FuseTimeLimit(1.5, Duration.FromHours(1), null, Sources.CommonPractice), new FuseTimeLimit(2, null, Duration.FromHours(1), Sources.CommonPractice)),
        Volts(32), ElectricCurrent.FromAmperes(breaking), ElectricResistance.FromMilliohms(5), dcVoltageRating: Volts(32));

    private static Fuse SixAmpereFuse => new("battery fuse", ElectricCurrent.FromAmperes(6.3), FuseCharacteristic.IecTimeLag, Volts(32),
        ElectricCurrent.FromAmperes(1500), ElectricResistance.FromMilliohms(5), dcVoltageRating: Volts(32));

    private static SiteRun GuardedRun(int output) => new(RunOrigin.Output(BoxName, output), $"end {output}",
        new CableRun(Cable.Pair(WireSize.Awg(18), Stranding.Solid, ConductorMaterial.AnnealedCopper, insulation: Insulation.Pvc70), Length.FromMeters(1)),
        installationMethod: InstallationMethod.InCableOrRaceway(currentCarryingConductors: 2));

    private static Site OnOutput(double amperes, double limit) => Star(Box(limit: limit), [Day, Night], (0, Camera(AtNight(amperes: amperes))));

    private static Site Loaded(double amperes, double rating, Condition condition) => Star(Box(Dc(amperes: rating)), [condition], (0, Camera(AtNight(amperes: amperes))));

    private static Site Dipped(double holdUp) => Shared(1, Camera(Amperes(0.5), starting: new Starting(Volts(9), Volts(8), softStart: true, holdUp: Duration.FromSeconds(holdUp))),
        new Device("charging", DeviceKind.Camera, new ComponentDraw(Amperes(0.5)), dcInput: Wide, starting: Starts(6, 5), inrush: new Inrush(ElectricCurrent.FromAmperes(8), Duration.FromMilliseconds(2))));

    private static Site AtBox(double celsius) => Star(Box(), [Condition.Day(At(box: celsius)), Night], (0, Camera(Amperes(1))));

    // 12 V and 1 A at 90 % lose 4/3 W.
    private static HeatedEnclosure WarmBox => HeatedEnclosure.Of(Sheet(0.1), Power.FromWatts(12 * ((1 / 0.9) - 1)), Temperature.FromDegreesCelsius(50));

    private static Site NearlyTooHot(double above)
    {
        Temperature highest = Temperature.FromDegreesCelsius(WarmBox.Inside.DegreesCelsius + (WarmBox.Rise.Kelvins / 4) + above);
        var derating = new Derating(new ShareCurve<Temperature>(new(Temperature.FromDegreesCelsius(-40), Ratio.FromPercent(100)), new(highest, Ratio.FromPercent(100))));
        Supply efficient = Dc().WithEfficiency(0.9);
        return Star(Box(new Supply("supply", efficient.Output, derating, efficient.Input)).WithEnclosure(Sheet(0.1)), [Condition.Day(At(box: 50)), Night], (0, Camera(Amperes(1))));
    }

    private static Enclosure Sheet(double depth) =>
        new(Length.FromMeters(0.3), Length.FromMeters(0.4), Length.FromMeters(depth), EnclosureWall.PaintedSteel, EnclosureFaces.OnWall);

    // Nearly too hot, 1.6 times its rise below the 70 °C of its supply: a quarter more is in order, twice as much is not.
    private static Site Enclosed(double depth, bool isEfficiencyDeclared = true, bool isNearlyTooHot = false)
    {
        Supply supply = isEfficiencyDeclared ? Dc().WithEfficiency(0.9) : Dc();
        Surroundings around = At(box: isNearlyTooHot ? 70 - (1.6 * WarmBox.Rise.Kelvins) : 25);
        return Star(Box(supply).WithEnclosure(Sheet(depth)), [Condition.Day(around), Condition.Night(around)], (0, Camera(Amperes(1))));
    }

    // None waits before it starts, and the supply takes a tenth of a second to rise.
    private static Site Starting(double limit)
    {
        var supply = new Supply("supply", new DcOutput(Volts(12), ElectricCurrent.FromAmperes(10), Ratio.Zero,
            overload: OverloadBehavior.ConstantCurrent(ElectricCurrent.FromAmperes(limit)), rise: Duration.FromSeconds(0.1)), Derating.GenericEnclosed);
        var starting = new Starting(Volts(6), Volts(6), softStart: true, delay: Duration.Zero);
        return Shared(0, Box(supply, outputs: 8), [Night], [.. Enumerable.Repeat(Camera(AtNight(watts: 9.6), starting: starting), 8)]);
    }

    private static Site Split(double amperes) => Shared(0, Adapter(Dc(amperes: 2)), [Day, Night], Camera(AtNight(amperes: amperes)), Camera(AtNight(amperes: amperes)));

    private static Site ThinAt(double ohms) => Single(ohms, Camera(AtNight(amperes: 1), Range(10, 13)), null, Day, Night);

    private static Site Many(DeviceKind third) => Shared(0, Box(outputs: 2), [Day], Camera(Watts(1)), Camera(Watts(1)), Camera(new ComponentDraw(Watts(1)), kind: third));

    private static Site Recorder(bool isBesideCamera) => Star(Box(), [Day], (0, Camera(new ComponentDraw(Watts(9)), kind: DeviceKind.Recorder)),
        (0, Camera(new ComponentDraw(Watts(3)), kind: isBesideCamera ? DeviceKind.Camera : DeviceKind.Other)));

    private static Site Lead(bool extended)
    {
        var lead = new CableSegment(Pair(ConductorMaterial.AnnealedCopper, isPreTerminated: true), Length.FromMeters(10));
        return OnRun(extended ? new CableRun(lead, new CableSegment(Pair(ConductorMaterial.AnnealedCopper), Length.FromMeters(1))) : new CableRun(lead));
    }

    // A flexible tail at its standard's maximum, or at its nominal area, behind copper of nominal area.
    private static Site Tail(bool ofTable)
    {
        var size = WireSize.SquareMillimeters(1.5);
        Conductor wire = ofTable
            ? Conductor.AtIecMaximum(size, Stranding.IecClass5, ConductorMaterial.AnnealedCopper)
            : new Conductor(size, Stranding.IecClass5, ConductorMaterial.AnnealedCopper);
        return OnRun(new CableRun(new CableSegment(Pair(ConductorMaterial.AnnealedCopper), Length.FromMeters(1)), new CableSegment(new Cable(wire, wire), Length.FromMeters(1))));
    }

    private static Site Of(ConductorMaterial material) => OnRun(new CableRun(Pair(material), Length.FromMeters(1)));

    private static Site OnRun(CableRun run) => new("site", [Day], [Box()],
        [new SiteRun(RunOrigin.Output(BoxName, 1), "end", run)], [new SiteDevice("camera 1", Camera(Watts(3)), "end")]);

    private static Cable Pair(ConductorMaterial material, bool isPreTerminated = false) => Cable.Pair(WireSize.Awg(18), Stranding.Solid, material, isPreTerminated);

    // Next to nothing by day, so that the night is the condition that is named.
    private static ComponentDraw AtNight(double watts = 0, double amperes = 0) => new(Load.None, infrared: Watts(watts) + Amperes(amperes));
}
