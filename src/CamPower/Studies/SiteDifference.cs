using System;
using System.Collections.Generic;
using System.Collections.ObjectModel;
using System.Linq;
using UnitsNet;
using static System.FormattableString;

namespace CamPower.Studies;

/// <summary>Compares two versions of a site.</summary>
internal sealed class SiteDifference(Site before, Site after, RuleSet rules, PriceList prices)
{
    // What rounding alone moves has not moved.
    private const double Rounding = 1e-9;

    private const string NotStated = "not stated";

    private readonly SiteAssessment _before = before.Assess(), _after = after.Assess();

    internal SiteComparison Compare()
    {
        List<Part> old = [.. PartsOf(before)], now = [.. PartsOf(after)];
        var oldOf = old.ToDictionary(part => part.Key, StringComparer.Ordinal);
        var nowOf = now.ToDictionary(part => part.Key, StringComparer.Ordinal);
        IReadOnlyList<Finding> was = rules.Check(_before), found = rules.Check(_after);
        return new SiteComparison(before, after,
            Texts(now.Where(part => !oldOf.ContainsKey(part.Key)).Select(InWords)),
            Texts(old.Where(part => !nowOf.ContainsKey(part.Key)).Select(InWords)),
            Texts(now.Where(part => oldOf.ContainsKey(part.Key)).SelectMany(part => Changes(oldOf[part.Key], part))),
            Without(found, was), Without(was, found), Margins(), MaterialDifference.Of(before, after, prices));
    }

    private static ReadOnlyCollection<string> Texts(IEnumerable<string> texts) => Array.AsReadOnly([.. texts]);

    // What is stated of it, each with its name.
    private static string InWords(Part part) => $"{part.Key}: " + string.Join(", ",
        part.Facts.Where(fact => !string.Equals(fact.Value, NotStated, StringComparison.Ordinal))
            .Select(fact => $"{fact.Key} {fact.Value}"));

    private static IEnumerable<string> Changes(Part old, Part now) =>
        from fact in now.Facts
        where !string.Equals(old.Facts[fact.Key], fact.Value, StringComparison.Ordinal)
        select $"{now.Key}: {fact.Key} {old.Facts[fact.Key]} -> {fact.Value}";

    private static IEnumerable<Part> PartsOf(Site site) =>
    [
        .. site.Boxes.Select(OfBox),
        .. site.Boxes.SelectMany(box => box.Outputs, OfOutput),
        .. site.Runs.Select(run => new Part($"run to {run.To}", new(StringComparer.Ordinal)
        {
            ["from"] = run.From.ToString(),
            ["cable"] = run.Run.ToString(),
            ["return conductor"] = run.ReturnAt is string at ? $"at {at}" : "its own",
            ["installation method"] = Text(run.InstallationMethod),
        })),
        .. site.Devices.Select(device => new Part($"device {device.Name}", new(StringComparer.Ordinal)
        {
            ["at"] = device.At,
            ["model"] = device.Model.Name,
            ["draw"] = device.Model.Draw.ToString()!,
            ["DC input"] = Text(device.Model.DcInput),
            ["AC input"] = Text(device.Model.AcInput),
            ["starting"] = Text(device.Model.Starting),
            ["connector"] = Text(device.Model.Connector),
            ["inrush"] = Text(device.Model.Inrush),
            ["switched inrush"] = Text(device.Model.SwitchedInrush),
            ["leads"] = device.LeadsReversed ? "reversed" : "not reversed",
        })),
        .. site.VideoLinks.Select((link, i) =>
            new Part(Invariant($"{link} {i}"), new(StringComparer.Ordinal) { ["shield"] = Number(link.ShieldResistance.Ohms, "Ω") })),
        .. site.Bonds.Select((bond, i) => new Part(
            Invariant($"{bond} {i}"), new(StringComparer.Ordinal) { ["resistance"] = Number(bond.Resistance.Ohms, "Ω") })),
        .. site.Ties.Select((tie, i) => new Part(Invariant($"{tie} {i}"), new(StringComparer.Ordinal) { ["outputs"] = "joined" })),
        .. site.Conditions.Select((condition, i) => new Part(Invariant($"condition {i + 1}"), new(StringComparer.Ordinal)
        {
            ["name"] = condition.Name,
            ["surroundings"] = condition.At.ToString()!,
            ["on"] = Invariant($"{condition.On}, {condition.MotorsMoving} motors"),
            ["line voltage"] = Text(condition.LineVoltage),
            ["duration"] = Text(condition.Duration),
        })),
        new Part("site", new(StringComparer.Ordinal)
        {
            ["name"] = site.Name,
            ["altitude"] = Text(site.Altitude),
            ["energy price"] = Text(site.EnergyPrice),
        }),
    ];

