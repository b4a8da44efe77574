using System.Collections.Generic;
using System.Linq;
using UnitsNet;
using static System.FormattableString;

namespace CamPower.Checks;

/// <summary>An inrush that takes a device that runs below its drop-out voltage for longer than it runs on.</summary>
internal sealed class InrushDipRule() : Rule("inrush-dip", Severity.Caution,
    "While a device starts, or switches its illuminators or motors on, a device that runs falls below its drop-out voltage for longer than it runs on without power: it restarts.",
    "Use a larger conductor on the way that they share, give the device an output of its own, or use one that runs on for longer.", Sources.Kirchhoff)
{
    /// <inheritdoc/>
    public override IEnumerable<Finding> Check(Evidence evidence) =>
        from box in Require.NotNull(evidence, nameof(evidence)).Assessment.Devices.GroupBy(device => device.Box)
        let dark = box.Select(WorstOf).OfType<DeviceInCondition>().OrderByDescending(Excess).ToList()
        where dark.Count > 0
        select Found(box.Key, dark);

    private static DeviceInCondition? WorstOf(DeviceAssessment device) =>
        device.InConditions.Where(c => c.DuringInrush.IsViolated).OrderByDescending(Excess).FirstOrDefault();

    private static double Excess(DeviceInCondition dark) => ((Duration)dark.DuringInrush.Value!).Seconds / ((Duration)dark.DuringInrush.Limit!).Seconds;

    private Finding Found(DistributionBox box, List<DeviceInCondition> dark)
    {
        DeviceInCondition worst = dark[0];
        Duration lasts = (Duration)worst.DuringInrush.Value!, held = (Duration)worst.DuringInrush.Limit!;
        string others = dark.Count > 1 ? Invariant($" So do {dark.Count} of its devices: {string.Join(", ", dark.Select(d => d.Device.Name))}.") : string.Empty;
        return Find(dark.Count > 1 ? Subject.Of(box) : Subject.Of(worst.Device),
            Invariant($"In \"{worst.Condition}\" an inrush takes {worst.Device} below its drop-out voltage for {lasts.Milliseconds:G3} ms; it runs on for {held.Milliseconds:G3} ms.{others}"),
            lasts, held, worst.Condition);
    }
}
