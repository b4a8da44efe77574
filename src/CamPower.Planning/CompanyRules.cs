using System;
using System.Collections.Frozen;

namespace CamPower.Planning;

/// <summary>What is known of rules when more cameras come to a box: which findings stay, and which may go.</summary>
internal static class CompanyRules
{
    // Findings that depend on the total load and its heat alone: the same total in other hands, or more of it, breaks them too.
    private static readonly FrozenSet<string> OfLoad = FrozenSet.ToFrozenSet(
    [
        "supply-above-derated-rating", "supply-above-headroom-policy", "supply-too-hot", "thin-heat-margin",
        "enclosure-temperature-unknown",
    ], StringComparer.Ordinal);

    // Findings that depend on the current of an output and the heat in its box alone, unless an inrush has a part in them.
    private static readonly FrozenSet<string> OfCurrent = FrozenSet.ToFrozenSet(
        ["nuisance-trip", "output-overloaded", "fuse-above-continuous-policy"], StringComparer.Ordinal);

    // Findings that more cameras on the box leave in place.
    private static readonly FrozenSet<string> Staying = FrozenSet.ToFrozenSet(
    [
        "start-beyond-supply-limit", "short-collapses-supply-voltage", "inrush-below-drop-out", "nuisance-trip", "undervoltage",
        "thin-voltage-margin", "no-operating-point", "settles-below-drop-out", "output-overloaded", "connector-overloaded",
        "conductor-over-ampacity", "fuse-above-continuous-policy", "battery-backup-too-short", "thin-battery-backup",
        "undervoltage-on-battery", "output-overloaded-on-battery", "charging-above-derated-rating", "battery-fuse-may-open",
    ], StringComparer.Ordinal);

    // A protective device that is warmed by its neighbors operates sooner.
    private static readonly FrozenSet<string> CuredByHeat = FrozenSet.ToFrozenSet(
    [
        "short-may-not-be-interrupted", "let-through-above-conductor-withstand", "protection-above-conductor-ampacity", "faults-unknown",
        "protection-missing", "breaking-capacity-exceeded", "short-collapses-supply-voltage",
    ], StringComparer.Ordinal);

    /// <summary>Whether a finding depends on the load of the box alone.</summary>
    internal static bool IsOfLoad(string rule) => OfLoad.Contains(rule);

    /// <summary>Whether a finding stays where runs are exchanged for others that draw no less.</summary>
    /// <param name="rule">Identifier of the rule.</param>
    /// <param name="hasInrush">Whether any camera states an inrush.</param>
    internal static bool StaysWithLargerDraws(string rule, bool hasInrush) =>
        OfLoad.Contains(rule) || (OfCurrent.Contains(rule) && !hasInrush);

    /// <summary>Whether more cameras on the box leave a finding in place.</summary>
    /// <param name="rule">Identifier of the rule.</param>
    /// <param name="isHeated">Whether the box warms itself in an enclosure.</param>
    internal static bool Stays(string rule, bool isHeated) =>
        OfLoad.Contains(rule) || (Staying.Contains(rule) && !(isHeated && HeatMayCure(rule)));

    /// <summary>Whether a warmer box may be free of a finding.</summary>
    internal static bool HeatMayCure(string rule) => CuredByHeat.Contains(rule);
}
