using System;
using BenchmarkDotNet.Attributes;
using UnitsNet;

namespace CamPower.Benchmarks;

/// <summary>One run and one camera: the typed ways of asking against the bare arithmetic. Times are per run.</summary>
/// <remarks>Every input comes from an array, so that nothing folds to a constant; every answer goes into a sum.</remarks>
[MemoryDiagnoser]
public class RunBenchmarks
{
    private const int Count = 256;

    private readonly double[] _volts = new double[Count], _ohms = new double[Count], _watts = new double[Count];
    private readonly double[] _amperes = new double[Count], _siemens = new double[Count], _feet = new double[Count];
    private readonly CableRun[] _runs = new CableRun[Count];
    private readonly PreparedRun[] _prepared = new PreparedRun[Count];
    private readonly Load[] _loads = new Load[Count];
    private readonly ElectricPotential[] _sources = new ElectricPotential[Count];
    private readonly Temperature[] _celsius = new Temperature[Count], _fahrenheit = new Temperature[Count];
    private readonly Cable _cable = Cable.Pair(WireSize.Awg(18), Stranding.ClassB, ConductorMaterial.AnnealedCopper);

    [GlobalSetup]
    public void MakeUpRuns()
    {
        var random = new Random(1);
        for (int i = 0; i < Count; i++)
        {
            _feet[i] = 20 + (200 * random.NextDouble());
            _runs[i] = new CableRun(_cable, oneWayLength: Length.FromFeet(_feet[i]));
            _celsius[i] = Temperature.FromDegreesCelsius(20 + (40 * random.NextDouble()));
            _fahrenheit[i] = Temperature.FromDegreesFahrenheit(_celsius[i].DegreesFahrenheit);
            _prepared[i] = _runs[i].At(_celsius[i]);
            _ohms[i] = _prepared[i].LoopResistance.Ohms;
            _volts[i] = 23 + (2 * random.NextDouble());
            _sources[i] = ElectricPotential.FromVolts(_volts[i]);
            _watts[i] = 2 + (10 * random.NextDouble());
            _loads[i] = Load.ConstantPower(Power.FromWatts(_watts[i]));
        }

        if (Math.Abs(RawPowerOnly() - PreparedVoltageAndCurrent()) > 1e-9) throw new InvalidOperationException("The ways disagree.");
    }

    /// <summary>Constant power alone, voltage and current, in bare doubles.</summary>
    [Benchmark(Baseline = true, OperationsPerInvoke = Count)]
    public double RawPowerOnly()
    {
        double sum = 0;
        for (int i = 0; i < Count; i++)
        {
            double volts = RawVolts(_volts[i], _ohms[i], _watts[i]);
            sum += volts + (_watts[i] / volts);
        }

        return sum;
    }

    /// <summary>The same with shares of current and resistance, as the package solves it.</summary>
    [Benchmark(OperationsPerInvoke = Count)]
    public double RawThreeShares()
    {
        double sum = 0;
        for (int i = 0; i < Count; i++)
        {
            double volts = RawVolts(_volts[i], _ohms[i], _watts[i], _amperes[i], _siemens[i]);
            sum += volts + (_watts[i] / volts) + _amperes[i] + (_siemens[i] * volts);
        }

        return sum;
    }

    /// <summary>A run prepared for one temperature; load voltage and current.</summary>
    [Benchmark(OperationsPerInvoke = Count)]
    public double PreparedVoltageAndCurrent()
    {
        double sum = 0;
        for (int i = 0; i < Count; i++)
        {
            RunResult result = _prepared[i].Feed(_loads[i], _sources[i]);
            sum += result.LoadVoltage.Volts + result.Current.Amperes;
        }

        return sum;
    }

    /// <summary>Asked in one call; load voltage, current, drop and drop ratio.</summary>
    [Benchmark(OperationsPerInvoke = Count)]
    public double OneShotFourValues()
    {
        double sum = 0;
        for (int i = 0; i < Count; i++) sum += FourValues(_runs[i].Feed(_loads[i], _sources[i], _celsius[i]));
        return sum;
    }

    /// <summary>The same with the temperature in degrees Fahrenheit.</summary>
    [Benchmark(OperationsPerInvoke = Count)]
    public double OneShotFourValuesFahrenheit()
    {
        double sum = 0;
        for (int i = 0; i < Count; i++) sum += FourValues(_runs[i].Feed(_loads[i], _sources[i], _fahrenheit[i]));
        return sum;
    }

    /// <summary>The same with the run itself built each time, its length in feet.</summary>
    [Benchmark(OperationsPerInvoke = Count)]
    public double RunBuiltFromFeetFourValuesFahrenheit()
    {
        double sum = 0;
        for (int i = 0; i < Count; i++)
        {
            var run = new CableRun(_cable, oneWayLength: Length.FromFeet(_feet[i]));
            sum += FourValues(run.Feed(_loads[i], _sources[i], _fahrenheit[i]));
        }

        return sum;
    }

    private static double FourValues(in RunResult result) =>
        result.LoadVoltage.Volts + result.Current.Amperes + result.Drop.Volts + result.DropRatio.Percent;

    private static double RawVolts(double source, double ohms, double watts)
    {
        double square = source * source, product = 4 * watts * ohms;
        double discriminant = (square - product)
            + (Math.FusedMultiplyAdd(source, source, -square) - Math.FusedMultiplyAdd(4 * watts, ohms, -product));
        return discriminant >= 0 ? (source + Math.Sqrt(discriminant)) / 2 : 0;
    }

    private static double RawVolts(double source, double ohms, double watts, double amperes, double siemens)
    {
        double taken = ohms * amperes;
        double left = (source - taken) - Math.FusedMultiplyAdd(ohms, amperes, -taken);
        double gain = 1 + (ohms * siemens), square = left * left, scaled = ohms * gain, product = 4 * watts * scaled;
        double discriminant = (square - product)
            + (Math.FusedMultiplyAdd(left, left, -square) - Math.FusedMultiplyAdd(4 * watts, scaled, -product));
        return left > 0 && discriminant >= 0 ? (left + Math.Sqrt(discriminant)) / (2 * gain) : 0;
    }
}
