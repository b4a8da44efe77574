using System;
using CamPower.Tests.Protection;
using UnitsNet;

namespace CamPower.Tests.Faults;

/// <summary>Faults that outlast the adiabatic 5 s: what the conductors get to. By hand: 18 AWG in a cable has 11.461 K·m/W to the
/// air (NEC Table 310.16, see SelfHeatingTests), 20.948 mΩ/m at 20 °C and 2.8537 J/(K·m); the air and the conductor are at 30 °C.</summary>
public class LastingFaultTests
{
    private static readonly InstallationMethod Cable = InstallationMethod.InCableOrRaceway(currentCarryingConductors: 2);

    // 10 A: x = 24.01 K, 20 + 34.01/(1 − 24.01 × 0.00393) = 57.6 °C, below 70 °C. 13 A: 80.2 °C. 20 A: 190 °C, above 160 °C. 25 A: beyond
    // 250 °C. 33 A: x·α above 1, it runs away. Nothing reaches k²S² = 8960 A²s within 5 s.
    [Theory]
    [InlineData(10, WithstandVerdict.Withstands, 57.55)]
    [InlineData(13, WithstandVerdict.HotterThanInService, 80.17)]
    [InlineData(20, WithstandVerdict.DoesNotWithstand, 190.3)]
    [InlineData(25, WithstandVerdict.DoesNotWithstand, null)]
    [InlineData(33, WithstandVerdict.DoesNotWithstand, null)]
    public void NothingEndsIt_TheSteadyTemperatureDecides(double amperes, WithstandVerdict verdict, double? celsius)
    {
        ShortCircuit fault = Study(amperes, ProtectiveDevice.None, Cable).AtFarEnd;
        Assert.Equal(verdict, fault.WithstandVerdict);
        Assert.Equal(celsius ?? -1, fault.IfItLasts!.ConductorTemperature?.DegreesCelsius ?? -1, 0.1);
    }

    // A fuse of 7.5 A (UL 248-14) is open within 2 min at 15 A: 30 + 71.3 × (1 − e^(−120 × 0.024084)) = 97.3 °C, between service and fault.
    // One of 5 A at 3 times has the same 2 min. Without a word on how it lies, 1.717 K/s for 2 min is 236 K: too much to say anything.
    [Fact]
    public void AFuseEndsIt_TheTemperatureByThenDecides()
    {
        Fuse slow = SmallDevices.Fuse(FuseCharacteristic.UlFast, 7.5);
        Assert.Equal(WithstandVerdict.HotterThanInService, Study(15, slow, Cable).AtFarEnd.WithstandVerdict);
        ShortCircuit unknown = Study(15, slow, installationMethod: null).AtFarEnd;
        Assert.Equal(WithstandVerdict.Unknown, unknown.WithstandVerdict);
        Assert.Equal(FaultData.InstallationMethod, unknown.Missing & ~FaultData.OutputCapacitance);
        Assert.Null(unknown.IfItLasts);

        // 20 A for 2 min: 30 + 160.3 × (1 − e^(−120 × 0.019036)) = 174 °C, above 160 °C; for 40 s 115 °C. At the third of the time it stands.
        Assert.Equal(WithstandVerdict.DoesNotWithstand, Study(20, SmallDevices.Fuse(FuseCharacteristic.UlFast, 10), Cable).AtFarEnd.WithstandVerdict);
        Assert.Equal(WithstandVerdict.HotterThanInService, Study(20, Custom(10, 40), Cable).AtFarEnd.WithstandVerdict);
    }

    // Without an installation method no heat is taken to leave: 10 A for 8 s are 0.763 K/s, 36 °C. That is enough to say that it stands.
    [Fact]
    public void WithoutALaying_TheAdiabaticBoundMayBeEnough()
    {
        Supply supply = SmallFault.Source(OverloadBehavior.Shutdown(ElectricCurrent.FromAmperes(10), Duration.FromSeconds(8)));
        Assert.Equal(WithstandVerdict.Withstands, SmallFault.Study(Eighteen(Insulation.Pvc70), ProtectiveDevice.None, supply, SmallFault.Between(30, 30)).AtFarEnd.WithstandVerdict);
    }

    // A rating of 60 °C says what is too hot in service: 10 A are 57.6 °C, 11 A 63.9 °C (x = 29.05 K, 20 + 39.05/0.88583 = 64.1), and what it stands then nobody knows.
    [Theory]
    [InlineData(10, WithstandVerdict.Withstands)]
    [InlineData(11, WithstandVerdict.Unknown)]
    public void ARatingAlone_IsEnoughBelowIt(double amperes, WithstandVerdict verdict) => Assert.Equal(verdict,
        Study(amperes, ProtectiveDevice.None, Cable, Insulation.Rated(Temperature.FromDegreesCelsius(60))).AtFarEnd.WithstandVerdict);

    // Pulses heat by their RMS: 40 A for 10 ms every 160 ms are 10 A.
    [Fact]
    public void Pulses_HeatByTheirRms()
    {
        Supply supply = SmallFault.Source(OverloadBehavior.Hiccup(ElectricCurrent.FromAmperes(40), Duration.FromMilliseconds(10), Duration.FromMilliseconds(160)));
        ShortCircuit fault = SmallFault.Study(Eighteen(Insulation.Pvc70), ProtectiveDevice.None, supply, SmallFault.Between(30, 30), Cable).AtFarEnd;
        Assert.Equal(57.55, fault.IfItLasts!.ConductorTemperature!.Value.DegreesCelsius, 0.1);
        Assert.Equal(WithstandVerdict.Withstands, fault.WithstandVerdict);
    }

    // Hottest where the air is hot and the supply at its top: 13.8 V over 1.1 Ω and 43.5 mΩ of warm copper are 12.07 A, x = 34.97 K and 20 + 44.97/0.8626 =
    // 72.1 °C. The least current, 8.92 A, leaves 51 °C; the most, 12.14 A, flows in the cold and leaves 26 °C.
    [Fact]
    public void HotAirAtTheTopOfTheTolerance_IsTheHottest()
    {
        ShortCircuit fault = SmallFault.Study(Eighteen(Insulation.Pvc70), ProtectiveDevice.None, SmallFault.Source(ohms: 1.1, percent: 15), SmallFault.Between(-10, 30), Cable).AtFarEnd;
        Assert.Equal(72.1, fault.IfItLasts!.ConductorTemperature!.Value.DegreesCelsius, 0.1);
        Assert.Equal(WithstandVerdict.HotterThanInService, fault.WithstandVerdict);
    }

    private static FaultStudy Study(double amperes, ProtectiveDevice device, InstallationMethod? installationMethod, Insulation? insulation = null) => SmallFault.Study(
        Eighteen(insulation ?? Insulation.Pvc70), device, SmallFault.Source(OverloadBehavior.ConstantCurrent(ElectricCurrent.FromAmperes(amperes))), SmallFault.Between(30, 30), installationMethod);

    private static CableRun Eighteen(Insulation insulation) => new(
        CamPower.Cable.Pair(WireSize.Awg(18), Stranding.Solid, ConductorMaterial.AnnealedCopper, insulation: insulation), oneWayLength: Length.FromMeters(1));

    private static Fuse Custom(double rated, double seconds) => SmallDevices.Fuse(
        new FuseCharacteristic("mine", SmallDevices.Amperes(1), SmallDevices.Amperes(20), new FuseTimeLimit(2, null, Duration.FromSeconds(seconds), SmallDevices.Sheet)), rated);
}
