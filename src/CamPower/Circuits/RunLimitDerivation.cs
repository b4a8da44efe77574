using System;
using System.Collections.Generic;
using System.Globalization;
using System.Linq;
using UnitsNet;
using static CamPower.DerivationStep;

namespace CamPower.Circuits;

/// <summary>Writes down how far a run can be taken, and why.</summary>
internal static class RunLimitDerivation
{
    internal static Derivation OfLength(RunQuestion question, RunAnswer<Length> answer)
    {
        List<DerivationStep> steps = ResistanceSteps(question);
        if (HasMostOhms(question)) steps.AddRange(LengthSteps(question));
        return Written("Longest one-way length", question, steps, answer);
    }

    internal static Derivation OfArea(RunQuestion question, RunAnswer<Area> answer) =>
        Written("Smallest cross-section", question, AreaSteps(question), answer);

    internal static Derivation OfSize(RunQuestion question, RunAnswer<Area> area, RunAnswer<WireSize> answer)
    {
        string needed = area.HasValue ? $"The cross-section must be at least {RunLimitText.Of(area.Value)}. " : string.Empty;
        return Written("Thinnest standard size", question, AreaSteps(question), answer, needed);
    }

    internal static Derivation OfPower(RunQuestion question, RunAnswer<Power> answer)
    {
        var steps = new List<DerivationStep>(RunDerivation.LoopSteps(question.Run, question.DegreesCelsius)) { AcceptedStep(question) };
        double ohms = question.Run.OhmsAt(question.DegreesCelsius);
        if (ohms > 0 && !question.SourceIsTooLow) steps.AddRange(PowerSteps(question, ohms));
        return Written("Largest constant power", question, steps, answer);
    }

    internal static Derivation OfSource(RunQuestion question, RunAnswer<ElectricPotential> answer)
    {
        var steps = new List<DerivationStep>(RunDerivation.LoopSteps(question.Run, question.DegreesCelsius));
        steps.AddRange(SourceSteps(question, NeededSource.Of(question)));
        return Written("Needed source voltage", question, steps, answer);
    }

    internal static Derivation OfTemperature(RunQuestion question, RunAnswer<Temperature> answer)
    {
        List<DerivationStep> steps = ResistanceSteps(question);
        steps.AddRange(RunDerivation.LoopSteps(question.Run, Celsius.Reference));
        if (HasMostOhms(question) && question.Run.OhmsPerKelvin > 0) steps.AddRange(TemperatureSteps(question));
        return Written("Highest conductor temperature", question, steps, answer);
    }

    private static Derivation Written<T>(
        string asked, RunQuestion question, List<DerivationStep> steps, RunAnswer<T> answer, string before = "")
        where T : struct
    {
        string found = answer.HasValue
            ? $"{asked}: {answer}."
            : $"{asked}: none, because {RunLimitText.Of(answer.LimitedBy)} is the limit.";
        return new Derivation($"{asked} for {question.Load} at the end of {question.Run}, {question.Accepted}", steps, before + found);
    }

    private static bool HasMostOhms(RunQuestion question) => !question.SourceIsTooLow && !double.IsInfinity(question.MostOhms);

    // The largest loop resistance: from the lowest accepted voltage, or from where the run collapses.
    private static List<DerivationStep> ResistanceSteps(RunQuestion question)
    {
        Load load = question.Load;
        double volts = question.LimitVolts;
        var steps = new List<DerivationStep> { AcceptedStep(question) };
        if (!HasMostOhms(question)) return steps;
        steps.Add(CollapseByResistanceStep(question));
        steps.Add(LimitStep("max(Vmin, Vc)", @"\max(V_{min}, V_c)",
            $"max({Number(question.AcceptedVolts)}, {Number(question.CollapseVolts)})", volts));
        steps.Add(RunDerivation.CurrentStep(load, volts, load.AmperesAt(volts)));
        steps.Add(Step("Rmost", "Largest loop resistance", "(Vs - V)/I", @"R_{most} = \frac{V_s - V}{I}",
            $"({Number(question.SourceVolts)} - {Number(volts)})/{Number(load.AmperesAt(volts))}", question.MostOhms, "Ω"));
        return steps;
    }

    private static DerivationStep AcceptedStep(RunQuestion question)
    {
        VoltageLimit accepted = question.Accepted;
        string low = Number(accepted.LowestVolts), drop = $"{Number(question.SourceVolts)}*(1 - {Number(accepted.LargestDropShare)})";
        const string meaning = "Lowest voltage accepted at the load";
        if (!accepted.LimitsDrop) return Step("Vmin", meaning, "Vlow", "V_{min} = V_{low}", low, question.AcceptedVolts, "V");
        return accepted.LowestVolts == 0
            ? Step("Vmin", meaning, "Vs*(1 - d)", @"V_{min} = V_s\,(1 - d)", drop, question.AcceptedVolts, "V")
            : Step("Vmin", meaning, "max(Vlow, Vs*(1 - d))", @"V_{min} = \max(V_{low},\ V_s\,(1 - d))", $"max({low}, {drop})",
                question.AcceptedVolts, "V");
    }

