using System;
using System.Collections.Generic;
using static CamPower.DerivationStep;

namespace CamPower.Circuits;

/// <summary>Writes down how the answer for one run was worked out.</summary>
internal static class RunDerivation
{
    internal static Derivation Of(RunResult result)
    {
        var steps = new List<DerivationStep>(LoopSteps(result));
        steps.AddRange(result.HasOperatingPoint ? PointSteps(result) : LimitSteps(result));
        return new Derivation($"{result.Load} at the end of {result.Run}", steps, Conclusion(result));
    }

    private static IEnumerable<DerivationStep> LoopSteps(RunResult result)
    {
        double celsius = result.ConductorCelsius;
        var symbols = new List<string>();
        var numbers = new List<string>();
        foreach (RunPart part in result.Run.Parts)
        {
            int index = symbols.Count + 1;
            if (part is CableSegment segment)
            {
                foreach (DerivationStep step in SegmentSteps(segment, index, celsius)) yield return step;
            }

            symbols.Add(part is Joint joint ? $"R({joint.Name})" : FormattableString.Invariant($"R{index}"));
            numbers.Add(Number(part.OhmsAt(celsius)));
        }

        yield return new DerivationStep("R", "Loop resistance of the run, joints included",
            string.Join(" + ", symbols), @"R = \sum_k R_k", string.Join(" + ", numbers), result.Ohms, "Ω", Sources.Kirchhoff);
    }

    private static IEnumerable<DerivationStep> SegmentSteps(CableSegment segment, int index, double celsius)
    {
        Conductor outgoing = segment.Cable.Outgoing, back = segment.Cable.Return;
        string length = Number(segment.OneWayLength.Meters);
        yield return PerLength(outgoing, 'r', index, celsius, "outgoing conductor");
        string outgoingPerMeter = Number(outgoing.OhmsPerMeterAt(celsius));
        if (ReferenceEquals(outgoing, back))
        {
            yield return Segment("2*L*r", FormattableString.Invariant($@"2\,L\,r_{index}"), $"2*{length}*{outgoingPerMeter}");
            yield break;
        }

        yield return PerLength(back, 's', index, celsius, "return conductor");
        yield return Segment("L*(r + s)", FormattableString.Invariant($@"L\,(r_{index} + s_{index})"), $"{length}*({outgoingPerMeter} + {Number(back.OhmsPerMeterAt(celsius))})");

        DerivationStep Segment(string formula, string latex, string substitution) => new(
            FormattableString.Invariant($"R{index}"), $"Resistance out and back of {segment}", formula,
            FormattableString.Invariant($"R_{index} = {latex}"), substitution, segment.OhmsAt(celsius), "Ω", Sources.Resistance);
    }

    private static DerivationStep PerLength(Conductor conductor, char symbol, int index, double celsius, string which)
    {
        string rho = Number(conductor.Material.OhmMetersAt20C * 1e6), area = Number(conductor.Size.SquareMeters * 1e6);
        string alpha = Number(conductor.Material.TemperatureCoefficientAt20C), lay = Number(conductor.Stranding.LayFactor);
        return new DerivationStep(
            FormattableString.Invariant($"{symbol}{index}"),
            FormattableString.Invariant($"Resistance per metre of the {which}, {conductor}, at {celsius:G6} °C"),
            "rho20*k*(1 + alpha20*(T - 20))/A",
            FormattableString.Invariant($@"{symbol}_{index} = \frac{{\rho_{{20}}\,k\,(1+\alpha_{{20}}(T-20))}}{{A}}"),
            $"{rho}*{lay}*(1 + {alpha}*({Number(celsius)} - 20))/{area}",
            conductor.OhmsPerMeterAt(celsius), "Ω/m", Sources.LinearTemperature);
    }

    private static IEnumerable<DerivationStep> PointSteps(RunResult result)
    {
        double vs = result.SourceVolts, r = result.Ohms, v = result.LoadVolts, i = result.Amperes;
        foreach (DerivationStep step in VoltageSteps(result)) yield return step;
        yield return CurrentStep(result.Load, v, i);
        yield return new DerivationStep("drop", "Voltage lost in the run", "I*R", @"\Delta V = I R",
            $"{Number(i)}*{Number(r)}", i * r, "V", Sources.Kirchhoff);
        yield return new DerivationStep("share", "The drop as a share of the source voltage", "100*drop/Vs", @"\delta = 100\,\frac{\Delta V}{V_s}",
            $"100*{Number(i * r)}/{Number(vs)}", 100 * (i * r / vs), "%", Sources.Kirchhoff);
        if (result.Load.Watts > 0 && r > 0)
        {
            yield return MostPowerStep(result);
            double most = RunKernel.MostWatts(vs, r, result.Load);
            yield return new DerivationStep("margin", "How many times the constant-power share could grow", "Pmost/P", @"m = \frac{P_{most}}{P}",
                $"{Number(most)}/{Number(result.Load.Watts)}", most / result.Load.Watts, "", Sources.MaximumPower);
        }
    }

