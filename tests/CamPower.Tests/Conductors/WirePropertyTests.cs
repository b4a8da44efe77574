using System;
using UnitsNet;

namespace CamPower.Tests.Conductors;

/// <summary>One run alone: more length, load, temperature or gauge number never leaves more voltage. It is a law for one run, not for a mesh.</summary>
/// <remarks>The lower root rises with the load, so it fails here; a wrong factor in the resistance would pass, and the
/// reference values rule that out.</remarks>
public class WirePropertyTests
{
    [SeededProperty(Arbitrary = [typeof(WireCases)], MaxTest = 500)]
    public void Feed_LongerRun_LeavesLess(WireCase c) => AssertWorse(c, c with { Meters = c.Meters * 1.01 });

    [SeededProperty(Arbitrary = [typeof(WireCases)], MaxTest = 500)]
    public void Feed_MoreLoad_LeavesLess(WireCase c) => AssertWorse(c, c with { Watts = c.Watts * 1.01 });

    [SeededProperty(Arbitrary = [typeof(WireCases)], MaxTest = 500)]
    public void Feed_HotterConductor_LeavesLess(WireCase c) => AssertWorse(c, c with { Celsius = c.Celsius + 5 });

    [SeededProperty(Arbitrary = [typeof(WireCases)], MaxTest = 500)]
    public void Feed_ThinnerGauge_LeavesLess(WireCase c) => AssertWorse(c, c with { Gauge = c.Gauge + 1 });

    [SeededProperty(Arbitrary = [typeof(WireCases)], MaxTest = 500)]
    public void Feed_LowerSource_LeavesLess(WireCase c) => AssertWorse(c, c with { Volts = c.Volts * 0.99 });

    [SeededProperty(Arbitrary = [typeof(WireCases)], MaxTest = 500)]
    public void Feed_Stranded_LeavesLessThanSolid(WireCase c) => AssertWorse(c with { IsStranded = false }, c with { IsStranded = true });

    // A pair is two conductors: the loop is twice one conductor's length, nothing else.
    [SeededProperty(Arbitrary = [typeof(WireCases)], MaxTest = 500)]
    public void LoopResistance_IsTheResistanceOfTwoConductors(WireCase c)
    {
        Conductor one = c.Run.Parts[0] is CableSegment segment ? segment.Cable.Outgoing : throw new InvalidOperationException();
        Temperature at = Temperature.FromDegreesCelsius(c.Celsius);
        Assert.Equal(one.ResistanceAt(Length.FromMeters(2 * c.Meters), at).Ohms, c.Loop.Ohms, 1e-12 * c.Loop.Ohms);
        Assert.Equal(2 * one.ResistanceAt(c.Run.OneWayLength, at).Ohms, c.Loop.Ohms, 1e-12 * c.Loop.Ohms);
        Assert.Equal(c.Loop.Ohms, one.ResistanceAt(c.Run.LoopLength, at).Ohms, 1e-12 * c.Loop.Ohms);
        Assert.Equal(c.Loop.Ohms, c.Run.At(at).LoopResistance.Ohms);
    }

    [SeededProperty(Arbitrary = [typeof(WireCases)], MaxTest = 500)]
    public void Run_InParts_IsTheWholeRun(WireCase c)
    {
        Cable cable = ((CableSegment)c.Run.Parts[0]).Cable;
        Temperature at = Temperature.FromDegreesCelsius(c.Celsius);
        CableRun parts = new CableRun(cable, oneWayLength: Length.FromMeters(c.Meters * 0.25))
            .Then(new Joint("splice", ElectricResistance.FromOhms(0.01)))
            .Then(new CableSegment(cable, oneWayLength: Length.FromMeters(c.Meters * 0.75)))
            .Then(new Joint("plug", ElectricResistance.FromOhms(0.02)));
        Assert.Equal(c.Loop.Ohms + 0.03, parts.LoopResistanceAt(at).Ohms, 1e-12 * (c.Loop.Ohms + 0.03));
        Assert.Equal(c.Meters, parts.OneWayLength.Meters, 1e-12 * c.Meters);
    }

    // A joint does not warm with the cable: only the cable's share grows.
    [SeededProperty(Arbitrary = [typeof(WireCases)], MaxTest = 200)]
    public void LoopResistance_GrowsWithTheCableOnly(WireCase c)
    {
        CableRun jointed = c.Run.Then(new Joint("splice", ElectricResistance.FromOhms(5)));
        double cold = jointed.LoopResistanceAt(Temperature.FromDegreesCelsius(20)).Ohms, hot = jointed.LoopResistanceAt(Temperature.FromDegreesCelsius(70)).Ohms;

        // 0.00393 per kelvin: IEC 60028.
        Assert.Equal((cold - 5) * 0.00393 * 50, hot - cold, 1e-9 * hot);
    }

    private static void AssertWorse(WireCase better, WireCase worse)
    {
        RunResult easy = better.Feed(), hard = worse.Feed();
        Assert.True(easy.HasOperatingPoint || !hard.HasOperatingPoint, $"{worse} works where {better} does not.");
        if (hard.HasOperatingPoint) Assert.True(hard.LoadVoltage < easy.LoadVoltage, $"{worse} leaves no less than {better}.");
        Assert.True((double)hard.MaximumPower!.Value.Watts <= (double)easy.MaximumPower!.Value.Watts);
    }
}
