using System.Collections.Generic;
using System.Linq;

namespace CamPower.Faults;

/// <summary>The way from the terminals to a fault and back: its resistance cold and hot, and the conductors that carry the current.</summary>
internal sealed class FaultLoop(string place, double meters, double coldOhms, double hotOhms, IReadOnlyList<LaidConductor> conductors)
{
    internal static FaultLoop Terminals { get; } = new("terminals", 0, 0, 0, []);

    internal string Place => place;

    /// <summary>How far along the route, one way. [m]</summary>
    internal double Meters => meters;

    internal double ColdOhms => coldOhms;

    internal double HotOhms => hotOhms;

    internal IReadOnlyList<LaidConductor> Conductors => conductors;

    /// <summary>The loop with one more part of a run at its end.</summary>
    internal FaultLoop Then(RunPart part, Laying? laying, FaultConditions conditions) => new(place, meters + part.OneWayLength.Meters,
        coldOhms + part.OhmsAt(Celsius.Of(conditions.Coldest)), hotOhms + part.OhmsAt(Celsius.Of(conditions.Hottest)),
        part is CableSegment segment ? [.. conductors, .. segment.Cable.Conductors.Select(c => new LaidConductor(c, segment.Cable.Insulation, laying))] : conductors);

    /// <summary>The same loop, called after its end.</summary>
    internal FaultLoop EndingAt(string name) => new(name, meters, coldOhms, hotOhms, conductors);
}
