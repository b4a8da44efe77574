using System;
using System.Collections.Generic;
using System.Linq;
using CamPower.Files.Formats;

namespace CamPower.Files.Parts;

/// <summary>Conditions. They are written with their name and the components that are on: a given one is a way to write a file.</summary>
internal static class ConditionFormats
{
    private static readonly Format<LoadComponents> Components = new MadeFormat<IReadOnlyList<LoadComponents>, LoadComponents>(
        new ListFormat<LoadComponents>(Words.Components), list => list.Aggregate(LoadComponents.None, (sum, one) => sum | one), OneByOne);

    /// <summary>A condition.</summary>
    internal static ObjectFormat<Condition> Condition { get; } = new(o =>
    {
        var given = o.Optional("given", "One of the conditions that the library gives: their name and components.", Words.GivenConditions,
            _ => null);
        var name = o.OfForm("name", "Name of the condition; a given one may have another name.", Words.Name, c => c.Name);
        var on = o.Optional("on", "The components that are on beside the base draw.", Components, c => c.On);
        var also = o.Optional("also", "Components that are on beside those of the given condition.", Components,
            _ => (LoadComponents?)null);
        var motorsMoving = o.Optional("motorsMoving", "How many motors of the whole site move at once; all of them where this is left out.",
            Quantities.Count, c => c.MotorsMoving);
        var cable = o.Required("cable", "Temperature of the conductors.", Quantities.Temperature, c => c.At.Cable);
        var box = o.Required("box", "Temperature of the air around the boxes; around the supply itself where its box has no enclosure.",
            Quantities.Temperature, c => c.At.Box);
        var camera = o.Required("camera", "Temperature of the air around the devices.", Quantities.Temperature, c => c.At.Camera);
        var sun = o.Optional("sun", "Sunlight on what is not in the shade, square to the light; left out where there is none.",
            Quantities.Sunlight, c => c.At.Sun);
        var lineVoltage = o.Optional("lineVoltage", "Voltage at the input of every supply; its nominal one where this is left out.",
            Quantities.Voltage, c => c.LineVoltage);
        var duration = o.Optional("duration", "How long it lasts.", Quantities.Duration, c => c.Duration);
        var hoursAYear = o.Optional("hoursAYear", "How long it holds in a year, all its times together.", Quantities.Duration,
            c => c.HoursAYear);
        o.OneOf(new Form(given) { Optional = also }, new Form(on) { Needs = name });
        return at =>
        {
            var surroundings = new Surroundings(cable[at], box[at], camera[at], sun[at]);
            Condition? known = given[at]?.Invoke(surroundings);
            LoadComponents components = (known?.On ?? LoadComponents.None) | (on[at] ?? LoadComponents.None)
                | (also[at] ?? LoadComponents.None);
            string named = known is not null && !name.IsGiven(at) ? known.Name : name[at];
            return new Condition(named, components, surroundings, motorsMoving[at], duration[at], lineVoltage[at], hoursAYear[at]);
        };
    });

    // A component that the format does not know stays in the list, and is refused by name when it is written.
    private static LoadComponents[] OneByOne(LoadComponents on)
    {
        LoadComponents known = Enum.GetValues<LoadComponents>().Aggregate((a, b) => a | b);
        return [.. Enum.GetValues<LoadComponents>().Append(on & ~known).Where(one => one != LoadComponents.None && on.HasFlag(one))];
    }
}
