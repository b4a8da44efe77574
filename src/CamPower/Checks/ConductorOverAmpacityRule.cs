using System.Collections.Generic;
using CamPower.Conductors;
using UnitsNet;
using static System.FormattableString;

namespace CamPower.Checks;

/// <summary>A conductor that carries more than its insulation stands, the way it lies and as warm as the air is.</summary>
/// <remarks>
/// An insulation that nobody declares is taken for one of 60 °C, and a run whose laying nobody declares for a cable alone in
/// air. Copper from 18 AWG to 10 AWG is held to its continuous load too (<see cref="SmallConductors"/>). Of sizes thicker
/// than the laying covers (<see cref="Laying.Covers"/>) nothing is said here; thinner ones are held to the thinnest that it covers.
/// <see cref="ValueOutsideValidatedRangeRule"/> names both. The local code is the last word.
/// </remarks>
public sealed class ConductorOverAmpacityRule() : Rule("conductor-over-ampacity", Severity.Danger,
    "A conductor carries more current than its insulation stands the way it lies: it ages, softens and may burn.",
    "Use a thicker conductor, insulation that is rated for more, or fewer devices on the run; take it out of the bundle.", Sources.NecAmpacity)
{
    /// <inheritdoc/>
    public override IEnumerable<Finding> Check(Evidence evidence)
    {
        SiteAssessment assessment = Require.NotNull(evidence, nameof(evidence)).Assessment;
        var currents = new RunCurrents(assessment);
        for (int i = 0; i < assessment.Site.Runs.Count; i++)
        {
            if (WorstOn(i, assessment.Site, currents) is not Overload worst) continue;
            yield return Find(Subject.Of(assessment.Site.Runs[i]),
                Invariant($"In \"{worst.Condition}\" its {worst.Conductor} carry {worst.Amperes:0.00} A and stand {worst.Limit:0.00} A {worst.Basis}."),
                ElectricCurrent.FromAmperes(worst.Amperes), ElectricCurrent.FromAmperes(worst.Limit), worst.Condition);
        }
    }

    private static Overload? WorstOn(int run, Site site, RunCurrents currents)
    {
        Overload? worst = null;
        foreach (RunPart part in site.Runs[run].Run.Parts)
        {
            if (part is not CableSegment segment || !(segment.OneWayLength.Meters > 0)) continue;
            worst = Worse(worst, WorstIn(segment.Cable.Outgoing, isReturn: false, segment.Cable, run, site, currents));
            if (currents.AreBothWays && ReferenceEquals(segment.Cable.Return, segment.Cable.Outgoing)) continue;
            worst = Worse(worst, WorstIn(segment.Cable.Return, isReturn: true, segment.Cable, run, site, currents));
        }

        return worst;
    }

    private static Overload? WorstIn(Conductor conductor, bool isReturn, Cable cable, int run, Site site, RunCurrents currents)
    {
        if (ConductorCapacity.Of(site.Runs[run], cable, conductor) is not ConductorCapacity capacity) return null;
        double continuous = SmallConductors.ContinuousAmperes(conductor) ?? double.PositiveInfinity;
        Overload? worst = null;
        for (int c = 0; c < site.Conditions.Count; c++)
        {
            double amperes = currents.Amperes(run, isReturn, c), air = site.Conditions[c].At.CableCelsius, stands = capacity.AmperesIn(air);
            bool isLoad = continuous < stands;
            double limit = isLoad ? continuous : stands;
            if (!Limits.IsAbove(amperes, limit) || worst?.Excess >= amperes - limit) continue;
            worst = new Overload(conductor, site.Conditions[c], amperes, limit, isLoad ? "as a continuous load of its size" : capacity.Basis(air));
        }

        return worst;
    }

    private static Overload? Worse(Overload? one, Overload? other) => other is null || one?.Excess >= other.Excess ? one : other;

    private sealed class Overload(Conductor conductor, Condition condition, double amperes, double limit, string basis)
    {
        internal Conductor Conductor { get; } = conductor;

        internal Condition Condition { get; } = condition;

        internal double Amperes { get; } = amperes;

        internal double Limit { get; } = limit;

        internal string Basis { get; } = basis;

        internal double Excess => Amperes - Limit;
    }
}
