using System;
using System.Collections.Generic;
using System.Collections.ObjectModel;
using System.Linq;
using CamPower.Conductors;
using UnitsNet;

namespace CamPower;

/// <summary>Installation method of a cable: it decides how well the cable loses the heat of its current.</summary>
/// <remarks>
/// Immutable. In the steady state a conductor is warmer than the air by I²·r(T)·θ, where θ is the thermal resistance of a meter of it to
/// the air (<see cref="Sources.SelfHeating"/>). θ is worked out of a table of published currents: at each of them copper of that size
/// reaches the table's conductor temperature in the table's air. Between two sizes log θ goes straight over log area. Below the smallest of
/// them, down to 28 AWG, heat leaves through a surface that shrinks with the diameter: θ ∝ 1/d, and the current of one temperature ∝ d^1.5
/// (<see cref="Sources.SmallConductor"/>). A smaller wire sheds more from each unit of its surface, so there the temperature is the most
/// that it can be and the current the least. Outside these sizes the method gives only a bound: a smaller wire carries at most the same
/// current. It is an estimate, good to perhaps a fifth of the rise; whether a cable may carry the current is for the code and its tables,
/// not for this.
/// </remarks>
/// <example>
/// <code>
/// InstallationMethod duct = InstallationMethod.InCableOrRaceway(currentCarryingConductors: 8);
/// SelfHeating heat = duct.Heat(conductor, ElectricCurrent.FromAmperes(3), ambient: Temperature.FromDegreesCelsius(40));
/// </code>
/// </example>
public sealed class InstallationMethod
{
    // NEC 310.15(C)(1): up to so many current-carrying conductors, this share of the current.
    private static readonly (int UpTo, double Share)[] NecAdjustment =
        [(3, 1), (6, 0.8), (9, 0.7), (20, 0.5), (30, 0.45), (40, 0.4), (int.MaxValue, 0.35)];

    // IEC 60364-5-52 Table B.52.2, two loaded conductors of copper, PVC of 70 °C, air of 30 °C, from memory: mm², then methods A2, B2 and
    // C. [A]
    private static readonly (double SquareMillimeters, double InsulatedWall, double ConduitOnWall, double OnWall)[] IecAmpacity =
        [(1.5, 14, 16.5, 19.5), (2.5, 18.5, 23, 27), (4, 25, 30, 36), (6, 32, 38, 46), (10, 43, 52, 63), (16, 57, 69, 85)];

    // IEC 60364-5-52 Table B.52.17, item 1, from memory: up to so many loaded circuits bunched, this share of the current.
    private static readonly (int UpTo, double Share)[] IecGrouping =
        [(1, 1), (2, 0.8), (3, 0.7), (4, 0.65), (5, 0.6), (6, 0.57), (7, 0.54), (8, 0.52), (9, 0.5), (12, 0.45), (16, 0.41), (20, 0.38)];

    // Below the smallest point θ ∝ 1/d, which is area to the power of -1/2.
    private const double ThinSlope = -0.5;

    private static readonly WireSize ThinnestEstimated = WireSize.Awg((int)ConductorConstants.ThinnestEstimated.Value);

    private static readonly double ThinnestLogArea = Math.Log(ThinnestEstimated.SquareMeters);

    private readonly List<(double LogArea, double LogTheta)> _points;

