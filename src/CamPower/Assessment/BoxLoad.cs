using System;
using System.Collections.Generic;
using System.Linq;
using CamPower.Heat;

namespace CamPower.Assessment;

/// <summary>What a box has to give in every condition, and what it loses by it.</summary>
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

    /// <summary>What the box itself loses, in air of 20 °C; null where it stands in no enclosure, or its efficiency is not known there.</summary>
    internal BoxLosses? LossesIn(int condition) => _losses[condition];

    /// <summary>The box in every condition, given the balance of its enclosure and the place of the box in it; null where that is not known.</summary>
    internal BoxAssessment Assess(Site site, IReadOnlyList<EnclosureBalance?> balances, int place) => new(Box,
        _outputs.Select(o => o.Assessment).ToList().AsReadOnly(),
        [.. site.Conditions.Select((condition, c) => new BoxInCondition(Box, condition, site.AltitudeMeters, _amperes[c],
            _losses[c] is not null, balances[c]?.Losses[place], balances[c]?.Heat, _outputs.Any(o => o.Assessment.InConditions[c].IsDemandOnly)))]);

    private BoxLosses? LossesOf(double totalAmperes, int condition) =>
        BoxLosses.Of(Box, totalAmperes, _outputs.Select(o => (o.Assessment.Output, o.Assessment.InConditions[condition].Amperes)));

    // The outputs whose motors add most are those taken as moving, as many as the condition lets move.
    private double TotalAmperes(Condition condition, int index)
    {
        double total = 0;
        foreach (SolvedOutput output in _outputs) total += output.Assessment.InConditions[index].Amperes;
        if (condition.MotorsMoving is not int most) return total;

        IEnumerable<double> standing = _outputs.Select(o => o.Assessment.InConditions[index].Amperes - o.AmperesAtRest[index])
            .OrderByDescending(added => added).Skip(most);
        return total - standing.Sum();
    }
}
