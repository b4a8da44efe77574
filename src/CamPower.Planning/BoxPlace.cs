using System;
using UnitsNet;

namespace CamPower.Planning;

/// <summary>A place where a plan may put boxes.</summary>
/// <remarks>Immutable.</remarks>
public sealed class BoxPlace
{
    private const int MostBoxesOfAll = 100;

    private readonly int _mostBoxes = 1;
    private readonly double _price;

    /// <summary>States a place without a position: cameras then state the lengths of their routes.</summary>
    /// <param name="name">Name; the box there gets it. Not empty.</param>
    /// <exception cref="ArgumentNullException"><paramref name="name"/> is null.</exception>
    /// <exception cref="ArgumentException"><paramref name="name"/> is empty.</exception>
    public BoxPlace(string name) => Name = Given.Name(name, nameof(name));

    /// <summary>States a place on a plan.</summary>
    /// <param name="name">Name; the box there gets it. Not empty.</param>
    /// <param name="x">Its place in one direction, from -100 km to 100 km. [m]</param>
    /// <param name="y">Its place at right angles to that, from -100 km to 100 km. [m]</param>
    /// <exception cref="ArgumentNullException"><paramref name="name"/> is null.</exception>
    /// <exception cref="ArgumentException"><paramref name="name"/> is empty.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A length is outside its range.</exception>
    public BoxPlace(string name, Length x, Length y) : this(name)
    {
        const double farthest = PlannedCamera.FarthestMeters;
        XMeters = Given.Within(x.Meters, -farthest, farthest, nameof(x), "m");
        YMeters = Given.Within(y.Meters, -farthest, farthest, nameof(y), "m");
        HasPosition = true;
    }

    /// <summary>Name; the box there gets it, and a second box a number behind it.</summary>
    public string Name { get; }

    /// <summary>The enclosure that each box there is put into; null where boxes keep their own, if they have one.</summary>
    public Enclosure? Enclosure { get; init; }

    /// <summary>The receptacle that the boxes there are plugged into; null where it is not stated.</summary>
    public Receptacle? Receptacle { get; init; }

    /// <summary>The most boxes that may be put there, from 1 to 100.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The number is outside its range.</exception>
    public int MostBoxes
    {
        get => _mostBoxes;
        init => _mostBoxes = (int)Given.Within(value, 1, MostBoxesOfAll, nameof(MostBoxes), "boxes");
    }

    /// <summary>What a box there costs beside the box itself, as a receptacle or a bracket, from 0 to a million. [the unit of the
    /// prices]</summary>
    /// <exception cref="ArgumentOutOfRangeException">The price is outside its range.</exception>
    public double Price
    {
        get => _price;
        init => _price = Given.Within(value, 0, PlanningQuestion.MostCost, nameof(Price), "");
    }

    /// <summary>The box that is there already: the plan takes it as it is, at no cost; null where the plan chooses.</summary>
    public DistributionBox? Box { get; init; }

    internal bool HasPosition { get; }

    internal double XMeters { get; }

    internal double YMeters { get; }

    /// <summary>The name; never throws.</summary>
    public override string ToString() => Name;
}
