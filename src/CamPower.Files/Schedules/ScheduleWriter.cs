using System;
using System.Collections.Generic;
using System.Globalization;
using System.Linq;
using CamPower.Files.Formats;

namespace CamPower.Files.Schedules;

/// <summary>Writes what a schedule holds: each device that is alone at the end of a home run of one cable.</summary>
internal static class ScheduleWriter
{
    /// <summary>The devices that a row says all of, each with its run.</summary>
    internal static IReadOnlyList<(SiteDevice Device, SiteRun Run)> RowsOf(Site site)
    {
        ILookup<string, SiteDevice> at = site.Devices.ToLookup(d => d.At, StringComparer.Ordinal);
        HashSet<string> continued =
            new(site.Runs.SelectMany(r => new[] { r.From.JunctionName, r.ReturnAt }).OfType<string>(), StringComparer.Ordinal);
        return
        [
            .. from run in site.Runs
               where run is { From.BoxName: not null, ReturnAt: null, Run.Parts: [CableSegment] }
               where !continued.Contains(run.To) && at[run.To].Count() == 1
               let device = at[run.To].First()
               where !device.LeadsReversed && device.Model.Kind != DeviceKind.Converter
               select (device, run),
        ];
    }

    internal static string Text(IReadOnlyList<(SiteDevice Device, SiteRun Run)> rows, PartNames names) =>
        CsvTable.Written(rows.Select(row => Cells(row.Device, row.Run, names)).Prepend(ScheduleColumns.All));

    private static string[] Cells(SiteDevice device, SiteRun run, PartNames names)
    {
        var segment = (CableSegment)run.Run.Parts[0];
        (string Watts, string Lowest, string Highest)? stated = WattsModel.CellsOf(device.Model);
        return
        [
            device.Name, stated is null ? names.Of(device.Model) : string.Empty,
            stated?.Watts ?? string.Empty, stated?.Lowest ?? string.Empty, stated?.Highest ?? string.Empty,
            run.From.BoxName!, run.From.OutputNumber.ToString(CultureInfo.InvariantCulture), names.Of(segment.Cable),
            Quantities.Length.Text(segment.OneWayLength),
            string.Equals(device.Name, device.At, StringComparison.Ordinal) ? string.Empty : device.At,
            run.InstallationMethod is InstallationMethod method ? Words.InstallationMethod.Text(method) : string.Empty,
        ];
    }
}
