using System;

namespace CamPower.Planning;

/// <summary>Something else that a plan might have chosen, and what speaks against it.</summary>
/// <remarks>Immutable. All else stays as planned, so that it says what binds here, and not what another plan would cost.</remarks>
public sealed class PlanBinding
{
    internal PlanBinding(Subject about, string alternative, double? saves, string reason, Finding? finding = null)
    {
        About = about;
        Alternative = alternative;
        Saves = saves;
        Reason = reason;
        Finding = finding;
    }

    /// <summary>The box, the camera or the site.</summary>
    public Subject About { get; }

    /// <summary>What it might be instead.</summary>
    public string Alternative { get; }

    /// <summary>What that would save, in the unit of the prices; null where there is no plan to compare it with.</summary>
    public double? Saves { get; }

    /// <summary>What speaks against it, in sentences.</summary>
    public string Reason { get; }

    /// <summary>The finding that it would get; null where it lacks outputs or a route.</summary>
    public Finding? Finding { get; }

    /// <summary>All of it in one line, in the invariant culture; never throws.</summary>
    public override string ToString() => Saves is double saves
        ? FormattableString.Invariant($"{About}: {Alternative} would save {saves:0.##}. {Reason}")
        : $"{About}: {Alternative}. {Reason}";
}
