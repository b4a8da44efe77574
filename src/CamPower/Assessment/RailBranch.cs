using System;
using System.Collections.Generic;
using System.Linq;
using System.Threading;
using CamPower.Circuits;
using CamPower.Sites;

namespace CamPower.Assessment;

/// <summary>Current of a part of a box's circuits as the voltage of the box falls, and the devices that drop out on the way.</summary>
/// <remarks>
/// A device lets go where it has less than its drop-out voltage; where the circuit has no operating point any more, the one that was
/// nearest to it. One that does not declare the voltage never does.
/// </remarks>
internal sealed class RailBranch
{
    private const int Halvings = 48;
    private const double LeastShare = 1e-6, JustAbove = 1 + 1e-9;

    private readonly FeedCircuit _circuit;
    private readonly RailVolts _rail;
    private readonly DistributionBox _box;
    private readonly Load[] _loads;
    private readonly int[] _devices;
    private readonly CancellationToken _cancellationToken;

    // Two threads may work them out at once, and find the same.
    private List<Stage>? _stages;

    /// <param name="circuit">The circuit.</param>
    /// <param name="rail">What feeds it while nothing is overloaded.</param>
    /// <param name="box">The box whose voltage falls.</param>
    /// <param name="loads">What its devices take.</param>
    /// <param name="cancellationToken">Cancels it.</param>
    internal RailBranch(FeedCircuit circuit, RailVolts rail, DistributionBox box, Load[] loads, CancellationToken cancellationToken)
    {
        _cancellationToken = cancellationToken;
        _circuit = circuit;
        _rail = rail;
        _box = box;
        _loads = loads;
        _devices = circuit.Group.PlacesOf(box);
        Taking = TakingOf(circuit.Group.Devices);
        IsAnyStartUnknown = Array.Exists(Taking, device => device.Starting is null);
    }

    /// <summary>Whether it is what one output feeds.</summary>
    internal bool IsOf(BoxOutput output) => _circuit.Group.Feeds[0].Output == output;

    /// <summary>The voltages of the box at which something lets go, or nothing balances any more, the highest first. [V]</summary>
    internal IEnumerable<double> Steps => KnownStages.Select(stage => stage.ToVolts).Where(volts => volts > 0);

    /// <summary>What it takes at a voltage of the box, those off that let go on the way down to another one; infinite without an operating
    /// point. [A]</summary>
    internal double AmperesAt(double volts, double downToVolts) => volts > 0 && StageAt(downToVolts).Loads is Load[] on
        ? _circuit.AmperesAt(volts, _box, _rail, on)
        : double.PositiveInfinity;

    /// <summary>What those draw that are still on just above a voltage on the way down; without a balance what they ask for. [A]</summary>
    internal double AmperesOf(double volts, Func<FedDevice, bool> draws)
    {
        var on = (Load[])(StageAt(volts * JustAbove).Loads ?? _loads).Clone();
        for (int i = 0; i < on.Length; i++)
        {
            if (!draws(_circuit.Group.Devices[i])) on[i] = Load.None;
        }

        var deviceVolts = new double[on.Length];
        if (!TrySolve(volts, on, deviceVolts)) Array.Clear(deviceVolts, 0, deviceVolts.Length);
        double amperes = 0;
        foreach (int i in _devices) amperes += on[i].AmperesAt(deviceVolts[i] > 0 ? deviceVolts[i] : volts);
        return amperes;
    }

    /// <summary>The devices of the box that take anything at first.</summary>
    internal FedDevice[] Taking { get; }

    /// <summary>Whether nothing is declared of how one of them starts.</summary>
    internal bool IsAnyStartUnknown { get; }

    /// <summary>Adds the devices that take anything at first: on at a voltage on the way down, with what they have there, or off.</summary>
    internal void AddAt(double volts, List<(FedDevice Device, bool IsOn, double Volts)> found)
    {
        Load[]? on = volts > 0 ? StageAt(volts).Loads : null;
        double[]? deviceVolts = on is not null && Array.Exists(on, IsOn) ? new double[on.Length] : null;
        if (deviceVolts is not null && !TrySolve(volts, on!, deviceVolts)) deviceVolts = null;
        foreach (int i in _devices)
        {
            if (IsOn(_loads[i])) found.Add((_circuit.Group.Devices[i], deviceVolts is not null && IsOn(on![i]), deviceVolts?[i] ?? 0));
        }
    }

