using System;
using System.Collections.Generic;
using System.Linq;
using CamPower.Files.Entries;
using CamPower.Files.Formats;
using UnitsNet;

namespace CamPower.Files.Writing;

/// <summary>From conditions to entries: always a name and the shares that are on.</summary>
internal static class ConditionWriting
{
    internal static ConditionEntry Entry(Condition condition) => new()
    {
        Name = condition.Name,
        On = [.. Shares(condition.On)],
        MotorsMoving = condition.MotorsMoving,
        Cable = new(condition.At.Cable),
        Box = new(condition.At.Box),
        Camera = new(condition.At.Camera),
        Sun = condition.At.Sun is Irradiance sun ? new(sun) : null,
        LineVoltage = condition.LineVoltage is ElectricPotential line ? new(line) : null,
        Duration = condition.Duration is Duration duration ? new(duration) : null,
    };

    // A share that the format does not know stays in the list, and is refused by name when it is written.
    private static IEnumerable<Written<DrawShares>> Shares(DrawShares on)
    {
        DrawShares known = Enum.GetValues<DrawShares>().Aggregate((a, b) => a | b);
        return Enum.GetValues<DrawShares>().Append(on & ~known)
            .Where(share => share != DrawShares.None && on.HasFlag(share))
            .Select(share => new Written<DrawShares>(share));
    }
}
