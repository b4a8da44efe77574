using System;
using System.Collections.Generic;
using CamPower.Tests.Protection;
using CamPower.Tests.Quantities;
using UnitsNet;
using static CamPower.Tests.Faults.SmallFault;

namespace CamPower.Tests.Faults;

/// <summary>Every guarded argument of the room and of the overload behaviors: refused by name, with its value, unit and range.</summary>
public class InvalidFaultInputTests
{
    private static readonly Dictionary<string, (Action Call, string Parameter, string Shown)> Cases = new()
    {
        ["no limit"] = (() => OverloadBehavior.ConstantCurrent(Amperes(0)), "limit", "0 A"),
        ["foldback above its limit"] = (() => OverloadBehavior.Foldback(Amperes(2), Amperes(2.5)), "shortCircuit", "2.5 A"),
        ["foldback to nothing"] = (() => OverloadBehavior.Foldback(Amperes(2), Amperes(0)), "shortCircuit", "0 A"),
        ["pulse of no time"] = (() => OverloadBehavior.Hiccup(Amperes(2), Seconds(0), Seconds(1)), "pulse", "0 s"),
        ["pulse as long as its period"] = (() => OverloadBehavior.Hiccup(Amperes(2), Seconds(1), Seconds(1)), "period", "1 s"),
        ["shutdown at once"] = (() => OverloadBehavior.Shutdown(Amperes(2), Seconds(0)), "within", "0 s"),
        ["supply of no resistance"] = (() => Source(ohms: 0), "sourceResistance", "0 Ω"),
        ["colder than there is"] = (() => In(-273.5, 20), "cable", "-273.5 °C"),
        ["device hotter than anything"] = (() => In(20, 1000.5), "box", "1000.5 °C"),
        ["conductors beyond their model"] = (() => Study(Run(1), ProtectiveDevice.None, conditions: Between(20, 250.5)), "conditions", "250.5 °C"),
        ["device beyond its curve"] = (() => Study(Run(1), SmallDevices.Printed(1.1), conditions: Between(device: 90.5)), "conditions", "90.5 °C"),
        ["overload of nothing"] = (() => Study(Run(1), ProtectiveDevice.None).OverloadOf(Amperes(0)), "current", "0 A"),
        ["fault no hotter than service"] = (() => Made(70, 70), "highestInFault", "70 °C"),
        ["service below every gas"] = (() => Made(-200.5, 70), "highestInService", "-200.5 °C"),
        ["withstand of no current"] = (() => Insulation.Pvc70.WithstandTime(Pair(0.5).Outgoing, Amperes(0)), "current", "0 A"),
        ["negative current"] = (() => Insulation.Pvc70.SmallestArea(ConductorMaterial.AnnealedCopper, Amperes(-1.5), Seconds(1)), "current", "-1.5 A"),
        ["beyond the adiabatic model"] = (() => Insulation.Pvc70.SmallestArea(ConductorMaterial.AnnealedCopper, Amperes(1), Seconds(5.5)), "time", "5.5 s"),
    };

    public static TheoryData<string> Impossible => [.. Cases.Keys];

    [Theory]
    [MemberData(nameof(Impossible))]
    public void ImpossibleInput_IsRefusedByNameValueUnitAndRange(string name)
    {
        (Action call, string parameter, string shown) = Cases[name];
        Refusal.AssertNames(call, parameter, shown);
    }

    [Fact]
    public void MissingReference_IsRefused()
    {
        Assert.Throws<ArgumentNullException>(() => new FaultStudy(null!, Source(), ProtectiveDevice.None, Between()));
        Assert.Throws<ArgumentNullException>(() => new FaultStudy(Run(1), null!, ProtectiveDevice.None, Between()));
        Assert.Throws<ArgumentNullException>(() => new FaultStudy(Run(1), Source(), ProtectiveDevice.None, null!));
        Assert.Throws<ArgumentException>(() => new FaultStudy(Run(1), Source(), ProtectiveDevice.None, []));
        Assert.Throws<ArgumentNullException>(() => Insulation.Pvc70.FactorFor(null!));
        Assert.Throws<ArgumentNullException>(() => Insulation.Pvc70.WithstandOf(null!));
    }

    private static Insulation Made(double service, double fault) =>
        new("made up", Temperature.FromDegreesCelsius(service), Temperature.FromDegreesCelsius(fault), SmallDevices.Sheet);

    private static ElectricCurrent Amperes(double amperes) => ElectricCurrent.FromAmperes(amperes);

    private static Duration Seconds(double seconds) => Duration.FromSeconds(seconds);
}
