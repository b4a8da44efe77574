using System;
using System.Collections.Generic;
using System.Linq;
using CamPower.Circuits;
using CamPower.Commissioning;
using CamPower.Sites;
using CamPower.Tolerance;
using UnitsNet;

namespace CamPower.Evaluation;

/// <summary>A site as it was really built, with faults in it: solved as a network of both poles, which shares nothing with the diagnosis.</summary>
internal sealed class TrueSite
{
    private const double CutOhms = 1e8, BleedOhms = 1000;

    private readonly DiagnosisModel _model;
    private readonly UncertainParts _parts;
    private readonly double[] _x, _infrared;
    private readonly double _celsius;

    internal TrueSite(DiagnosisModel model, UncertainParts parts, double[] deviations, double[] infrared, double celsius)
    {
        _model = model;
        _parts = parts;
        _x = deviations;
        _infrared = infrared;
        _celsius = celsius + deviations[parts.Temperature];
    }

    /// <summary>What every point of every unit really has.</summary>
    internal UnitPrediction[] Solve(IReadOnlyList<Deviation> faults)
    {
        var all = new UnitPrediction[_model.Units];
        var supply = new SupplyVolts[_model.Boxes.Length];
        for (int box = 0; box < supply.Length; box++)
        {
            BoxModel model = _model.Boxes[box];
            double off = _x[_parts.SupplyOf(model.Box)];
            SupplyVolts volts = model.Volts(faults);
            supply[box] = new SupplyVolts(volts.Unloaded * (1 + off), volts.Day * (1 + off), volts.Night * (1 + off), volts.IsUnsteady);
            all[model.Unit] = BoxModel.Predict(supply[box]);
        }

        foreach (FeedModel feed in _model.Feeds) all[feed.Unit] = new UnitPrediction(feed.Points, feed.Devices);
        foreach (FeedGroup group in _model.Site.Feeds) Solve(group, faults, supply, all);
        Swap(faults, all);
        return all;
    }

    private static string Plus(string name) => name + " +";

    private static string Minus(string name) => name + " -";

    private void Solve(FeedGroup group, IReadOnlyList<Deviation> faults, SupplyVolts[] supply, UnitPrediction[] all)
    {
        FeedModel[] feeds = [.. group.Feeds.Select(f => _model.Feeds.First(m => ReferenceEquals(m.Feed, f)))];
        Dictionary<int, FeedFaults> of = feeds.ToDictionary(f => f.Unit, f => FeedFaults.Of(faults, f.Unit, f.Runs, f.Devices));
        foreach (FeedModel feed in feeds)
        {
            Dead(group, feeds, of, feed, feed.OutputPoint(UnitPoints.Insulation), null, all[feed.Unit]);
            for (int device = 0; device < feed.Devices; device++)
            {
                Dead(group, feeds, of, feed, FeedModel.PointOf(device, UnitPoints.Loop), feed.Feed.Devices[device].Device.At, all[feed.Unit]);
            }

            for (int bare = 0; bare < feed.Bare.Length; bare++)
            {
                Dead(group, feeds, of, feed, feed.PointAt(bare, UnitPoints.Loop), feed.Feed.Runs[feed.Bare[bare]].To, all[feed.Unit]);
            }
        }

        Live(group, feeds, of, v => v.Unloaded, supply, LoadComponents.None, isUnplugged: true, all);
        Live(group, feeds, of, v => v.Day, supply, LoadComponents.None, isUnplugged: false, all);
        Live(group, feeds, of, v => v.Night, supply, LoadComponents.Infrared, isUnplugged: false, all);
        foreach (FeedModel feed in feeds.Where(f => supply[f.Box - _model.FirstBox].IsUnsteady)) MarkUnsteady(feed, all[feed.Unit]);
    }

    private static void MarkUnsteady(FeedModel feed, UnitPrediction truth)
    {
        for (int device = 0; device < feed.Devices; device++)
        {
            truth.IsUnsteady[FeedModel.PointOf(device, UnitPoints.Day)] = truth.IsUnsteady[FeedModel.PointOf(device, UnitPoints.Night)] = true;
            if (truth.ByDay[device] == DeviceState.Up) truth.ByDay[device] = DeviceState.Restarting;
            if (truth.ByNight[device] == DeviceState.Up) truth.ByNight[device] = DeviceState.Restarting;
        }

        for (int bare = 0; bare < feed.Bare.Length; bare++)
        {
            truth.IsUnsteady[feed.PointAt(bare, UnitPoints.Day)] = truth.IsUnsteady[feed.PointAt(bare, UnitPoints.Night)] = true;
        }

        foreach (int point in (int[])[UnitPoints.OutputDay, UnitPoints.OutputNight, UnitPoints.AmperesDay, UnitPoints.AmperesNight])
        {
            truth.IsUnsteady[feed.OutputPoint(point)] = true;
        }
    }

