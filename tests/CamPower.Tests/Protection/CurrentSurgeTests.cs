using System;
using CamPower.Protection;
using static CamPower.Tests.Protection.SmallDevices;

namespace CamPower.Tests.Protection;

/// <summary>What output capacitors discharge, against a numeric integration of the circuit, and what it does to a fuse.</summary>
public class CurrentSurgeTests
{
    // By hand: 1000 µF at 12 V through 0.5 Ω: 24 A at first, 0.5 ms, C·V²/(2R) = 0.144 A²s.
    [Fact]
    public void Discharge_WithoutASource_IsThatOfAnyTextbook()
    {
        CurrentSurge surge = CurrentSurge.Discharge(1e-3, 12, 0.5, double.PositiveInfinity, 0);
        Assert.Equal(24, surge.PeakAmperes, 1e-12);
        Assert.Equal(5e-4, surge.TimeConstant, 1e-15);
        Assert.Equal(0.144, surge.Integral, 1e-12);
        Assert.Equal(0.144 * (1 - Math.Exp(-2)), surge.IntegralTo(5e-4), 1e-12);
    }

    // The circuit itself, step by step (midpoint rule): a capacitor across the output, a source behind its resistance that
    // holds its current at a limit, and the loop. The excess over the steady current's I²t until it is over.
    [Theory]
    [InlineData(1e-3, 12, 0.5, 0.05, double.PositiveInfinity)]
    [InlineData(4.7e-3, 24, 0.3, 0.1, double.PositiveInfinity)]
    [InlineData(2e-3, 12, 1.2, 0, 3)]
    [InlineData(2e-3, 12, 0.8, 0, 0.5)]
    public void Integral_IsThatOfTheCircuit(double farads, double volts, double ohms, double sourceOhms, double limit)
    {
        bool isLimited = !double.IsInfinity(limit);
        double steady = isLimited ? limit : volts / (ohms + sourceOhms);
        CurrentSurge surge = CurrentSurge.Discharge(farads, volts, ohms, isLimited ? double.PositiveInfinity : sourceOhms, steady);
        double across = volts, excess = 0, step = surge.TimeConstant / 2000;
        for (int i = 0; i < 40000; i++)
        {
            double middle = across + (step / 2 * Slope(across));
            excess += step * ((middle * middle / ohms / ohms) - (steady * steady));
            across += step * Slope(middle);
        }

        Assert.Equal(excess, surge.Integral, 1e-5 * surge.Integral);
        Assert.Equal(volts / ohms, surge.PeakAmperes, 1e-12 * surge.PeakAmperes);

        double Slope(double v) => ((isLimited ? limit : (volts - v) / sourceOhms) - (v / ohms)) / farads;
    }

    [Fact]
    public void NoCapacitance_IsNoSurge()
    {
        CurrentSurge surge = CurrentSurge.Discharge(0, 12, 0.5, 0.1, 20);
        Assert.Equal((0, 0, 0), (surge.PeakAmperes, surge.Integral, surge.TimeConstant));
        Assert.Equal(OperatingVerdict.DoesNotOperate, Fuse(FuseCharacteristic.IecQuickActing, 2).OpeningBySurge(surge, 1).Verdict);
    }

    [Fact]
    public void NoResistance_HasNoBound()
    {
        CurrentSurge surge = CurrentSurge.Discharge(1e-3, 12, 0, double.PositiveInfinity, 2);
        Assert.Equal((double.PositiveInfinity, double.PositiveInfinity), (surge.PeakAmperes, surge.Integral));
        Assert.Equal(OperatingVerdict.MayOperate, Fuse(FuseCharacteristic.IecQuickActing, 2).OpeningBySurge(surge, 1).Verdict);
    }

    // A fuse F of 1 A melts for certain from 2.1 A on, and 50 ms at 2.75 A do not melt it: (2.75² − 2.1²)·0.05 = 0.158 A²s. 1 mF at V through 1 Ω are V²/2 mA²s.
    // A fuse T of 1 A is closed after 20 ms at 10 A: (100 − 4.41)·0.02 = 1.91 A²s. A fuse to UL 248-14 says nothing of short times. Where the sheet states the
    // least melting I²t, that decides. However much there is, it is not certain: 0.1 F at 40 V are 80 A²s.
    [Theory]
    [InlineData("F", 1e-3, 17.7, null, OperatingVerdict.DoesNotOperate)]
    [InlineData("F", 1e-3, 17.8, null, OperatingVerdict.MayOperate)]
    [InlineData("T", 1e-3, 61.8, null, OperatingVerdict.DoesNotOperate)]
    [InlineData("T", 1e-3, 61.9, null, OperatingVerdict.MayOperate)]
    [InlineData("UL", 1e-9, 12, null, OperatingVerdict.MayOperate)]
    [InlineData("T", 1e-3, 24, 0.289, OperatingVerdict.DoesNotOperate)]
    [InlineData("T", 1e-3, 24, 0.287, OperatingVerdict.MayOperate)]
    [InlineData("F", 0.1, 40, null, OperatingVerdict.MayOperate)]
    [InlineData("F", 0.1, 40, 1.0, OperatingVerdict.MayOperate)]
    public void Fuse_MayOpen_UnlessItsGatesOrItsMeltingIntegralHoldIt(string kind, double farads, double volts, double? melting, OperatingVerdict verdict)
    {
        FuseCharacteristic gates = kind switch { "F" => FuseCharacteristic.IecQuickActing, "T" => FuseCharacteristic.IecTimeLag, _ => FuseCharacteristic.UlFast };
        Assert.Equal(verdict, Fuse(gates, 1, melting).OpeningBySurge(CurrentSurge.Discharge(farads, volts, 1, double.PositiveInfinity, 0), 1).Verdict);
    }
}
