using System.Collections.Generic;
using static CamPower.Tests.Verdicts.Installation;

namespace CamPower.Tests.Verdicts;

/// <summary>More load than an output, a supply, an adapter or a plug is good for.</summary>
internal static class LoadCases
{
    internal static IReadOnlyList<VerdictCase> All { get; } =
    [
        new VerdictCase("output beyond its limit", "6 W at 11.27 V are 0.53 A of 0.50 A.",
            Star(1).WithBox(b => b with { OutputLimit = 0.5, Protection = Parts.Electronic(0.7) })).Failure("output-overloaded", "box output 1", 0.5326, 0.5),
        new VerdictCase("supply beyond its rating in the heat", "10 A are 7.5 A at 60 °C (half at 70 °C; common practice): 8 x 1.0 A.",
            Star(8).EachDrop(d => d.Drawing(1) with { Meters = 8 }).In(Year.At("hot attic", LoadComponents.None, 45, 60), Year.WinterNight))
            .Failure("supply-above-derated-rating", "box", 8, 7.5),
        new VerdictCase("supply with too little in hand", "4 x 1.1 A are 4.4 A of 5 A: 88 % (common practice: 80 %).",
            Star(4).WithBox(b => b with { Rated = 5, Overload = Parts.Holds(5.5) }).EachDrop(d => d.Drawing(1.1) with { Meters = 8 }))
            .Caution("supply-above-headroom-policy", "box", 4.4, 4),
        new VerdictCase("supply that shuts down, asked for 100 W",
            "8 x 12.5 W at 11.2 V are 8.9 A; it is off above 5.5 A, and all cameras with it.",
            Hundred(Parts.ShutsDown(5.5))).Failure("supply-above-derated-rating", "box"),
        new VerdictCase("supply that holds its current, asked for 100 W",
            "5.5 A for 8.9 A: constant power on constant current falls to the drop-outs.",
            Hundred(Parts.Holds(5.5))).Failure("supply-above-derated-rating", "box"),
        new VerdictCase("supply that pulses, asked for 100 W", "8.9 A of 5.5 A: it tries again every 1.5 s, for ever.",
            Hundred(Parts.Pulses(5.5))).Failure("supply-above-derated-rating", "box"),
        new VerdictCase("supply whose limit is below its rating, asked for 8.8 A",
            "8 x 1.1 A = 8.8 A; rated 12 A, held at 8 A by declaration: it sags, whatever is printed on it.",
            Star(8).WithBox(b => b with { Rated = 12, Overload = Parts.Holds(8) }).EachDrop(d => d.Drawing(1.1) with { Meters = 8 }))
                .Failure("supply-above-derated-rating", "box", 8.8, 8),
        new VerdictCase("supply of which nobody says what overload does, asked for 100 W",
            "8.9 A of 5 A: overloaded, whatever it does then.",
            Hundred(null)).Failure("supply-above-derated-rating", "box"),
        new VerdictCase("adapter split between two cameras", "2 x 1.2 A of 2 A. A short at one takes the other for as long as it lasts.", Split(1.2))
            .Failure("split-adapter-beyond-rating", "box", 2.4, 2).Caution("short-may-not-be-interrupted", "box output 1"),
        new VerdictCase("adapter split between two cameras of 0.8 A",
            "1.6 A are 80 % of 2 A. A short at one takes the other for as long as it lasts, as behind a fuse that need not open.", Split(0.8))
            .Caution("short-may-not-be-interrupted", "box output 1"),
        new VerdictCase("three cameras on a box of two outputs",
            "Two share an output, and a fault of one takes the other (common practice, no source).", Shared())
            .Caution("more-cameras-than-outputs", "box", 3, 2),
        new VerdictCase("recorder on a camera output", "Its start and its disks are no camera's load (common practice, no source).",
            Star(2).WithDrop(2, d => d with { Kind = DeviceKind.Recorder })).Caution("recorder-on-camera-output", "camera 2"),
        new VerdictCase("plug of 2 A with 2.2 A", "EIAJ RC-5320A: 2 A a contact.",
            Star(1).WithBox(b => b with { OutputLimit = 2.6, Protection = Parts.Electronic(3) })
                .EachDrop(d => d.Drawing(2.2) with { Meters = 4, Plug = Connector.UnifiedBarrels[2] }))
                    .Failure("connector-overloaded", "camera 1", 2.2, 2),
        new VerdictCase("UL fuse loaded to 80 %", "0.80 A of 1 A for hours: 75 % by UL practice (common practice).",
            Fused(1, Parts.UlFast(1)).EachDrop(d => d.Drawing(0.8) with { Meters = 8 }).In(Year.At("room", LoadComponents.None, 25, 23)))
            .Caution("fuse-above-continuous-policy", "box output 1", 0.8, 0.75),
        new VerdictCase("fuse F0.5A with 0.53 A in 35 °C", "0.5 A less 2 % for 10 K above 23 °C: 0.488 A; 0.53 A at night.",
            Fused(1, Parts.Quick(0.5))).Failure("nuisance-trip", "box output 1", null, 0.488),
    ];

    private static Installation Hundred(OverloadBehavior? overload) => Star(8).WithBox(b => b with { Rated = 5, Overload = overload })
        .EachDrop(d => d.OfWatts(12.5) with { Meters = 10 });

    private static Installation Split(double amperes)
    {
        Installation one = Adapter().EachDrop(d => d.Drawing(amperes) with { Meters = 2, Inrush = null });
        return one with { Drops = [one.Drops[0], one.Drops[0] with { Name = "camera 2", Behind = "camera 1" }] };
    }

    private static Installation Shared()
    {
        Installation two = Star(2).WithBox(b => b with { Outputs = 2 })
            .EachDrop(d => d with { Meters = 8, Inrush = Parts.Surge(0.6, 0.001) });
        return two with { Drops = [.. two.Drops, two.Drops[1] with { Name = "camera 3", Behind = "camera 2" }] };
    }
}
