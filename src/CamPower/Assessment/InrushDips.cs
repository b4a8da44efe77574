using System;
using System.Collections.Generic;
using System.Linq;
using CamPower.Sites;
using CamPower.Supplies;
using UnitsNet;

namespace CamPower.Assessment;

/// <summary>Dips of the voltage at devices that run, by an inrush on the same box: that of a neighbor, or of a component of the device
/// itself that is switched on.</summary>
/// <remarks>
/// An input that would draw its peak from a stiff source is a resistance to its capacitors: the voltage of the box over that peak. Cables,
/// protective devices and the source make the current smaller and, the charge being the same, let it last longer. An electronic limit holds
/// it down, and nothing is left for what else its output feeds. What the output capacitors of the supply give is left out. Each inrush
/// counts by itself.
/// </remarks>
internal sealed class InrushDips
{
    private const string HoldUpNotStated = "hold-up time of the device";

    internal const string SupplyNotStated = "overload behavior of the supply";

    internal const string HoldNotStated = "shortest time for which the supply holds its limit";

    private readonly DistributionBox _box;
    private readonly IReadOnlyList<GroupInCondition> _groups;
    private readonly double _fullVolts;
    private readonly Lazy<Dictionary<FedDevice, (int Group, int Index)>> _places;
    private readonly Lazy<Dips> _dips;
    private readonly Lazy<RailLoad> _rail;

    /// <param name="box">The box.</param>
    /// <param name="groups">The groups that it feeds.</param>
    /// <param name="fullVolts">Its voltage while nothing pulls it down. [V]</param>
    /// <param name="branches">What each of the groups takes as that falls.</param>
    internal InrushDips(DistributionBox box, IReadOnlyList<GroupInCondition> groups, double fullVolts, Lazy<RailBranch[]> branches)
    {
        _box = box;
        _groups = groups;
        _fullVolts = fullVolts;
        _places = new Lazy<Dictionary<FedDevice, (int Group, int Index)>>(Places);
        _dips = new Lazy<Dips>(() => new Dips([.. AllDips()], groups.Count));
        _rail = new Lazy<RailLoad>(() => new RailLoad(v => RailBalance.GivenAt(Supply, fullVolts, v), fullVolts, branches.Value));
    }

    private SupplyOutput Supply => _box.Supply.Output;

    private string WhatIsNotStated => Supply.Overload is { Pulses: true } or { ShutsDown: true } ? HoldNotStated : SupplyNotStated;

    /// <summary>The voltage of a device while that inrush flows which pulls it down most; where that is under its drop-out voltage, how
    /// long it lasts against how long the device runs on.</summary>
    /// <param name="device">The device.</param>
    /// <param name="ofSwitched">Whether only what is switched on counts, and no start.</param>
    internal Judgment On(FedDevice device, bool ofSwitched = false)
    {
        Dips dips = _dips.Value;
        if (dips.Count == 0 || !_places.Value.TryGetValue(device, out (int Group, int Index) place)) return default;
        Dip[] near = dips.OfGroup[place.Group];
        bool areThereOthers = dips.Count > near.Length;
        if (!areThereOthers && IsNothingElse()) return default;
        if (device.Device.Model.Starting is not Starting starting) return Judgment.Unknown("the drop-out voltage");
        double lowest = areThereOthers ? _groups[place.Group].Solved[place.Index] : double.PositiveInfinity, longest = 0;
        int ownUnknown = 0;
        foreach (Dip dip in near)
        {
            if (IsItsOwnStart(dip)) ownUnknown += dip.OwnVolts is null ? 1 : 0;
            else if (ofSwitched && !dip.IsSwitched) continue;
            else if (dip.OwnVolts is not null) Take(dip.OwnVolts[place.Index], dip.Seconds);
        }

        foreach (Dip dip in dips.Sagging)
        {
            if (dip.Group != place.Group && (dip.IsSwitched || !ofSwitched)) Take(dip.AtRail![place.Group][place.Index], dip.Seconds);
        }

        Judgment judged = longest > 0
            ? OfDuration(longest, starting)
            : Judgment.AtLeast(lowest, starting.DropOutVolts, starting.DropOutVolts, v => ElectricPotential.FromVolts(v));

        // Below it without any inrush: its own state says so.
        if (judged.IsViolated && longest == 0) return default;
        return !judged.IsViolated && dips.Unknown > ownUnknown ? Judgment.Unknown(WhatIsNotStated) : judged;

        bool IsItsOwnStart(Dip dip) => !dip.IsSwitched && dip.Of == device;

        bool IsNothingElse()
        {
            foreach (Dip dip in near)
            {
                if (!IsItsOwnStart(dip)) return false;
            }

            return true;
        }

        void Take(double volts, double seconds)
        {
            lowest = Math.Min(lowest, volts);
            if (Limits.IsBelow(volts, starting.DropOutVolts)) longest = Math.Max(longest, seconds);
        }
    }