    private static DerivationStep LimitStep(string formula, string latex, string substitution, double volts) =>
        Step("V", "Voltage at the load, at the limit", formula, "V = " + latex, substitution, volts, "V");

    private static DerivationStep CollapseByResistanceStep(RunQuestion question)
    {
        Load load = question.Load;
        string vs = Number(question.SourceVolts), p = Number(load.Watts), i0 = Number(load.Amperes), g = Number(load.Siemens);
        const string meaning = "Voltage at the load where a growing resistance makes the run collapse";
        (string formula, string latex, string substitution) = (load.Watts, load.IsLargerOf, load.Amperes, load.Siemens) switch
        {
            (0, _, _, _) => ("0", "0", "0"),
            (_, true, > 0, _) => ("min(Vs/2, P/I0)", @"\min\left(\frac{V_s}{2}, \frac{P}{I_0}\right)", $"min({vs}/2, {p}/{i0})"),
            (_, true, _, _) or (_, _, 0, 0) => ("Vs/2", @"\frac{V_s}{2}", $"{vs}/2"),
            _ => ("P*Vs/(P + sqrt(P*(P + (I0 + G*Vs)*Vs)))", @"\frac{P V_s}{P + \sqrt{P\,(P + (I_0 + G V_s) V_s)}}",
                $"{p}*{vs}/({p} + sqrt({p}*({p} + ({i0} + {g}*{vs})*{vs})))"),
        };
        return Step("Vc", meaning, formula, "V_c = " + latex, substitution, question.CollapseVolts, "V", Sources.MaximumPower);
    }

    private static IEnumerable<DerivationStep> LengthSteps(RunQuestion question)
    {
        double celsius = question.DegreesCelsius, others = question.Run.WithLastSegment(0).OhmsAt(celsius);
        Cable cable = question.Run.LastSegment().Cable;
        var perMeter = new CableSegment(cable, Length.FromMeters(1)).OhmsAt(celsius);
        bool equal = ReferenceEquals(cable.Outgoing, cable.Return);
        string r = Number(cable.Outgoing.OhmsPerMeterAt(celsius)), s = Number(cable.Return.OhmsPerMeterAt(celsius));
        yield return RunDerivation.PerLength(cable.Outgoing, "r", string.Empty, celsius, "outgoing conductor");
        if (!equal) yield return RunDerivation.PerLength(cable.Return, "s", string.Empty, celsius, "return conductor");
        if (others > 0)
        {
            yield return Step("Rrest", "Resistance of the rest of the run", "sum of its parts", @"R_{rest} = \sum_k R_k",
                Sum(question.Run.OtherParts().Select(p => p.OhmsAt(celsius))), others, "Ω");
        }

        Symbols left = others > 0
            ? new("(Rmost - Rrest)", "R_{most} - R_{rest}", $"({Number(question.MostOhms)} - {Number(others)})")
            : new("Rmost", "R_{most}", Number(question.MostOhms));
        Symbols by = equal ? new("(2*r)", @"2\,r", $"(2*{r})") : new("(r + s)", "r + s", $"({r} + {s})");
        double meters = RunLimitKernel.Meters(question.MostOhms, others, perMeter);
        yield return Step("L", $"One-way length of {cable}", $"{left.Plain}/{by.Plain}", $@"L = \frac{{{left.Latex}}}{{{by.Latex}}}",
            $"{left.Numbers}/{by.Numbers}", meters, "m", Sources.Resistance);
        double rest = question.Run.WithLastSegment(0).OneWayMeters;
        if (rest > 0)
        {
            yield return Step("Lrun", "One-way length of the whole run", "L + Lrest", "L_{run} = L + L_{rest}",
                $"{Number(meters)} + {Number(rest)}", meters + rest, "m");
        }
    }

