using System.Collections.Generic;
using System.Linq;
using UnitsNet;
using static CamPower.Tests.Verdicts.Installation;

namespace CamPower.Tests.Verdicts;

/// <summary>Sound installations that mix what others have alone: thin cable and high voltage, mountains and frost, a big camera beside small
/// ones.</summary>
internal static class SoundMixtures
{
    internal static IReadOnlyList<VerdictCase> All { get; } =
    [
        new("adapter of 24 V that a resettable fuse of 60 V need not trip for",
            "It holds 2.4 A: 18 AWG carries that (IEC 60364-4-43, 436), the fuse trips from 1.8 A at 20 °C in its own time, and nobody else is there.",
            Adapter().WithBox(b => b with { Volts = 24, Protection = Parts.Resettable60Volt(0.9, 1.2) })
                .EachDrop(d => d with { Meters = 30, Accepts = (20, 28), Starts = (18, 16), Inrush = Parts.Surge(1.2, 0.003) })),
        new("four cameras of 3 W for 9 V to 15 V on 35 m of one pair of 24 AWG",
            "84.2 mΩ/m: 6.1 Ω at 30 °C, and 0.06 Ω; (11.76 + √(138.3 - 4 x 6.18 x 3))/2 = 9.88 V of 9.18 V. A short at the end takes "
                + "11.76 V / 6.53 Ω = 1.80 A at 45 °C and passes the limit of 1.65 A for certain.",
            Star(4).EachDrop(d => d with { Cable = Parts.Pair(24), Meters = 35, Base = Watts(2), Infrared = Watts(1), Accepts = (9, 15), Starts = (8.5, 7.5) })),
        new("four cameras of 48 V on 150 m of one pair of 24 AWG",
            "26.2 Ω at 30 °C: 6 W take 0.14 A and leave 43.4 V of 37 V; a short takes 47.04 V / 27.8 Ω = 1.7 A of a limit of 0.55 A.",
            Star(4).WithBox(b => b with { Volts = 48, OutputLimit = 0.4, Protection = Parts.Electronic(0.5) })
                .EachDrop(d => d with { Cable = Parts.Pair(24), Meters = 150, Accepts = (37, 57), Starts = (35, 33) })),
        new("box on a mountain of 2900 m at 40 °C",
            "5 K for every 1000 m above 2000 m (common practice, no source): 44.5 °C, and the whole rating to 50 °C: 7.9 A of 8 A.",
            Star(8).EachDrop(d => d.Drawing(0.98) with { Meters = 8 }).In(Year.At("hot day", LoadComponents.None, 45, 40), Year.WinterNight)
                with { AltitudeMeters = 2900 }),
        new("four cameras with one negative of 14 AWG",
            "4 x 0.54 A over 0.10 Ω and 0.54 A over 0.26 Ω leave 11.3 V; the limits pass 6.6 A of the 15 A of 14 AWG (NEC 240.4(D)(3), from memory).",
            CommonNegative(14)),
        new("two cameras on one run with a resettable fuse of 1.1 A",
            "2 x 3 W take 0.54 A of the 0.88 A that it holds at 40 °C, less 5 points 0.825 A; a short trips it, and nobody else is there.",
            Pair(Parts.Resettable(1.1))),
        new("camera of 12 V with heater and infrared at -25 °C",
            "14 W over 0.33 Ω (15 m of 16 AWG at -25 °C) and 0.06 Ω take 1.24 A: 11.28 V of 11.02 V, 1.24 A of 1.3 A and of the 1.35 A that the limit holds.",
            Star(1).EachDrop(d => d with { Heater = Watts(8), Cable = Parts.Pair(16), Meters = 15 })
                .In(Year.SummerDay, Year.At("night of frost", LoadComponents.Infrared | LoadComponents.Heater, cable: -25, box: -10))),
        new("pan-tilt-zoom camera of 24 V on a UL time-delay fuse of 2 A",
            "25 W take 1.1 A of 1.5 A (75 %, common practice); a short of 24 A opens it by 120 s x (4/24)² = 3.3 s (UL 248-14 bounds 4 A by 120 s): 1920 A²s "
                + "of 8959 A²s; nobody else is there.",
            Fused(1, Parts.UlDelayed(2)).WithBox(b => b with { Volts = 24, OutputLimit = 1.6 })
                .EachDrop(d => d with { Base = Watts(10), Infrared = Watts(5), Motor = Watts(10), Accepts = (20, 28), Starts = (18, 16) })
                .In(Year.SummerDay, Year.At("night with motion", LoadComponents.Infrared | LoadComponents.Motor, 30, 23))),
        new("latched electronic limits on 24 V AC",
            "They open within 50 ms for certain from 1.65 A; 23.5 V / 1.0 Ω are 23 A. That AC is solved with RMS is a Note.",
            Star(4).WithBox(b => b with { Kind = CurrentKind.Ac, Volts = 24, Overload = OverloadBehavior.Unlimited, SourceOhms = 0.05, Protection = Parts.Latched(1.5) })
                .EachDrop(d => d with { Accepts = null, AcceptsAc = (20, 28), Starts = (15, 13) })),
        new("Class 2 of 24 V and 94 VA on 18 AWG",
            "24.48 V x 4.0 A = 97.9 VA of 100 VA, 4 A of 8 A, 93.6 VA on the nameplate (NEC Chapter 9, Table 11(B), from memory).",
            Adapter().WithBox(b => b with { Volts = 24, Rated = 3.9, Overload = Parts.Holds(4), Claims = PowerLimitClass.Class2 })
                .EachDrop(d => d with { Accepts = (20, 28), Starts = (18, 16) })),
        new("Class 2 of 24 V and 4 A that holds 4.05 A",
            "24.48 V x 4.05 A = 99.1 VA of 100 VA, 96 VA on the nameplate: a poor contact at the end is what Class 2 is made for.",
            Adapter().WithBox(b => b with { Volts = 24, Rated = 4, Overload = Parts.Holds(4.05), Claims = PowerLimitClass.Class2 })
                .EachDrop(d => d with { Accepts = (20, 28), Starts = (18, 16) })),
        new("limited power source of IEC 62368-1, 92 VA at 12 V", "12.24 V x 7.5 A = 91.8 VA of 100 VA, 7.5 A of 8 A (Table Q.1, from memory).",
            Limited(PowerLimitClass.LimitedPowerSourceIec62368)),
        new("camera on a transformer of 24 V AC that is soft",
            "20 VA: 2 Ω of its own and 0.9 Ω of cable leave (23.52 + √(553 - 4 x 2.98 x 12))/2 = 21.9 V of 20.4 V. A short takes 7.9 A: 7.9 times T1A, 3 s and "
                + "less (IEC 60127-2), 190 A²s of 8959 A²s. T1A is 1.2 times the winding (NEC 450.3(B), from memory: 1.67).",
            Fused(1, Parts.Lag(1)).WithBox(b => b with { Kind = CurrentKind.Ac, Volts = 24, Rated = 0.83, Overload = OverloadBehavior.Unlimited, SourceOhms = 2, OutputLimit = 0.8 })
                .EachDrop(d => d.OfWatts(12) with { Accepts = null, AcceptsAc = (20, 28), Starts = (15, 13) })),
        new("adapter whose resettable fuse never trips in the cold",
            "1.1 A trips from 2.2 A at 20 °C, from 3.2 A at -30 °C: never at the 2.4 A of the adapter, which protects the wire (IEC 60364-4-43, 436).",
            Adapter().WithBox(b => b with { Protection = Parts.Resettable(1.1) })
                .In(Year.SummerNight, Year.At("frost", LoadComponents.Infrared, -30, -19))),
        new("supply of 0.3 Ω whose tolerance covers what its load does",
            "2 % are all that its sheet allows up to its rating: 11.76 V. Its resistance counts in a fault, of which the limits let 1.65 A pass.",
            Star(4).WithBox(b => b with { SourceOhms = 0.3 })),
        new("illuminators of 10 % of the melting integral",
            "4 A for 2.4 ms above 0.3 A: (√0.0384 + 0.3 x √0.0024)² = 0.044 A²s of 0.5 A²s are 9 %, up to 22 % a fuse does not age (common practice); behind 1 Ω "
                + "it has some 8.9 V of its 8.5 V.",
            Switched(peak: 4, milliseconds: 2.4)),
    ];

