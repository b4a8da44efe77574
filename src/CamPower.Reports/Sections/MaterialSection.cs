using System.Linq;
using CamPower.Reports.Contents;
using static System.FormattableString;

namespace CamPower.Reports.Sections;

/// <summary>Section of the material of the site, and of the cable pulled from where to where.</summary>
internal static class MaterialSection
{
    internal static Section Of(MaterialList material) => new("Material",
    [
        new Paragraph(Invariant($"With {material.Policy}. Devices are not in it. ") +
            Invariant($"Cost: {material.Cost:0.##} {material.CostUnit}. Labor is not counted.")),
        new DataTable("Bill of materials", [new("Item"), new("Kind"), new("Quantity", true), new("Cost", true)],
            [.. material.Lines.Select(line => (string[])
                [line.Item, line.Kind, Invariant($"{line.Quantity:0.##} {line.Unit}"), Invariant($"{line.Cost:0.##}")])]),
        new DataTable("Pull list, with the labels of both ends",
            [new("Cable"), new("Route", true), new("Cut", true), new("Label at start"), new("Label at end")],
            [.. material.Pulls.Select(pull => (string[])
                [pull.Cable.ToString(), Said.Quantity(pull.Route), Said.Quantity(pull.Cut), pull.StartLabel, pull.EndLabel])]),
    ]);
}
