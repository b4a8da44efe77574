using System.Collections.Generic;
using UnitsNet;
using static CamPower.Tests.Verdicts.Installation;

namespace CamPower.Tests.Verdicts;

/// <summary>Installations of all sorts that an engineer would not sign as they are.</summary>
internal static class YardCases
{
    internal static IReadOnlyList<VerdictCase> All { get; } =
    [
        new VerdictCase("resettable fuse of 1.1 A with 0.74 A in 50 °C",
            "It holds 0.77 A by its curve, and families differ by 5 points: 0.715 A for certain (common practice, from memory).",
            Star(1).WithBox(b => b with { Outputs = 1, OutputLimit = 1, Protection = Parts.Resettable(1.1) })
                .EachDrop(d => d.Drawing(0.74) with { Meters = 10 }).In(Year.At("hot attic", LoadComponents.None, 45, 50), Year.WinterNight))
            .Caution("nuisance-trip", "box output 1", 0.74, 0.715),
        new VerdictCase("20 m of 24 AWG in copper-clad aluminum",
            "84.2 mΩ/m x 1.55: 5.2 Ω, 5.7 Ω at 45 °C. 3.5 W leave 9.7 V of 10.8 V; 6 W settle at some 7.3 V at night, under the 8.5 V at which "
                + "it drops out.",
            Star(1).EachDrop(d => d with { Cable = Parts.Pair(24, ConductorMaterial.CopperCladAluminum15), Meters = 20 }))
            .Caution("copper-clad-aluminum", "box output 1 to camera 1 place").Failure("settles-below-drop-out", "camera 1", null, 8.5)
            .Failure("undervoltage", "camera 1", null, 10.8),
        new VerdictCase("two boxes in one small cabinet in full sun",
            "1000 W/m² on 0.12 m² of light gray are some 70 W, and 20 W of losses: 90 W through 0.33 m² at some 7 W/m²K warm it by 40 K from 40 °C.",
            InOneCabinet()).Failure("supply-too-hot", "box", null, 70).Failure("supply-too-hot", "other box", null, 70),
        new VerdictCase("three cameras along 45 m of 18 AWG at 12 V",
            "15 m are 0.65 Ω: 1.8 A, 1.2 A and 0.6 A over each and 0.05 Ω of the limit leave 10.5 V, 9.6 V and 9.2 V of 10.8 V.", SoundYards.Along(12, Parts.Pair(18), 15))
            .Failure("undervoltage", "camera 1", 10.46, 10.8).Failure("undervoltage", "camera 2", 9.63, 10.8).Failure("undervoltage", "camera 3", 9.2, 10.8),
        new VerdictCase("camera whose heater comes on in the frost",
            "16 W at 12 V are 1.5 A over 0.74 Ω and 0.05 Ω: 10.6 V of 10.8 V, more than the 1.3 A of the output and the 1.35 A that its limit holds.",
            Star(1).EachDrop(d => d with { Heater = Watts(10) }))
            .Failure("undervoltage", "camera 1", 10.58, 10.8).Failure("output-overloaded", "box output 1", 1.51, 1.3)
            .Failure("nuisance-trip", "box output 1", 1.51, 1.35),
        new VerdictCase("pan-tilt-zoom camera that its own motors restart",
            "6 A of 11.76 V are 1.96 Ω: behind 1.15 Ω it has some 6.7 V, under its 8.5 V, for 20 ms x 11.76/6.7 = 35 ms, and runs on for 10 ms. "
                + "It is off after every motion: it does not do its work (common practice, no source).",
            Fused(1, Parts.Lag(2)).WithBox(b => b with { OutputLimit = 1.6 }).EachDrop(d => d with
            {
                Base = Watts(5), Infrared = Load.None, Motor = Watts(4), Accepts = (10, 14), Meters = 25, HoldUpMilliseconds = 10,
                SwitchedInrush = new Inrush(ElectricCurrent.FromAmperes(6), Duration.FromMilliseconds(20)),
            }).In(Year.SummerDay, Year.At("night with motion", LoadComponents.Motor, 30, 35))).Failure("inrush-below-drop-out", "camera 1", null, 0.01),
        new VerdictCase("supply of 10 A that holds 8 A within 10 %, asked for 7.5 A",
            "It holds 7.2 A for certain; eight cameras of 11 W take 8 x 11 W / 11.48 V = 7.66 A.",
            Star(8).WithBox(b => b with { Overload = Parts.Holds(8).WithTolerance(Ratio.FromPercent(10)) })
                .EachDrop(d => d.OfWatts(11) with { Meters = 5, Accepts = (9, 14) })).Failure("supply-above-derated-rating", "box", 7.66, 7.2),
        new VerdictCase("box that pulses in overload, with fuses T2A",
            "Pulses of 11 A for 0.1 s every 1.5 s are 2.84 A RMS, 1.42 times the rating: the fuse may carry that for ever, and the others are dark. At the terminals "
                + "a poor contact that lasts draws less than 4.3 A, 2.1 times the rating in 20 °C: 4.3 x (12.24 - 4.3 x 0.07) V = 51 W (a policy: 15 W, 100 W).",
            Fused(4, Parts.Lag(2)).WithBox(b => b with { Rated = 10, Overload = Parts.Pulses(11) }))
            .Failure("short-collapses-supply-voltage", "box").Caution("short-may-not-be-interrupted", "*"),
        new VerdictCase("box that folds back to 3 A, with fuses T2A",
            "Into a short it gives little more than 3 A, 1.5 times the rating: an hour and more (IEC 60127-2), and the others are dark; "
                + "a poor contact gets up to 51 W, as above.",
            Fused(4, Parts.Lag(2)).WithBox(b => b with { Rated = 10, Overload = Parts.FoldsBack(11, 3) }))
            .Failure("short-collapses-supply-voltage", "box").Caution("short-may-not-be-interrupted", "*"),
        new VerdictCase("camera of 18 W on 60 m of 20 AWG at 24 V AC",
            "33.3 mΩ/m: 4.4 Ω at 45 °C; 18 W leave (23.52 + √(23.52² - 4 x 4.4 x 18))/2 = 19.4 V of 20 V.",
            Star(1).WithBox(b => b with { Kind = CurrentKind.Ac, Volts = 24 })
                .EachDrop(d => d.OfWatts(18) with { Accepts = null, AcceptsAc = (20, 28), Starts = (15, 13), Cable = Parts.Pair(20), Meters = 60 }))
            .Failure("undervoltage", "camera 1", 19.4, 20),
        new VerdictCase("camera behind a corroded splice",
            "15 m of 18 AWG and 0.8 Ω of splice and the limit's 0.05 Ω: 1.5 Ω and 6 W leave 10.94 V: in its range, by less than 2 % (policy).",
            Star(1).EachDrop(d => d with { Meters = 15, JointOhms = 0.8 })).Caution("thin-voltage-margin", "camera 1", 10.94, 11.016),
        new VerdictCase("camera of 12 V on 15 m of one pair of 28 AWG",
            "426 mΩ/m: 6.6 Ω carry at most 11.76²/(4 x 6.7) = 5.2 W in summer, not 6 W; by day 3.5 W leave 9 V; in frost 6 W settle at 6.6 V.",
            Star(1).WithBox(b => b with { OutputLimit = 1, Protection = Parts.Electronic(1.1) })
                .EachDrop(d => d with { Cable = SoundYards.Ganged(28, 1), Meters = 15, Inrush = Parts.Surge(0.8, 0.001) }))
            .Failure("no-operating-point", "camera 1", 6, 5.17).Failure("undervoltage", "camera 1", null, 10.8)
            .Failure("settles-below-drop-out", "camera 1", null, 8.5),
        new VerdictCase("supply for 90 V to 250 V on a line of 254 V", "240 V and 6 % (IEC 60038): above what it accepts.",
            SoundYards.Plugged(254, highest: 250)).Danger("receptacle-voltage-outside-supply-range", "box", 254, 250),
        new VerdictCase("heater on a weak output of a box", "1.8 A of 1.5 A.", SoundYards.Unequal(strongest: 3)).Failure("output-overloaded", "box output 3", 1.8, 1.5),
        new VerdictCase("UL fuse of 125 V AC that states no DC rating", "A direct current has no zero at which its arc goes out: not known, a Note.",
            Fused(1, WithoutDcRating())).Gives(Severity.Note, "faults-unknown", "site"),
    ];

