using System;
using System.Collections.Generic;
using System.Linq;
using CamPower.Files.Entries;
using CamPower.Files.Formats;

namespace CamPower.Files.Building;

/// <summary>From entries to conditions.</summary>
internal static class ConditionBuilding
{
    internal static Condition Build(ConditionEntry entry, Place at)
    {
        Surroundings surroundings = at.Build(() => new Surroundings(
            at.Value("cable", entry.Cable, StandIn.Temperature),
            at.Value("box", entry.Box, StandIn.Temperature),
            at.Value("camera", entry.Camera, StandIn.Temperature),
            at.Optional("sun", entry.Sun)));
        Condition? given = Given(entry, at)?.Invoke(surroundings);
        string name = given is not null && entry.Name is null ? given.Name : at.Name("name", entry.Name);
        DrawShares on = (given?.On ?? DrawShares.None) | Sum(entry.On) | Sum(entry.Also);
        return at.Build(() => new Condition(name, on, surroundings,
            at.Member("motorsMoving").IsFaulty ? null : entry.MotorsMoving, at.Optional("duration", entry.Duration),
            at.Optional("lineVoltage", entry.LineVoltage)));
    }

    private static Func<Surroundings, Condition>? Given(ConditionEntry entry, Place at) =>
        at.Member("given").IsFaulty ? null : entry.Given?.Value;

    private static DrawShares Sum(List<Written<DrawShares>?>? shares) =>
        shares?.Aggregate(DrawShares.None, (sum, share) => sum | (share?.Value ?? DrawShares.None)) ?? DrawShares.None;
}
