using System;
using System.Linq;
using CamPower.Circuits;
using UnitsNet;

namespace CamPower.Tests.Circuits;

/// <summary>A batch says what the single run says, to the last bit, wherever it is cut.</summary>
/// <remarks>The single run is held to exact arithmetic in <see cref="RunKernelPrecisionTests"/>.</remarks>
public class RunBatchTests
{
    private const int Cases = 20_003;

    [Fact]
    public void Feed_RandomRuns_AreTheBitsOfTheSingleRun()
    {
        Batch batch = Batch.Random(Cases, 20261130);
        int fed = batch.Feed();
        Assert.InRange(fed, Cases / 2, Cases - (Cases / 10));
        AssertSingleRuns(batch, fed);
    }

    [Fact]
    public void Feed_EveryLengthTo40_IsTheSingleRun()
    {
        for (int length = 0; length <= 40; length++)
        {
            Batch batch = Batch.Random(length, length);
            AssertSingleRuns(batch, batch.Feed());
        }
    }

#if !CAMPOWER_NETSTANDARD
    // Spans need not begin where an array or a vector does, and nothing beside them is written.
    [Fact]
    public void Feed_PartsOfArrays_AreTheSingleRunAndNothingBesideThem()
    {
        Batch batch = Batch.Random(80, 3);
        for (int from = 0; from < 9; from++)
        {
            for (int length = 0; length <= 40; length++)
            {
                Array.Fill(batch.Volts, -1);
                Array.Fill(batch.Amperes, -1);
                Range part = from..(from + length);
                RunBatch.Feed(batch.Source.AsSpan(part), batch.Ohms.AsSpan(part), batch.Watts.AsSpan(part), batch.Volts.AsSpan(part), batch.Amperes.AsSpan(part));
                for (int i = 0; i < 80; i++) Assert.Equal(i < from || i >= from + length ? -1 : Single(batch, i), batch.Volts[i]);
            }
        }
    }
#endif

    // 12 V over 1 Ω: the maximum power is 36 W (maximum power transfer), and half of the source voltage is left there.
    [Theory]
    [InlineData(12, 1, 36, 6, 6)]
    [InlineData(12, 1, 36.000000000000007, 0, 0)]
    [InlineData(12, 1, 1e9, 0, 0)]
    [InlineData(12, 0, 1e9, 12, 1e9 / 12)]
    [InlineData(12, 1e12, 0, 12, 0)]
    [InlineData(24, 2, 22, 22, 1)]
    [InlineData(1e6, 0, 0, 1e6, 0)]
    [InlineData(1e-9, 0, 0, 1e-9, 0)]
    public void Feed_Edges_AreThoseOfTheClosedForm(double source, double ohms, double watts, double volts, double amperes)
    {
        // In a vector and left over from it.
        foreach (int length in new[] { 8, 3 })
        {
            var batch = new Batch(length);
            Array.Fill(batch.Source, source);
            Array.Fill(batch.Ohms, ohms);
            Array.Fill(batch.Watts, watts);
            Assert.Equal(volts > 0 ? length : 0, batch.Feed());
            Assert.All(batch.Volts, v => Assert.Equal(volts, v));
            Assert.All(batch.Amperes, a => Assert.Equal(amperes, a));
        }
    }

