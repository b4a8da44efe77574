using System;
using CamPower;
using Classroom.Bench;
using UnitsNet;

namespace Classroom.Exercises;

/// <summary>Makes exercises: the same kind, number and units always give the same one.</summary>
/// <remarks>Loads are drawn as a share of what the run carries, so that every question has an answer worth working out.</remarks>
public sealed class ExerciseMaker
{
    private const double OnePercent = 0.01, Exact = 0;

    private readonly SeededNumbers _numbers;
    private readonly LengthScale _lengths;
    private readonly TemperatureScale _temperatures;
    private readonly WireSize _size;
    private readonly Stranding _stranding;
    private readonly ConductorMaterial _material;
    private readonly Temperature _hot;
    private readonly ElectricPotential _supply;
    private readonly CableRun _run;

    private ExerciseMaker(SeededNumbers numbers, LengthScale lengths, TemperatureScale temperatures)
    {
        _numbers = numbers;
        _lengths = lengths;
        _temperatures = temperatures;
        _size = WireSize.Awg(2 * numbers.Between(6, 10));
        _stranding = numbers.OneOf(RunEntry.Strandings);
        _material = numbers.OneOf([ConductorMaterial.AnnealedCopper, ConductorMaterial.AnnealedCopper, ConductorMaterial.CopperCladAluminum10]);
        _hot = temperatures.From(temperatures.In(Temperature.FromDegreesCelsius(5 * numbers.Between(0, 14))));
        _supply = ElectricPotential.FromVolts(numbers.OneOf([12.0, 13.8, 24.0]));
        _run = new CableRun(Cable.Pair(_size, _stranding, _material), lengths.From(lengths.RoundStep * numbers.Between(6, 30)));
    }

    private double LoopOhms => _run.LoopResistanceAt(_hot).Ohms;

    private double MostWatts => (double)_run.Feed(Load.None, _supply, _hot).MaximumPower!.Value.Watts;

    private string RunInWords => $"A run of {Shown.Number(_lengths.In(_run.OneWayLength))} {_lengths.Symbol}, one way, of a pair of {_size} {_stranding} {_material} is at {Degrees}";

    private string Degrees => $"{Shown.Number(_temperatures.In(_hot))} {_temperatures.Symbol}";

    private string RunWithResistance => FormattableString.Invariant($"{RunInWords}; its resistance out and back is then {LoopOhms:G5} Ω.");

    private string Volts => Shown.Number(_supply.Volts) + " V";

    /// <summary>The exercise of a kind and a number.</summary>
    /// <param name="kind">What it asks for.</param>
    /// <param name="number">Which one.</param>
    /// <param name="lengths">The unit of its lengths.</param>
    /// <param name="temperatures">The unit of its temperatures.</param>
    public static Exercise Make(ExerciseKind kind, int number, LengthScale lengths, TemperatureScale temperatures)
    {
        var maker = new ExerciseMaker(new SeededNumbers(((ulong)(uint)number << 8) + (ulong)kind), lengths, temperatures);
        return kind switch
        {
            ExerciseKind.LoopResistance => maker.LoopResistance(),
            ExerciseKind.DropAtConstantCurrent => maker.DropAtConstantCurrent(),
            ExerciseKind.DropAtConstantPower => maker.DropAtConstantPower(),
            ExerciseKind.MaximumPower => maker.MaximumPower(),
            ExerciseKind.MarginToCollapse => maker.MarginToCollapse(),
            ExerciseKind.LongestRun => maker.LongestRun(),
            _ => maker.SmallestGauge(),
        };
    }

    private Exercise LoopResistance()
    {
        double square = _size.Area.SquareMillimeters, rho = _material.ResistivityAt20C.OhmMeters * 1e6;
        string given = FormattableString.Invariant($"{_size} is {square:G5} mm²; at 20 °C {_material} has {rho:G5} Ω·mm²/m and a temperature coefficient of {_material.TemperatureCoefficientAt20C:G5} per °C; {_stranding} wire has {_stranding.LayFactor} times the resistance of a solid wire of that area.");
        return new($"{RunInWords}. {given} What is its resistance, out and back?", "Ω", LoopOhms, OnePercent,
            () => _run.Feed(Load.None, _supply, _hot).Explain());
    }

