using System;
using System.Linq;
using CamPower.Tolerance;

namespace CamPower.Tests.Tolerance;

/// <summary>Shapes of ranges, and the random numbers that are drawn from them.</summary>
public class DistributionTests
{
    public static TheoryData<UncertaintyShape> Shapes => [.. Enum.GetValues<UncertaintyShape>()];

    // Source: the known-answer file of the authors' library Random123, philox4x32 with 10 rounds, from memory.
    [Theory]
    [InlineData(0u, 0u, 0u, 0u, 0u, 0u, 0x6627e8d5u, 0xe169c58du, 0xbc57ac4cu, 0x9b00dbd8u)]
    [InlineData(0x243f6a88u, 0x85a308d3u, 0x13198a2eu, 0x03707344u, 0xa4093822u, 0x299f31d0u, 0xd16cfe09u, 0x94fdccebu, 0x5001e420u, 0x24126ea1u)]
    public void CounterGenerator_GivesTheKnownAnswers(uint c0, uint c1, uint c2, uint c3, uint k0, uint k1, uint a, uint b, uint c, uint d)
    {
        CounterRandom.Block(c0, c1, c2, c3, k0, k1, out uint gotA, out uint gotB, out uint gotC, out uint gotD);
        Assert.Equal([a, b, c, d], (uint[])[gotA, gotB, gotC, gotD]);
    }

    // Source: tables of the normal distribution (e.g. Abramowitz and Stegun, table 26.5, from memory).
    [Theory]
    [InlineData(0.5, 0)]
    [InlineData(0.9, 1.2815515655446004)]
    [InlineData(0.975, 1.959963984540054)]
    [InlineData(0.995, 2.5758293035489004)]
    [InlineData(0.9999, 3.719016485455709)]
    [InlineData(1e-10, -6.361340902404056)]
    public void NormalQuantile_IsThatOfTheTables(double probability, double z)
    {
        Assert.Equal(z, NormalDistribution.Quantile(probability), 1e-13);
        Assert.Equal(probability, NormalDistribution.Below(z), 1e-14);
    }

    // Source: JCGM 100:2008, example of 4.3.7: the expansion of copper 16.52e-6 ± 0.40e-6 per kelvin has u = 0.23e-6; 4.3.9: over √6 if
    // triangular. The end of a normal range is three standard deviations away; cutting it there takes 1.3 % off.
    [Theory]
    [InlineData(UncertaintyShape.Uniform, 0.2309)]
    [InlineData(UncertaintyShape.Triangular, 0.1633)]
    [InlineData(UncertaintyShape.Normal, 0.1315)]
    public void StandardDeviation_IsThatOfTheGuide(UncertaintyShape shape, double expected) =>
        Assert.Equal(expected, Ranges.Shares(-0.4, 0.4, shape).StandardDeviation, 5e-5);

    [Theory]
    [MemberData(nameof(Shapes))]
    public void Quantile_IsTheInverseOfTheProbability(UncertaintyShape shape)
    {
        UncertainRange range = Ranges.Shares(-0.3, 0.1, shape);
        foreach (double p in (double[])[1e-6, 0.01, 0.2, 0.5, 0.77, 0.999999]) Assert.Equal(p, range.ProbabilityBelow(range.Quantile(p)), 1e-12);
        Assert.Equal(0, range.ProbabilityBelow(-0.3));
        Assert.Equal(1, range.ProbabilityBelow(0.1));
    }

    // Mean and variance of what is drawn against those that are stated: within four standard errors of 200 000 draws.
    [Theory]
    [MemberData(nameof(Shapes))]
    public void Draws_HaveTheStatedMeanAndDeviation(UncertaintyShape shape)
    {
        const int Pairs = 100_000;
        UncertainRange range = Ranges.Shares(-0.3, 0.1, shape);
        double sum = 0, squares = 0;
        for (uint i = 0; i < Pairs; i++)
        {
            CounterRandom.Pair(7, i, 0, out double first, out double second);
            foreach (double x in (double[])[range.Quantile(first), range.Quantile(second)])
            {
                Assert.InRange(x, range.Low, range.High);
                sum += x;
                squares += (x + 0.1) * (x + 0.1);
            }
        }

        double s = range.StandardDeviation;
        Assert.Equal(range.Expected, sum / (2 * Pairs), 4 * s / Math.Sqrt(2 * Pairs));
        Assert.Equal(s * s, squares / (2 * Pairs), 4 * s * s * Math.Sqrt(2.0 / (2 * Pairs)));
    }

    // ∫ x⁷ from 0 to 1 is 1/8; two points are exact up to x³ (Gauss).
    [Fact]
    public void Quadrature_IsExactForPolynomials()
    {
        (double[] at, double[] weights) = GaussLegendre.OnUnit(4);
        Assert.Equal(0.125, at.Select((x, i) => weights[i] * Math.Pow(x, 7)).Sum(), 1e-14);
        (at, weights) = GaussLegendre.OnUnit(2);
        Assert.Equal([0.5 - (1 / Math.Sqrt(12)), 0.5 + (1 / Math.Sqrt(12))], at, (a, b) => Math.Abs(a - b) < 1e-15);
        Assert.Equal(1, GaussLegendre.OnUnit(64).Weights.Sum(), 1e-13);
    }

    [Fact]
    public void Tolerance_TakesTheOwnRangeOfAPart_ThenThatOfItsQuantity_AndRefusesTheOtherKind()
    {
        UncertainRange all = Ranges.Uniform(-0.1, 0.1), own = Ranges.Uniform(0, 0.2), usual = Ranges.Uniform(0, 0);
        SiteTolerance tolerance = SiteTolerance.Standard.With(UncertainQuantity.RunLength, all).With(UncertainQuantity.RunLength, "gate", own);
        Assert.Same(own, tolerance.RangeOf(UncertainQuantity.RunLength, "gate", usual));
        Assert.Same(all, tolerance.RangeOf(UncertainQuantity.RunLength, "slip", usual));
        Assert.Same(usual, tolerance.RangeOf(UncertainQuantity.DeviceDraw, "gate", usual));
        Assert.Throws<ArgumentException>(() => SiteTolerance.Standard.With(UncertainQuantity.CableTemperature, all));
        Assert.Throws<ArgumentException>(() => SiteTolerance.Standard.With(UncertainQuantity.RunLength, Ranges.Kelvins(-1, 1)));
        Assert.Throws<ArgumentOutOfRangeException>(() => SiteTolerance.Standard.With(UncertainQuantity.ProtectionResistance, all));
    }
}
