using System;
using UnitsNet;

namespace CamPower;

/// <summary>A run at one conductor temperature, ready to be asked about many loads and source voltages.</summary>
/// <remarks>Its loop resistance is worked out once. The default value is no run: asking it throws.</remarks>
/// <example>
/// <code>
/// PreparedRun hot = run.At(Temperature.FromDegreesCelsius(60));
/// foreach (Load load in loads) Console.WriteLine(hot.Feed(load, from: ElectricPotential.FromVolts(12)));
/// </code>
/// </example>
public readonly struct PreparedRun : IEquatable<PreparedRun>
{
    private readonly CableRun? _run;
    private readonly double _celsius, _ohms;

    internal PreparedRun(CableRun run, double celsius)
    {
        _run = run;
        _celsius = celsius;
        _ohms = run.OhmsAt(celsius);
    }

    /// <summary>The run.</summary>
    /// <exception cref="InvalidOperationException">This is the default value.</exception>
    public CableRun Run => _run ?? throw new InvalidOperationException("This is the default value of PreparedRun: there is no run.");

    /// <summary>Resistance out and back, joints included, at the temperature asked about. [Ω]</summary>
    public ElectricResistance LoopResistance => ElectricResistance.FromOhms(_ohms);

    /// <summary>Voltage and current of a load at the far end.</summary>
    /// <param name="load">The load.</param>
    /// <param name="from">Voltage at the source end, from 1 nV to 1 MV. [V]</param>
    /// <exception cref="ArgumentNullException"><paramref name="load"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="from"/> is outside its range.</exception>
    /// <exception cref="InvalidOperationException">This is the default value.</exception>
    public RunResult Feed(Load load, ElectricPotential from) =>
        new(Run, Require.NotNull(load, nameof(load)), Require.SourceVolts(from.Volts, nameof(from)), _celsius, _ohms);

    /// <summary>Whether a load at the far end starts, and if not, why.</summary>
    /// <param name="atStart">What it draws while it starts.</param>
    /// <param name="starting">When it turns on and drops out.</param>
    /// <param name="from">Voltage at the source end, from 1 nV to 1 MV. [V]</param>
    /// <exception cref="ArgumentNullException">A reference is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="from"/> is outside its range.</exception>
    /// <exception cref="InvalidOperationException">This is the default value.</exception>
    public StartResult Start(Load atStart, Starting starting, ElectricPotential from) =>
        new(Feed(atStart, from), Require.NotNull(starting, nameof(starting)));

    /// <inheritdoc/>
    public bool Equals(PreparedRun other) => ReferenceEquals(_run, other._run) && _celsius.Equals(other._celsius);

    /// <inheritdoc/>
    public override bool Equals(object? obj) => obj is PreparedRun other && Equals(other);

    /// <inheritdoc/>
    public override int GetHashCode() => _celsius.GetHashCode();

    /// <summary>The run and its resistance, in the invariant culture; never throws.</summary>
    public override string ToString() => _run is null ? "no run" : FormattableString.Invariant($"{_run}, {_ohms:G6} Ω");

    /// <summary>Whether both are the same run at the same resistance.</summary>
    public static bool operator ==(PreparedRun left, PreparedRun right) => left.Equals(right);

    /// <summary>Whether the two differ.</summary>
    public static bool operator !=(PreparedRun left, PreparedRun right) => !left.Equals(right);
}
