using System;
using System.Linq;
using CamPower.Circuits;
using CamPower.Tests.Circuits.Alternating.Ngspice;
using UnitsNet;

namespace CamPower.Tests.Circuits.Alternating;

/// <summary>The periodic steady state against closed forms, handbook figures and finer steps.</summary>
public class AlternatingCircuitTests
{
    // Almost no diode at all: 5 mV.
    private static readonly RectifierDiode Ideal = new(1e-3, 5e-4, 0);

    // The stated error of the steps: ten times as many move no value by more than a thousandth.
    [Theory]
    [InlineData("full-03")]
    [InlineData("half-04")]
    [InlineData("several-05")]
    [InlineData("mixed-02")]
    [InlineData("beside-03")]
    public void TenTimesAsManySteps_ChangeNothingByMoreThanAThousandth(string name)
    {
        AlternatingCase of = AlternatingCases.All.Single(c => c.Name == name);
        AlternatingSolution usual = of.Solve()!, fine = of.Solve(10 * AlternatingCircuit.UsualSteps)!;
        Assert.All(AlternatingDecks.ValuesOf(of), value =>
            Assert.Equal(AlternatingDecks.Answer(of, fine, value), AlternatingDecks.Answer(of, usual, value), 1e-3 * AlternatingDecks.Answer(of, fine, value)));
    }

    // Schade (Proceedings of the IRE, 1943; from memory): a source resistance Rs and a large capacitor before RL conduct over 2θ, where
    // tan θ − θ = π Rs/RL of a half-wave, half of that of a full-wave rectifier, and the voltage is that of the crest times cos θ.
    [Theory]
    [InlineData(2, 0.01)]
    [InlineData(2, 0.05)]
    [InlineData(2, 0.10)]
    [InlineData(1, 0.01)]
    [InlineData(1, 0.05)]
    [InlineData(1, 0.10)]
    public void LargeCapacitor_SettlesWhereTheConductionAngleSaysSo(int diodes, double ratio)
    {
        const double load = 100;
        double wanted = Math.PI * ratio / diodes, low = 0, high = Math.PI / 2;
        for (int halving = 0; halving < 60; halving++)
        {
            double middle = (low + high) / 2;
            if (Math.Tan(middle) - middle < wanted) low = middle;
            else high = middle;
        }

        double crest = 24 * Math.Sqrt(2);
        AlternatingState state = Single(ratio * load, Element(diodes, Load.ConstantResistance(ElectricResistance.FromOhms(load)), farads: 0.02)).Devices[0];
        Assert.Equal(Math.Cos(low), state.ValleyVolts / crest, 0.01);
    }

    // Handbook figure for a bridge with a capacitor on a transformer, from memory: the winding carries 1.6 to 1.8 times the direct current.
    [Fact]
    public void Winding_CarriesNearlyTwiceTheDirectCurrent()
    {
        AlternatingSolution solution = Single(2.1, Element(2, Watts(15), farads: 2200e-6), RectifierDiode.Silicon);
        AlternatingState state = solution.Devices[0];
        double direct = 15 / ((state.HighestVolts + state.ValleyVolts) / 2);
        Assert.InRange(solution.Amperes / direct, 1.6, 1.9);
    }

    // The ripple of a capacitor that gives a current for nearly half a period: I/(2 f C), a little less.
    [Fact]
    public void Ripple_IsNearlyTheChargeOfHalfAPeriod()
    {
        AlternatingState state = Single(0.1, Element(2, Load.ConstantCurrent(ElectricCurrent.FromAmperes(0.3)), farads: 1000e-6)).Devices[0];
        double most = 0.3 / (2 * 60 * 1000e-6);
        Assert.InRange(state.HighestVolts - state.ValleyVolts, 0.75 * most, most);
    }

    // What goes in is in the load and in what diodes and wires lose: power in = power behind the rectifier + diodes.
    [Fact]
    public void Power_IsThatBehindTheRectifierAndOfItsDiodes()
    {
        AlternatingState state = Single(2, Element(2, Watts(9), farads: 470e-6), RectifierDiode.Silicon).Devices[0];
        Assert.InRange(state.Watts, 9.3, 9.9);
    }

    [Fact]
    public void HalfWave_DrawsDirectCurrentThroughTheWinding()
    {
        AlternatingSolution one = Single(2, Element(1, Watts(4), farads: 1000e-6), RectifierDiode.Silicon);
        AlternatingSolution full = Single(2, Element(2, Watts(4), farads: 1000e-6), RectifierDiode.Silicon);
        Assert.InRange(one.MeanAmperes, 4 / 33.0, 4 / 26.0);
        Assert.Equal(0, full.MeanAmperes, 1e-6);
        Assert.True(one.Amperes > 1.2 * full.Amperes);
    }

