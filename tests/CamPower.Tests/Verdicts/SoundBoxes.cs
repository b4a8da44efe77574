using System.Collections.Generic;
using UnitsNet;
using static CamPower.Tests.Verdicts.Installation;

namespace CamPower.Tests.Verdicts;

/// <summary>Sound boxes: supplies, outputs and where they hang.</summary>
/// <remarks>Copper of 18 AWG has 20.95 mΩ/m at 20 °C, 16 AWG 13.17, 20 AWG 33.31, 24 AWG 84.2 (NBS Handbook 100), and 0.393 % more a
/// kelvin.</remarks>
internal static class SoundBoxes
{
    private static readonly Enclosure Cupboard = Parts.Steel(0.3, 0.4, 0.15);

    internal static IReadOnlyList<VerdictCase> All { get; } =
    [
        new("four cameras behind electronic limits",
            "20 m of 18 AWG at 30 °C are 0.87 Ω: 6 W of 11.76 V leave 11.27 V, and 11.02 V are asked for; a short takes 1.65 A of the "
                + "supply's 11 A.",
            Star(4)),
        new("eight cameras behind electronic limits", "8 x 0.53 A are 4.3 A, and 80 % of 10 A may be loaded.", Star(8)),
        new("box loaded to exactly 80 %, outputs to exactly their limits",
            "8 x 1.0 A are 8.0 A of 10 A (common practice, no source: 80 %).",
            Star(8).WithBox(b => b with { OutputLimit = 1, Protection = Parts.Electronic(1.4) }).EachDrop(d => d.Drawing(1) with { Meters = 8 })),
        new("box loaded to exactly 80 % of what it may give at 60 °C",
            "Full rating to 50 °C and half of it at 70 °C (common practice, no source): 7.5 A of 10 A at 60 °C, and 6 x 1.0 A are 80 % "
                + "of them.",
            Star(6).EachDrop(d => d.Drawing(1) with { Meters = 8 }).In(Year.At("hot attic", LoadComponents.None, 45, 60), Year.WinterNight)),
        new("box at the coldest that it is rated for", "-20 °C is the cold end of the generic curve (common practice, no source).",
            Star(4).In(Year.At("frost", LoadComponents.Infrared, -20, -20), Year.SummerNight)),
        new("box that pulses in overload, with electronic limits",
            "A short takes 1.65 A and the other three 1.6 A: 3.3 A do not reach the 11 A at which it pulses.", Star(4)
                .WithBox(b => b with { Overload = Parts.Pulses(11) })),
        new("box that shuts down in overload, with electronic limits", "As before: 3.3 A do not reach 11 A.", Star(4)
            .WithBox(b => b with { Overload = Parts.ShutsDown(11) })),
        new("box of exactly the highest voltage that its cameras accept", "13.2 V is 12 V + 10 %, and a limit that is met is kept.",
            Star(2).WithBox(b => b with { TolerancePercent = 10 }).EachDrop(d => d with { Accepts = (9, 13.2), Starts = (8.5, 7.5) })),
        new("box set half a percent below the highest that its cameras accept",
            "13.134 V is 13.2 V - 0.5 %, what a handheld meter is good for (common practice, no source).",
            Star(2).WithBox(b => b with { TolerancePercent = 0, Trim = (12, 14), SetTo = 13.134 })),
        new("box set to 12.6 V for cameras 40 m away", "12.35 V behind 1.74 Ω and 0.06 Ω leave 11.4 V of 10.8 V; 12.6 V + 2 % are 12.85 V of 13.2 V.",
            Star(4).WithBox(b => b with { Trim = (12, 14), SetTo = 12.6 }).EachDrop(d => d with { Meters = 40 })),
        new("pan-tilt-zoom camera that rides through its own motors",
            "6 A of 11.76 V are 1.96 Ω: behind 1.15 Ω it has some 6.7 V, under its 8.5 V, for 20 ms x 11.76/6.7 = 35 ms, and runs on for 50 ms.",
            Fused(1, Parts.Lag(2)).WithBox(b => b with { OutputLimit = 1.6 }).EachDrop(d => d with
            {
                Base = Load.ConstantPower(Power.FromWatts(5)), Infrared = Load.None, Motor = Load.ConstantPower(Power.FromWatts(4)), Accepts = (10, 14), Meters = 25,
                HoldUpMilliseconds = 50, SwitchedInrush = new Inrush(ElectricCurrent.FromAmperes(6), Duration.FromMilliseconds(20)),
            }).In(Year.SummerDay, Year.At("night with motion", LoadComponents.Motor, 30, 35))),
        new("box set to 13.8 V for cameras of 9 V to 15 V", "13.8 V + 2 % are 14.08 V of 15 V.",
            Star(4).WithBox(b => b with { Trim = (12, 14), SetTo = 13.8 }).EachDrop(d => d with { Accepts = (9, 15), Starts = (8.5, 7.5) })),
        new("box in a steel cupboard in the shade", "25 W at 88 % lose 3.5 W; 0.33 m² of free steel at some 6 W/m²K rise by 2 K.",
            Star(4).WithBox(b => b with { Enclosure = Cupboard })),
        new("box in a steel cupboard in the sun",
            "800 W/m² on 0.06 m² of light gray (0.6) are 29 W, with the losses 31 W: some 15 K above 30 °C, where the supply may give "
                + "all of its rating.",
            Star(4).WithBox(b => b with { Enclosure = Parts.Steel(0.3, 0.4, 0.15, sunlit: 0.06) })
                .In(Year.At("sunny day", LoadComponents.None, 45, 30, sun: 800), Year.SummerNight, Year.WinterNight)),
        new("two voltages in two cabinets",
            "Nobody lands a wire on the wrong bank where each has a cabinet of its own (common practice, no source).",
            TwoBanks(isShared: false)),
        new("box on a receptacle of 15 A", "25 W at 88 % and a power factor of 0.95 are 0.25 A of 120 V; NEC 210.21(B)(2) allows 12 A.",
            Star(4).WithBox(b => b with { Receptacle = new Receptacle("receptacle", ElectricPotential.FromVolts(120),
                ElectricCurrent.FromAmperes(15)) })),
        new("two cameras one behind the other",
            "10 m of 16 AWG carry 1.1 A: the first loses 0.3 V, the second 0.15 V more; 1.35 A pass the limit for certain.", Chain()),
        new("two pan-tilt-zoom cameras of 24 V with motors and heaters",
            "35 W of 23.5 V over 30 m of 16 AWG (0.87 Ω) take 1.6 A and leave 22.1 V of the 20 V needed; 2.25 A pass the limit for "
                + "certain.", PanTiltZoom()),
        new("nothing declared of eight outputs' faults",
            "Not known is a Note: what a short does is to be asked of the makers, and nothing is known to be wrong.",
            Star(8).WithBox(b => b with { Protection = null, Overload = null, SourceOhms = null, Microfarads = null })),
        new("shield that hears next to nothing",
            "0.13 A of the return take the shield of 0.9 Ω: 0.12 V, and 0.5 % of ripple make 0.6 mV of that; the policy is 10 mV.",
            Shielded(ripple: 0.5)),
        new("shield beside a supply that states no ripple", "What hums is not known: a Note, to be answered by the data sheet.",
            Shielded(ripple: null)),
    ];

