using System;
using System.Collections.Generic;
using System.Linq;
using CamPower.Tests.Sites;
using CamPower.Tolerance;
using UnitsNet;

namespace CamPower.Tests.Tolerance;

/// <summary>The worst case against every corner, and against what is drawn.</summary>
public class WorstCornersTests
{
    private static readonly Condition Night = Condition.Night(SmallSite.At(cable: 30));

    private static Site Copper(params Load[] loads) => Copper([.. loads.Select(load => new ComponentDraw(load))]);

    private static Site Copper(params Draw[] draws)
    {
        var run = new CableRun(new CableSegment(Runs.Eighteen, Length.FromMeters(30)), new Joint("splice", ElectricResistance.FromMilliohms(20)));
        return new Site("site", [Night], [SmallSite.Box(SmallSite.Dc(percent: 2), protection: SmallSite.SeriesOhms(0.2))],
            draws.Select((_, i) => new SiteRun(i == 0 ? RunOrigin.Output("box", 1) : RunOrigin.Junction(SmallSite.Place(i - 1)), SmallSite.Place(i), run)),
            draws.Select((draw, i) => new SiteDevice(SmallSite.Name(i), SmallSite.Camera(draw), SmallSite.Place(i))));
    }

    private static UncertainCircuit CircuitOf(Site site) =>
        UncertainCircuit.Of(site.Feeds[0], new UncertainParts(site, SiteTolerance.Standard), Night);

    public static TheoryData<int> Sites => [0, 1, 2];

    private static Site SiteOf(int site) => site switch
    {
        0 => Copper(SmallSite.Watts(9)),
        1 => Copper(SmallSite.Watts(5), SmallSite.Watts(4)),
        _ => Copper(new ComponentDraw(SmallSite.Amperes(0.5)),
            new LabelDraw(ElectricPotential.FromVolts(12), ElectricCurrent.FromAmperes(0.5), InputStage.Unknown)),
    };

    // All 2^n corners of one or two cameras: copper, lengths, joints, source, draws.
    [Theory]
    [MemberData(nameof(Sites))]
    public void ProvenCorner_IsTheWorstOfAllCorners(int of)
    {
        UncertainCircuit circuit = CircuitOf(SiteOf(of));
        var worst = WorstCorners.Of(circuit);
        Assert.True(worst.IsProven);
        double[] volts = new double[circuit.Loads.Length];
        double[] lowest = [.. volts.Select(_ => double.MaxValue)], highest = new double[volts.Length];
        double least = double.MaxValue, most = 0;
        foreach (double[] corner in Ranges.CornersOf(circuit.Parts, circuit.Relevant))
        {
            Assert.True(circuit.TrySolve(corner, circuit.Loads, volts));
            for (int i = 0; i < volts.Length; i++)
            {
                lowest[i] = Math.Min(lowest[i], volts[i]);
                highest[i] = Math.Max(highest[i], volts[i]);
            }

            double amperes = circuit.FeedAmperes(0, corner, circuit.Loads, volts);
            least = Math.Min(least, amperes);
            most = Math.Max(most, amperes);
        }

        for (int i = 0; i < volts.Length; i++)
        {
            Assert.Equal(lowest[i], worst.LowestVolts[i], 1e-12);
            Assert.Equal(highest[i], worst.HighestVolts[i], 1e-12);
        }

        Assert.Equal(least, worst.LowestAmperes[0], 1e-12);
        Assert.Equal(most, worst.HighestAmperes[0], 1e-12);
    }

    // A heater at the far end: the voltage of the near camera may rise with the resistance of the far run.
    [Fact]
    public void HeatersAndShields_AreBoundedAndSaidSo()
    {
        foreach (Site site in (Site[])[Copper(SmallSite.Watts(5), SmallSite.Ohms(20)), Copper(SmallSite.Watts(5) + SmallSite.Ohms(24)), Shielded()])
        {
            UncertainCircuit circuit = CircuitOf(site);
            var bounds = WorstCorners.Of(circuit);
            Assert.False(bounds.IsProven);
            double[] x = (double[])circuit.Parts.Expected.Clone(), volts = new double[circuit.Loads.Length];
            for (int draw = 0; draw < 500; draw++)
            {
                BelowProbability.Draw(circuit.Parts, circuit.Relevant, seed: 3, draw, x);
                Assert.True(circuit.TrySolve(x, circuit.Loads, volts));
                for (int i = 0; i < volts.Length; i++) Assert.InRange(volts[i], bounds.LowestVolts[i], bounds.HighestVolts[i]);
                Assert.InRange(circuit.FeedAmperes(0, x, circuit.Loads, volts), bounds.LowestAmperes[0], bounds.HighestAmperes[0]);
            }

            Assert.All(bounds.LowestVolts, v => Assert.True(v > 6));
        }
    }

    private static Site Shielded()
    {
        Site plain = Copper(SmallSite.Watts(5), SmallSite.Watts(4));
        return new Site("site", plain.Conditions, plain.Boxes, plain.Runs, plain.Devices,
            plain.Devices.Select(d => new VideoLink(d.Name, "recorder", ElectricResistance.FromOhms(0.9))),
            [new GroundBond("recorder", "box", ElectricResistance.FromMilliohms(50))]);
    }

