using System;
using BenchmarkDotNet.Attributes;
using UnitsNet;

namespace CamPower.Benchmarks;

/// <summary>One run and one camera: the typed ways of asking against the bare arithmetic. Times are per run.</summary>
/// <remarks>Every input comes from an array, so that nothing folds to a constant; every answer goes into a sum.</remarks>
[MemoryDiagnoser, MedianColumn]
public class RunBenchmarks
{
    private const int Count = 256;

    private readonly double[] _volts = new double[Count], _ohms = new double[Count], _watts = new double[Count];
    private readonly double[] _amperes = new double[Count], _siemens = new double[Count], _feet = new double[Count];
    private readonly double[] _degrees = new double[Count], _ohmsAt20C = new double[Count], _ohmsPerKelvin = new double[Count];
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
            _degrees[i] = 20 + (40 * random.NextDouble());
            _celsius[i] = Temperature.FromDegreesCelsius(_degrees[i]);
            _fahrenheit[i] = Temperature.FromDegreesFahrenheit(_celsius[i].DegreesFahrenheit);
            _prepared[i] = _runs[i].At(_celsius[i]);
            _ohms[i] = _prepared[i].LoopResistance.Ohms;
            _ohmsAt20C[i] = _runs[i].OhmsAt20C;
            _ohmsPerKelvin[i] = _runs[i].OhmsPerKelvin;
            _volts[i] = 23 + (2 * random.NextDouble());
            _sources[i] = ElectricPotential.FromVolts(_volts[i]);
            _watts[i] = 2 + (10 * random.NextDouble());
            _loads[i] = Load.ConstantPower(Power.FromWatts(_watts[i]));
        }

        if (!Agree(RawVoltageAndCurrent(), PreparedVoltageAndCurrent()) || !Agree(RawFourValues(), OneShotFourValues()))
        {
            throw new InvalidOperationException("The ways of asking disagree.");
        }
    }

    /// <summary>The raw kernel: load voltage and current in bare doubles.</summary>
    [Benchmark(Baseline = true, OperationsPerInvoke = Count)]
    public double RawVoltageAndCurrent()
    {
        double sum = 0;
        for (int i = 0; i < Count; i++)
        {
            double volts = RawVolts(_volts[i], _ohms[i], i);
            sum += volts + RawAmperes(volts, i);
        }

        return sum;
    }

    /// <summary>The raw kernel with its source voltage and its two answers passed through quantities: what they alone cost.</summary>
    [Benchmark(OperationsPerInvoke = Count)]
    public double RawVoltageAndCurrentAsQuantities()
    {
        double sum = 0;
        for (int i = 0; i < Count; i++)
        {
            double volts = RawVolts(_sources[i].Volts, _ohms[i], i);
            sum += ElectricPotential.FromVolts(volts).Volts + ElectricCurrent.FromAmperes(RawAmperes(volts, i)).Amperes;
        }

        return sum;
    }

    /// <summary>The raw kernel with resistance from temperature, and drop and drop ratio beside voltage and current.</summary>
    [Benchmark(OperationsPerInvoke = Count)]
    public double RawFourValues()
    {
        double sum = 0;
        for (int i = 0; i < Count; i++)
        {
            double ohms = _ohmsAt20C[i] + (_ohmsPerKelvin[i] * (_degrees[i] - 20));
            double volts = RawVolts(_volts[i], ohms, i), amperes = RawAmperes(volts, i), drop = amperes * ohms;
            sum += volts + amperes + drop + (drop / _volts[i] * 100);
        }

        return sum;
    }

    /// <summary>A prepared run read as doubles inside the package: what it costs without the quantities.</summary>
    [Benchmark(OperationsPerInvoke = Count)]
    public double PreparedAsDoubles()
    {
        double sum = 0;
        for (int i = 0; i < Count; i++)
        {
            RunResult result = _prepared[i].Feed(_loads[i], _sources[i]);
            sum += result.LoadVolts + result.Amperes;
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

    private static bool Agree(double left, double right) => Math.Abs(left - right) < 1e-9 * Math.Abs(left);

    private static double FourValues(RunResult result) =>
        result.LoadVoltage.Volts + result.Current.Amperes + result.Drop.Volts + result.DropRatio.Percent;

    // The package's own formula with its compensated discriminant, written out.
    private double RawVolts(double source, double ohms, int i)
    {
        double taken = ohms * _amperes[i];
        double left = (source - taken) - Math.FusedMultiplyAdd(ohms, _amperes[i], -taken);
        double gain = 1 + (ohms * _siemens[i]), scaled = ohms * gain, fourWatts = 4 * _watts[i];
        double square = left * left, product = fourWatts * scaled;
        double discriminant = (square - product)
            + (Math.FusedMultiplyAdd(left, left, -square) - Math.FusedMultiplyAdd(fourWatts, scaled, -product));
        return left > 0 && discriminant >= 0 ? (left + Math.Sqrt(discriminant)) / (2 * gain) : 0;
    }

    private double RawAmperes(double volts, int i) => (_watts[i] / volts) + _amperes[i] + (_siemens[i] * volts);
}