    private static Judgment OfDuration(double seconds, Starting starting) => starting.HoldUpSeconds is double held
        ? Judgment.AtMost(seconds, held, held, s => Duration.FromSeconds(s))
        : Judgment.Unknown(HoldUpNotStated);

    private Dictionary<FedDevice, (int Group, int Index)> Places()
    {
        var places = new Dictionary<FedDevice, (int, int)>();
        for (int g = 0; g < _groups.Count; g++)
        {
            IReadOnlyList<FedDevice> devices = _groups[g].Group.Devices;
            for (int i = 0; i < devices.Count; i++) places[devices[i]] = (g, i);
        }

        return places;
    }

    private IEnumerable<Dip> AllDips()
    {
        var byRail = new Dictionary<double, double[][]>();
        double[] amperes = [.. _groups.Select(g => AmperesOf(g, g.Loads, g.Solved, _fullVolts))];
        double all = amperes.Sum();
        foreach ((FedDevice device, (int group, int index)) in _places.Value.Select(p => (p.Key, p.Value)))
        {
            if (!ReferenceEquals(device.Box, _box) || device.Accepted is null) continue;
            if (device.Device.Model.Inrush is Inrush starting)
            {
                yield return DipOf(new Surge(device, group, index, starting, IsSwitched: false, all - amperes[group]), byRail);
            }

            if (_groups[group].Condition.HasSwitched && device.Device.Model.SwitchedInrush is Inrush switched)
            {
                yield return DipOf(new Surge(device, group, index, switched, IsSwitched: true, all - amperes[group]), byRail);
            }
        }
    }

    private Dip DipOf(Surge surge, Dictionary<double, double[][]> byRail)
    {
        GroupInCondition own = _groups[surge.Group];
        var loads = (Load[])own.Loads.Clone();
        Load charging = Load.ConstantResistance(ElectricResistance.FromOhms(Math.Max(_fullVolts / surge.Inrush.PeakAmperes, 1e-9)));
        loads[surge.Index] = surge.IsSwitched ? Added(loads[surge.Index], charging) : charging;
        double[] atFull = Solved(own, loads, _fullVolts);
        OutputFeed feed = own.Group.Feeds.First(f => f.Devices.Contains(surge.Of));
        double most = feed.Output.Protection?.MostAmperes ?? double.PositiveInfinity;
        return Limits.IsAbove(AmperesOf(own, loads, atFull, _fullVolts, feed), most)
            ? HeldDip(surge, feed, most, byRail)
            : FreeDip(surge, loads, atFull, byRail);
    }

    // An electronic limit holds it down, and nothing is left for what else its output feeds.
    private Dip HeldDip(Surge surge, OutputFeed feed, double most, Dictionary<double, double[][]> byRail)
    {
        GroupInCondition own = _groups[surge.Group];
        double beside = AmperesOf(own, own.Loads, own.Solved, _fullVolts) - AmperesOf(own, own.Loads, own.Solved, _fullVolts, feed);
        if (RailWith(surge.OthersAmperes + (beside + most), _ => most, without: null) is not double rail) return Dip.Unknown(surge);
        double[][]? atRail = AtRail(rail, byRail);
        double[] volts = [.. (atRail?[surge.Group] ?? own.Solved).Select((v, i) => feed.Devices.Contains(own.Group.Devices[i]) ? 0 : v)];
        return new Dip(surge, volts, atRail, surge.Inrush.SecondsAtPeak * surge.Inrush.PeakAmperes / most);
    }