    [Fact]
    public void CapacitorThatCannotHoldItsLoad_HasNoSteadyState()
    {
        var circuit = new AlternatingCircuit(24, 50, new double[,] { { 20 } }, [0], [Element(2, Watts(60), farads: 470e-6)], RectifierDiode.Silicon);
        Assert.Null(circuit.Solve());
        Assert.Equal(0, circuit.Lost);
    }

    // Beside a rectifier the linear device keeps its power: stepped through time it is what phasors say once the rectifier draws next to nothing.
    [Fact]
    public void LinearDevice_StepsToWhatPhasorsSay()
    {
        AlternatingElement lagging = AlternatingElement.Linear(0, Watts(12), powerFactor: 0.7);
        AlternatingState phasor = PhasorKernel.Solve(26, new double[,] { { 3 } }, [0], [lagging])!.Devices[0];
        AlternatingState stepped = new AlternatingCircuit(26, 60, new double[,] { { 3, 3 }, { 3, 3 } }, [0, 1],
            [lagging, AlternatingElement.Rectifier(1, Watts(1e-5), 1e-6, isHalfWave: false)], RectifierDiode.Silicon).Solve()!.Devices[0];
        Assert.Equal(phasor.RmsVolts, stepped.RmsVolts, 1e-3 * phasor.RmsVolts);
        Assert.Equal(phasor.RmsAmperes, stepped.RmsAmperes, 1e-3 * phasor.RmsAmperes);
        Assert.Equal(12, stepped.Watts, 0.02);
    }

    // By hand: 12 VA at 0.8 on 24 V and 2 Ω in series. With U as the reference |U + 2 I (0.8 − j 0.6)| = 24 and U I 0.8 = 9.6 W: U = 23.17 V, I = 0.5179 A.
    [Fact]
    public void PhasorOfOneLaggingLoad_IsTheOneByHand()
    {
        AlternatingState state = PhasorKernel.Solve(24, new double[,] { { 2 } }, [0], [AlternatingElement.Linear(0, Watts(9.6), powerFactor: 0.8)])!.Devices[0];
        double volts = state.RmsVolts, amperes = state.RmsAmperes;
        Assert.Equal(9.6, volts * amperes * 0.8, 1e-9);
        Assert.Equal(24, Math.Sqrt(Math.Pow(volts + (1.6 * amperes), 2) + Math.Pow(1.2 * amperes, 2)), 1e-9);
        Assert.Equal(23.15, volts, 0.03);
    }

    [Fact]
    public void PhasorBeyondMaximumPower_HasNone() =>
        Assert.Null(PhasorKernel.Solve(24, new double[,] { { 10 } }, [0], [AlternatingElement.Linear(0, Watts(14.5))]));

    [Fact]
    public void PhasorInPhase_IsTheDirectCurrentRun()
    {
        AlternatingState state = PhasorKernel.Solve(24, new double[,] { { 3 } }, [0], [AlternatingElement.Linear(0, Watts(9))])!.Devices[0];
        Assert.Equal(RunKernel.LoadVolts(24, 3, 9, 0, 0), state.RmsVolts, 1e-9);
    }

    // μ0/π (ln(D/r) + 1/4) of a pair whose insulation is as thick as half the wire: 18 AWG has 1.02 mm. Grover, Inductance Calculations, from memory.
    [Theory]
    [InlineData(12)]
    [InlineData(14)]
    [InlineData(16)]
    [InlineData(18)]
    [InlineData(20)]
    [InlineData(22)]
    public void InductanceOfAPair_IsNegligibleAtMainsFrequency(int awg)
    {
        double diameter = 0.127e-3 * Math.Pow(92, (36 - awg) / 39.0), henriesPerMeter = 4e-7 * (Math.Log(2 * 2 * diameter / diameter) + 0.25);
        double ohmsPerMeter = 2 / (58e6 * Math.PI * diameter * diameter / 4), reactance = 2 * Math.PI * 60 * henriesPerMeter;
        Assert.InRange(Math.Sqrt(1 + Math.Pow(reactance / ohmsPerMeter, 2)) - 1, 0, 5e-4);
    }

    private static AlternatingSolution Single(double ohms, AlternatingElement element, RectifierDiode? diode = null) =>
        new AlternatingCircuit(24, 60, new double[,] { { ohms } }, [0], [element], diode ?? Ideal).Solve()!;

    private static AlternatingElement Element(int diodes, Load load, double farads) => AlternatingElement.Rectifier(0, load, farads, diodes == 1);

    private static Load Watts(double watts) => Load.ConstantPower(Power.FromWatts(watts));
}
