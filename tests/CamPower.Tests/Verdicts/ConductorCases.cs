using System.Collections.Generic;
using static CamPower.Tests.Verdicts.Installation;

namespace CamPower.Tests.Verdicts;

/// <summary>Conductors that are too thin for what they carry, or for what protects them.</summary>
internal static class ConductorCases
{
    internal static IReadOnlyList<VerdictCase> All { get; } =
    [
        new VerdictCase("4 A in 22 AWG in a large bundle at 45 °C",
            "3 A for 105 °C in 70 °C (FAA AC 43.13-1B): √(25/35 x 1.334/1.197) of it for 70 °C in 45 °C, 2.68 A; a limit that passes 4 "
                + "A passes too much for it as well.",
            Star(1).WithBox(b => b with { OutputLimit = 4.5, Protection = Parts.Electronic(5) })
                .EachDrop(d => d.Drawing(4) with
                {
                    Kind = DeviceKind.Other, Cable = Parts.Pair(22), InstallationMethod = InstallationMethod.LargeBundle, Meters = 2, Accepts = (9, 15),
                        Starts = (8, 7),
                }))
            .Danger("conductor-over-ampacity", "box output 1 to camera 1 place", 4, 2.68)
                .Danger("protection-above-conductor-ampacity", "box output 1", null, null),
        new VerdictCase("blade fuse of 10 A on 18 AWG",
            "7 A at the most on 18 AWG (NEC 240.4(D)(1), from memory); the supply can give 24 A.",
            Fused(1, Parts.Blade(10)).EachDrop(d => d with { Meters = 8 }))
                .Danger("protection-above-conductor-ampacity", "box output 1", 10, 7),
        new VerdictCase("fuse F5A on 24 AWG",
            "24 AWG in its own cable carries 14 A x (0.511/1.024)^1.5 x √(25/60 x 1.275/1.197) = 3.3 A at 45 °C.",
            Fused(1, Parts.Quick(5)).EachDrop(d => d with { Cable = Parts.Pair(24), Meters = 2 }))
                .Danger("protection-above-conductor-ampacity", "box output 1", 5),
        new VerdictCase("three outputs that come back through one 22 AWG",
            "3 x 3.3 A pass the limits, and the common return carries 4.6 A at 45 °C (IEC 60364-4-43, 433, for a common return).",
            CommonReturn()).Danger("protection-above-conductor-ampacity", "*"),
        new VerdictCase("22 AWG without protection behind 24 A",
            "22 AWG carries some 4.6 A at 45 °C, the supply holds 24 A (IEC 60364-4-43, 431).",
            Fused(1, ProtectiveDevice.None).EachDrop(d => d with { Cable = Parts.Pair(22), Meters = 5 }))
                .Danger("protection-missing", "box output 1"),
        new VerdictCase("copper-clad aluminum", "1.55 times the resistance of copper (ASTM B566): 0.71 Ω, 11.3 V; weaker at terminals.",
            Star(2).WithDrop(2, d => d with { Meters = 10, Cable = Parts.Pair(18, ConductorMaterial.CopperCladAluminum15) }))
            .Caution("copper-clad-aluminum", "box output 2 to camera 2 place"),
        new VerdictCase("copper-clad aluminum of 18 AWG behind a limit of 7.15 A",
            "Copper of that size may have 7 A (NEC 240.4(D)(1), from memory), and that row is for copper alone: a worse conductor may "
                + "not have more.",
            Star(1).WithBox(b => b with { OutputLimit = 5, Protection = Parts.Electronic(6.5) })
                .EachDrop(d => d with { Meters = 8, Cable = Parts.Pair(18, ConductorMaterial.CopperCladAluminum15) }))
            .Caution("copper-clad-aluminum", "box output 1 to camera 1 place")
                .Danger("protection-above-conductor-ampacity", "box output 1", 7.15),
        new VerdictCase("12 AWG in a terminal for 14 AWG", "3.31 mm² of 2.08 mm² (ASTM B258).",
            Star(2).WithBox(b => b with { Terminals = new TerminalRange(WireSize.Awg(24), WireSize.Awg(14)) })
                .WithDrop(2, d => d with { Cable = Parts.Pair(12) }))
            .Caution("terminal-wrong-size", "box output 2 to camera 2 place", 3.309, 2.081),
    ];

    private static Installation CommonReturn() => Star(3).WithBox(b => b with { OutputLimit = 2.5, Protection = Parts.Electronic(3) })
        .EachDrop(d => d.Drawing(0.8) with { Meters = 3, Cable = Parts.Pair(16), ReturnsAt = d.Output == 1 ? null : "camera 1" })
        .WithDrop(1, d => d with { Cable = Parts.Pair(22) });
}
