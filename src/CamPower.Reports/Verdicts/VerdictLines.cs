using System;
using System.Collections.Generic;
using System.Linq;
using CamPower.Backup;
using CamPower.Mains;
using UnitsNet;

namespace CamPower.Reports.Verdicts;

/// <summary>Every verdict on a site: device by device, then box by box with its outputs, each in every condition.</summary>
/// <remarks>The margins are those that the rules of the package ask.</remarks>
internal static class VerdictLines
{
    internal static IEnumerable<VerdictLine> Of(Evidence evidence)
    {
        Ratio voltageMargin = LimitOf(Rules.ThinVoltageMargin()), headroom = LimitOf(Rules.SupplyAboveHeadroomPolicy());
        return evidence.Assessment.Devices.SelectMany(device => OfDevice(device, voltageMargin))
            .Concat(evidence.Assessment.Boxes.Where(box => box.Outputs.Count > 0).SelectMany(box => OfBox(box, headroom)))
            .Concat(evidence.Backups.SelectMany(OfBattery))
            .Concat(evidence.Reserves.SelectMany(OfReserve))
            .Concat(evidence.Breakers.SelectMany(OfBreaker))
            .Concat(evidence.Uninterruptible.SelectMany(OfUninterruptible))
            .Concat(evidence.Faults.SelectMany(OfOutput));
    }

    private static IEnumerable<VerdictLine> OfDevice(DeviceAssessment device, Ratio margin)
    {
        Subject where = Subject.Of(device.Device);
        return Known(
        [
            new VerdictLine("device", where, Condition: null, device.Verdict),
            VerdictLine.Of("highest-voltage-at-light-load", where, condition: null, device.AtLightLoad),
            VerdictLine.Of("highest-voltage-before-it-draws", where, condition: null, device.BeforeItDraws),
            VerdictLine.Of("voltage-of-supply", where, condition: null, device.OfSupply),
            .. device.InConditions.SelectMany<DeviceInCondition, VerdictLine?>(at =>
            [
                new VerdictLine("device-in-condition", where, at.Condition, at.Verdict),
                VerdictLine.Of("lowest-voltage", where, at.Condition, at.LowestVoltage(margin)),
                VerdictLine.Of("valley-at-ac-input", where, at.Condition, at.Ac?.DropOut ?? default),
            ]),
        ]);
    }

    private static IEnumerable<VerdictLine> OfBox(BoxAssessment box, Ratio headroom)
    {
        Subject where = Subject.Of(box.Box);
        return Known(
        [
            VerdictLine.Of("current-through-joined-commons", where, condition: null, box.ThroughJoinedCommons),
            .. box.InConditions.SelectMany(at => OfBoxIn(where, at, headroom)),
        ]);
    }

    private static IEnumerable<VerdictLine?> OfBoxIn(Subject where, BoxInCondition at, Ratio headroom) =>
    [
        VerdictLine.Of("current-of-supply", where, at.Condition, at.Load(headroom)),
        VerdictLine.Of("starting-current-of-supply", where, at.Condition, at.StartingCurrent),
        VerdictLine.Of("returning-current-of-supply", where, at.Condition, at.ReturningCurrent),
        VerdictLine.Of("hottest-air-of-supply", where, at.Condition, at.HottestAir),
        VerdictLine.Of("coldest-air-of-supply", where, at.Condition, at.ColdestAir),
    ];

    private static IEnumerable<VerdictLine> OfBattery(BackupAssessment backup)
    {
        Subject where = Subject.Of(backup.Box);
        return Known(
        [
            VerdictLine.Of("voltage-of-battery-fuse", where, condition: null, backup.FuseVoltage),
            VerdictLine.Of("short-circuit-current-of-battery", where, condition: null, backup.FuseBreaking),
            VerdictLine.Of("current-of-battery-fuse", where, condition: null, backup.FuseLoad),
            VerdictLine.Of("start-through-battery-fuse", where, condition: null, backup.FuseStart),
            VerdictLine.Of("highest-charging-voltage", where, condition: null, backup.ChargingVoltage),
            VerdictLine.Of("charging-current", where, condition: null, backup.OfChargingCurrent),
            VerdictLine.Of("float-voltage", where, condition: null, backup.FloatVoltage),
            VerdictLine.Of("charging-temperature", where, backup.ColdestCharging, backup.ChargingTemperature),
            VerdictLine.Of("current-of-supply-while-charging", where, condition: null, backup.WhileCharging),
            .. backup.InConditions.SelectMany<BackupInCondition, VerdictLine?>(at =>
            [
                VerdictLine.Of("backup-time", where, at.Condition, at.Lasts),
                VerdictLine.Of("backup-time-at-end-of-life", where, at.Condition, at.LastsAtEndOfLife),
            ]),
        ]);
    }

    private static IEnumerable<VerdictLine> OfReserve(ReserveAssessment reserve)
    {
        Subject where = Subject.Of(reserve.Box);
        return Known(reserve.InConditions.SelectMany<ReserveInCondition, VerdictLine?>(at =>
        [
            VerdictLine.Of("current-of-reserve-alone", where, at.Condition, at.ReserveLoad),
            VerdictLine.Of("voltage-beside-reserve", where, at.Condition, at.ReserveRests),
        ]));
    }

    private static IEnumerable<VerdictLine> OfBreaker(BreakerAssessment breaker)
    {
        Subject where = Subject.Of(breaker.Breaker);
        return Known(
        [
            VerdictLine.Of("cold-start-on-breaker", where, condition: null, breaker.Cold.Holds),
            VerdictLine.Of("warm-start-on-breaker", where, condition: null, breaker.Warm.Holds),
            VerdictLine.Of("leakage-on-breaker", where, condition: null, breaker.Leakage),
        ]);
    }

    private static IEnumerable<VerdictLine> OfUninterruptible(UninterruptibleAssessment standby)
    {
        Subject where = Subject.Of(standby.Supply);
        return Known(standby.InConditions.SelectMany<UninterruptibleInCondition, VerdictLine?>(at =>
        [
            VerdictLine.Of("power-of-uninterruptible-supply", where, at.Condition, at.OfPower),
            VerdictLine.Of("apparent-power-of-uninterruptible-supply", where, at.Condition, at.OfApparentPower),
            VerdictLine.Of("peak-of-uninterruptible-supply", where, at.Condition, at.OfPeak),
            VerdictLine.Of("runtime-of-uninterruptible-supply", where, at.Condition, at.Lasts),
        ]));
    }

    private static IEnumerable<VerdictLine> OfOutput(OutputFaults output)
    {
        Subject where = Subject.Of(output.Box, output.Output);
        return Known(
        [
            .. output.Assessment.InConditions.Select(at => VerdictLine.Of("current-of-output", where, at.Condition, at.OfLimit)),
            .. output.InConditions.Select(at => VerdictLine.Of("current-of-protective-device", where, at.Condition, at.Load)),
            .. output.InConditions.Select(
                at => at.Start is Judgment start ? VerdictLine.Of("start-through-protective-device", where, at.Condition, start) : null),
            .. output.InConditions.Select(at => at.Switching is Judgment switching
                ? VerdictLine.Of("switching-through-protective-device", where, at.Condition, switching) : null),
        ]);
    }

    private static IEnumerable<VerdictLine> Known(IEnumerable<VerdictLine?> lines) => lines.OfType<VerdictLine>();

    private static Ratio LimitOf(Rule rule) =>
        rule.Limit is Ratio share ? share : throw new InvalidOperationException($"{rule} sets no share.");
}
