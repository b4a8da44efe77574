using System.Collections.Generic;
using UnitsNet;
using static CamPower.Tests.Verdicts.Installation;

namespace CamPower.Tests.Verdicts;

/// <summary>Sound protection: fuses, limits and conductors that fit each other, and shorts that hurt nobody.</summary>
internal static class SoundProtection
{
    private static readonly Condition Room = Year.At("room", LoadComponents.None, cable: 25, box: 23);

    internal static IReadOnlyList<VerdictCase> All { get; } =
    [
        new VerdictCase("Class 2 output of up to 7.15 A on 18 AWG",
            "240.4(D)(1) caps 18 AWG at 7 A, and does not bind a Class 2 circuit (NEC 725, from memory); at 45 °C 18 AWG carries 9 A. "
                + "87 VA of 100 VA, 7.15 A of 8 A, 5 x 12 = 60 VA on the nameplate.",
            Star(1).WithBox(b => b with { OutputLimit = 5, Protection = Parts.Electronic(6.5), Claims = PowerLimitClass.Class2 })),
        new("four cameras behind fuses F1A",
            "A short at the far end takes 11.76 V / (0.92 + 0.13) Ω = 11.2 A, more than ten times the rating: 20 ms (IEC 60127-2), and "
                + "the supply holds 24 A.",
            Fused(4, Parts.Quick(1))),
        new("four cameras of 24 V behind fuses F1A, 60 m away",
            "The far end's short takes 23.5 V / 2.9 Ω = 8.1 A: 0.3 s at the most (gate at 4 x), and the supply, which holds 24 A, stays "
                + "up.",
            Fused(4, Parts.Quick(1)).WithBox(b => b with { Volts = 24 })
                .EachDrop(d => d with { Meters = 60, Accepts = (20, 28), Starts = (18, 16) })),
        new("four cameras of 48 V on 100 m of 20 AWG",
            "6 W take 0.13 A; a short takes 47 V / 7.4 Ω = 6.3 A: 0.3 s; 49 V is accessible (60 V DC, IEC 60335-1).",
            Fused(4, Parts.Quick(1)).WithBox(b => b with { Volts = 48 })
                .EachDrop(d => d with { Meters = 100, Cable = Parts.Pair(20), Accepts = (40, 57), Starts = (38, 36) })),
        new("category cable, four wires each way, at 24 V",
            "Four of 84.2 mΩ/m are 21 mΩ/m: 50 m have 2.3 Ω hot, 6 W lose 0.6 V, and a short takes 9.8 A: 0.3 s.",
            Fused(4, Parts.Quick(1)).WithBox(b => b with { Volts = 24 })
                .EachDrop(d => d with { Meters = 50, Cable = Ganged(24, 4), InstallationMethod = InstallationMethod.LargeBundle, Accepts = (20, 28),
                    Starts = (18, 16) })),
        new("four cameras on 24 V AC behind fuses F1A",
            "A transformer with 0.2 Ω gives 22.8 V / (0.32 + 0.92) Ω = 18 A into the farthest short: 20 ms; that AC is solved with RMS "
                + "is a Note.", Alternating()),
        new("camera on a battery behind a fuse F2A",
            "13.8 V / 0.085 Ω = 162 A at the terminals, the fuse breaks 1500 A; 11.4 V / 1.0 Ω = 11 A at the end: 0.3 s, and nobody "
                + "else is there.", Battery(Parts.Quick(2))),
        new("fuse that carries exactly its rating", "IEC 60127 fuses carry their rating continuously; 0.5 A at 23 °C is that of F0.5A.",
            Fused(4, Parts.Quick(0.5)).WithBox(b => b with { OutputLimit = 0.5 }).EachDrop(d => d.Drawing(0.5) with { Meters = 10 })
                .In(Room)),
        new("UL fuse loaded to exactly 75 %", "75 % of 1 A at 23 °C (common practice, no source).",
            Fused(1, Parts.UlFast(1)).EachDrop(d => d.Drawing(0.75) with { Meters = 10 }).In(Room)),
        new("blade fuse of exactly 10 A on 16 AWG",
            "NEC 240.4(D): 10 A for 16 AWG (from memory); 24 A are 2.4 times that: 5 s, 2880 A²s, and 1.31 mm² in PVC withstands (115 x "
                + "1.31)² = 22 700 A²s.",
            Fused(1, Parts.Blade(10)).WithBox(b => b with { OutputLimit = 8 })
                .EachDrop(d => d.Drawing(5) with { Kind = DeviceKind.Other, Cable = Parts.Pair(16), Meters = 8, Accepts = (9, 15),
                    Starts = (8, 7) })),
        new("UL fuse of 3 A on 18 AWG behind 24 A",
            "120 s at 6 A bound 24 A by 120 x (6/24)² = 7.5 s: 4320 A²s (4550 in a box of 10 °C); 0.823 mm² in PVC withstands (115 x "
                + "0.823)² = 8959 A²s.",
            Fused(1, Parts.UlFast(3)).EachDrop(d => d with { Meters = 2 })),
        new("1.5 mm² PVC at 10 A and 30 °C",
            "IEC 60364-5-52 (from memory): 14 A in method A2, 16.5 A in B2, 19.5 A in C. F10A: 10 A <= 16.5 A and 21 A <= 1.45 x 16.5 A "
                + "= 23.9 A; 33 A open it in 2 s.",
            Metric(1.5, 10)),
        new("2.5 mm² PVC at 16 A and 30 °C behind an electronic limit",
            "IEC 60364-5-52 (from memory): 2.5 mm² carry 18.5 A in method A2 and 27 A in C; the limit lets 20.9 A pass for 50 ms at the "
                + "most.", MetricElectronic(2.5, 16)),
        new("adapter without a fuse",
            "IEC 60364-4-43, 436: a source that cannot exceed 2.4 A protects 18 AWG, which carries 9 A at 45 °C.", Adapter()),
        new("adapter of 2.4 A with a fuse T2A",
            "It cannot open its fuse (4.2 A), and need not: the source protects the wire (IEC 60364-4-43, 436), and nobody else is "
                + "behind it.",
            Adapter().WithBox(b => b with { Protection = Parts.Lag(2) })),
        new("adapter of 2.4 A with a fuse T3.15A on 24 AWG",
            "24 AWG in its own cable carries some 3.2 A at 45 °C; the fuse lets 6.6 A pass, the adapter 2.4 A (IEC 60364-4-43, 436).",
            Adapter().WithBox(b => b with { Protection = Parts.Lag(3.15) }).EachDrop(d => d with { Cable = Parts.Pair(24), Meters = 6 })),
        new("adapter that folds back, with a camera that starts behind it",
            "At 9.5 V it gives 0.6 + 1.8 x 9.5/12 = 2.0 A, and 6 W take 0.63 A there; a soft start ramps.",
            Adapter().WithBox(b => b with { Overload = Parts.FoldsBack(2.4, 0.6) })),
        new("recorder on an adapter of its own", "25 W of 12 V are 2.1 A of 3.3 A: 65 %.",
            Adapter().WithBox(b => b with { Rated = 3.3, Overload = Parts.Holds(4) })
                .EachDrop(d => d.OfWatts(25) with { Kind = DeviceKind.Recorder, Meters = 2 })),
        new("resettable fuse of 1.1 A with 0.65 A in a box of 50 °C",
            "70 % of 1.1 A are 0.77 A; the curves of families differ by 5 points: 0.715 A at the least (common practice, from memory).",
            Star(1).WithBox(b => b with { Outputs = 1, OutputLimit = 1, Protection = Parts.Resettable(1.1) })
                .EachDrop(d => d.Drawing(0.65) with { Meters = 10 })
                .In(Year.At("hot attic", LoadComponents.None, 45, 50), Year.WinterNight)),
        new("fuse that a short at the far end never opens, and nobody minds",
            "11.76 V / 7.4 Ω = 1.6 A: F1A opens for certain from 2.1 A. 20 AWG carries 6 A; the rail holds; the spot gets at most "
                + "12.24² / (4 x 6.0) = 6.2 W: a Note.",
            Fused(4, Parts.Quick(1)).WithDrop(1, BellWire(100))),
        new("fuse that opens in either season, but not in a mixed one",
            "20 AWG, 67.6 m: 2.20 A in summer of 60 °C, where F1A needs 1.94 A; 2.99 A in winter of -20 °C, where it needs 2.28 A. "
                + "Summer's cable meets no winter's box.",
            Fused(1, Parts.Quick(1)).WithDrop(1, BellWire(67.6))
                .In(Year.At("summer", LoadComponents.None, 60, 60), Year.At("winter", LoadComponents.None, -20, -20))),
        new("inrush of 1 µs on a fuse that states no melting integral",
            "5 A for 1 µs are 25 µA²s: no fuse of 1 A feels it. Strictly it is unknown, and what is unknown is a Note.",
            Fused(4, Parts.Quick(1, melting: null)).EachDrop(d => d with { Inrush = Parts.Surge(5, 25e-6) })),
        new("inrush of exactly 22 % of the melting integral",
            "0.11 A²s of 0.50 A²s: repeated pulses do not age the fuse (common practice, no source).",
            Fused(1, Parts.Quick(1)).EachDrop(d => d with { Inrush = Parts.Surge(12, 0.11) })),
        new("limited power source within every edition", "12.24 V x 2.4 A = 29 VA; 5 x 12.24 = 61 VA and 8 A in IEC 60950-1.",
            Adapter().WithBox(b => b with { Claims = PowerLimitClass.LimitedPowerSource })),
        new("limited power source of 92 VA at 12 V, no edition named",
            "IEC 62368-1, Table Q.1 (from memory): 8 A and 100 VA to 30 V; 12.24 V x 7.5 A = 91.8 VA. Only IEC 60950-1's 5 x Uoc = 61 "
                + "VA refutes it.",
            Adapter().WithBox(b => b with { Rated = 7, Overload = Parts.Holds(7.5), Claims = PowerLimitClass.LimitedPowerSource })),
        new("limited power source of 99 VA at 24 V", "24.48 V x 4.05 A = 99.1 VA of 100 VA, 4.05 A of 8 A.",
            Adapter().WithBox(b => b with { Volts = 24, Rated = 3.9, Overload = Parts.Holds(4.05),
                Claims = PowerLimitClass.LimitedPowerSource })
                .EachDrop(d => d with { Accepts = (20, 28), Starts = (18, 16) })),
    ];

