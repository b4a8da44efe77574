using System.Collections.Generic;
using static CamPower.Tests.Verdicts.Installation;

namespace CamPower.Tests.Verdicts;

/// <summary>Wires on the wrong terminals.</summary>
internal static class WiringCases
{
    internal static IReadOnlyList<VerdictCase> All { get; } =
    [
        new VerdictCase("leads of a camera reversed", "It may be destroyed at once (common practice, no source).",
            Star(2).WithDrop(2, d => d with { LeadsReversed = true })).Danger("reversed-polarity", "camera 2"),
        new VerdictCase("24 V AC on a camera for 24 V DC", "Half of the time it is reversed (common practice, no source).",
            Powered(CurrentKind.Ac, acceptsAc: false))
            .Danger("ac-into-dc-device", "camera 1"),
        new VerdictCase("24 V DC on a camera for 24 V AC", "It does not run (common practice, no source).",
            Powered(CurrentKind.Dc, acceptsAc: true))
            .Failure("dc-into-ac-device", "camera 1"),
        new VerdictCase("two outputs tied together", "12.24 V feed 11.76 V, past both limits (common practice, no source).", Tied())
            .Danger("outputs-tied-together", "box output 2"),
        new VerdictCase("two voltages in one cabinet", "A wire on the wrong bank destroys a camera (common practice, no source).",
            SoundBoxes.TwoBanks(isShared: true)).Caution("mixed-voltages-in-one-cabinet", "cabinet"),
        new VerdictCase("hum on a shield",
            "0.53 A x 0.46/(0.46 + 1.0) = 0.17 A on a shield of 0.9 Ω: 0.15 V, and 10 % of ripple make 15 mV of it; the policy is 10 mV.",
            SoundBoxes.Shielded(ripple: 10).EachDrop(d => d with { Accepts = (8.5, 16), Starts = (8, 7.5) })).Caution("ground-loop-hum", "camera 1", null, 0.01),
        new VerdictCase("plug of the 12 V class on 24 V", "EIAJ RC-5320A class 4 ends at 13.5 V.",
            Star(1).WithBox(b => b with { Volts = 24 })
                .EachDrop(d => d with { Accepts = (20, 28), Starts = (18, 16), Plug = Connector.UnifiedBarrels[2] }))
            .Caution("voltage-outside-connector-class", "camera 1", 24, 13.5),
        new VerdictCase("supply for 100 V to 132 V in a receptacle of 230 V", "It bursts (common practice, no source).",
            Plugged(230, 100, 132)).Danger("receptacle-voltage-outside-supply-range", "box", 230, 132),
        new VerdictCase("supply for 200 V to 240 V in a receptacle of 120 V", "It does not run (common practice, no source).",
            Plugged(120, 200, 240)).Failure("receptacle-voltage-outside-supply-range", "box", 120, 200),
    ];

    private static Installation Plugged(double volts, double lowest, double highest) => Star(2).WithBox(b => b with
    {
        Input = (lowest, highest),
        Receptacle = new Receptacle("receptacle", UnitsNet.ElectricPotential.FromVolts(volts), UnitsNet.ElectricCurrent.FromAmperes(15)),
    });

    private static Installation Powered(CurrentKind kind, bool acceptsAc) => Star(1)
        .WithBox(b => b with { Volts = 24, Kind = kind })
        .EachDrop(d => d with { Accepts = acceptsAc ? null : (20, 28), AcceptsAc = acceptsAc ? (20, 28) : null, Starts = (15, 13) });

    private static Installation Tied()
    {
        Installation one = Star(1);
        return one with
        {
            Boxes = [one.Boxes[0], new PowerBox { Name = "other box" }],
            Drops = [one.Drops[0], new Drop { Name = "camera 2", Box = "other box" }],
            Ties = [new OutputTie("box", 2, "other box", 2)],
        };
    }
}
