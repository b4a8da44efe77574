using System;
using System.Collections.Generic;
using System.Collections.ObjectModel;
using UnitsNet;

namespace CamPower.Planning;

/// <summary>A camera, or another device, that a plan must feed by a run of its own.</summary>
/// <remarks>Immutable.</remarks>
public sealed class PlannedCamera
{
    // No site is wider: lengths beyond it are slips of a unit.
    internal const double FarthestMeters = 100_000;

    private readonly double _x, _y;

    /// <summary>States a camera by its place on a plan. A run goes along the two directions of the plan: the sum of both distances.
    /// </summary>
    /// <param name="name">Name on the site. Not empty.</param>
    /// <param name="model">What it is.</param>
    /// <param name="x">Its place in one direction, from -100 km to 100 km. [m]</param>
    /// <param name="y">Its place at right angles to that, from -100 km to 100 km. [m]</param>
    /// <exception cref="ArgumentNullException">A reference is null.</exception>
    /// <exception cref="ArgumentException"><paramref name="name"/> is empty.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A length is outside its range.</exception>
    public PlannedCamera(string name, Device model, Length x, Length y)
    {
        Name = Given.Name(name, nameof(name));
        Model = Given.NotNull(model, nameof(model));
        _x = Given.Within(x.Meters, -FarthestMeters, FarthestMeters, nameof(x), "m");
        _y = Given.Within(y.Meters, -FarthestMeters, FarthestMeters, nameof(y), "m");
    }

    /// <summary>States a camera by the lengths of its routes.</summary>
    /// <param name="name">Name on the site. Not empty.</param>
    /// <param name="model">What it is.</param>
    /// <param name="routes">The one-way length of the route from each place of a box by its name, from 0 to 100 km. It cannot be fed from
    /// a place that is not among them. [m]</param>
    /// <exception cref="ArgumentNullException">A reference is null.</exception>
    /// <exception cref="ArgumentException"><paramref name="name"/> is empty.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A length is outside its range.</exception>
    public PlannedCamera(string name, Device model, IReadOnlyDictionary<string, Length> routes)
    {
        Name = Given.Name(name, nameof(name));
        Model = Given.NotNull(model, nameof(model));
        var copy = new Dictionary<string, Length>(Given.NotNull(routes, nameof(routes)), StringComparer.Ordinal);
        foreach (Length route in copy.Values) Given.Within(route.Meters, 0, FarthestMeters, nameof(routes), "m");
        Routes = new ReadOnlyDictionary<string, Length>(copy);
    }

    private PlannedCamera(PlannedCamera other, string? place, Cable? cable)
    {
        Name = other.Name;
        Model = other.Model;
        Routes = other.Routes;
        (_x, _y) = (other._x, other._y);
        Place = place;
        Cable = cable;
    }

    /// <summary>Name on the site.</summary>
    public string Name { get; }

    /// <summary>Model of the device.</summary>
    public Device Model { get; }

    /// <summary>The lengths of its routes by the places of boxes; null where it has a place on the plan. [m]</summary>
    public IReadOnlyDictionary<string, Length>? Routes { get; }

    /// <summary>The place that it must be fed from; null where the plan chooses.</summary>
    public string? Place { get; }

    /// <summary>The cable of its run; null where the plan chooses.</summary>
    public Cable? Cable { get; }

    /// <summary>The same camera with its feed given: the plan takes it as it is.</summary>
    /// <param name="place">Name of the place that it is fed from. Not empty.</param>
    /// <param name="cable">The cable, where it lies already: the run then costs nothing. Null where the plan chooses.</param>
    /// <exception cref="ArgumentNullException"><paramref name="place"/> is null.</exception>
    /// <exception cref="ArgumentException"><paramref name="place"/> is empty.</exception>
    public PlannedCamera WithFeed(string place, Cable? cable = null) => new(this, Given.Name(place, nameof(place)), cable);

    /// <summary>The name; never throws.</summary>
    public override string ToString() => Name;

    /// <summary>The length of the route from a place, or null where there is none. [m]</summary>
    internal double? MetersFrom(BoxPlace place)
    {
        if (Place is not null && !string.Equals(Place, place.Name, StringComparison.Ordinal)) return null;
        if (Routes is not null) return Routes.TryGetValue(place.Name, out Length route) ? route.Meters : null;
        return place.HasPosition ? Math.Abs(_x - place.XMeters) + Math.Abs(_y - place.YMeters) : null;
    }
}