    internal static Installation TwoBanks(bool isShared)
    {
        var one = new Cabinet("cabinet", Cupboard);
        Cabinet other = isShared ? one : new Cabinet("other cabinet", Cupboard);
        Installation low = Star(2).WithBox(b => b with { Cabinet = one });
        return low with
        {
            Boxes = [low.Boxes[0], new PowerBox { Name = "24 V box", Volts = 24, Cabinet = other }],
            Drops = [.. low.Drops, new Drop { Name = "camera 3", Box = "24 V box", Accepts = (20, 28), Starts = (18, 16) }],
        };
    }

    internal static Installation Shielded(double? ripple) => Star(2).WithBox(b => b with { RipplePercent = ripple }) with
    {
        Links = [new VideoLink("camera 1", "recorder", ElectricResistance.FromOhms(0.9))],
        Bonds = [new GroundBond("recorder", "box", ElectricResistance.FromOhms(0.1))],
    };

    private static Installation Chain()
    {
        var first = new Drop { Meters = 10, Cable = Parts.Pair(16), Inrush = Parts.Surge(0.6, 0.001) };
        return new Installation { Drops = [first, first with { Name = "camera 2", Behind = "camera 1" }] };
    }

    private static Installation PanTiltZoom() => Star(2)
        .WithBox(b => b with { Volts = 24, Rated = 8, Overload = Parts.Holds(9), OutputLimit = 2, Protection = Parts.Electronic(2.5) })
        .EachDrop(d => d with
        {
            Base = Watts(10), Infrared = Watts(5), Motor = Watts(8), Heater = Watts(12), Accepts = (20, 28), Starts = (18, 16),
                Meters = 30, Cable = Parts.Pair(16),
        })
        .In(Year.SummerDay, Year.At("summer night with motion", LoadComponents.Infrared | LoadComponents.Motor, 30, 35),
            Year.At("winter night with motion", LoadComponents.Infrared | LoadComponents.Motor | LoadComponents.Heater, -10, 10));

    private static Load Watts(double watts) => Load.ConstantPower(Power.FromWatts(watts));
}
