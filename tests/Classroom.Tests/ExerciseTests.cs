using System;
using System.Collections.Generic;
using System.Globalization;
using System.Linq;
using CamPower;
using Classroom.Bench;
using Classroom.Exercises;

namespace Classroom.Tests;

public class ExerciseTests
{
    private const int Many = 200;

    public static TheoryData<ExerciseKind> Kinds => [.. Enum.GetValues<ExerciseKind>()];

    [Theory]
    [MemberData(nameof(Kinds))]
    public void SameKindAndNumber_IsTheSameExercise_AndNumbersDiffer(ExerciseKind kind)
    {
        Assert.Equal(Made(kind, 7).Question, Made(kind, 7).Question);
        Assert.Equal(Made(kind, 7).Answer, Made(kind, 7).Answer);
        Assert.True(All(kind).Select(e => e.Question).Distinct(StringComparer.Ordinal).Count() > Many * 9 / 10);
    }

    // A pin of our own output: a class that wrote a number down must find the same exercise under it next year.
    [Fact]
    public void ExerciseOne_StaysWhatItIs() => Assert.Equal(
        "A run of 230 ft, one way, of a pair of 18 AWG flexible annealed copper is at 35 °C; its resistance out and back is then 3.2347 Ω. "
        + "The supply gives 12 V, and the load draws a constant 7.6 W, more current the lower its voltage. How many volts are lost in the run?",
        Made(ExerciseKind.DropAtConstantPower, 1).Question);

    [Theory]
    [MemberData(nameof(Kinds))]
    public void LibrarysAnswer_IsRight_AndWhatLiesOutsideTheToleranceIsNot(ExerciseKind kind)
    {
        foreach (Exercise exercise in All(kind))
        {
            Assert.True(exercise.Answer > 0 && double.IsFinite(exercise.Answer), exercise.Question);
            Assert.Equal(Mark.Right, exercise.MarkOf(Typed(exercise.Answer)));
            double step = exercise.RelativeTolerance > 0 ? exercise.Answer * exercise.RelativeTolerance * 1.01 : 1;
            Assert.Equal(Mark.Wrong, exercise.MarkOf(Typed(exercise.Answer + step)));
            Assert.Equal(Mark.Wrong, exercise.MarkOf(Typed(exercise.Answer - step)));
            Assert.Equal(Mark.NotANumber, exercise.MarkOf("a lot"));
            Assert.Equal(Mark.NotANumber, exercise.MarkOf(""));
        }
    }

    [Theory]
    [MemberData(nameof(Kinds))]
    public void Working_ComesToTheAnswer(ExerciseKind kind)
    {
        foreach (Exercise exercise in All(kind))
        {
            Derivation working = exercise.Explain();
            if (kind == ExerciseKind.SmallestGauge) Assert.Contains($"{exercise.Answer} AWG", working.Conclusion, StringComparison.Ordinal);
            else Assert.Contains(working.Steps, s => Math.Abs((s.Value * ToAnswerUnit(exercise)) - exercise.Answer) <= 1e-6 * exercise.Answer);
        }

        static double ToAnswerUnit(Exercise exercise) => exercise.Unit == "ft" ? 1 / 0.3048 : 1;
    }

    [Fact]
    public void DropAtConstantPower_IsNotMetByTheSupplysCurrent()
    {
        // Whoever divides the power by the supply's voltage forgets that the current rises as the voltage falls.
        foreach (Exercise exercise in All(ExerciseKind.DropAtConstantPower))
        {
            (double ohms, double volts, double watts) = Givens(exercise.Question);
            Assert.Equal(Mark.Wrong, exercise.MarkOf(Typed(watts / volts * ohms)));
            double byHand = (volts - Math.Sqrt((volts * volts) - (4 * ohms * watts))) / 2;
            Assert.Equal(Mark.Right, exercise.MarkOf(Typed(byHand)));
        }
    }

    [Fact]
    public void MarginToCollapse_ByHandFromWhatIsGiven_IsRight_AndSomeHaveCollapsed()
    {
        Exercise[] all = [.. All(ExerciseKind.MarginToCollapse)];
        foreach (Exercise exercise in all)
        {
            (double ohms, double volts, double watts) = Givens(exercise.Question);
            Assert.Equal(Mark.Right, exercise.MarkOf(Typed(volts * volts / (4 * ohms) / watts)));
        }

        Assert.Contains(all, e => e.Answer < 1);
        Assert.Contains(all, e => e.Answer > 1);
    }

    [Fact]
    public void OtherUnits_AskInThoseUnits()
    {
        Exercise metric = ExerciseMaker.Make(ExerciseKind.LongestRun, 3, LengthScale.Meters, TemperatureScale.Fahrenheit);
        Assert.Equal("m", metric.Unit);
        Assert.Contains("°F", metric.Question, StringComparison.Ordinal);
        Assert.DoesNotContain(" ft", metric.Question, StringComparison.Ordinal);
    }

    private static Exercise Made(ExerciseKind kind, int number) => ExerciseMaker.Make(kind, number, LengthScale.Feet, TemperatureScale.Celsius);

    private static IEnumerable<Exercise> All(ExerciseKind kind) => Enumerable.Range(1, Many).Select(n => Made(kind, n));

    private static string Typed(double value) => value.ToString("R", CultureInfo.InvariantCulture);

    private static (double Ohms, double Volts, double Watts) Givens(string question)
    {
        return (Before(" Ω."), Before(" V,"), Before(" W"));

        double Before(string unit) => double.Parse(question[..question.IndexOf(unit, StringComparison.Ordinal)].Split(' ')[^1], CultureInfo.InvariantCulture);
    }
}
