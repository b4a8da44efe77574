using System;

namespace CamPower.Planning;

/// <summary>Something cheaper than what a plan chose, and what speaks against it.</summary>
/// <remarks>Immutable.</remarks>
public sealed class PlanBinding
{
    internal PlanBinding(Subject about, string cheaper, double saves, string reason, Finding? finding)
    {
        About = about;
        Cheaper = cheaper;
        Saves = saves;
        Reason = reason;
        Finding = finding;
    }

    /// <summary>The box or the camera.</summary>
    public Subject About { get; }

    /// <summary>The cheaper alternative, with all else as planned.</summary>
    public string Cheaper { get; }

    /// <summary>What it would save, in the unit of the prices.</summary>
    public double Saves { get; }

    /// <summary>What speaks against it, in a sentence.</summary>
    public string Reason { get; }

    /// <summary>The finding that it would get; null where it lacks outputs.</summary>
    public Finding? Finding { get; }

    /// <summary>All of it in one line, in the invariant culture; never throws.</summary>
    public override string ToString() => FormattableString.Invariant($"{About}: {Cheaper} would save {Saves:0.##}. {Reason}");
}
