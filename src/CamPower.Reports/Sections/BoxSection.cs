using System.Collections.Generic;
using System.Linq;
using CamPower.Heat;
using CamPower.Reports.Contents;
using UnitsNet;
using static System.FormattableString;

namespace CamPower.Reports.Sections;

/// <summary>One box or adapter: how it is set, how far it is loaded, what its devices get.</summary>
internal static class BoxSection
{
    private static readonly Column[] SupplyColumns =
        [new("Condition"), new("Inside, °C", true), new("Total, A", true), new("May deliver, A", true), new("Used, %", true)];

    private static readonly Column[] OutputColumns =
        [new("Output"), new("Feeds"), new("Protection"), new("At most, A", true), new("In"), new("Limit, A", true), new("Used, %", true)];

    internal static Section Of(Evidence evidence, BoxAssessment box, IReadOnlyList<Finding> findings)
    {
        DeviceAssessment[] devices = [.. evidence.Assessment.Devices.Where(d => d.Box == box.Box)];
        var blocks = new List<Block> { new Facts([.. FactsOf(evidence, box)]) };
        if (box.Outputs.Count > 0) blocks.Add(new Pictures([Chart.OneLine(evidence.Assessment, box, findings)], AreWide: true));
        if (devices.Length > 0)
        {
            blocks.Add(new DataTable($"Devices on {box.Box}: what they get from the lowest voltage of the supply, and the most that they may see", DeviceRow.Columns, [.. devices.Select(DeviceRow.Of)]));
        }

        if (box.Outputs.Count > 0)
        {
            blocks.Add(new DataTable($"Outputs of {box.Box} in use", OutputColumns, [.. box.Outputs.Select(OutputRow)]));
            blocks.Add(new DataTable($"Supply of {box.Box}, derated", SupplyColumns, [.. box.InConditions.Select(SupplyRow)]));
            blocks.Add(FaultTable.Of(box.Box, [.. evidence.Faults.Where(f => f.Box == box.Box)]));
            blocks.Add(new Pictures([.. VoltsOf(evidence.Assessment, box, devices), .. VoltagesAlong(box, devices)]));
        }

        if (PowerLimits(box) is DataTable limits) blocks.Add(limits);
        return new Section($"{(box.Box.IsAdapter ? "Adapter" : "Box")}: {box.Box}", blocks);
    }

    private static IEnumerable<Fact> FactsOf(Evidence evidence, BoxAssessment box)
    {
        Site site = evidence.Assessment.Site;
        SupplyOutput output = box.Box.Supply.Output;
        yield return new("Supply", box.Box.Supply.Name);
        yield return new("Gives", Invariant($"{output.LowestVoltage.Volts:0.00} V to {output.HighestVoltage.Volts:0.00} V {(output.Kind == CurrentKind.Dc ? "DC" : "AC")}, at most {output.RatedCurrent.Amperes:0.##} A"));
        if (output is DcOutput dc)
        {
            yield return new("Set to", Invariant($"{dc.SetPoint.Volts:0.00} V"));
            if (dc.Trim is not null && box.Outputs.Count > 0) yield return new("Trim window", Trim(site.TrimWindowOf(box.Box.Name, evidence.CancellationToken)));
        }

        if (box.Box.Enclosure is Enclosure enclosure) yield return new("Enclosure", enclosure.ToString());
        if (box.Box.Cabinet is Cabinet cabinet) yield return new("Cabinet", Shared(site, box.Box, cabinet));
        if (box.InConditions.Select(c => c.Heat).OfType<HeatedEnclosure>().OrderByDescending(h => h.Inside.DegreesCelsius).FirstOrDefault() is HeatedEnclosure hottest)
        {
            yield return new("Hottest inside", hottest.ToString());
        }

        if (box.Box.Receptacle is Receptacle receptacle) yield return new("Receptacle", evidence.Receptacles.First(o => o.Receptacle == receptacle).ToString());
        yield return new("Outputs in use", Invariant($"{box.Outputs.Count} of {box.Box.Outputs.Count}"));
    }

