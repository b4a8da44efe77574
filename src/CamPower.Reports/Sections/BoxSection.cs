using System;
using System.Collections.Generic;
using System.Linq;
using CamPower.Backup;
using CamPower.Heat;
using CamPower.Reports.Contents;
using UnitsNet;
using static System.FormattableString;

namespace CamPower.Reports.Sections;

/// <summary>A box, or several with little on them: how it is set, how far it is loaded, what its devices get.</summary>
internal sealed class BoxSection(Evidence evidence, IReadOnlyList<Finding> findings, bool hasEveryProfile)
{
    private static readonly Column[] ConditionColumns =
        [new("Condition"), new("Air inside, °C", true), new("Total, A", true), new("May deliver, A", true), new("Used, %", true)];

    private static readonly Column[] SupplyColumns =
        [new("Box or adapter"), new("Supply"), new("Gives, V"), new("At worst, A"), new("In"), new("Air inside, °C", true),
            new("Set point, case, receptacle")];

    /// <summary>A section for each box with several outputs in use, and one for all others.</summary>
    internal IEnumerable<Section> All()
    {
        IReadOnlyList<BoxAssessment> boxes = evidence.Assessment.Boxes;
        foreach (BoxAssessment box in boxes.Where(b => b.Outputs.Count > 1)) yield return Of(box);
        BoxAssessment[] others = [.. boxes.Where(b => b.Outputs.Count <= 1)];
        if (others.Length == 1) yield return Of(others[0]);
        else if (others.Length > 1) yield return Of(others);
    }

    private Section Of(BoxAssessment box)
    {
        DeviceAssessment[] devices = DevicesOf(box);
        var blocks = new List<Block> { new Facts([.. FactsOf(box)]) };
        if (box.Outputs.Count > 0) blocks.Add(new Pictures([Chart.OneLine(evidence.Assessment, box, findings)], AreWide: true));
        if (devices.Length > 0) blocks.Add(DeviceTable.Of(box, devices));
        blocks.AddRange(AlternatingTable.Of(devices));
        if (box.Outputs.Count > 0)
        {
            blocks.Add(FaultTable.Of(box.Box, FaultsOf(box)));
            blocks.Add(new DataTable($"Supply of {box.Box}, derated", ConditionColumns, [.. box.InConditions.Select(ConditionRow)]));
        }

        blocks.AddRange(PowerLimits([box]));
        blocks.AddRange(Charts([.. VoltsOf(box, devices), .. VoltagesAlong(box, devices)]));
        return new Section($"{(box.Box.IsAdapter ? "Adapter" : "Box")}: {box.Box}", blocks);
    }

    private Section Of(IReadOnlyList<BoxAssessment> boxes)
    {
        BoxAssessment[] used = [.. boxes.Where(b => b.Outputs.Count > 0)];
        DeviceAssessment[] devices = [.. used.SelectMany(DevicesOf)];
        var blocks = new List<Block> { new DataTable(
            "Supplies, each in its worst condition", SupplyColumns, [.. boxes.Select(SupplyRow)]) };
        if (devices.Length > 0) blocks.Add(DeviceTable.Of("Devices on them", devices, used));
        blocks.AddRange(AlternatingTable.Of(devices));
        if (used.Length > 0) blocks.Add(FaultTable.Of([.. used.SelectMany(FaultsOf)]));
        blocks.AddRange(PowerLimits(boxes));
        Chart[] diagrams = [.. used.Where(IsMarked).Select(box => Chart.OneLine(evidence.Assessment, box, findings))];
        if (diagrams.Length > 0) blocks.Add(new Pictures(diagrams, AreWide: true, ArePrinted: false));
        blocks.AddRange(Charts([.. used.SelectMany(box => VoltagesAlong(box, DevicesOf(box)))]));
        return new Section(boxes.All(b => b.Box.IsAdapter) ? "Adapters" : "Adapters, and boxes with one output in use", blocks);
    }

    private DeviceAssessment[] DevicesOf(BoxAssessment box) =>
        [.. evidence.Assessment.Devices.Where(d => d.Box == box.Box).OrderBy(d => d.Output.Number)];

    private OutputFaults[] FaultsOf(BoxAssessment box) => [.. evidence.Faults.Where(f => f.Box == box.Box)];

