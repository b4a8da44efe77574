using System;
using System.Collections.Generic;
using System.Linq;
using UnitsNet;

namespace CamPower;

/// <summary>Several cameras one after the other on one pair.</summary>
/// <remarks>
/// Immutable. The first length carries the current of all of them, the last that of the last alone; a camera that
/// draws constant power draws more where the others have pulled the voltage down.
/// </remarks>
/// <example>
/// <code>
/// var chain = new CameraChain(
///     new ChainLink(pair, oneWayLength: Length.FromMeters(30), dome),
///     new ChainLink(pair, oneWayLength: Length.FromMeters(20), bullet));
/// ChainResult result = chain.Feed(from: ElectricPotential.FromVolts(12), conductorAt: Temperature.FromDegreesCelsius(40));
/// </code>
/// </example>
public sealed class CameraChain
{
    /// <summary>Describes a chain.</summary>
    /// <param name="links">The cameras in order from the source, at least one.</param>
    /// <exception cref="ArgumentNullException"><paramref name="links"/> or one of them is null.</exception>
    /// <exception cref="ArgumentException">There is no camera.</exception>
    public CameraChain(params ChainLink[] links)
    {
        Links = Require.Items(links, nameof(links));
        if (Links.Count == 0) throw new ArgumentException("A chain needs at least one camera.", nameof(links));
    }

    /// <summary>The cameras in order from the source.</summary>
    public IReadOnlyList<ChainLink> Links { get; }

    /// <summary>Length of the whole chain along the route, one way. [m]</summary>
    public Length OneWayLength => Length.FromMeters(Links.Sum(l => l.Run.OneWayMeters));

    /// <summary>The chain with one more camera at its end.</summary>
    /// <param name="link">The camera.</param>
    /// <exception cref="ArgumentNullException"><paramref name="link"/> is null.</exception>
    public CameraChain Then(ChainLink link) => new([.. Links, link]);

    /// <summary>Voltage and current of every camera of the chain.</summary>
    /// <param name="from">Voltage at the source end, from 1 nV to 1 MV. [V]</param>
    /// <param name="conductorAt">Temperature of every conductor, inside the materials' ranges.</param>
    /// <returns>The answer, also where the pair cannot carry them all.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    /// <example>Three cameras of 0.3 A, 30 m apart on 18 AWG from 12 V, get 10.87 V, 10.11 V and 9.74 V.</example>
    public ChainResult Feed(ElectricPotential from, Temperature conductorAt)
    {
        double sourceVolts = Require.SourceVolts(from.Volts, nameof(from)), celsius = 0;
        foreach (ChainLink link in Links) celsius = link.Run.CelsiusOf(conductorAt, nameof(conductorAt));
        return new ChainResult(this, sourceVolts, celsius);
    }

    /// <summary>The cameras in words; never throws.</summary>
    public override string ToString() => string.Join("; then ", Links);
}
