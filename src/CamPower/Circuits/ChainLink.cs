using System;
using UnitsNet;

namespace CamPower;

/// <summary>One camera of a chain: the run that leads to it from the camera before it, and what it draws.</summary>
/// <remarks>Immutable.</remarks>
/// <example>
/// <code>
/// var link = new ChainLink(pair, oneWayLength: Length.FromMeters(30), Load.ConstantPower(Power.FromWatts(4)));
/// </code>
/// </example>
public sealed class ChainLink
{
    /// <summary>Describes a camera behind a run of any parts.</summary>
    /// <param name="run">The run from the camera before it, or from the source.</param>
    /// <param name="load">What it draws.</param>
    /// <exception cref="ArgumentNullException">A reference is null.</exception>
    public ChainLink(CableRun run, Load load)
    {
        Run = Require.NotNull(run, nameof(run));
        Load = Require.NotNull(load, nameof(load));
    }

    /// <summary>Describes a camera behind one length of cable.</summary>
    /// <param name="cable">The cable.</param>
    /// <param name="oneWayLength">Length from the camera before it, one way, at least 0. [any length unit]</param>
    /// <param name="load">What it draws.</param>
    /// <exception cref="ArgumentNullException">A reference is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="oneWayLength"/> is negative or infinite.</exception>
    public ChainLink(Cable cable, Length oneWayLength, Load load)
        : this(new CableRun(cable, oneWayLength), load)
    {
    }

    /// <summary>The run from the camera before it, or from the source.</summary>
    public CableRun Run { get; }

    /// <summary>Load of the camera.</summary>
    public Load Load { get; }

    /// <summary>Load and run in words; never throws.</summary>
    public override string ToString() => $"{Load} behind {Run}";
}
