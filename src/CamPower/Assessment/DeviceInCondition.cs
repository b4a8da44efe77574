using System;
using CamPower.Assessment;
using CamPower.Circuits;
using CamPower.Sites;
using UnitsNet;

namespace CamPower;

/// <summary>One device in one condition, fed from the lowest voltage of its supply.</summary>
/// <remarks>Immutable. Only a device that is up has a voltage and a current: reading them otherwise throws.</remarks>
public sealed class DeviceInCondition
{
    private readonly GroupInCondition _group;
    private readonly RailVolts _rail;
    private readonly BoxRail _box;
    private readonly int _index;
    private readonly double _volts;
    private AcInCondition? _ac;
    private OutputInCondition? _output;
    private DeviceInCondition? _converter;

    /// <param name="group">What it hangs together with, in the condition.</param>
    /// <param name="index">Its place in it.</param>
    /// <param name="box">What the voltage of its box does.</param>
    /// <param name="state">What becomes of it.</param>
    /// <param name="start">Whether it would start.</param>
    /// <param name="upVolts">Its voltage if it is up. [V]</param>
    /// <param name="unloadedVolts">Its voltage while it draws nothing. [V]</param>
    internal DeviceInCondition(
        GroupInCondition group, int index, BoxRail box, DeviceState state, StartVerdict start, double upVolts, double unloadedVolts)
    {
        _group = group;
        _rail = group.Lowest;
        _box = box;
        _index = index;
        _volts = state == DeviceState.Up ? upVolts : 0;
        State = state;
        Start = start;
        SolvedVolts = group.Solved[index];
        UnloadedVolts = unloadedVolts;
    }

    private DeviceInCondition(
        DeviceInCondition device, RailVolts rail, DeviceState state, StartVerdict start, double upVolts, double solvedVolts)
    {
        _group = device._group;
        _rail = rail;
        _box = device._box;
        _index = device._index;
        _volts = state == DeviceState.Up ? upVolts : 0;
        State = state;
        Start = start;
        SolvedVolts = solvedVolts;
        UnloadedVolts = device.UnloadedVolts;
        _ac = device._ac;
    }

    /// <summary>The device.</summary>
    public SiteDevice Device => Fed.Device;

    /// <summary>The condition.</summary>
    public Condition Condition => _group.Condition;

    /// <summary>What it has and takes on alternating current; null on direct current, on a wrong kind of current, and where neither the
    /// plate of the transformer nor the input stage of any of its devices is stated.</summary>
    public AcInCondition? Ac => _ac;

    /// <summary>Load of the device in this condition.</summary>
    public Load Load => _group.Loads[_index];

    /// <summary>What becomes of it.</summary>
    public DeviceState State { get; }

    /// <summary>Whether it would start in this condition; <see cref="StartVerdict.Unknown"/> where turn-on and drop-out are not
    /// declared.</summary>
    public StartVerdict Start { get; }

    /// <summary>The voltage that it accepts, or null where it does not accept the supply's kind of current, or gets it reversed.</summary>
    public VoltageRange? Accepted => Fed.Accepted;

    /// <summary>Voltage at its terminals; the lowest of them where others on its output come and go. Of a rectifier on alternating current
    /// the RMS of a sine with the crest that it gets. [V]</summary>
    /// <exception cref="InvalidOperationException">It is not up.</exception>
    public ElectricPotential Voltage => ElectricPotential.FromVolts(UpVolts);

    /// <summary>Current that it draws, RMS if alternating. [A]</summary>
    /// <exception cref="InvalidOperationException">It is not up.</exception>
    public ElectricCurrent Current => ElectricCurrent.FromAmperes(UpVolts > 0 ? AmperesDrawn : 0);

    /// <summary>How far its voltage lies above the lowest that it accepts; negative below it. [V]</summary>
    /// <exception cref="InvalidOperationException">It is not up.</exception>
    public ElectricPotential Margin => ElectricPotential.FromVolts(MarginVolts);

    /// <summary>
    /// The voltage at which the circuit balances with everything on, or null where it does not. [V]
    /// Under the drop-out voltage no meter will show it: the device is off by then.
    /// </summary>
    public ElectricPotential? SolvedVoltage => SolvedVolts > 0 ? ElectricPotential.FromVolts(SolvedVolts) : null;

    /// <summary>Voltage at its terminals while it draws nothing and the others on its output do, or null where those alone are too much.
    /// [V]</summary>
    public ElectricPotential? UnloadedVoltage => UnloadedVolts > 0 ? ElectricPotential.FromVolts(UnloadedVolts) : null;

