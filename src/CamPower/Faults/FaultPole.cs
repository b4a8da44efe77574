using System;
using System.Collections.Generic;

namespace CamPower.Faults;

/// <summary>One pole of the way to a fault: its resistance cold and hot, and its conductors.</summary>
internal sealed class FaultPole(double coldOhms, double hotOhms, IReadOnlyList<LaidConductor> conductors)
{
    internal static FaultPole None { get; } = new(0, 0, []);

    internal double ColdOhms => coldOhms;

    internal double HotOhms => hotOhms;

    internal IReadOnlyList<LaidConductor> Conductors => conductors;

    /// <summary>The pole with one more part of a run at its end; a joint counts half in each pole.</summary>
    internal FaultPole Then(RunPart part, Func<Cable, Conductor> pole, Laying? laying, FaultConditions conditions)
    {
        double cold = Celsius.Of(conditions.Coldest), hot = Celsius.Of(conditions.Hottest);
        if (part is not CableSegment segment) return new FaultPole(coldOhms + (part.OhmsAt(cold) / 2), hotOhms + (part.OhmsAt(hot) / 2), conductors);
        Conductor conductor = pole(segment.Cable);
        double meters = segment.OneWayLength.Meters;
        return new FaultPole(coldOhms + (meters * conductor.OhmsPerMeterAt(cold)), hotOhms + (meters * conductor.OhmsPerMeterAt(hot)),
            [.. conductors, new LaidConductor(conductor, segment.Cable.Insulation, laying, meters)]);
    }
}
