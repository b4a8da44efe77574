using System;
using System.Collections.Generic;
using System.Linq;
using CamPower.Checks;
using CamPower.Mains;
using CamPower.Supplies;
using UnitsNet;
using static System.FormattableString;

namespace CamPower;

/// <content>Rules on the load of outputs, supplies and receptacles.</content>
public static partial class Rules
{
    /// <summary>An output carries more current than its limit.</summary>
    public static Rule OutputOverloaded { get; } = new SimpleRule("output-overloaded", Severity.Failure,
        "An output of a box carries more current than its limit.",
        "Move a device to another output, or use a distribution box with a higher limit at each output.",
        Sources.CommonPractice, yieldsTo: ["supply-above-derated-rating", "split-adapter-beyond-rating"],
        check: (rule, evidence) =>
            // The one output of an adapter is the adapter.
            Rule.WorstOf(evidence.Assessment.Boxes.SelectMany(b => b.Outputs), output => output.InConditions,
                c => c.OfLimit.IsViolated, c => c.Amperes,
                (output, c) => rule.Find(output.Box.IsAdapter ? Subject.Of(output.Box) : Subject.Of(output.Box, output.Output),
                    $"{(c.IsDemandOnly ? "Its devices need" : "It carries")} {Digits.Of(c.Amperes, output.Output.LimitAmperes)} A " +
                    $"in \"{c.Condition}\"; its limit is {Digits.Of(output.Output.LimitAmperes, c.Amperes, "0.##")} A.",
                    c.OfLimit.Value, c.OfLimit.Limit, c.Condition)));

    /// <summary>A supply is loaded above its rating at the temperature of its box.</summary>
    public static Rule SupplyAboveDeratedRating { get; } = new SimpleRule("supply-above-derated-rating",
        "supply overloaded", Severity.Failure,
        "The total current of a box is above the derated rating of its supply.",
        "Use a supply with a higher rating there, or spread the load over two boxes. Cool a box that is too warm.",
        Sources.GenericDerating,
        yieldsInConditionsOf:
            ["receptacle-voltage-outside-supply-range", "supply-too-hot", "supply-too-cold", "split-adapter-beyond-rating"],
        check: (rule, evidence) => evidence.Assessment.Boxes.SelectMany(box => Rule.Worst(
            Overloads(box).Select(c => rule.Find(Subject.Of(box.Box),
                $"Its outputs {Draw(c)} {Digits.Of(c.Amperes, c.DeratedAmperes)} A in \"{c.Condition}\"; " +
                $"its supply can give {Digits.Of(c.DeratedAmperes, c.Amperes)} A, " +
                $"{RatingOf(c, box.Box, evidence.Assessment.Site)}.{Then(c.SupplyState)}",
                c.TotalCurrent, c.DeratedRating, c.Condition)))));

    /// <summary>One adapter is split between several devices that together need more than it can give.</summary>
    public static Rule SplitAdapterBeyondRating { get; } = new SimpleRule("split-adapter-beyond-rating",
        "adapter split between too many devices", Severity.Failure,
        "One adapter is split between devices that together draw more than it can give.",
        "Give each camera its own adapter, or use a distribution box.",
        Sources.CommonPractice, yieldsInConditionsOf: ["receptacle-voltage-outside-supply-range", "supply-too-hot", "supply-too-cold"],
        check: (rule, evidence) =>
            from box in evidence.Assessment.Boxes
            where box.Box.IsAdapter && box.Outputs.Count == 1 && box.Outputs[0].Devices.Count > 1
            from finding in Rule.Worst(Overloads(box).Select(c => rule.Find(Subject.Of(box.Box),
                Invariant($"Its {box.Outputs[0].Devices.Count} devices {Draw(c)} {Digits.Of(c.Amperes, c.DeratedAmperes)} A ") +
                $"in \"{c.Condition}\"; " +
                $"it can give {Digits.Of(c.DeratedAmperes, c.Amperes)} A.{Then(c.SupplyState)}",
                c.TotalCurrent, c.DeratedRating, c.Condition)))
            select finding);