    // The run of another output, or none, hangs here: no loop closes, and the current is the other's.
    private void Swap(IReadOnlyList<Deviation> faults, UnitPrediction[] all)
    {
        var amperes = all.Select((p, unit) => unit < _model.FirstBox
            ? (Day: p.Values[_model.Feeds[unit].OutputPoint(UnitPoints.AmperesDay)], Night: p.Values[_model.Feeds[unit].OutputPoint(UnitPoints.AmperesNight)])
            : default).ToArray();
        foreach (Deviation swapped in faults.Where(f => f.Cause == Cause.WrongOutput))
        {
            FeedModel feed = _model.Feeds[swapped.Unit];
            double[] values = all[swapped.Unit].Values;
            for (int device = 0; device < feed.Devices; device++) values[FeedModel.PointOf(device, UnitPoints.Loop)] = FeedFaults.OpenOhms;
            for (int bare = 0; bare < feed.Bare.Length; bare++) values[feed.PointAt(bare, UnitPoints.Loop)] = FeedFaults.OpenOhms;
            (values[feed.OutputPoint(UnitPoints.AmperesDay)], values[feed.OutputPoint(UnitPoints.AmperesNight)]) =
                swapped.Place < 0 ? default : amperes[swapped.Place];
        }
    }

    // The source of an ohmmeter at the output; the conductors joined at a junction, or nowhere.
    private void Dead(FeedGroup group, FeedModel[] feeds, Dictionary<int, FeedFaults> of, FeedModel feed, int point, string? at, UnitPrediction truth)
    {
        DcNetworkBuilder builder = Wires(group, feeds, of, isDead: true);
        string minus = Minus("box " + feed.Feed.Box.Name);
        builder.AddSource("meter", Plus($"output {feed.Unit}"), minus, ElectricPotential.FromVolts(1));
        if (at is not null) builder.AddBranch("link", Plus(at), Minus(at), ElectricResistance.FromMicroohms(1));

        // The other outputs of a group are off their terminals too, and other boxes apart.
        foreach (FeedModel other in feeds.Where(f => f != feed))
        {
            string minusOfOther = Minus("box " + other.Feed.Box.Name);
            builder.AddBranch($"off {other.Unit}", Plus($"output {other.Unit}"), minusOfOther, ElectricResistance.FromOhms(CutOhms));
        }

        foreach (DistributionBox box in group.Boxes.Where(b => !ReferenceEquals(b, feed.Feed.Box)))
        {
            builder.AddBranch($"apart {box.Name}", minus, Minus("box " + box.Name), ElectricResistance.FromOhms(CutOhms));
        }

        NetworkSolution solution = builder.Build(minus).Solve();
        double amperes = solution.CurrentFrom("meter").Amperes;
        double ohms = amperes > 1 / FeedFaults.OpenOhms ? 1 / amperes : FeedFaults.OpenOhms;
        truth.Values[point] = ohms;
    }

    private DcNetworkBuilder Wires(FeedGroup group, FeedModel[] feeds, Dictionary<int, FeedFaults> of, bool isDead)
    {
        var builder = new DcNetworkBuilder();
        foreach (FeedModel feed in feeds)
        {
            FeedFaults faults = of[feed.Unit];
            for (int run = 0; run < feed.Runs; run++) AddRun(builder, feed, run, faults, isDead);
            for (int device = 0; device < feed.Devices && !isDead; device++)
            {
                if (!double.IsInfinity(faults.ShieldOhms[device]))
                {
                    builder.AddBranch($"stray {feed.Unit} {device}", Minus(feed.Feed.Devices[device].Device.At), Minus("box " + feed.Feed.Box.Name),
                        ElectricResistance.FromOhms(faults.ShieldOhms[device]));
                }
            }
        }

        // Unplugged cameras leave their shields.
        if (isDead) return builder;
        foreach (VideoLink link in group.Links)
        {
            string at = group.Devices.First(d => d.Device.Name == link.Device).Device.At;
            builder.AddBranch($"shield of {link.Device}", Minus(at), Minus("ground " + link.Ground), link.ShieldResistance);
        }

        foreach (GroundBond bond in group.Bonds) builder.AddBranch(bond.ToString(), Minus("ground " + bond.Ground), Minus("box " + bond.Box), bond.Resistance);
        return builder;
    }