    [Fact]
    public void CornerWithoutAnOperatingPoint_IsDark()
    {
        // Expected are 7.875 W through 3.63 Ω, which carry 12²/4R = 9.9 W. At worst 9.45 W want through 5.8 Ω, which carry 6.0 W.
        Site site = SmallSite.Single(2.9, SmallSite.Camera(SmallSite.Watts(9)), SmallSite.Dc(percent: 2), Night);
        UncertainValue volts = new ToleranceStudy(site, SiteTolerance.Standard).DeviceVoltage(SmallSite.Name(0), Night);
        Assert.True(volts.HasOperatingPoint);
        Assert.Equal(0, volts.LowestValue);
        UncertainValue amperes = new ToleranceStudy(site, SiteTolerance.Standard).OutputCurrent("box", 1, Night);
        Assert.True(double.IsInfinity(amperes.HighestValue));
    }

    // (2V − Vs)·dV = V·dVs − P·dR − R·dP, from V² − Vs·V + R·P = 0.
    [Fact]
    public void Sensitivities_AreThoseOfTheClosedForm()
    {
        Site site = SmallSite.Single(1.5, SmallSite.Camera(SmallSite.Watts(9)), SmallSite.Dc(percent: 2), Night);
        SiteTolerance tolerance = SiteTolerance.Standard.With(UncertainQuantity.DeviceDraw, Ranges.Uniform(-0.1, 0.1))
            .With(UncertainQuantity.JointResistance, Ranges.Uniform(-0.1, 0.1));
        UncertainValue value = new ToleranceStudy(site, tolerance).DeviceVoltage(SmallSite.Name(0), Night);
        double v = (12 + Math.Sqrt(144 - (4 * 1.5 * 9))) / 2, divisor = (2 * v) - 12;
        Dictionary<UncertainQuantity, double> deviations = value.Shares.ToDictionary(s => s.Quantity, s => ((ElectricPotential)s.StandardUncertainty).Volts);
        Assert.Equal(v, value.ExpectedValue!.Value, 1e-12);
        Assert.Equal(v * 12 / divisor * 0.02 / Math.Sqrt(3), deviations[UncertainQuantity.SupplyVoltage], 1e-7);
        Assert.Equal(1.5 * 9 / divisor * 0.1 / Math.Sqrt(3), deviations[UncertainQuantity.DeviceDraw], 1e-7);
        Assert.Equal(1.5 * 9 / divisor * 0.1 / Math.Sqrt(3), deviations[UncertainQuantity.JointResistance], 1e-7);
        Assert.Equal(Math.Sqrt(deviations.Values.Sum(d => d * d)), ((ElectricPotential)value.StandardUncertainty).Volts, 1e-12);
    }

    // The costs of single parts, by solving with that part alone at its end.
    [Fact]
    public void Shares_AreSortedByWhatTheyCost()
    {
        Site site = SmallSite.Single(1.5, SmallSite.Camera(SmallSite.Watts(9)), SmallSite.Dc(percent: 2), Night);
        UncertainValue value = new ToleranceStudy(site, SiteTolerance.Standard).DeviceVoltage(SmallSite.Name(0), Night);
        Assert.Equal(value.Shares.OrderByDescending(s => s.CostValue), value.Shares);
        UncertaintyShare joint = value.Shares.Single(s => s.Quantity == UncertainQuantity.JointResistance);
        double draw = 9 * (1 - 0.125), from = Closed(1.5 * 1.25, draw), to = Closed(1.5 * 2, draw);
        Assert.Equal(from - to, joint.CostValue, 1e-12);
        Assert.True(joint.IsLowestAtHighEnd);
        Assert.False(value.Shares.Single(s => s.Quantity == UncertainQuantity.SupplyVoltage).IsLowestAtHighEnd);
    }

    private static double Closed(double ohms, double watts) => (12 + Math.Sqrt(144 - (4 * ohms * watts))) / 2;

    // One reel for both runs, one temperature for all: not one for each.
    [Fact]
    public void WhatIsCommon_IsOnePart()
    {
        UncertainCircuit circuit = CircuitOf(SiteOf(1));
        UncertainQuantity[] of = [.. circuit.Relevant.Select(p => circuit.Parts.All[p].Quantity)];
        Assert.Equal(1, of.Count(q => q == UncertainQuantity.CableTemperature));
        Assert.Equal(1, of.Count(q => q == UncertainQuantity.ConductorResistance));
        Assert.Equal(2, of.Count(q => q == UncertainQuantity.RunLength));
        Assert.Equal(2, of.Count(q => q == UncertainQuantity.DeviceDraw));
    }

    // With nothing off, it is what the assessment says.
    [Fact]
    public void WithoutDeviations_VoltagesAreThoseOfTheAssessment()
    {
        Site site = SiteOf(1);
        UncertainCircuit circuit = CircuitOf(site);
        double[] volts = new double[2], none = new double[circuit.Parts.All.Length];
        none[circuit.Parts.SupplyOf(site.Boxes[0])] = -0.02;
        Assert.True(circuit.TrySolve(none, circuit.Loads, volts));
        SiteAssessment assessment = site.Assess();
        for (int i = 0; i < 2; i++) Assert.Equal(assessment.Devices[i].Worst.Voltage.Volts, volts[i], 1e-9);
    }
}