    /// <summary>Unstable voltage: below it the device pulls its own voltage down. It has a value only where this prevents the start;
    /// otherwise null. [V]</summary>
    public ElectricPotential? UnstableVoltage => Start == StartVerdict.TurnOnBelowUnstableVoltage
        ? ElectricPotential.FromVolts(Circuit.UnstableVolts(_index, Device.Model.Starting!.TurnOnVolts, SolvedVolts, _rail, _group.Loads))
        : null;

    /// <summary>Largest constant power that the run can deliver beside the other components of the device. It has a value only where the
    /// run cannot carry the load and feeds no other device; otherwise null. [W]</summary>
    public Power? MaximumPower => SolvedVolts > 0 || _ac is not null || Circuit.MostWatts(_index, _rail, _group.Loads) is not double watts
        ? null
        : Power.FromWatts(watts);

    /// <summary>Whether nothing that is declared keeps it from starting.</summary>
    public bool WouldStart => Start is StartVerdict.Starts or StartVerdict.Unknown;

    /// <summary>Whether the protective device of its output, or of one that feeds its box, is certain to open at what the output carries in
    /// this condition. Until then it is as <see cref="State"/> says.</summary>
    public bool IsOpenedInService => _output?.OpensInService == true || _converter?.IsOpenedInService == true;

    /// <summary>Whether it is up, starts and has the voltage that it needs, and the protective device of its output stays closed; unknown
    /// where that is not known of its supply.</summary>
    public Verdict Verdict
    {
        get
        {
            if (IsOpenedInService) return Verdict.Violated;
            if (State == DeviceState.SupplyOverloaded) return Verdict.Unknown;
            if (State != DeviceState.Up || !WouldStart || LowestVoltage(Ratio.Zero).IsViolated) return Verdict.Violated;
            return IsAcUnknown ? Verdict.Unknown : Verdict.Holds;
        }
    }

    /// <summary>Voltage of the device during an inrush on its box, against its drop-out voltage. If it is lower, the duration of the inrush
    /// against the hold-up time.</summary>
    /// <remarks>The inrush that pulls it down most, through the cables that they share and the source: that of another device, or its own
    /// where a component of it is switched on. A judgment of nothing where it is not up, and where no inrush is stated.</remarks>
    public Judgment DuringInrush => State == DeviceState.Up ? _box.DuringInrush(Fed) : default;

    /// <summary>The same for illuminators and motors alone, which are switched on again and again in service.</summary>
    internal Judgment DuringSwitching => State == DeviceState.Up ? _box.DuringInrush(Fed, ofSwitched: true) : default;

    /// <summary>Its voltage against the lowest that it accepts; a judgment of nothing where it is not up.</summary>
    /// <remarks>In the valley of the ripple, where that is stated and above 1 %.</remarks>
    /// <param name="margin">What a policy asks above that, as a share of it, at least 0. [1]</param>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="margin"/> is negative, or not finite.</exception>
    /// <example>
    /// <code>
    /// Judgment judged = assessment.Devices[0].Worst.LowestVoltage(margin: Ratio.FromPercent(5));
    /// </code>
    /// </example>
    public Judgment LowestVoltage(Ratio margin)
    {
        double share = Require.NotNegative(margin.DecimalFractions, nameof(margin), "");
        return State == DeviceState.Up && Accepted is VoltageRange accepted
            ? Judgment.AtLeast(ValleyVolts, accepted.LowestVolts, accepted.LowestVolts * (1 + share), v => ElectricPotential.FromVolts(v))
            : default;
    }

    internal double SolvedVolts { get; }

    internal double UnloadedVolts { get; }

    internal double UpVolts => State == DeviceState.Up
        ? _volts
        : throw new InvalidOperationException($"{Device} is not up in {Condition} ({State}): it has no voltage. Ask TryGetVoltage first.");

    /// <summary>Its voltage in the valley of the ripple of its supply. [V]</summary>
    internal double ValleyVolts => UpVolts - (RippleSwing * SupplyVolts);

    /// <summary>How far crest and valley of its supply are from the mean, over that; 0 where the ripple is small, or not stated.
    /// [1]</summary>
    internal double RippleSwing => (Fed.Box.Supply.Output as DcOutput)?.RippleSwing ?? 0;

    /// <summary>Its current if it is up, otherwise 0. [A]</summary>
    internal double AmperesDrawn => State == DeviceState.Up ? _ac?.RmsAmperes ?? Load.AmperesAt(_volts) : 0;

    /// <summary>The direct part of what it draws from alternating current. [A]</summary>
    internal double MeanAmperes => State == DeviceState.Up ? _ac?.MeanAmperes ?? 0 : 0;

    /// <summary>The rest of it, RMS. [A]</summary>
    internal double AlternatingAmperes => Math.Sqrt(Math.Max(0, (AmperesDrawn * AmperesDrawn) - (MeanAmperes * MeanAmperes)));

