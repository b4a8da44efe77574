using System.Collections.Generic;
using System.Linq;
using UnitsNet;
using static CamPower.Tests.Verdicts.Installation;

namespace CamPower.Tests.Verdicts;

/// <summary>Installations that look like bad ones and are not: each is on the right side of what another case is on the wrong side
/// of.</summary>
internal static class SoundNeighbors
{
    internal static IReadOnlyList<VerdictCase> All { get; } =
    [
        new("camera 29 m away", "1.26 Ω and 0.06 Ω: (11.76 + √(138.3 - 4 x 1.32 x 6))/2 = 11.04 V of the 11.02 V asked for.",
            Star(4).WithDrop(4, d => d with { Meters = 29 })),
        new("door contact of 0.5 W on 100 m of 22 AWG",
            "11.6 Ω hot leave 11.2 V; a short takes 1.0 A for ever: 22 AWG carries it, the rail holds, and the spot gets at most 12.24² "
                + "/ (4 x 9.4) = 4 W: a Note.",
            Star(4).WithDrop(4, d => d.OfWatts(0.5) with { Kind = DeviceKind.Other, Meters = 100, Cable = Parts.Pair(22) })),
        new("camera that starts with half as much again", "9 W over 0.90 Ω leave 11.0 V, its drop-out is 8.5 V.",
            Star(4).EachDrop(d => d with { StartUp = Watts(3), Meters = 15 }).In(Year.SummerNight, Year.ColdStart)),
        new("camera with a soft start that turns on low", "From 4.2 V on it ramps: it settles at 7.2 V, and its drop-out is 4 V.",
            Star(1).WithBox(b => b with { OutputLimit = 3, Protection = Parts.Electronic(4) }).EachDrop(d => d with
            {
                Meters = 60, Accepts = (6, 14), Starts = (4.2, 4), StartUp = Watts(6.7),
            }).In(Year.SummerNight, Year.ColdStart)),
        new("eight cameras that start at 9.5 V behind a limit of 10.5 A", "8 x 9.6 W / 9.5 V = 8.1 A of 10.5 A.",
            Star(8).WithBox(b => b with { Overload = Parts.Holds(10.5), OutputLimit = 2, Protection = Parts.Electronic(2.5) })
                .EachDrop(d => d.OfWatts(9.6) with { Meters = 10, Accepts = (9, 14), SoftStart = false })),
        new("box at 50 °C with 80 % of its rating", "The generic curve keeps the whole rating to 50 °C (common practice, no source).",
            Star(8).EachDrop(d => d.Drawing(1) with { Meters = 8 }).In(Year.At("hot attic", LoadComponents.None, 45, 50), Year.WinterNight)),
        new("fuse F1A with 0.9 A in 40 °C",
            "1 A less 2 % for 10 K above 23 °C: 0.966 A; IEC 60127 fuses carry their rating, no 75 % applies.",
            Fused(4, Parts.Quick(1)).EachDrop(d => d.Drawing(0.9) with { Meters = 8 })),
        new("fuse of unknown re-rating in 60 °C",
            "What F1A carries at 60 °C is not stated; 0.5 A are half of its rating. Not known is a Note.",
            Fused(1, Parts.Unrerated(1)).EachDrop(d => d.Drawing(0.5)).In(Year.At("hot attic", LoadComponents.None, 45, 60))),
        new("blade fuse of 5 A on 18 AWG",
            "5 A of the 7 A of NEC 240.4(D)(1) (from memory); 24 A are 4.8 times that: 0.5 s, 288 A²s of 8959 A²s.",
            Fused(1, Parts.Blade(5)).EachDrop(d => d with { Meters = 8 })),
        new("0.75 mm² behind F6.3A in 30 °C",
            "0.75 mm² carries 10 A and more in its own cable at 30 °C (IEC 60364-5-52 from memory, by its nearest sizes): 6.3 A <= 10.9 "
                + "A, 13.2 A <= 15.8 A. "
            + "The cap of American sizes does not bind it.",
            Fused(1, Parts.Quick(6.3)).WithBox(b => b with { OutputLimit = 5 })
                .EachDrop(d => d.Drawing(1) with { Cable = Parts.MetricPair(0.75), Meters = 5 })
                .In(Year.At("30 °C", LoadComponents.None, cable: 30, box: 23))),
        new("30 m of 22 AWG behind F1A and 24 A",
            "24 A open it in 20 ms: 12 A²s of 1405 A²s; 3.3 A at the end are 3.3 times its rating: 2 s, and the rail holds.",
            Fused(4, Parts.Quick(1))
                .WithDrop(1, d => d with { Cable = Parts.Pair(22), Meters = 30, Accepts = (9, 14), Starts = (8.5, 7.5) })),
        new("resettable fuse of 2.5 A on 22 AWG behind an adapter of 2.4 A",
            "The adapter cannot exceed what 22 AWG carries, some 4.6 A at 45 °C (IEC 60364-4-43, 436).",
            Adapter().WithBox(b => b with { Protection = Parts.Resettable(2.5) })
                .EachDrop(d => d with { Cable = Parts.Pair(22), Meters = 8 })),
        new("camera for either kind on 24 V DC", "It accepts both (common practice, no source).",
            Star(2).WithBox(b => b with { Volts = 24 })
                .EachDrop(d => d with { Accepts = (20, 28), AcceptsAc = (20, 28), Starts = (18, 16) })),
        new("shield with 4 mV", "0.15 V along it and 3 % of ripple: 4.3 mV of 10 mV. The valley of √3 x 3 % is 0.6 V below.", SoundBoxes.Shielded(ripple: 3).EachDrop(d => d with { Accepts = (9, 15), Starts = (8.5, 8) })),
        new("limited power source at the strictest edition's limit", "12.24 V x 4.9 A = 60 VA of 5 x 12.24 = 61.2 VA (IEC 60950-1).",
            Adapter().WithBox(b => b with { Rated = 4.5, Overload = Parts.Holds(4.9), Claims = PowerLimitClass.LimitedPowerSource })),
        new("Class 2 of 58 VA at 12 V", "NEC Chapter 9, Table 11(B) (from memory): 5 x 12 = 60 VA on the nameplate, 8 A at the most.",
            Adapter().WithBox(b => b with { Rated = 4.8, Overload = Parts.Holds(5.5), Claims = PowerLimitClass.Class2 })),
        new("14 AWG in a terminal for 24 to 14 AWG", "The largest that it takes.",
            Star(2).WithBox(b => b with { Terminals = new TerminalRange(WireSize.Awg(24), WireSize.Awg(14)) })
                .WithDrop(2, d => d with { Cable = Parts.Pair(14) })),
        new("sixteen cameras on 20 A", "16 x 0.53 A are 8.5 A of 16 A.", Star(16)
            .WithBox(b => b with { Outputs = 16, Rated = 20, Overload = Parts.Holds(22) })),
        new("two boxes of four cameras", "Each of them is sound alone.", TwoBoxes()),
        new("start of 100 ms on a time-lag fuse", "3 A for 100 ms are 0.9 A²s at the most, 18 % of the 5 A²s that melt T1A.",
            Fused(1, Parts.Lag(1))
                .EachDrop(d => d with { Inrush = new Inrush(ElectricCurrent.FromAmperes(3), Duration.FromMilliseconds(100)) })),
        new("inrush of 3 A for 5 ms on an electronic limit",
            "The limit draws it out to some 10 ms of its 50 ms; what its sheet does not say of that is a Note.",
            Star(4).EachDrop(d => d with { Inrush = new Inrush(ElectricCurrent.FromAmperes(3), Duration.FromMilliseconds(5)) })),
        new("inrush of all that is over before the supply shuts down",
            "0.4 C, of which the limits of 2.5 A pass 8 x 2.25 A at the least: 18 A for 22 ms; the supply waits 50 ms above 11 A.",
            Star(8).WithBox(b => b with { Overload = Parts.ShutsDown(11, milliseconds: 50), RiseMilliseconds = 1, OutputLimit = 2,
                Protection = Parts.Electronic(2.5) })
                .EachDrop(d => d with { Inrush = new Inrush(ElectricCurrent.FromAmperes(5), Duration.FromMilliseconds(10)) })),
        new("plug of 2 A with exactly 2 A", "EIAJ RC-5320A: 2 A a contact.",
            Star(1).WithBox(b => b with { OutputLimit = 2.6, Protection = Parts.Electronic(3) })
                .EachDrop(d => d.Drawing(2) with { Meters = 4, Plug = Connector.UnifiedBarrels[2] })),
        new("glass fuse behind a supply that holds 24 A, with capacitors",
            "24 A of the 35 A that L breaks; 4700 µF through 0.13 Ω begin with 90 A, but hold 0.35 J and are gone in a millisecond.",
            Fused(4, Parts.Quick(1, breaking: 35))),
        new("three cameras on one trunk",
            "8 m of 16 AWG carry 1.0 A to a junction of two more runs: 11.4 V and more; NEC 240.4(D)(2) (from memory) allows 8 A "
            + "continuously.", Branch()),
        new("start of 5 s with 85 % of the supply",
            "80 % is for what lasts (NEC Article 100, continuous: 3 h; common practice): 8.5 A of 10 A for 5 s.",
            Star(8).WithBox(b => b with { OutputLimit = 2, Protection = Parts.Electronic(2.5) })
                .EachDrop(d => d with { StartUp = Watts(6), Meters = 8 })
                .In(Year.SummerNight, Year.BriefStart)),
        new("start of 5 s in a small cupboard",
            "27 W of losses for 5 s are 135 J; 2 kg of steel take 900 J for a kelvin. It is the 35 °C and few kelvins of the night that "
            + "count.",
            Star(8).WithBox(b => b with { Rated = 25, Overload = Parts.Holds(30), OutputLimit = 3, Protection = Parts.Electronic(4),
                Enclosure = Parts.Steel(0.2, 0.3, 0.1) })
                .EachDrop(d => d with { StartUp = Watts(20), Meters = 4, Accepts = (9, 14) }).In(Year.SummerNight, Year.BriefStart)),
        new("start of 5 s with 5.65 A in 18 AWG",
            "5.6 A is what 18 AWG may carry for 3 h and more (NEC 240.4(D)(1), from memory); its limit lets 6.9 A of 7 A pass.",
            Star(1).WithBox(b => b with { OutputLimit = 6, Protection = Parts.Electronic(6.3) })
                .EachDrop(d => d.OfWatts(6) with { StartUp = Load.ConstantCurrent(ElectricCurrent.FromAmperes(5.12)), Meters = 1 })
                    .In(Year.SummerNight, Year.BriefStart)),
        new("limited power source by a fuse F1A behind 20 A",
            "IEC 62368-1 Annex Q (from memory), with an overcurrent device: 12.24 V x 20 A = 245 VA of 250 VA, 20 A of 1000/12.24 A, "
                + "F1A of 5 A; 10.5 A open it in 20 ms.",
            Fused(1, Parts.Quick(1))
                .WithBox(b => b with { Rated = 16, Overload = Parts.Holds(20), Claims = PowerLimitClass.LimitedPowerSource })),
    ];

    private static Load Watts(double watts) => Load.ConstantPower(Power.FromWatts(watts));

    private static Installation Branch()
    {
        var trunk = new Drop { Meters = 8, Cable = Parts.Pair(16), Inrush = Parts.Surge(0.4, 0.001), Base = Watts(1),
            Infrared = Watts(0.5) };
        return new Installation { Drops = [trunk, .. new[] { 2, 3 }
            .Select(n => trunk with { Name = $"camera {n}", Behind = "camera 1", Base = Watts(3) })] };
    }

    private static Installation TwoBoxes()
    {
        Installation one = Star(4);
        return one with
        {
            Boxes = [one.Boxes[0], new PowerBox { Name = "other box" }],
            Drops = [.. one.Drops, .. one.Drops.Select(d => d with { Name = $"other {d.Name}", Box = "other box" })],
        };
    }
}
