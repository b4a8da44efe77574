using System;
using System.Globalization;
using CamPower.Circuits;

namespace CamPower.Tests.Circuits;

/// <summary>
/// The kernel against the same load line solved with numbers of any length (<see cref="Dyadic"/>). Inputs are random with
/// a fixed seed, spread evenly over decades; the numbers asserted are worst cases, not averages.
/// </summary>
public class RunKernelPrecisionTests
{
    private const int Cases = 20_000;

    private const double FourUlp = 4;

    [Fact]
    public void LoadVolts_ConstantPower_IsWithin4UlpOfTheExactRoot()
    {
        var random = new Random(20260101);
        double worst = 0;
        for (int i = 0; i < Cases; i++)
        {
            double vs = Decades(random, -2, 6), ohms = Decades(random, -6, 6);
            worst = Math.Max(worst, UlpsOff(vs, ohms, Share(random) * (vs * vs / (4 * ohms))));
        }

        Assert.InRange(worst, 0, FourUlp);
    }

    [Theory]
    [InlineData(12, 1, 35.99999999996)]
    [InlineData(12, 1, 36)]
    [InlineData(12, 2.6, 12.5)]
    [InlineData(24, 1.5, 96)]
    [InlineData(12, 3.1925, 9)]
    [InlineData(1e6, 1e-9, 1e-9)]
    [InlineData(1e6, 1e3, 2.4999999999e8)]
    [InlineData(1e-3, 1e-9, 1e-12)]
    [InlineData(13.8, 0, 1e9)]
    [InlineData(12, 1e12, 0)]
    public void LoadVolts_HandPickedEdges_AreWithin4UlpOfTheExactRoot(double vs, double ohms, double watts) =>
        Assert.InRange(UlpsOff(vs, ohms, watts), 0, FourUlp);

    // Loads a few units in the last place to either side of the limit: the exact discriminant says whether a point exists.
    [Fact]
    public void LoadVolts_BesideTheLimit_SaysRightlyWhetherAPointExists()
    {
        var random = new Random(20260102);
        int exist = 0, none = 0;
        for (int i = 0; i < Cases; i++)
        {
            double vs = Decades(random, -2, 6), ohms = Decades(random, -6, 6), watts = vs * vs / (4 * ohms);
            for (int steps = random.Next(-4, 5); steps != 0; steps -= Math.Sign(steps)) watts = steps > 0 ? Math.BitIncrement(watts) : Math.BitDecrement(watts);

            bool exists = Discriminant(vs, ohms, watts).Sign >= 0;
            Assert.Equal(exists, RunKernel.LoadVolts(vs, ohms, watts, 0, 0) > RunKernel.NoOperatingPoint);
            if (exists) exist++;
            else none++;
        }

        Assert.True(exist > Cases / 4 && none > Cases / 4, "Both sides must be visited.");
    }

    // Without a power component there is no root to take: (Vs − R·I₀)/(1 + R·G), right to 4 ulp also where R·I₀ takes all but a
    // millionth of the source voltage. The plain difference is right backwards only, and would fail.
    [Fact]
    public void LoadVolts_WithoutPower_IsWithin4UlpOfTheExactQuotient()
    {
        var random = new Random(20260107);
        double worst = 0;
        for (int i = 0; i < Cases; i++)
        {
            double vs = Decades(random, -1, 4), ohms = Decades(random, -6, 3), siemens = Decades(random, -4, 2) / ohms;
            double amperes = (1 - Math.Pow(10, -6 * random.NextDouble())) * (vs / ohms);
            Dyadic left = Dyadic.Of(vs) - (Dyadic.Of(ohms) * Dyadic.Of(amperes)), gain = Dyadic.Of(1) + (Dyadic.Of(ohms) * Dyadic.Of(siemens));
            if (left.Sign > 0) worst = Math.Max(worst, (left / gain).UlpsFrom(RunKernel.LoadVolts(vs, ohms, 0, amperes, siemens)));
        }

        Assert.InRange(worst, 0, FourUlp);
    }

