using System.Collections.Generic;
using UnitsNet;
using static CamPower.Tests.Verdicts.Installation;

namespace CamPower.Tests.Verdicts;

/// <summary>Sound installations of all sorts: warm boxes, frost, motors, shared runs, thin and metric cables, AC, high lines.</summary>
internal static class SoundYards
{
    internal static IReadOnlyList<VerdictCase> All { get; } =
    [
        new("resettable fuse of 1.85 A with 1.2 A in 50 °C",
            "70 % of 1.85 A are 1.295 A, less 5 points 1.2025 A (common practice, from memory); 0.117 Ω of it and 0.46 Ω of cable leave 11.07 V.",
            Star(1).WithBox(b => b with { Outputs = 1, Protection = Parts.Resettable(1.85) })
                .EachDrop(d => d.Drawing(1.2) with { Meters = 10 }).In(Year.At("hot attic", LoadComponents.None, 45, 50), Year.WinterNight)),
        new("two boxes whose cameras meet at one recorder",
            "0.17 A of each return flow over a shield of 0.9 Ω: 0.15 V, of which 0.5 % of ripple are 0.8 mV of the policy's 10 mV.", Met()),
        new("three cameras along 45 m of 14 AWG at 24 V",
            "16.6 mΩ/m: 0.75 A over 0.27 Ω, 0.5 A and 0.25 A over as much lose 0.4 V; the limit of 1.65 A opens for any short.",
            Along(24, Parts.Pair(14), 15)),
        new("camera with a heater of 12 W on a night of -30 °C",
            "21 W of 24 V are 0.93 A over 1.27 Ω (16 AWG at -30 °C): 22.3 V of 20 V; the box stands in -10 °C.", Frost()),
        new("pan-tilt-zoom camera whose motors start while it runs",
            "23.5 V over 3 A are 7.8 Ω: behind 0.68 Ω some 21 V, and it runs down to 16 V.",
            Fused(1, Parts.Lag(2)).WithBox(b => b with { Volts = 24, OutputLimit = 1.6 }).EachDrop(d => d with
            {
                Base = Watts(10), Infrared = Watts(5), Motor = Watts(8), Accepts = (20, 28), Starts = (18, 16), Meters = 25, Cable = Parts.Pair(16),
                SwitchedInrush = new Inrush(ElectricCurrent.FromAmperes(3), Duration.FromMilliseconds(10)),
            }).In(Year.SummerDay, Year.At("summer night with motion", LoadComponents.Infrared | LoadComponents.Motor, 30, 35))),
        new("heating cables on a supply that holds 11 A within 10 %",
            "Eight of 13 Ω take 7.5 A at 12.24 V: 75 % of 10 A, and 9.9 A are held for certain.",
            Star(8).WithBox(b => b with { Overload = Parts.Holds(11).WithTolerance(Ratio.FromPercent(10)) })
                .EachDrop(d => d with { Kind = DeviceKind.Other, Base = Ohms(13), Infrared = Load.None, Accepts = (9, 14), Meters = 1, Starts = (8, 7), Inrush = null })),
        new("box that pulses in overload, with fuses F1A",
            "A short takes 11 A in pulses of 100 ms, ten times the rating and more: 20 ms (IEC 60127-2), which all ride through.",
            Fused(4, Parts.Quick(1)).WithBox(b => b with { Rated = 10, Overload = Parts.Pulses(11) }).EachDrop(d => d with { Meters = 15 })),
        new("box that folds back, with electronic limits",
            "A limit lets 1.65 A pass, and three cameras take 1.6 A beside it: 3.3 A of 11 A.",
            Star(4).WithBox(b => b with { Overload = Parts.FoldsBack(11, 3) })),
        new("transformer of 24 V AC and Class 2",
            "24.48 V x 3.3 A are 81 VA of 100 VA, 3.3 A of 8 A (NEC Chapter 9, Table 11, from memory); 6 W over 1.8 Ω leave 23 V.",
            Adapter().WithBox(b => b with { Kind = CurrentKind.Ac, Volts = 24, Rated = 1.6, Overload = Parts.Holds(3.3), Claims = PowerLimitClass.Class2 })
                .EachDrop(d => d with { Accepts = null, AcceptsAc = (20, 28), Starts = (15, 13), Meters = 40 })),
        new("three cameras on pigtails of 22 AWG behind 15 m of 14 AWG",
            "1.6 A over 0.27 Ω and 0.53 A over 0.33 Ω and a splice of 0.05 Ω leave 11.1 V; 22 AWG carries 4.6 A, the limit lets 2.75 A pass.",
            Pigtails(spliceOhms: 0.05)),
        new("camera of 24 V on 20 m of category cable of 28 AWG, all pairs",
            "Four wires of 213 mΩ/m each way are 106 mΩ/m: 2.1 Ω and 0.15 A; each wire carries 0.04 A, at most 0.14 A of the limit's 0.55 A.",
            Star(1).WithBox(b => b with { Volts = 24, OutputLimit = 0.4, Protection = Parts.Electronic(0.5) }).EachDrop(d => d.OfWatts(3.5) with
            {
                Cable = Ganged(28, 4), Meters = 20, Accepts = (20, 28), Starts = (18, 16), Inrush = Parts.Surge(0.4, 0.001),
            })),
        new("camera on 10 m of flexible 0.75 mm² on a wall",
            "25 mΩ/m (IEC 60228: 26 mΩ/m): 0.53 A over 0.55 Ω leave 11.4 V; F2A is well below what it carries.",
            Fused(1, Parts.Quick(2)).EachDrop(d => d with
            {
                Cable = Cable.Pair(WireSize.SquareMillimeters(0.75), Stranding.IecClass5, ConductorMaterial.AnnealedCopper, insulation: Insulation.Pvc70),
                InstallationMethod = InstallationMethod.OnWall(), Meters = 10,
            })),
        new("supply for 90 V to 264 V on a line of 253 V", "230 V and 10 % (IEC 60038): inside its range.", Plugged(253, highest: 264)),
        new("heater on the strong output of a box",
            "The second output may carry 3 A: 1.8 A, and 0.53 A on the others.", Unequal(strongest: 2)),
    ];