    private static List<DerivationStep> AreaSteps(RunQuestion question)
    {
        List<DerivationStep> steps = ResistanceSteps(question);
        if (!HasMostOhms(question)) return steps;
        double celsius = question.DegreesCelsius, joints = question.Run.JointOhms(), k = question.Run.OhmSquareMeters(celsius);
        steps.Add(Step("K", "Resistance of the cables times the cross-section of their conductors",
            "sum of L*rho20*k*(1 + alpha20*(T - 20))",
            @"K = \sum L\,\rho_{20}\,k\,(1+\alpha_{20}(T-20))",
                Total(Conductors(question.Run).Select(c => OhmAreaText(c.Meters, c.Conductor, celsius))), k * 1e6, "Ω·mm²",
                Sources.LinearTemperature));
        if (joints > 0)
        {
            steps.Add(Step("J", "Resistance of the joints", "sum of the joints", @"J = \sum_k J_k",
                Sum(question.Run.Parts.OfType<Joint>().Select(j => j.OhmsAt20C)), joints, "Ω"));
        }

        if (question.MostOhms <= joints || k == 0) return steps;
        string most = Number(question.MostOhms);
        Symbols by = joints > 0
            ? new("(Rmost - J)", "R_{most} - J", $"({most} - {Number(joints)})")
            : new("Rmost", "R_{most}", most);
        steps.Add(Step("A", "Smallest cross-section", $"K/{by.Plain}", $@"A = \frac{{K}}{{{by.Latex}}}", $"{Number(k * 1e6)}/{by.Numbers}",
            RunLimitKernel.SquareMeters(question.MostOhms, joints, k) * 1e6, "mm²", Sources.Resistance));
        return steps;
    }

    private static IEnumerable<DerivationStep> PowerSteps(RunQuestion question, double ohms)
    {
        Load beside = question.Load;
        double vs = question.SourceVolts,
            collapse = RunLimitKernel.CollapseVoltsByPower(vs, ohms, beside),
            volts = Math.Max(question.AcceptedVolts, collapse);
        double left = Exact.MinusProduct(vs, ohms, beside.Amperes);
        string r = Number(ohms), source = Number(vs), gain = $"(1 + {r}*{Number(beside.Siemens)})";
        yield return Step("a", "Source voltage left by the constant-current component", "Vs - R*I0", "a = V_s - R I_0",
            $"{source} - {r}*{Number(beside.Amperes)}", left, "V");
        const string meaning = "Voltage at the load where growing power makes the run collapse";
        yield return beside.IsLargerOf
            ? Step("Vc", meaning, "min(a, Vs/2)", @"V_c = \min\left(a, \frac{V_s}{2}\right)", $"min({Number(left)}, {source}/2)", collapse,
                "V", Sources.MaximumPower)
            : Step("Vc", meaning, "a/(2*(1 + R*G))", @"V_c = \frac{a}{2\,(1 + R G)}", $"{Number(left)}/(2*{gain})", collapse, "V",
                Sources.MaximumPower);
        yield return LimitStep("max(Vmin, Vc)", @"\max(V_{min}, V_c)", $"max({Number(question.AcceptedVolts)}, {Number(collapse)})", volts);
        if (!(CableRunQuestions.MostWattsOf(question, ohms) >= 0)) yield break;
        string v = Number(volts);
        yield return beside.IsLargerOf
            ? Step("P", "Largest constant power", "V*(Vs - V)/R", @"P = \frac{V\,(V_s - V)}{R}", $"{v}*({source} - {v})/{r}",
                RunLimitKernel.WattsAt(vs, ohms, volts, beside), "W")
            : Step("P", "Largest constant power", "V*(a - (1 + R*G)*V)/R", @"P = \frac{V\,(a - (1 + R G)\,V)}{R}",
                $"{v}*({Number(left)} - {gain}*{v})/{r}",
                RunLimitKernel.WattsAt(vs, ohms, volts, beside), "W");
    }

    private static IEnumerable<DerivationStep> SourceSteps(RunQuestion question, NeededSource needed)
    {
        Load load = question.Load;
        string r = Number(needed.Ohms);
        if (question.Accepted.LimitsDrop)
        {
            foreach (DerivationStep step in DropSteps(question, needed)) yield return step;
            if (double.IsInfinity(needed.VoltsAtDrop)) yield break;
        }

        yield return CollapseBySourceStep(load, needed);
        double volts = needed.LoadVolts;
        yield return LimitStep("max(Vlow, max(Vd, Vc))", @"\max(V_{low}, V_d, V_c)",
            $"max({Number(needed.AcceptedVolts)}, max({Number(needed.VoltsAtDrop)}, {Number(needed.CollapseVolts)}))", volts);
        if (volts == 0) yield break;
        yield return RunDerivation.CurrentStep(load, volts, load.AmperesAt(volts));
        yield return Step("Vs", "Source voltage that leaves it", "V + R*I", "V_s = V + R I",
            $"{Number(volts)} + {r}*{Number(load.AmperesAt(volts))}", needed.SourceVolts, "V");
    }