    internal double MarginVolts => UpVolts - Accepted!.LowestVolts;

    /// <summary>The voltage, if it is up.</summary>
    /// <param name="voltage">Voltage at its terminals, or the default value.</param>
    public bool TryGetVoltage(out ElectricPotential voltage)
    {
        voltage = ElectricPotential.FromVolts(_volts);
        return State == DeviceState.Up;
    }

    /// <summary>
    /// Voltage along the path from the supply, at its lowest voltage, through the protective device of the output and the runs, to
    /// <see cref="SolvedVoltage"/>. Null if there is no solved voltage, or if a run shares its negative with another run, and
    /// on alternating current, where each point has another form.
    /// </summary>
    /// <example>
    /// <code>
    /// VoltageProfile? along = site.Assess().Devices[0].Worst.Profile();
    /// </code>
    /// </example>
    public VoltageProfile? Profile() => SolvedVolts > 0 && _ac is null ? Circuit.ProfileTo(_index, _rail, _group.Loads) : null;

    /// <summary>Calculation of <see cref="SolvedVoltage"/>: all connected devices draw current, and the supply is at its lowest
    /// voltage.</summary>
    /// <exception cref="InvalidOperationException">The supply gives the wrong kind of current, or its leads are reversed: nothing was
    /// worked out.</exception>
    public Derivation Explain() => State == DeviceState.WrongCurrent
        ? throw new InvalidOperationException(
            $"Nothing was worked out for {Device}: its supply gives the wrong kind of current, or its leads are reversed.")
        : _ac is null ? Circuit.Explain(_rail, _group.Loads) : new Derivation($"{Device} in {Condition}", _ac.Steps(), _ac.ToString());

    /// <summary>Device, condition and what becomes of it, in the invariant culture; never throws.</summary>
    public override string ToString() => State == DeviceState.Up
        ? FormattableString.Invariant(
            $"{Device} in {Condition}: {_volts:0.###} V, {AmperesDrawn:0.###} A{(WouldStart ? "" : ", but would not start")}")
        : $"{Device} in {Condition}: {State}";

    /// <summary>The same device on alternating current: what it gets there decides whether it stays up and starts.</summary>
    internal DeviceInCondition OnAlternating(AcInCondition ac)
    {
        if (State == DeviceState.WrongCurrent) return this;
        Starting? starting = Fed.Starting;
        double unloaded = ac.TurningOn(UnloadedVolts);
        StartVerdict start = starting is null ? StartVerdict.Unknown
            : StartKernel.Judge(unloaded, ac.HasSteadyState ? ac.SettledVolts : 0, starting, climbs: true);
        DeviceState state = ac.HasSteadyState && !ac.DropOut.IsViolated ? DeviceState.Up
            : starting is null ? DeviceState.NoOperatingPoint
            : unloaded >= starting.TurnOnVolts ? DeviceState.Restarting : DeviceState.NeverUp;
        return new DeviceInCondition(this, _rail, state, start, ac.EquivalentVolts, ac.HasSteadyState ? ac.SettledVolts : 0) { _ac = ac };
    }

    /// <summary>The same device with another answer to whether it starts.</summary>
    internal DeviceInCondition WithStart(StartVerdict start) => new(this, _rail, State, start, _volts, SolvedVolts);

    /// <summary>The same device in another state: it is not up.</summary>
    internal DeviceInCondition Down(DeviceState state) => new(this, _rail, state, Start, 0, SolvedVolts);

    /// <summary>The same device fed from another voltage.</summary>
    internal DeviceInCondition At(RailVolts rail, double volts) => new(this, rail, State, Start, volts, volts);

    /// <summary>Tells it what its output carries, and of the input of the converter that feeds its box, once that is known.</summary>
    internal void Behind(OutputInCondition output, DeviceInCondition? converter) => (_output, _converter) = (output, converter);

    /// <summary>The voltage of the box that feeds it. [V]</summary>
    internal double SupplyVolts => _rail.Of(Fed.Box);

    // What is behind its terminals, or the capacitance that decides whether it stays up, is not stated.
    private bool IsAcUnknown =>
        !Fed.Box.Supply.Output.IsDc && (Device.Model.AcStage is null || _ac?.DropOut.NotStated is not null);

    private FeedCircuit Circuit => _group.Circuit;

    private FedDevice Fed => Circuit.Group.Devices[_index];

    /// <summary>Whether this is worse than another condition of the same device: first by state, then by voltage.</summary>
    internal bool IsWorseThan(DeviceInCondition other) =>
        State != other.State ? State > other.State : State == DeviceState.Up && _volts < other._volts;
}
