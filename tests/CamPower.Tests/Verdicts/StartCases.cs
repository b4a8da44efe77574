using System.Collections.Generic;
using UnitsNet;
using static CamPower.Tests.Verdicts.Installation;

namespace CamPower.Tests.Verdicts;

/// <summary>Installations that would run if they ever started.</summary>
internal static class StartCases
{
    internal static IReadOnlyList<VerdictCase> All { get; } =
    [
        new VerdictCase("camera that turns on above what it gets", "12 V less 2 % are 11.76 V; it turns on at 12 V.",
            Star(4).WithDrop(4, d => d with { Starts = (12, 10.5) })).Failure("unloaded-voltage-below-turn-on", "camera 4", 11.76, 12),
        new VerdictCase("camera that restarts for ever",
            "12 W at start over 2.51 + 0.06 Ω: (11.76 + √(138.3 - 123.6))/2 = 7.80 V, under its drop-out of 8.5 V.",
            Starting(6, turnOn: 9.5, dropOut: 8.5, true, lowest: 9)).Failure("settles-below-drop-out", "camera 1", 7.80, 8.5),
        new VerdictCase("camera that turns on below the unstable voltage",
            "12.7 W over 2.57 Ω: (11.76 - √(138.3 - 130.8))/2 = 4.5 V; it turns on at 4.2 V without a soft start.",
            Starting(6.7, turnOn: 4.2, dropOut: 4, false, lowest: 6)).Failure("turn-on-below-unstable-voltage", "camera 1", 4.2),
        new VerdictCase("eight cameras that start at 6 V behind a limit of 10.5 A",
            "8 x 9.6 W run with 6.7 A, but take 12.8 A and more at the 6 V at which they turn on, at once by declaration: the supply "
                + "holds 10.5 A, and the rail never gets past them.",
            Eight()).Failure("start-beyond-supply-limit", "box", null, 10.5),
        new VerdictCase("adapter that folds back, with a camera that starts low",
            "It gives 0.3 + 2.1 x 6/12 = 1.35 A at 6 V, where 10 W take 1.67 A, at once by declaration: the camera hangs there, though 0.88 A "
                + "would run it. It is the supply that gives too little.",
            Adapter().WithBox(b => b with { Overload = Parts.FoldsBack(2.4, 0.3), RiseMilliseconds = 100 })
                .EachDrop(d => d.OfWatts(10) with {
                    DelaySeconds = 0, Accepts = (9, 14), Starts = (6, 5.5), SoftStart = false }))
                    .Failure("start-beyond-supply-limit", "box"),
    ];

    private static Installation Starting(double watts, double turnOn, double dropOut, bool? soft, double lowest) => Star(1)
        .WithBox(b => b with { OutputLimit = 3, Protection = Parts.Electronic(4) })
        .EachDrop(d => d with
        {
            Meters = 60, Accepts = (lowest, 14), Starts = (turnOn, dropOut), SoftStart = soft,
                StartUp = Load.ConstantPower(Power.FromWatts(watts)),
        }).In(Year.SummerNight, Year.ColdStart);

    private static Installation Eight() => Star(8)
        .WithBox(b => b with { Overload = Parts.Holds(10.5), RiseMilliseconds = 100, OutputLimit = 2, Protection = Parts.Electronic(2.5) })
        .EachDrop(d => d.OfWatts(9.6) with { DelaySeconds = 0, Meters = 10, Accepts = (9, 14), Starts = (6, 5.5), SoftStart = false });
}
