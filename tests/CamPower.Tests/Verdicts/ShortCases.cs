using System.Collections.Generic;
using UnitsNet;
using static CamPower.Tests.Verdicts.Installation;

namespace CamPower.Tests.Verdicts;

/// <summary>Shorts that burn a wire, warm a spot or darken the neighbors.</summary>
internal static class ShortCases
{
    internal static IReadOnlyList<VerdictCase> All { get; } =
    [
        new VerdictCase("30 m of 22 AWG behind a resettable fuse of 2.5 A and 24 A",
            "40 s at 8 A bound 24 A by 4.4 s: 2560 A²s just behind the terminals (IEC 60364-4-43, 434); 0.326 mm² in PVC withstands "
                + "(115 x 0.326)² = 1405 A²s.",
            Slow(30)).Danger("let-through-above-conductor-withstand", "box output 1"),
        new VerdictCase("2 m of 22 AWG behind a resettable fuse of 2.5 A and 24 A", "The same 2560 A²s and 1405 A²s at the terminals.",
            Slow(2)).Danger("let-through-above-conductor-withstand", "box output 1"),
        new VerdictCase("far-end short of 22 W that never clears",
            "11.76 V / (2.07 + 0.04) Ω = 5.6 A, F4A opens for certain from 8.4 A; 18 AWG carries 9 A. The spot gets up to 12.24² / (4 x "
                + "1.70) = 22 W (a policy: 15 W, 100 W).",
            Fused(1, Parts.Quick(4)).EachDrop(d => d with { Meters = 45, Accepts = (9, 14) }))
                .Caution("short-may-not-be-interrupted", "box output 1", 5.57),
        new VerdictCase("far-end short of 119 W that never clears",
            "100 m of 2.5 mm² (7.03 mΩ/m, 2 % of lay in it): 23.52 V / 1.57 Ω = 15.0 A hot, 19.4 A cold; F10A opens for certain from 21 "
                + "A, 2.5 mm² carries 18 A at 45 °C. "
            + "The spot gets up to 24.48² / (4 x 1.26) = 119 W.",
            Fused(1, Parts.Quick(10)).WithBox(b => b with { Volts = 24, Rated = 30, Overload = Parts.Holds(33), OutputLimit = 8 })
                .EachDrop(d => d.OfWatts(20) with { Cable = Parts.MetricPair(2.5), Meters = 100, Accepts = (20, 28), Starts = (18, 16) }))
            .Failure("short-may-not-be-interrupted", "box output 1", 15.0),
        new VerdictCase("short that darkens its neighbors without end",
            "The supply holds 3.3 A, 1.65 times the F2A, which opens for certain from 4.2 A: the other three are dark until somebody "
                + "comes.",
            Star(4).WithBox(b => b with { Rated = 3, Overload = Parts.Holds(3.3), Protection = Parts.Quick(2) }))
            .Failure("short-collapses-supply-voltage|short-may-not-be-interrupted", "*"),
        new VerdictCase("short that shuts the supply down for good",
            "F2A takes up to 0.3 s at 11 A; the supply is off within 20 ms above 11 A, and all with it until somebody restarts it.",
            Star(4).WithBox(b => b with { Overload = Parts.ShutsDown(11, milliseconds: 20), Protection = Parts.Quick(2) }))
            .Failure("short-collapses-supply-voltage|short-may-not-be-interrupted", "*"),
        new VerdictCase("short that darkens its neighbors for a second",
            "A resettable fuse of 1.1 A takes up to 2.3 x (8.7/11)² = 1.4 s, and the supply holds 11 A.",
            Star(4).WithBox(b => b with { Protection = Parts.Resettable(1.1) })).Caution("short-collapses-supply-voltage", "box"),
        new VerdictCase("short that darkens its neighbors for half an hour",
            "The supply folds back to 2.2 A: a little more than the 2.1 A at which F1A opens within 30 min (IEC 60127-2). That is no "
                + "matter of seconds.",
            Fused(4, Parts.Quick(1)).WithBox(b => b with { Rated = 10, Overload = Parts.FoldsBack(11, 2.2) }))
                .Failure("short-collapses-supply-voltage", "*"),
        new VerdictCase("supply of 5.5 A with four outputs and no protection at any",
            "18 AWG carries 9 A (IEC 60364-4-43, 436), so nothing burns; but a short takes all four cameras until somebody comes, as behind fuses that need not open.",
            Star(4).WithBox(b => b with { Rated = 5, Overload = Parts.Holds(5.5), Protection = ProtectiveDevice.None }))
                .Failure("short-collapses-supply-voltage", "box"),
        new VerdictCase("far-end short of 22 W without any protection",
            "As behind F4A: 18 AWG carries the 7.2 A, and a poor contact gets 12.24² / (4 x 1.70) = 22 W for as long (a policy: 15 W, 100 W).",
            Fused(1, ProtectiveDevice.None).WithBox(b => b with { SourceOhms = 1.7, Overload = OverloadBehavior.Unlimited })
                .EachDrop(d => d with { Meters = 5, Accepts = (6, 14), Starts = (5, 4) }))
                .Caution("short-may-not-be-interrupted", "box output 1"),
        new VerdictCase("short that pulls the supply down through its own resistance",
            "0.3 Ω of leads before the box: 11.76 V / (0.3 + 0.06 + 0.37) Ω = 16 A, less than the 40 A held, leave the neighbors 6.9 V "
                + "of their 8.5 V for the 0.3 s of F2A.",
            Fused(4, Parts.Quick(2)).WithBox(b => b with { SourceOhms = 0.3, Overload = Parts.Holds(40) }).EachDrop(d => d with { Meters = 8, Accepts = (9, 14) }))
                .Caution("short-collapses-supply-voltage", "box"),
        new VerdictCase("glass fuse behind a battery", "13.8 V / 0.025 Ω = 552 A with a link in place of the fuse, whose 60 mΩ do not count; L breaks 35 A (IEC 60127-2).",
            Battery(Parts.Quick(2, breaking: 35))).Danger("breaking-capacity-exceeded", "box output 1", 551.9, 35),
        new VerdictCase("blade fuse of 32 V at 48 V", "It may arc instead of opening.",
            Fused(1, Parts.Blade(3)).WithBox(b => b with { Volts = 48 }).EachDrop(d => d with { Accepts = (40, 57), Starts = (38, 36) }))
            .Danger("protection-voltage-rating-exceeded", "box output 1", null, 32),
        new VerdictCase("glass fuse of 250 V AC and 63 V DC at 72 V DC",
            "Its sheet states 63 V DC: a direct current has no zero at which the arc goes out. 73 V is above 60 V DC (IEC 60335-1) as well.",
            Fused(1, Parts.Quick(2)).WithBox(b => b with { Volts = 72 }).EachDrop(d => d with { Accepts = (60, 80), Starts = (58, 50) }))
            .Danger("protection-voltage-rating-exceeded", "box output 1", null, 63).Caution("voltage-above-accessible", "box"),
        new VerdictCase("resettable fuse of 16 V at 24 V", "Tripped it has nearly all of the 24 V across it.",
            Star(1).WithBox(b => b with { Volts = 24, Outputs = 1, Protection = Parts.Resettable(1.1) })
                .EachDrop(d => d with { Accepts = (20, 28), Starts = (18, 16) }))
            .Danger("protection-voltage-rating-exceeded", "box output 1", null, 16),
    ];

    private static Installation Slow(double meters) => Fused(1, Parts.Resettable(2.5))
        .EachDrop(d => d with { Cable = Parts.Pair(22), Meters = meters, Accepts = (9, 14), Starts = (8.5, 7.5) });
}