    private static Installation InOneCabinet()
    {
        var cabinet = new Cabinet("cabinet", Parts.Steel(0.3, 0.4, 0.15, sunlit: 0.12));
        Installation one = Star(8).WithBox(b => b with { Cabinet = cabinet }).EachDrop(d => d.OfWatts(8) with { Meters = 4 });
        return one with
        {
            Boxes = [one.Boxes[0], one.Boxes[0] with { Name = "other box" }],
            Drops = [.. one.Drops, .. System.Linq.Enumerable.Select(one.Drops, d => d with { Name = $"other {d.Name}", Box = "other box" })],
            Conditions = [Year.At("sunny day", LoadComponents.None, 45, 40, sun: 1000), Year.WinterNight],
        };
    }

    private static Fuse WithoutDcRating() => new("UL fast 2 A, AC", ElectricCurrent.FromAmperes(2), FuseCharacteristic.UlFast, ElectricPotential.FromVolts(125),
        ElectricCurrent.FromAmperes(1000), ElectricResistance.FromMilliohms(60), JouleIntegral.FromAmpereSquaredSeconds(2),
        new ShareCurve<Temperature>(new(Temperature.FromDegreesCelsius(-40), Ratio.FromPercent(110)), new(Temperature.FromDegreesCelsius(85), Ratio.FromPercent(90)))
            .WithSource(new Citation("data sheet of the fuse, invented", CitationKind.Declared)));

    private static Load Watts(double watts) => Load.ConstantPower(Power.FromWatts(watts));
}
