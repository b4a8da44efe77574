using System.Collections.Generic;
using System.Threading;
using CamPower.Tests.Sites;
using CamPower.Tolerance;
using UnitsNet;

namespace CamPower.Tests.Tolerance;

/// <summary>Probabilities: closed form against quadrature against draws.</summary>
public class BelowProbabilityTests
{
    private const double Ohms = 1.5, Watts = 9, Needed = 10.8;

    private static readonly Condition Night = Condition.Night(SmallSite.At());

    private static readonly Site Single = SmallSite.Single(
        Ohms, SmallSite.Camera(SmallSite.Watts(Watts), SmallSite.Range(Needed, 13.2)), SmallSite.Dc(percent: 3), Night);

    private static UncertainCircuit CircuitWith(SiteTolerance tolerance) =>
        UncertainCircuit.Of(Single.Feeds[0], new UncertainParts(Single, tolerance), Night);

    private static ProbabilityEstimate Below(SiteTolerance tolerance) =>
        new ToleranceStudy(Single, tolerance).BelowWindow(SmallSite.Name(0), Night);

    // The camera has 10.8 V where the source has 10.8 + 1.5·9/10.8 = 12.05 V: of 11.64 V to 12.36 V that is 56.9 %.
    [Fact]
    public void SupplyAlone_IsTheClosedForm()
    {
        ProbabilityEstimate below = Below(Ranges.Only((UncertainQuantity.SupplyVoltage, Ranges.Uniform(-0.03, 0.03))));
        Assert.True(below.IsIntegrated);
        Assert.Equal((12.05 - 11.64) / 0.72, below.Probability.DecimalFractions, 1e-12);
    }

    // The threshold is linear in what is drawn: over a draw from 90 % to 110 % the mean of the share is the share at the mean.
    [Fact]
    public void SupplyAndDraw_IsTheClosedForm_AndSoIsTheJoint()
    {
        SiteTolerance two = Ranges.Only((UncertainQuantity.SupplyVoltage, Ranges.Uniform(-0.03, 0.03)), (UncertainQuantity.DeviceDraw, Ranges.Uniform(-0.1, 0.1)));
        Assert.Equal((12.05 - 11.64) / 0.72, Below(two).Value, 1e-9);

        // With the joint from 90 % to 112 % its mean is 1.01, independent of the draw: 10.8 + 1.01·1.25 V.
        SiteTolerance three = two.With(UncertainQuantity.DeviceDraw, Ranges.Uniform(-0.05, 0.05))
            .With(UncertainQuantity.JointResistance, Ranges.Uniform(-0.1, 0.12));
        ProbabilityEstimate below = Below(three);
        Assert.True(below.IsIntegrated);
        Assert.Equal((10.8 + (1.01 * 1.25) - 11.64) / 0.72, below.Value, 1e-9);
        Assert.InRange(below.Error, 0, 1e-6);
    }

    // A normal draw: P(s > s*) where s* puts the camera on its limit at the nominal source.
    [Fact]
    public void NormalDraw_IsThatOfTheTables()
    {
        double limit = (12 - Needed) * Needed / (Ohms * Watts);
        SiteTolerance tolerance = Ranges.Only((UncertainQuantity.DeviceDraw, Ranges.Shares(-0.3, 0.3, UncertaintyShape.Normal)));
        double z = (limit - 1) / 0.1, tail = 0.5 + ((0.5 - NormalDistribution.Below(z)) / 0.9973002039367398);
        Assert.Equal(-0.4, z, 1e-12);
        Assert.Equal(tail, Below(tolerance).Value, 1e-9);

        // Φ(0.4) is 0.65542 in any table of the normal distribution; the cut at three standard deviations changes the fourth digit.
        Assert.Equal(0.6554, tail, 1e-3);
    }

    [Fact]
    public void Draws_AgreeWithTheQuadrature_WithinTheirError()
    {
        SiteTolerance three = Ranges.Only((UncertainQuantity.SupplyVoltage, Ranges.Uniform(-0.03, 0.03)),
            (UncertainQuantity.DeviceDraw, Ranges.Shares(-0.3, 0.3, UncertaintyShape.Normal)),
            (UncertainQuantity.JointResistance, Ranges.Shares(-0.3, 0.3, UncertaintyShape.Triangular)));
        UncertainCircuit circuit = CircuitWith(three);
        ProbabilityEstimate integrated = BelowProbability.Integrated(circuit, 0, Needed),
            drawn = BelowProbability.Drawn(circuit, 0, Needed, 200_000, seed: 11, CancellationToken.None);
        Assert.Equal(200_000, drawn.Draws);
        Assert.Equal(integrated.Value, drawn.Value, 4 * drawn.Error);
        Assert.InRange(drawn.Error, 0.0005, 0.0012);
    }

    // One thread, block by block, against all threads: the same count.
    [Fact]
    public void Draws_AreTheSameAtAnyNumberOfThreads()
    {
        UncertainCircuit circuit = CircuitWith(SiteTolerance.Standard);
        double[] limits = new double[circuit.Loads.Length];
        limits[0] = Needed;
        long[][] hits = [new long[limits.Length]];
        BelowProbability.CountHits([circuit], [limits], 0, 10_001, seed: 5, hits);
        Assert.InRange(hits[0][0], 1, 10_000);
        Assert.Equal((double)hits[0][0] / 10_001, BelowProbability.Drawn(circuit, 0, Needed, 10_001, seed: 5, CancellationToken.None).Value);
    }

    // All devices at once: the same draws, and so the same counts, as each alone.
    [Fact]
    public void WholeSite_CountsAsEachDeviceAlone()
    {
        Device camera = SmallSite.Camera(SmallSite.Watts(9), SmallSite.Range(Needed, 13.2));
        Site site = SmallSite.Star(SmallSite.Box(SmallSite.Dc(percent: 3)), [Night], (1.2, camera), (1.4, camera), (1.6, camera));
        var study = new ToleranceStudy(site, SiteTolerance.Standard);
        IReadOnlyDictionary<string, ProbabilityEstimate> all = study.BelowWindowOfAll(Night, draws: 9000, seed: 4);
        Assert.Equal(3, all.Count);
        Assert.All(all, one => Assert.Equal(study.BelowWindow(one.Key, Night, draws: 9000, seed: 4).Value, one.Value.Value));
        Assert.True(all["camera 1"].Value < all["camera 3"].Value);
    }

    [Fact]
    public void NoHit_StillHasAnError()
    {
        Site sound = SmallSite.Single(0.1, SmallSite.Camera(SmallSite.Watts(5), SmallSite.Range(Needed, 13.2)), SmallSite.Dc(percent: 2), Night);
        ProbabilityEstimate below = new ToleranceStudy(sound, SiteTolerance.Standard).BelowWindow(SmallSite.Name(0), Night, draws: 1000);
        Assert.Equal(0, below.Value);
        Assert.InRange(below.Error, 0.0005, 0.0015);
    }
}
