using System;
using System.Linq;
using CamPower.Circuits;
using UnitsNet;
using Xunit.Abstractions;

namespace CamPower.Tests.Circuits.Networks;

/// <summary>Several sources: on the branch from zero load as far as it goes, then by a jump; the margin is that of the branch.</summary>
public class SeveralSourcesTests(ITestOutputHelper output)
{
    // By hand, from V·((24 − V)/R + (E₂ − V)/R₂) = P. 24 V/1 Ω peaks at 144 W and 12 V, but 12.01 V/0.05 Ω comes on just
    // before: together A = 264.2 A, G = 21 S, A²/4G = 830.97 W, 16.62 times 50 W.
    // 24 V/2 Ω alone peaks at 72 W and 12 V; 70 W sit at V = 12 + √(144 − 140) = 14 V, and 72/70 is left.
    // 50 W sit at V = 12 + √(144 − 50) = 21.695 V.
    // 80 W: with 10 V/0.05 Ω A = 212 A, G = 20.5 S: V = (212 + √(212² − 82·80))/41 = 9.949 V; 548.1 W at most, 6.85 times.
    // 500 W: V = (212 + √(212² − 82·500))/41 = 6.70 V. 1000 W: nothing, 548.1/1000 is left.
    [Theory]
    [InlineData(1, 12.01, 50, 21.69536, false, 16.6194)]
    [InlineData(2, 10, 70, 14, false, 1.028571)]
    [InlineData(2, 10, 80, 9.949228, true, 6.85122)]
    [InlineData(2, 10, 500, 6.702470, true, 1.096195)]
    [InlineData(2, 10, 1000, 0, false, 0.5480976)]
    public void TwoSources_ByHand(double ohms, double secondVolts, double watts, double volts, bool jump, double margin)
    {
        DcNetwork network = OneBus.Network([24, secondVolts], [ohms, 0.05], watts);
        NetworkSolution solution = network.Solve();
        Assert.Equal(volts > 0, solution.HasOperatingPoint);
        if (volts > 0) Assert.Equal(volts, solution.AtLoad("camera").Voltage.Volts, 1e-4);
        Assert.Equal(jump, solution.IsReachedByJump);
        Assert.Equal(jump, solution.ToString().Contains("reached by a jump", StringComparison.Ordinal));
        Assert.Equal(jump, solution.Explain().Conclusion.Contains("Reached by a jump", StringComparison.Ordinal));
        Assert.Equal(margin, network.MarginToCollapse()!.Value.DecimalFractions, 1e-5 * margin);
    }

    [Fact]
    public void OneBus_MatchesTheClosedForm()
    {
        var random = new Random(11);
        int checkedCases = 0, jumps = 0, none = 0;
        for (int k = 0; k < 20_000; k++)
        {
            double[] volts = [.. Enumerable.Range(0, random.Next(2, 6)).Select(_ => 4 + (26 * random.NextDouble()))];
            double[] ohms = [.. volts.Select(_ => 0.02 * Math.Pow(200, random.NextDouble()))];
            var bus = new OneBus(volts, ohms);
            double[] peaks = [.. bus.PeakWatts];
            double watts = peaks[random.Next(peaks.Length)] * 1.3 * random.NextDouble();
            if (bus.Degenerate || peaks.Any(peak => Math.Abs((watts / peak) - 1) < 1e-7)) continue;

            checkedCases++;
            DcNetwork network = OneBus.Network(volts, ohms, watts);
            string what = FormattableString.Invariant($"case {k}: {string.Join(", ", volts.Zip(ohms, (v, r) => FormattableString.Invariant($"{v:R} V/{r:R} Ω")))}, {watts:R} W");
            NetworkSolution solution = network.Solve();
            int branch = bus.BranchAt(watts);
            Assert.True(branch >= 0 == solution.HasOperatingPoint, what);
            Assert.True(branch > 0 == solution.IsReachedByJump, what);
            double margin = network.MarginToCollapse()!.Value.DecimalFractions / bus.MarginAt(watts);
            Assert.True(Math.Abs(margin - 1) < 1e-8, $"{what}: margin off by {margin - 1}");
            if (branch > 0) jumps++;
            if (branch < 0) none++;
            else Assert.True(Math.Abs(solution.AtLoad("camera").Voltage.Volts - bus.VoltsAt(watts)) < 1e-8, what);
        }

        output.WriteLine($"{checkedCases} cases, {jumps} by a jump, {none} without operating point");
        Assert.True(checkedCases > 19_900 && jumps > 500 && none > 1000);
    }
}
