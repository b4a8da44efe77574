using System;
using CamPower.Tests.Protection;
using UnitsNet;

namespace CamPower.Tests.Faults;

/// <summary>Faults whose current falls below a gate while the conductors warm.</summary>
public class WarmingFaultTests
{
    // 24 AWG is 25.67 Ω/1000 ft at 20 °C (NBS Handbook 100): 31 m are 2.611 Ω, and 12 V behind 0.06 Ω more 4.49 A, 2.25 times a fuse F of 2 A: 30 min.
    // A meter has 22.98 K/W to the air (11.461 K/W of 18 AWG, NEC Table 310.16, times the ratio of the diameters). It settles where I = 12/(0.06 + 2.611·(1 + 0.00393·K))
    // and K = 22.98·I²·0.08422·(1 + 0.00393·K): at 3.96 A K = 30.36/(1 − 0.1193) = 34.5, and 12/(0.06 + 2.965) = 3.97 A, below 2.1 times. So it may never open.
    [Fact]
    public void AWarmCable_MayKeepAFuseFromOpening()
    {
        ShortCircuit fault = Short(InstallationMethod.InCableOrRaceway(2));
        Assert.Equal(4.49, fault.Largest!.Value.Amperes, 0.01);
        Assert.Equal(3.967, fault.Smallest.Amperes, 0.005);
        Assert.Equal(OperatingVerdict.MayOperate, fault.Verdict);
        Assert.Null(fault.Opening.Latest);
        Assert.Null(fault.LetThrough);
        Assert.False(fault.Missing.HasFlag(FaultData.InstallationMethod));
    }

    // 13.5 m are 2.274 Ω: 5.14 A at first, and 43.9 K leave 12/(0.06 + 2.667) = 4.40 A. 10.5 m are 1.769 Ω: 6.56 A at first, and within 2 s.
    // Where its installation method is not stated it is taken to lie in a large bundle, which leaves it warmer; within a gate of 2 s no heat leaves it either way.
    [Theory]
    [InlineData(15.5, false, OperatingVerdict.MayOperate)]
    [InlineData(13.5, true, OperatingVerdict.Operates)]
    [InlineData(13.5, false, OperatingVerdict.MayOperate)]
    [InlineData(10.5, false, OperatingVerdict.Operates)]
    public void TheLaying_DecidesWhatTakesLonger(double meters, bool isLaid, OperatingVerdict verdict)
    {
        ShortCircuit fault = Short(isLaid ? InstallationMethod.InCableOrRaceway(2) : null, meters);
        Assert.Equal(verdict, fault.Verdict);
        if (isLaid || verdict == OperatingVerdict.Operates) Assert.True(fault.Smallest.Amperes > 12 / (0.06 + (meters * 2 * 0.0842 * 1.2)));
    }

    // 28 AWG, 5.6 A: 2.8 times a fuse F of 2 A, within 2 s at first. Copper of 0.0804 mm² warms by (5.6/0.0804)²·0.01724/3.45 = 24 K/s, so that within those
    // 2 s the current falls below the 5.5 A of the gate: it is certain within 30 min only, and then not at all, for it settles below 4.2 A.
    [Fact]
    public void WithinAGateOfTwoSeconds_AThinWireWarmsToo()
    {
        Cable thin = Cable.Pair(WireSize.Awg(28), Stranding.Solid, ConductorMaterial.AnnealedCopper, insulation: Insulation.Pvc70);
        double meters = ((12 / 5.6) - 0.06) / new CableRun(thin, Length.FromMeters(1)).LoopResistanceAt(SmallDevices.Room).Ohms;
        Assert.Equal(OperatingVerdict.MayOperate, Short(InstallationMethod.InCableOrRaceway(2), meters, thin).Verdict);
        Assert.Equal(OperatingVerdict.Operates, Short(InstallationMethod.InCableOrRaceway(2), meters * 0.7, thin).Verdict);
    }

    // What the supply limits is not lowered by a few ohms more: 4.3 A behind 12 V and 1.4 Ω, cold or warm; 2.15 times a fuse F of 2 A.
    [Fact]
    public void ACurrentThatTheSupplyHolds_StaysWhileTheConductorsWarm()
    {
        Supply holding = SmallFault.Source(OverloadBehavior.ConstantCurrent(ElectricCurrent.FromAmperes(4.3)), ohms: 0.01);
        ShortCircuit fault = Short(InstallationMethod.InCableOrRaceway(2), 8, source: holding);
        Assert.Equal(4.3, fault.Smallest.Amperes, 1e-9);
        Assert.Equal(1800 * 4.2 * 4.2 / 4.3 / 4.3, fault.Opening.Latest!.Value.Seconds, 1e-6);
    }

    internal static ShortCircuit Short(InstallationMethod? installationMethod, double meters = 15.5, Cable? cable = null, Supply? source = null) => new FaultStudy(
        new CableRun(cable ?? Cable.Pair(WireSize.Awg(24), Stranding.Solid, ConductorMaterial.AnnealedCopper, insulation: Insulation.Pvc70), Length.FromMeters(meters)),
        source ?? SmallFault.Source(ohms: 0.01), SmallDevices.Fuse(FuseCharacteristic.IecQuickActing, 2, ohms: 0.05), SmallFault.Between(20, 20), installationMethod).AtFarEnd;
}