    private static Part OfBox(DistributionBox box)
    {
        SupplyOutput output = box.Supply.Output;
        return new Part($"box {box.Name}", new(StringComparer.Ordinal)
        {
            ["supply"] = box.Supply.Name,
            ["rating"] = Number(output.RatedAmperes, "A"),
            ["set point"] = $"{Number(output.SetVolts, "V")} {(output.Kind == CurrentKind.Dc ? "DC" : "AC")}",
            ["tolerance"] = Text(output.Tolerance),
            ["source resistance"] = Text(output.SourceResistance),
            ["overload"] = Text(output.Overload),
            ["rise"] = Text(output.Rise),
            ["trim"] = Text((output as DcOutput)?.Trim),
            ["ripple"] = Text((output as DcOutput)?.Ripple),
            ["output capacitance"] = Text((output as DcOutput)?.Capacitance),
            ["charging rise"] = Text((output as DcOutput)?.ChargingRise),
            ["charging current"] = Text((output as DcOutput)?.ChargingCurrent),
            ["derating"] = box.Supply.Derating.ToString()!,
            ["input"] = Text(box.Supply.Input),
            ["outputs"] = Invariant($"{box.Outputs.Count}"),
            ["terminals"] = Text(box.Terminals),
            ["enclosure"] = Text(box.Enclosure),
            ["cabinet"] = Text(box.Cabinet),
            ["receptacle"] = Text(box.Receptacle),
            ["battery"] = Text(box.Battery),
            ["battery fuse"] = Text(box.BatteryProtection),
            ["backup time"] = Text(box.BackupTime),
            ["reserve"] = Text(box.Reserve),
            ["output of the reserve"] = Text(box.Reserve?.Output),
            ["diode drop"] = Text(box.DiodeDrop),
            ["fed from"] = box.FedFrom ?? "the mains",
            ["kind"] = box.IsAdapter ? "adapter" : "box",
        });
    }

    private static Part OfOutput(DistributionBox box, BoxOutput output) => new(Subject.Of(box, output).Name, new(StringComparer.Ordinal)
    {
        ["limit"] = Number(output.LimitAmperes, "A"),
        ["protection"] = Text(output.Protection),
        ["class"] = Text(output.ClaimedClass),
    });

    private static string Text(object? value) => value switch
    {
        null => NotStated,
        IQuantity quantity => quantity.ToString("s6", System.Globalization.CultureInfo.InvariantCulture),
        _ => value.ToString()!,
    };

    private static string Number(double value, string unit) => Invariant($"{value:G6} {unit}");

    private static ReadOnlyCollection<Finding> Without(IEnumerable<Finding> these, IEnumerable<Finding> those)
    {
        List<(string, SubjectKind, string, Severity)> left = [.. those.Select(KeyOf)];
        return Array.AsReadOnly([.. these.Where(f => !left.Remove(KeyOf(f)))]);

        static (string, SubjectKind, string, Severity) KeyOf(Finding f) => (f.Rule, f.About.Kind, f.About.Name, f.Severity);
    }

    private ReadOnlyCollection<MovedMargin> Margins()
    {
        ILookup<(string, string), Room> old = RoomsOf(_before).ToLookup(room => (room.About.Name, room.What));
        return Array.AsReadOnly([.. RoomsOf(_after)
            .SelectMany(now => old[(now.About.Name, now.What)].Take(1), (now, was) =>
                new MovedMargin(now.About, now.What, was.Quantity, now.Quantity, was.Limit))
            .Where(margin => Math.Abs(margin.ChangeShare) > Rounding).OrderBy(margin => margin.ChangeShare)]);
    }

    private static IEnumerable<Room> RoomsOf(SiteAssessment solved)
    {
        foreach (DeviceAssessment device in solved.Devices.Where(d => d.Worst.State == DeviceState.Up && d.Worst.Accepted is not null))
        {
            VoltageRange accepted = device.Worst.Accepted!;
            Subject about = Subject.Of(device.Device);
            yield return new(about, "room to its lowest voltage", device.Worst.Margin, accepted.LowestVolts);
            yield return new(about, "room to its highest voltage",
                ElectricPotential.FromVolts(accepted.HighestVolts - device.LightLoadVolts), accepted.HighestVolts);
        }

        foreach (BoxAssessment box in solved.Boxes.Where(b => b.Outputs.Count > 0))
        {
            if (box.Worst.DeratedAmperes > 0)
            {
                yield return new(Subject.Of(box.Box), "spare current of its supply",
                    ElectricCurrent.FromAmperes(box.Worst.DeratedAmperes - box.Worst.Amperes), box.Worst.DeratedAmperes);
            }

            foreach (OutputAssessment output in box.Outputs)
            {
                yield return new(Subject.Of(box.Box, output.Output), "spare current to its limit",
                    ElectricCurrent.FromAmperes(output.Output.LimitAmperes - output.Worst.Amperes), output.Output.LimitAmperes);
            }
        }
    }

    // What a part is called, and what is known of it, by name.
    private sealed record Part(string Key, Dictionary<string, string> Facts);

    private sealed record Room(Subject About, string What, IQuantity Quantity, double Limit);
}