    /// <summary>Describes an installation method by published currents.</summary>
    /// <param name="name">Name. Not empty.</param>
    /// <param name="points">Published currents of copper conductors by their size, at least two sizes, each current above 0. [A]</param>
    /// <param name="conductor">Temperature that a conductor reaches at them. [any temperature unit]</param>
    /// <param name="air">Temperature of the air at them, below <paramref name="conductor"/>. [any temperature unit]</param>
    /// <param name="source">Where they are published.</param>
    /// <exception cref="ArgumentNullException">A reference is null.</exception>
    /// <exception cref="ArgumentException"><paramref name="name"/> is empty, or fewer than two sizes are given.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A temperature is outside the range of copper, the air is no cooler, or a size or
    /// current is not above 0.</exception>
    public InstallationMethod(
        string name, IReadOnlyDictionary<WireSize, ElectricCurrent> points, Temperature conductor, Temperature air, Citation source)
    {
        Name = Require.Name(name, nameof(name));
        foreach (KeyValuePair<WireSize, ElectricCurrent> point in Require.NotNull(points, nameof(points)))
        {
            Require.Positive(point.Key.SquareMeters, nameof(points), "m²");
            Require.Positive(point.Value.Amperes, nameof(points), "A");
        }

        Points = new ReadOnlyDictionary<WireSize, ElectricCurrent>(points.ToDictionary(p => p.Key, p => p.Value));
        Source = Require.NotNull(source, nameof(source));
        double hot = ConductorMaterial.AnnealedCopper.CelsiusOf(conductor, nameof(conductor));
        double cool = ConductorMaterial.AnnealedCopper.CelsiusOf(air, nameof(air));
        if (hot <= cool) throw Require.OutOfRange(hot, nameof(conductor), "°C", FormattableString.Invariant($"above the air's {cool}"));
        _points = [.. Points.Select(p => (LogArea: Math.Log(p.Key.SquareMeters), Math.Log(Theta(p.Key, p.Value.Amperes, hot, cool))))
            .OrderBy(p => p.LogArea)];
        if (_points.Select(p => p.LogArea).Distinct().Count() < Math.Max(2, _points.Count))
        {
            throw new ArgumentException("At least two sizes are needed, and no two of one area.", nameof(points));
        }
    }

    /// <summary>
    /// In a bundle of 33 wires and more, loaded to a fifth of what they could carry together; from 24 to 10 AWG by the table.
    /// </summary>
    /// <remarks>The harshest of the two, and the only one for thin wires: a bundle of category cables.
    /// Source: <see cref="Sources.AircraftBundles"/>.</remarks>
    public static InstallationMethod LargeBundle { get; } = new("large bundle",
        Copper((24, 2.5), (22, 3), (20, 4), (16, 7), (14, 10), (12, 13), (10, 17)),
        Temperature.FromDegreesCelsius(105), Temperature.FromDegreesCelsius(70), Sources.AircraftBundles);

    /// <summary>Name.</summary>
    public string Name { get; }

    /// <summary>The published currents of copper conductors by their size. [A]</summary>
    public IReadOnlyDictionary<WireSize, ElectricCurrent> Points { get; }

    /// <summary>Where they are published.</summary>
    public Citation Source { get; }

    /// <summary>How many conductors in the cable or raceway carry current; null of a method that counts otherwise.</summary>
    internal int? Wires { get; private init; }

    /// <summary>The most bunched circuits of which a share is known.</summary>
    internal static int MostCircuits => IecGrouping[IecGrouping.Length - 1].UpTo;

    private double ThinnestCovered => Math.Exp(Math.Min(ThinnestLogArea, _points[0].LogArea));

    private double ThickestCovered => Math.Exp(_points[_points.Count - 1].LogArea);

    /// <summary>In a cable or raceway in air; from 18 to 10 AWG by the table.</summary>
    /// <param name="currentCarryingConductors">How many conductors in it carry current, at least 1: two a pair.</param>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="currentCarryingConductors"/> is below 1.</exception>
    /// <remarks>Source: <see cref="Sources.NecAmpacity"/>.</remarks>
    public static InstallationMethod InCableOrRaceway(int currentCarryingConductors)
    {
        Require.Positive(currentCarryingConductors, nameof(currentCarryingConductors), "");
        double share = NecAdjustment.First(a => currentCarryingConductors <= a.UpTo).Share;
        return new InstallationMethod(
            FormattableString.Invariant($"{currentCarryingConductors} current-carrying conductors in a cable or raceway"),
            Copper((18, 14 * share), (16, 18 * share), (14, 25 * share), (12, 30 * share), (10, 40 * share)),
            Temperature.FromDegreesCelsius(90), Temperature.FromDegreesCelsius(30), Sources.NecAmpacity)
        {
            Wires = currentCarryingConductors,
        };
    }

    /// <summary>In conduit in a thermally insulated wall, installation method A2; from 1.5 mm² to 16 mm² by the table.</summary>
    /// <param name="circuits">How many loaded circuits are bunched, from 1 to 20: one a pair.</param>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="circuits"/> is outside that range.</exception>
    /// <remarks>The least of the three methods. Source: <see cref="Sources.IecAmpacity"/>, every value from memory.</remarks>
    public static InstallationMethod InInsulatedWall(int circuits = 1) => Method("A2", circuits, row => row.InsulatedWall);