    private List<Stage> KnownStages => _stages ??= [.. Stages()];

    private static bool IsOn(Load load) => !ReferenceEquals(load, Load.None);

    private FedDevice[] TakingOf(IReadOnlyList<FedDevice> devices)
    {
        var taking = new List<FedDevice>(_devices.Length);
        foreach (int i in _devices)
        {
            if (IsOn(_loads[i])) taking.Add(devices[i]);
        }

        return [.. taking];
    }

    private Stage StageAt(double volts)
    {
        List<Stage> stages = KnownStages;
        int stage = 0;
        while (stage < stages.Count - 1 && volts <= stages[stage].ToVolts) stage++;
        return stages[stage];
    }

    private IEnumerable<Stage> Stages()
    {
        var on = (Load[])_loads.Clone();
        double full = _rail.Of(_box), from = full;
        if (on.Length == 1 && CanLetGo(0, on) && _circuit.LowestSourceVolts(DropOutOf(0), _rail, on[0]) is double lowest)
        {
            yield return new Stage(Math.Min(lowest, full), on);
            yield return new Stage(0, [Load.None]);
            yield break;
        }

        while (true)
        {
            if (IsHeldAt(LeastShare * full, on))
            {
                yield return new Stage(0, on);
                yield break;
            }

            double to = LastHeld(from, on, out double lost);
            yield return new Stage(to, (Load[])on.Clone());
            List<int> next = LettingGo(to, lost, on);
            if (next.Count == 0)
            {
                yield return new Stage(0, null);
                yield break;
            }

            foreach (int device in next) on[device] = Load.None;
            from = to;
        }
    }

    // The lowest voltage of the box, to rounding, at which nothing has to let go.
    private double LastHeld(double from, Load[] on, out double lost)
    {
        double held = from;
        lost = 0;
        for (int halving = 0; halving < Halvings; halving++)
        {
            double middle = (held + lost) / 2;
            if (IsHeldAt(middle, on)) held = middle;
            else lost = middle;
        }

        return held;
    }

    private bool IsHeldAt(double volts, Load[] on)
    {
        _cancellationToken.ThrowIfCancellationRequested();
        var deviceVolts = new double[on.Length];
        return TrySolve(volts, on, deviceVolts) && !Array.Exists(_devices, i => IsUnder(i, deviceVolts[i], on));
    }

    private List<int> LettingGo(double held, double lost, Load[] on)
    {
        var deviceVolts = new double[on.Length];
        if (TrySolve(lost, on, deviceVolts)) return [.. _devices.Where(i => IsUnder(i, deviceVolts[i], on))];
        if (!TrySolve(held, on, deviceVolts)) Array.Clear(deviceVolts, 0, deviceVolts.Length);
        return [.. _devices.Where(i => CanLetGo(i, on)).OrderByDescending(i => DropOutOf(i) / deviceVolts[i]).Take(1)];
    }

    private bool IsUnder(int device, double volts, Load[] on) => CanLetGo(device, on) && volts < DropOutOf(device);

    private bool CanLetGo(int device, Load[] on) => IsOn(on[device]) && _circuit.Group.Devices[device].Device.Model.Starting is not null;

    private double DropOutOf(int device) => _circuit.Group.Devices[device].Device.Model.Starting!.DropOutVolts;

    private bool TrySolve(double volts, Load[] on, double[] deviceVolts) =>
        volts > 0 && _circuit.TrySolve(_rail.With(_box, volts), on, deviceVolts);

    // Down to a voltage these loads are on; null where the circuit balances no more.
    private sealed class Stage(double toVolts, Load[]? loads)
    {
        internal double ToVolts => toVolts;

        internal Load[]? Loads => loads;
    }
}
