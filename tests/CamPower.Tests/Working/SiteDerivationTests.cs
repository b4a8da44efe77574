using System;
using System.Linq;
using CamPower.Tests.Assessment.Returns;
using CamPower.Tests.Sites;
using UnitsNet;
using static CamPower.Tests.Sites.SmallSite;

namespace CamPower.Tests.Working;

/// <summary>Devices, shields and warm conductors show how they were worked out, and end where the answer does.</summary>
public class SiteDerivationTests
{
    [Fact]
    public void Explain_OfADeviceOnARunOfItsOwn_IsThatOfTheRun()
    {
        DeviceInCondition device = Single(2, Camera(Watts(10))).Assess().Devices[0].Worst;
        Derivation derivation = device.Explain();
        Steps.AssertEvaluate(derivation);
        Assert.Equal(device.Voltage.Volts, derivation.Steps.Single(s => s.Symbol == "V").Value);
    }

    [Fact]
    public void Explain_OfDevicesInAChain_HoldsTheVoltageOfEach()
    {
        SiteAssessment solved = Chain((1, Camera(Watts(5))), (1, Camera(Watts(4)))).Assess();
        Derivation derivation = solved.Devices[1].Worst.Explain();
        Steps.AssertEvaluate(derivation);
        Assert.All(solved.Devices, d => Assert.Contains(derivation.Steps, s => Math.Abs(s.Value - d.Worst.Voltage.Volts) < 1e-9));
    }

    [Fact]
    public void Explain_OfADeviceOnTheWrongCurrent_SaysThatThereIsNothing() => Assert.Throws<InvalidOperationException>(() =>
        Single(1, Camera(Watts(3)), Dc(kind: CurrentKind.Ac)).Assess().Devices[0].Worst.Explain());

    [Fact]
    public void Explain_OfAShield_GivesBothVoltages()
    {
        ShieldInCondition shield = ReturnSites.Of([ReturnSites.Box("a", 12, 3)], [ReturnSites.Run("a", 1, "1", 1.0)],
            [ReturnSites.Amperes(1, 1)], [ReturnSites.Link(1, "g", 0.9)], [ReturnSites.Bond("g", "a", 0.1)]).Assess().Shields[0].Worst;
        Derivation derivation = shield.Explain();
        Steps.AssertEvaluate(derivation);
        Assert.Equal([shield.DcShift.Volts, shield.MainsFrequencyVoltage!.Value.Volts], derivation.Steps.Select(s => s.Value));
    }

    [Theory]
    [InlineData(4)]
    [InlineData(400)]
    public void Explain_OfAWarmConductor_EndsAtItsTemperature(double amperes)
    {
        SelfHeating heat = InstallationMethod.InCableOrRaceway(16).Heat(CableCatalog.Pair18.Outgoing.InParallel(2), ElectricCurrent.FromAmperes(amperes), Temperature.FromDegreesCelsius(45));
        Derivation derivation = heat.Explain();
        Steps.AssertEvaluate(derivation);
        Assert.Equal(heat.ConductorTemperature is null ? 1 : 2, derivation.Steps.Count);
        if (heat.ConductorTemperature is Temperature hot) Assert.Equal(hot.DegreesCelsius, derivation.Steps[1].Value);
    }
}
