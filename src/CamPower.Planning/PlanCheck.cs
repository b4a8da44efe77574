using System;
using System.Collections.Generic;
using System.Linq;
using System.Threading;

namespace CamPower.Planning;

/// <summary>Checks a choice by the full assessment and every rule, and turns objections into cuts.</summary>
internal sealed class PlanCheck(PlanningCase planned, MasterProblem master, CancellationToken cancellationToken)
{
    /// <summary>What the rules find in a choice.</summary>
    internal IReadOnlyList<Finding> FindingsOf(Site site) => planned.Rules.Check(site.Assess(cancellationToken), cancellationToken);

    /// <summary>Whether a plan may not have a finding.</summary>
    internal bool IsObjection(Finding finding) => finding.Severity > planned.Question.MostSevere;

    /// <summary>Leaves out of the problem what the rules object to.</summary>
    internal void Exclude(PlanChoice choice, IEnumerable<Finding> objections)
    {
        foreach (IGrouping<BoxSlot?, Finding> ofSlot in objections.GroupBy(f => SlotOf(f, choice)))
        {
            if (ofSlot.Key is BoxSlot slot) Exclude(choice, slot, [.. ofSlot]);
            else master.ExcludeExactly(planned.Slots, choice);
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
        RunDraw most = members.Select(m => m.Draws).Aggregate((a, b) => a.Most(b));
        bool isOfLoad = CompanyRules.IsOfLoad(staying.Rule);
        master.ExcludeWithMore(slot, choice.Offers[slot.Index], members, run => isOfLoad && run.Draws.IsAtLeast(most));
    }

    // As few runs as break the rule: each is left out in turn, the one that draws least first.
    private List<RunOption> Least(PlanChoice choice, BoxSlot slot, string rule)
    {
        List<RunOption> members = [.. choice.RunsFrom(slot)];
        foreach (RunOption run in members.OrderBy(r => r.Draws.Amperes.Max()).ToList())
        {
            List<RunOption> fewer = [.. members.Where(m => !ReferenceEquals(m, run))];
            if (fewer.Count > 0 && Breaks(choice, slot, fewer, rule)) members = fewer;
        }

        return members;
    }

    private bool Breaks(PlanChoice choice, BoxSlot slot, List<RunOption> runs, string rule)
    {
        int[] offers = [.. choice.Offers.Select((offer, i) => i == slot.Index ? offer : -1)];
        var alone = new RunOption[choice.Runs.Length];
        foreach (RunOption run in runs) alone[run.Camera] = run;
        return FindingsOf(PlanSite.Of(planned, new PlanChoice(offers, alone)))
            .Any(f => IsObjection(f) && PlanningQuestion.Same(f.Rule, rule));
    }

    private DistributionBox BoxOf(PlanChoice choice, BoxSlot slot) => slot.Offers[choice.Offers[slot.Index]].Box;

    /// <summary>The slot that a finding is about; null where it is about more than one.</summary>
    private BoxSlot? SlotOf(Finding finding, PlanChoice choice) => finding.About.Kind switch
    {
        SubjectKind.Box => planned.Slots.First(s => PlanningQuestion.Same(s.Name, finding.About.Name)),
        SubjectKind.Device => planned.Slots[choice.Runs[CameraNamed(finding.About.Name)].Slot],
        SubjectKind.Output or SubjectKind.Run => SlotOfOutput(finding.About.Name, choice),
        _ => null,
    };

    private int CameraNamed(string name) =>
        Enumerable.Range(0, planned.Question.Cameras.Count).First(i => PlanningQuestion.Same(planned.Question.Cameras[i].Name, name));

    // A box whose name begins like another's is told apart by what follows the name.
    private BoxSlot? SlotOfOutput(string name, PlanChoice choice) => planned.Slots
        .Where(s => choice.Offers[s.Index] >= 0 && name.StartsWith($"{s.Name} output ", StringComparison.Ordinal))
        .OrderByDescending(s => s.Name.Length).FirstOrDefault();
}
