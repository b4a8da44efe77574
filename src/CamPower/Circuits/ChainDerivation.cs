using System;
using System.Collections.Generic;
using System.Globalization;
using System.Linq;
using static CamPower.DerivationStep;

namespace CamPower.Circuits;

/// <summary>Writes down a chain's answer so that it can be checked: the voltages come from Newton's method, and satisfy the laws step by
/// step.</summary>
internal static class ChainDerivation
{
    internal static Derivation Of(ChainResult result)
    {
        var steps = new List<DerivationStep>();
        for (int k = 0; k < result.Chain.Links.Count; k++)
        {
            steps.AddRange(RunDerivation.LoopSteps(result.Chain.Links[k].Run, result.ConductorCelsius, Index(k)));
        }

        if (result.HasOperatingPoint)
        {
            steps.AddRange(CurrentSteps(result.Taps));
            steps.AddRange(VoltageSteps(result));
        }

        return new Derivation($"{result.Chain}", steps, Conclusion(result));
    }

    private static IEnumerable<DerivationStep> CurrentSteps(IReadOnlyList<ChainTap> taps)
    {
        for (int k = taps.Count - 1; k >= 0; k--)
        {
            ChainTap tap = taps[k];
            yield return RunDerivation.CurrentStep(tap.Link.Load, tap.Volts, tap.LoadAmperes, Index(k));
            string behind = k + 1 < taps.Count ? Number(taps[k + 1].SegmentAmperes) : string.Empty;
            yield return behind.Length == 0
                ? Step("J", k, "Current in the cable before the last camera", $"I{Index(k)}", Sub("I", k), Number(tap.LoadAmperes),
                    tap.SegmentAmperes, "A")
                : Step("J", k, $"Current in the cable before camera {Index(k)}: its own and that of those behind",
                    $"I{Index(k)} + J{Index(k + 1)}",
                    $"{Sub("I", k)} + {Sub("J", k + 1)}", $"{Number(tap.LoadAmperes)} + {behind}", tap.SegmentAmperes, "A");
        }
    }

    private static IEnumerable<DerivationStep> VoltageSteps(ChainResult result)
    {
        double before = result.SourceVolts;
        for (int k = 0; k < result.Taps.Count; k++)
        {
            ChainTap tap = result.Taps[k];
            string plain = k == 0 ? "Vs" : $"V{Index(k - 1)}", latex = k == 0 ? "V_s" : Sub("V", k - 1);
            yield return Step("V", k, $"Voltage at camera {Index(k)}", $"{plain} - R{Index(k)}*J{Index(k)}",
                $"{latex} - {Sub("R", k)} {Sub("J", k)}",
                $"{Number(before)} - {Number(tap.Link.Run.OhmsAt(result.ConductorCelsius))}*{Number(tap.SegmentAmperes)}", tap.Volts, "V");
            before = tap.Volts;
        }
    }

    private static string Conclusion(ChainResult result)
    {
        if (!result.HasOperatingPoint) return "There is no operating point: the pair cannot carry all its cameras together.";
        ChainTap lowest = result.Taps.OrderBy(t => t.Volts).First();
        return "The voltages were found by Newton's method and balance at every camera. "
            + FormattableString.Invariant($"The least is {lowest.Volts:0.###} V, {lowest.Meters:0.###} m from the source.");
    }

    private static DerivationStep Step(
        string symbol, int k, string meaning, string formula, string latex, string substitution, double value, string unit) =>
        new(symbol + Index(k), meaning, formula, $"{Sub(symbol, k)} = {latex}", substitution, value, unit, Sources.Kirchhoff);

    private static string Sub(string symbol, int k) => RunDerivation.Latex(symbol, Index(k));

    private static string Index(int k) => (k + 1).ToString(CultureInfo.InvariantCulture);
}
