using System.Collections.Generic;

namespace CamPower.Commissioning;

/// <summary>A box as a voltage behind a resistance, in which faults can be put. SI doubles.</summary>
internal sealed class BoxModel(DistributionBox box, int unit, double amperesDay, double amperesNight)
{
    internal DistributionBox Box { get; } = box;

    /// <summary>Its place among the units.</summary>
    internal int Unit { get; } = unit;

    /// <summary>What its outputs take together as designed. [A]</summary>
    internal double AmperesNight { get; } = amperesNight;

    internal double SetVolts => Box.Supply.Output.SetVolts;

    /// <summary>The voltage with faults in it.</summary>
    /// <remarks>Set wrong: by how many volts. Sags: which share of its voltage it loses at its usual load by night. In limit: which share
    /// of its voltage is left under load. Battery low: which share of its voltage the battery has without load.</remarks>
    internal SupplyVolts Volts(IReadOnlyList<Deviation> faults)
    {
        double open = SetVolts, sagOhms = 0, left = 1;
        for (int i = 0; i < faults.Count; i++)
        {
            if (faults[i].Unit != Unit) continue;
            switch (faults[i].Cause)
            {
                case Cause.SupplySetWrong: open += faults[i].Size; break;
                case Cause.BatteryLow: open *= faults[i].Size; break;
                case Cause.SupplySags: sagOhms += faults[i].Size * SetVolts / System.Math.Max(AmperesNight, 1e-6); break;
                case Cause.SupplyInLimit: left *= faults[i].Size; break;
            }
        }

        return new SupplyVolts(open, left * (open - (sagOhms * amperesDay)), left * (open - (sagOhms * AmperesNight)), left < 1);
    }

    internal static UnitPrediction Predict(SupplyVolts volts)
    {
        var prediction = new UnitPrediction(UnitPoints.OfBox, 0);
        prediction.Values[UnitPoints.Unloaded] = volts.Unloaded;
        prediction.Values[UnitPoints.SupplyDay] = volts.Day;
        prediction.Values[UnitPoints.SupplyNight] = volts.Night;
        prediction.IsUnsteady[UnitPoints.SupplyDay] = prediction.IsUnsteady[UnitPoints.SupplyNight] = volts.IsUnsteady;
        return prediction;
    }
}
