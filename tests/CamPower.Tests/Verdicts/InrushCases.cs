using System.Collections.Generic;
using UnitsNet;
using static CamPower.Tests.Verdicts.Installation;

namespace CamPower.Tests.Verdicts;

/// <summary>Inrush that ages a fuse, opens it, or outlasts a limit.</summary>
internal static class InrushCases
{
    internal static IReadOnlyList<VerdictCase> All { get; } =
    [
        new VerdictCase("inrush of 40 % of the melting integral", "0.20 A2s of 0.50 A2s: above 22 % repeated pulses age a fuse (common practice).",
            Fused(1, Parts.Quick(1)).EachDrop(d => d with { Inrush = Parts.Surge(12, 0.2) })).Caution("nuisance-trip", "box output 1"),
        new VerdictCase("inrush of 120 % of the melting integral", "0.60 A2s of 0.50 A2s: it opens.",
            Fused(1, Parts.Quick(1)).EachDrop(d => d with { Inrush = Parts.Surge(20, 0.6) })).Failure("nuisance-trip", "box output 1"),
        new VerdictCase("inrush that outlasts an electronic limit", "3 A for 200 ms; the limit holds at most 1.65 A and has opened after 50 ms: it never starts.",
            Star(1).EachDrop(d => d with { Inrush = new Inrush(ElectricCurrent.FromAmperes(3), Duration.FromMilliseconds(200)) }))
            .Failure("nuisance-trip", "box output 1"),
    ];
}
