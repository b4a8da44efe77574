using System;
using System.Globalization;
using System.Linq;
using CamPower.Files.Schedules;

namespace CamPower.Files;

/// <summary>Writes what a site is built of as CSV: the bill of materials, the pull list with labels, the output schedule.</summary>
/// <remarks>Tables of RFC 4180 with a heading; lengths in meters. Stateless; every member may be called from many threads at once, in any
/// culture. A name that a spreadsheet could take for a formula is written with an apostrophe before it.</remarks>
/// <example>
/// <code>
/// MaterialList list = site.ListMaterial();
/// File.WriteAllText("yard.material.csv", SiteMaterial.WriteBill(list));
/// </code>
/// </example>
public static class SiteMaterial
{
    /// <summary>The bill of materials: kind, item, quantity, unit and cost.</summary>
    /// <param name="list">The bill.</param>
    /// <exception cref="ArgumentNullException"><paramref name="list"/> is null.</exception>
    public static string WriteBill(MaterialList list)
    {
        ArgumentNullException.ThrowIfNull(list);
        return CsvTable.Text(["kind", "item", "quantity", "unit", $"cost ({list.CostUnit})"],
            list.Lines.Select(line => (string[])[line.Kind, line.Item, Number(line.Quantity), line.Unit, Number(line.Cost)]));
    }

    /// <summary>The pull list: cable, route and cut length, both ends and their labels.</summary>
    /// <param name="list">The bill that it belongs to.</param>
    /// <exception cref="ArgumentNullException"><paramref name="list"/> is null.</exception>
    public static string WritePulls(MaterialList list)
    {
        ArgumentNullException.ThrowIfNull(list);
        return CsvTable.Text(["cable", "route (m)", "cut (m)", "from", "to", "label at start", "label at end"],
            list.Pulls.Select(pull => (string[])
            [
                pull.Cable.ToString(), Number(pull.Route.Meters), Number(pull.Cut.Meters), pull.Run.From.ToString(), pull.Run.To,
                pull.StartLabel, pull.EndLabel,
            ]));
    }

    /// <summary>The output schedule: every output of every box, its limit, its protective device, and the devices that it feeds.</summary>
    /// <param name="assessment">The solved site.</param>
    /// <exception cref="ArgumentNullException"><paramref name="assessment"/> is null.</exception>
    public static string WriteOutputs(SiteAssessment assessment)
    {
        ArgumentNullException.ThrowIfNull(assessment);
        return CsvTable.Text(["box", "output", "limit (A)", "protective device", "largest current (A)", "devices"],
            assessment.Boxes.SelectMany(box => box.Box.Outputs, (box, output) => Row(box, output)));
    }

    private static string[] Row(BoxAssessment box, BoxOutput output)
    {
        OutputAssessment? used = box.Outputs.FirstOrDefault(o => o.Output.Number == output.Number);
        return
        [
            box.Box.Name, output.Number.ToString(CultureInfo.InvariantCulture), Number(output.Limit.Amperes),
            output.Protection?.ToString() ?? "not stated", used is null ? "spare" : Number(used.Worst.Current.Amperes),
            used is null ? string.Empty : string.Join("; ", used.Devices.Select(device => device.Name)),
        ];
    }

    private static string Number(double value) => value.ToString("0.###", CultureInfo.InvariantCulture);
}
