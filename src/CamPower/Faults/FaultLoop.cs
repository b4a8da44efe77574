using System.Collections.Generic;

namespace CamPower.Faults;

/// <summary>The way from the terminals to a fault and back: both poles of it, and how far along the route it is.</summary>
internal sealed class FaultLoop(string place, double meters, FaultPole outgoing, FaultPole back)
{
    internal static FaultLoop Terminals { get; } = new("terminals", 0, FaultPole.None, FaultPole.None);

    internal string Place => place;

    /// <summary>How far along the route, one way. [m]</summary>
    internal double Meters => meters;

    internal FaultPole Outgoing => outgoing;

    internal FaultPole Back => back;

    internal double ColdOhms => outgoing.ColdOhms + back.ColdOhms;

    internal double HotOhms => outgoing.HotOhms + back.HotOhms;

    internal IReadOnlyList<LaidConductor> Conductors { get; } = [.. outgoing.Conductors, .. back.Conductors];

    /// <summary>The loop with one more part of a run at its end.</summary>
    internal FaultLoop Then(RunPart part, Laying? laying, FaultConditions conditions) => new(place, meters + part.OneWayLength.Meters,
        outgoing.Then(part, cable => cable.Outgoing, laying, conditions), back.Then(part, cable => cable.Return, laying, conditions));

    /// <summary>The loop with the outgoing pole of a whole run at its end, and back by the pole of another way.</summary>
    internal FaultLoop Then(CableRun run, Laying? laying, FaultConditions conditions, FaultPole instead)
    {
        FaultPole pole = outgoing;
        foreach (RunPart part in run.Parts) pole = pole.Then(part, cable => cable.Outgoing, laying, conditions);
        return new FaultLoop(place, meters + run.OneWayMeters, pole, instead);
    }

    /// <summary>The same loop, called after its end.</summary>
    internal FaultLoop EndingAt(string name) => new(name, meters, outgoing, back);
}
