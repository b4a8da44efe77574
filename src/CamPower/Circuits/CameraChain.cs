using System;
using System.Collections.Generic;
using System.Linq;
using CamPower.Circuits;
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

    /// <summary>The smallest of some sizes that every piece of the chain may have, all of them alike.</summary>
    /// <param name="sizes">The sizes to choose from, in any order and of any series; at least one.</param>
    /// <param name="from">Voltage at the source end, from 1 nV to 1 MV. [V]</param>
    /// <param name="lowest">The lowest voltage accepted at every camera, from 1 nV to 1 MV. [V]</param>
    /// <param name="conductorAt">Temperature of every conductor, inside the materials' ranges.</param>
    /// <returns>The size, by voltage alone; null where none of them will do.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="sizes"/> is null.</exception>
    /// <exception cref="ArgumentException">There is no size, or a conductor's resistance comes from a table, which says nothing of other
    /// sizes.</exception>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range, or a size is the default value.</exception>
    /// <example>
    /// <code>
    /// WireSize[] sold = [WireSize.Awg(18), WireSize.Awg(16)];
    /// WireSize? size = chain.SmallestSize(sold, from, lowest: ElectricPotential.FromVolts(10.8), conductorAt);
    /// </code>
    /// </example>
    public WireSize? SmallestSize(
        IEnumerable<WireSize> sizes, ElectricPotential from, ElectricPotential lowest, Temperature conductorAt) =>
        new ChainSizing(this, sizes, from, lowest, conductorAt).OneForAll();

    /// <summary>A size for each piece of the chain, with the least conductor in all of them together.</summary>
    /// <param name="sizes">The sizes to choose from, in any order and of any series; at least one.</param>
    /// <param name="from">Voltage at the source end, from 1 nV to 1 MV. [V]</param>
    /// <param name="lowest">The lowest voltage accepted at every camera, from 1 nV to 1 MV. [V]</param>
    /// <param name="conductorAt">Temperature of every conductor, inside the materials' ranges.</param>
    /// <returns>The sizes in order from the source, by voltage alone; null where none will do.</returns>
    /// <remarks>No piece is smaller than the one behind it, as chains are built: the first carries the current of all. Among those it is
    /// the least volume of conductor; all ways are tried that could have less.</remarks>
    /// <exception cref="ArgumentNullException"><paramref name="sizes"/> is null.</exception>
    /// <exception cref="ArgumentException">As for <see cref="SmallestSize"/>.</exception>
    /// <exception cref="ArgumentOutOfRangeException">As for <see cref="SmallestSize"/>.</exception>
    public IReadOnlyList<WireSize>? SizesOfLeastConductor(
        IEnumerable<WireSize> sizes, ElectricPotential from, ElectricPotential lowest, Temperature conductorAt) =>
        new ChainSizing(this, sizes, from, lowest, conductorAt).OneForEach();

    /// <summary>The cameras in words; never throws.</summary>
    public override string ToString() => string.Join("; then ", Links);
}