    /// <summary>The protective devices of the outputs carry more than a supply without a limit of its own.</summary>
    /// <remarks>
    /// What overloads a winding heats it until it burns. The devices of the outputs may carry 1.25 times its rated current together, below
    /// 9 A 1.67 times (NEC 450.3(B), secondary, from memory). One device above that is a Failure; where only their sum is, a Caution. A
    /// supply that gives no more into a short, through its own resistance, protects itself. One whose outputs claim a power-limit class
    /// that its numbers do not refute may protect itself: a Note. Where the overload behavior is not stated, <see cref="FaultsUnknown"/>
    /// asks for it.
    /// </remarks>
    public static Rule SupplyNotProtected { get; } = new SimpleRule("supply-not-protected", "nothing protects the supply",
        Severity.Failure,
        "The protective devices of the outputs carry more than the supply may give, and the supply does not limit its current. " +
        "An overload heats its winding until it burns.",
        "Use smaller protective devices, one before the supply that protects it, or a supply that limits its current.",
        Sources.TransformerProtection, (rule, evidence) =>
            from box in evidence.Assessment.Boxes
            let supply = box.Box.Supply.Output
            where supply.Overload is { Limit: null } && box.Box.Battery is null
            let outputs = box.Outputs.Select(o => o.Output).ToList()
            where outputs.Count > 0 && outputs.TrueForAll(o => o.Protection is not null)
            let rated = supply.RatedAmperes
            let share = (rated < CheckConstants.LargeSecondary.Value ? CheckConstants.SmallSecondaryProtection
                : CheckConstants.SecondaryProtection).Value
            let most = supply.HighestVolts / supply.SourceOhms
            let carried = outputs.ConvertAll(o => Math.Min(most, o.Protection!.MostCarriedAmperes(currentFactor: 1)))
            let together = Math.Min(most, carried.Sum())
            where Limits.IsAbove(together, share * rated)
            let alone = carried.Max()
            let isOne = Limits.IsAbove(alone, share * rated)
            let amperes = isOne ? alone : together
            let mayProtectItself = outputs.TrueForAll(o => o.ClaimedClass is PowerLimitClass claimed
                && box.Box.AssessPowerLimit(o.Number, claimed).Verdict != PowerLimitVerdict.Exceeds)
            let isBare = outputs.Exists(o => o.Protection is { IsNone: true })
            let what = isBare ? "An output has no protective device"
                : isOne ? $"The protective device of one output carries {Digits.Of(amperes, share * rated, "0.##")} A"
                : $"The protective devices of its outputs together carry {Digits.Of(amperes, share * rated, "0.##")} A"
            select rule.Find(Subject.Of(box.Box),
                $"{what}, and its supply has no limit. " +
                $"Its supply may be protected by at most {Digits.Of(share * rated, amperes, "0.##")} A: " +
                Invariant($"{share:0.##} × {rated:0.##} A."),
                isBare ? null : ElectricCurrent.FromAmperes(amperes), ElectricCurrent.FromAmperes(share * rated),
                severity: mayProtectItself ? Severity.Note : isOne ? Severity.Failure : Severity.Caution));

