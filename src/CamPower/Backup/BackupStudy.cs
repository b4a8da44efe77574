using System;
using System.Collections.Generic;
using System.Linq;
using CamPower.Assessment;
using CamPower.Supplies;
using UnitsNet;

namespace CamPower.Backup;

/// <summary>Works out what boxes do on their batteries.</summary>
internal static class BackupStudy
{
    /// <summary>Every box with a battery, in the order of the boxes.</summary>
    internal static IReadOnlyList<BackupAssessment> Of(SiteAssessment assessment) => Array.AsReadOnly(
        [.. assessment.Boxes.Where(b => b.Box.Battery is not null).Select(b => new BackupAssessment(assessment.Site, b))]);

    /// <summary>A box on its battery through conditions in turn.</summary>
    internal static BatteryRun Run(Site site, string boxName, IReadOnlyList<Condition> conditions)
    {
        DistributionBox box = site.BoxNamed(boxName, nameof(boxName));
        if (box.Battery is not Battery battery) throw new ArgumentException($"{box} has no battery.", nameof(boxName));
        if (conditions.Count == 0) throw new ArgumentException("There must be at least one condition.", nameof(conditions));
        if (conditions.Take(conditions.Count - 1).FirstOrDefault(c => !(c.Duration > Duration.Zero)) is Condition endless)
        {
            throw new ArgumentException($"\"{endless}\" needs a duration, because another condition follows it.", nameof(conditions));
        }

        if (conditions.FirstOrDefault(c => !IsCovered(battery, c)) is Condition outside)
        {
            ShareCurve<Temperature> capacity = battery.Chemistry.Capacity, resistance = battery.Chemistry.Resistance;
            double lowest = Math.Max(capacity.Lowest, resistance.Lowest), highest = Math.Min(capacity.Highest, resistance.Highest);
            throw Require.OutOfRange(outside.At.BoxCelsius, nameof(conditions), "°C",
                FormattableString.Invariant($"on both curves of the battery, from {lowest} to {highest}"));
        }

        return new Discharge(Converters.In(site, conditions), box, conditions).Run();
    }

    /// <summary>Whether the chemistry of a battery states its capacity and resistance at the temperature around the box.</summary>
    internal static bool IsCovered(Battery battery, Condition condition) =>
        battery.Chemistry.Capacity.ShareAt(condition.At.BoxCelsius) is not null
            && battery.Chemistry.Resistance.ShareAt(condition.At.BoxCelsius) is not null;

    /// <summary>The run on the smallest battery on which every device of a box runs as long as wanted; null where none does.</summary>
    internal static BatteryRun? Smallest(Site site, DistributionBox box, IEnumerable<Battery> batteries, BackupPolicy policy,
        Duration wanted, IReadOnlyList<Condition> conditions)
    {
        // One whose curves do not reach the temperature is passed over where there are others.
        List<Battery> covered = [.. batteries.Where(b => conditions.All(c => IsCovered(b, c)))];
        // One of more volts than the charger gives is never full, and feeds the supply backwards.
        double charger = box.Supply.Output.HighestVolts;
        return (covered.Count > 0 ? covered : batteries).Where(b => !Limits.IsAbove(b.OpenCircuitVolts(1), charger))
            .OrderBy(b => b.AmpereSeconds * b.OpenCircuitVolts(1)).Select(battery =>
        {
            DistributionBox backed = box.WithBattery(policy.AtEndOfLife(battery));
            return Run(site.With(backed), backed.Name, conditions);
        }).FirstOrDefault(run => run.Lasts(wanted).Verdict == Verdict.Holds);
    }
}
