using System.Collections.Generic;
using System.Linq;
using UnitsNet;
using static CamPower.Tests.Verdicts.Installation;

namespace CamPower.Tests.Verdicts;

/// <summary>Installations that mix what others have alone, and that an engineer would not sign as they are.</summary>
internal static class MixtureCases
{
    internal static IReadOnlyList<VerdictCase> All { get; } =
    [
        new VerdictCase("illuminators of 45 % of the melting integral",
            "10 A for 2 ms above 0.3 A: (√0.2 + 0.3 x √0.002)² = 0.212 A²s of 0.5 A²s: every dusk ages the fuse (22 %, common practice).",
            SoundMixtures.Switched(peak: 10, milliseconds: 2)).Caution("nuisance-trip", "box output 1", 0.4245, 0.22),
        new VerdictCase("illuminators that open the fuse", "10 A for 10 ms above 0.3 A: (1 + 0.3 x 0.1)² = 1.06 A²s of 0.5 A²s. Its 6.1 V last 19 ms, and it runs on for 20 ms.",
            SoundMixtures.Switched(peak: 10, milliseconds: 10)).Failure("nuisance-trip", "box output 1", 2.12, 1),
        new VerdictCase("motors that outlast an electronic limit",
            "3 A for 200 ms on a limit that holds 1.65 A and opens within 50 ms: it opens whenever the camera moves. Held down, the camera has nothing meanwhile.",
            Star(1).EachDrop(d => d with { Motor = Watts(2), HoldUpMilliseconds = 20, SwitchedInrush = new Inrush(ElectricCurrent.FromAmperes(3), Duration.FromMilliseconds(200)) })
                .In(Year.SummerDay, Year.At("night with motion", LoadComponents.Infrared | LoadComponents.Motor, 30, 35)))
            .Failure("nuisance-trip", "box output 1").Failure("inrush-below-drop-out", "camera 1"),
        new VerdictCase("big camera whose inrush the small ones ride through",
            "15 A of a supply that holds 5.5 A: the small ones are off below 8.5 V, and the big one charges with 5.5 A for 4 ms x 15/5.5 = 11 ms; they run on for "
                + "20 ms. A short does take them down, for the 1.7 s in which 5.5 A open T1A (3 s at 4 A, IEC 60127-2).",
            BigBesideSmall(holdUpMilliseconds: 20)).Caution("short-collapses-supply-voltage", "box"),
        new VerdictCase("big camera whose inrush restarts the small ones", "The same 11 ms, and they run on for 5 ms.",
            BigBesideSmall(holdUpMilliseconds: 5)).Caution("short-collapses-supply-voltage", "box").Caution("inrush-below-drop-out", "box", 0.0109, 0.005),
        new VerdictCase("four cameras of 24 V behind resettable fuses and 11 A",
            "1.2 s at 8 A, 8.7 A in a box of 10 °C: 11 A trip it by 1.2 x (8.7/11)² = 0.75 s; meanwhile the supply holds 11 A and the others are dark: a restart.",
            Star(4).WithBox(b => b with { Volts = 24, Protection = Parts.Resettable60Volt(0.9, 1.2) })
                .EachDrop(d => d with { Accepts = (20, 28), Starts = (18, 16) })).Caution("short-collapses-supply-voltage", "box"),
        new VerdictCase("coax of a camera on 24 V AC that is bonded at both ends",
            "0.26 A of return divide over 0.44 Ω of copper and 1.0 Ω of shield: 0.08 A over 0.9 Ω, 70 mV of mains frequency; the policy is 10 mV.",
            Bonded()).Caution("ground-loop-hum", "camera 1", 0.070, 0.01),
        new VerdictCase("box on a mountain of 4500 m at 45 °C",
            "12.5 K for 2500 m: 57.5 °C, 81 % of 10 A (half at 70 °C; common practice): 8 A are 98 % of 8.1 A, and 80 % of that are 6.5 A.",
            Star(8).EachDrop(d => d.Drawing(1) with { Meters = 8 }).In(Year.At("hot day", LoadComponents.None, 45, 45), Year.WinterNight)
                with { AltitudeMeters = 4500 }).Caution("supply-above-headroom-policy", "box", 8, 6.5),
        new VerdictCase("two cameras along 20 m of 20 AWG",
            "1.11 A over 0.55 Ω and 0.06 Ω leave 11.08 V, 0.57 A over 0.83 Ω more 10.61 V of 10.8 V.",
            TwoAlong()).Failure("undervoltage", "camera 2", 10.61, 10.8),
        new VerdictCase("camera of 24 V on a box of 12 V", "12 V less 2 % are 11.76 V; it turns on at 18 V.",
            Star(1).EachDrop(d => d with { Accepts = (20, 28), Starts = (18, 16) })).Failure("unloaded-voltage-below-turn-on", "camera 1", 11.76, 18),
        new VerdictCase("three cameras behind one resettable fuse of 1.1 A",
            "3 x 0.54 A at night, and it holds 0.935 A at 35 °C. In the end it trips.",
            ThreeOnOne()).Failure("nuisance-trip", "box output 1", null, 0.935),
        new VerdictCase("adapter of 1 A whose camera heats in winter",
            "6 W and 8 W at 11.4 V are 1.23 A; it is rated 1 A and holds 1.2 A.",
            Adapter().WithBox(b => b with { Rated = 1, Overload = Parts.Holds(1.2) }).EachDrop(d => d with { Heater = Watts(8), Inrush = Parts.Surge(0.8, 0.002) }))
            .Failure("supply-above-derated-rating", "box", null, 1),
        new VerdictCase("resettable fuse of 2.5 A on 24 AWG behind 24 A",
            "40 s at 8 A, 8.7 A in a box of 10 °C: 24 A by 5.3 s, 3040 A²s of (115 x 0.205)² = 556 A²s; it trips for certain from 5 A, and 24 AWG carries 3.3 A at 45 °C.",
            Fused(1, Parts.Resettable(2.5)).EachDrop(d => d with { Cable = Parts.Pair(24), Meters = 4 }))
            .Danger("let-through-above-conductor-withstand", "box output 1").Danger("protection-above-conductor-ampacity", "box output 1"),
        new VerdictCase("transformer of 24 V AC and 12 % on a camera for 24 V and 10 %",
            "26.88 V unloaded, 3.5 W lose 0.12 V: 26.8 V of 26.4 V. 21.12 V less 0.27 V are 20.85 V of 21.6 V.",
            Star(1).WithBox(b => b with { Kind = CurrentKind.Ac, Volts = 24, TolerancePercent = 12 })
                .EachDrop(d => d with { Accepts = null, AcceptsAc = (21.6, 26.4), Starts = (15, 13) }))
            .Danger("overvoltage-at-light-load", "camera 1", 26.76, 26.4).Failure("undervoltage", "camera 1", 20.85, 21.6),
        new VerdictCase("limited power source of IEC 60950-1, 92 VA at 12 V", "5 x 12.24 V = 61.2 VA at the most (Table 2B, from memory): 91.8 VA.",
            SoundMixtures.Limited(PowerLimitClass.LimitedPowerSourceIec60950)).Failure("power-limit-exceeded", "box output 1"),
        new VerdictCase("four cameras with one negative of 24 AWG",
            "The limits pass 4 x 1.65 A = 6.6 A; 24 AWG carries 3.3 A at 45 °C. 2.2 A over 1.05 Ω and 0.6 A over as much leave less than 10.8 V: the first settles at 11.76 V "
                + "- 0.76 A x 1.11 Ω - 2.87 A x 1.05 Ω = 7.9 V.",
            SoundMixtures.CommonNegative(24)).Danger("protection-above-conductor-ampacity", "*")
            .Failure("settles-below-drop-out", "camera 1", 7.91, 8.5).Failure("undervoltage", "camera 1", null, 10.8).Failure("undervoltage", "camera 2", null, 10.8)
            .Failure("undervoltage", "camera 3", null, 10.8).Failure("undervoltage", "camera 4", null, 10.8),
    ];