    private static IEnumerable<DerivationStep> LimitSteps(RunResult result)
    {
        double left = Exact.MinusProduct(result.SourceVolts, result.Ohms, result.Load.Amperes);
        if (left <= 0 || !result.Load.IsLargerOf) yield return LeftStep(result, result.Load.Amperes);
        if (left > 0) yield return MostPowerStep(result);
    }

    // A larger-of load is solved as whichever of its shares is the larger at the answer.
    private static IEnumerable<DerivationStep> VoltageSteps(RunResult result)
    {
        Load load = result.Load;
        double vs = result.SourceVolts, r = result.Ohms, v = result.LoadVolts;
        if (load.Watts == 0 || (load.IsLargerOf && v * load.Amperes >= load.Watts))
        {
            yield return new DerivationStep("V", "Voltage at the load", "(Vs - R*I0)/(1 + R*G)", @"V = \frac{V_s - R I_0}{1 + R G}",
                $"({Number(vs)} - {Number(r)}*{Number(load.Amperes)})/(1 + {Number(r)}*{Number(load.Siemens)})", v, "V", Sources.Kirchhoff);
            yield break;
        }

        double besidePower = load.IsLargerOf ? 0 : load.Amperes;
        yield return LeftStep(result, besidePower);
        double left = Exact.MinusProduct(vs, r, besidePower), gain = 1 + (r * load.Siemens);
        double discriminant = RunKernel.Discriminant(left, r * gain, load.Watts);
        yield return new DerivationStep("D", "Discriminant of the load line: negative where no operating point exists",
            "a^2 - 4*R*(1 + R*G)*P", @"D = a^2 - 4R(1+RG)P",
            $"{Number(left)}^2 - 4*{Number(r)}*(1 + {Number(r)}*{Number(load.Siemens)})*{Number(load.Watts)}", discriminant, "V²", Sources.Kirchhoff);
        yield return new DerivationStep("V", "Voltage at the load: the upper, stable root",
            "(a + sqrt(D))/(2*(1 + R*G))", @"V = \frac{a + \sqrt{D}}{2(1+RG)}",
            $"({Number(left)} + sqrt({Number(discriminant)}))/(2*(1 + {Number(r)}*{Number(load.Siemens)}))", v, "V", Sources.Kirchhoff);
    }

    private static DerivationStep LeftStep(RunResult result, double amperes) => new(
        "a", "Source voltage left by the constant-current share", "Vs - R*I0", "a = V_s - R I_0",
        $"{Number(result.SourceVolts)} - {Number(result.Ohms)}*{Number(amperes)}",
        Exact.MinusProduct(result.SourceVolts, result.Ohms, amperes), "V", Sources.Kirchhoff);

    private static DerivationStep MostPowerStep(RunResult result)
    {
        Load load = result.Load;
        double vs = result.SourceVolts, r = result.Ohms, left = Exact.MinusProduct(vs, r, load.Amperes);
        double most = RunKernel.MostWatts(vs, r, load);
        if (RunKernel.IsLimitedByCurrent(vs, left, load))
        {
            return MostPower("(Vs - R*I0)*I0", @"P_{most} = (V_s - R I_0)\,I_0",
                $"({Number(vs)} - {Number(r)}*{Number(load.Amperes)})*{Number(load.Amperes)}");
        }

        return load.IsLargerOf
            ? MostPower("Vs^2/(4*R)", @"P_{most} = \frac{V_s^2}{4R}", $"{Number(vs)}^2/(4*{Number(r)})")
            : MostPower("a^2/(4*R*(1 + R*G))", @"P_{most} = \frac{a^2}{4R(1+RG)}",
                $"{Number(left)}^2/(4*{Number(r)}*(1 + {Number(r)}*{Number(load.Siemens)}))");

        DerivationStep MostPower(string formula, string latex, string substitution) => new("Pmost",
            "Most constant power that the run can carry", formula, latex, substitution, most, "W", Sources.MaximumPower);
    }

    private static DerivationStep CurrentStep(Load load, double volts, double amperes) => load.IsLargerOf
        ? new DerivationStep("I", "Current: the larger of the two shares", "max(P/V, I0)", @"I = \max\left(\frac{P}{V}, I_0\right)",
            $"max({Number(load.Watts)}/{Number(volts)}, {Number(load.Amperes)})", amperes, "A", Sources.Kirchhoff)
        : new DerivationStep("I", "Current: the three shares of the load", "P/V + I0 + G*V", @"I = \frac{P}{V} + I_0 + G V",
            $"{Number(load.Watts)}/{Number(volts)} + {Number(load.Amperes)} + {Number(load.Siemens)}*{Number(volts)}", amperes, "A", Sources.Kirchhoff);

    private static string Conclusion(RunResult result)
    {
        if (result.HasOperatingPoint)
        {
            return FormattableString.Invariant($"The load gets {result.LoadVolts:0.###} V of {result.SourceVolts:0.###} V.");
        }

        double most = RunKernel.MostWatts(result.SourceVolts, result.Ohms, result.Load);
        return FormattableString.Invariant($"There is no operating point: the run carries at most {most:G6} W of constant power, and the load asks for {result.Load.Watts:G6} W.");
    }
}