    private static string Shared(Site site, DistributionBox box, Cabinet cabinet)
    {
        string others = string.Join(", ", site.Boxes.Where(b => ReferenceEquals(b.Cabinet, cabinet) && b != box));
        return others.Length == 0 ? $"{cabinet}, alone in it" : $"{cabinet}, together with {others}";
    }

    private static string Trim(TrimWindow window) => window.IsEmpty
        ? Invariant($"none: {window.Conflict.Volts:0.00} V short. At least {window.Lowest}, at most {window.Highest}")
        : Invariant($"{window.Lowest} to {window.Highest}; the middle is {window.Middle.Volts:0.00} V{(window.HighestBeforeLoad.SetPoint < window.Highest.SetPoint ? $"; without load at most {window.HighestBeforeLoad}" : "")}");

    private static IReadOnlyList<string> SupplyRow(BoxInCondition box) =>
    [
        box.Condition.Name,
        box.InsideTemperature is Temperature inside ? Said.Celsius(inside) : "not known",
        (box.IsDemandOnly ? "asked for " : "") + Said.Amperes(box.TotalCurrent),
        Said.Amperes(box.DeratedRating),
        box.DeratedRating.Amperes > 0 ? Said.Percent(box.TotalCurrent.Amperes / box.DeratedRating.Amperes) : Said.Nothing,
    ];

    private static IReadOnlyList<string> OutputRow(OutputAssessment output) =>
    [
        Invariant($"{output.Output.Number}"),
        output.Devices.Count == 0 ? "no device" : string.Join(", ", output.Devices.Select(d => d.Name)),
        output.Output.Protection?.Name ?? "not declared",
        (output.Worst.IsDemandOnly ? "asked for " : "") + Said.Amperes(output.Worst.Current),
        output.Worst.Condition.Name,
        Invariant($"{output.Output.Limit.Amperes:0.##}"),
        Said.Percent(output.Loading.DecimalFractions),
    ];

    // A picture of one row says no more than its table.
    private static IEnumerable<Chart> VoltsOf(SiteAssessment assessment, BoxAssessment box, DeviceAssessment[] devices) =>
        devices.Length > 1 ? [Chart.DeviceVolts(assessment, box)] : [];

    // One picture an output where a device does not do well, in the worst condition of each of its devices.
    private static IEnumerable<Chart> VoltagesAlong(BoxAssessment box, DeviceAssessment[] devices) => box.Outputs
        .Select(output => devices.Where(d => d.Output == output.Output && d.Verdict != Verdict.Holds).Select(d => d.Worst).Where(HasProfile).ToList())
        .Where(worst => worst.Count > 0)
        .Select(worst => Chart.VoltageAlong(worst));

    private static bool HasProfile(DeviceInCondition device) => device.State != DeviceState.WrongCurrent && device.Profile() is not null;

    private static DataTable? PowerLimits(BoxAssessment box)
    {
        List<IReadOnlyList<string>> rows = [.. box.Box.Outputs.Where(o => o.ClaimedClass is not null).Select(o => box.Box.AssessPowerLimit(o.Number, o.ClaimedClass!.Value)).Select(PowerLimitRow)];
        return rows.Count == 0 ? null : new DataTable($"Outputs of {box.Box} that claim a power-limit class: numbers can refute one, never prove it", [new("Output"), new("Class"), new("Numbers say")], rows);
    }

    private static IReadOnlyList<string> PowerLimitRow(PowerLimitAssessment limit) =>
    [
        Invariant($"{limit.Output.Number}"),
        limit.Class switch
        {
            PowerLimitClass.Class2 => "Class 2",
            PowerLimitClass.LimitedPowerSourceIec60950 => "limited power source (IEC 60950-1)",
            PowerLimitClass.LimitedPowerSourceIec62368 => "limited power source (IEC 62368-1)",
            _ => "limited power source",
        },
        limit.Verdict switch
        {
            PowerLimitVerdict.Exceeds => "exceeds it",
            PowerLimitVerdict.WithinNumbers => "within the numbers; check the listing",
            _ => "unknown",
        },
    ];
}
