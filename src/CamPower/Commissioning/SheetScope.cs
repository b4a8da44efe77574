using System.Collections.Generic;

namespace CamPower.Commissioning;

/// <summary>Which kinds of readings there are of a unit: they decide which causes can be told apart there.</summary>
internal readonly struct SheetScope
{
    /// <summary>A loop with the far end joined, or the conductors with nothing joined.</summary>
    internal bool HasDeadReadings { get; private init; }

    /// <summary>The insulation between the conductors.</summary>
    internal bool HasInsulation { get; private init; }

    /// <summary>The current of the output.</summary>
    internal bool HasAmperes { get; private init; }

    /// <summary>The voltage at the output, behind its protective device.</summary>
    internal bool HasOutputVolts { get; private init; }

    /// <summary>The supply without load.</summary>
    internal bool HasUnloaded { get; private init; }

    /// <summary>Everything that the sheet asks for.</summary>
    internal static SheetScope Full { get; } = new()
    {
        HasDeadReadings = true, HasInsulation = true, HasAmperes = true, HasOutputVolts = true, HasUnloaded = true,
    };

    /// <summary>What there is of a unit.</summary>
    internal static SheetScope Of(DiagnosisModel model, int unit, IReadOnlyList<Observation> readings)
    {
        bool loop = false, insulation = false, amperes = false, output = false, unloaded = false;
        foreach (Observation reading in readings)
        {
            if (model.IsBox(unit))
            {
                unloaded |= reading.Point == UnitPoints.Unloaded;
                continue;
            }

            int ofOutput = reading.Point - model.Feeds[unit].PointOf(-1, 0);
            loop |= ofOutput < 0 && reading.Point % UnitPoints.OfDevice == UnitPoints.Loop;
            insulation |= ofOutput == UnitPoints.Insulation;
            amperes |= ofOutput is UnitPoints.AmperesDay or UnitPoints.AmperesNight;
            output |= ofOutput is UnitPoints.OutputDay or UnitPoints.OutputNight or UnitPoints.OutputUnplugged;
        }

        return new SheetScope
        {
            HasDeadReadings = loop || insulation, HasInsulation = insulation, HasAmperes = amperes, HasOutputVolts = output,
                HasUnloaded = unloaded,
        };
    }
}
