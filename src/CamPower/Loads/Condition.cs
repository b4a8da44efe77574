using System;
using UnitsNet;

namespace CamPower;

/// <summary>One state of the site that it must survive: which components of the draw are on, how warm things are, how many motors
/// move.</summary>
/// <remarks>
/// Immutable. Four are given, and users make their own. Of the given conditions only the cold start has the heater on. To combine heater
/// and hot cable, add it with <see cref="With"/>.
/// </remarks>
/// <example>
/// <code>
/// Condition night = Condition.Night(winter).With(LoadComponents.Heater);
/// Condition oneMoves = Condition.NightWithMotion(summer, motorsMoving: 1);
/// </code>
/// </example>
public sealed class Condition
{
    /// <summary>From when on a load is continuous. [h]</summary>
    internal const double ContinuousFromHours = 3;

    /// <summary>A year of 366 days. [h]</summary>
    internal const double HoursOfAYear = 8784;

    /// <summary>States a condition.</summary>
    /// <param name="name">Name. Not empty.</param>
    /// <param name="on">The components that are on beside the base draw.</param>
    /// <param name="at">The temperatures.</param>
    /// <param name="motorsMoving">How many motors of the whole site move at once, at least 0; null for all of them.</param>
    /// <param name="duration">How long it lasts, at least 0; null when that is not known.</param>
    /// <param name="lineVoltage">Voltage at the input of every supply, RMS if alternating, from 1 nV to 1 MV; null for its nominal one, at
    /// which no supply is derated. [V]</param>
    /// <param name="hoursAYear">How long it holds in a year, all its times together, from 0 to 8784 h; null when that is not known.
    /// [h]</param>
    /// <exception cref="ArgumentNullException">A reference is null.</exception>
    /// <exception cref="ArgumentException"><paramref name="name"/> is empty.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A number is outside its range, or <paramref name="on"/> names a component that does
    /// not exist.</exception>
    public Condition(string name, LoadComponents on, Surroundings at, int? motorsMoving = null, Duration? duration = null,
        ElectricPotential? lineVoltage = null, Duration? hoursAYear = null)
    {
        Name = Require.Name(name, nameof(name));
        On = (LoadComponents)(int)Require.Within((int)on, 0, ComponentDraw.AllComponents, nameof(on), "");
        At = Require.NotNull(at, nameof(at));
        if (motorsMoving is int count) Require.NotNegative(count, nameof(motorsMoving), "motors");
        if (duration is Duration length) Require.NotNegative(length.Seconds, nameof(duration), "s");
        if (hoursAYear is Duration yearly) Require.Within(yearly.Hours, 0, HoursOfAYear, nameof(hoursAYear), "h");
        MotorsMoving = motorsMoving;
        Duration = duration;
        HoursAYear = hoursAYear;
        LineVoltage = lineVoltage;
        LineVolts = lineVoltage is ElectricPotential line ? Require.SourceVolts(line.Volts, nameof(lineVoltage)) : null;
    }

    /// <summary>Name.</summary>
    public string Name { get; }

    /// <summary>The components that are on beside the base draw.</summary>
    public LoadComponents On { get; }

    /// <summary>The temperatures.</summary>
    public Surroundings At { get; }

    /// <summary>Number of motors of the whole site that move at once; null for all of them.</summary>
    /// <remarks>The worst case counts. For voltages all motors of an output move. For currents the motors with the largest current move, up
    /// to the stated number.</remarks>
    public int? MotorsMoving { get; }

    /// <summary>How long it lasts; null when that is not known.</summary>
    public Duration? Duration { get; }

    /// <summary>How long it holds in a year, all its times together; null when that is not known. [h]</summary>
    public Duration? HoursAYear { get; }

    /// <summary>Voltage at the input of every supply; null for its nominal one, at which no supply is derated. [V]</summary>
    public ElectricPotential? LineVoltage { get; }

    internal double? LineVolts { get; }

    /// <summary>Whether it lasts: it is not stated to be shorter than a continuous load
    /// (<see cref="Sources.NecContinuousLoad"/>).</summary>
    internal bool IsContinuous => !(Duration is Duration lasts && lasts.Hours < ContinuousFromHours);

    /// <summary>Whether it has what is switched on while a device runs: illuminators or motors.</summary>
    internal bool HasSwitched => (On & (LoadComponents.Infrared | LoadComponents.Motor)) != LoadComponents.None;

    /// <summary>Day: the base draw alone.</summary>
    /// <param name="at">The temperatures.</param>
    /// <exception cref="ArgumentNullException"><paramref name="at"/> is null.</exception>
    public static Condition Day(Surroundings at) => new("day", LoadComponents.None, at);

    /// <summary>Night: infrared on.</summary>
    /// <param name="at">The temperatures.</param>
    /// <exception cref="ArgumentNullException"><paramref name="at"/> is null.</exception>
    public static Condition Night(Surroundings at) => new("night", LoadComponents.Infrared, at);

    /// <summary>Night with motion: infrared on and motors moving.</summary>
    /// <param name="at">The temperatures.</param>
    /// <param name="motorsMoving">How many motors of the whole site move at once; null for all of them.</param>
    /// <exception cref="ArgumentNullException"><paramref name="at"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="motorsMoving"/> is negative.</exception>
    public static Condition NightWithMotion(Surroundings at, int? motorsMoving = null) =>
        new("night with motion", LoadComponents.Infrared | LoadComponents.Motor, at, motorsMoving);

    /// <summary>Cold start of everything after a power cut: every component on, start-up included.</summary>
    /// <param name="at">The temperatures.</param>
    /// <exception cref="ArgumentNullException"><paramref name="at"/> is null.</exception>
    public static Condition ColdStart(Surroundings at) => new("cold start of everything",
        LoadComponents.Infrared | LoadComponents.Motor | LoadComponents.Heater | LoadComponents.StartUp, at);

    /// <summary>The same condition with more components on.</summary>
    /// <param name="more">The components to add.</param>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="more"/> names a component that does not exist.</exception>
    public Condition With(LoadComponents more) => new(Name, On | more, At, MotorsMoving, Duration, LineVoltage, HoursAYear);

    /// <summary>The same condition with another voltage at the inputs of the supplies: a low line.</summary>
    /// <param name="lineVoltage">The voltage, RMS if alternating, from 1 nV to 1 MV. [V]</param>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="lineVoltage"/> is outside its range.</exception>
    public Condition WithLineVoltage(ElectricPotential lineVoltage) =>
        new(Name, On, At, MotorsMoving, Duration, lineVoltage, HoursAYear);

    /// <summary>The name; never throws.</summary>
    public override string ToString() => Name;
}
