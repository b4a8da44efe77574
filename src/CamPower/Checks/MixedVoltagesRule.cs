using System;
using System.Collections.Generic;
using System.Linq;
using static System.FormattableString;

namespace CamPower.Checks;

/// <summary>One cabinet with outputs of several nominal voltages, or of direct and of alternating current.</summary>
public sealed class MixedVoltagesRule() : Rule("mixed-voltages-in-one-box", Severity.Caution,
    "A cabinet holds outputs of different nominal voltages, or of direct and of alternating current: a wire landed on the wrong bank destroys the device at its end.",
    "Give each voltage a cabinet of its own, or mark every bank and every wire with voltage and kind; measure at the end of the cable before a device is connected.",
    Sources.CommonPractice)
{
    /// <inheritdoc/>
    public override IEnumerable<Finding> Check(Evidence evidence)
    {
        Site site = Require.NotNull(evidence, nameof(evidence)).Assessment.Site;
        foreach (Cabinet cabinet in site.Cabinets)
        {
            string[] banks = [.. site.Boxes.Where(b => ReferenceEquals(b.Cabinet, cabinet)).GroupBy(b => Voltage(b.Supply.Output), StringComparer.Ordinal)
                .Select(alike => $"{alike.Key} ({string.Join(", ", alike)})")];
            if (banks.Length > 1) yield return Find(Subject.Of(cabinet), $"It holds outputs of {string.Join(" and of ", banks)}.");
        }
    }

    private static string Voltage(SupplyOutput output) => Invariant($"{output.NominalVolts:R} V {(output.Kind == CurrentKind.Dc ? "DC" : "AC")}");
}
