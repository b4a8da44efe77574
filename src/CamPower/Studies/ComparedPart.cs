using System;
using System.Collections.Generic;
using System.Linq;
using static System.FormattableString;
using static CamPower.Studies.PartText;

namespace CamPower.Studies;

/// <summary>What a part of a site is called, and all that is stated of it, by name.</summary>
internal sealed record ComparedPart(string Key, Dictionary<string, string> Facts)
{
    /// <summary>What is stated of it, each with its name, on one line.</summary>
    internal string InWords => $"{Key}: " + string.Join(", ", Facts
        .Where(fact => !string.Equals(fact.Value, NotStated, StringComparison.Ordinal)).Select(fact => $"{fact.Key} {fact.Value}"));

    /// <summary>Every part of a site.</summary>
    internal static IEnumerable<ComparedPart> AllOf(Site site) =>
    [
        .. site.Boxes.Select(OfBox),
        .. site.Boxes.SelectMany(box => box.Outputs, OfOutput),
        .. site.Runs.Select(OfRun),
        .. site.Devices.Select(OfDevice),
        .. site.VideoLinks.Select((link, i) => Named(Invariant($"{link} {i}"), ("shield", Number(link.ShieldResistance.Ohms, "Ω")))),
        .. site.Bonds.Select((bond, i) => Named(Invariant($"{bond} {i}"), ("resistance", Number(bond.Resistance.Ohms, "Ω")))),
        .. site.Ties.Select((tie, i) => Named(Invariant($"{tie} {i}"), ("outputs", "joined"))),
        .. site.Conditions.Select(OfCondition),
        Named("site", ("name", site.Name), ("altitude", Of(site.Altitude)), ("energy price", Of(site.EnergyPrice))),
    ];

    private static ComparedPart OfBox(DistributionBox box) => Named($"box {box.Name}",
    [
        .. OfSupply(box.Supply),
        ("outputs", Invariant($"{box.Outputs.Count}")),
        ("terminals", Of(box.Terminals)),
        ("enclosure", Of(box.Enclosure)),
        ("cabinet", Of(box.Cabinet)),
        ("receptacle", Of(box.Receptacle)),
        ("battery", Of(box.Battery)),
        ("battery fuse", Of(box.BatteryProtection)),
        ("backup time", Of(box.BackupTime)),
        ("reserve", box.Reserve is Supply reserve ? string.Join(", ", OfSupply(reserve).Select(f => $"{f.Name} {f.Text}")) : NotStated),
        ("diode drop", Of(box.DiodeDrop)),
        ("fed from", box.FedFrom ?? "the mains"),
        ("start of the input", Of(box.InputStarting)),
        ("inrush of the input", Of(box.InputInrush)),
        ("kind", box.IsAdapter ? "adapter" : "box"),
    ]);

    private static (string Name, string Text)[] OfSupply(Supply supply)
    {
        SupplyOutput output = supply.Output;
        DcOutput? dc = output as DcOutput;
        AcOutput? ac = output as AcOutput;
        double volts = (dc?.SetPoint ?? output.Nominal).Volts;
        return
        [
            ("supply", supply.Name),
            ("rating", Number(output.RatedCurrent.Amperes, "A")),
            ("nominal voltage", Of(output.Nominal)),
            ("set point", $"{Number(volts, "V")} {(output.IsDc ? "DC" : "AC")}"),
            ("tolerance", Of(output.Tolerance)),
            ("source resistance", Of(output.SourceResistance)),
            ("overload", Of(output.Overload)),
            ("rise", Of(output.Rise)),
            ("trim", Of(dc?.Trim)),
            ("ripple", Of(dc?.Ripple)),
            ("output capacitance", Of(dc?.Capacitance)),
            ("rated power", Of(dc?.RatedPower)),
            ("charging rise", Of(dc?.ChargingRise)),
            ("charging current", Of(dc?.ChargingCurrent)),
            ("charging follows the temperature", Of(dc?.FollowsTemperature)),
            ("open voltage", Of(dc?.OpenVoltage ?? ac?.OpenVoltage)),
            ("frequency", Of(ac?.Frequency)),
            ("derating", Of(supply.Derating)),
            ("input", Of(supply.Input)),
        ];
    }

    private static ComparedPart OfOutput(DistributionBox box, BoxOutput output) => Named(Subject.Of(box, output).Name,
        ("limit", Number(output.Limit.Amperes, "A")), ("protection", Of(output.Protection)), ("class", Of(output.ClaimedClass)));

    private static ComparedPart OfRun(SiteRun run) => Named($"run to {run.To}",
        ("from", run.From.ToString()), ("cable", run.Run.ToString()),
        ("return conductor", run.ReturnAt is string at ? $"at {at}" : "its own"),
        ("installation method", Of(run.InstallationMethod)));

    private static ComparedPart OfDevice(SiteDevice device) => Named($"device {device.Name}",
        ("at", device.At),
        ("model", device.Model.Name),
        ("kind", Of(device.Model.Kind)),
        ("draw", Of(device.Model.Draw)),
        ("DC input", Of(device.Model.DcInput)),
        ("AC input", Of(device.Model.AcInput)),
        ("AC stage", Of(device.Model.AcStage)),
        ("starting", Of(device.Model.Starting)),
        ("connector", Of(device.Model.Connector)),
        ("inrush", Of(device.Model.Inrush)),
        ("switched inrush", Of(device.Model.SwitchedInrush)),
        ("leads", device.LeadsReversed ? "reversed" : "not reversed"));

    private static ComparedPart OfCondition(Condition condition, int index) => Named(Invariant($"condition {index + 1}"),
        ("name", condition.Name),
        ("surroundings", Of(condition.At)),
        ("on", Of(condition.On)),
        ("motors moving", condition.MotorsMoving is null ? "all" : Of(condition.MotorsMoving)),
        ("line voltage", Of(condition.LineVoltage)),
        ("duration", Of(condition.Duration)),
        ("hours a year", Of(condition.HoursAYear)));

    private static ComparedPart Named(string key, params (string Name, string Text)[] facts) =>
        new(key, facts.ToDictionary(fact => fact.Name, fact => fact.Text, StringComparer.Ordinal));

    private static string Number(double value, string unit) => Invariant($"{value:G6} {unit}");
}
