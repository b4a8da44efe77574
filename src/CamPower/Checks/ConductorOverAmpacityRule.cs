using System;
using System.Collections.Generic;
using System.Linq;
using CamPower.Conductors;
using CamPower.Sites;
using UnitsNet;
using static System.FormattableString;

namespace CamPower.Checks;

/// <summary>The check of <see cref="Rules.ConductorOverAmpacity"/>.</summary>
internal sealed class ConductorOverAmpacityRule() : Rule("conductor-over-ampacity", Severity.Danger,
    "A conductor carries more current than its ampacity. Its insulation ages, softens and may burn.",
    "Use a larger conductor, insulation with a higher rating, or fewer devices on the run. Take the cable out of a bundle.",
    Sources.NecAmpacity, "too much current for the cable")
{
    private const string StateTheMethod =
        "State the insulation and the installation method of the run. If they are those assumed here, use a larger conductor.",
        AskTheCode = "Take the ampacity of this size from the local code, and compare the current with it.";

    public override IEnumerable<Finding> Check(Evidence evidence)
    {
        SiteAssessment assessment = Require.NotNull(evidence, nameof(evidence)).Assessment;
        RunCurrents currents = evidence.RunCurrents;
        HashSet<SiteRun> class2 = [.. assessment.Site.Feeds.SelectMany(group => group.Feeds)
            .Where(ConductorCapacity.IsOfClass2).SelectMany(f => f.Runs)];
        KnownCapacities most = new(ConductorCapacity.AtMostOf), less = new(ConductorCapacity.WhereLess);
        for (int i = 0; i < assessment.Site.Runs.Count; i++)
        {
            SiteRun run = assessment.Site.Runs[i];
            var trial = new RunTrial(i, run, assessment.Site.Conditions, currents, isCapped: !class2.Contains(run));
            if (WorstOn(trial, most.Of) is Overload certain)
            {
                yield return Found(run, certain, severity: null, remedy: null);
            }
            else if (WorstOn(trial, less.Of) is Overload possible)
            {
                yield return Found(run, possible, Severity.Note, possible.IsOfLargerSize ? AskTheCode : StateTheMethod);
            }
        }
    }

    private Finding Found(SiteRun run, Overload worst, Severity? severity, string? remedy) => Find(Subject.Of(run),
        $"Its conductor ({Short(worst.Conductor)}) carries {Digits.Of(worst.Amperes, worst.Limit)} A in \"{worst.Condition}\"; " +
        $"it may carry {Digits.Of(worst.Limit, worst.Amperes)} A. Basis: {worst.Basis}.",
        ElectricCurrent.FromAmperes(worst.Amperes), ElectricCurrent.FromAmperes(worst.Limit), worst.Condition, severity, remedy);

    // As it is called on site: the class of its strands changes no ampacity.
    private static string Short(Conductor conductor)
    {
        string count = conductor.Count == 1 ? string.Empty : Invariant($"{conductor.Count} × ");
        string strands = conductor.Stranding.LayFactor > 1 ? "stranded" : "solid";
        string metal = conductor.Material.IsCopperCladAluminum ? "copper-clad aluminum"
            : ReferenceEquals(conductor.Material, ConductorMaterial.AnnealedCopper) ? "copper" : conductor.Material.Name;
        return $"{count}{conductor.Size} {strands} {metal}";
    }

    private static Overload? WorstOn(RunTrial trial, Func<SiteRun, Cable, Conductor, ConductorCapacity?> capacityOf)
    {
        Overload? worst = null;
        foreach (RunPart part in trial.Run.Run.Parts)
        {
            if (part is not CableSegment segment || !(segment.OneWayLength.Meters > 0)) continue;
            Cable cable = segment.Cable;
            worst = Worse(worst, WorstIn(cable.Outgoing, isReturn: false, trial, capacityOf(trial.Run, cable, cable.Outgoing)));
            if (trial.Currents.AreBothWays && ReferenceEquals(cable.Return, cable.Outgoing)) continue;
            worst = Worse(worst, WorstIn(cable.Return, isReturn: true, trial, capacityOf(trial.Run, cable, cable.Return)));
        }

        return worst;
    }

    private static Overload? WorstIn(Conductor conductor, bool isReturn, RunTrial trial, ConductorCapacity? known)
    {
        if (known is not ConductorCapacity capacity) return null;
        double? continuous = trial.IsCapped ? SmallConductors.ContinuousAmperes(conductor) : null;
        double? brief = continuous is null ? null : SmallConductors.ProtectionAmperes(conductor);
        Overload? worst = null;
        for (int c = 0; c < trial.Conditions.Count; c++)
        {
            double amperes = trial.Currents.Amperes(trial.Index, isReturn, c), air = trial.Conditions[c].At.CableCelsius;
            double ampacity = capacity.AmperesIn(air);
            bool lasts = trial.Conditions[c].IsContinuous;
            double load = (lasts ? continuous : brief) ?? double.PositiveInfinity, limit = Math.Min(load, ampacity);
            if (!Limits.IsAbove(amperes, limit) || worst?.Excess >= amperes - limit) continue;
            string ofSize = lasts ? "largest continuous load of its size" : "largest load of its size";
            worst = new Overload(conductor, trial.Conditions[c], amperes, limit, load < ampacity ? ofSize : capacity.Basis(air),
                capacity.IsOfLargerSize);
        }

        return worst;
    }

    private static Overload? Worse(Overload? one, Overload? other) => other is null || one?.Excess >= other.Excess ? one : other;

    private sealed class RunTrial(int index, SiteRun run, IReadOnlyList<Condition> conditions, RunCurrents currents, bool isCapped)
    {
        internal int Index { get; } = index;

        internal SiteRun Run { get; } = run;

        internal IReadOnlyList<Condition> Conditions { get; } = conditions;

        internal RunCurrents Currents { get; } = currents;

        /// <summary>Whether the continuous load of small conductors binds it.</summary>
        internal bool IsCapped { get; } = isCapped;
    }

    private sealed class Overload(
        Conductor conductor, Condition condition, double amperes, double limit, string basis, bool isOfLargerSize)
    {
        internal Conductor Conductor { get; } = conductor;

        internal Condition Condition { get; } = condition;

        internal double Amperes { get; } = amperes;

        internal double Limit { get; } = limit;

        internal string Basis { get; } = basis;

        internal bool IsOfLargerSize { get; } = isOfLargerSize;

        internal double Excess => Amperes - Limit;
    }
}
