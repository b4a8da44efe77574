using System;
using System.IO;
using System.Linq;
using CamPower.Tests.Repository;
using UnitsNet;

namespace CamPower.Tests.Faults;

/// <summary>Faults of a box with source resistance, limit and output capacitance against a general circuit simulator, ngspice 39, on decks written by hand.</summary>
public class FaultsAgainstNgspiceTests
{
    private static readonly OverloadBehavior Twenty = OverloadBehavior.ConstantCurrent(ElectricCurrent.FromAmperes(20));

    // The measurements hold seven digits.
    private const double Digits = 2e-6;

    [Fact]
    public void EveryDeck_HasItsAnswers() => Assert.Equal(FaultDecks.All.Names.Sum(name => FaultDecks.All.ValuesOf(name).Count), File.ReadLines(RepositoryFiles.PathOf(FaultDecks.All.Results)).Count());

    // A fuse F of 2 A is open within 20 ms at 20 A: 8 A²s beside what the capacitor adds.
    [Fact]
    public void CapacitorBesideABattery_AddsTheSimulatedIntegral()
    {
        ShortCircuit fault = SmallFault.Behind(0.6, SmallFault.QuickActing(2), farads: 2.2e-3);
        Assert.Equal(Simulated("capacitor-beside-battery", "peak") / 0.5, fault.DischargePeak!.Value.Amperes, 1e-4);
        Assert.Equal(Simulated("capacitor-beside-battery", "steady") / 0.5, fault.Largest!.Value.Amperes, Digits);
        Assert.Equal(Simulated("capacitor-beside-battery", "excess"), fault.LetThrough!.Value.AmpereSquaredSeconds - 8, Digits);
    }

    // A fuse F of 0.9 A is open within 20 ms at 9 A: 1.62 A²s, and by then all but 0.02 % of the discharge is over.
    [Fact]
    public void CapacitorBesideALimit_AddsTheSimulatedIntegral()
    {
        ShortCircuit fault = SmallFault.Behind(0.6, SmallFault.QuickActing(0.9), OverloadBehavior.ConstantCurrent(ElectricCurrent.FromAmperes(9)), farads: 4.7e-3);
        Assert.Equal(Simulated("capacitor-beside-limit", "peak") / 0.5, fault.DischargePeak!.Value.Amperes, 1e-4);
        Assert.Equal(Simulated("capacitor-beside-limit", "steady") / 0.5, fault.Largest!.Value.Amperes, Digits);
        Assert.Equal(Simulated("capacitor-beside-limit", "excess"), fault.LetThrough!.Value.AmpereSquaredSeconds - 1.62, 2e-4);
    }

    [Fact]
    public void BoxInCurrentLimit_HasTheSimulatedRail() => Assert.Equal(Simulated("box-in-current-limit", "v(o)"), Rail(Twenty), Digits);

    [Fact]
    public void BoxThatSags_HasTheSimulatedRail() => Assert.Equal(Simulated("box-that-sags", "v(o)"), Rail(OverloadBehavior.Unlimited), Digits);

    [Fact]
    public void BoxThatPulses_LeavesTheSimulatedRms()
    {
        double amperes = SharedSupplyTests.Short(SharedSupplyTests.Behavior("hiccup"), SmallFault.QuickActing(2)).Smallest.Amperes;
        Assert.Equal(Simulated("box-that-pulses", "integral"), amperes * amperes, 2e-4);
        Assert.Equal(Simulated("box-that-pulses", "rail") / 1.6 * Math.Sqrt(0.2), amperes, 1e-5);
    }

    // A fuse F of 2 A clears 4.5 A within 30 min, and the 4 A that are left when the cable is warm perhaps never.
    [Fact]
    public void ShortThatWarmsItsCable_SettlesAsSimulated()
    {
        ShortCircuit fault = WarmingFaultTests.Short(InstallationMethod.InCableOrRaceway(2));
        Assert.Equal(Simulated("short-warms-its-cable", "first"), fault.Largest!.Value.Amperes, 1e-3);
        Assert.Equal(Simulated("short-warms-its-cable", "settled"), fault.Smallest.Amperes, 1e-3);
    }

    // The deck's constants are rounded to five digits.
    [Theory]
    [InlineData("half", 60)]
    [InlineData("end", 120)]
    public void AConductor_WarmsAsSimulated(string value, double seconds)
    {
        SelfHeating heat = InstallationMethod.InCableOrRaceway(2).Heat(Runs.Eighteen.Outgoing, ElectricCurrent.FromAmperes(20), Temperature.FromDegreesCelsius(30));
        Assert.Equal(Simulated("conductor-warms", value), heat.TemperatureAfter(Duration.FromSeconds(seconds), heat.Ambient)!.Value.DegreesCelsius, 0.03);
    }

    private static double Rail(OverloadBehavior overload) =>
        SmallFaultSite.ShortAt(SmallFaultSite.TwoOutputs(SmallFault.QuickActing(2), overload), "one").Supply.Voltage!.Value.Volts;

    private static double Simulated(string deck, string value) => FaultDecks.All.Read(deck, value);
}
