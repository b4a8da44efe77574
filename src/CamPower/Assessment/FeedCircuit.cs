using System;
using System.Collections.Generic;
using System.Linq;
using CamPower.Circuits;
using CamPower.Sites;
using UnitsNet;

namespace CamPower.Assessment;

/// <summary>Circuit behind a group of outputs at one cable temperature. SI doubles; one load a device, in the group's order.</summary>
/// <remarks>The protective device of each output is in series with all that it feeds, as warm as the air in its box. One that is not
/// stated has no resistance. It is solved for any voltage of the boxes that feed it.</remarks>
internal abstract class FeedCircuit
{
    private const int Halvings = 40;

    private readonly AirOfBoxes _air;

    private protected FeedCircuit(FeedGroup group, double cableCelsius, AirOfBoxes air)
    {
        Group = group;
        CableCelsius = cableCelsius;
        _air = air;
    }

    /// <summary>What the circuit is of.</summary>
    internal FeedGroup Group { get; }

    /// <summary>Temperature of its cables. [°C]</summary>
    private protected double CableCelsius { get; }

    /// <summary>The simplest circuit that serves: closed form, tree of loops, or a network of both poles.</summary>
    internal static FeedCircuit Of(FeedGroup group, double cableCelsius, AirOfBoxes air)
    {
        return group.SharesReturns ? new MeshedCircuit(group, cableCelsius, air) : WithOwnReturns(group, cableCelsius, air);
    }

    /// <summary>One output as if each of its runs had a return conductor of its own.</summary>
    internal static FeedCircuit WithOwnReturns(OutputFeed feed, double cableCelsius, AirOfBoxes air) =>
        WithOwnReturns(FeedGroup.Alone(feed), cableCelsius, air);

    private static FeedCircuit WithOwnReturns(FeedGroup group, double cableCelsius, AirOfBoxes air)
    {
        OutputFeed feed = group.Feeds[0];
        return feed.Runs.Count == 1 && feed.Devices.Count == 1
            ? new SingleCircuit(group, cableCelsius, air)
            : new RadialCircuit(group, cableCelsius, air);
    }

    /// <summary>The least resistance of the protective device of an output: where devices see too much. [Ω]</summary>
    private protected static double LeastProtectionOhms(OutputFeed feed) => feed.Output.Protection?.LeastOhms ?? 0;

    /// <summary>Its greatest, in the air of its box: where devices go dark. [Ω]</summary>
    private protected double GreatestProtectionOhms(OutputFeed feed) =>
        feed.Output.Protection is ProtectiveDevice device ? device.GreatestOhms * device.ResistanceGrowthIn(_air.Of(feed.Box)) : 0;

    /// <summary>That device with its greatest resistance, as the part of the way that comes before the runs; null where it has
    /// none.</summary>
    private protected Joint? ProtectionOf(OutputFeed feed) => feed.Output.Protection is { GreatestOhms: > 0 } device
        ? new Joint($"{device} at {feed.Runs[0].From}", ElectricResistance.FromOhms(GreatestProtectionOhms(feed)))
        : null;

    /// <summary>That device as the first part of a voltage profile, with what is lost in it at a current; nothing where it has
    /// none.</summary>
    private protected IEnumerable<(RunPart, double)> LostInProtection(OutputFeed feed, Func<Joint, double> amperesIn) =>
        ProtectionOf(feed) is Joint part ? [(part, part.OhmsAt20C * amperesIn(part))] : [];

    /// <summary>The same circuit with its own working memory: it allocates nothing as it is solved, one thread at a time. A network that
    /// several boxes feed allocates all the same.</summary>
    internal virtual FeedCircuit OfOneThread() => this;

    /// <summary>Loop resistance of the whole way to a device, with the greatest of its output's protective device. [Ω]</summary>
    internal abstract double OhmsTo(int device);

    /// <summary>Fills in the voltage of every device, or 0 for each and word that there is no operating point.</summary>
    internal abstract bool TrySolve(RailVolts rail, Load[] loads, double[] deviceVolts);

    /// <summary>The lowest voltage of the source at which a device has at least a voltage, on the stable branch; null where others share
    /// its way. [V]</summary>
    internal virtual double? LowestSourceVolts(double deviceVolts, RailVolts rail, Load load) => null;

