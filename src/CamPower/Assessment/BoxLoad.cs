using System;
using System.Collections.Generic;
using System.Linq;
using CamPower.Heat;

namespace CamPower.Assessment;

/// <summary>Current of a box in every condition, and the losses that come with it.</summary>
internal sealed class BoxLoad
{
    private readonly IReadOnlyList<SolvedOutput> _outputs;
    private readonly double[] _amperes;
    private readonly BoxLosses?[] _losses;

    internal BoxLoad(Site site, DistributionBox box, IReadOnlyList<SolvedOutput> outputs)
    {
        Box = box;
        _outputs = outputs;
        _amperes = [.. site.Conditions.Select(TotalAmperes)];
        _losses = box.Enclosure is null ? new BoxLosses?[_amperes.Length] : [.. _amperes.Select(LossesOf)];
    }

    internal DistributionBox Box { get; }

    /// <summary>What the box itself loses, in air of 20 °C; null where it is in no enclosure, or its efficiency is not known
    /// there.</summary>
    internal BoxLosses? LossesIn(int condition) => _losses[condition];

    /// <summary>What it has to give in a condition. [A]</summary>
    internal double AmperesIn(int condition) => _amperes[condition];

    /// <summary>The box in every condition.</summary>
    /// <param name="site">The site.</param>
    /// <param name="balances">The balance of its enclosure in each condition; null where that is not known.</param>
    /// <param name="place">The place of the box in it.</param>
    /// <param name="rails">What its voltage does in each condition; null where it is not asked for.</param>
    /// <param name="outputsAsItFalls">What its outputs take in a condition as its voltage falls; null where it is not asked for.</param>
    internal BoxAssessment Assess(
        Site site, IReadOnlyList<EnclosureBalance?> balances, int place, BoxRail[]? rails,
        Func<int, SupplyOutput, RailLoad>? outputsAsItFalls)
    {
        BoxInCondition[] inConditions =
            [.. site.Conditions.Select((condition, c) => new BoxInCondition(Box, condition, site.AltitudeMeters, _amperes[c],
            _losses[c] is not null, balances[c]?.Losses[place], balances[c]?.Heat, _outputs.Any(o => o.IsDemandOnlyIn(c)), rails?[c],
            source => outputsAsItFalls!(c, source)))];
        return new BoxAssessment(Box, _outputs.Select(o => o.In(inConditions)).ToList().AsReadOnly(), inConditions,
            JoinedCommons.Of(site, Box));
    }

    private BoxLosses? LossesOf(double totalAmperes, int condition) =>
        BoxLosses.Of(Box, Box.AmperesWhileCharging(totalAmperes), _outputs.Select(o => (o.Output, o.AmperesIn(condition))));

    // The outputs whose motors add most are those taken as moving, as many as the condition lets move.
    private double TotalAmperes(Condition condition, int index)
    {
        // The currents of a transformer's outputs are not in phase: that of its winding is no larger than their sum.
        if (_outputs.Count > 0 && _outputs[0].BankIn(index) is AlternatingBank bank) return bank.Amperes;
        double total = 0;
        foreach (SolvedOutput output in _outputs) total += output.AmperesIn(index);
        if (condition.MotorsMoving is not int most) return total;

        IEnumerable<double> standing = _outputs.Select(o => o.AmperesIn(index) - o.AmperesAtRestIn(index))
            .OrderByDescending(added => added).Skip(most);
        return total - standing.Sum();
    }
}
