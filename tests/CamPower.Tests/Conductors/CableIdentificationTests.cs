using System;
using System.Collections.Generic;
using System.Linq;
using FsCheck;
using UnitsNet;

namespace CamPower.Tests.Conductors;

/// <summary>From a reading to the cable, and what no reading can tell apart.</summary>
public class CableIdentificationTests
{
    private static readonly Length Hundred = Length.FromFeet(100);

    private static readonly Temperature Warm = Temperature.FromDegreesCelsius(31.5);

    public static TheoryData<string> Cables => [.. Known.Select(c => c.ToString())];

    private static IEnumerable<Cable> Known => CableIdentification.UsualCandidates.Concat(CableCatalog.All);

    [Theory]
    [MemberData(nameof(Cables))]
    public void Of_ItsOwnLoop_NamesTheCableFirst(string name)
    {
        Cable cable = Known.First(c => c.ToString() == name);
        ElectricResistance loop = new CableRun(cable, oneWayLength: Hundred).LoopResistanceAt(Warm);
        IReadOnlyList<CableCandidate> best = CableIdentification.Of(loop, Hundred, Warm, Ratio.FromPercent(0.01), Known).Groups[0];
        Assert.True(best[0].Fits);
        CableCandidate found = best.First(c => c.Cable == cable);
        Assert.Equal(0, found.Deviation.DecimalFractions, 1e-12);
        Assert.Equal(loop.Ohms, found.ExpectedLoop.Ohms, 1e-12 * loop.Ohms);
    }

    // 18 AWG is 6.385 Ω/1000 ft in copper (NBS Handbook 100), 10.15 in copper-clad aluminum of 62.9 % IACS (ASTM B566);
    // 20 AWG copper is 10.15 (NBS Handbook 100). A loop of 100 ft reads 2.030 Ω either way.
    [Fact]
    public void Of_EighteenCladOrTwentyCopper_IsOneGroup()
    {
        CableIdentification read = CableIdentification.Of(ElectricResistance.FromOhms(2.030), Hundred, Temperature.FromDegreesCelsius(20), Ratio.FromPercent(0.1));
        string[] best = [.. read.Groups[0].Select(c => c.Cable.ToString()).Order(StringComparer.Ordinal)];
        Assert.Equal(["pair of 18 AWG solid copper-clad aluminum 10 %", "pair of 20 AWG solid annealed copper"], best);
        Assert.True(read.Groups[0][0].Fits);
        Assert.Single(read.Fitting);
    }

    // Eighteen copper at 20 °C is 1.277 Ω over 100 ft; 2 % off it is the stranded one.
    [Fact]
    public void Of_ATolerance_WidensTheGroup()
    {
        IReadOnlyList<CableCandidate> sharp = Best(0.5), coarse = Best(3);
        Assert.Equal("pair of 18 AWG solid annealed copper", sharp[0].Cable.ToString());
        Assert.DoesNotContain(sharp, c => c.Cable.ToString() == "pair of 18 AWG class B stranded annealed copper");
        Assert.Contains(coarse, c => c.Cable.ToString() == "pair of 18 AWG class B stranded annealed copper");

        static IReadOnlyList<CableCandidate> Best(double percent) =>
            CableIdentification.Of(ElectricResistance.FromOhms(1.277), Hundred, Temperature.FromDegreesCelsius(20), Ratio.FromPercent(percent)).Groups[0];
    }

    [Fact]
    public void Of_WhatNothingFits_SaysSoAndStillRanks()
    {
        CableIdentification read = CableIdentification.Of(ElectricResistance.FromOhms(500), Hundred, Warm, Ratio.FromPercent(2));
        Assert.Empty(read.Fitting);
        Assert.False(read.Groups[0][0].Fits);
        Assert.Equal(WireSize.Awg(26), read.Groups[0][0].Cable.Outgoing.Size);
        Assert.StartsWith("nothing fits", read.ToString(), StringComparison.Ordinal);
        Assert.Throws<ArgumentException>(() => CableIdentification.Of(ElectricResistance.FromOhms(1), Hundred, Warm, Ratio.Zero, []));
    }

    // Each candidate once; nearest first; inside a group all within the tolerance of the first, and no other leader within it.
    [SeededProperty(MaxTest = 200)]
    public void Groups_PartTheCandidates(PositiveInt step, byte tenthsOfPercent)
    {
        double tolerance = (tenthsOfPercent % 60) / 1000.0;
        CableIdentification read = CableIdentification.Of(ElectricResistance.FromMilliohms(100 + (step.Get * 197 % 10_000)), Hundred, Warm, Ratio.FromDecimalFractions(tolerance));
        List<CableCandidate> all = [.. read.Groups.SelectMany(g => g)];
        Assert.Equal(CableIdentification.UsualCandidates.ToHashSet(), all.Select(c => c.Cable).ToHashSet());
        Assert.Equal(CableIdentification.UsualCandidates.Count, all.Count);
        List<CableCandidate> leaders = [.. read.Groups.Select(g => g[0])];
        Assert.Equal(leaders.OrderBy(Off), leaders);
        Assert.All(read.Groups, g =>
        {
            Assert.Equal(g.OrderBy(Off), g);
            Assert.Equal(Off(g[0]) <= tolerance, g[0].Fits);
            Assert.All(g, c => Assert.True(Apart(c, g[0]) <= tolerance + 1e-12));
        });
        for (int i = 1; i < leaders.Count; i++) Assert.True(leaders.Take(i).All(earlier => Apart(leaders[i], earlier) > tolerance));

        static double Off(CableCandidate c) => Math.Abs(c.Deviation.DecimalFractions);
        static double Apart(CableCandidate c, CableCandidate from) => Math.Abs((c.ExpectedLoop.Ohms / from.ExpectedLoop.Ohms) - 1);
    }
}
