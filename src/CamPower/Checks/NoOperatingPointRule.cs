using System;
using System.Collections.Generic;
using System.Linq;
using UnitsNet;

namespace CamPower.Checks;

/// <summary>A run that cannot carry what its devices ask for at any voltage.</summary>
public sealed class NoOperatingPointRule() : Rule("no-operating-point", Severity.Failure,
    "The cable cannot carry the power asked of it at any voltage.",
    "Use a thicker or shorter conductor, a higher supply voltage, or less load on the run.", Sources.MaximumPower)
{
    /// <inheritdoc/>
    public override IEnumerable<Finding> Check(Evidence evidence) => Require.NotNull(evidence, nameof(evidence)).Assessment.Devices
        .SelectMany(device => Worst(device.InConditions.Where(c => c.State != DeviceState.WrongCurrent && c.SolvedVoltage is null).OrderBy(SpareWatts).Select(Found)));

    // What is left over once it has what it asks for: negative. A run that carries it at no power beside the others has nothing for it.
    private static double SpareWatts(DeviceInCondition device) => (double)((device.MostPower ?? Power.Zero) - device.Load.PowerShare).Watts;

    private Finding Found(DeviceInCondition without) => Find(Subject.Of(without.Device), Message(without), without.MostPower is null ? null : without.Load.PowerShare,
        without.MostPower, without.Condition);

    private static string Message(DeviceInCondition device) => device.MostPower is Power most
        ? FormattableString.Invariant($"It asks for {device.Load} in \"{device.Condition}\"; its run carries at most {(double)most.Watts:0.##} W of constant power from this supply.")
        : FormattableString.Invariant($"It asks for {device.Load} in \"{device.Condition}\"; its run cannot carry that beside the other devices on it.");
}
