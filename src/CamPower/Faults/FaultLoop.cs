using System.Collections.Generic;

namespace CamPower.Faults;

/// <summary>The way from the terminals to a fault and back: both poles of it, and how far along the route it is.</summary>
/// <param name="place">How the place is called.</param>
/// <param name="meters">How far along the route, one way. [m]</param>
/// <param name="outgoing">The way out.</param>
/// <param name="back">The way back.</param>
/// <param name="pieces">The ends of the pieces of cable that begin at the place: a short at their origin draws as much, through their
/// conductors as well.</param>
internal sealed class FaultLoop(string place, double meters, FaultPole outgoing, FaultPole back, IReadOnlyList<FaultLoop> pieces)
{
    internal string Place => place;

    internal double Meters => meters;

    internal FaultPole Back => back;

    internal IReadOnlyList<FaultLoop> Pieces => pieces;

    internal IReadOnlyList<LaidConductor> Conductors { get; } = LaidConductor.Joined(outgoing.Conductors, back.Conductors);

    internal static FaultLoop AtTerminals(int conditions) =>
        new("terminals", 0, FaultPole.AtTerminals(conditions), FaultPole.AtTerminals(conditions), []);

    /// <summary>Its resistance in a condition, given by its place in the list. [Ω]</summary>
    internal double OhmsIn(int condition) => outgoing.OhmsIn(condition) + back.OhmsIn(condition);

    /// <summary>The loop with one more part of a run at its end.</summary>
    internal FaultLoop Then(RunPart part, InstallationMethod? installationMethod, IReadOnlyList<FaultAir> air) =>
        new(place, meters + part.OneWayLength.Meters,
        outgoing.Then(part, cable => cable.Outgoing, installationMethod, air),
            back.Then(part, cable => cable.Return, installationMethod, air), []);

    /// <summary>The loop with the outgoing pole of a whole run at its end, and back by the pole of another way.</summary>
    internal FaultLoop Then(CableRun run, InstallationMethod? installationMethod, IReadOnlyList<FaultAir> air, FaultPole instead)
    {
        FaultPole pole = outgoing;
        foreach (RunPart part in run.Parts) pole = pole.Then(part, cable => cable.Outgoing, installationMethod, air);
        return new FaultLoop(place, meters + run.OneWayMeters, pole, instead, []);
    }

    /// <summary>The same loop, called after its end, with the pieces of cable that begin there.</summary>
    internal FaultLoop EndingAt(string name, IReadOnlyList<FaultLoop>? beginning = null) =>
        new(name, meters, outgoing, back, beginning ?? []);
}