    // A diagram without a mark says no more than the tables. On paper those of single outputs take more room than they are worth.
    private bool IsMarked(BoxAssessment box)
    {
        HashSet<string> names = [box.Box.Name, .. DevicesOf(box).Select(d => d.Device.Name), .. DevicesOf(box).SelectMany(d => d.Path)
            .Select(run => Subject.Of(run).Name),
            .. box.Outputs.Select(o => Subject.Of(box.Box, o.Output).Name)];
        return findings.Any(f => f.Severity >= Severity.Caution && names.Contains(f.About.Name));
    }

    private IEnumerable<Fact> FactsOf(BoxAssessment box)
    {
        SupplyOutput output = box.Box.Supply.Output;
        yield return new("Supply",
            Invariant($"{box.Box.Supply.Name}; gives {Gives(output)} V {(output.Kind == CurrentKind.Dc ? "DC" : "AC")}, ")
            + Invariant($"at most {output.RatedCurrent.Amperes:0.##} A"));
        foreach (Fact fact in Setting(box)) yield return fact;
        yield return new("Load at worst", Invariant($"{Load(box.Worst)} A in {box.Worst.Condition}"));
        yield return new("Outputs in use", Invariant($"{box.Outputs.Count} of {box.Box.Outputs.Count}"));
        foreach (Fact fact in Place(box)) yield return fact;
    }

    private IEnumerable<Fact> Setting(BoxAssessment box)
    {
        if (box.Box.Supply.Output is AcOutput { OpenVoltage: ElectricPotential unloaded } plate)
        {
            yield return new("Transformer", Invariant($"{(double)plate.RatedApparentPower.Voltamperes:0.#} VA; ")
                + Invariant($"{unloaded.Volts:0.##} V without a load, regulation {plate.Regulation!.Value.Percent:0.#} %"));
        }

        if (box.Box.Supply.Output is not DcOutput dc) yield break;
        if (dc.OpenVoltage is ElectricPotential open)
        {
            yield return new("Unregulated",
                Invariant($"{open.Volts:0.00} V with no load, {dc.Nominal.Volts:0.00} V at {dc.RatedCurrent.Amperes:0.##} A"));
            yield break;
        }

        yield return new("Set to", Invariant($"{dc.SetPoint.Volts:0.00} V"));
        if (dc.Trim is not null && box.Outputs.Count > 0)
        {
            yield return new("Trim window", Trim(evidence.Assessment.Site.TrimWindowOf(box.Box.Name, evidence.CancellationToken)));
        }
    }

    private IEnumerable<Fact> Place(BoxAssessment box)
    {
        if (box.Box.FedFrom is string junction) yield return new("Converter", $"fed from {junction}, as the device {box.Box}");
        if (box.Box.Enclosure is Enclosure enclosure) yield return new("Enclosure", enclosure.ToString());
        if (box.Box.Cabinet is Cabinet cabinet) yield return new("Cabinet", Shared(evidence.Assessment.Site, box.Box, cabinet));
        if (box.InConditions.Select(c => c.Heat).OfType<HeatedEnclosure>().OrderByDescending(h => h.Inside.DegreesCelsius)
            .FirstOrDefault() is HeatedEnclosure hottest)
        {
            yield return new("Hottest inside", hottest.ToString());
        }

        if (evidence.Backups.FirstOrDefault(b => b.Box == box.Box) is BackupAssessment backup)
        {
            yield return new("On battery", backup.ToString());
        }

        if (evidence.Reserves.FirstOrDefault(r => r.Box == box.Box) is ReserveAssessment reserve)
        {
            yield return new("Reserve",
                Invariant($"{box.Box.Reserve}, gives {Gives(box.Box.Reserve!.Output)} V; each through a diode of at most ")
                + Invariant($"{box.Box.DiodeDrop!.Value.Volts:0.00} V; {reserve.Worst}"));
        }

        if (box.Box.Receptacle is Receptacle receptacle)
        {
            yield return new("Receptacle", evidence.Receptacles.First(o => o.Receptacle == receptacle).ToString());
        }
    }

    private static string Shared(Site site, DistributionBox box, Cabinet cabinet)
    {
        string others = string.Join(", ", site.Boxes.Where(b => ReferenceEquals(b.Cabinet, cabinet) && b != box));
        return others.Length == 0 ? $"{cabinet}, alone in it" : $"{cabinet}, together with {others}";
    }

