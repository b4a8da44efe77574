using System;
using System.Collections.Generic;
using System.Linq;
using UnitsNet;

namespace CamPower;

/// <summary>A supply with one or more numbered outputs: a distribution box, or an adapter with its one lead.</summary>
/// <remarks>Immutable. The limit of each output and the rating of the supply bind separately.</remarks>
/// <example>
/// <code>
/// DistributionBox box = DistributionBox.WithEqualOutputs("yard box", supply, outputs: 18, ElectricCurrent.FromAmperes(1.1));
/// DistributionBox adapter = DistributionBox.Adapter("office adapter", small);
/// </code>
/// </example>
public sealed class DistributionBox
{
    /// <summary>Describes a box.</summary>
    /// <param name="name">How it is called on the site. Not empty.</param>
    /// <param name="supply">The supply in it.</param>
    /// <param name="outputs">Its outputs, numbered from 1 without a gap.</param>
    /// <exception cref="ArgumentNullException">A reference is null.</exception>
    /// <exception cref="ArgumentException"><paramref name="name"/> is empty, there is no output, or the numbers do not run from 1.</exception>
    public DistributionBox(string name, Supply supply, IEnumerable<BoxOutput> outputs)
        : this(name, supply, outputs, isAdapter: false)
    {
    }

    private DistributionBox(string name, Supply supply, IEnumerable<BoxOutput> outputs, bool isAdapter)
    {
        Name = Require.Name(name, nameof(name));
        Supply = Require.NotNull(supply, nameof(supply));
        Outputs = Require.Items(outputs, nameof(outputs));
        IsAdapter = isAdapter;
        if (Outputs.Count == 0) throw new ArgumentException("A box needs at least one output.", nameof(outputs));
        if (Outputs.Where((output, index) => output.Number != index + 1).Any())
        {
            throw new ArgumentException("The outputs must be numbered from 1 without a gap.", nameof(outputs));
        }
    }

    /// <summary>How it is called on the site.</summary>
    public string Name { get; }

    /// <summary>The supply in it.</summary>
    public Supply Supply { get; }

    /// <summary>Its outputs, numbered from 1.</summary>
    public IReadOnlyList<BoxOutput> Outputs { get; }

    /// <summary>Whether it is an adapter: a supply whose only output is its own lead.</summary>
    public bool IsAdapter { get; }

    /// <summary>A box whose outputs all have the same limit.</summary>
    /// <param name="name">How it is called on the site. Not empty.</param>
    /// <param name="supply">The supply in it.</param>
    /// <param name="outputs">How many outputs, from 1 to 1000.</param>
    /// <param name="limit">The current that each may carry all the time, above 0. [A]</param>
    /// <exception cref="ArgumentNullException">A reference is null.</exception>
    /// <exception cref="ArgumentException"><paramref name="name"/> is empty.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A number is outside its range.</exception>
    public static DistributionBox WithEqualOutputs(string name, Supply supply, int outputs, ElectricCurrent limit) => new(
        name, supply,
        Enumerable.Range(1, (int)Require.Within(outputs, 1, 1000, nameof(outputs), "outputs")).Select(n => new BoxOutput(n, limit)));

    /// <summary>An adapter: one output, whose limit is the rating of the supply.</summary>
    /// <param name="name">How it is called on the site. Not empty.</param>
    /// <param name="supply">The supply.</param>
    /// <exception cref="ArgumentNullException">A reference is null.</exception>
    /// <exception cref="ArgumentException"><paramref name="name"/> is empty.</exception>
    public static DistributionBox Adapter(string name, Supply supply) =>
        new(name, supply, [new BoxOutput(1, Require.NotNull(supply, nameof(supply)).RatedCurrent)], isAdapter: true);

    /// <summary>The same box, its supply set to another voltage.</summary>
    /// <param name="setPoint">The voltage that it is adjusted to, inside the trim range of its supply. [V]</param>
    /// <exception cref="ArgumentException">Its supply has no trim range.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="setPoint"/> is outside the trim range.</exception>
    public DistributionBox SetTo(ElectricPotential setPoint) => With(Supply.SetTo(setPoint));

    /// <summary>The name; never throws.</summary>
    public override string ToString() => Name;

    internal DistributionBox With(Supply supply) => new(Name, supply, Outputs, IsAdapter);
}
