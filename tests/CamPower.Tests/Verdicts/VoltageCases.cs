using System.Collections.Generic;
using static CamPower.Tests.Verdicts.Installation;

namespace CamPower.Tests.Verdicts;

/// <summary>Too little voltage, too much, too little in hand, none at all.</summary>
/// <remarks>Of constant power P behind R, fed with U: (U + √(U² - 4·R·P))/2, Ohm's law.</remarks>
internal static class VoltageCases
{
    internal static IReadOnlyList<VerdictCase> All { get; } =
    [
        new VerdictCase("one camera 60 m away",
            "2.61 Ω at 30 °C, 0.06 Ω of limit and source: (11.76 + √(138.3 - 4 x 2.67 x 6))/2 = 10.19 V of 10.8 V.",
            Star(4).WithDrop(4, d => d with { Meters = 60 })).Failure("undervoltage", "camera 4", 10.19, 10.8),
        new VerdictCase("one camera 33 m away",
            "1.44 Ω and 0.06 Ω: 10.94 V, accepted from 10.8 V on; 2 % above that are 11.02 V (a policy).",
            Star(4).WithDrop(4, d => d with { Meters = 33 })).Caution("thin-voltage-margin", "camera 4", 10.94, 11.016),
        new VerdictCase("camera on 120 m of 22 AWG",
            "52.96 mΩ/m x 240 m x 1.039 = 13.2 Ω carry at most 11.76² / (4 x 13.27) = 2.6 W of the 6 W.",
            Star(4).WithDrop(4, d => d with { Meters = 120, Cable = Parts.Pair(22) }))
                .Failure("no-operating-point", "camera 4", 6, 2.606),
        new VerdictCase("12 V camera on a 24 V box", "24 V on an input of 13.2 V.",
            Star(1).WithBox(b => b with { Volts = 24 })).Danger("supply-voltage-too-high", "camera 1", 24, 13.2),
        new VerdictCase("near camera on a box that is set up", "13.1 V + 2 % are 13.36 V; 3.5 W lose 0.04 V on 2 m: 13.33 V of 13.2 V.",
            SetUp(meters: 2)).Danger("overvoltage-at-light-load", "camera 1", 13.33, 13.2),
        new VerdictCase("camera that sees too much until it draws",
            "13.36 V unloaded; 3.5 W lose 0.21 V and more on 20 m: 13.15 V of 13.2 V.",
            SetUp(meters: 20)).Caution("overvoltage-at-no-load", "camera 1", 13.36, 13.2),
        new VerdictCase("box set to exactly the highest that its cameras accept",
            "13.2 V is met, but a handheld meter of 0.5 % (common practice, no source) sets it to 13.27 V as well; 13.134 V leave that in hand.",
            Star(1).WithBox(b => b with { TolerancePercent = 0, Trim = (12, 14), SetTo = 13.2 }).EachDrop(d => d with { Meters = 0.1 }))
                .Caution("thin-voltage-margin", "camera 1", 13.2, 13.134),
        new VerdictCase("resettable fuse that has grown in the heat",
            "0.14 Ω at 20 °C are 0.196 Ω at 60 °C (1 % a kelvin, common practice): 11.76 - 0.6 x (1.433 + 0.196 + 0.01) = 10.78 V; with "
                + "0.14 Ω it would be 10.81 V.",
            Star(1).WithBox(b => b with { Outputs = 1, Protection = Parts.Resettable(1.1) })
                .EachDrop(d => d.Drawing(0.6) with { Meters = 31.15 })
                .In(Year.At("hot attic", LoadComponents.None, 45, 60), Year.WinterNight)).Failure("undervoltage", "camera 1", 10.78, 10.8),
        new VerdictCase("58 V within reach",
            "58 V + 5 % are 60.9 V: bare parts that people can touch may have 60 V DC (IEC 60335-1, 3.4.2).",
            Star(1).WithBox(b => b with { Volts = 58, TolerancePercent = 5 })
                .EachDrop(d => d with { Accepts = (40, 62), Starts = (38, 36) }))
            .Caution("voltage-above-accessible", "box", 60.9, 60),
    ];

    private static Installation SetUp(double meters) => Star(1).WithBox(b => b with { Trim = (12, 14), SetTo = 13.1 })
        .EachDrop(d => d with { Meters = meters });
}
