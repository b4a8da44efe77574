using System;
using System.Collections.Generic;
using System.Globalization;
using System.Linq;
using static CamPower.DerivationStep;

namespace CamPower.Circuits;

/// <summary>Writes down how the answer for one run was worked out.</summary>
internal static class RunDerivation
{
    internal static Derivation Of(RunResult result)
    {
        var steps = new List<DerivationStep>(LoopSteps(result.Run, result.ConductorCelsius));
        steps.AddRange(result.HasOperatingPoint ? PointSteps(result) : LimitSteps(result));
        return new Derivation($"{result.Load} at the end of {result.Run}", steps, Conclusion(result));
    }

    /// <summary>The resistance of a run, part by part.</summary>
    /// <param name="run">The run.</param>
    /// <param name="celsius">Temperature of its conductors. [°C]</param>
    /// <param name="of">Index of the run among several; empty for the only one.</param>
    internal static IEnumerable<DerivationStep> LoopSteps(CableRun run, double celsius, string of = "")
    {
        var symbols = new List<string>();
        var numbers = new List<string>();
        bool onlyOne = run.Parts.Count == 1;
        string before = of.Length == 0 ? string.Empty : of + ".";
        foreach (RunPart part in run.Parts)
        {
            string index = onlyOne ? of : before + (symbols.Count + 1).ToString(CultureInfo.InvariantCulture);
            if (part is CableSegment segment)
            {
                foreach (DerivationStep step in SegmentSteps(segment, index, celsius)) yield return step;
            }

            symbols.Add(part is Joint joint ? $"R({joint.Name})" : $"R{index}");
            numbers.Add(Number(part.OhmsAt(celsius)));
        }

        if (onlyOne) yield break;
        yield return new DerivationStep($"R{of}", "Loop resistance of the run, joints included",
            string.Join(" + ", symbols), $@"{Latex("R", of)} = \sum_k {Latex("R", before + "k")}", string.Join(" + ", numbers),
                run.OhmsAt(celsius), "Ω", Sources.Kirchhoff);
    }

    private static IEnumerable<DerivationStep> SegmentSteps(CableSegment segment, string index, double celsius)
    {
        Conductor outgoing = segment.Cable.Outgoing, back = segment.Cable.Return;
        double meters = segment.OneWayLength.Meters;
        string length = Number(meters);
        yield return PerLength(outgoing, "r", index, celsius, "outgoing conductor");
        string outgoingPerMeter = Number(outgoing.OhmsPerMeterAt(celsius));
        if (ReferenceEquals(outgoing, back))
        {
            yield return Segment($"2*L*r{index}", $@"2\,L\,{Latex("r", index)}", $"2*{length}*{outgoingPerMeter}");
            yield break;
        }

        yield return PerLength(back, "s", index, celsius, "return conductor");
        yield return Segment($"L*(r{index} + s{index})", $@"L\,({Latex("r", index)} + {Latex("s", index)})",
            $"{length}*({outgoingPerMeter} + {Number(back.OhmsPerMeterAt(celsius))})");

        DerivationStep Segment(string formula, string latex, string substitution) => new(
            $"R{index}", FormattableString.Invariant($"Resistance out and back of {segment}; L is the one-way length, {meters:G6} m"),
                formula,
            $"{Latex("R", index)} = {latex}", substitution, segment.OhmsAt(celsius), "Ω", Sources.Resistance);
    }

    internal static DerivationStep PerLength(Conductor conductor, string symbol, string index, double celsius, string which)
    {
        string alpha = Number(conductor.Material.TemperatureCoefficientAt20C), growth = $"(1 + {alpha}*({Number(celsius)} - 20))";
        Symbols at = conductor.Basis is TabulatedResistance table ? Tabulated(table, alpha, growth) : Nominal(conductor, growth);
        Symbols share = conductor.Count == 1
            ? new Symbols("", "", "")
            : new Symbols("/n", @"\cdot\frac{1}{n}", "/" + Number(conductor.Count));
        return new DerivationStep(
            $"{symbol}{index}",
            FormattableString.Invariant($"Resistance per meter of the {which}, {conductor}, at {celsius:G6} °C"),
            at.Plain + share.Plain, $"{Latex(symbol, index)} = {at.Latex}{share.Latex}", at.Numbers + share.Numbers,
            conductor.OhmsPerMeterAt(celsius), "Ω/m", conductor.Basis is TabulatedResistance
                ? conductor.Basis.Source
                : Sources.LinearTemperature);
    }

