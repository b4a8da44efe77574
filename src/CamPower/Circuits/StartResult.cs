using System;
using CamPower.Circuits;
using UnitsNet;

namespace CamPower;

/// <summary>Whether a device at the end of a run starts, with the numbers behind the verdict.</summary>
/// <remarks>
/// The unloaded voltage must reach the turn-on; the stable voltage at start power must not lie under the
/// drop-out; and where no soft start is declared, the turn-on must not lie under the unstable voltage. The
/// default value is "no result". Source: the load line of <see cref="Sources.Kirchhoff"/>.
/// </remarks>
/// <example>12.5 W over 2.6 Ω from 12 V settles at 7.87 V: under an 8 V drop-out it restarts again and again.</example>
public readonly struct StartResult : IEquatable<StartResult>
{
    private readonly Starting? _starting;

    internal StartResult(RunResult atStart, Starting starting)
    {
        AtStart = atStart;
        _starting = starting;
        double settled = atStart.SolvedVolts;
        bool climbs = StartKernel.NeedsNoClimb(settled, starting)
            || (settled > RunKernel.NoOperatingPoint
                && starting.TurnOnVolts >= RunKernel.UnstableVolts(atStart.SourceVolts, atStart.Ohms, atStart.Load, settled));
        Verdict = StartKernel.Judge(atStart.SourceVolts, settled, starting, climbs);
    }

    /// <summary>Whether it starts, and if not, why.</summary>
    public StartVerdict Verdict { get; }

    /// <summary>The run at start power.</summary>
    public RunResult AtStart { get; }

    /// <summary>When it turns on and drops out.</summary>
    /// <exception cref="InvalidOperationException">This is the default value.</exception>
    public Starting Starting =>
        _starting ?? throw new InvalidOperationException("This is the default value of StartResult: nothing was asked.");

    /// <summary>Whether it starts and stays on.</summary>
    public bool Starts => Verdict == StartVerdict.Starts;

    /// <summary>Voltage at the terminals before it draws anything. [V]</summary>
    public ElectricPotential UnloadedVoltage => AtStart.SourceVoltage;

    /// <summary>Calculation of the verdict. Each step shows a margin; a negative margin is the reason.</summary>
    /// <exception cref="InvalidOperationException">This is the default value.</exception>
    public Derivation Explain() => StartDerivation.Of(this);

    /// <inheritdoc/>
    public bool Equals(StartResult other) =>
        Verdict == other.Verdict && ReferenceEquals(_starting, other._starting) && AtStart.Equals(other.AtStart);

    /// <inheritdoc/>
    public override bool Equals(object? obj) => obj is StartResult other && Equals(other);

    /// <inheritdoc/>
    public override int GetHashCode() => (AtStart.GetHashCode() * 31) + (int)Verdict;

    /// <summary>The verdict and the point at start power, in the invariant culture; never throws.</summary>
    public override string ToString() => $"{Verdict}: {AtStart}";

    /// <summary>Whether both ask the same and answer the same.</summary>
    public static bool operator ==(StartResult left, StartResult right) => left.Equals(right);

    /// <summary>Whether the two differ.</summary>
    public static bool operator !=(StartResult left, StartResult right) => !left.Equals(right);
}