    /// <summary>In conduit or trunking on a wall, installation method B2; from 1.5 mm² to 16 mm² by the table.</summary>
    /// <inheritdoc cref="InInsulatedWall" path="/param|/exception"/>
    /// <remarks>Source: <see cref="Sources.IecAmpacity"/>, every value from memory.</remarks>
    public static InstallationMethod InConduitOnWall(int circuits = 1) => Method("B2", circuits, row => row.ConduitOnWall);

    /// <summary>Fixed directly on a wall, installation method C; from 1.5 mm² to 16 mm² by the table.</summary>
    /// <inheritdoc cref="InInsulatedWall" path="/param|/exception"/>
    /// <remarks>The most of the three methods. Source: <see cref="Sources.IecAmpacity"/>, every value from memory.</remarks>
    public static InstallationMethod OnWall(int circuits = 1) => Method("C", circuits, row => row.OnWall);

    /// <summary>Whether the published currents, or the estimate for thin wires below them, reach to a size.</summary>
    /// <param name="size">The size of a wire.</param>
    public bool Covers(WireSize size)
    {
        double logArea = Math.Log(size.SquareMeters);
        return logArea >= Math.Min(ThinnestLogArea, _points[0].LogArea) && logArea <= _points[_points.Count - 1].LogArea;
    }

    /// <summary>Whether a size lies below the published currents, so that what is said of it is the estimate for thin wires.</summary>
    /// <param name="size">The size of a wire.</param>
    public bool IsEstimatedAt(WireSize size) => Covers(size) && Math.Log(size.SquareMeters) < _points[0].LogArea;

    /// <summary>Whether a size is smaller than the smallest that is covered.</summary>
    internal bool IsThinner(WireSize size) => size.SquareMeters < ThinnestCovered && !Covers(size);

    /// <summary>A conductor like another, of the largest size that is covered.</summary>
    internal Conductor ThickestLike(Conductor conductor) => new Conductor(
        Points.Keys.OrderBy(size => size.SquareMeters).Last(), conductor.Stranding, conductor.Material).InParallel(conductor.Count);

    /// <summary>A conductor like another, of the smallest size that is covered.</summary>
    internal Conductor ThinnestLike(Conductor conductor) =>
        new Conductor(Points.Keys.Append(ThinnestEstimated).OrderBy(size => size.SquareMeters)
            .First(), conductor.Stranding, conductor.Material).InParallel(conductor.Count);

    /// <summary>How far the size of a conductor is outside what is covered; null where it is not.</summary>
    internal ValidityBreach? BreachOf(Conductor conductor)
    {
        if (Covers(conductor.Size)) return null;
        bool isThin = Math.Log(conductor.Size.SquareMeters) < _points[0].LogArea;
        return new ValidityBreach($"ampacity of {conductor}, {this}", isThin ? Sources.SmallConductor : Source, conductor.Size.Area,
            Area.FromSquareMillimeters((isThin ? ThinnestCovered : ThickestCovered) * 1e6));
    }

    /// <summary>How warm a conductor gets.</summary>
    /// <param name="conductor">The conductor; wires in parallel share the current. Its size is one that is covered.</param>
    /// <param name="current">Current through it, all the time; RMS where it alternates or pulses, at least 0. [A]</param>
    /// <param name="ambient">Temperature of the air around, in the range of the material. [any temperature unit]</param>
    /// <param name="mattersFrom">Growth of resistance from which on it matters; null for 1 %
    /// (<see cref="Sources.SelfHeatingPolicy"/>).</param>
    /// <exception cref="ArgumentNullException"><paramref name="conductor"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A number is outside its range, or the published currents do not
    /// reach to the size (<see cref="Covers"/>).</exception>
    public SelfHeating Heat(Conductor conductor, ElectricCurrent current, Temperature ambient, Ratio? mattersFrom = null)
    {
        Conductor wire = Require.NotNull(conductor, nameof(conductor));
        double amperes = Require.NotNegative(current.Amperes, nameof(current), "A") / wire.Count;
        double air = wire.Material.CelsiusOf(ambient, nameof(ambient));
        double threshold = Require.NotNegative(
            (mattersFrom ?? Ratio.FromPercent(ConductorConstants.SelfHeatingMatters.Value)).DecimalFractions, nameof(mattersFrom), "");
        return new SelfHeating(wire, this, air, ThermalResistanceOf(wire.Size), amperes, threshold);
    }

