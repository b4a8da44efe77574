using System;
using UnitsNet;

namespace CamPower;

/// <summary>The case around a supply and its outputs, as far as its heat is concerned.</summary>
/// <remarks>Immutable. A covered face is taken to give off no heat at all, which is the careful side.</remarks>
/// <example>
/// <code>
/// var enclosure = new Enclosure(
///     width: Length.FromMillimeters(300), height: Length.FromMillimeters(400), depth: Length.FromMillimeters(150),
///     EnclosureWall.PaintedSteel, EnclosureFaces.OnWall, sunlitArea: Area.FromSquareMeters(0.12));
/// </code>
/// </example>
public sealed class Enclosure
{
    private const double Shortest = 0.001, Longest = 100, MostSquareMeters = 6 * Longest * Longest, MostWatts = 1e9;

    /// <summary>Describes an enclosure.</summary>
    /// <param name="width">Outside width, from 1 mm to 100 m.</param>
    /// <param name="height">Outside height, from 1 mm to 100 m.</param>
    /// <param name="depth">Outside depth, from 1 mm to 100 m.</param>
    /// <param name="wall">What it is made of.</param>
    /// <param name="freeFaces">The faces that still air can reach: at least one.</param>
    /// <param name="sunlitArea">How much of it the sun strikes, measured square to the light, from 0 to all of its surface; null where it
    /// is in the shade. [m²]</param>
    /// <param name="otherHeat">Heat of what else runs in it beside the supply and the devices of its outputs, from 0 to 1 GW; null where
    /// there is nothing. [W]</param>
    /// <param name="isVentilated">Whether it has vents or a fan. The model of its heat is of a sealed one, and says so.</param>
    /// <exception cref="ArgumentNullException"><paramref name="wall"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A number is outside its range, or <paramref name="freeFaces"/> names no face or one
    /// that does not exist.</exception>
    public Enclosure(Length width, Length height, Length depth, EnclosureWall wall, EnclosureFaces freeFaces,
        Area? sunlitArea = null, Power? otherHeat = null, bool isVentilated = false)
    {
        WidthMeters = Require.Within(width.Meters, Shortest, Longest, nameof(width), "m");
        HeightMeters = Require.Within(height.Meters, Shortest, Longest, nameof(height), "m");
        DepthMeters = Require.Within(depth.Meters, Shortest, Longest, nameof(depth), "m");
        Wall = Require.NotNull(wall, nameof(wall));
        FreeFaces = (EnclosureFaces)(int)Require.Within((int)freeFaces, 1, (int)EnclosureFaces.FreeInAir, nameof(freeFaces), "");
        SunlitSquareMeters = Require.Within((sunlitArea ?? Area.Zero).SquareMeters, 0, MostSquareMeters, nameof(sunlitArea), "m²");
        if (SunlitSquareMeters > SurfaceSquareMeters)
        {
            throw Require.OutOfRange(
                SunlitSquareMeters, nameof(sunlitArea), "m²",
                FormattableString.Invariant($"at most its surface of {SurfaceSquareMeters:G6}"));
        }

        OtherWatts = Require.Within((double)(otherHeat ?? Power.Zero).Watts, 0, MostWatts, nameof(otherHeat), "W");
        Width = width;
        Height = height;
        Depth = depth;
        SunlitArea = sunlitArea;
        OtherHeat = otherHeat;
        IsVentilated = isVentilated;
    }

    /// <summary>Outside width.</summary>
    public Length Width { get; }

    /// <summary>Outside height.</summary>
    public Length Height { get; }

    /// <summary>Outside depth.</summary>
    public Length Depth { get; }

    /// <summary>Material of its walls.</summary>
    public EnclosureWall Wall { get; }

    /// <summary>The faces that still air can reach.</summary>
    public EnclosureFaces FreeFaces { get; }

    /// <summary>How much of it the sun strikes, or null in the shade. [m²]</summary>
    public Area? SunlitArea { get; }

    /// <summary>Heat of what else runs in it, or null. [W]</summary>
    public Power? OtherHeat { get; }

    /// <summary>Whether it has vents or a fan.</summary>
    public bool IsVentilated { get; }

    /// <summary>Area of the free faces. [m²]</summary>
    public Area FreeArea => Area.FromSquareMeters(FreeSquareMeters);

    internal double WidthMeters { get; }

    internal double HeightMeters { get; }

    internal double DepthMeters { get; }

    internal double SunlitSquareMeters { get; }

    internal double OtherWatts { get; }

    internal double TopSquareMeters => Free(EnclosureFaces.Top, LidSquareMeters);

    internal double BottomSquareMeters => Free(EnclosureFaces.Bottom, LidSquareMeters);

    internal double SideSquareMeters =>
        Free(EnclosureFaces.Front, WidthMeters * HeightMeters) + Free(EnclosureFaces.Back, WidthMeters * HeightMeters)
        + Free(EnclosureFaces.Left, DepthMeters * HeightMeters) + Free(EnclosureFaces.Right, DepthMeters * HeightMeters);

    internal double FreeSquareMeters => TopSquareMeters + BottomSquareMeters + SideSquareMeters;

    /// <summary>Area over perimeter of the lid, the length that counts for convection from it. [m]</summary>
    internal double LidLengthMeters => LidSquareMeters / (2 * (WidthMeters + DepthMeters));

    private double LidSquareMeters => WidthMeters * DepthMeters;

    private double SurfaceSquareMeters => 2 * (LidSquareMeters + (WidthMeters * HeightMeters) + (DepthMeters * HeightMeters));

    /// <summary>Sizes, wall and what it is open to, in the invariant culture; never throws.</summary>
    public override string ToString() => FormattableString.Invariant(
        $"{WidthMeters * 1000:0.#} × {HeightMeters * 1000:0.#} × {DepthMeters * 1000:0.#} mm, ")
            + FormattableString.Invariant($"{Wall}{(IsVentilated ? ", ventilated" : "")}");

    private double Free(EnclosureFaces face, double squareMeters) => (FreeFaces & face) == face ? squareMeters : 0;
}
