using System.Collections.Generic;
using System.Linq;
using UnitsNet;

namespace CamPower;

/// <summary>The voltage along a cable route: at every boundary between its parts, and at any point between.</summary>
/// <remarks>Immutable. Along a length of cable the voltage falls evenly, across a joint it steps. Source:
/// <see cref="Sources.Kirchhoff"/>.</remarks>
/// <example>
/// <code>
/// VoltageProfile profile = run.Feed(camera, from, conductorAt).Profile();
/// foreach (ProfilePoint point in profile.Points) Console.WriteLine(point);
/// Console.WriteLine(profile.VoltageAt(Length.FromMeters(12)));
/// </code>
/// </example>
public sealed class VoltageProfile
{
    /// <summary>Adds the parts up from the source; each with the voltage lost in it.</summary>
    internal VoltageProfile(double sourceVolts, IEnumerable<(RunPart Part, double LostVolts)> parts)
    {
        var points = new List<ProfilePoint> { new(0, sourceVolts, null) };
        foreach ((RunPart part, double lost) in parts)
        {
            ProfilePoint last = points[points.Count - 1];
            points.Add(new ProfilePoint(last.Meters + part.OneWayLength.Meters, last.Volts - lost, part));
        }

        Points = points.AsReadOnly();
    }

    /// <summary>The source, then the far end of every part, in order.</summary>
    public IReadOnlyList<ProfilePoint> Points { get; }

    /// <summary>The voltage at a distance from the source; at a joint, the one behind it. [V]</summary>
    /// <param name="distance">Length along the route, one way, from 0 to the whole of it. [any length unit]</param>
    /// <exception cref="System.ArgumentOutOfRangeException"><paramref name="distance"/> is outside the route.</exception>
    public ElectricPotential VoltageAt(Length distance)
    {
        double meters = Require.Within(distance.Meters, 0, Points[Points.Count - 1].Meters, nameof(distance), "m");
        ProfilePoint before = Points.Last(p => p.Meters <= meters);
        if (before.Meters >= meters) return before.Voltage;

        ProfilePoint behind = Points.First(p => p.Meters > meters);
        double along = (meters - before.Meters) / (behind.Meters - before.Meters);
        return ElectricPotential.FromVolts(before.Volts + (along * (behind.Volts - before.Volts)));
    }

    /// <summary>The points in order, in the invariant culture; never throws.</summary>
    public override string ToString() => string.Join(", ", Points);
}