    internal static Installation Along(double volts, Cable cable, double meters)
    {
        var first = new Drop { Cable = cable, Meters = meters, Accepts = volts > 20 ? (20, 28) : (10.8, 13.2), Starts = volts > 20 ? (18, 16) : (9.5, 8.5),
            Inrush = Parts.Surge(0.4, 0.001) };
        return new Installation { Boxes = [new PowerBox { Volts = volts, OutputLimit = 2.5, Protection = Parts.Electronic(volts > 20 ? 1.5 : 3) }],
            Drops = [first, first with { Name = "camera 2", Behind = "camera 1" }, first with { Name = "camera 3", Behind = "camera 2" }] };
    }

    internal static Installation Pigtails(double spliceOhms)
    {
        var pigtail = new Drop { Cable = Parts.Pair(22), Meters = 3, JointOhms = spliceOhms, Behind = "hub", Inrush = Parts.Surge(0.4, 0.001) };
        var hub = new Drop { Name = "hub", Base = Watts(0.1), Infrared = Load.None, Kind = DeviceKind.Other, Cable = Parts.Pair(14), Meters = 15, Inrush = null };
        return new Installation { Boxes = [new PowerBox { OutputLimit = 2, Protection = Parts.Electronic(2.5) }],
            Drops = [hub, pigtail, pigtail with { Name = "camera 2" }, pigtail with { Name = "camera 3" }] };
    }

    internal static Installation Plugged(double line, double highest)
    {
        var high = new Condition("high line", LoadComponents.Infrared, Year.SummerNight.At, lineVoltage: ElectricPotential.FromVolts(line));
        return Star(2).WithBox(b => b with { Input = (90, highest), Receptacle = new Receptacle("receptacle", ElectricPotential.FromVolts(230), ElectricCurrent.FromAmperes(16)) })
            .In(Year.SummerDay, high);
    }

    internal static Installation Unequal(int strongest)
    {
        Installation three = Star(3).WithBox(b => b with { OutputLimit = 1.5, SecondOutputLimit = 3, Protection = Parts.Electronic(2.1) });
        return three.WithDrop(strongest, d => d.Drawing(1.8) with { Kind = DeviceKind.Other, Meters = 4, Inrush = null });
    }

    internal static Cable Ganged(int awg, int pairs) =>
        Cable.GangedPairs(new Conductor(WireSize.Awg(awg), Stranding.Solid, ConductorMaterial.AnnealedCopper), pairs);

    private static Installation Met()
    {
        Installation one = Star(1).WithBox(b => b with { RipplePercent = 0.5 });
        return one with
        {
            Boxes = [one.Boxes[0], one.Boxes[0] with { Name = "other box" }],
            Drops = [one.Drops[0], one.Drops[0] with { Name = "camera 2", Box = "other box" }],
            Links = [new VideoLink("camera 1", "recorder", ElectricResistance.FromOhms(0.9)), new VideoLink("camera 2", "recorder", ElectricResistance.FromOhms(0.9))],
            Bonds = [new GroundBond("recorder", "box", ElectricResistance.FromOhms(0.1)), new GroundBond("recorder", "other box", ElectricResistance.FromOhms(0.1))],
        };
    }

    private static Installation Frost() => Star(1).WithBox(b => b with { Volts = 24 })
        .EachDrop(d => d with { Base = Watts(4), Infrared = Watts(5), Heater = Watts(12), Accepts = (20, 28), Starts = (18, 16), Cable = Parts.Pair(16), Meters = 60 })
        .In(Year.SummerDay, Year.At("night of frost", LoadComponents.Infrared | LoadComponents.Heater, cable: -30, box: -10));

    private static Load Watts(double watts) => Load.ConstantPower(Power.FromWatts(watts));

    private static Load Ohms(double ohms) => Load.ConstantResistance(ElectricResistance.FromOhms(ohms));
}
