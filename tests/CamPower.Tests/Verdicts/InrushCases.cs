using System.Collections.Generic;
using UnitsNet;
using static CamPower.Tests.Verdicts.Installation;

namespace CamPower.Tests.Verdicts;

/// <summary>Inrush that ages a fuse, opens it, or outlasts a limit.</summary>
internal static class InrushCases
{
    internal static IReadOnlyList<VerdictCase> All { get; } =
    [
        new VerdictCase("inrush of 40 % of the melting integral",
            "0.20 A²s of 0.50 A²s: above 22 % repeated pulses age a fuse (common practice).",
            Fused(1, Parts.Quick(1)).EachDrop(d => d with { Inrush = Parts.Surge(12, 0.2) })).Caution("nuisance-trip", "box output 1"),
        new VerdictCase("inrush of 120 % of the melting integral", "0.60 A²s of 0.50 A²s: it opens.",
            Fused(1, Parts.Quick(1)).EachDrop(d => d with { Inrush = Parts.Surge(20, 0.6) })).Failure("nuisance-trip", "box output 1"),
        new VerdictCase("inrush that outlasts an electronic limit",
            "3 A for 200 ms; the limit holds at most 1.65 A and has opened after 50 ms: it never starts.",
            Star(1).EachDrop(d => d with { Inrush = new Inrush(ElectricCurrent.FromAmperes(3), Duration.FromMilliseconds(200)) }))
            .Failure("nuisance-trip", "box output 1"),
        new VerdictCase("inrush of all that shuts the supply down",
            "8 x 5 A for 10 ms are 0.4 C, of which the limits of 2.5 A pass 8 x 2.25 A at the least: 18 A for 22 ms; the supply, up in 1 ms, is off "
                + "within 5 ms above 11 A: nothing ever starts.",
            Star(8).WithBox(b => b with { Overload = Parts.ShutsDown(11, milliseconds: 5), RiseMilliseconds = 1, OutputLimit = 2,
                Protection = Parts.Electronic(2.5) })
                .EachDrop(d => d with { Inrush = new Inrush(ElectricCurrent.FromAmperes(5), Duration.FromMilliseconds(10)) }))
            .Failure("start-beyond-supply-limit", "box", 18, 11),
    ];
}
