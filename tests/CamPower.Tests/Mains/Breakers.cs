using System.Linq;
using CamPower.Mains;
using CamPower.Tests.Sites;
using UnitsNet;
using static CamPower.Tests.Sites.SmallSite;

namespace CamPower.Tests.Mains;

/// <summary>Boxes whose receptacles are on one breaker.</summary>
internal static class Breakers
{
    internal static CircuitBreaker B16 { get; } = CircuitBreaker.TypeB("breaker", ElectricCurrent.FromAmperes(16), ElectricCurrent.FromMilliamperes(30));

    /// <summary>One box of 1 A on a breaker, its input fully stated: 85 %, power factor 0.95 at every load from a fifth on.</summary>
    internal static Site On(CircuitBreaker breaker, double peak = 20, double leakage = 0.001, double? integral = null) =>
        new("site", [Condition.Day(At())], [Plugged(breaker, 1, peak, leakage: leakage, integral: integral)], [], []);

    internal static DistributionBox Plugged(CircuitBreaker breaker, int number, double? peak, double? warm = 20, double? leakage = 0.001, double? integral = null)
    {
        SupplyInput sheet = Receptacles.Sheet(curvesFrom: 20).Input!;
        var input = new SupplyInput(sheet.Voltage, Amperes(peak), sheet.Efficiency, sheet.PowerFactor,
            integral is double i ? JouleIntegral.FromAmpereSquaredSeconds(i) : null, Amperes(warm), Amperes(leakage), Power.FromWatts(0.5));
        var receptacle = new Receptacle($"receptacle {number}", Volts(230), ElectricCurrent.FromAmperes(16), breaker: breaker);
        string name = number == 1 ? "box" : $"box {number}";
        return Box(new Supply("supply", Dc(12, 10).Output, Derating.GenericEnclosed, input)).WithName(name).WithReceptacle(receptacle);

        static ElectricCurrent? Amperes(double? value) => value is double a ? ElectricCurrent.FromAmperes(a) : null;
    }

    /// <summary>A box for each peak, on one breaker.</summary>
    internal static BreakerAssessment Together(CircuitBreaker breaker, params double?[] peaks) => new Site("site", [Condition.Day(At())],
        peaks.Select((peak, i) => Plugged(breaker, i + 1, peak)), [], []).Assess().StudyBreakers().Single();
}
