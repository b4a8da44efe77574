using System;
using System.Collections.Generic;
using System.Linq;
using CamPower.Sites;
using CamPower.Supplies;
using UnitsNet;

namespace CamPower.Assessment;

/// <summary>What an inrush on a box does to the voltage of a device that runs on it: that of a neighbor, and its own where a component of
/// it is switched on.</summary>
/// <remarks>
/// An input that would draw its peak from a stiff source is a resistance to its capacitors: the voltage of the box over that peak. Cables,
/// protective devices and the source make the current smaller and, the charge being the same, let it last longer. An electronic limit holds
/// it down, and nothing is left for what else its output feeds. What the output capacitors of the supply give is left out. Each inrush
/// counts by itself.
/// </remarks>
internal sealed class InrushDips
{
    internal const string HoldUpNotStated = "hold-up time of the device";

    internal const string SupplyNotStated = "overload behavior of the supply";

    private readonly DistributionBox _box;
    private readonly IReadOnlyList<GroupInCondition> _groups;
    private readonly double _fullVolts;
    private readonly Dictionary<FedDevice, (int Group, int Index)> _places = [];
    private readonly Lazy<Dip[]> _dips;

    // Filled with the dips: those of each group, those that take the box down with them, and how many of which nothing is known.
    private readonly Dictionary<int, List<Dip>> _dipsOfGroup = [];
    private readonly List<Dip> _sagging = [];
    private int _unknown;

    internal InrushDips(DistributionBox box, IReadOnlyList<GroupInCondition> groups, double fullVolts)
    {
        _box = box;
        _groups = groups;
        _fullVolts = fullVolts;
        _dips = new Lazy<Dip[]>(Sorted);
    }

    private SupplyOutput Supply => _box.Supply.Output;

    /// <summary>The voltage of a device while that inrush flows which pulls it down most; where that is under its drop-out voltage, how
    /// long it lasts against how long the device runs on.</summary>
    internal Judgment On(FedDevice device)
    {
        Dip[] dips = _dips.Value;
        if (!_places.TryGetValue(device, out (int Group, int Index) place)) return default;
        int own = _dipsOfGroup.TryGetValue(place.Group, out List<Dip>? near) ? near.Count : 0,
            ofItself = near?.Count(dip => IsItsOwnStart(dip)) ?? 0;
        if (dips.Length == ofItself) return default;
        if (device.Device.Model.Starting is not Starting starting) return Judgment.Unknown("the drop-out voltage");
        double lowest = dips.Length > own ? _groups[place.Group].Solved[place.Index] : double.PositiveInfinity, longest = 0;
        if (near is not null)
        {
            foreach (Dip dip in near.Where(d => d.OwnVolts is not null && !IsItsOwnStart(d))) Take(dip.OwnVolts![place.Index], dip.Seconds);
        }

        foreach (Dip dip in _sagging.Where(d => d.Group != place.Group)) Take(dip.AtRail![place.Group][place.Index], dip.Seconds);
        Judgment judged = longest > 0
            ? OfDuration(longest, starting)
            : Judgment.AtLeast(lowest, starting.DropOutVolts, starting.DropOutVolts, v => ElectricPotential.FromVolts(v));
        bool isUnknown = _unknown > (near?.Count(d => d.OwnVolts is null && IsItsOwnStart(d)) ?? 0);
        return !judged.IsViolated && isUnknown ? Judgment.Unknown(SupplyNotStated) : judged;

        bool IsItsOwnStart(Dip dip) => !dip.IsSwitched && dip.Of == device;

        void Take(double volts, double seconds)
        {
            lowest = Math.Min(lowest, volts);
            if (Limits.IsBelow(volts, starting.DropOutVolts)) longest = Math.Max(longest, seconds);
        }
    }

    private static Judgment OfDuration(double seconds, Starting starting) => starting.HoldUpSeconds is double held
        ? Judgment.AtMost(seconds, held, held, s => Duration.FromSeconds(s))
        : Judgment.Unknown(HoldUpNotStated);

    private Dip[] Sorted()
    {
        Dip[] all = [.. AllDips()];
        foreach (Dip dip in all)
        {
            if (!_dipsOfGroup.TryGetValue(dip.Group, out List<Dip>? near)) _dipsOfGroup.Add(dip.Group, near = []);
            near.Add(dip);
            if (dip.AtRail is not null) _sagging.Add(dip);
            if (dip.OwnVolts is null) _unknown++;
        }

        return all;
    }

    private IEnumerable<Dip> AllDips()
    {
        var byRail = new Dictionary<double, double[][]>();
        double[] amperes = [.. _groups.Select(g => AmperesOf(g, g.Loads, g.Solved, _fullVolts))];
        double all = amperes.Sum();
        for (int g = 0; g < _groups.Count; g++)
        {
            IReadOnlyList<FedDevice> devices = _groups[g].Group.Devices;
            for (int i = 0; i < devices.Count; i++) _places[devices[i]] = (g, i);
        }

        foreach ((FedDevice device, (int group, int index)) in _places.Where(
            p => ReferenceEquals(p.Key.Box, _box) && p.Key.Accepted is not null).Select(p => (p.Key, p.Value)))
        {
            if (device.Device.Model.Inrush is Inrush starting)
            {
                yield return DipOf(device, group, index, starting, isSwitched: false, all - amperes[group], byRail);
            }

            bool isSwitchedOn = (_groups[group].Condition.On & (LoadComponents.Infrared | LoadComponents.Motor)) != LoadComponents.None;
            if (isSwitchedOn && device.Device.Model.SwitchedInrush is Inrush switched)
            {
                yield return DipOf(device, group, index, switched, isSwitched: true, all - amperes[group], byRail);
            }
        }
    }

