using System;
using CamPower.Supplies;
using UnitsNet;

namespace CamPower.Backup;

/// <summary>A box on its battery in one condition, new and at the end of the battery's life.</summary>
/// <remarks>Immutable.</remarks>
public sealed class BackupInCondition
{
    private readonly Lazy<BatteryRun> _old;

    internal BackupInCondition(Site site, DistributionBox box, Condition condition)
    {
        Condition = condition;
        New = new Discharge(site, box, [condition]).Run();
        _old = new Lazy<BatteryRun>(() =>
        {
            DistributionBox aged = box.WithBattery(box.Battery!.Aged(Ratio.FromPercent(BatteryConstants.EndOfLife.Value)));
            return new Discharge(site.With(aged), aged, [condition]).Run();
        });
    }

    /// <summary>The condition.</summary>
    public Condition Condition { get; }

    /// <summary>The run with the battery as it is stated.</summary>
    public BatteryRun New { get; }

    /// <summary>The run with 80 % of its capacity left: the end of its life (<see cref="Sources.Ieee485Aging"/>).</summary>
    public BatteryRun Old => _old.Value;

    /// <summary>The time until the first device is off against the backup time of the box, with the battery as it is stated.</summary>
    public Judgment Lasts => LastsOn(New);

    /// <summary>The same at the end of the battery's life.</summary>
    public Judgment LastsAtEndOfLife => New.Box.BackupTime is null ? default : LastsOn(Old);

    /// <summary>Condition and run of the new battery in the invariant culture; never throws.</summary>
    public override string ToString() => FormattableString.Invariant($"\"{Condition}\": {New}");

    private Judgment LastsOn(BatteryRun run) => New.Box.BackupTime is Duration wanted ? run.Lasts(wanted) : default;
}
