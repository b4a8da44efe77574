using System;
using System.Linq;
using UnitsNet;

namespace CamPower.Tests.Protection;

public class ConnectorTests
{
    // EIAJ RC-5320A (seen in an encyclopedia's page): 3.15, 6.3, 10.5 and 13.5 V part the classes, 2 A each; 18 V from memory.
    [Fact]
    public void UnifiedBarrels_FollowEachOther()
    {
        Assert.Equal(["3.15 V to 6.3 V", "6.3 V to 10.5 V", "10.5 V to 13.5 V", "13.5 V to 18 V"], Connector.UnifiedBarrels.Select(c => c.VoltageClass!.ToString()));
        Assert.All(Connector.UnifiedBarrels, c => Assert.Equal(2, c.RatedCurrent!.Value.Amperes));
        Assert.Equal("EIAJ RC-5320A class 4", Connector.UnifiedBarrels[2].ToString());
    }

    // Common practice, no source: 24 to 12 AWG. A barrel that nobody rated counts for the least that one is sold with, 1 A.
    [Fact]
    public void UsualOnes_SayWhatIsKnownOfThem()
    {
        Assert.True(Connector.ScrewTerminal.Wires!.Accepts(WireSize.Awg(12)) && !Connector.ScrewTerminal.Wires.Accepts(WireSize.Awg(26)));
        Assert.Null(Connector.ScrewTerminal.RatedCurrent);
        Assert.Equal(1, Connector.CommonBarrel.RatedCurrent!.Value.Amperes);
        Assert.Null(Connector.CommonBarrel.VoltageClass);
        Assert.Equal(6, Connector.Usual.Select(c => c.Name).Distinct().Count());
    }

    [Fact]
    public void Connector_RefusesWhatCannotBe()
    {
        Assert.Throws<ArgumentException>(() => new Connector("", Sources.CommonPractice));
        Assert.Throws<ArgumentNullException>(() => new Connector("plug", null!));
        Assert.All(new[] { 0.0, -1 }, amperes =>
            Assert.Throws<ArgumentOutOfRangeException>(() => new Connector("plug", Sources.CommonPractice, ElectricCurrent.FromAmperes(amperes))));
    }
}
