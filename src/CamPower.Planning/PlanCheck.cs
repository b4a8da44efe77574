using System;
using System.Collections.Generic;
using System.Linq;
using System.Threading;

namespace CamPower.Planning;

/// <summary>Checks a choice by the full assessment and every rule, and turns objections into cuts.</summary>
internal sealed class PlanCheck(PlanningCase planned, MasterProblem master, CancellationToken cancellationToken)
{
    /// <summary>What the rules find in a plan.</summary>
    internal IReadOnlyList<Finding> FindingsOf(SiteAssessment solved) => planned.Rules.Check(solved, cancellationToken);

    /// <summary>What the rules object to where one box alone is put up, with some runs.</summary>
    internal IEnumerable<Finding> ObjectionsTo(BoxSlot slot, int offer, IEnumerable<RunOption> runs)
    {
        int[] offers = [.. planned.Slots.Select(s => ReferenceEquals(s, slot) ? offer : -1)];
        var alone = new RunOption?[planned.Question.Cameras.Count];
        foreach (RunOption run in runs) alone[run.Camera] = run;
        return FindingsOf(PlanSite.Of(planned, new PlanChoice(offers, alone)).Assess(cancellationToken)).Where(IsObjection);
    }

    /// <summary>Whether a plan may not have a finding.</summary>
    internal bool IsObjection(Finding finding) => finding.Severity > planned.Question.MostSevere;

    /// <summary>Leaves out of the problem what the rules object to.</summary>
    internal void Exclude(PlanChoice choice, IEnumerable<Finding> objections)
    {
        foreach (IGrouping<string, Finding> alike in objections.GroupBy(
            f => string.Join(' ', SlotsOf(f, choice).Select(s => s.Index)), StringComparer.Ordinal))
        {
            BoxSlot[] slots = [.. SlotsOf(alike.First(), choice)];
            if (slots.Length == 1) Exclude(choice, slots[0], [.. alike]);
            else master.ExcludeExactly(slots, choice);
        }
    }

    private void Exclude(PlanChoice choice, BoxSlot slot, Finding[] objections)
    {
        bool isHeated = BoxOf(choice, slot).Enclosure is not null;
        Finding? staying = Array.Find(objections, f => CompanyRules.IsOfLoad(f.Rule))
            ?? Array.Find(objections, f => CompanyRules.Stays(f.Rule, isHeated));
        if (staying is null)
        {
            master.ExcludeExactly([slot], choice);
            return;
        }

        IReadOnlyList<RunOption> members = Least(choice, slot, staying.Rule);
        bool hasInrush = planned.Question.Cameras.Any(c => c.Model.Inrush is not null || c.Model.SwitchedInrush is not null);
        master.ExcludeWithMore(
            slot, choice.Offers[slot.Index], members, CompanyRules.StaysWithLargerDraws(staying.Rule, hasInrush));
    }

    // As few runs as break the rule: each is left out in turn, the one that draws least first.
    private List<RunOption> Least(PlanChoice choice, BoxSlot slot, string rule)
    {
        List<RunOption> members = [.. choice.RunsFrom(slot)];
        foreach (RunOption run in members.OrderBy(r => r.Draws.Amperes.Max()).ToList())
        {
            List<RunOption> fewer = [.. members.Where(m => !ReferenceEquals(m, run))];
            bool breaks = fewer.Count > 0
                && ObjectionsTo(slot, choice.Offers[slot.Index], fewer).Any(f => PlanningQuestion.Same(f.Rule, rule));
            if (breaks) members = fewer;
        }

        return members;
    }

    private static DistributionBox BoxOf(PlanChoice choice, BoxSlot slot) => slot.Offers[choice.Offers[slot.Index]].Box;

    // The slots whose content a finding depends on: the rest of the site has no part in it.
    private IEnumerable<BoxSlot> SlotsOf(Finding finding, PlanChoice choice) => finding.About.Kind switch
    {
        SubjectKind.Box => planned.Slots.Where(s => PlanningQuestion.Same(s.Name, finding.About.Name)),
        SubjectKind.Device => [planned.Slots[choice.Runs[CameraNamed(finding.About.Name)]!.Slot]],
        SubjectKind.Output or SubjectKind.Run => SlotOfOutput(finding.About.Name, choice),
        SubjectKind.Receptacle => planned.Slots.Where(s => PlanningQuestion.Same(s.Place.Receptacle?.Name, finding.About.Name)),
        _ => planned.Slots,
    };

    private int CameraNamed(string name) =>
        Enumerable.Range(0, planned.Question.Cameras.Count).First(i => PlanningQuestion.Same(planned.Question.Cameras[i].Name, name));

    // Of two boxes whose names begin alike the longer name is meant.
    private IEnumerable<BoxSlot> SlotOfOutput(string name, PlanChoice choice) => planned.Slots
        .Where(s => choice.Offers[s.Index] >= 0 && name.StartsWith($"{s.Name} output ", StringComparison.Ordinal))
        .OrderByDescending(s => s.Name.Length).Take(1);
}