    private Dip DipOf(FedDevice device, int group, int index, Inrush inrush, bool isSwitched, double others,
        Dictionary<double, double[][]> byRail)
    {
        GroupInCondition own = _groups[group];
        Load charging = Load.ConstantResistance(ElectricResistance.FromOhms(Math.Max(_fullVolts / inrush.PeakAmperes, 1e-9)));
        var loads = (Load[])own.Loads.Clone();
        loads[index] = isSwitched ? Added(loads[index], charging) : charging;
        double[] atFull = Solved(own, loads, _fullVolts);
        double seconds = inrush.Duration?.Seconds ?? (inrush.AmpereSquaredSeconds / (inrush.PeakAmperes * inrush.PeakAmperes));
        OutputFeed feed = own.Group.Feeds.First(f => f.Devices.Contains(device));
        double most = feed.Output.Protection?.MostAmperes ?? double.PositiveInfinity;
        bool isHeld = Limits.IsAbove(AmperesOf(own, loads, atFull, _fullVolts, feed), most);
        double beside = isHeld
            ? AmperesOf(own, own.Loads, own.Solved, _fullVolts) - AmperesOf(own, own.Loads, own.Solved, _fullVolts, feed)
            : 0;
        double taken = others + (isHeld ? beside + most : AmperesOf(own, loads, atFull, _fullVolts));
        double rail = _fullVolts;
        if (Limits.IsAbove(taken, RailBalance.LimitOf(Supply)))
        {
            // A supply that pulses or shuts down may do so within the inrush or not: nobody says.
            if (!RailBalance.IsKnown(Supply) || Supply.Overload!.Pulses || Supply.Overload.ShutsDown)
            {
                return new Dip(device, group, isSwitched, null, null, 0);
            }

            rail = RailWith(v => isHeld ? most : AmperesOf(own, loads, Solved(own, loads, v), v), without: isHeld ? null : own);
        }

        double[][]? atRail = rail.Equals(_fullVolts) ? null : AtRail(rail, byRail);
        double[] volts = !isHeld ? (atRail is null ? atFull : Solved(own, loads, rail))
            : [.. (atRail?[group] ?? own.Solved).Select((v, i) => feed.Devices.Contains(own.Group.Devices[i]) ? 0 : v)];
        double lasts = isHeld ? seconds * inrush.PeakAmperes / most
            : volts[index] > 0 ? seconds * _fullVolts / volts[index]
            : double.PositiveInfinity;
        return new Dip(device, group, isSwitched, volts, atRail, lasts);
    }

    private double[][] AtRail(double rail, Dictionary<double, double[][]> byRail)
    {
        if (!byRail.TryGetValue(rail, out double[][]? known)) byRail.Add(rail, known = [.. _groups.Select(g => Solved(g, g.Loads, rail))]);
        return known;
    }

    private double RailWith(Func<double, double> surge, GroupInCondition? without)
    {
        double volts = RailBalance.Between(v => RailBalance.GivenAt(Supply, _fullVolts, v), _fullVolts, _fullVolts, 0,
            v => surge(v) + _groups.Where(g => g != without).Sum(g => AmperesOf(g, g.Loads, Solved(g, g.Loads, v), v)));
        return double.IsNaN(volts) ? 0 : volts;
    }

    // Where the supply finds no balance its devices have nothing.
    private double[] Solved(GroupInCondition group, Load[] loads, double railVolts) =>
        railVolts > 0 ? FeedSolver.Solved(group.Circuit, group.Lowest.With(_box, railVolts), loads) : new double[loads.Length];

    // What of a group the box feeds, or one feed of it.
    private double AmperesOf(GroupInCondition group, Load[] loads, double[] volts, double railVolts, OutputFeed? feed = null)
    {
        double amperes = 0;
        for (int i = 0; i < loads.Length; i++)
        {
            FedDevice device = group.Group.Devices[i];
            if (ReferenceEquals(device.Box, _box) && feed?.Devices.Contains(device) != false)
            {
                amperes += loads[i].AmperesAt(volts[i] > 0 ? volts[i] : railVolts);
            }
        }

        return amperes;
    }

    // Nothing can be added to a load that is the larger of two: what it takes counts as a constant current.
    private Load Added(Load load, Load charging) =>
        (load.IsLargerOf ? Load.ConstantCurrent(ElectricCurrent.FromAmperes(load.AmperesAt(_fullVolts))) : load) + charging;

    /// <summary>One inrush.</summary>
    /// <param name="of">The device that draws it.</param>
    /// <param name="group">Its group.</param>
    /// <param name="isSwitched">Whether a component of it is switched on; otherwise it starts.</param>
    /// <param name="ownVolts">The voltage of every device of its group meanwhile; null where that is not known.</param>
    /// <param name="atRail">The voltage of every device of every other group; null where the box keeps its voltage.</param>
    /// <param name="seconds">How long it lasts.</param>
    private sealed class Dip(FedDevice of, int group, bool isSwitched, double[]? ownVolts, double[][]? atRail, double seconds)
    {
        internal FedDevice Of => of;

        internal int Group => group;

        internal bool IsSwitched => isSwitched;

        internal double[]? OwnVolts => ownVolts;

        internal double[][]? AtRail => atRail;

        internal double Seconds => seconds;
    }
}
