using System;
using CamPower;

namespace Classroom.Bench;

/// <summary>Answers in words and at the digits that a meter would show.</summary>
public static class Shown
{
    public static string Volts(double volts) => FormattableString.Invariant($"{volts:0.00} V");

    public static string Amperes(double amperes) => FormattableString.Invariant($"{amperes:0.000} A");

    public static string Ohms(double ohms) => FormattableString.Invariant($"{ohms:0.000} Ω");

    public static string Percent(double percent) => FormattableString.Invariant($"{percent:0.0} %");

    public static string Watts(double watts) => FormattableString.Invariant($"{watts:0.00} W");

    public static string Number(double value) => FormattableString.Invariant($"{value:G6}");

    /// <summary>The most constant power that the run carries with nothing else on it.</summary>
    public static string MaximumPower(RunResult result)
    {
        RunResult alone = result.Run.Feed(Load.None, result.SourceVoltage, result.ConductorTemperature);
        return alone.MaximumPower is UnitsNet.Power most ? Watts((double)most.Watts) : "no limit: the run has no resistance";
    }

    /// <summary>How many times its constant power the run carries; less than once where there is no operating point.</summary>
    public static string Margin(RunResult result)
    {
        if (result.MarginToCollapse is not UnitsNet.Ratio margin) return "cannot collapse";
        double times = margin.DecimalFractions;
        return FormattableString.Invariant($"{times:0.00} times the load");
    }

    /// <summary>Whether the load is inside what the camera accepts, and by how much.</summary>
    public static string Window(RunResult result, VoltageRange window)
    {
        string accepted = $"{Volts(window.Lowest.Volts)} to {Volts(window.Highest.Volts)}";
        if (!result.TryGetOperatingPoint(out OperatingPoint point)) return accepted;
        double low = window.Lowest.Volts - point.Voltage.Volts, high = point.Voltage.Volts - window.Highest.Volts;
        return (low > 0, high > 0) switch
        {
            (true, _) => $"{accepted}: it gets {Volts(low)} too little",
            (_, true) => $"{accepted}: it gets {Volts(high)} too much",
            _ => $"{accepted}: inside, {Volts(Math.Min(-low, -high))} from the nearer end",
        };
    }

    /// <summary>The answer in a few words.</summary>
    public static string Brief(RunResult result) => result.TryGetOperatingPoint(out OperatingPoint point)
        ? $"{Volts(point.Voltage.Volts)} at the load, {Amperes(point.Current.Amperes)}"
        : $"No operating point: at most {MaximumPower(result)}";

    /// <summary>The answer in a sentence.</summary>
    public static string Sentence(RunResult result)
    {
        if (result.TryGetOperatingPoint(out OperatingPoint point))
        {
            double volts = point.Voltage.Volts, amperes = point.Current.Amperes, lost = result.Drop.Volts, share = result.DropRatio.Percent;
            return $"{Volts(volts)} reach the load. {Amperes(amperes)} flow, and {Volts(lost)} ({Percent(share)}) are lost in the run.";
        }

        double asked = (double)result.Load.PowerComponent.Watts;
        return asked > 0
            ? $"No operating point: from this supply the run carries at most {MaximumPower(result)}, and the load asks for {Watts(asked)}."
            : $"No operating point: the load's current would take all of the supply's voltage. Of constant power the run carries at most {MaximumPower(result)} from this supply.";
    }
}
