using CamPower.Circuits;
using CamPower.Sites;
using UnitsNet;

namespace CamPower.Assessment;

/// <summary>One run with one device at its end, in closed form.</summary>
internal sealed class SingleCircuit : FeedCircuit
{
    private readonly double _ohmsAtLowest, _ohmsAtHighest;

    internal SingleCircuit(FeedGroup group, double cableCelsius)
        : base(group, cableCelsius)
    {
        OutputFeed feed = group.Feeds[0];
        double run = feed.Runs[0].Run.OhmsAt(cableCelsius);
        _ohmsAtLowest = run + ProtectionOhms(feed, SupplyLevel.Lowest);
        _ohmsAtHighest = run + ProtectionOhms(feed, SupplyLevel.Highest);
    }

    internal override double OhmsTo(int device) => _ohmsAtLowest;

    internal override bool TrySolve(SupplyLevel level, Load[] loads, double[] deviceVolts)
    {
        deviceVolts[0] = RunKernel.LoadVolts(Source(level), Ohms(level), loads[0]);
        return deviceVolts[0] > RunKernel.NoOperatingPoint;
    }

    internal override Derivation Explain(Load[] loads)
    {
        CableRun run = Group.Feeds[0].Runs[0].Run;
        CableRun way = ProtectionOf(Group.Feeds[0]) is Joint protection ? new CableRun([protection, .. run.Parts]) : run;
        return new PreparedRun(way, CableCelsius).Feed(loads[0], ElectricPotential.FromVolts(Source(SupplyLevel.Lowest))).Explain();
    }

    internal override double? MostWatts(int device, SupplyLevel level, Load[] loads) => RunKernel.MostWatts(Source(level), Ohms(level), loads[0]);

    internal override double UnloadedVolts(int device, SupplyLevel level, Load[] loads) => Source(level);

    // The unstable voltage is known here: above it the circuit gives more current than the device takes.
    internal override bool CanClimbFrom(double volts, int device, SupplyLevel level, Load[] loads)
    {
        double settled = RunKernel.LoadVolts(Source(level), Ohms(level), loads[0]);
        return settled > 0 && volts >= UnstableVolts(device, volts, settled, level, loads);
    }

    internal override double UnstableVolts(int device, double sinking, double settled, SupplyLevel level, Load[] loads) =>
        RunKernel.UnstableVolts(Source(level), Ohms(level), loads[0], settled);

    private double Ohms(SupplyLevel level) => level == SupplyLevel.Lowest ? _ohmsAtLowest : _ohmsAtHighest;

    private double Source(SupplyLevel level) => SupplyVolts(Group.Feeds[0].Box, level);
}
