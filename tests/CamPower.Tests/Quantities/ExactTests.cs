using System;
using CamPower.Tests.Circuits;

namespace CamPower.Tests.Quantities;

/// <summary>The compensated differences against exact arithmetic, where nearly everything cancels.</summary>
public class ExactTests
{
    private const int Cases = 20_000;

    [Fact]
    public void DifferenceOfProducts_IsWithin2Ulp_HoweverMuchCancels()
    {
        var random = new Random(20260105);
        double worst = 0;
        for (int i = 0; i < Cases; i++)
        {
            double a = Any(random), b = Any(random), c = Any(random), d = Beside(a * b / c, random);
            Dyadic exact = (Dyadic.Of(a) * Dyadic.Of(b)) - (Dyadic.Of(c) * Dyadic.Of(d));
            double computed = Exact.DifferenceOfProducts(a, b, c, d);
            if (exact.Sign == 0) Assert.Equal(0, computed);
            else worst = Math.Max(worst, exact.UlpsFrom(computed));
        }

        Assert.InRange(worst, 0, 2);
    }

    [Fact]
    public void MinusProduct_IsWithin2Ulp_HoweverMuchCancels()
    {
        var random = new Random(20260106);
        double worst = 0;
        for (int i = 0; i < Cases; i++)
        {
            double b = Any(random), c = Any(random), a = Beside(b * c, random);
            Dyadic exact = Dyadic.Of(a) - (Dyadic.Of(b) * Dyadic.Of(c));
            double computed = Exact.MinusProduct(a, b, c);
            if (exact.Sign == 0) Assert.Equal(0, computed);
            else worst = Math.Max(worst, exact.UlpsFrom(computed));
        }

        Assert.InRange(worst, 0, 2);
    }

    private static double Any(Random random) => Math.Pow(10, (12 * random.NextDouble()) - 6);

    // A few units in the last place away, or a share of 1e-15 to 1.
    private static double Beside(double value, Random random)
    {
        if (random.Next(2) == 0) return value * (1 + Math.Pow(10, -15 * random.NextDouble()));
        for (int steps = random.Next(5); steps > 0; steps--) value = Math.BitIncrement(value);
        return value;
    }
}
