using System.Collections.Generic;
using System.Linq;
using CamPower.Reports.Contents;
using UnitsNet;
using static System.FormattableString;

namespace CamPower.Reports.Sections;

/// <summary>Section of the conditions that the site must survive.</summary>
internal static class ConditionsSection
{
    internal static Section Of(Site site) => new("Conditions",
    [
        new Paragraph("The site was solved in each of these, "
            + "with each supply at the bottom of its tolerance for voltages, and loads at the worse end."),
        new DataTable("Conditions that the site must survive",
            [new("Condition"), new("Also on"), new("Cable, °C", true), new("Around boxes, °C", true),
                new("Around devices, °C", true), new("Sun, W/m²", true), new("Line, V", true), new("Motors at once")],
            [.. site.Conditions.Select(Row)]),
    ]);

    private static IReadOnlyList<string> Row(Condition condition) =>
    [
        condition.Name,
        Said.Shares(condition.On),
        Said.Celsius(condition.At.Cable),
        Said.Celsius(condition.At.Box),
        Said.Celsius(condition.At.Camera),
        condition.At.Sun is Irradiance sun ? Invariant($"{sun.WattsPerSquareMeter:0}") : Said.Nothing,
        condition.LineVoltage is ElectricPotential line ? Invariant($"{line.Volts:0.#}") : "nominal",
        !condition.On.HasFlag(LoadComponents.Motor) ? Said.Nothing : condition.MotorsMoving is int motors ? Invariant($"{motors}") : "all",
    ];
}