    internal static System.Func<Drop, Drop> BellWire(double meters) =>
        d => d.OfWatts(2) with { Cable = Parts.Pair(20), Meters = meters, Accepts = (9, 14), Starts = (8.5, 7.5),
            Inrush = Parts.Surge(0.4, 0.001) };

    private static Cable Ganged(int awg, int wires)
    {
        Conductor conductor = new Conductor(WireSize.Awg(awg), Stranding.Solid, ConductorMaterial.AnnealedCopper).InParallel(wires);
        return new Cable(conductor, conductor, insulation: Insulation.Pvc70);
    }

    private static Installation Alternating() => Fused(4, Parts.Quick(1))
        .WithBox(b => b with { Kind = CurrentKind.Ac, Volts = 24, Rated = 8, Overload = OverloadBehavior.Unlimited, SourceOhms = 0.2 })
        .EachDrop(d => d with { Accepts = null, AcceptsAc = (20, 28), Starts = (15, 13) });

    private static Installation Metric(double area, double amperes) => Fused(1, Parts.Quick(10))
        .WithBox(b => b with { Volts = 24, Rated = 30, Overload = Parts.Holds(33), OutputLimit = amperes })
        .EachDrop(d => d.Drawing(amperes) with
        {
            Kind = DeviceKind.Other, Cable = Parts.MetricPair(area), Meters = 5, Accepts = (20, 28), Starts = (18, 16),
        }).In(Year.At("30 °C", LoadComponents.None, cable: 30, box: 23));

    private static Installation MetricElectronic(double area, double amperes) => Metric(area, amperes)
        .WithBox(b => b with { Protection = Parts.Electronic(19) });
}