    private void AddRun(DcNetworkBuilder builder, FeedModel feed, int run, FeedFaults faults, bool isDead)
    {
        SiteRun laid = feed.Feed.Runs[run];
        string from = laid.From.JunctionName ?? $"output {feed.Unit}", negative = laid.ReturnAt ?? laid.From.JunctionName ?? "box " + feed.Feed.Box.Name;
        (double going, double back) = OhmsOf(laid);
        going = (going * faults.RunFactor[run]) + faults.RunOhms[run] + (faults.IsOpen[run] ? CutOhms - 1000 : 0);
        builder.AddBranch($"out {laid.To}", Plus(from), Plus(laid.To), DcNetworkBuilder.Snapped(going));
        builder.AddBranch($"back {laid.To}", Minus(negative), Minus(laid.To), DcNetworkBuilder.Snapped(back * faults.RunFactor[run]));
        if (faults.IsOpen[run] && !isDead) builder.AddBranch($"bleed {laid.To}", Plus(laid.To), Minus(laid.To), ElectricResistance.FromOhms(BleedOhms));
        if (!double.IsInfinity(faults.LeakOhms[run])) builder.AddBranch($"leak {laid.To}", Plus(laid.To), Minus(laid.To), ElectricResistance.FromOhms(faults.LeakOhms[run]));
    }

    private (double Going, double Back) OhmsOf(SiteRun laid)
    {
        double going = 0, back = 0, length = 1 + _x[_parts.LengthOf(laid)];
        int joints = _parts.JointsOf(laid);
        foreach (RunPart part in laid.Run.Parts)
        {
            double factor = part is CableSegment segment ? length * (1 + _x[_parts.ReelOf(segment.Cable)]) : joints < 0 ? 1 : 1 + _x[joints];
            going += part.OutgoingOhmsAt(_celsius) * factor;
            back += laid.ReturnAt is null ? part.ReturnOhmsAt(_celsius) * factor : 0;
        }

        return (going, back);
    }

    private void Live(FeedGroup group, FeedModel[] feeds, Dictionary<int, FeedFaults> of, Func<SupplyVolts, double> state, SupplyVolts[] supply, LoadComponents on,
        bool isUnplugged, UnitPrediction[] all)
    {
        DcNetworkBuilder builder = Wires(group, feeds, of, isDead: false);
        foreach (FeedModel feed in feeds)
        {
            double protection = feed.Feed.Output.Protection is ProtectiveDevice device && _parts.ProtectionOf(feed.Feed.Box, feed.Feed.Output) is int part and >= 0
                ? device.LeastOhms + (_x[part] * (device.GreatestOhms - device.LeastOhms))
                : feed.Feed.Output.Protection?.LeastOhms ?? 0;
            bool isOpen = of[feed.Unit].IsProtectionOpen;
            string minus = Minus("box " + feed.Feed.Box.Name);
            builder.AddSource($"supply {feed.Unit}", Plus($"supply {feed.Unit}"), minus, ElectricPotential.FromVolts(state(supply[feed.Box - _model.FirstBox])));
            builder.AddBranch($"protection {feed.Unit}", Plus($"supply {feed.Unit}"), Plus($"output {feed.Unit}"), DcNetworkBuilder.Snapped(isOpen ? CutOhms - 1000 : protection));
            if (isOpen) builder.AddBranch($"dark {feed.Unit}", Plus($"output {feed.Unit}"), minus, ElectricResistance.FromOhms(BleedOhms));
            for (int d = 0; d < feed.Devices; d++)
            {
                string at = feed.Feed.Devices[d].Device.At;
                builder.AddLoad(LoadName(feed, d), Plus(at), Minus(at), Load.None);
            }
        }

        DcNetwork network = builder.Build(Minus("box " + feeds[0].Feed.Box.Name));
        var drawing = new Dictionary<string, Load>(StringComparer.Ordinal);
        foreach (FeedModel feed in feeds)
        {
            for (int d = 0; d < feed.Devices; d++) drawing[LoadName(feed, d)] = isUnplugged ? Load.None : DrawOf(feed, d, of[feed.Unit], on);
        }

        NetworkSolution solution = Settle(network, feeds, drawing, on, all);
        foreach (FeedModel feed in feeds) Fill(feed, of[feed.Unit], solution, on, isUnplugged, all[feed.Unit]);
    }

    private static string LoadName(FeedModel feed, int device) => $"camera {feed.Unit} {device}";

    private Load DrawOf(FeedModel feed, int device, FeedFaults faults, LoadComponents on)
    {
        if (faults.IsReversed[device] || faults.IsProtectionOpen || IsCut(feed, feed.Feed.Devices[device].RunIndex, faults)) return Load.None;
        Device model = faults.OtherDevice[device] is int other ? _model.Models[other] : feed.Feed.Devices[device].Device.Model;
        Load load = model.Draw.LoadWith(on);
        SiteDevice placed = feed.Feed.Devices[device].Device;
        double own = on == LoadComponents.None ? 0 : _infrared[_model.Site.Devices.TakeWhile(d => !ReferenceEquals(d, placed)).Count()];
        double scale = faults.DrawFactor[device] * Math.Max(0.02, 1 + _x[_parts.DrawOf(placed)] + own);
        return load.IsLargerOf
            ? Load.LargerOf(Power.FromWatts(scale * load.Watts), ElectricCurrent.FromAmperes(scale * load.Amperes))
            : Load.ConstantPower(Power.FromWatts(scale * load.Watts));
    }

