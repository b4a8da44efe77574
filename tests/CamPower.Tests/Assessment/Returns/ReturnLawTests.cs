using System;
using System.Collections.Generic;
using System.Linq;
using UnitsNet;
using static CamPower.Tests.Assessment.Returns.ReturnSites;

namespace CamPower.Tests.Assessment.Returns;

/// <summary>Return currents that divide, against nodal equations solved here, and the laws that they keep.</summary>
/// <remarks>Source: Kuphaldt, Lessons in Electric Circuits, DC, ch. 5, 6 and 10.</remarks>
public class ReturnLawTests
{
    // By hand: 0.5 A, 0.3 A and 0.2 A through one negative of 0.5 Ω lift it by 0.5 V.
    [Fact]
    public void SharedNegative_OfConstantCurrents_IsLiftedByAllOfThem()
    {
        double[] volts = Volts(Of([Box("a", 12)],
            [Run("a", 1, "1", 1.0), Run("a", 2, "2", 1.2, "1"), Run("a", 3, "3", 1.4, "1")], [Amperes(1, 0.5), Amperes(2, 0.3), Amperes(3, 0.2)]));
        Assert.Equal(12 - 0.5 - 0.25, volts[0], 1e-12);
        Assert.Equal(12 - 0.5 - 0.18, volts[1], 1e-12);
        Assert.Equal(12 - 0.5 - 0.14, volts[2], 1e-12);
    }

    // The lift found by halving: each camera alone is a load line behind its positive, of the source less the lift.
    [Fact]
    public void SharedNegative_OfConstantPowers_IsWhereTheirCurrentsLiftIt()
    {
        double[] outOhms = [0.5, 0.6, 0.7], watts = [9, 7, 5];
        double low = 0, high = 6;
        for (int i = 0; i < 60; i++)
        {
            double lift = (low + high) / 2;
            if (Enumerable.Range(0, 3).Sum(k => watts[k] / Camera(k, lift)) * 0.5 > lift) low = lift;
            else high = lift;
        }

        double[] volts = Volts(ReturnSites.All()["shared-negative"]);
        for (int k = 0; k < 3; k++) Assert.Equal(Camera(k, low), volts[k], 1e-12);

        double Camera(int k, double lift) => (12 - lift + Math.Sqrt(((12 - lift) * (12 - lift)) - (4 * outOhms[k] * watts[k]))) / 2;
    }

    // Half of the resistance of one pole is a quarter of that of the loop: 9 W over 1 Ω in place of 4/3 Ω.
    [Fact]
    public void DoubledPositive_SavesAQuarterOfTheLoop()
    {
        double doubled = Volts(Of([Box("a", 12)], [Of58Meters(Doubled)], [Watts(1, 9)]))[0];
        double single = Volts(Of([Box("a", 12)],
            [Of58Meters(Cable.Pair(WireSize.SquareMillimeters(1.5), Stranding.Solid, ConductorMaterial.AnnealedCopper))], [Watts(1, 9)]))[0];
        Assert.Equal((12 + Math.Sqrt(144 - 36)) / 2, doubled, 1e-12);
        Assert.Equal((12 + Math.Sqrt(144 - 48)) / 2, single, 1e-12);

        static SiteRun Of58Meters(Cable cable) => new(RunOrigin.Output("a", 1), "1", new CableRun(cable, oneWayLength: Length.FromMeters(58)));
    }

    // From the far end back: what the last camera has, its feeder carries, until the box is reached.
    [Fact]
    public void Chain_FromItsFarEndBack_EndsAtTheSupply()
    {
        double[] volts = Volts(ReturnSites.All()["chain"]), loops = [0.4, 0.6, 0.8];
        double amperes = 0, at = volts[2];
        for (int k = 2; k >= 0; k--)
        {
            Assert.Equal(at, volts[k], 1e-12);
            amperes += 5 / at;
            at += loops[k] * amperes;
        }

        Assert.Equal(12, at, 1e-12);
    }

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void TwoShields_OfConstantCurrents_AreTheNodalEquations(bool bonded)
    {
        Nodal returns = new Nodal().Resistance("n1", "0", 0.5).Resistance("n2", "0", 0.9).Resistance("n1", "g", 0.9).Resistance("n2", "g", 0.6)
            .Current(0.8, "n1").Current(0.2, "n2");
        if (bonded) returns.Resistance("g", "0", 0.05);
        Func<string, double> volts = returns.Solve();

        SiteAssessment solved = Of([Box("a", 12)], [Run("a", 1, "1", 1.0), Run("a", 2, "2", 1.8)], [Amperes(1, 0.8), Amperes(2, 0.2)],
            [Link(1, "g", 0.9), Link(2, "g", 0.6)], bonded ? [Bond("g", "a", 0.05)] : []).Assess();
        Assert.Equal(12 - (0.5 * 0.8) - volts("n1"), solved.Devices[0].Worst.Voltage.Volts, 1e-12);
        Assert.Equal(12 - (0.9 * 0.2) - volts("n2"), solved.Devices[1].Worst.Voltage.Volts, 1e-12);
        Assert.Equal(volts("n1") - volts("g"), solved.Shields[0].Worst.DcShift.Volts, 1e-12);
        Assert.Equal(volts("n2") - volts("g"), solved.Shields[1].Worst.DcShift.Volts, 1e-12);

        // The heavy camera sends current into its shield. It comes back by the bond, or else by the other one's shield.
        Assert.True(solved.Shields[0].Worst.DirectCurrent.Amperes > 0);
        Assert.Equal(bonded, solved.Shields[1].Worst.DirectCurrent.Amperes > 0);
    }

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void TwoBoxesJoinedByOneGround_OfConstantCurrents_AreTheNodalEquations(bool bonded)
    {
        // Without a bond nothing holds one box to the other but the shields.
        Nodal returns = new Nodal().Resistance("n1", "0", 0.5).Resistance("n2", "b", 1.0).Resistance("n3", "b", 1.5)
            .Resistance("n1", "g", 0.9).Resistance("n2", "g", 0.8).Resistance("n3", "g", 0.5)
            .Current(0.7, "n1").Current(0.6, "n2", "b").Current(0.1, "n3", "b");
        if (bonded) returns.Resistance("g", "0", 0.1).Resistance("g", "b", 0.2);
        Func<string, double> volts = returns.Solve();

        SiteAssessment solved = Of([Box("a", 12), Box("b", 24)], [Run("a", 1, "1", 1.0), Run("b", 1, "2", 2.0), Run("b", 2, "3", 3.0)],
            [Amperes(1, 0.7), Amperes(2, 0.6), Amperes(3, 0.1)], [Link(1, "g", 0.9), Link(2, "g", 0.8), Link(3, "g", 0.5)],
            bonded ? [Bond("g", "a", 0.1), Bond("g", "b", 0.2)] : []).Assess();
        string[] nodes = ["n1", "n2", "n3"];
        Assert.All(Enumerable.Range(0, 3), k => Assert.Equal(volts(nodes[k]) - volts("g"), solved.Shields[k].Worst.DcShift.Volts, 1e-12));
        Assert.Equal(24 - 0.6 - (volts("n2") - volts("b")), solved.Devices[1].Worst.Voltage.Volts, 1e-12);
        if (!bonded) Assert.Equal(0, solved.Shields[0].Worst.DirectCurrent.Amperes, 1e-12);
    }