    // With current and resistance components the root itself may be ill-conditioned, so the answer is judged backwards: it is
    // the exact root of a load line (1 + R·G)·V² − (Vs − R·I₀)·V + R·P = 0 of which each of the five terms V², R·G·V², Vs·V,
    // R·I₀·V and R·P has been perturbed by its own relative amount of at most 4 · 2⁻⁵² (Oettli and Prager, 1964).
    [Fact]
    public void LoadVolts_MixedShares_HasABackwardErrorWithin4Ulp()
    {
        var random = new Random(20260103);
        double worst = 0;
        int solved = 0;
        for (int i = 0; i < Cases; i++)
        {
            double vs = Decades(random, -1, 4), ohms = Decades(random, -6, 3);
            double amperes = (random.Next(3) == 0 ? 1 - Math.Pow(10, -6 * random.NextDouble()) : random.NextDouble()) * (vs / ohms);
            double siemens = Decades(random, -4, 2) / ohms, left = vs - (ohms * amperes);
            double watts = Share(random) * (left * left / (4 * ohms * (1 + (ohms * siemens))));
            double volts = RunKernel.LoadVolts(vs, ohms, watts, amperes, siemens);
            if (!(volts > 0)) continue;

            solved++;
            worst = Math.Max(worst, BackwardUlps(volts, vs, ohms, watts, amperes, siemens));

            // Both roots leave no residual: the stable one keeps at least half of what the current component leaves.
            Assert.True(2 * volts * (1 + (ohms * siemens)) >= left * (1 - 1e-9));
        }

        Assert.True(solved > Cases * 0.99, "Nearly every case has an operating point.");
        Assert.InRange(worst, 0, FourUlp);
    }

    [Fact]
    public void Dyadic_RootOfTwo_HasTheKnownDigits()
    {
        Dyadic root = Dyadic.Of(2).Root(), error = (root * root) - Dyadic.Of(2);
        Assert.True(Math.Abs(error.ToDouble()) < 1e-80, error.ToDouble().ToString(CultureInfo.InvariantCulture));
        Assert.Equal(Math.Sqrt(2), root.ToDouble(), 1e-15);
        Assert.Equal(1, Dyadic.Of(1).UlpsFrom(Math.BitIncrement(1)), 1e-12);
        Assert.True(Math.Abs((((Dyadic.Of(1) / Dyadic.Of(3)) * Dyadic.Of(3)) - Dyadic.Of(1)).ToDouble()) < 1e-80);
    }

    private static double UlpsOff(double vs, double ohms, double watts)
    {
        double volts = RunKernel.LoadVolts(vs, ohms, watts, 0, 0);
        Assert.True(volts > RunKernel.NoOperatingPoint, FormattableString.Invariant($"{vs:R} V over {ohms:R} Ω carries {watts:R} W."));
        Dyadic exact = (Dyadic.Of(vs) + Discriminant(vs, ohms, watts).Root()) * Dyadic.Of(0.5);
        return exact.UlpsFrom(volts);
    }

    private static Dyadic Discriminant(double vs, double ohms, double watts)
    {
        Dyadic v = Dyadic.Of(vs);
        return (v * v) - (Dyadic.Of(4) * Dyadic.Of(ohms) * Dyadic.Of(watts));
    }

    private static double BackwardUlps(double volts, double vs, double ohms, double watts, double amperes, double siemens)
    {
        Dyadic v = Dyadic.Of(volts), r = Dyadic.Of(ohms);
        Dyadic square = v * v, conductance = r * Dyadic.Of(siemens) * square;
        Dyadic source = Dyadic.Of(vs) * v, current = r * Dyadic.Of(amperes) * v, power = r * Dyadic.Of(watts);
        Dyadic residual = square + conductance - source + current + power;
        Dyadic size = square + conductance + source + current + power;
        return (residual.Abs() / size).ToDouble() / Math.ScaleB(1, -52);
    }

    // A share of the limit: down to 1e-15, and up to 1 − 1e-12.
    private static double Share(Random random) => random.Next(3) switch
    {
        0 => Math.Pow(10, -15 * random.NextDouble()),
        1 => 1 - Math.Pow(10, -12 * random.NextDouble()),
        _ => random.NextDouble(),
    };

    private static double Decades(Random random, double from, double to) => Math.Pow(10, from + ((to - from) * random.NextDouble()));
}