    /// <summary>A supply is within its derated rating, but loaded above a policy of headroom.</summary>
    /// <param name="loading">Highest load in percent of the derated rating, above 0 and at most 100 %; null for 80 %.</param>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="loading"/> is outside that range.</exception>
    public static Rule SupplyAboveHeadroomPolicy(Ratio? loading = null)
    {
        Ratio policy = loading ?? Ratio.FromPercent(CheckConstants.Headroom.Value);
        double share = Require.Positive(Require.Within(policy.DecimalFractions, 0, 1, nameof(loading), ""), nameof(loading), "");
        return new SimpleRule("supply-above-headroom-policy", "supply close to its rating", Severity.Caution,
            "The total current of a box is within the derated rating of its supply, but above the headroom policy.",
            "Use the next larger supply, or spread the load.",
            CheckConstants.Headroom.Source, limit: policy,
            yieldsTo: ["supply-above-derated-rating", "split-adapter-beyond-rating"],
            yieldsInConditionsOf: ["receptacle-voltage-outside-supply-range", "supply-too-hot", "supply-too-cold", "thin-heat-margin"],
            check: (rule, evidence) =>
                from box in evidence.Assessment.Boxes
                from finding in Rule.Worst(
                    from c in box.InConditions
                    let load = c.Load(policy)
                    where load.IsThin || load.IsViolated
                    orderby c.Amperes / c.DeratedAmperes descending, c.Amperes descending
                    let maximum = ((ElectricCurrent)load.PolicyLimit!).Amperes
                    select rule.Find(Subject.Of(box.Box),
                        $"Its outputs draw {Digits.Of(c.Amperes, maximum)} A in \"{c.Condition}\"; " +
                        $"policy maximum {Digits.Of(maximum, c.Amperes)} A: {HeadroomOf(c, maximum, share)}.",
                        load.Value, load.PolicyLimit, c.Condition))
                select finding);
    }

    /// <summary>The boxes on a receptacle draw more current than it may carry continuously.</summary>
    /// <remarks>Above its rating it is a Danger: the contacts heat, and a breaker may be larger than the receptacle. Up to the rating it is
    /// a Failure, but a Caution where the share is 80 % and the voltage above 130 V: that share is a rule of the NEC.</remarks>
    public static Rule ReceptacleOverloaded { get; } = new SimpleRule("receptacle-overloaded", Severity.Failure,
        "The boxes on a receptacle draw more current than it may carry continuously.",
        "Spread the boxes over receptacles of other circuits. " +
        "Leave work on the circuit to a licensed electrician, and follow the local code.",
        Sources.NecReceptacle, (rule, evidence) =>
            from receptacle in evidence.Receptacles
            let worst = receptacle.Worst
            where Limits.IsAbove(worst.KnownAmperes, receptacle.Receptacle.MostAmperes)
            let isAboveRating = Limits.IsAbove(worst.KnownAmperes, receptacle.Receptacle.Rating.Amperes)
            select rule.Find(Subject.Of(receptacle.Receptacle),
                $"Its boxes draw {(worst.IsKnown ? "" : "at least ")}" +
                $"{Digits.Of(worst.KnownAmperes, receptacle.Receptacle.MostAmperes)} A " +
                Invariant($"at {worst.LineVoltage.Volts:0.#} V in \"{worst.Condition}\"; ") +
                $"it may carry {Digits.Of(receptacle.Receptacle.MostAmperes, worst.KnownAmperes)} A, " +
                Invariant($"{receptacle.Receptacle.Share.Percent:0.#} % of its rating."),
                worst.KnownCurrent, receptacle.Receptacle.MaximumCurrent, worst.Condition,
                isAboveRating ? Severity.Danger : IsShareOfTheCode(receptacle.Receptacle) ? Severity.Failure : Severity.Caution));

    /// <summary>The current that a box draws from its receptacle is unknown.</summary>
    public static Rule ReceptacleLoadUnknown { get; } = new SimpleRule("receptacle-load-unknown", Severity.Note,
        "The current that a box draws from its receptacle is unknown. Efficiency or power factor of its supply is not stated at its load.",
        "Take both from the data sheet of the supply, or measure the current at the receptacle.",
        Sources.PowerFactor, isAboutWhatIsNotStated: true, check: (rule, evidence) =>
            from receptacle in evidence.Receptacles
            let unknown = receptacle.InConditions.FirstOrDefault(c => !c.IsKnown)
            where unknown is not null
            let draws = unknown.Draws.Where(d => d.Amperes is null)
                .Select(d => $"The input current of {d.Box} is unknown. Not in the site file: {d.Missing}.")
            select rule.Find(Subject.Of(receptacle.Receptacle), string.Join(" ", draws), condition: unknown.Condition));