    /// <summary>What the devices of a box take at a voltage of it, above 0; infinite without an operating point. [A]</summary>
    internal virtual double AmperesAt(double volts, DistributionBox box, RailVolts rail, Load[] loads)
    {
        var deviceVolts = new double[loads.Length];
        if (!TrySolve(rail.With(box, volts), loads, deviceVolts)) return double.PositiveInfinity;
        double amperes = 0;
        for (int i = 0; i < loads.Length; i++)
        {
            if (ReferenceEquals(Group.Devices[i].Box, box)) amperes += loads[i].AmperesAt(deviceVolts[i]);
        }

        return amperes;
    }

    /// <summary>The most constant power for one device beside its other components, or null where it shares its way with others.
    /// [W]</summary>
    internal virtual double? MostWatts(int device, RailVolts rail, Load[] loads) => null;

    /// <summary>The voltage along the way to a device with everything on, from the lowest voltage of its box; null without an operating
    /// point, and where some run on the way has no return of its own.</summary>
    internal virtual VoltageProfile? ProfileTo(int device, RailVolts rail, Load[] loads)
    {
        var volts = new double[loads.Length];
        return TrySolve(rail, loads, volts)
            ? new VoltageProfile(rail.Of(Group.Devices[device].Box), LostInProtection(Group.Feeds[0], _ => AmperesOf(_ => true))
                .Concat(Group.Devices[device].Path.SelectMany(Parts)))
            : null;

        // Each run carries what the devices behind it draw, the protective device what all of them do.
        IEnumerable<(RunPart, double)> Parts(SiteRun run)
        {
            double amperes = AmperesOf(fed => fed.Path.Contains(run));
            return run.Run.Parts.Select(part => (part, part.OhmsAt(CableCelsius) * amperes));
        }

        double AmperesOf(Func<FedDevice, bool> isBehind) =>
            Enumerable.Range(0, volts.Length).Where(i => isBehind(Group.Devices[i])).Sum(i => loads[i].AmperesAt(volts[i]));
    }

    /// <summary>How the voltages with everything on, at the lowest supply voltage, are worked out.</summary>
    internal abstract Derivation Explain(RailVolts rail, Load[] loads);

    /// <summary>Voltage of one device while it draws nothing and the others do; 0 without an operating point. [V]</summary>
    internal virtual double UnloadedVolts(int device, RailVolts rail, Load[] loads) => VoltsWith(device, Load.None, rail, loads);

    /// <summary>Whether a device that turns on at a voltage can climb from there: the circuit gives more current than it takes.</summary>
    internal virtual bool CanClimbFrom(double volts, int device, RailVolts rail, Load[] loads)
    {
        // No more than a load may be: a turn-on voltage of nearly nothing asks for more amperes than any circuit has.
        double amperes = Math.Min(loads[device].AmperesAt(volts), Load.MostAmperes);
        Load taken = Load.ConstantCurrent(ElectricCurrent.FromAmperes(amperes));
        return VoltsWith(device, taken, rail, loads) >= volts;
    }

    /// <summary>The voltage from which a device climbs to the one where it settles, given one from which it does not. [V]</summary>
    internal virtual double UnstableVolts(int device, double sinking, double settled, RailVolts rail, Load[] loads) =>
        Bisection.LastHeld(settled, sinking, Halvings, volts => CanClimbFrom(volts, device, rail, loads));

    /// <summary>The voltage of every device where the constant power has grown to the most that the circuit carries, or null where it
    /// carries nothing. [V]</summary>
    internal double[]? VoltsAtCollapse(RailVolts rail, Load[] loads)
    {
        double[] volts = new double[loads.Length], trial = new double[loads.Length];
        if (!TrySolve(rail, Scaled(loads, 0), volts)) return null;
        double carried = 0, lost = 1;
        for (int halving = 0; halving < Halvings; halving++)
        {
            double middle = (carried + lost) / 2;
            if (TrySolve(rail, Scaled(loads, middle), trial)) (carried, volts, trial) = (middle, trial, volts);
            else lost = middle;
        }

        return volts;
    }

    /// <summary>Voltage of one device when its load is another; 0 without an operating point. [V]</summary>
    internal double VoltsWith(int device, Load instead, RailVolts rail, Load[] loads)
    {
        var changed = (Load[])loads.Clone();
        changed[device] = instead;
        var volts = new double[loads.Length];
        return TrySolve(rail, changed, volts) ? volts[device] : RunKernel.NoOperatingPoint;
    }

    private static Load[] Scaled(Load[] loads, double powerScale) => Array.ConvertAll(loads, load => load.WithPowerScaled(powerScale));
}