    /// <summary>The current that heats a conductor to a temperature and no further: I = √((T − Tₐ)/(θ·r(T))); 0 where the air is as warm.
    /// [A]</summary>
    /// <param name="conductor">The conductor; wires in parallel share the current. Its size is one that is covered.</param>
    /// <param name="highest">Temperature that it may reach, such as its insulation's highest in service, in the range of the material. [any
    /// temperature unit]</param>
    /// <param name="ambient">Temperature of the air around, in the range of the material. [any temperature unit]</param>
    /// <exception cref="ArgumentNullException"><paramref name="conductor"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A number is outside its range, or the size is not covered
    /// (<see cref="Covers"/>).</exception>
    /// <remarks>A code may allow less, never more: see <see cref="Conductor.NecLargestProtection"/>.</remarks>
    /// <example>
    /// 18 AWG copper of 60 °C in 40 °C air, alone in its cable, carries 8.5 A:
    /// <code>
    /// ElectricCurrent most = InstallationMethod.InCableOrRaceway(2)
    ///     .Ampacity(conductor, Temperature.FromDegreesCelsius(60), Temperature.FromDegreesCelsius(40));
    /// </code>
    /// </example>
    public ElectricCurrent Ampacity(Conductor conductor, Temperature highest, Temperature ambient)
    {
        ConductorMaterial material = Require.NotNull(conductor, nameof(conductor)).Material;
        return ElectricCurrent.FromAmperes(
            Amperes(conductor, material.CelsiusOf(highest, nameof(highest)), material.CelsiusOf(ambient, nameof(ambient))));
    }

    /// <summary>The name; never throws.</summary>
    public override string ToString() => Name;

    /// <inheritdoc cref="Ampacity"/>
    internal double Amperes(Conductor conductor, double highest, double ambient) =>
        highest > ambient
            ? conductor.Count * Math.Sqrt(
                (highest - ambient) / (ThermalResistanceOf(conductor.Size) * conductor.Count * conductor.OhmsPerMeterAt(highest)))
            : 0;

    // Thermal resistance of a meter to the air. [K·m/W]
    private static double Theta(WireSize size, double amperes, double hot, double cool)
    {
        double ohmsPerMeter = new Conductor(size, Stranding.Solid, ConductorMaterial.AnnealedCopper).OhmsPerMeterAt(hot);
        return (hot - cool) / (amperes * amperes * ohmsPerMeter);
    }

    /// <summary>Thermal resistance of a meter of wire of a size that is covered, to the air. [K·m/W]</summary>
    internal double ThermalResistanceOf(WireSize size)
    {
        if (!Covers(size))
        {
            throw Require.OutOfRange(size.SquareMeters * 1e6, "conductor", "mm²", FormattableString.Invariant(
                $"from {ThinnestCovered * 1e6:G4} mm² to {ThickestCovered * 1e6:G4}"));
        }

        double logArea = Math.Log(size.SquareMeters);
        if (logArea < _points[0].LogArea) return Math.Exp(_points[0].LogTheta + (ThinSlope * (logArea - _points[0].LogArea)));
        int above = Math.Max(1, _points.FindIndex(p => p.LogArea >= logArea));
        (double leftArea, double leftTheta) = _points[above - 1];
        (double rightArea, double rightTheta) = _points[above];
        return Math.Exp(leftTheta + ((rightTheta - leftTheta) * (logArea - leftArea) / (rightArea - leftArea)));
    }

    private static InstallationMethod Method(
        string method, int circuits,
        Func<(double SquareMillimeters, double InsulatedWall, double ConduitOnWall, double OnWall), double> amperes)
    {
        double share = IecGrouping.First(g => Require.Within(circuits, 1, MostCircuits, nameof(circuits), "") <= g.UpTo).Share;
        return new InstallationMethod(
            circuits == 1
            ? $"installation method {method}"
            : FormattableString.Invariant($"installation method {method}, {circuits} circuits bunched"),
            IecAmpacity.ToDictionary(
                row => WireSize.SquareMillimeters(row.SquareMillimeters), row => ElectricCurrent.FromAmperes(share * amperes(row))),
            Temperature.FromDegreesCelsius(70), Temperature.FromDegreesCelsius(30), Sources.IecAmpacity);
    }

    private static Dictionary<WireSize, ElectricCurrent> Copper(params (int Gauge, double Amperes)[] points) =>
        points.ToDictionary(p => WireSize.Awg(p.Gauge), p => ElectricCurrent.FromAmperes(p.Amperes));
}