    private static Symbols Nominal(Conductor conductor, string growth)
    {
        string rho = Number(conductor.Material.OhmMetersAt20C * 1e6), area = Number(conductor.Size.SquareMeters * 1e6);
        return new Symbols("rho20*k*(1 + alpha20*(T - 20))/A", @"\frac{\rho_{20}\,k\,(1+\alpha_{20}(T-20))}{A}",
            $"{rho}*{Number(conductor.Stranding.LayFactor)}*{growth}/{area}");
    }

    // The table's figure, taken from its own temperature to the one asked for.
    private static Symbols Tabulated(TabulatedResistance table, string alpha, string growth) => new(
        "rt*(1 + alpha20*(T - 20))/(1 + alpha20*(Tt - 20))", @"r_t\,\frac{1+\alpha_{20}(T-20)}{1+\alpha_{20}(T_t-20)}",
        $"{Number(table.PerLength.OhmsPerMeter)}*{growth}/(1 + {alpha}*({Number(table.AtCelsius)} - 20))");

    internal static IEnumerable<DerivationStep> PointSteps(RunResult result)
    {
        double vs = result.SourceVolts, r = result.Ohms, v = result.LoadVolts, i = result.Amperes;
        foreach (DerivationStep step in VoltageSteps(result)) yield return step;
        yield return CurrentStep(result.Load, v, i);
        yield return new DerivationStep("drop", "Voltage lost in the run", "I*R", @"\Delta V = I R",
            $"{Number(i)}*{Number(r)}", i * r, "V", Sources.Kirchhoff);
        yield return new DerivationStep(
            "share", "The drop as a share of the source voltage", "100*drop/Vs", @"\delta = 100\,\frac{\Delta V}{V_s}",
            $"100*{Number(i * r)}/{Number(vs)}", 100 * (i * r / vs), "%", Sources.Kirchhoff);
        if (result.Load.Watts > 0 && r > 0)
        {
            yield return MaximumPowerStep(result);
            yield return MarginStep(result);
        }
    }

    internal static IEnumerable<DerivationStep> LimitSteps(RunResult result)
    {
        double left = Left(result);
        if (left <= 0 || HasCurrentComponent(result.Load)) yield return LeftStep(result);
        if (left <= 0) yield break;
        yield return MaximumPowerStep(result);
        if (result.Load.Watts > 0) yield return MarginStep(result);
    }

    // A larger-of load is solved as whichever of its shares is the larger at the answer.
    private static IEnumerable<DerivationStep> VoltageSteps(RunResult result)
    {
        Load load = result.Load;
        string r = Number(result.Ohms);
        if (load.Watts == 0 || (load.IsLargerOf && result.LoadVolts * load.Amperes >= load.Watts))
        {
            yield return new DerivationStep("V", "Voltage at the load", "(Vs - R*I0)/(1 + R*G)", @"V = \frac{V_s - R I_0}{1 + R G}",
                $"({Number(result.SourceVolts)} - {r}*{Number(load.Amperes)})/(1 + {r}*{Number(load.Siemens)})", result.LoadVolts, "V",
                    Sources.Kirchhoff);
            yield break;
        }

        if (HasCurrentComponent(load)) yield return LeftStep(result);
        Symbols left = LeftSymbols(result), gain = GainSymbols(result);
        Symbols twice = gain.Plain.Length == 0
            ? new Symbols("2", "2", "2")
            : new Symbols($"(2{gain.Plain})", "2" + gain.Latex, $"(2{gain.Numbers})");
        double beside = load.IsLargerOf ? result.SourceVolts : Left(result);
        double discriminant = RunKernel.Discriminant(beside, result.Ohms * (1 + (result.Ohms * load.Siemens)), load.Watts);
        yield return new DerivationStep("D", "Discriminant of the load line: negative where no operating point exists",
            $"{left.Plain}^2 - 4*R{gain.Plain}*P", $"D = {left.Latex}^2 - 4 R{gain.Latex} P",
            $"{left.Numbers}^2 - 4*{r}{gain.Numbers}*{Number(load.Watts)}", discriminant, "V²", Sources.Kirchhoff);
        yield return new DerivationStep("V", "Voltage at the load: the upper, stable root",
            $"({left.Plain} + sqrt(D))/{twice.Plain}", $@"V = \frac{{{left.Latex} + \sqrt{{D}}}}{{{twice.Latex}}}",
            $"({left.Numbers} + sqrt({Number(discriminant)}))/{twice.Numbers}", result.LoadVolts, "V", Sources.Kirchhoff);
    }