    // Kirchhoff's current law at the negative of the box, by what the assessment says: the negatives of the runs and
    // the bond bring back what the positives take out; and what the shields bring to the ground leaves it by the bond.
    [Fact]
    public void Currents_ThatLeaveTheBox_ComeBackByNegativesAndShields()
    {
        var random = new Random(20_260_201);
        for (int i = 0; i < 60; i++)
        {
            int cameras = random.Next(2, 7);
            bool bonded = i % 3 != 0;
            double[] halves = [.. Enumerable.Range(0, cameras).Select(_ => 0.1 + random.NextDouble())];
            Site site = Of([Box("a", 12)],
                [.. Enumerable.Range(1, cameras).Select(k => Run("a", ((k - 1) % 4) + 1, $"{k}", 2 * halves[k - 1]))],
                [.. Enumerable.Range(1, cameras).Select(k => Watts(k, Math.Round(1 + (8 * random.NextDouble()), 3)))],
                [.. Enumerable.Range(1, cameras).Select(k => Link(k, "g", 0.2 + random.NextDouble()))], bonded ? [Bond("g", "a", 0.05)] : []);

            SiteAssessment solved = site.Assess();
            double positives = 0, negatives = 0, shields = 0, ground = 0;
            for (int k = 0; k < cameras; k++)
            {
                OperatingPointOf(solved.Devices[k], out double volts, out double amperes);
                double negative = 12 - (halves[k] * amperes) - volts;
                positives += amperes;
                negatives += negative / halves[k];
                shields += solved.Shields[k].Worst.DirectCurrent.Amperes;
                ground = negative - solved.Shields[k].Worst.DcShift.Volts;
            }

            Assert.Equal(positives, negatives + shields, 1e-9);
            Assert.Equal(bonded ? ground / 0.05 : 0, shields, 1e-8);
        }
    }

    // Not a law: shields help every camera. They join the negatives, and the light camera's is lifted by the heavy one's.
    // By hand without shields 12 − 2·0.5·1 = 11 V and 12 − 2·0.5·0.1 = 11.9 V. With 0.1 Ω and 0.1 Ω in series beside
    // 0.5 Ω + 0.5 Ω the light one's negative rises from 0.05 V to 0.05 + (0.5 − 0.05)·0.5/1.2 = 0.2375 V.
    [Fact]
    public void Shields_MayLowerTheVoltageOfTheLighterCamera()
    {
        double[] without = Volts(Two(0.1, withShields: false)), with = Volts(Two(0.1, withShields: true));
        Assert.Equal(11.9, without[1], 1e-12);
        Assert.Equal(12 - 0.05 - 0.2375, with[1], 1e-12);
        Assert.True(with[0] > without[0]);
    }

    // The law (Rayleigh, of resistances that carry given currents): another way back never raises what all of them
    // together lose, so that the sum of I·V over constant currents never falls.
    [Fact]
    public void Shields_NeverLowerThePowerThatConstantCurrentsReceive()
    {
        for (double amperes = 0; amperes <= 2; amperes += 0.1)
        {
            double[] without = Volts(Two(amperes, withShields: false)), with = Volts(Two(amperes, withShields: true));
            Assert.True(with[0] + (amperes * with[1]) >= without[0] + (amperes * without[1]) - 1e-12);
        }
    }

    private static Site Two(double amperes, bool withShields) => Of([Box("a", 12)], [Run("a", 1, "1", 1.0), Run("a", 2, "2", 1.0)],
        [Amperes(1, 1), Amperes(2, amperes)], withShields ? [Link(1, "g", 0.1), Link(2, "g", 0.1)] : null);

    private static void OperatingPointOf(DeviceAssessment device, out double volts, out double amperes)
    {
        volts = device.Worst.Voltage.Volts;
        amperes = device.Worst.Current.Amperes;
    }
}