    /// <summary>A supply does not accept the voltage of the receptacle that it is plugged into.</summary>
    /// <remarks>Above its range it is destroyed, and may burn. Below its range it does not run, which is a Failure.</remarks>
    public static Rule ReceptacleVoltageOutsideSupplyRange { get; } =
        new SimpleRule("receptacle-voltage-outside-supply-range", "wrong line voltage for the supply", Severity.Danger,
            "The voltage of a receptacle is outside the input range of a supply on it. " +
            "Above its range a supply is destroyed and may burn. Below its range it does not run.",
            "Unplug it. Use a supply for the voltage of the receptacle. Set a line voltage selector before you plug the supply in.",
            Sources.SupplyInputVoltage, (rule, evidence) =>
                from receptacle in evidence.Receptacles
                from box in receptacle.Worst.Draws.Select(d => d.Box)
                from finding in OfLine(rule, receptacle, box, d => d.HighestLine, "accepts at most", Severity.Danger)
                    .Concat(OfLine(rule, receptacle, box, d => d.LowestLine, "needs at least", Severity.Failure))
                select finding);

    /// <summary>An output cannot be of the power-limit class that it claims: see <see cref="PowerLimitAssessment"/>.</summary>
    /// <remarks>Outputs of a box that are alike are one finding, of the box. It is a Failure, because a listing decides on the class. A
    /// claim of Class 2 that its numbers refute spares its conductors nothing: where they rely on it,
    /// <see cref="ProtectionAboveConductorAmpacity"/> or <see cref="ConductorOverAmpacity"/> is a Danger.</remarks>
    public static Rule PowerLimitExceeded { get; } = new SimpleRule("power-limit-exceeded",
        "above the power-limit class on its label", Severity.Failure,
        "An output claims to be a limited power source or Class 2, but its numbers are above the limits.",
        "Check the listing on the product. Until then, wire the output by the local code as one that is not limited.",
        Sources.PowerLimitClasses, (rule, evidence) =>
            from box in evidence.Assessment.Boxes
            from alike in box.Outputs.Select(o => o.Output).Where(o => o.ClaimedClass is not null)
                .GroupBy(o => (o.ClaimedClass, o.LimitAmperes, o.Protection))
            let assessed = box.Box.AssessPowerLimit(alike.First().Number, alike.First().ClaimedClass!.Value)
            where assessed.Verdict == PowerLimitVerdict.Exceeds
            let figure = assessed.Routes[assessed.Routes.Count - 1].Deciding.First()
            let isOne = alike.Count() == 1
            let who = isOne ? "It claims" : Invariant($"{alike.Count()} of its outputs claim")
            select rule.Find(isOne ? Subject.Of(assessed.Box, assessed.Output) : Subject.Of(assessed.Box),
                $"{who} to be {assessed.ClassName}. " +
                $"{string.Join(". ", assessed.Routes.Select(route => Capitalized(route.Words(assessed.NamesItsStandard, most: 1))))}.",
                figure.Least, figure.Limit));

    // Some other share is that of a local code. That of the NEC binds the receptacles of its own voltages.
    private static bool IsShareOfTheCode(Receptacle receptacle) =>
        receptacle.Volts <= SupplyConstants.HighestVoltageOfShare.Value
        || !receptacle.Share.Percent.Equals(SupplyConstants.ReceptacleShare.Value);

    internal static string Capitalized(string text) => char.ToUpperInvariant(text[0]) + text.Substring(1);

