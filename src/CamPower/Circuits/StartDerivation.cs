using System;
using System.Collections.Generic;
using static CamPower.DerivationStep;

namespace CamPower.Circuits;

/// <summary>Writes down why a device starts or not: the three comparisons, each as what is left.</summary>
internal static class StartDerivation
{
    internal static Derivation Of(StartResult result)
    {
        RunResult atStart = result.AtStart;
        var steps = new List<DerivationStep>(RunDerivation.LoopSteps(atStart.Run, atStart.ConductorCelsius));
        Starting starting = result.Starting;
        steps.Add(Left("u", "The unloaded voltage above the turn-on: below zero it never comes up", "Vs - Von", "u = V_s - V_{on}",
            atStart.SourceVolts, starting.TurnOnVolts));
        if (atStart.HasOperatingPoint) steps.AddRange(PointSteps(atStart, starting));
        else steps.AddRange(RunDerivation.LimitSteps(atStart));
        return new Derivation($"Whether {atStart.Load} starts at the end of {atStart.Run}: {starting}", steps, Conclusion(result));
    }

    private static IEnumerable<DerivationStep> PointSteps(RunResult atStart, Starting starting)
    {
        foreach (DerivationStep step in RunDerivation.PointSteps(atStart)) yield return step;
        yield return Left("s", "The voltage at start power above the drop-out: below zero it drops out", "V - Voff", "s = V - V_{off}",
            atStart.LoadVolts, starting.DropOutVolts);
        if (atStart.Load.Watts == 0 || atStart.Ohms == 0) yield break;

        double unstable = RunKernel.UnstableVolts(atStart.SourceVolts, atStart.Ohms, atStart.Load, atStart.LoadVolts);
        double upper = RunKernel.UpperRootOfPower(atStart.SourceVolts, atStart.Ohms, atStart.Load, atStart.LoadVolts);
        string r = Number(atStart.Ohms);
        yield return new DerivationStep("Vu", "The lower root of the power component: a voltage that does not last", "R*P/((1 + R*G)*Vp)",
            @"V_u = \frac{R P}{(1 + R G)\,V_p}",
                $"{r}*{Number(atStart.Load.Watts)}/((1 + {r}*{Number(atStart.Load.Siemens)})*{Number(upper)})", unstable, "V",
                Sources.Kirchhoff);
        yield return Left("t",
            "The turn-on above the lower root: below zero, and without a soft start, the draw pulls its own voltage down", "Von - Vu",
            "t = V_{on} - V_u", starting.TurnOnVolts, unstable);
    }

    private static DerivationStep Left(string symbol, string meaning, string formula, string latex, double volts, double threshold) =>
        new(symbol, meaning, formula, latex, $"{Number(volts)} - {Number(threshold)}", volts - threshold, "V", Sources.Kirchhoff);

    private static string Conclusion(StartResult result) => result.Verdict switch
    {
        StartVerdict.Starts => FormattableString.Invariant($"It starts, and stays on at {result.AtStart.LoadVolts:0.###} V."),
        StartVerdict.UnloadedBelowTurnOn => "It never comes up: even unloaded, the voltage is under its turn-on.",
        StartVerdict.SettlesBelowDropOut =>
            "It comes up, drops out and restarts again and again: at start power its voltage stays below its drop-out voltage.",
        _ => "It does not start: it turns on under the lower root and declares no soft start, so its draw pulls its own voltage down.",
    };
}
