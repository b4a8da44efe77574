using System.Collections.Generic;
using System.Linq;

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

    // The runs at whose end something was read that tells the runs before and behind it apart; null for all.
    private IReadOnlyList<int>? Ends { get; init; }

    /// <summary>Whether a reading was taken at the end of a run.</summary>
    internal bool IsRead(int run) => Ends is null || Ends.Contains(run);

    /// <summary>Everything that the sheet asks for.</summary>
    internal static SheetScope Full { get; } = new()
    {
        HasDeadReadings = true, HasInsulation = true, HasAmperes = true, HasOutputVolts = true, HasUnloaded = true,
    };

    /// <summary>What there is of a unit.</summary>
    internal static SheetScope Of(DiagnosisModel model, int unit, IReadOnlyList<Observation> readings)
    {
        List<int> ends = [];
        bool loop = false, insulation = false, amperes = false, output = false, unloaded = false;
        foreach (Observation reading in readings)
        {
            if (model.IsBox(unit))
            {
                unloaded |= reading.Point == UnitPoints.Unloaded;
                continue;
            }

            FeedModel feed = model.Feeds[unit];
            int ofOutput = reading.Point - feed.OutputPoint(0), atEnd = UnitPoints.AtEnd(feed.Devices, reading.Point);
            loop |= atEnd == UnitPoints.Loop;
            if (ofOutput >= UnitPoints.OfOutput && atEnd != UnitPoints.Plug)
            {
                ends.Add(feed.Bare[(ofOutput - UnitPoints.OfOutput) / UnitPoints.OfDevice]);
            }

            insulation |= ofOutput == UnitPoints.Insulation;
            amperes |= ofOutput is UnitPoints.AmperesDay or UnitPoints.AmperesNight;
            output |= ofOutput is UnitPoints.OutputDay or UnitPoints.OutputNight or UnitPoints.OutputUnplugged;
        }

        return new SheetScope
        {
            HasDeadReadings = loop || insulation, HasInsulation = insulation, HasAmperes = amperes, HasOutputVolts = output,
                HasUnloaded = unloaded, Ends = ends,
        };
    }
}
