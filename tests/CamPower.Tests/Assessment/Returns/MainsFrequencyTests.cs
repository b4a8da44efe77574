using System;
using System.Linq;
using UnitsNet;
using static CamPower.Tests.Assessment.Returns.ReturnSites;

namespace CamPower.Tests.Assessment.Returns;

/// <summary>The mains-frequency voltage on video shields, which is seen, beside their DC shift, which the clamp removes.</summary>
public class MainsFrequencyTests
{
    // By hand: 1 A divides between 0.5 Ω and 0.9 Ω + 0.1 Ω; a third of it, 1/3 A, along 0.9 Ω is 0.3 V, and 0.5 % of that 1.5 mV.
    [Fact]
    public void RippleOfOneBox_IsItsShareOfTheShift()
    {
        ShieldInCondition shield = OneCamera(Box("a", 12, ripplePercent: 0.5)).Assess().Shields[0].Worst;
        Assert.Equal(1.0 / 3, shield.DirectCurrent.Amperes, 1e-12);
        Assert.Equal(0.3, shield.DcShift.Volts, 1e-12);
        Assert.Equal(0.0015, shield.MainsFrequencyVoltage!.Value.Volts, 1e-14);
    }

    [Fact]
    public void RippleThatNobodyDeclares_IsNotTakenAsNone()
    {
        Assert.Null(OneCamera(Box("a", 12)).Assess().Shields[0].Worst.MainsFrequencyVoltage);
        Assert.Equal(0, OneCamera(Box("a", 12, ripplePercent: 0)).Assess().Shields[0].Worst.MainsFrequencyVoltage!.Value.Volts);
    }

    // The whole current of an AC camera is at mains frequency, and shifts nothing.
    [Fact]
    public void AcCamera_PutsItsWholeCurrentOnTheShield()
    {
        ShieldInCondition shield = OneCamera(Box("a", 24, kind: CurrentKind.Ac)).Assess().Shields[0].Worst;
        Assert.Equal(0, shield.DcShift.Volts);
        Assert.Equal(0.3, shield.MainsFrequencyVoltage!.Value.Volts, 1e-12);
    }

    // An AC camera's shield meets a DC camera's: its share of the current goes through both.
    [Fact]
    public void AcAndDcCamera_OnOneGround_AreFoundApart()
    {
        double[] ac = Shares(0.5, 0), dc = Shares(0, 0.8);
        SiteAssessment solved = Of([Box("a", 24, kind: CurrentKind.Ac), Box("b", 12, ripplePercent: 2)],
            [Run("a", 1, "1", 1.0), Run("b", 1, "2", 1.6)], [Amperes(1, 0.5), Amperes(2, 0.8)],
            [Link(1, "g", 0.9), Link(2, "g", 0.6)], [Bond("g", "a", 0.1), Bond("g", "b", 0.3)]).Assess();
        double[] ohms = [0.9, 0.6];
        for (int k = 0; k < 2; k++)
        {
            Assert.Equal(dc[k] * ohms[k], solved.Shields[k].Worst.DcShift.Volts, 1e-12);
            Assert.Equal((Math.Abs(ac[k]) + (0.02 * Math.Abs(dc[k]))) * ohms[k], solved.Shields[k].Worst.MainsFrequencyVoltage!.Value.Volts, 1e-12);
        }

        static double[] Shares(double ofFirst, double ofSecond)
        {
            Func<string, double> volts = new Nodal().Resistance("n1", "0", 0.5).Resistance("n2", "b", 0.8).Resistance("n1", "g", 0.9).Resistance("n2", "g", 0.6)
                .Resistance("g", "0", 0.1).Resistance("g", "b", 0.3).Current(ofFirst, "n1").Current(ofSecond, "n2", "b").Solve();
            return [(volts("n1") - volts("g")) / 0.9, (volts("n2") - volts("g")) / 0.6];
        }
    }

    // Two boxes in a ring of two grounds: where their direct currents oppose each other in a shield, their ripples, of
    // which nobody knows how they lie to each other, may not.
    [Fact]
    public void RipplesOfTwoBoxes_AreAddedWithoutRegardToSign()
    {
        double[] ohms = [0.9, 0.6, 0.8, 0.5];
        double[] fromA = Shares(1, 0), fromB = Shares(0, 1), both = Shares(1, 1);
        SiteAssessment solved = Of([Box("a", 12, ripplePercent: 1), Box("b", 24, ripplePercent: 3)],
            [Run("a", 1, "1", 1.0), Run("a", 2, "2", 1.6), Run("b", 1, "3", 2.0), Run("b", 2, "4", 3.0)],
            [Amperes(1, 0.9), Amperes(2, 0.2), Amperes(3, 0.7), Amperes(4, 0.1)],
            [Link(1, "g", 0.9), Link(2, "h", 0.6), Link(3, "g", 0.8), Link(4, "h", 0.5)]).Assess();
        Assert.All(Enumerable.Range(0, 4), k =>
        {
            Assert.Equal(both[k] * ohms[k], solved.Shields[k].Worst.DcShift.Volts, 1e-12);
            double expected = ((0.01 * Math.Abs(fromA[k])) + (0.03 * Math.Abs(fromB[k]))) * ohms[k];
            Assert.Equal(expected, solved.Shields[k].Worst.MainsFrequencyVoltage!.Value.Volts, 1e-12);
        });
        Assert.Contains(Enumerable.Range(0, 4), k => fromA[k] * fromB[k] < 0);

        double[] Shares(double a, double b)
        {
            Func<string, double> volts = new Nodal().Resistance("n1", "0", 0.5).Resistance("n2", "0", 0.8).Resistance("n3", "b", 1.0).Resistance("n4", "b", 1.5)
                .Resistance("n1", "g", 0.9).Resistance("n2", "h", 0.6).Resistance("n3", "g", 0.8).Resistance("n4", "h", 0.5)
                .Current(0.9 * a, "n1").Current(0.2 * a, "n2").Current(0.7 * b, "n3", "b").Current(0.1 * b, "n4", "b").Solve();
            string[] grounds = ["g", "h", "g", "h"];
            return [.. Enumerable.Range(0, 4).Select(k => (volts($"n{k + 1}") - volts(grounds[k])) / ohms[k])];
        }
    }

    private static Site OneCamera(DistributionBox box) => Of([box], [Run("a", 1, "1", 1.0)], [Amperes(1, 1)], [Link(1, "g", 0.9)], [Bond("g", "a", 0.1)]);
}
