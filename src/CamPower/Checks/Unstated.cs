using System;
using System.Collections.Generic;
using System.Linq;
using CamPower.Assessment;
using CamPower.Backup;
using CamPower.Faults;
using CamPower.Mains;
using static System.FormattableString;

namespace CamPower.Checks;

/// <summary>Something that is not stated, of what it is not stated, and what cannot be judged without it.</summary>
/// <param name="What">What is not stated.</param>
/// <param name="Where">The box, the outputs or the model that it is not stated of.</param>
/// <param name="Decides">What cannot be judged without it.</param>
/// <param name="HasRuleOfItsOwn">Whether another rule than <see cref="FaultsUnknownRule"/> speaks of it.</param>
internal readonly record struct Unstated(string What, string Where, string Decides, bool HasRuleOfItsOwn = false)
{
    private const string Starting = "start of the devices";

    /// <summary>All that is not stated of a site and leaves a verdict unknown, each once.</summary>
    internal static IReadOnlyList<Unstated> Of(Evidence evidence)
    {
        List<FaultsOfBox> boxes = [.. evidence.Faults.GroupBy(o => o.Box).Select(FaultsOfBox.Of)];
        IEnumerable<Unstated> found = OfFaults(boxes).Concat(OfProtection(boxes)).Concat(OfStarts(evidence.Assessment))
            .Concat(OfInrush(evidence.Assessment)).Concat(OfBackup(evidence)).Concat(OfHeat(evidence.Assessment))
            .Concat(OfReceptacles(evidence)).Concat(OfBreakers(evidence)).Concat(OfUninterruptible(evidence))
            .Concat(OfShields(evidence.Assessment)).Concat(OfAlternating(evidence.Assessment));
        return [.. found.Distinct()];
    }

    private static IEnumerable<Unstated> OfFaults(List<FaultsOfBox> boxes) =>
        from item in FaultDataText.ForVerdicts
        from box in boxes
        where (box.Missing & item.Data) != FaultData.None
        let outputs = box.Outputs.FindAll(o => (o.Missing & item.Data) != FaultData.None).ConvertAll(o => o.Output)
        select new Unstated(item.Words, Place(box.Box, outputs, box.Outputs.Count), item.Decides);

    // What a box does not say of its heat, and an output of its protective device, is asked for already.
    private static IEnumerable<Unstated> OfProtection(List<FaultsOfBox> boxes)
    {
        const FaultData asked = FaultData.Protection | FaultData.DeviceTemperature;
        return
            from fact in new (Func<ProtectionInCondition, Judgment?> Of,
                string Decides)[] { (c => c.Start, "protective devices at a start"),
                (c => c.Switching, "protective devices as illuminators or motors are switched on"),
                (c => c.Load, "load of protective devices") }
            from box in boxes
            from alike in box.Outputs.Where(o => (o.Missing & asked) == FaultData.None)
                .Select(o => (o.Output, Missing: FirstOf(o.Output.InConditions, c => fact.Of(c)?.NotStated)))
                .Where(x => x.Missing is not null and not BoxInCondition.InsideNotStated)
                    .GroupBy(x => x.Missing!, x => x.Output, StringComparer.Ordinal)
            select new Unstated(alike.Key, Place(box.Box, [.. alike], box.Outputs.Count), fact.Decides);
    }

    private static IEnumerable<Unstated> OfStarts(SiteAssessment assessment)
    {
        foreach (DeviceAssessment device in assessment.Devices.Where(d => d.Device.Model.Starting is null))
        {
            yield return new Unstated("turn-on and drop-out voltage of the device", device.Device.Model.Name, Starting);
        }

        foreach (BoxAssessment box in assessment.Boxes)
        {
            string? missing = FirstOf(box.InConditions, c => c.StartingCurrent.NotStated ?? c.StartingInrush.NotStated);
            if (missing is not null) yield return new Unstated(missing, box.Box.Name, Starting);
        }
    }

    // The drop-out voltage is asked for already.
    private static IEnumerable<Unstated> OfInrush(SiteAssessment assessment) =>
        from device in assessment.Devices
        where device.Device.Model.Starting is not null
        let missing = FirstOf(device.InConditions, c => c.DuringInrush.NotStated)
        where missing is not null
        select new Unstated(missing, missing is InrushDips.SupplyNotStated or InrushDips.HoldNotStated
            ? device.Box.Name
            : device.Device.Model.Name, "restarts by an inrush");

    private static IEnumerable<Unstated> OfBackup(Evidence evidence)
    {
        const string fuse = "battery fuse in a short", carries = "current through the battery fuse";
        foreach (BackupAssessment backup in evidence.Backups)
        {
            string box = backup.Box.Name;
            if (backup.Box.BatteryProtection is null) yield return new Unstated("fuse at the terminal of the battery", box, fuse);
            if (backup.FuseVoltage.NotStated is string volts) yield return new Unstated(volts, box, fuse);
            if (backup.FuseBreaking.NotStated is string amperes) yield return new Unstated(amperes, box, fuse);
            if (backup.FuseLoad.NotStated is string carried) yield return new Unstated(carried, box, carries);
            if (backup.FuseStart.NotStated is string melting) yield return new Unstated(melting, box, carries);
            if ((backup.ChargingVoltage.NotStated ?? backup.FloatIn(backup.FloatWorst).NotStated) is string following)
            {
                yield return new Unstated(following, box, "charging voltage");
            }

            if (backup.WhileCharging.NotStated is string charging)
            {
                yield return new Unstated(charging, box, "load and charging current");
            }

            if (backup.Box.BackupTime is not null && backup.InConditions.Count + backup.WithoutCurve.Count == 0)
            {
                yield return new Unstated("a condition that lasts and in which a device draws current", box, "backup time");
            }

            foreach (Condition condition in backup.WithoutCurve)
            {
                yield return new Unstated(
                    Invariant($"capacity of the battery at {condition.At.BoxCelsius:0.#} °C"), box, "backup time");
            }
        }
    }

    private static IEnumerable<Unstated> OfHeat(SiteAssessment assessment) =>
        from box in assessment.Boxes
        where box.InConditions.Any(c => c.IsWarmerThanKnown)
        select new Unstated("efficiency of the supply", box.Box.Name, "temperature in the enclosure", HasRuleOfItsOwn: true);

    private static IEnumerable<Unstated> OfReceptacles(Evidence evidence) =>
        from receptacle in evidence.Receptacles
        from draw in receptacle.Worst.Draws
        where draw.Current is null
        select new Unstated("power factor of the supply", draw.Box.Name, "current of the receptacle", HasRuleOfItsOwn: true);

    private static IEnumerable<Unstated> OfBreakers(Evidence evidence)
    {
        const string start = "whether a start trips the breaker";
        foreach (DistributionBox box in evidence.Breakers.SelectMany(b => b.Boxes))
        {
            SupplyInput? input = box.Supply.Input;
            if (input?.InrushCurrent is null) yield return new Unstated("cold inrush current of the supply", box.Name, start);
            if (input?.WarmInrushCurrent is null) yield return new Unstated("warm inrush current of the supply", box.Name, start);
            if (input?.LeakageCurrent is null && box.Receptacle!.Breaker!.ResidualCurrent is not null)
            {
                yield return new Unstated("leakage current of the supply", box.Name, "whether leakage trips the residual-current device");
            }
        }
    }

    // What its boxes take is asked for already.
    private static IEnumerable<Unstated> OfUninterruptible(Evidence evidence)
    {
        foreach (UninterruptibleAssessment standby in evidence.Uninterruptible)
        {
            string name = standby.Supply.Name;
            if (standby.Worst.OfPeak.NotStated is string crest)
            {
                yield return new Unstated(crest, name, "whether the uninterruptible supply gives the peaks");
            }

            if (standby.Worst.Power is not null && standby.Worst.Lasts.NotStated is string runtime)
            {
                yield return new Unstated(runtime, name, "how long the uninterruptible supply runs");
            }
        }
    }

    private static IEnumerable<Unstated> OfShields(SiteAssessment assessment) =>
        from shield in assessment.Shields
        where shield.Worst.MainsFrequencyVoltage is null
        from device in assessment.Devices
        where string.Equals(device.Device.Name, shield.Link.Device, StringComparison.Ordinal)
        select new Unstated("ripple of the supply", device.Box.Name, "ground-loop hum", HasRuleOfItsOwn: true);

    private static IEnumerable<Unstated> OfAlternating(SiteAssessment assessment)
    {
        foreach (DeviceAssessment device in assessment.Devices.Where(
            d => !d.Box.Supply.Output.IsDc && d.Device.Model.AcInput is not null))
        {
            string model = device.Device.Model.Name;
            if (device.Device.Model.AcStage is null)
            {
                yield return new Unstated("AC input of the device", model, "what the device takes on AC", HasRuleOfItsOwn: true);
            }

            if (FirstOf(device.InConditions, c => c.Ac?.DropOut.NotStated) is string missing)
            {
                yield return new Unstated(missing, model, "whether the device stays up on AC");
            }
        }

        foreach (BoxAssessment box in assessment.Boxes)
        {
            if (box.ThroughJoinedCommons.NotStated is not string missing) continue;
            yield return new Unstated(missing, box.Box.Name, "whether the joined shields short the transformer");
        }
    }

    private static string? FirstOf<T>(IReadOnlyList<T> cases, Func<T, string?> notStated)
    {
        for (int i = 0; i < cases.Count; i++)
        {
            if (notStated(cases[i]) is string missing) return missing;
        }

        return null;
    }

    // The box alone where it holds of every output in use; outputs in a row are a range.
    private static string Place(DistributionBox box, List<OutputFaults> outputs, int used)
    {
        if (outputs.Count == used) return box.Name;
        string noun = outputs.Count == 1 ? "output" : "outputs";
        return $"{box.Name} {noun} {NumberRows.Text(outputs.Select(o => o.Output.Number))}";
    }

    /// <summary>The outputs of a box, with what verdicts on the faults of each would need: asked once.</summary>
    private sealed class FaultsOfBox(DistributionBox box, List<(OutputFaults Output, FaultData Missing)> outputs)
    {
        internal DistributionBox Box => box;

        internal List<(OutputFaults Output, FaultData Missing)> Outputs => outputs;

        /// <summary>What is missing of any of them.</summary>
        internal FaultData Missing { get; } = outputs.Aggregate(FaultData.None, (all, output) => all | output.Missing);

        internal static FaultsOfBox Of(IGrouping<DistributionBox, OutputFaults> box) =>
            new(box.Key, [.. box.Select(output => (output, output.Missing))]);
    }
}
