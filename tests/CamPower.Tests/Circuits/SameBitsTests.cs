using System;
using System.Collections.Generic;
using System.Linq;
using System.Threading.Tasks;
using CamPower.Circuits;
using UnitsNet;

namespace CamPower.Tests.Circuits;

/// <summary>Same input, same bits: whatever the culture, the number of threads and the order.</summary>
public class SameBitsTests
{
    private const int Threads = 8;

    [Fact]
    public void Results_AreTheSameBitsInEveryCulture()
    {
        long[] expected = Calculate();
        Assert.True(expected.Length > 5_000);
        Cultures.ForEach(_ => Assert.Equal(expected, Calculate()));
    }

    [Fact]
    public async Task Results_AreTheSameBitsOnManyThreads()
    {
        long[] expected = Calculate();
        long[][] all = await Task.WhenAll(Enumerable.Range(0, Threads)
            .Select(_ => Task.Factory.StartNew(Calculate, default, TaskCreationOptions.LongRunning, TaskScheduler.Default)));
        Assert.All(all, bits => Assert.Equal(expected, bits));
    }

    // Parsing, conductors, runs, loads, starting and the tree: everything that calculates.
    private static long[] Calculate()
    {
        var bits = new List<long>();
        foreach (string text in new[] { "24 AWG", "18 awg", "2/0 AWG", "1.5 mm2", "0.75 mm²" })
        {
            WireSize size = WireSize.Parse(text);
            Add(size.Area.SquareMillimeters, size.SolidDiameter.Millimeters);
            foreach (ConductorMaterial material in new[] { ConductorMaterial.AnnealedCopper, ConductorMaterial.CopperCladAluminum10 })
            {
                var run = new CableRun(Cable.Pair(size, Stranding.ClassB, material), oneWayLength: Length.FromFeet(133));
                for (int celsius = -40; celsius <= 80; celsius += 30) Ask(run.At(Temperature.FromDegreesCelsius(celsius)));
            }
        }

        return [.. bits];

        void Ask(PreparedRun run)
        {
            var starting = new Starting(ElectricPotential.FromVolts(9.5), ElectricPotential.FromVolts(8), softStart: null);
            for (double watts = 0.7; watts < 40; watts *= 1.7)
            {
                Load load = Load.ConstantPower(Power.FromWatts(watts)) + Load.ConstantCurrent(ElectricCurrent.FromAmperes(watts / 100));
                RunResult result = run.Feed(load, from: ElectricPotential.FromVolts(12.1));
                Add(run.LoopResistance.Ohms, (double)result.MaximumPower!.Value.Watts, (int)run.Start(load, starting, ElectricPotential.FromVolts(12.1)).Verdict);
                if (result.TryGetOperatingPoint(out OperatingPoint point)) Add(point.Voltage.Volts, point.Current.Amperes, result.UnstableVoltage.Volts);
                var volts = new double[3];
                double ohms = run.LoopResistance.Ohms / 8;
                if (RadialKernel.TrySolve([-1, 0, 0], [ohms, ohms, ohms], [load, load, load], 12.1, volts)) Add(volts);
                foreach (DerivationStep step in result.Explain().Steps) Add(step.Value);
            }
        }

        void Add(params double[] values) => bits.AddRange(values.Select(BitConverter.DoubleToInt64Bits));
    }
}
