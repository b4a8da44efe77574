using System;
using System.Collections.Generic;
using System.Linq;
using UnitsNet;

namespace CamPower.Tests.Circuits;

/// <summary>Sizes of chains against every way of choosing them, and the largest loop against the hand-worked one.</summary>
public class ChainSizingTests
{
    private static readonly WireSize[] Sizes = [.. new[] { 22, 20, 18, 16, 14, 12 }.Select(WireSize.Awg)];

    private static readonly Temperature Mild = Temperature.FromDegreesCelsius(40);

    [Fact]
    public void Sizes_AreThoseThatTryingAllGives()
    {
        var random = new Random(7);
        int withAnswer = 0;
        for (int i = 0; i < 40; i++)
        {
            (double Meters, double Watts)[] links = [.. Enumerable.Range(0, 3).Select(_ => (5 + (40 * random.NextDouble()), 2 + (7 * random.NextDouble())))];
            CameraChain chain = Chain(links, [18, 18, 18]);
            double lowest = 9.5 + (2 * random.NextDouble());
            WireSize? one = chain.SmallestSize(Sizes, Volts(12), Volts(lowest), Mild);
            IReadOnlyList<WireSize>? each = chain.SizesOfLeastConductor(Sizes.OrderByDescending(s => s), Volts(12), Volts(lowest), Mild);
            int[] gauges = [22, 20, 18, 16, 14, 12];
            int? expectedOne = gauges.Where(g => IsEnough(links, [g, g, g], lowest)).Select(g => (int?)g).FirstOrDefault();
            Assert.Equal(expectedOne is int gauge ? WireSize.Awg(gauge) : (WireSize?)null, one);

            double least = (from a in gauges from b in gauges where b >= a from c in gauges where c >= b
                            where IsEnough(links, [a, b, c], lowest) select Volume(links, [a, b, c])).DefaultIfEmpty(double.NaN).Min();
            Assert.Equal(double.IsNaN(least), each is null);
            if (each is null) continue;
            withAnswer++;
            Assert.Equal(least, links.Zip(each, (link, size) => link.Meters * size.Area.SquareMillimeters).Sum(), 1e-9);
        }

        Assert.InRange(withAnswer, 10, 40);
    }

    // 9 W at 10 V draw 0.9 A, and 2 V may drop: 2.222 Ω. Where 4 V are enough the run collapses first, at 6 V: 36/9 = 4 Ω.
    [Theory]
    [InlineData(10, 2.2222222222)]
    [InlineData(4, 4)]
    public void LargestLoopResistance_IsThatOfTheLimit(double lowest, double ohms) => Assert.Equal(ohms,
        CableRunQuestions.LargestLoopResistance(Load.ConstantPower(Power.FromWatts(9)), Volts(12), VoltageLimit.AtLeast(Volts(lowest)))!.Value.Ohms, 1e-9);

    // From 2.2 A a limit of 2 A within 10 % opens: 12 V / 2.2 A = 5.4545 Ω, less 0.15 Ω and 0.05 Ω. 18 AWG solid copper has 20.948 Ω/km a wire.
    [Fact]
    public void LongestLengthThatOperates_IsThatOfTheSmallestCertainCurrent()
    {
        var limit = new ElectronicLimit("limit", ElectricCurrent.FromAmperes(2), Ratio.FromPercent(10), Duration.FromMilliseconds(5), ElectricResistance.FromMilliohms(50), Volts(30));
        var run = new CableRun(Cable.Pair(WireSize.Awg(18), Stranding.Solid, ConductorMaterial.AnnealedCopper), Length.FromMeters(10));
        Temperature cool = Temperature.FromDegreesCelsius(20);
        ElectricResistance source = ElectricResistance.FromMilliohms(150);
        Assert.Equal(5.254545 / (2 * 0.020948236), run.LongestLengthThatOperates(limit, Volts(12), source, Duration.FromMilliseconds(5), cool, cool)!.Value.Meters, 1e-2);
        Assert.Null(run.LongestLengthThatOperates(limit, Volts(12), source, Duration.FromMilliseconds(4), cool, cool));
        Assert.Null(run.LongestLengthThatOperates(limit, Volts(0.4), source, Duration.FromMilliseconds(5), cool, cool));
        Assert.Null(run.LongestLengthThatOperates(ProtectiveDevice.None, Volts(12), source, Duration.FromSeconds(5), cool, cool));
    }

    [Fact]
    public void LargestLoopResistance_IsNone_WhereTheSourceIsTooLow() =>
        Assert.Null(CableRunQuestions.LargestLoopResistance(Load.ConstantPower(Power.FromWatts(9)), Volts(12), VoltageLimit.AtLeast(Volts(13))));

    private static ElectricPotential Volts(double volts) => ElectricPotential.FromVolts(volts);

    private static double Volume((double Meters, double Watts)[] links, int[] gauges) =>
        links.Zip(gauges, (link, gauge) => link.Meters * WireSize.Awg(gauge).Area.SquareMillimeters).Sum();

    private static bool IsEnough((double Meters, double Watts)[] links, int[] gauges, double lowest)
    {
        ChainResult result = Chain(links, gauges).Feed(Volts(12), Mild);
        return result.HasOperatingPoint && result.Taps.All(tap => tap.LoadVoltage.Volts >= lowest);
    }

    private static CameraChain Chain((double Meters, double Watts)[] links, int[] gauges) => new([.. links.Zip(gauges, (link, gauge) => new ChainLink(
        Cable.Pair(WireSize.Awg(gauge), Stranding.ClassB, ConductorMaterial.AnnealedCopper), Length.FromMeters(link.Meters), Load.ConstantPower(Power.FromWatts(link.Watts))))]);
}
