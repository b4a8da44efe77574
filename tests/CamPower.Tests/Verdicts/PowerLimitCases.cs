using System.Collections.Generic;
using static CamPower.Tests.Verdicts.Installation;

namespace CamPower.Tests.Verdicts;

/// <summary>Claims that the numbers of an output refute.</summary>
/// <remarks>A claim names no edition today; one without is refuted where every edition refutes it. The mark on the product decides, so that it is a Failure; where the wiring relies
/// on the class, what may burn is a Danger of its own (common practice, no source).</remarks>
internal static class PowerLimitCases
{
    internal static IReadOnlyList<VerdictCase> All { get; } =
    [
        new VerdictCase("limited power source of 11 A at 12 V",
            "8 A at the most to 30 V, in IEC 60950-1 and in IEC 62368-1 Table Q.1 (from memory).",
            Claiming(12, rated: 10, limit: 11, PowerLimitClass.LimitedPowerSource).WithBox(b => b with { Protection = Parts.Electronic(9.5) }))
            .Failure("power-limit-exceeded", "box output 1"),
        new VerdictCase("limited power source of 122 VA at 24 V", "24.48 V x 5 A = 122 VA of 100 VA, in both. Nothing ends a poor contact of as many watts (a policy: 15 W, 100 W).",
            Claiming(24, rated: 4.5, limit: 5, PowerLimitClass.LimitedPowerSource)).Failure("power-limit-exceeded", "box output 1")
            .Failure("short-may-not-be-interrupted", "box output 1", 5),
        new VerdictCase("Class 2 of 72 VA at 12 V",
            "NEC Chapter 9, Table 11(B): the nameplate says at most 5 x 12 = 60 VA (from memory); 12 V x 6 A are 72 VA.",
            Claiming(12, rated: 6, limit: 6.5, PowerLimitClass.Class2)).Failure("power-limit-exceeded", "box output 1"),
        new VerdictCase("Class 2 of 96 VA at 12 V on 18 AWG",
            "5 x 12 = 60 VA on the nameplate (NEC Chapter 9, Table 11(B), from memory). Not of Class 2, 18 AWG may have 7 A of protection (240.4(D)(1)); the limit lets 8.8 A through.",
            Claiming(12, rated: 8, limit: 10.5, PowerLimitClass.Class2).WithBox(b => b with { Protection = Parts.Electronic(8) })
                .EachDrop(d => d with { Cable = Parts.Pair(18) }))
            .Failure("power-limit-exceeded", "box output 1").Danger("protection-above-conductor-ampacity", "box output 1", 8.8, 7),
    ];

    private static Installation Claiming(double volts, double rated, double limit, PowerLimitClass claim) => Adapter()
        .WithBox(b => b with { Volts = volts, Rated = rated, Overload = Parts.Holds(limit), Claims = claim })
        .EachDrop(d => d with { Cable = Parts.Pair(14), Accepts = volts > 20 ? (20, 28) : (10.8, 13.2), Starts = volts > 20
            ? (18, 16) : (9.5, 8.5) });
}