    private Dip FreeDip(Surge surge, Load[] loads, double[] atFull, Dictionary<double, double[][]> byRail)
    {
        GroupInCondition own = _groups[surge.Group];
        double taken = surge.OthersAmperes + AmperesOf(own, loads, atFull, _fullVolts);
        double? settled = RailWith(taken, v => AmperesOf(own, loads, Solved(own, loads, v), v), without: surge.Group);
        if (settled is not double rail) return Dip.Unknown(surge);
        double[][]? atRail = AtRail(rail, byRail);
        double[] volts = atRail is null ? atFull : Solved(own, loads, rail);
        double lasts = volts[surge.Index] > 0
            ? surge.Inrush.SecondsAtPeak * _fullVolts / volts[surge.Index]
            : double.PositiveInfinity;
        return new Dip(surge, volts, atRail, lasts);
    }

    // The voltage of the box with the surge; null where that is not known: whether a supply that pulses or shuts down does so within the
    // inrush. Devices that it takes below their drop-out voltage drop out, and leave it more.
    private double? RailWith(double taken, Func<double, double> surgeAt, int? without)
    {
        if (!Limits.IsAbove(taken, RailBalance.LimitOf(Supply))) return _fullVolts;
        if (!RailBalance.IsKnown(Supply) || Supply.Overload!.Pulses || Supply.Overload.ShutsDown) return null;
        return _rail.Value.Rest(_fullVolts, surgeAt, without is int group ? _rail.Value.Branches[group] : null).Volts;
    }

    // Null where the box keeps its voltage.
    private double[][]? AtRail(double rail, Dictionary<double, double[][]> byRail)
    {
        if (rail.Equals(_fullVolts)) return null;
        if (!byRail.TryGetValue(rail, out double[][]? known)) byRail.Add(rail, known = [.. _groups.Select(g => Solved(g, g.Loads, rail))]);
        return known;
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

    /// <summary>All of them: those of each group, those that take the box down with them, and of how many nothing is known.</summary>
    private sealed class Dips(Dip[] all, int groups)
    {
        internal int Count => all.Length;

        internal Dip[][] OfGroup { get; } = ByGroup(all, groups);

        internal Dip[] Sagging { get; } = [.. all.Where(dip => dip.AtRail is not null)];

        internal int Unknown { get; } = all.Count(dip => dip.OwnVolts is null);

        private static Dip[][] ByGroup(Dip[] all, int groups)
        {
            ILookup<int, Dip> byGroup = all.ToLookup(dip => dip.Group);
            return [.. Enumerable.Range(0, groups).Select(group => byGroup[group].ToArray())];
        }
    }

    /// <summary>One inrush.</summary>
    /// <param name="Of">The device that draws it.</param>
    /// <param name="Group">Its group.</param>
    /// <param name="Index">Its place in the group.</param>
    /// <param name="Inrush">What it draws.</param>
    /// <param name="IsSwitched">Whether a component of it is switched on; otherwise it starts.</param>
    /// <param name="OthersAmperes">Current of the other groups of the box. [A]</param>
    private sealed record Surge(FedDevice Of, int Group, int Index, Inrush Inrush, bool IsSwitched, double OthersAmperes);

    /// <summary>The dip of the voltage by one inrush.</summary>
    /// <param name="surge">The inrush.</param>
    /// <param name="ownVolts">The voltage of every device of its group meanwhile; null where that is not known.</param>
    /// <param name="atRail">The voltage of every device of every other group; null where the box keeps its voltage.</param>
    /// <param name="seconds">How long it lasts.</param>
    private sealed class Dip(Surge surge, double[]? ownVolts, double[][]? atRail, double seconds)
    {
        internal FedDevice Of => surge.Of;

        internal int Group => surge.Group;

        internal bool IsSwitched => surge.IsSwitched;

        internal double[]? OwnVolts => ownVolts;

        internal double[][]? AtRail => atRail;

        internal double Seconds => seconds;

        internal static Dip Unknown(Surge surge) => new(surge, null, null, 0);
    }
}