    private static DerivationStep LeftStep(RunResult result) => new(
        "a", "Source voltage left by the constant-current component", "Vs - R*I0", "a = V_s - R I_0",
        $"{Number(result.SourceVolts)} - {Number(result.Ohms)}*{Number(result.Load.Amperes)}", Left(result), "V", Sources.Kirchhoff);

    private static DerivationStep MaximumPowerStep(RunResult result)
    {
        Symbols left = LeftSymbols(result), gain = GainSymbols(result);
        Symbols most = RunKernel.IsLimitedByCurrent(result.SourceVolts, Left(result), result.Load)
            ? new Symbols("(Vs - R*I0)*I0", @"(V_s - R I_0)\,I_0",
                $"({Number(result.SourceVolts)} - {Number(result.Ohms)}*{Number(result.Load.Amperes)})*{Number(result.Load.Amperes)}")
            : new Symbols($"{left.Plain}^2/(4*R{gain.Plain})", $@"\frac{{{left.Latex}^2}}{{4 R{gain.Latex}}}",
                $"{left.Numbers}^2/(4*{Number(result.Ohms)}{gain.Numbers})");
        return new DerivationStep(
            "Pmost", "Most constant power that the run can carry", most.Plain, "P_{most} = " + most.Latex, most.Numbers,
            RunKernel.MostWatts(result.SourceVolts, result.Ohms, result.Load), "W", Sources.MaximumPower);
    }

    private static DerivationStep MarginStep(RunResult result)
    {
        double most = RunKernel.MostWatts(result.SourceVolts, result.Ohms, result.Load);
        return new DerivationStep("margin", "How many times the constant-power component could grow", "Pmost/P", @"m = \frac{P_{most}}{P}",
            $"{Number(most)}/{Number(result.Load.Watts)}", most / result.Load.Watts, "", Sources.MaximumPower);
    }

    /// <summary>The current of a load at its voltage.</summary>
    /// <param name="load">The load.</param>
    /// <param name="volts">Its voltage. [V]</param>
    /// <param name="amperes">Its current. [A]</param>
    /// <param name="of">Index of the load among several; empty for the only one.</param>
    internal static DerivationStep CurrentStep(Load load, double volts, double amperes, string of = "")
    {
        Symbols current = LoadDerivation.Current(load, volts, of);
        return new DerivationStep($"I{of}", load.IsLargerOf ? "Current: the larger of the two components" : "Current of the load",
            current.Plain, $"{Latex("I", of)} = {current.Latex}", current.Numbers, amperes, "A", Sources.Kirchhoff);
    }

    /// <summary>A symbol with its index, or without one.</summary>
    internal static string Latex(string symbol, string index) => index.Length == 0 ? symbol : $"{symbol}_{{{index}}}";

    private static bool HasCurrentComponent(Load load) => load.Amperes > 0 && !load.IsLargerOf;

    private static double Left(RunResult result) => Exact.MinusProduct(result.SourceVolts, result.Ohms, result.Load.Amperes);

    // What a share does not use does not show: without a current component a is Vs, without a resistance 1 + R·G is 1.
    private static Symbols LeftSymbols(RunResult result) => HasCurrentComponent(result.Load)
        ? new Symbols("a", "a", Number(Left(result)))
        : new Symbols("Vs", "V_s", Number(result.SourceVolts));

    private static Symbols GainSymbols(RunResult result) => result.Load.Siemens > 0
        ? new Symbols("*(1 + R*G)", "(1 + R G)", $"*(1 + {Number(result.Ohms)}*{Number(result.Load.Siemens)})")
        : new Symbols("", "", "");

    internal static string Conclusion(RunResult result) => result.Run.MixesResistanceBases
        ? Answer(result) + " The run mixes nominal and tabulated resistances: its sum is neither what to expect nor the most to fear."
        : Answer(result);

    private static string Answer(RunResult result)
    {
        if (result.HasOperatingPoint)
        {
            return FormattableString.Invariant($"The load gets {result.LoadVolts:0.###} V of {result.SourceVolts:0.###} V.");
        }

        string asked = Left(result) > 0
            ? FormattableString.Invariant($"{result.Load.Watts:G6} W")
            : FormattableString.Invariant($"{result.Load.Amperes:G6} A");
        return $"There is no operating point: the run carries {result.MostText("G6", " of constant power")}, "
            + $"and the load asks for {asked}.";
    }
}