    [Theory]
    [InlineData(0, double.NaN, "sourceVolts[4] must be from 1E-09 V to 1000000 V, but is NaN V.")]
    [InlineData(0, 0, "sourceVolts[4] must be from 1E-09 V to 1000000 V, but is 0 V.")]
    [InlineData(0, 1.1e6, "sourceVolts[4] must be from 1E-09 V to 1000000 V, but is 1100000 V.")]
    [InlineData(1, double.NaN, "loopOhms[4] must be from 0 Ω to 1000000000000 Ω, but is NaN Ω.")]
    [InlineData(1, -1, "loopOhms[4] must be from 0 Ω to 1000000000000 Ω, but is -1 Ω.")]
    [InlineData(1, double.PositiveInfinity, "loopOhms[4] must be from 0 Ω to 1000000000000 Ω, but is ∞ Ω.")]
    [InlineData(2, double.NaN, "watts[4] must be from 0 W to 1000000000 W, but is NaN W.")]
    [InlineData(2, -3, "watts[4] must be from 0 W to 1000000000 W, but is -3 W.")]
    [InlineData(2, 1.1e9, "watts[4] must be from 0 W to 1000000000 W, but is 1100000000 W.")]
    public void Feed_ImpossibleNumber_IsNamedWithItsPlaceAndNoAnswerIsLeft(int which, double value, string message)
    {
        foreach (int length in new[] { 16, 5 })
        {
            Batch batch = Batch.Random(length, 7);
            new[] { batch.Source, batch.Ohms, batch.Watts }[which][4] = value;
            var refusal = Assert.Throws<ArgumentOutOfRangeException>(() => batch.Feed());
            Assert.StartsWith(message.Replace("∞", "Infinity", StringComparison.Ordinal), refusal.Message, StringComparison.Ordinal);
            Assert.All(batch.Volts.Concat(batch.Amperes), answer => Assert.Equal(0, answer));
        }
    }

    [Fact]
    public void Feed_WhatDoesNotFitTogether_IsRefused()
    {
        double[] three = [12, 12, 12], two = [1, 1];
        Assert.Throws<ArgumentException>(() => RunBatch.Feed(three, two, three, new double[3], new double[3]));
        Assert.Throws<ArgumentException>(() => RunBatch.Feed(three, three, three, new double[3], new double[4]));
        Assert.Throws<ArgumentException>(() => RunBatch.Feed(three, three, three, three, new double[3]));
        double[] both = new double[3];
        Assert.Throws<ArgumentException>(() => RunBatch.Feed(three, three, three, both, both));
        // To spans, which are taken where there are any, a null array is an empty one.
        Assert.ThrowsAny<ArgumentException>(() => RunBatch.Feed(three, null!, three, both, new double[3]));
    }

    private static void AssertSingleRuns(Batch batch, int fed)
    {
        Assert.Equal(batch.Volts.Count(v => v > 0), fed);
        for (int i = 0; i < batch.Source.Length; i++)
        {
            double volts = Single(batch, i);
            Assert.Equal(BitConverter.DoubleToInt64Bits(volts), BitConverter.DoubleToInt64Bits(batch.Volts[i]));
            double amperes = volts > 0 ? Load.ConstantPower(Power.FromWatts(batch.Watts[i])).AmperesAt(volts) : 0;
            Assert.Equal(amperes, batch.Amperes[i], 1e-12 * amperes);
        }
    }

    private static double Single(Batch batch, int i) => RunKernel.LoadVolts(batch.Source[i], batch.Ohms[i], batch.Watts[i], 0, 0);

    private sealed class Batch(int length)
    {
        internal double[] Source { get; } = new double[length];

        internal double[] Ohms { get; } = new double[length];

        internal double[] Watts { get; } = new double[length];

        internal double[] Volts { get; } = new double[length];

        internal double[] Amperes { get; } = new double[length];

        // Spread over decades; the load is a share of the most that the run can carry, to both sides of it.
        internal static Batch Random(int length, int start)
        {
            double[] shares = [0, 1e-9, 0.1, 0.5, 0.9, 0.999, 0.999999, 1, 1.000001, 1.5];
            var random = new Random(start);
            var batch = new Batch(length);
            for (int i = 0; i < length; i++)
            {
                batch.Source[i] = Math.Pow(10, (random.NextDouble() * 4) - 1);
                batch.Ohms[i] = random.Next(20) == 0 ? 0 : Math.Pow(10, (random.NextDouble() * 6) - 3);
                double most = batch.Ohms[i] == 0 ? 100 : batch.Source[i] * batch.Source[i] / (4 * batch.Ohms[i]);
                batch.Watts[i] = Math.Min(1e9, shares[random.Next(shares.Length)] * most);
            }

            return batch;
        }

        internal int Feed() => RunBatch.Feed(Source, Ohms, Watts, Volts, Amperes);
    }
}
