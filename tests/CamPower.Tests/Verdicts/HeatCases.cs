using System.Collections.Generic;
using static CamPower.Tests.Verdicts.Installation;

namespace CamPower.Tests.Verdicts;

/// <summary>Boxes too hot and too cold, and what the heat does to their protective devices.</summary>
internal static class HeatCases
{
    internal static IReadOnlyList<VerdictCase> All { get; } =
    [
        new VerdictCase("box in air of 72 °C", "No generic supply is rated above 70 °C (common practice, no source).",
            Star(4).In(Year.At("under the roof", LoadComponents.None, 45, 72), Year.WinterNight)).Failure("supply-too-hot", "box", 72, 70),
        new VerdictCase("box in air of -25 °C", "No generic supply is rated below -20 °C: it may not start (common practice, no source).",
            Star(4).In(Year.At("hard frost", LoadComponents.Infrared, -25, -25), Year.SummerNight))
                .Failure("supply-too-cold", "box", -25, -20),
        new VerdictCase("cupboard in air of -24 °C that a switch keeps above -20 °C",
            "26 W warm it by some 25 K, so it runs; after an outage the supply starts at -24 °C (common practice, no source).",
            Star(4).WithBox(b => b with { Enclosure = Parts.Steel(0.2, 0.3, 0.12, otherWatts: 24) })
                .In(Year.At("hard frost", LoadComponents.Infrared, -24, -24), Year.WinterNight)).Caution("supply-too-cold", "box", -24, -20),
        new VerdictCase("small cupboard in full sun with a switch in it",
            "1000 W/m² on 0.12 m² of light gray are 72 W, 20 W of a switch and 3 W of losses: 95 W through 0.18 m² at some 7 W/m²K warm "
                + "by 75 K, from 40 °C.",
            Star(4).WithBox(b => b with { Enclosure = Parts.Steel(0.2, 0.3, 0.12, sunlit: 0.12, otherWatts: 20) })
                .In(Year.At("sunny day", LoadComponents.None, 45, 40, sun: 1000), Year.WinterNight)).Failure("supply-too-hot", "box", null, 70),
        new VerdictCase("cupboard that stays a degree under the limit",
            "26 W through 0.18 m² at some 5.7 W/m²K warm it by about 25 K from 43 °C to 68 °C; a quarter of the rise is the model's own "
                + "uncertainty: 62 °C to 74 °C, and 70 °C less that quarter are 63.6 °C.",
            Star(2).WithBox(b => b with { Enclosure = Parts.Steel(0.2, 0.3, 0.12, otherWatts: 24) })
                .In(Year.At("hot day", LoadComponents.None, 45, 43), Year.WinterNight)).Caution("thin-heat-margin", "box", null, 63.6),
        new VerdictCase("resettable fuse of 1.1 A with 0.95 A in 50 °C", "It holds 70 % there: 0.77 A (common practice, from memory).",
            Warm(0.95, 50)).Failure("nuisance-trip", "box output 1", 0.95, 0.77),
        new VerdictCase("resettable fuse of 1.1 A with 0.879 A in 40 °C",
            "It holds 0.88 A by the mean curve; families differ by 5 points: 0.825 A.",
            Warm(0.879, 40)).Caution("nuisance-trip", "box output 1", 0.879),
    ];

    private static Installation Warm(double amperes, double box) => Star(1)
        .WithBox(b => b with { Outputs = 1, Protection = Parts.Resettable(1.1) }).EachDrop(d => d.Drawing(amperes) with { Meters = 5 })
        .In(Year.At("hot attic", LoadComponents.None, 45, box), Year.WinterNight);
}