    private static bool IsCut(FeedModel feed, int end, FeedFaults faults)
    {
        for (int run = end; run >= 0; run = feed.Feed.Parents[run])
        {
            if (faults.IsOpen[run]) return true;
        }

        return false;
    }

    // What is under its drop-out voltage goes off, the lowest first.
    private static NetworkSolution Settle(DcNetwork network, FeedModel[] feeds, Dictionary<string, Load> drawing, LoadComponents on, UnitPrediction[] all)
    {
        while (true)
        {
            NetworkSolution solution = network.WithLoads(drawing).Solve();
            (FeedModel? Feed, int Device, double Share) worst = (null, 0, 1);
            foreach (FeedModel feed in feeds)
            {
                for (int d = 0; d < feed.Devices; d++)
                {
                    Load load = drawing[LoadName(feed, d)];
                    if (load == Load.None) continue;
                    double share = solution.HasOperatingPoint ? solution.AtLoad(LoadName(feed, d)).Voltage.Volts / feed.Feed.Devices[d].Starting!.DropOutVolts : -load.Watts;
                    if (share < worst.Share) worst = (feed, d, share);
                }
            }

            if (worst.Feed is null) return solution;
            drawing[LoadName(worst.Feed, worst.Device)] = Load.None;
            UnitPrediction truth = all[worst.Feed.Unit];
            (on == LoadComponents.None ? truth.ByDay : truth.ByNight)[worst.Device] = DeviceState.Restarting;
            truth.IsUnsteady[FeedModel.PointOf(worst.Device, on == LoadComponents.None ? UnitPoints.Day : UnitPoints.Night)] = true;
        }
    }

    private static void Fill(FeedModel feed, FeedFaults faults, NetworkSolution solution, LoadComponents on, bool isUnplugged, UnitPrediction truth)
    {
        bool isNight = on != LoadComponents.None;
        string minus = Minus("box " + feed.Feed.Box.Name);
        double output = solution.VoltageAt(Plus($"output {feed.Unit}")).Volts - solution.VoltageAt(minus).Volts;
        truth.Values[feed.OutputPoint(isUnplugged ? UnitPoints.OutputUnplugged : isNight ? UnitPoints.OutputNight : UnitPoints.OutputDay)] = faults.IsProtectionOpen ? 0 : output;
        if (!isUnplugged)
        {
            double amperes = faults.IsProtectionOpen ? 0 : solution.CurrentIn($"protection {feed.Unit}").Amperes;
            truth.Values[feed.OutputPoint(isNight ? UnitPoints.AmperesNight : UnitPoints.AmperesDay)] = amperes;
        }

        for (int bare = 0; bare < feed.Bare.Length; bare++)
        {
            string end = feed.Feed.Runs[feed.Bare[bare]].To;
            bool isDead = faults.IsProtectionOpen || IsCut(feed, feed.Bare[bare], faults);
            truth.Values[feed.PointAt(bare, isUnplugged ? UnitPoints.Plug : isNight ? UnitPoints.Night : UnitPoints.Day)] =
                isDead ? 0 : solution.VoltageAt(Plus(end)).Volts - solution.VoltageAt(Minus(end)).Volts;
        }

        for (int d = 0; d < feed.Devices; d++)
        {
            string at = feed.Feed.Devices[d].Device.At;
            bool isDark = faults.IsProtectionOpen || IsCut(feed, feed.Feed.Devices[d].RunIndex, faults);
            double volts = isDark ? 0 : solution.VoltageAt(Plus(at)).Volts - solution.VoltageAt(Minus(at)).Volts;
            truth.Values[FeedModel.PointOf(d, isUnplugged ? UnitPoints.Plug : isNight ? UnitPoints.Night : UnitPoints.Day)] = faults.IsReversed[d] ? -volts : volts;
            if (isUnplugged) continue;
            DeviceState[] states = isNight ? truth.ByNight : truth.ByDay;
            if (isDark || volts < 1) states[d] = DeviceState.NeverUp;
            else if (faults.IsReversed[d]) states[d] = DeviceState.WrongCurrent;
            truth.HasShieldCurrent[d] = !double.IsInfinity(faults.ShieldOhms[d]);
            if (isNight) truth.IsDim[d] = states[d] == DeviceState.Up && volts < feed.Feed.Devices[d].Accepted!.LowestVolts;
        }
    }
}
