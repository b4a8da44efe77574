using System;
using System.Collections.Generic;
using System.Linq;
using CamPower.Sites;
using CamPower.Supplies;
using UnitsNet;

namespace CamPower.Assessment;

/// <summary>What the inrush of one device does to the voltage of another that runs, on the same box.</summary>
/// <remarks>
/// An input that would draw its peak from a stiff source is a resistance to its capacitors: the voltage of the box over that peak. Cables, protective devices and the
/// source make the current smaller and, the charge being the same, let it last longer. What the output capacitors of the supply give is left out.
/// </remarks>
internal sealed class InrushDips(DistributionBox box, IReadOnlyList<GroupInCondition> groups, double fullVolts, bool isOverloaded)
{
    private SupplyOutput Supply => box.Supply.Output;

    /// <summary>The voltage of a device while that neighbor charges which pulls it down most; where that is under its drop-out voltage, how long it lasts against how long the device runs on.</summary>
    internal Judgment On(FedDevice device)
    {
        FedDevice[] neighbors = [.. groups.SelectMany(g => g.Group.Devices).Where(d => d != device && ReferenceEquals(d.Box, box) && d.Accepted is not null && d.Device.Model.Inrush is not null)];
        if (neighbors.Length == 0 || isOverloaded) return default;
        if (device.Device.Model.Starting is not Starting starting) return Judgment.Unknown("the drop-out voltage");
        var dips = new List<(double Volts, double Seconds)>();
        foreach (FedDevice neighbor in neighbors)
        {
            if (DipOf(device, neighbor) is not (double, double) dip) return Judgment.Unknown("what the supply does when an inrush exceeds its limit");
            dips.Add(dip);
        }

        double lowest = dips.Min(d => d.Volts);
        if (!Limits.IsBelow(lowest, starting.DropOutVolts)) return Judgment.AtLeast(lowest, starting.DropOutVolts, starting.DropOutVolts, v => ElectricPotential.FromVolts(v));
        double longest = dips.Where(d => Limits.IsBelow(d.Volts, starting.DropOutVolts)).Max(d => d.Seconds);
        return starting.HoldUpSeconds is double held
            ? Judgment.AtMost(longest, held, held, s => Duration.FromSeconds(s))
            : Judgment.Unknown("how long it runs on without power");
    }

    private (double Volts, double Seconds)? DipOf(FedDevice device, FedDevice neighbor)
    {
        Inrush inrush = neighbor.Device.Model.Inrush!;
        double ohms = fullVolts / inrush.PeakAmperes;
        if (RailWhile(neighbor, ohms) is not double volts) return null;
        (double at, double charging) = (VoltsOf(device, neighbor, ohms, volts), VoltsOf(neighbor, neighbor, ohms, volts));
        double seconds = inrush.Duration?.Seconds ?? (inrush.AmpereSquaredSeconds / (inrush.PeakAmperes * inrush.PeakAmperes));
        return (at, charging > 0 ? seconds * fullVolts / charging : double.PositiveInfinity);
    }

    // A supply that pulses or shuts down may do so within the inrush or not: nobody says.
    private double? RailWhile(FedDevice neighbor, double ohms)
    {
        if (!Limits.IsAbove(TakenAt(fullVolts), RailBalance.LimitOf(Supply))) return fullVolts;
        if (!RailBalance.IsKnown(Supply) || Supply.Overload!.Pulses || Supply.Overload.ShutsDown) return null;
        double volts = RailBalance.Between(Supply, fullVolts, fullVolts, 0, TakenAt);
        return double.IsNaN(volts) ? 0 : volts;

        double TakenAt(double railVolts) => groups.Sum(g => TakenBy(g, railVolts));

        double TakenBy(GroupInCondition group, double railVolts)
        {
            Load[] loads = Charging(group, neighbor, ohms);
            double[] solved = FeedSolver.Solved(group.Circuit, group.Lowest.With(box, railVolts), loads);
            double amperes = 0;
            for (int i = 0; i < loads.Length; i++)
            {
                if (ReferenceEquals(group.Group.Devices[i].Box, box)) amperes += loads[i].AmperesAt(solved[i] > 0 ? solved[i] : railVolts);
            }

            return amperes;
        }
    }

    private double VoltsOf(FedDevice device, FedDevice neighbor, double ohms, double railVolts)
    {
        GroupInCondition group = groups.First(g => g.Group.Devices.Contains(device));
        if (!(railVolts > 0)) return 0;
        return FeedSolver.Solved(group.Circuit, group.Lowest.With(box, railVolts), Charging(group, neighbor, ohms))[group.Group.Devices.ToList().IndexOf(device)];
    }

    private static Load[] Charging(GroupInCondition group, FedDevice neighbor, double ohms) =>
        [.. group.Loads.Select((load, i) => group.Group.Devices[i] == neighbor ? Load.ConstantResistance(ElectricResistance.FromOhms(Math.Max(ohms, 1e-9))) : load)];
}
