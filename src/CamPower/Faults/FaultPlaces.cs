using System.Collections.Generic;

namespace CamPower.Faults;

/// <summary>Where a run may be shorted.</summary>
internal static class FaultPlaces
{
    /// <summary>Every joint of a run, before its own resistance, and the run's end, all of it behind what lies before it.</summary>
    internal static IEnumerable<FaultLoop> Along(FaultLoop before, CableRun run, Laying? laying, FaultConditions conditions)
    {
        FaultLoop loop = before;
        foreach (RunPart part in run.Parts)
        {
            if (part is Joint joint) yield return loop.EndingAt(joint.Name);
            loop = loop.Then(part, laying, conditions);
        }

        yield return loop;
    }
}
