using System;
using System.Collections.Generic;
using System.Linq;
using System.Threading;
using CamPower.Sites;
using CamPower.Supplies;
using UnitsNet;

namespace CamPower.Assessment;

/// <summary>Voltage of one box in one condition with everything on, and the state of its devices that follows.</summary>
internal sealed class BoxRail
{
    private readonly SupplyOutput _supply;
    private readonly RailLoad? _load;
    private readonly Lazy<RailBranch[]> _branches;
    private readonly RailVolts _lowest;
    private readonly double _fullVolts;
    private readonly DistributionBox _box;
    private readonly double _standingAmperes;
    private readonly InrushDips? _dips;
    private readonly Dictionary<FedDevice, double> _on = [];

    /// <param name="box">The box.</param>
    /// <param name="groups">The groups that it feeds, with everything on.</param>
    /// <param name="amperes">What its outputs take together, as many motors moving as may. [A]</param>
    /// <param name="cancellationToken">Cancels it.</param>
    internal BoxRail(DistributionBox box, IReadOnlyList<GroupInCondition> groups, double amperes, CancellationToken cancellationToken)
    {
        _box = box;
        _supply = box.Supply.Output;
        _lowest = groups.Count > 0 ? groups[0].Lowest : RailVolts.Lowest;
        Volts = _fullVolts = _lowest.Of(box);
        if (groups.Any(g => g.Group.HasMotor))
        {
            _standingAmperes = groups.Sum(g => g.AmperesOfAll.Where((_, f) => ReferenceEquals(g.Group.Feeds[f].Box, box)).Sum()) - amperes;
        }

        _branches = new Lazy<RailBranch[]>(
            () => [.. groups.Select(g => new RailBranch(g.Circuit, g.Lowest, box, g.Loads, cancellationToken))]);
        State = SupplyState.StaysUp;

        // A transformer has no limit: what it loses in its winding is in the voltages of its devices, and too much only heats it.
        if (_supply is not AcOutput { WindingOhms: > 0, Overload.Limit: null } && Limits.IsAbove(amperes, RailBalance.LimitOf(_supply)))
        {
            _load = new RailLoad(GivenAt, _fullVolts, _branches.Value);
            State = Overloaded(_load);
        }

        _dips = State == SupplyState.StaysUp && HasInrush(groups) ? new InrushDips(box, groups, _fullVolts, _branches) : null;
        StartingCurrent = Starting(groups);
        StartingInrush = Charging(groups);

        // What still starts has not run before: after a dip it starts again.
        ReturningCurrent = groups.Any(g => !g.Condition.On.HasFlag(LoadComponents.StartUp)) ? Returning(groups) : default;
    }

    /// <summary>What the voltage does.</summary>
    internal SupplyState State { get; }

    /// <summary>The voltage: where it falls to, or its lowest while it stays up. [V]</summary>
    internal double Volts { get; private set; }

    /// <summary>What its devices take as it comes up, against what the supply gives there.</summary>
    internal Judgment StartingCurrent { get; }

    /// <summary>What the inputs of its devices take together as they charge, against the limit above which the supply is off before they
    /// have.</summary>
    internal Judgment StartingInrush { get; }

    /// <summary>What those take that a dip has not put off, against what the supply gives there.</summary>
    internal Judgment ReturningCurrent { get; }

    /// <summary>The voltage of a device while a neighbor draws its inrush: any, or that of what is switched on alone.</summary>
    internal Judgment DuringInrush(FedDevice device, bool ofSwitched = false) => _dips?.On(device, ofSwitched) ?? default;

    /// <summary>A device as it is behind this rail, given what it is behind one that stays up.</summary>
    internal DeviceInCondition With(DeviceInCondition device, FedDevice fed)
    {
        if (State == SupplyState.StaysUp || device.State is not (DeviceState.Up or DeviceState.Restarting)) return Started(device);
        return State switch
        {
            SupplyState.Pulses => device.Down(DeviceState.Restarting),
            SupplyState.Off => device.Down(DeviceState.NeverUp),
            SupplyState.Dips when _on.TryGetValue(fed, out double volts) => device.State == DeviceState.Up
                ? device.At(_lowest.With(_box, Volts), volts)
                : device,
            SupplyState.Dips when fed.Starting is Starting starting =>
                device.Down(Recovered >= starting.TurnOnVolts ? DeviceState.Restarting : DeviceState.NeverUp),
            _ => device.Down(DeviceState.SupplyOverloaded),
        };
    }