    private static IEnumerable<DerivationStep> DropSteps(RunQuestion question, NeededSource needed)
    {
        Load load = question.Load;
        double share = question.Accepted.LargestDropShare, ratio = share / (1 - share);
        string r = Number(needed.Ohms), k = Number(ratio), p = Number(load.Watts), i0 = Number(load.Amperes);
        yield return Step("k", "Largest drop over the voltage at the load", "d/(1 - d)", @"k = \frac{d}{1 - d}",
            $"{Number(share)}/(1 - {Number(share)})", ratio, "");
        const string meaning = "Voltage at the load from which the drop is small enough";
        if (load.IsLargerOf)
        {
            if (double.IsInfinity(needed.VoltsAtDrop)) yield break;
            yield return ratio == 0
                ? Step("Vd", meaning, "0", "V_d = 0", "0", needed.VoltsAtDrop, "V")
                : Step("Vd", meaning, "max(sqrt(R*P/k), R*I0/k)", @"V_d = \max\left(\sqrt{\frac{R P}{k}}, \frac{R I_0}{k}\right)",
                    $"max(sqrt({r}*{p}/{k}), {r}*{i0}/{k})", needed.VoltsAtDrop, "V");
            yield break;
        }

        double left = ratio - (needed.Ohms * load.Siemens);
        yield return Step("b", "What the resistance component leaves of it", "k - R*G", "b = k - R G", $"{k} - {r}*{Number(load.Siemens)}",
            left, "");
        if (double.IsInfinity(needed.VoltsAtDrop) || left == 0) yield break;
        string b = Number(left);
        yield return Step("Vd", meaning, "(R*I0 + sqrt((R*I0)^2 + 4*b*R*P))/(2*b)", @"V_d = \frac{R I_0 + \sqrt{(R I_0)^2 + 4 b R P}}{2 b}",
            $"({r}*{i0} + sqrt(({r}*{i0})^2 + 4*{b}*{r}*{p}))/(2*{b})", needed.VoltsAtDrop, "V");
    }

    private static DerivationStep CollapseBySourceStep(Load load, NeededSource needed)
    {
        string r = Number(needed.Ohms), p = Number(load.Watts), g = Number(load.Siemens);
        (string formula, string latex, string substitution) = load.Watts == 0 ? ("0", "0", "0")
            : load.IsLargerOf && load.Amperes > 0
                ? ("min(sqrt(R*P), P/I0)", @"\min\left(\sqrt{R P}, \frac{P}{I_0}\right)", $"min(sqrt({r}*{p}), {p}/{Number(load.Amperes)})")
            : ("sqrt(R*P/(1 + R*G))", @"\sqrt{\frac{R P}{1 + R G}}", $"sqrt({r}*{p}/(1 + {r}*{g}))");
        return Step("Vc", "Voltage at the load where a falling source voltage makes the run collapse", formula, "V_c = "
            + latex, substitution, needed.CollapseVolts, "V", Sources.MaximumPower);
    }

    private static IEnumerable<DerivationStep> TemperatureSteps(RunQuestion question)
    {
        CableRun run = question.Run;
        yield return Step("K", "Growth of the loop resistance with temperature", "sum of L*r20*alpha20", @"K = \sum L\,r_{20}\,\alpha_{20}",
            Total(Conductors(run).Select(
                c =>
                $"{Number(c.Meters)}*{Number(c.Conductor.OhmsPerMeterAt20C)}*{Number(c.Conductor.Material.TemperatureCoefficientAt20C)}")),
                run.OhmsPerKelvin, "Ω/K", Sources.LinearTemperature);
        yield return Step("T", "Temperature at which the loop reaches its largest resistance", "20 + (Rmost - R)/K",
            @"T = 20 + \frac{R_{most} - R}{K}",
            $"20 + ({Number(question.MostOhms)} - {Number(run.OhmsAt20C)})/{Number(run.OhmsPerKelvin)}",
            RunLimitKernel.DegreesCelsius(question.MostOhms, run.OhmsAt20C, run.OhmsPerKelvin), "°C", Sources.LinearTemperature);
    }

    private static IEnumerable<(double Meters, Conductor Conductor)> Conductors(CableRun run) =>
        run.Segments.SelectMany(s => new[] { (s.OneWayLength.Meters, s.Cable.Outgoing), (s.OneWayLength.Meters, s.Cable.Return) });

    // rho in Ω·mm²/m, so that the product is in Ω·mm².
    private static string OhmAreaText(double meters, Conductor conductor, double celsius)
    {
        ConductorMaterial material = conductor.Material;
        string wires = conductor.Count == 1 ? string.Empty : "/" + Number(conductor.Count);
        return $"{Number(meters)}*{Number(material.OhmMetersAt20C * 1e6)}*{Number(conductor.Stranding.LayFactor)}*(1 "
            + $"+ {Number(material.TemperatureCoefficientAt20C)}*({Number(celsius)} - 20)){wires}";
    }

    private static string Sum(IEnumerable<double> numbers) => Total(numbers.Select(Number));

    private static string Total(IEnumerable<string> terms) => string.Join(" + ", terms);

    private static DerivationStep Step(
        string symbol, string meaning, string formula, string latex, string substitution, double value, string unit,
        Citation? source = null) =>
        new(symbol, meaning, formula, latex, substitution, value, unit, source ?? Sources.Kirchhoff);
}
