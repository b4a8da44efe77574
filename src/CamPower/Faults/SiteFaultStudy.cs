using System;
using System.Collections.Generic;
using System.Linq;
using System.Threading;

namespace CamPower.Faults;

/// <summary>Studies the faults of a site.</summary>
internal static class SiteFaultStudy
{
    /// <summary>A short at every place of every used output: terminals, joints, junctions and cameras.</summary>
    internal static IReadOnlyList<OutputFaults> Of(SiteAssessment assessment, CancellationToken cancellationToken)
    {
        var outputs = new List<OutputFaults>();
        foreach (BoxAssessment box in assessment.Boxes)
        {
            FaultAir[] air = AirOf(box);
            IEnumerable<double> around = assessment.Site.Conditions.Select(c => c.At.BoxCelsius);
            SupplyOutput source = box.Box.FaultSourceIn(around.Min(), around.Max());
            SupplyOutput[] alone = box.Box.AloneInFault;
            FaultSetting? setting = null;
            ProtectiveDevice? before = null;
            foreach (OutputAssessment output in box.Outputs)
            {
                // Most outputs of a box have the device of the one before.
                ProtectiveDevice? device = output.Output.Protection;
                if (setting is null || device != before) setting = new FaultSetting(source, before = device, air, alone);
                outputs.Add(new OutputFaults(output, box, air, setting, cancellationToken));
            }
        }

        return outputs.AsReadOnly();
    }

    private static FaultAir[] AirOf(BoxAssessment box) => [.. box.InConditions.Select(AirOf).Distinct()];

    /// <summary>The temperatures of a condition as a fault finds them: a fault belongs to one condition.</summary>
    /// <remarks>Losses on paper may warm a box beyond all measure: no device says anything of such air.</remarks>
    internal static FaultAir AirOf(BoxInCondition box) =>
        new(box.Condition.At.CableCelsius, box.IsInsideUnknown ? null : Math.Min(box.SupplyCelsius, Surroundings.Hottest));
}
