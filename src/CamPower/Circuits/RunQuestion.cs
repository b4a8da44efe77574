using System;

namespace CamPower.Circuits;

/// <summary>One load on one run with a limit on its voltage: what every inverse question starts from. SI doubles.</summary>
/// <param name="Run">The run as it was given.</param>
/// <param name="Load">The load; where its power is asked for, what it draws beside.</param>
/// <param name="SourceVolts">Voltage of the source; 0 where it is asked for. [V]</param>
/// <param name="DegreesCelsius">Temperature of the conductors; 20 where it is asked for. [°C]</param>
/// <param name="Accepted">How little voltage is accepted.</param>
internal sealed record RunQuestion(CableRun Run, Load Load, double SourceVolts, double DegreesCelsius, VoltageLimit Accepted)
{
    // A hair inside, so that the answer still holds when it is read in another unit and handed back: quantities convert
    // through their base unit, and a power, being a decimal, to 15 digits. Where that is not enough, four times as much.
    private const double FirstStep = 1e-13, Growth = 4;
    private const int MostSteps = 12;

    /// <summary>Lowest voltage accepted at the load. [V]</summary>
    internal double AcceptedVolts => Accepted.LowestVoltsFrom(SourceVolts);

    /// <summary>Load voltage at which a growing resistance makes the run collapse. [V]</summary>
    internal double CollapseVolts => RunLimitKernel.CollapseVoltsByResistance(SourceVolts, Load);

    /// <summary>Load voltage at the largest resistance. [V]</summary>
    internal double LimitVolts => Math.Max(AcceptedVolts, CollapseVolts);

    /// <summary>Whether the source itself lies below what is accepted.</summary>
    internal bool SourceIsTooLow => AcceptedVolts > SourceVolts;

    /// <summary>The largest loop resistance; negative where none will do. [Ω]</summary>
    internal double MostOhms => SourceIsTooLow ? -1 : RunLimitKernel.OhmsAt(SourceVolts, LimitVolts, Load);

    /// <summary>Limit of the largest resistance.</summary>
    internal BindingLimit ResistanceLimit => CollapseVolts > AcceptedVolts ? BindingLimit.Collapse : Accepted.StricterFrom(SourceVolts);

    /// <summary>The run, or another one, fed forward.</summary>
    internal RunResult Feed(CableRun run) => new(run, Load, SourceVolts, DegreesCelsius, run.OhmsAt(DegreesCelsius));

    /// <summary>The largest value that will do.</summary>
    /// <param name="value">What the closed form gives.</param>
    /// <param name="scale">Size of the numbers that it is a difference of: how far rounding can move it.</param>
    /// <param name="least">Below this there is no value.</param>
    /// <param name="most">Above this there is no need to go, because of <paramref name="atMost"/>.</param>
    /// <param name="limit">What limits the value of the closed form.</param>
    /// <param name="atMost">What <paramref name="most"/> is.</param>
    /// <param name="feed">Solves forward with a value.</param>
    /// <param name="read">Gives a value its unit.</param>
    /// <param name="explain">Writes the working down.</param>
    internal RunAnswer<T> Largest<T>(double value, double scale, double least, double most, BindingLimit limit, BindingLimit atMost,
        Func<double, RunResult> feed, Func<double, T> read, Func<RunAnswer<T>, Derivation> explain) where T : struct
    {
        if (!(value >= least)) return new RunAnswer<T>(null, limit, default, explain);
        return value > most
            ? Settled(most, -Math.Abs(most), least, most, atMost, feed, read, explain)
            : Settled(value, -scale, least, most, limit, feed, read, explain);
    }

    /// <summary>The smallest value that will do; the parameters are those of <see cref="Largest"/>, ends exchanged.</summary>
    internal RunAnswer<T> Smallest<T>(double value, double scale, double least, double most, BindingLimit limit,
        Func<double, RunResult> feed, Func<double, T> read, Func<RunAnswer<T>, Derivation> explain) where T : struct
    {
        if (!(value <= most))
        {
            return new RunAnswer<T>(null, double.IsInfinity(value) ? limit : BindingLimit.CalculatedRange, default, explain);
        }

        return value < least
            ? Settled(least, least, least, most, BindingLimit.CalculatedRange, feed, read, explain)
            : Settled(value, scale, least, most, limit, feed, read, explain);
    }

    // The closed form rounds, and so does the way forward: what is handed out holds when it is fed forward.
    private RunAnswer<T> Settled<T>(double value, double scale, double least, double most, BindingLimit limit,
        Func<double, RunResult> feed, Func<double, T> read, Func<RunAnswer<T>, Derivation> explain) where T : struct
    {
        double step = value <= least || value >= most ? 0 : FirstStep;
        for (int i = 0; i < MostSteps; i++)
        {
            double candidate = Math.Max(least, Math.Min(most, value + (scale * step)));
            RunResult result = feed(candidate);
            if (Accepted.IsMetBy(result)) return new RunAnswer<T>(read(candidate), limit, result, explain);
            step = step == 0 ? FirstStep : step * Growth;
        }

        return new RunAnswer<T>(null, limit, default, explain);
    }
}
