using System;
using System.Collections.Generic;
using System.Linq;
using CamPower.Sites;
using UnitsNet;

namespace CamPower.Tests.Verdicts;

/// <summary>A whole installation, sound as it is given: a case changes one thing of it.</summary>
internal sealed record Installation
{
    internal IReadOnlyList<Condition> Conditions { get; init; } = [Year.SummerDay, Year.SummerNight, Year.WinterNight];

    internal IReadOnlyList<PowerBox> Boxes { get; init; } = [new PowerBox()];

    internal IReadOnlyList<Drop> Drops { get; init; } = [];

    internal IReadOnlyList<VideoLink> Links { get; init; } = [];

    internal IReadOnlyList<GroundBond> Bonds { get; init; } = [];

    internal IReadOnlyList<OutputTie> Ties { get; init; } = [];

    internal double AltitudeMeters { get; init; } = 200;

    /// <summary>Cameras alike, each on an output of its own.</summary>
    internal static Installation Star(int cameras) => new()
    {
        Drops = [.. Enumerable.Range(1, cameras).Select(n => new Drop { Name = $"camera {n}", Output = n })],
    };

    /// <summary>Cameras alike behind 12 V, 20 A, held at 24 A, and a fuse to each output.</summary>
    internal static Installation Fused(int cameras, ProtectiveDevice fuse) => Star(cameras)
        .WithBox(b => b with { Rated = 20, Overload = Parts.Holds(24), Protection = fuse, Microfarads = 4700 });

    /// <summary>One camera behind an adapter of 12 V, 2 A that holds 2.4 A, and no protective device.</summary>
    internal static Installation Adapter() => Star(1)
        .WithBox(b => b with { IsAdapter = true, Rated = 2, Overload = Parts.Holds(2.4), Protection = ProtectiveDevice.None,
            Microfarads = 1000, SourceOhms = 0.05 });

    /// <summary>One camera on a battery of 12 V and 7 Ah behind a fuse: from 11.4 V to 13.8 V, and no limit but its own
    /// resistance.</summary>
    internal static Installation Battery(ProtectiveDevice fuse) => Star(1).WithBox(b => b with
    {
        Volts = 12.6, TolerancePercent = 9.5, Overload = OverloadBehavior.Unlimited, SourceOhms = 0.025, Microfarads = null,
            RipplePercent = 0, Protection = fuse,
    }).EachDrop(d => d with { Accepts = (9, 15) });

    internal Installation WithBox(Func<PowerBox, PowerBox> change) => this with { Boxes = [change(Boxes[0]), .. Boxes.Skip(1)] };

    internal Installation EachDrop(Func<Drop, Drop> change) => this with { Drops = [.. Drops.Select(change)] };

    internal Installation WithDrop(int number, Func<Drop, Drop> change) =>
        this with { Drops = [.. Drops.Select((drop, i) => i == number - 1 ? change(drop) : drop)] };

    internal Installation In(params Condition[] conditions) => this with { Conditions = conditions };

    internal Site ToSite() =>
        new("site", Conditions, Boxes.Select(b => b.ToBox()), Drops.Select(d => d.ToRun()), Drops.Select(d => d.ToDevice()),
        Links, Bonds, altitude: Length.FromMeters(AltitudeMeters), ties: Ties);
}