    private static Installation BigBesideSmall(double holdUpMilliseconds) => Fused(4, Parts.Lag(1))
        .WithBox(b => b with { Rated = 5, Overload = Parts.Holds(5.5), Outputs = 4 })
        .EachDrop(d => d with { Meters = 8, HoldUpMilliseconds = holdUpMilliseconds, Inrush = null })
        .WithDrop(4, d => d.OfWatts(10) with { Cable = Parts.Pair(14), Inrush = new Inrush(ElectricCurrent.FromAmperes(15), Duration.FromMilliseconds(4)) });

    private static Installation Bonded() => Star(2).WithBox(b => b with { Kind = CurrentKind.Ac, Volts = 24, Overload = Parts.Holds(11) })
        .EachDrop(d => d with { Accepts = null, AcceptsAc = (20, 28), Starts = (15, 13) }) with
    {
        Links = [new VideoLink("camera 1", "recorder", ElectricResistance.FromOhms(0.9))],
        Bonds = [new GroundBond("recorder", "box", ElectricResistance.FromOhms(0.1))],
    };

    private static Installation TwoAlong()
    {
        var first = new Drop { Cable = Parts.Pair(20), Meters = 8, Inrush = Parts.Surge(0.6, 0.001) };
        return new Installation { Drops = [first, first with { Name = "camera 2", Behind = "camera 1", Meters = 12 }] };
    }

    private static Installation ThreeOnOne()
    {
        Installation pair = SoundMixtures.Pair(Parts.Resettable(1.1))
            .WithBox(b => b with { OutputLimit = 2 }).EachDrop(d => d with { Base = Watts(3.5), Infrared = Watts(2.5), Meters = 4, Cable = Parts.Pair(14) });
        return pair with { Drops = [.. pair.Drops, pair.Drops[1] with { Name = "camera 3", Behind = "camera 2" }] };
    }

    private static Load Watts(double watts) => Load.ConstantPower(Power.FromWatts(watts));
}
