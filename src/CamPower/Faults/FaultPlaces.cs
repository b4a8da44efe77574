using System.Collections.Generic;

namespace CamPower.Faults;

/// <summary>Where a run may be shorted.</summary>
internal static class FaultPlaces
{
    /// <summary>Every joint of a run, before its own resistance, behind what lies before the run.</summary>
    internal static IEnumerable<FaultLoop> Joints(FaultLoop before, CableRun run, Laying? laying, FaultConditions conditions)
    {
        FaultLoop loop = before;
        foreach (RunPart part in run.Parts)
        {
            if (part is Joint joint) yield return loop.EndingAt(joint.Name);
            loop = loop.Then(part, laying, conditions);
        }
    }

    /// <summary>The end of a run, behind what lies before it.</summary>
    internal static FaultLoop End(FaultLoop before, CableRun run, Laying? laying, FaultConditions conditions)
    {
        FaultLoop loop = before;
        foreach (RunPart part in run.Parts) loop = loop.Then(part, laying, conditions);
        return loop;
    }
}