    internal static Installation CommonNegative(int awg) => Star(4)
        .EachDrop(d => d with { Meters = 12, ReturnsAt = d.Output == 1 ? null : "camera 1" })
        .WithDrop(1, d => d with { Cable = Parts.Pair(awg) });

    internal static Installation Pair(ProtectiveDevice protection)
    {
        var first = new Drop { Meters = 8, Base = Watts(2), Infrared = Watts(1), Inrush = Parts.Surge(0.4, 0.001) };
        return new Installation { Boxes = [new PowerBox { Protection = protection }],
            Drops = [first, first with { Name = "camera 2", Behind = "camera 1" }] };
    }

    internal static Installation Limited(PowerLimitClass claim) =>
        Adapter().WithBox(b => b with { Rated = 7, Overload = Parts.Holds(7.5), Claims = claim });

    internal static Installation Switched(double peak, double milliseconds) => Fused(1, Parts.Quick(1)).EachDrop(d => d with
    {
        Base = Watts(2), Infrared = Watts(1.4), HoldUpMilliseconds = 20,
        SwitchedInrush = new Inrush(ElectricCurrent.FromAmperes(peak), Duration.FromMilliseconds(milliseconds)),
    });

    private static Load Watts(double watts) => Load.ConstantPower(Power.FromWatts(watts));
}
