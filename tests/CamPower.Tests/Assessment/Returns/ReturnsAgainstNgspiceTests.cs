using System;
using System.Collections.Generic;
using System.Linq;

namespace CamPower.Tests.Assessment.Returns;

/// <summary>Sites whose return currents divide, against a general circuit simulator, ngspice 39, on decks written by hand.</summary>
public class ReturnsAgainstNgspiceTests
{
    private static readonly Dictionary<string, Site> Sites = ReturnSites.All();

    public static TheoryData<string> Names => [.. ReturnDecks.Names];

    [Fact]
    public void EverySite_HasADeck() => Assert.Equal(Sites.Keys.Order(StringComparer.Ordinal), ReturnDecks.Names);

    [Theory]
    [MemberData(nameof(Names))]
    public void EveryCamera_GetsTheSimulatedVoltage(string name)
    {
        Dictionary<string, double> simulated = ReturnDecks.Read(name);
        Assert.Equal(ReturnDecks.NodesOf(name).Order(StringComparer.Ordinal), simulated.Keys.Order(StringComparer.Ordinal));
        foreach (DeviceAssessment device in Sites[name].Assess().Devices)
        {
            double expected = simulated["p" + device.Device.At] - simulated[Negative(simulated, name, device.Device.At)];
            Assert.Equal(expected, device.Worst.Voltage.Volts, 1e-9 * expected);
        }
    }

    // Also where what goes out in a run comes back elsewhere. Along a negative of another run there is nothing to say.
    [Theory]
    [MemberData(nameof(Names))]
    public void Profile_EndsAtTheSimulatedVoltage_WhereEveryRunHasItsReturn(string name)
    {
        Dictionary<string, double> simulated = ReturnDecks.Read(name);
        foreach (DeviceAssessment device in Sites[name].Assess().Devices)
        {
            VoltageProfile? profile = device.Worst.Profile();
            Assert.Equal(device.Path.Any(r => r.ReturnAt is not null), profile is null);
            if (profile is null) continue;
            double expected = simulated["p" + device.Device.At] - simulated[Negative(simulated, name, device.Device.At)];
            Assert.Equal(expected, profile.Points[^1].Voltage.Volts, 1e-9 * expected);
        }
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void EveryShield_HasTheSimulatedVoltageAlongIt(string name)
    {
        Dictionary<string, double> simulated = ReturnDecks.Read(name);
        foreach (ShieldAssessment shield in Sites[name].Assess().Shields)
        {
            string at = Sites[name].Devices.Single(d => d.Name == shield.Link.Device).At;
            double expected = simulated[Negative(simulated, name, at)] - simulated[shield.Link.Ground];
            Assert.Equal(expected, shield.Worst.DcShift.Volts, 1e-8);
            Assert.Equal(expected / shield.Link.ShieldResistance.Ohms, shield.Worst.DirectCurrent.Amperes, 1e-8);
        }
    }

    // A camera that shares another one's negative stands at its node.
    private static string Negative(Dictionary<string, double> simulated, string name, string at) => simulated.ContainsKey("n" + at)
        ? "n" + at
        : "n" + Sites[name].Runs.Single(r => r.To == at).ReturnAt;
}
