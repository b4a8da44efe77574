using UnitsNet;

namespace CamPower;

/// <summary>A piece of a run: a length of cable or a joint.</summary>
/// <remarks>The pieces are <see cref="CableSegment"/> and <see cref="Joint"/>; nothing else can be one.</remarks>
public abstract class RunPart
{
    private protected RunPart()
    {
    }

    /// <summary>Length along the route, one way. [any length unit]</summary>
    public abstract Length OneWayLength { get; }

    /// <summary>Resistance out and back at 20 °C. [Ω]</summary>
    internal abstract double OhmsAt20C { get; }

    /// <summary>Growth of that resistance with temperature. [Ω/K]</summary>
    internal abstract double OhmsPerKelvin { get; }

    /// <summary>Resistance of the outgoing pole alone; a joint counts half in each pole. [Ω]</summary>
    internal virtual double OutgoingOhmsAt(double celsius) => OhmsAt(celsius) / 2;

    /// <summary>Resistance of the return pole alone; a joint counts half in each pole. [Ω]</summary>
    internal virtual double ReturnOhmsAt(double celsius) => OhmsAt(celsius) / 2;

    internal double OhmsAt(double celsius) => OhmsAt20C + (OhmsPerKelvin * (celsius - Celsius.Reference));
}
