using System.Collections.Generic;
using System.Linq;

namespace CamPower.Planning;

/// <summary>A choice as a site that the core assesses.</summary>
internal static class PlanSite
{
    internal static Site Of(PlanningCase planned, PlanChoice choice)
    {
        PlanningQuestion question = planned.Question;
        var boxes = new List<DistributionBox>();
        var runs = new SiteRun[choice.Runs.Length];
        foreach (BoxSlot slot in planned.Slots.Where(slot => choice.Offers[slot.Index] >= 0))
        {
            boxes.Add(slot.Offers[choice.Offers[slot.Index]].Box.WithName(slot.Name));
            int output = 0;
            foreach (RunOption run in choice.RunsFrom(slot)) runs[run.Camera] = RunOf(question, run, RunOrigin.Output(slot.Name, ++output));
        }

        return new Site(question.Name, question.Conditions, boxes, runs.Where(run => run is not null), Devices(question, runs),
            altitude: question.Altitude);
    }

    private static SiteRun RunOf(PlanningQuestion question, RunOption run, RunOrigin from) => new(
        from, question.Cameras[run.Camera].Name, new CableRun(run.Cable, run.Length), installationMethod: question.InstallationMethod);

    private static IEnumerable<SiteDevice> Devices(PlanningQuestion question, SiteRun[] runs) => question.Cameras
        .Where((_, i) => runs[i] is not null).Select(camera => new SiteDevice(camera.Name, camera.Model, at: camera.Name));
}