    // The conditions in which a supply is loaded above what it can give, the worst first.
    private static IEnumerable<BoxInCondition> Overloads(BoxAssessment box) => box.InConditions
        .Where(c => c.Load(Ratio.FromPercent(100)).IsViolated)
        .OrderByDescending(c => c.Amperes / c.DeratedAmperes).ThenByDescending(c => c.Amperes);

    private static string Draw(BoxInCondition box) => box.IsDemandOnly ? "need" : "draw";

    // What becomes of the voltage of an overloaded supply, as a sentence after a space; nothing where it stays up.
    private static string Then(SupplyState rail) => rail switch
    {
        SupplyState.StaysUp => string.Empty,
        SupplyState.Dips => " Its voltage falls.",
        SupplyState.Pulses => " Its voltage pulses, and its devices restart with it.",
        SupplyState.Off => " It shuts down, and its devices go dark.",
        _ => " Its overload behavior is not stated.",
    };

    // How much of its rating a supply has, and what takes the rest: only what takes something is named.
    private static string RatingOf(BoxInCondition box, DistributionBox of, Site site)
    {
        SupplyOutput output = of.Supply.Output;
        if (!Limits.IsBelow(box.DeratedAmperes, output.RatedAmperes)) return "its full rating";
        bool isHeld = output.Overload is OverloadBehavior overload && !Limits.IsBelow(box.DeratedAmperes, overload.Lowest.LimitAmperes);
        if (isHeld) return "what its current limit is certain to give";
        List<string> causes = [];
        if (Limits.IsBelow(box.DeratedAmperes, output.SetAmperes))
        {
            string atLeast = box.IsInsideAtLeast ? "at least " : string.Empty, inside = box.Heat is null ? string.Empty : " inside";
            causes.Add(Invariant($"{atLeast}{box.SupplyCelsius:0.#} °C{inside}"));
            if (of.FedFrom is null && box.Condition.LineVolts is double volts) causes.Add(Invariant($"{volts:0.#} V at its input"));
            bool isHigh = of.Supply.Derating.Altitude?.KelvinsAt(site.AltitudeMeters) > 0;
            if (isHigh) causes.Add(Invariant($"an altitude of {site.AltitudeMeters:0} m"));
        }

        if (output.SetAmperes < output.RatedAmperes) causes.Add(Invariant($"a set point of {output.SetVolts:0.##} V"));
        return Invariant($"derated from {output.RatedAmperes:0.00} A for {string.Join(", ", causes)}");
    }

    // Of a calculated temperature, the rating that is left where its rise is a quarter more may be the smaller one.
    private static string HeadroomOf(BoxInCondition box, double maximum, double share) =>
        Limits.IsBelow(maximum, box.DeratedAmperes * share)
            ? Invariant($"{box.DeratedAmperes:0.00} A derated for {box.UncertainKelvins:0.0#} K more")
            : Invariant($"{share * 100:0.#} % of {box.DeratedAmperes:0.00} A");

    private static IEnumerable<Finding> OfLine(Rule rule, ReceptacleAssessment receptacle, DistributionBox box,
        Func<LineDraw, Judgment> judged, string bound, Severity severity) => Rule.Worst(
        from inCondition in receptacle.InConditions
        let judgment = judged(inCondition.Draws.Single(d => d.Box == box))
        where judgment.IsViolated
        let line = (ElectricPotential)judgment.Value!
        let accepted = (ElectricPotential)judgment.Limit!
        orderby Math.Abs(line.Volts - accepted.Volts) descending
        select rule.Find(Subject.Of(box),
            $"Its receptacle has {Digits.Of(line.Volts, accepted.Volts, "0.#")} V{When(inCondition.Condition)}; " +
            $"its supply {bound} {Digits.Of(accepted.Volts, line.Volts, "0.#")} V.",
            line, accepted, inCondition.Condition, severity));

    // The season has no part in it, unless it has a line voltage of its own.
    private static string When(Condition condition) => condition.LineVolts is null ? string.Empty : $" in \"{condition}\"";
}
