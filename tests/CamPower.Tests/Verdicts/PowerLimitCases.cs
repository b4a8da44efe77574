using System.Collections.Generic;
using static CamPower.Tests.Verdicts.Installation;

namespace CamPower.Tests.Verdicts;

/// <summary>Claims that the numbers of an output refute.</summary>
/// <remarks>A claim names no edition today; one without is refuted where every edition refutes it.</remarks>
internal static class PowerLimitCases
{
    internal static IReadOnlyList<VerdictCase> All { get; } =
    [
        new VerdictCase("limited power source of 11 A at 12 V",
            "8 A at the most to 30 V, in IEC 60950-1 and in IEC 62368-1 Table Q.1 (from memory).",
            Claiming(12, rated: 10, limit: 11, PowerLimitClass.LimitedPowerSource)).Danger("power-limit-exceeded", "box output 1"),
        new VerdictCase("limited power source of 122 VA at 24 V", "24.48 V x 5 A = 122 VA of 100 VA, in both.",
            Claiming(24, rated: 4.5, limit: 5, PowerLimitClass.LimitedPowerSource)).Danger("power-limit-exceeded", "box output 1"),
        new VerdictCase("Class 2 of 72 VA at 12 V",
            "NEC Chapter 9, Table 11(B): the nameplate says at most 5 x 12 = 60 VA (from memory); 12 V x 6 A are 72 VA.",
            Claiming(12, rated: 6, limit: 6.5, PowerLimitClass.Class2)).Danger("power-limit-exceeded", "box output 1"),
    ];

    private static Installation Claiming(double volts, double rated, double limit, PowerLimitClass claim) => Adapter()
        .WithBox(b => b with { Volts = volts, Rated = rated, Overload = Parts.Holds(limit), Claims = claim })
        .EachDrop(d => d with { Cable = Parts.Pair(14), Accepts = volts > 20 ? (20, 28) : (10.8, 13.2), Starts = volts > 20
            ? (18, 16) : (9.5, 8.5) });
}