    private Exercise DropAtConstantCurrent()
    {
        var current = ElectricCurrent.FromAmperes(AtLeastOneStep(_numbers.Between(5, 30) / 100.0 * _supply.Volts / LoopOhms, 0.05));
        return Drop(Load.ConstantCurrent(current), $"a constant current of {Shown.Number(current.Amperes)} A");
    }

    private Exercise DropAtConstantPower()
    {
        double watts = AtLeastOneStep(_numbers.Between(35, 80) / 100.0 * MostWatts, 0.1);
        return Drop(Load.ConstantPower(Power.FromWatts(watts)), $"a constant {Shown.Number(watts)} W, more current the lower its voltage");
    }

    private Exercise Drop(Load load, string draws)
    {
        RunResult result = _run.Feed(load, _supply, _hot);
        return new($"{RunWithResistance} The supply gives {Volts}, and the load draws {draws}. How many volts are lost in the run?",
            "V", result.Drop.Volts, OnePercent, () => result.Explain());
    }

    private Exercise MaximumPower()
    {
        // Asked of a load at that limit, so that the working comes to it.
        Load probe = Load.ConstantPower(Power.FromWatts(MostWatts / 2));
        return new($"{RunWithResistance} The supply gives {Volts}. What is the most constant power that a load at its end could draw?",
            "W", MostWatts, OnePercent, () => _run.Feed(probe, _supply, _hot).Explain());
    }

    private Exercise MarginToCollapse()
    {
        double watts = AtLeastOneStep(_numbers.Between(40, 140) / 100.0 * MostWatts, 0.1);
        RunResult result = _run.Feed(Load.ConstantPower(Power.FromWatts(watts)), _supply, _hot);
        return new($"{RunWithResistance} The supply gives {Volts}, and the load asks for a constant {Shown.Number(watts)} W. By what factor could that power grow, or must it shrink, until it is the most that the run carries?",
            "", result.MarginToCollapse!.Value.DecimalFractions, OnePercent, () => result.Explain());
    }

    private Exercise LongestRun()
    {
        double watts = _numbers.Between(6, 30) / 2.0;
        ElectricPotential lowest = Lowest();
        RunAnswer<Length> longest = _run.LongestLength(Load.ConstantPower(Power.FromWatts(watts)), _supply, VoltageLimit.AtLeast(lowest), _hot);
        double loopPerThousand = LoopOhms / _lengths.In(_run.OneWayLength) * 1000;
        string given = FormattableString.Invariant($"A pair of {_size} {_stranding} {_material} at {Degrees} has {loopPerThousand:G5} Ω, out and back, in every 1000 {_lengths.Symbol} of its one-way length.");
        return new($"{given} The supply gives {Volts}; the load draws a constant {Shown.Number(watts)} W and needs at least {Shown.Number(lowest.Volts)} V. How long may the run be, one way?",
            _lengths.Symbol, _lengths.In(longest.Value), OnePercent, longest.Explain);
    }

    private Exercise SmallestGauge()
    {
        ElectricPotential lowest = Lowest();
        VoltageLimit accepted = VoltageLimit.AtLeast(lowest);
        double carried = (double)_run.LargestPower(Load.None, _supply, accepted, _hot).Value.Watts;
        double watts = Math.Floor(10 * carried * _numbers.Between(88, 98) / 100) / 10;
        RunAnswer<WireSize> smallest = _run.SmallestSize(WireSizeSeries.Awg, Load.ConstantPower(Power.FromWatts(watts)), _supply, accepted, _hot);
        int gauge = int.Parse(smallest.Value.ToString().Split(' ')[0], System.Globalization.CultureInfo.InvariantCulture);
        string length = $"{Shown.Number(_lengths.In(_run.OneWayLength))} {_lengths.Symbol}";
        return new($"A load that draws a constant {Shown.Number(watts)} W and needs at least {Shown.Number(lowest.Volts)} V is {length} from a supply of {Volts}, one way, by a pair of {_stranding} {_material} at {Degrees}. Which AWG is the smallest conductor that will do, by voltage alone?",
            "AWG", gauge, Exact, smallest.Explain);
    }

    // 85 to 95 % of the supply's voltage, at a tenth of a volt.
    private ElectricPotential Lowest() => ElectricPotential.FromVolts(Math.Round(_supply.Volts * _numbers.Between(85, 95) / 100, 1));

    private static double AtLeastOneStep(double value, double step) => Math.Max(1, Math.Round(value / step)) * step;
}
