using System;
using System.Collections.Generic;
using System.Linq;

namespace CamPower.Assessment;

/// <summary>Temperature of the air around the protective devices of each box in one condition; that of the surroundings where nothing else
/// is stated.</summary>
internal sealed class AirOfBoxes(Surroundings surroundings)
{
    private readonly Dictionary<DistributionBox, double> _celsius = [];

    /// <summary>That of every condition of a site, while nothing is known of what warms its boxes.</summary>
    internal static AirOfBoxes[] AroundBoxes(Site site) => [.. site.Conditions.Select(c => new AirOfBoxes(c.At))];

    internal double Of(DistributionBox box) => _celsius.TryGetValue(box, out double celsius) ? celsius : box.AirIn(surroundings);

    /// <summary>Takes the air of a box as a solution found it, and says whether that changes anything worth solving again.</summary>
    internal bool Takes(DistributionBox box, double celsius)
    {
        // A hundredth of a kelvin is a ten-thousandth of a resistance.
        if (Math.Abs(celsius - Of(box)) < 0.01) return false;
        _celsius[box] = celsius;
        return true;
    }
}
