using System;
using CamPower.Circuits;
using CamPower.Sites;
using UnitsNet;

namespace CamPower.Assessment;

/// <summary>One run with one device at its end, in closed form.</summary>
internal sealed class SingleCircuit : FeedCircuit
{
    private const double AboveFold = 1 + 1e-6;

    private readonly double _ohmsAtLowest, _ohmsAtHighest;
    private readonly DistributionBox _box;

    internal SingleCircuit(FeedGroup group, double cableCelsius, AirOfBoxes air)
        : base(group, cableCelsius, air)
    {
        OutputFeed feed = group.Feeds[0];
        _box = feed.Box;
        double run = feed.Runs[0].Run.OhmsAt(cableCelsius);
        _ohmsAtLowest = run + GreatestProtectionOhms(feed);
        _ohmsAtHighest = run + LeastProtectionOhms(feed);
    }

    internal override double OhmsTo(int device) => _ohmsAtLowest;

    internal override bool TrySolve(RailVolts rail, Load[] loads, double[] deviceVolts)
    {
        deviceVolts[0] = RunKernel.LoadVolts(Source(rail), Ohms(rail), loads[0]);
        return deviceVolts[0] > RunKernel.NoOperatingPoint;
    }

    // Whatever feeds it is its one box.
    internal override double AmperesAt(double volts, DistributionBox box, RailVolts rail, Load[] loads)
    {
        double atDevice = RunKernel.LoadVolts(volts, Ohms(rail), loads[0]);
        return atDevice > RunKernel.NoOperatingPoint ? loads[0].AmperesAt(atDevice) : double.PositiveInfinity;
    }

    internal override Derivation Explain(RailVolts rail, Load[] loads)
    {
        CableRun run = Group.Feeds[0].Runs[0].Run;
        CableRun way = ProtectionOf(Group.Feeds[0]) is Joint protection ? new CableRun([protection, .. run.Parts]) : run;
        return new PreparedRun(way, CableCelsius).Feed(loads[0], ElectricPotential.FromVolts(Source(rail))).Explain();
    }

    // Behind R a load of P, I and G has its least source voltage at V² = R·P/(1 + R·G), where the two branches meet: just above that.
    internal override double? LowestSourceVolts(double deviceVolts, RailVolts rail, Load load)
    {
        if (load.IsLargerOf) return null;
        double ohms = Ohms(rail), fold = Math.Sqrt(ohms * load.Watts / (1 + (ohms * load.Siemens)));
        double volts = Math.Max(deviceVolts, fold * AboveFold);
        return volts + (ohms * load.AmperesAt(volts));
    }

    internal override double? MostWatts(int device, RailVolts rail, Load[] loads) =>
        RunKernel.MostWatts(Source(rail), Ohms(rail), loads[0]);

    internal override double UnloadedVolts(int device, RailVolts rail, Load[] loads) => Source(rail);

    // The unstable voltage is known here: above it the circuit gives more current than the device takes.
    internal override bool CanClimbFrom(double volts, int device, RailVolts rail, Load[] loads)
    {
        double settled = RunKernel.LoadVolts(Source(rail), Ohms(rail), loads[0]);
        return settled > 0 && volts >= UnstableVolts(device, volts, settled, rail, loads);
    }

    internal override double UnstableVolts(int device, double sinking, double settled, RailVolts rail, Load[] loads) =>
        RunKernel.UnstableVolts(Source(rail), Ohms(rail), loads[0], settled);

    private double Ohms(RailVolts rail) => rail.IsHighest ? _ohmsAtHighest : _ohmsAtLowest;

    private double Source(RailVolts rail) => rail.Of(_box);
}
