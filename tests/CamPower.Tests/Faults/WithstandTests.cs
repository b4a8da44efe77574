using System;
using CamPower.Conductors;
using CamPower.Tests.Devices;
using UnitsNet;

namespace CamPower.Tests.Faults;

public class WithstandTests
{
    // The constants from what they are made of: K = √(Qc (β + 20)/ρ20), where Qc is the heat capacity per volume. Copper: 0.39
    // J/gK × 8.89 g/cm³ (rows S05-002, S05-003), β 234.5, 1.7241e-8 Ω·m (S05-012); 226.2. Aluminium: 2.5 J/cm³K (IEC 60949, from
    // memory), β 228, 2.8264e-8 Ω·m (S05-013); 148.1.
    [Fact]
    public void Constants_AreThoseOfTheMetals()
    {
        Assert.Equal(Math.Sqrt(0.39 * 8.89e6 * 254.5 / 1.7241e-8) * 1e-6, ConductorConstants.CopperAdiabatic.Value, 0.5);
        Assert.Equal(Math.Sqrt(2.5e6 * 248 / 2.8264e-8) * 1e-6, ConductorConstants.AluminiumAdiabatic.Value, 0.5);
    }

    // Clad aluminium really stands a little more than aluminium: 10 % copper by volume, 62.9 % IACS. The smaller k is on the safe side.
    [Fact]
    public void CopperClad_CountsAsAluminium()
    {
        double clad = Math.Sqrt(((0.1 * 3.45e6) + (0.9 * 2.5e6)) * 248 / (1.7241e-8 / 0.629)) * 1e-6;
        Assert.True(clad > ConductorConstants.AluminiumAdiabatic.Value && clad < ConductorConstants.CopperAdiabatic.Value);
        Assert.Equal(76, Insulation.Pvc70.FactorFor(ConductorMaterial.CopperCladAluminium10)!.Value, 0.5);
        Assert.Equal(115, Insulation.Pvc70.FactorFor(ConductorMaterial.AnnealedCopper)!.Value, 0.5);
    }

    [Fact]
    public void Withstand_ScalesWithTheSquareOfTheSection() => Assert.All(new[] { 0.2, 0.5, 1.5, 10 }, area =>
    {
        double one = Insulation.Pvc70.WithstandOf(SmallFault.Pair(area).Outgoing)!.Value.AmpereSquaredSeconds;
        Assert.Equal(9, Insulation.Pvc70.WithstandOf(SmallFault.Pair(3 * area).Outgoing)!.Value.AmpereSquaredSeconds / one, 1e-9);
        Assert.Equal(one / 400, Insulation.Pvc70.WithstandTime(SmallFault.Pair(area).Outgoing, ElectricCurrent.FromAmperes(20))!.Value.Seconds, 1e-9 * one);
    });

    // Two wires that share the current stand twice the current, four times the I²t.
    [Fact]
    public void Withstand_CountsWiresInParallel()
    {
        Conductor one = SmallFault.Pair(0.5).Outgoing;
        Assert.Equal(4, Insulation.Pvc70.WithstandOf(one.InParallel(2))!.Value.AmpereSquaredSeconds / Insulation.Pvc70.WithstandOf(one)!.Value.AmpereSquaredSeconds, 1e-12);
    }

    // There and back: the least section for a time stands the current for just that time.
    [Fact]
    public void LeastArea_StandsForTheTime()
    {
        Area least = Insulation.CrossLinked.LeastArea(ConductorMaterial.AnnealedCopper, ElectricCurrent.FromAmperes(300), Duration.FromSeconds(0.8))!.Value;
        Assert.Equal(0.8, Insulation.CrossLinked.WithstandTime(SmallFault.Pair(least.SquareMillimeters).Outgoing, ElectricCurrent.FromAmperes(300))!.Value.Seconds, 1e-9);
    }

    // 0.5 mm² of copper in PVC stands 3306 A²s: 25.7 A for 5 s. A fuse F opens within 20 ms at 10 times its
    // rating, within 2 s at 3 times, within 30 min at 2.4 or 2.7 times. 12 V behind 0.4 Ω is 30 A: 1800 A²s in 2 s. Behind 0.45 Ω it
    // is 26.7 A, too much for 5 s already; behind 0.5 Ω it is 24 A, 2880 A²s after 5 s, and beyond nothing is known.
    [Theory]
    [InlineData(0.4, 3, WithstandVerdict.Stands)]
    [InlineData(0.45, 10, WithstandVerdict.DoesNotStand)]
    [InlineData(0.5, 10, WithstandVerdict.Unknown)]
    [InlineData(0.5, 8, WithstandVerdict.Stands)]
    public void Verdict_FollowsTheLongestFault(double ohms, double rated, WithstandVerdict verdict)
    {
        CableRun run = SmallFault.Run(0).Then(new Joint("rest", ElectricResistance.FromOhms(ohms - 0.1)));
        ShortCircuit fault = SmallFault.Study(run, SmallFault.QuickActing(rated)).AtFarEnd;
        Assert.Equal(verdict, fault.WithstandVerdict);
        Assert.Equal(3306, fault.Withstand!.Value.AmpereSquaredSeconds, 1.0);
    }

    // A rating on the jacket says nothing of a fault.
    [Fact]
    public void Verdict_OfARatingAlone_IsUnknown()
    {
        ShortCircuit fault = SmallFault.Study(SmallFault.Run(1, insulation: Insulation.Rated(Temperature.FromDegreesCelsius(60))), ProtectiveDevice.None).AtFarEnd;
        Assert.Equal(WithstandVerdict.Unknown, fault.WithstandVerdict);
        Assert.Null(fault.Withstand);
    }

    // Without a device nothing ends it. In a long thin run it does not reach the limit within 5 s, in a short one it does.
    [Fact]
    public void WithoutADevice_NothingEndsIt()
    {
        ShortCircuit thin = SmallFault.Study(SmallFault.Run(100), ProtectiveDevice.None).AtFarEnd;
        Assert.Equal(WithstandVerdict.Unknown, thin.WithstandVerdict);
        Assert.Null(thin.LetThrough);
        Assert.Equal(WithstandVerdict.DoesNotStand, SmallFault.Study(SmallFault.Run(1), ProtectiveDevice.None).AtFarEnd.WithstandVerdict);
    }

    // 10 A to 7 A over a fuse F of 2 A with the temperature of the cable: at 8 A, 4 times, its latest time drops from 2 s to 0.3 s.
    // The most I²t is just below the step, 8² × 2 = 128 A²s, not at either end (10² × 0.3, 7² × 2).
    [Fact]
    public void LetThrough_IsTheWorstBetweenColdAndHot()
    {
        // Copper at 135.6 °C has 10/7 of its resistance at 20 °C: 0.00393 × 109.05 = 3/7.
        CableRun run = SmallFault.Run(1);
        double meters = 1.2 / run.LoopResistanceAt(SmallDevices.Room).Ohms;
        ShortCircuit fault = SmallFault.Study(SmallFault.Run(meters), SmallFault.QuickActing(2), SmallFault.Source(ohms: 1e-6),
            SmallFault.Between(20, 20 + (3.0 / 7 / 0.00393))).AtFarEnd;
        Assert.Equal(10, fault.Largest!.Value.Amperes, 1e-4);
        Assert.Equal(7, fault.Smallest.Amperes, 1e-4);
        Assert.Equal(128, fault.LetThrough!.Value.AmpereSquaredSeconds, 1e-3);
    }
}