    private bool HasInrush(IReadOnlyList<GroupInCondition> groups)
    {
        for (int g = 0; g < groups.Count; g++)
        {
            FeedGroup group = groups[g].Group;
            foreach (int i in group.PlacesOf(_box))
            {
                if (group.Devices[i].HasInrush) return true;
            }
        }

        return false;
    }

    // What does not start behind the limit is not up where everything begins off.
    private DeviceInCondition Started(DeviceInCondition device)
    {
        if (device.Start != StartVerdict.Starts) return device;
        if (StartingCurrent.NotStated is not null) return device.WithStart(StartVerdict.Unknown);
        if (!StartingCurrent.IsViolated) return device;
        DeviceInCondition held = device.WithStart(StartVerdict.HeldDownBySupply);
        return device.State == DeviceState.Up && device.Condition.On.HasFlag(LoadComponents.StartUp)
            ? held.Down(_supply.Overload!.ShutsDown ? DeviceState.NeverUp : DeviceState.Restarting)
            : held;
    }

    private SupplyState Overloaded(RailLoad load)
    {
        if (_supply.Overload is null) return SupplyState.Unknown;
        if (_supply.Overload.ShutsDown) return SupplyState.Off;
        if (_supply.Overload.Pulses) return SupplyState.Pulses;
        if (!RailBalance.IsKnown(_supply)) return SupplyState.Unknown;
        RailRest rest = load.Rest(Volts, _ => -_standingAmperes, without: null);
        if (rest.IsBalance && rest.Volts >= Volts) return SupplyState.StaysUp;
        Volts = rest.Volts;
        foreach ((FedDevice device, bool isOn, double volts) in load.DevicesAt(Volts, without: null))
        {
            if (isOn) _on[device] = volts;
        }

        return SupplyState.Dips;
    }

    // Where the rail comes back to once those have let go that were too much.
    private double Recovered =>
        Volts > 0 ? RailBalance.Between(GivenAt, _fullVolts, _fullVolts, 0, v => _load!.TakenAt(v, Volts) - _standingAmperes) : _fullVolts;

    // As the supply voltage rises each device begins to draw at its turn-on voltage, unless it waits until the voltage is up.
    private Judgment Starting(IReadOnlyList<GroupInCondition> groups) => WorstOf(groups, new Step(
        s => s.TurnOnVolts, Waits, s => _supply.RiseSeconds is null || s.DelaySeconds is null,
        "start delay of its devices, rise time of the supply"));

    // A supply that holds or folds back only takes longer. An electronic limit is taken to hold the least that it may; a rail that rises
    // draws the charge out.
    private Judgment Charging(IReadOnlyList<GroupInCondition> groups)
    {
        if (_supply.Overload?.Pulse is not Duration pulse) return default;
        OutputFeed[] feeds = [.. groups.SelectMany(g => g.Group.Feeds)
            .Where(f => ReferenceEquals(f.Box, _box) && InrushesOf(f).Length > 0)];
        if (feeds.Length == 0) return default;
        if (_supply.RiseSeconds is not double rise) return Judgment.Unknown("rise time of the supply");
        double amperes = feeds.Sum(PeakOf);
        return feeds.Sum(f => InrushesOf(f).Sum(ChargeOf)) > amperes * pulse.Seconds
            ? Judgment.AtMost(amperes, _supply.Overload.Lowest.LimitAmperes, _supply.Overload.Lowest.LimitAmperes,
                a => ElectricCurrent.FromAmperes(a))
            : default;

        double PeakOf(OutputFeed feed) =>
            Math.Min(InrushesOf(feed).Sum(i => Math.Min(i.PeakAmperes, ChargeOf(i) / rise)), HeldBy(feed.Output.Protection));
    }

    private static Inrush[] InrushesOf(OutputFeed feed) =>
        [.. feed.Devices.Where(d => d.Accepted is not null).Select(d => d.Device.Model.Inrush).OfType<Inrush>()];

    private static double ChargeOf(Inrush inrush) => inrush.AmpereSquaredSeconds / inrush.PeakAmperes;

    private static double HeldBy(ProtectiveDevice? device) =>
        device is ElectronicLimit ? device.CarriedAmperes(1) : double.PositiveInfinity;

