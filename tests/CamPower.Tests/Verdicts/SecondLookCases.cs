using System.Collections.Generic;
using UnitsNet;
using static CamPower.Tests.Verdicts.Installation;

namespace CamPower.Tests.Verdicts;

/// <summary>Installations that a second engineer made up against the verdicts: each with the sound one beside it.</summary>
internal static class SecondLookCases
{
    internal static IReadOnlyList<VerdictCase> All { get; } =
    [
        new VerdictCase("splice of 1 Ω behind a camera of 2.5 A",
            "2.5² x 1 = 6.3 W in a splice for as long as it is on: more than 2 W (common practice), less than 15 W (power-source class PS1, from memory).",
            Spliced(1)).Caution("joint-overloaded", "box output 1 to camera 1 place", 6.25, 2),
        new VerdictCase("splice of 3 Ω behind a camera of 2.5 A", "2.5² x 3 = 18.8 W: it may burn.",
            Spliced(3)).Failure("joint-overloaded", "box output 1 to camera 1 place", 18.75, 15),
        new("splice of 0.02 Ω behind a camera of 2.5 A", "Two gel-filled splices: 2.5² x 0.02 = 0.13 W.", Spliced(0.02)),

        new VerdictCase("transformer of 40 VA behind T3.15A",
            "No limit of its own and 1.67 A: 1.67 times that are 2.8 A (NEC 450.3(B), from memory); T3.15A carries 6.6 A for minutes (IEC 60127-2).",
            Transformer(1, 3.15)).Failure("supply-not-protected", "box", 3.15, 2.789),
        new VerdictCase("four outputs of T1.6A on a transformer of 40 VA", "One is within 2.8 A; together they carry 6.4 A (NEC 450.3(B), note 2, from memory).",
            Transformer(4, 1.6)).Caution("supply-not-protected", "box", 6.4, 2.789).Caution("short-collapses-supply-voltage", "box"),
        new("one output of T1.6A on a transformer of 40 VA", "1.6 A of 2.8 A.", Transformer(1, 1.6)),
        new("one output of T2.5A on a transformer of 40 VA", "2.5 A of 2.8 A.", Transformer(1, 2.5)),

        new VerdictCase("fuse T4A before an output for 1 A", "433.1 of IEC 60364-4-43, from memory: In <= Iz. 4 A flow through the terminals of 1 A for ever.",
            Fused(1, Parts.Lag(4)).WithBox(b => b with { OutputLimit = 1 })).Failure("protection-above-output-limit", "box output 1", 4, 1.45),
        new VerdictCase("electronic limit of 1.8 A before outputs for 1 A", "1.8 A of 1.45 A, not twice the limit.",
            Star(2).WithBox(b => b with { OutputLimit = 1, Protection = Parts.Electronic(1.8) })).Caution("protection-above-output-limit", "box", 1.8, 1.45),
        new("electronic limit of 5 A before an output of 1 A, behind 1.2 A", "The supply cannot exceed 1.2 A: it protects the output (IEC 60364-4-43, 436).",
            Star(1).WithBox(b => b with { OutputLimit = 1, Protection = Parts.Electronic(5), Rated = 1.1, Overload = Parts.Holds(1.2) })),

        new("8 AWG behind an electronic limit of 1.5 A", "It carries no less than 10 AWG: 30 A and more.", Star(1).EachDrop(d => d with { Cable = Parts.Pair(8) })),
        new("25 mm² behind an electronic limit of 1.5 A", "It carries no less than 16 mm²: 57 A in A2 (IEC 60364-5-52 Table B.52.2, from memory).",
            Star(1).EachDrop(d => d with { Cable = Parts.MetricPair(25), InstallationMethod = null })),
        new VerdictCase("electronic limit of 100 A on 8 AWG",
            "8.37 mm² carry at most 8.37/5.26 of what 10 AWG carries, for a larger wire sheds less heat: no 100 A by any table (NEC Table 310.16: 40 A at 60 °C).",
            Star(1).WithBox(b => b with { Rated = 200, Overload = Parts.Holds(220), OutputLimit = 100, Protection = Parts.Electronic(100) })
                .EachDrop(d => d with { Cable = Parts.Pair(8), Meters = 5 })).Danger("protection-above-conductor-ampacity", "box output 1"),

        new("flat box of 80 mm, cool and nearly idle", "7 W of cameras lose 1 W: twice the rise is still far from 50 °C.", Boxed(0.08, outside: 20)),
        new("floor cabinet of 2.1 m, cool and nearly idle", "The same.", Boxed(0.4, outside: 20, height: 2.1)),

        new VerdictCase("one camera behind T2A and a supply of 12 A that pulses",
            "A contact that lasts draws less than 4.3 A in 20 °C and gets 4.3 x 12 = 51 W, not the 12 A of the supply.",
            Fused(1, Parts.Lag(2)).WithBox(b => b with { Rated = 10, Overload = Parts.Pulses(12) })).Caution("short-may-not-be-interrupted", "box output 1"),

        new VerdictCase("ripple of 10 % on a camera for 11 V to 13.2 V",
            "A sawtooth of 1.2 V RMS is 2.1 V to each side: 9.6 V in the valley and 14.3 V at the crest.",
            Star(1).WithBox(b => b with { RipplePercent = 10 }).EachDrop(d => d with { Accepts = (11, 13.2), Starts = (9, 7) }))
            .Failure("undervoltage", "camera 1", 9.28, 11).Danger("overvoltage-at-light-load", "camera 1", 14.1, 13.2),
        new("ripple of 2 % on a camera for 9 V to 16 V", "0.42 V to each side of 12 V.",
            Star(1).WithBox(b => b with { RipplePercent = 2 }).EachDrop(d => d with { Accepts = (9, 16), Starts = (8.5, 8) })),
    ];

    private static Installation Spliced(double ohms) => Star(1)
        .WithBox(b => b with { Volts = 24, OutputLimit = 3, Protection = Parts.Electronic(3.5) })
        .EachDrop(d => d.Drawing(2.5) with { JointOhms = ohms, Accepts = (9, 28), Starts = (8, 7), Meters = 5, Cable = Parts.Pair(16) });

    private static Installation Transformer(int outputs, double fuse) => Star(outputs)
        .WithBox(b => b with { Kind = CurrentKind.Ac, Volts = 24, Rated = 1.67, Overload = OverloadBehavior.Unlimited, SourceOhms = 0.8, Protection = Parts.Lag(fuse) })
        .EachDrop(d => d.OfWatts(4) with { Accepts = null, AcceptsAc = (18, 30), Starts = (15, 13), Meters = 5 });

    private static Installation Boxed(double depth, double outside, double height = 0.4) => Star(2)
        .WithBox(b => b with { Enclosure = Parts.Steel(0.4, height, depth) })
        .In(Year.At("night", LoadComponents.Infrared, outside, outside));
}
