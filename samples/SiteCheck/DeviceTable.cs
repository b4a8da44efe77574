using System;
using System.Collections.Generic;
using System.Globalization;
using System.Linq;
using CamPower;
using CamPower.Reports;

namespace SiteCheck;

/// <summary>What each device gets through its cable, against what it accepts, and how far its output is loaded.</summary>
internal static class DeviceTable
{
    private const string Cable = "Cable", Length = "Length", Load = "Load A";

    /// <summary>The devices of one box, output by output.</summary>
    public static void Write(Page page, SiteReport report, BoxAssessment box) =>
        Write(page, report, DeviceLine.Of(report.Assessment, [box]), "Output", line => line.Output.Output.Number.ToString(CultureInfo.InvariantCulture), Cable, Length);

    /// <summary>The devices of several boxes in one table.</summary>
    public static void Write(Page page, SiteReport report, IEnumerable<BoxAssessment> boxes) =>
        Write(page, report, DeviceLine.Of(report.Assessment, boxes), "Box or adapter", line => line.Box.Box.Name, Cable, Length, Load);

    /// <summary>The devices that do not work, and how many others there are.</summary>
    public static void WriteNotWorking(Page page, SiteReport report, IEnumerable<BoxAssessment> boxes)
    {
        DeviceLine[] all = [.. DeviceLine.Of(report.Assessment, boxes)], wrong = [.. all.Where(line => line.Wrong is not null)];
        Write(page, report, wrong, "Box or adapter", line => line.Box.Box.Name, Cable, Length, Load);
        page.Text($"The other {all.Length - wrong.Length} devices are up and get a voltage that they accept.");
    }

    // What several devices share is said once.
    private static void Write(Page page, SiteReport report, IEnumerable<DeviceLine> lines, string heading, Func<DeviceLine, string> first, params string[] mayGo)
    {
        var table = new PlainTable(heading, "Device", Cable, Length, "Gets V", "Accepts V", Load, "Verdict");
        DeviceLine? before = null;
        foreach (DeviceLine line in lines)
        {
            bool isSameFirst = before is not null && first(before) == first(line);
            bool isSameOutput = before?.Output == line.Output;
            before = line;
            table.Add(isSameFirst ? "" : first(line), line.Device.Device.Name, Spoken.Cable(line.Device.Path), Spoken.Distance(line.Device.Path), line.Gets, line.Accepts,
                isSameOutput ? "" : line.Load, line.Verdict(report.Findings));
        }

        table.WriteTo(page, mayGo);
    }
}
