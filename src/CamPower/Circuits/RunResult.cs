using System;
using System.Globalization;
using System.Linq;
using CamPower.Circuits;
using UnitsNet;

namespace CamPower;

/// <summary>Voltage and current of a load at the end of a run, with the question that was asked.</summary>
/// <remarks>
/// Holds SI doubles; quantities are made when read, so a result costs no allocation and equality never depends
/// on units. A run that cannot carry its load is a result too: <see cref="HasOperatingPoint"/> is false,
/// <see cref="MaximumPower"/> says what it could carry, and reading a voltage throws. The default value is "no
/// result": it has no operating point, and everything but that throws. Sources: <see cref="Sources.Kirchhoff"/>
/// and <see cref="Sources.MaximumPower"/>.
/// </remarks>
/// <example>
/// <code>
/// RunResult atCamera = run.Feed(camera, from: ElectricPotential.FromVolts(12), conductorAt: Temperature.FromDegreesCelsius(40));
/// if (atCamera.TryGetOperatingPoint(out OperatingPoint point)) Console.WriteLine(point.Voltage);
/// else Console.WriteLine($"The run carries at most {atCamera.MaximumPower}.");
/// </code>
/// </example>
public readonly struct RunResult : IEquatable<RunResult>
{
    // A limit this high is none, and a Power, being a decimal, does not hold much more.
    private const double LimitlessWatts = 1e24;

    private readonly CableRun? _run;
    private readonly Load? _load;
    private readonly double _sourceVolts, _celsius, _loadVolts, _amperes;

    internal RunResult(CableRun run, Load load, double sourceVolts, double celsius, double ohms)
    {
        _run = run;
        _load = load;
        _sourceVolts = sourceVolts;
        _celsius = celsius;
        _loadVolts = RunKernel.LoadVolts(sourceVolts, ohms, load);
        _amperes = HasOperatingPoint ? load.AmperesAt(_loadVolts) : 0;
    }

    /// <summary>Whether the run can carry the load.</summary>
    public bool HasOperatingPoint => _loadVolts > RunKernel.NoOperatingPoint;

    /// <summary>The run that was asked about.</summary>
    /// <exception cref="InvalidOperationException">This is the default value.</exception>
    public CableRun Run => _run ?? throw NoResult();

    /// <summary>The load that was asked about.</summary>
    /// <exception cref="InvalidOperationException">This is the default value.</exception>
    public Load Load => _load ?? throw NoResult();

    /// <summary>Voltage at the source end. [V]</summary>
    public ElectricPotential SourceVoltage => ElectricPotential.FromVolts(_sourceVolts);

    /// <summary>Resistance out and back, joints included, at the temperature asked about. [Ω]</summary>
    /// <exception cref="InvalidOperationException">This is the default value.</exception>
    public ElectricResistance LoopResistance => ElectricResistance.FromOhms(Ohms);

    /// <summary>Temperature of the conductors that was asked about. [°C]</summary>
    public Temperature ConductorTemperature => Temperature.FromDegreesCelsius(_celsius);

    /// <summary>Length along the route, one way. [m]</summary>
    /// <exception cref="InvalidOperationException">This is the default value.</exception>
    public Length OneWayLength => Run.OneWayLength;

    /// <summary>Length that the current travels, out and back. [m]</summary>
    /// <exception cref="InvalidOperationException">This is the default value.</exception>
    public Length LoopLength => Run.LoopLength;

    /// <summary>Voltage at the load, on the stable branch. [V]</summary>
    /// <exception cref="InvalidOperationException">There is no operating point.</exception>
    public ElectricPotential LoadVoltage => ElectricPotential.FromVolts(LoadVolts);

    /// <summary>Current in the run. [A]</summary>
    /// <exception cref="InvalidOperationException">There is no operating point.</exception>
    public ElectricCurrent Current => ElectricCurrent.FromAmperes(Amperes);

    /// <summary>Voltage lost in the run, out and back: I·R. [V]</summary>
    /// <exception cref="InvalidOperationException">There is no operating point.</exception>
    public ElectricPotential Drop => ElectricPotential.FromVolts(Amperes * Ohms);

    /// <summary>The drop over the source voltage. [%]</summary>
    /// <exception cref="InvalidOperationException">There is no operating point.</exception>
    public Ratio DropRatio => Ratio.FromPercent(Amperes * Ohms / _sourceVolts * 100);

    /// <summary>Power that the load takes. [W]</summary>
    /// <exception cref="InvalidOperationException">There is no operating point.</exception>
    public Power LoadPower => Power.FromWatts(LoadVolts * Amperes);

    /// <summary>Power lost in the run: I²·R. [W]</summary>
    /// <exception cref="InvalidOperationException">There is no operating point.</exception>
    public Power Loss => Power.FromWatts(Amperes * Amperes * Ohms);

    /// <summary>Power that the source delivers. [W]</summary>
    /// <exception cref="InvalidOperationException">There is no operating point.</exception>
    public Power SourcePower => Power.FromWatts(_sourceVolts * Amperes);

    /// <summary>The factor by which the constant-power component could grow before no operating point is left; null where none is lost,
    /// because the run has no resistance or the load no such component. [1]</summary>
    /// <remarks>1 at the limit, less than 1 beyond it; 0 where the current component alone takes all of the source voltage.</remarks>
    /// <exception cref="InvalidOperationException">This is the default value.</exception>
    public Ratio? MarginToCollapse
    {
        get
        {
            double margin = RunKernel.MostWatts(_sourceVolts, Ohms, Load) / Load.Watts;
            if (Load.Watts > 0 && !double.IsInfinity(margin)) return Ratio.FromDecimalFractions(margin);
            return HasOperatingPoint ? null : Ratio.Zero;
        }
    }

    /// <summary>The most constant power that the run could carry beside the load's other components; null where there is no limit: no
    /// resistance. [W]</summary>
    /// <remarks>(Vs − R·I₀)² / (4·R·(1 + R·G)), and 0 where the current component alone takes all of the source voltage.
    /// For a load that draws the larger of two components Vs² / (4·R), or (Vs − R·I₀)·I₀ where the current component already
    /// takes more than half of the source voltage.</remarks>
    /// <exception cref="InvalidOperationException">This is the default value.</exception>
    public Power? MaximumPower
    {
        get
        {
            double most = RunKernel.MostWatts(_sourceVolts, Ohms, Load);
            return most <= LimitlessWatts ? Power.FromWatts(most) : null;
        }
    }

    /// <summary>The lower voltage at which the power balances too, but does not last; 0 without a constant-power component. [V]</summary>
    /// <exception cref="InvalidOperationException">There is no operating point.</exception>
    public ElectricPotential UnstableVoltage => ElectricPotential.FromVolts(RunKernel.UnstableVolts(_sourceVolts, Ohms, Load, LoadVolts));

    internal double LoadVolts => HasOperatingPoint ? _loadVolts : throw NoOperatingPoint(this);

    internal double Amperes => HasOperatingPoint ? _amperes : throw NoOperatingPoint(this);

    /// <summary>The voltage at the load, or 0 without an operating point. [V]</summary>
    internal double SolvedVolts => _loadVolts;

    internal double SourceVolts => _sourceVolts;

    internal double ConductorCelsius => _celsius;

    internal double Ohms => Run.OhmsAt(_celsius);

    /// <summary>The operating point, or word that there is none; then <see cref="MaximumPower"/> says what the run could carry.</summary>
    /// <param name="point">Voltage and current at the load, or the default value.</param>
    public bool TryGetOperatingPoint(out OperatingPoint point)
    {
        point = HasOperatingPoint ? new OperatingPoint(_loadVolts, Amperes) : default;
        return HasOperatingPoint;
    }

    /// <summary>The voltage along the run.</summary>
    /// <exception cref="InvalidOperationException">There is no operating point.</exception>
    public VoltageProfile Profile()
    {
        double amperes = Amperes, celsius = _celsius;
        return new VoltageProfile(_sourceVolts, Run.Parts.Select(p => (p, p.OhmsAt(celsius) * amperes)));
    }

    /// <summary>How the answer was worked out, step by step.</summary>
    /// <exception cref="InvalidOperationException">This is the default value.</exception>
    public Derivation Explain() => RunDerivation.Of(this);

    /// <summary>What the run could carry: watts, or amperes where the current component alone takes all of the source voltage.</summary>
    internal string MostText(string format, string ofPower = "") => Exact.MinusProduct(_sourceVolts, Ohms, Load.Amperes) > 0
        ? "at most " + RunKernel.MostWatts(_sourceVolts, Ohms, Load).ToString(format, CultureInfo.InvariantCulture) + " W" + ofPower
        : "less than " + RunKernel.MostAmperes(_sourceVolts, Ohms).ToString(format, CultureInfo.InvariantCulture)
            + " A of constant current";

    /// <inheritdoc/>
    public bool Equals(RunResult other) => ReferenceEquals(_run, other._run) && ReferenceEquals(_load, other._load)
        && _sourceVolts.Equals(other._sourceVolts) && _celsius.Equals(other._celsius) && _loadVolts.Equals(other._loadVolts);

    /// <inheritdoc/>
    public override bool Equals(object? obj) => obj is RunResult other && Equals(other);

    /// <inheritdoc/>
    public override int GetHashCode() => (((_sourceVolts.GetHashCode() * 31) + _celsius.GetHashCode()) * 31) + _loadVolts.GetHashCode();

    /// <summary>The answer in one line, in the invariant culture; never throws.</summary>
    public override string ToString()
    {
        if (_load is null) return "no result";
        return HasOperatingPoint
            ? FormattableString.Invariant($"{_loadVolts:0.###} V, {Amperes:0.###} A from {_sourceVolts:0.###} V over {Ohms:0.####} Ω")
            : FormattableString.Invariant($"no operating point from {_sourceVolts:0.###} V over {Ohms:0.####} Ω: ") + MostText("G4");
    }

    /// <summary>Whether both ask the same and answer the same.</summary>
    public static bool operator ==(RunResult left, RunResult right) => left.Equals(right);

    /// <summary>Whether the two differ.</summary>
    public static bool operator !=(RunResult left, RunResult right) => !left.Equals(right);

    // Takes a copy: called on this very result it would keep the whole struct in memory instead of in registers.
    private static InvalidOperationException NoOperatingPoint(RunResult of) => of._load is null ? NoResult() : new(
        FormattableString.Invariant($"The run has no operating point: {of._sourceVolts:G6} V over {of.Ohms:G6} Ω carries ")
            + FormattableString.Invariant(
            $"{of.MostText("G6", " beside the other components")}, but the load is {of._load}. Ask TryGetOperatingPoint first."));

    private static InvalidOperationException NoResult() => new("This is the default value of RunResult: nothing was asked.");
}
