using FsCheck;
using FsCheck.Fluent;
using UnitsNet;

namespace CamPower.Tests.Circuits;

/// <summary>Physical cases: the load is a share of the most that the run can carry, so that the edge is visited from both sides.</summary>
public static class FeedCases
{
    // To both sides of the limit, and far from it.
    private static readonly double[] SharesOfLimit = [0, 1e-9, 1e-3, 0.1, 0.5, 0.9, 0.99, 0.9999, 0.999999, 1.000001, 1.01, 1.5, 10];

    // Of Vs/R: above 1 the current component alone takes all of the source voltage.
    private static readonly double[] CurrentComponents = [0, 0, 0, 0.01, 0.2, 0.5, 0.6, 0.9, 0.999, 1.001, 1.2, 2];

    private static readonly double[] ResistanceComponents = [0, 0, 0, 0.01, 0.3, 3];

    public static Arbitrary<FeedCase> Case() => (
        from millivolts in Gen.Choose(1_000, 120_000)
        from milliohms in Gen.Choose(1, 100_000)
        from power in Gen.Elements(SharesOfLimit)
        from current in Gen.Elements(CurrentComponents)
        from resistance in Gen.Elements(ResistanceComponents)
        from larger in Gen.Choose(0, 3)
        let volts = millivolts / 1e3
        let ohms = milliohms / 1e3
        select new FeedCase(volts, ohms, larger == 0
            ? Load.LargerOf(Power.FromWatts(power * volts * volts / (4 * ohms)), ElectricCurrent.FromAmperes(current * volts / ohms))
            : Mixed(volts, ohms, power, current, resistance))).ToArbitrary();

    private static Load Mixed(double volts, double ohms, double power, double current, double resistance)
    {
        double left = volts * (1 - current), gain = 1 + resistance;
        Load load = Load.ConstantPower(Power.FromWatts(power * left * left / (4 * ohms * gain)))
            + Load.ConstantCurrent(ElectricCurrent.FromAmperes(current * volts / ohms));
        return resistance > 0 ? load + Load.ConstantResistance(ElectricResistance.FromOhms(ohms / resistance)) : load;
    }
}