    private static string Trim(TrimWindow window)
    {
        if (window.IsEmpty) return window.Summary;
        if (window.Box.Battery is not Battery battery) return Invariant($"{window.Summary}; the middle is {window.Middle.Volts:0.00} V");
        ElectricPotential right = battery.Cells * battery.Chemistry.Floating;
        string keep = window.Contains(right) ? "keep it at" : "not inside it is";
        return Invariant($"{window.Summary}; {keep} the float voltage of the battery, {right.Volts:0.00} V");
    }

    private static string Gives(SupplyOutput output) => Invariant($"{output.LowestVoltage.Volts:0.00}–{output.HighestVoltage.Volts:0.00}");

    private static string Load(BoxInCondition box) =>
        Invariant($"{(box.IsDemandOnly ? "needs " : "")}{box.TotalCurrent.Amperes:0.00} of {box.DeratedRating.Amperes:0.00}");

    private static string Air(BoxInCondition box) => box.InsideTemperature is Temperature inside ? Said.Celsius(inside) : "not known";

    private IReadOnlyList<string> SupplyRow(BoxAssessment box) =>
    [
        box.Box.Name,
        box.Box.Supply.Name,
        Gives(box.Box.Supply.Output),
        Load(box.Worst),
        box.Worst.Condition.Name,
        Air(box.Worst),
        string.Join("; ", Setting(box).Concat(Place(box))
            .Select(f => f.Name is "Set to" or "Unregulated" or "Trim window" or "Hottest inside"
                ? $"{f.Name.ToLowerInvariant()} {f.Value}"
                : f.Value)),
    ];

    private static IReadOnlyList<string> ConditionRow(BoxInCondition box) =>
    [
        box.Condition.Name,
        Air(box),
        (box.IsDemandOnly ? "needs " : "") + Said.Amperes(box.TotalCurrent),
        Said.Amperes(box.DeratedRating),
        box.DeratedRating.Amperes > 0 ? Said.Percent(box.TotalCurrent.Amperes / box.DeratedRating.Amperes) : Said.Nothing,
    ];

    private static IEnumerable<Block> Charts(IReadOnlyList<Chart> charts) => charts.Count == 0 ? [] : [new Pictures(charts)];

    // A picture of one row says no more than its table.
    private IEnumerable<Chart> VoltsOf(BoxAssessment box, DeviceAssessment[] devices) =>
        devices.Length > 1 ? [Chart.DeviceVolts(evidence.Assessment, box)] : [];

    // One picture an output where a device is outside what it accepts, in the worst condition of each of its devices.
    private IEnumerable<Chart> VoltagesAlong(BoxAssessment box, DeviceAssessment[] devices) => box.Outputs
        .Select(output => devices.Where(d => d.Output == output.Output && (hasEveryProfile || IsOutside(d.Worst))).Select(d => d.Worst)
            .Where(HasProfile).ToList())
        .Where(worst => worst.Count > 0)
        .Select(worst => Chart.VoltageAlong(worst));

    private static bool IsOutside(DeviceInCondition device) => device.State != DeviceState.Up
        || device.LowestVoltage(Ratio.Zero).Verdict == Verdict.Violated || device.Voltage > device.Accepted!.Highest;

    private static bool HasProfile(DeviceInCondition device) => device.State != DeviceState.WrongCurrent && device.Profile() is not null;

    private static IEnumerable<Block> PowerLimits(IReadOnlyList<BoxAssessment> boxes)
    {
        IReadOnlyList<string>[] rows =
        [
            .. from box in boxes.Select(b => b.Box)
               from output in box.Outputs
               where output.ClaimedClass is not null
               select PowerLimitRow(box, box.AssessPowerLimit(output.Number, output.ClaimedClass!.Value)),
        ];
        if (rows.Length > 0)
        {
            yield return new DataTable("Power-limit classes that labels claim: numbers can refute a claim, never prove it",
                [new("Output"), new("Class"), new("The numbers")], rows);
        }
    }

    private static IReadOnlyList<string> PowerLimitRow(DistributionBox box, PowerLimitAssessment limit) =>
    [
        Subject.Of(box, limit.Output).Name,
        limit.Class switch
        {
            PowerLimitClass.Class2 => "Class 2",
            PowerLimitClass.LimitedPowerSourceIec60950 => "limited power source (IEC 60950-1)",
            PowerLimitClass.LimitedPowerSourceIec62368 => "limited power source (IEC 62368-1)",
            _ => "limited power source",
        },
        limit.Verdict switch
        {
            PowerLimitVerdict.Exceeds => "exceed it",
            PowerLimitVerdict.WithinNumbers => "are within it; check the listing",
            _ => "are not known",
        },
    ];
}
