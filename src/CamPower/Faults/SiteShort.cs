using System;
using System.Collections.Generic;

namespace CamPower;

/// <summary>A short at one place of what an output feeds, and what it does to the rest of the box.</summary>
/// <remarks>Immutable.</remarks>
public sealed class SiteShort
{
    private readonly Lazy<RailDuringFault> _rail;

    internal SiteShort(ShortCircuit fault, SiteRun? run, IReadOnlyList<SiteDevice> devices, Func<RailDuringFault> rail)
    {
        Fault = fault;
        Run = run;
        Devices = devices;
        _rail = new Lazy<RailDuringFault>(rail);
    }

    /// <summary>What flows, what the protective device does, what the conductors on the way stand.</summary>
    public ShortCircuit Fault { get; }

    /// <summary>The run that it is on; null at the terminals of the output.</summary>
    public SiteRun? Run { get; }

    /// <summary>The devices that are connected there; none at the terminals and at a joint.</summary>
    public IReadOnlyList<SiteDevice> Devices { get; }

    /// <summary>What the supply does while it lasts, and which devices at other outputs go dark.</summary>
    public RailDuringFault Rail => _rail.Value;

    /// <summary>The short and the rail in one line, in the invariant culture; never throws.</summary>
    public override string ToString() => $"{Fault}; the supply {Rail}";
}