    private Judgment Returning(IReadOnlyList<GroupInCondition> groups) =>
        WorstOf(groups, new Step(s => s.DropOutVolts, Waits: null, IsUncertain: null, string.Empty));

    private bool Waits(Starting starting) => starting.DelaySeconds > _supply.RiseSeconds;

    private double GivenAt(double volts) => RailBalance.GivenAt(_supply, _fullVolts, volts);

    // First a quick estimate with too much current: the voltage of the box counts as if it were at the terminals. Only where that is more
    // than the supply gives, the exact one: with the voltages of the box at which the devices drop out.
    private Judgment WorstOf(IReadOnlyList<GroupInCondition> groups, Step step)
    {
        if (_supply.Overload?.Limit is null) return default;
        double[] turning = [.. groups.SelectMany(g => g.Group.Devices).Where(d => ReferenceEquals(d.Box, _box))
            .Select(d => d.Starting).OfType<Starting>().Select(step.VoltsOf).Distinct()];
        Judgment most = WorstAt(turning, step, (volts, draws) => TakenByAll(groups, volts, draws));
        if (most.Verdict is not Verdict.Violated && most.NotStated is null) return most;
        return WorstAt(turning.Concat(_branches.Value.SelectMany(b => b.Steps)).Distinct(), step,
            (volts, draws) => _branches.Value.Sum(b => b.AmperesOf(volts, draws)));
    }

    // At the voltage at which the supply is shortest of what is drawn; unknown where it is short only with those that may draw or not.
    private Judgment WorstAt(IEnumerable<double> steps, Step step, Func<double, Func<FedDevice, bool>, double> takenBy)
    {
        Judgment worst = default;
        double shortest = double.NegativeInfinity;
        foreach (double volts in steps.Where(v => v < _fullVolts))
        {
            double given = GivenAt(volts), taken = takenBy(volts, d => step.Draws(d, volts)) - _standingAmperes;
            if (taken - given <= shortest) continue;
            shortest = taken - given;
            double certain = step.IsUncertain is null
                ? taken
                : takenBy(volts, d => step.Draws(d, volts) && !(d.Starting is Starting s && step.IsUncertain(s))) - _standingAmperes;
            Judgment judged = Judgment.AtMost(certain, given, given, a => ElectricCurrent.FromAmperes(a));
            worst = !judged.IsViolated && Limits.IsAbove(taken, given) ? Judgment.Unknown(step.NotStated) : judged;
        }

        return worst;
    }

    private double TakenByAll(IReadOnlyList<GroupInCondition> groups, double volts, Func<FedDevice, bool> draws)
    {
        RailVolts rail = _lowest.With(_box, volts);
        double amperes = 0;
        foreach (GroupInCondition group in groups) amperes += TakenBy(group, rail, volts, draws);
        return amperes;
    }

    // What has no operating point there is counted with the most that it asks for.
    private double TakenBy(GroupInCondition group, RailVolts rail, double volts, Func<FedDevice, bool> draws)
    {
        IReadOnlyList<FedDevice> devices = group.Group.Devices;
        var loads = new Load[devices.Count];
        for (int i = 0; i < loads.Length; i++) loads[i] = draws(devices[i]) ? group.Loads[i] : Load.None;
        double[] solved = FeedSolver.Solved(group.Circuit, rail, loads);
        double amperes = 0;
        for (int i = 0; i < loads.Length; i++)
        {
            if (ReferenceEquals(devices[i].Box, _box))
            {
                amperes += loads[i].AmperesAt(
                    solved[i] > 0 ? solved[i] : Math.Min(volts, devices[i].Device.Model.Starting?.DropOutVolts ?? volts));
            }
        }

        return amperes;
    }

    /// <summary>Which devices draw current while the voltage is neither up nor gone.</summary>
    /// <param name="VoltsOf">The voltage from which a device draws. [V]</param>
    /// <param name="Waits">Whether it waits all the same; null where none does.</param>
    /// <param name="IsUncertain">Whether it is not known whether it draws; null where it is known of all.</param>
    /// <param name="NotStated">What is not stated then.</param>
    private sealed record Step(
        Func<Starting, double> VoltsOf, Func<Starting, bool>? Waits, Func<Starting, bool>? IsUncertain, string NotStated)
    {
        internal bool Draws(FedDevice device, double volts) => device.Starting is Starting starting
            ? VoltsOf(starting) <= volts && Waits?.Invoke(starting) != true
            : device.Accepted?.LowestVolts <= volts;
    }
}
