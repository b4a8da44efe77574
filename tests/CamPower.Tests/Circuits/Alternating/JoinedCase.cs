using System.Collections.Generic;

namespace CamPower.Tests.Circuits.Alternating;

/// <summary>A bridge and a half-wave input on one transformer, each at the end of a run, with two shields between their negatives.</summary>
internal sealed record JoinedCase(string Name, double EmfVolts, double WindingOhms, double LoopOhms, double ShieldOhms)
{
    internal static IReadOnlyList<JoinedCase> All { get; } =
    [
        new("joined-01", 27.5, 2.1, 0.4, 0.3), new("joined-02", 26.33, 1.4, 0.1, 0.03), new("joined-03", 26, 0.48, 1.2, 0.9), new("joined-04", 28, 4.8, 3, 2),
    ];

    internal static IReadOnlyList<string> Values { get; } = ["ring", "winding"];

    internal double RingOhms => WindingOhms + LoopOhms + (2 * ShieldOhms);
}
