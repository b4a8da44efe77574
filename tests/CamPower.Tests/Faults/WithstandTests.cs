using System;
using System.Linq;
using CamPower.Conductors;
using CamPower.Tests.Protection;
using UnitsNet;

namespace CamPower.Tests.Faults;

public class WithstandTests
{
    // The constants from what they are made of: K = √(Qc (β + 20)/ρ20), where Qc is the heat capacity per volume. Copper: 0.39
    // J/gK × 8.89 g/cm³ (rows S05-002, S05-003), β 234.5, 1.7241e-8 Ω·m (S05-012); 226.2. Aluminum: 2.5 J/cm³K (IEC 60949, from
    // memory), β 228, 2.8264e-8 Ω·m (S05-013); 148.1.
    [Fact]
    public void Constants_AreThoseOfTheMetals()
    {
        Assert.Equal(Math.Sqrt(0.39 * 8.89e6 * 254.5 / 1.7241e-8) * 1e-6, ConductorConstants.CopperAdiabatic.Value, 0.5);
        Assert.Equal(Math.Sqrt(2.5e6 * 248 / 2.8264e-8) * 1e-6, ConductorConstants.AluminumAdiabatic.Value, 0.5);
    }

    // Clad aluminum really stands a little more than aluminum: 10 % copper by volume, 62.9 % IACS. The smaller k is on the safe side.
    [Fact]
    public void CopperClad_CountsAsAluminum()
    {
        double clad = Math.Sqrt(((0.1 * 3.45e6) + (0.9 * 2.5e6)) * 248 / (1.7241e-8 / 0.629)) * 1e-6;
        Assert.True(clad > ConductorConstants.AluminumAdiabatic.Value && clad < ConductorConstants.CopperAdiabatic.Value);
        Assert.Equal(76, Insulation.Pvc70.FactorFor(ConductorMaterial.CopperCladAluminum10)!.Value, 0.5);
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
    public void SmallestArea_WithstandsTheTime()
    {
        Area least = Insulation.CrossLinked.SmallestArea(ConductorMaterial.AnnealedCopper, ElectricCurrent.FromAmperes(300), Duration.FromSeconds(0.8))!.Value;
        Assert.Equal(0.8, Insulation.CrossLinked.WithstandTime(SmallFault.Pair(least.SquareMillimeters).Outgoing, ElectricCurrent.FromAmperes(300))!.Value.Seconds, 1e-9);
    }

    // 0.5 mm² of copper in PVC withstands 3306 A²s: 25.7 A for 5 s. A fuse F opens within 20 ms at 10 times its
    // rating, within 2 s at 3 times, within 30 min at 2.4 or 2.7 times. 12 V behind 0.4 Ω is 30 A: 1800 A²s in 2 s. Behind 0.45 Ω it
    // is 26.7 A, too much for 5 s already; behind 0.5 Ω it is 24 A, 2880 A²s after 5 s, and beyond nothing is known.
    [Theory]
    [InlineData(0.4, 3, WithstandVerdict.Withstands)]
    [InlineData(0.45, 10, WithstandVerdict.DoesNotWithstand)]
    [InlineData(0.5, 10, WithstandVerdict.Unknown)]
    [InlineData(0.5, 8, WithstandVerdict.Withstands)]
    public void Verdict_FollowsTheLongestFault(double ohms, double rated, WithstandVerdict verdict)
    {
        CableRun run = SmallFault.Run(0.0001).Then(new Joint("rest", ElectricResistance.FromOhms(ohms - 0.1)));
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
        Assert.Equal(WithstandVerdict.DoesNotWithstand, SmallFault.Study(SmallFault.Run(1), ProtectiveDevice.None).AtFarEnd.WithstandVerdict);
    }

    // A fuse of 10 A that opens within 600 s at 20 A and 1 s at 40 A, between 21.7 A and 45 A: by the adiabatic bound it lets 20² × 600 = 240 000 A²s through just below
    // 40 A too, more than the (115 × 3.31)² = 145 000 A²s of 12 AWG. There, in 150 s, heat leaves it least. Its 10.0 K·m/W (30 A from 30 °C to 90 °C, NEC Table 310.16) and
    // 5.21 mΩ/m leave 21.7 A at 55 °C at the most, and 45 A are over in 0.8 s; but 40 A are 8.7 W/m on 11.4 J/(K·m), 0.76 K/s at first: beyond 70 °C in a minute.
    [Theory]
    [InlineData(35, WithstandVerdict.HotterThanInService)]
    [InlineData(0, WithstandVerdict.Withstands)]
    public void Withstand_IsTheWorstJustBelowALimit(double percent, WithstandVerdict verdict)
    {
        var limits = new FuseCharacteristic("mine", SmallDevices.Amperes(1), SmallDevices.Amperes(20), new FuseTimeLimit(2, null, Duration.FromSeconds(600), SmallDevices.Sheet),
            new FuseTimeLimit(4, null, Duration.FromSeconds(1), SmallDevices.Sheet));
        Cable cable = Cable.Pair(WireSize.Awg(12), Stranding.Solid, ConductorMaterial.AnnealedCopper, insulation: Insulation.Pvc70);
        double volts = percent > 0 ? 12 : 7.8;
        ShortCircuit fault = SmallFault.Study(new CableRun(cable, Length.FromMeters(0.001)), SmallDevices.Fuse(limits, 10), SmallFault.Source(volts: volts, ohms: 0.36, percent: percent),
            SmallFault.Between(30, 30), InstallationMethod.InCableOrRaceway(2)).AtFarEnd;
        Assert.Equal(240_000, fault.LetThrough!.Value.AmpereSquaredSeconds, 100.0);
        Assert.Equal(verdict, fault.WithstandVerdict);
    }

    // At the origin of a cable the current is largest, at its end least. 9 m of 0.5 mm² are 0.62 Ω: 12 V behind 0.1 Ω are 120 A at its origin and 16.6 A at its end. A fuse T of
    // 5 A lets 10 s × 13.75² = 1891 A²s through just below 20 A; 0.2 mm² withstand (115 × 0.2)² = 529 A²s, 0.5 mm² 3306 A²s. With the
    // smaller cable behind the larger it is the smaller one's origin that counts.
    [Theory]
    [InlineData(0.5, 0.5, true)]
    [InlineData(0.2, 0.2, false)]
    [InlineData(0.5, 0.2, false)]
    public void LetThrough_IsHeldAgainstEachPieceFromItsOrigin(double first, double second, bool stands)
    {
        CableRun run = SmallFault.Run(0.5, first).Then(new CableSegment(SmallFault.Pair(second), Length.FromMeters(9)));
        FaultStudy study = SmallFault.Study(run, SmallDevices.Fuse(FuseCharacteristic.IecTimeLag, 5), installationMethod: InstallationMethod.LargeBundle);
        Assert.Equal(["terminals", "change of cable", "far end"], study.Shorts.Select(s => s.Place));
        Assert.Equal(first >= 0.5, study.AtTerminals.WithstandVerdict == WithstandVerdict.Withstands);
        Assert.Equal(stands, study.Shorts[1].WithstandVerdict == WithstandVerdict.Withstands);
        Assert.Equal(second < 0.5 ? 529 : 3306, study.Shorts[1].Withstand!.Value.AmpereSquaredSeconds, 1.0);
    }

    // Past 5 s an I²t of at most k²S² is enough, for no heat is taken to leave: 21 A for 7.2 s are 3175 A²s, 0.5 mm² withstand 3306 A²s. 22 A are 3485 A²s:
    // from 20 °C on and not from 70 °C, that is no more than hotter than in service.
    [Theory]
    [InlineData(21, WithstandVerdict.Withstands)]
    [InlineData(22, WithstandVerdict.HotterThanInService)]
    public void PastFiveSeconds_APassingIntegralIsEnough(double amperes, WithstandVerdict verdict)
    {
        Supply supply = SmallFault.Source(OverloadBehavior.Shutdown(ElectricCurrent.FromAmperes(amperes), Duration.FromSeconds(7.2)));
        Assert.Equal(verdict, SmallFault.Study(SmallFault.Run(0.1), ProtectiveDevice.None, supply).AtFarEnd.WithstandVerdict);
    }
}
