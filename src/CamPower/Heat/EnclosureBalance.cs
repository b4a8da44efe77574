using System.Collections.Generic;
using System.Linq;
using UnitsNet;

namespace CamPower.Heat;

/// <summary>One enclosure in the steady state: how warm its air gets, and what each box in it loses in that air.</summary>
/// <remarks>
/// Warmer air makes resettable fuses lose more, and what they lose warms the air. From the air around, each step takes the losses in the
/// air of the last one. More heat never makes the air cooler, and warmer air never makes the losses smaller, so the temperatures rise; and
/// the resistance stops growing at the end of a fuse's thermal curve, so they are bounded: they settle, at the lowest temperature that is
/// in balance. Each step is shorter than the last by the share of a kelvin that a kelvin of air brings back, a few per cent. Where that is
/// so near 1 that the steps hardly end, the losses at their bound count, which is the hotter side.
/// </remarks>
internal sealed class EnclosureBalance
{
    private const int MostSteps = 1000;

    // A millionth of a kelvin, where the model is good to a quarter of the rise.
    private const double CloseKelvins = 1e-6;

    private EnclosureBalance(HeatedEnclosure heat, IReadOnlyList<BoxLosses> losses)
    {
        Heat = heat;
        Losses = losses;
    }

    internal HeatedEnclosure Heat { get; }

    /// <summary>Losses of each box beside the others.</summary>
    internal IReadOnlyList<BoxLosses> Losses { get; }

    /// <summary>Whether a condition warms an enclosure: it is not stated to be over before the enclosure takes it up.</summary>
    internal static bool IsWarmedIn(Condition condition) =>
        !(condition.Duration is Duration lasts && lasts.Minutes < HeatConstants.WarmingFrom.Value);

    /// <summary>The balance of an enclosure and the losses of the boxes in it.</summary>
    internal static EnclosureBalance Of(Enclosure enclosure, IReadOnlyList<BoxLosses> losses, Surroundings at, double altitudeMeters)
    {
        double hottest = losses.Max(l => l.DependsUpToCelsius);
        EnclosureBalance balance = InAirOf(at.BoxCelsius);
        double air = at.BoxCelsius;
        for (int step = 1; air < hottest && balance.Heat.InsideCelsius - air > CloseKelvins; step++)
        {
            air = step < MostSteps ? balance.Heat.InsideCelsius : hottest;
            balance = InAirOf(air);
        }

        return balance;

        EnclosureBalance InAirOf(double celsius)
        {
            BoxLosses[] each = [.. losses.Select(l => l.InAirOf(celsius))];
            double watts = each.Sum(l => l.OwnWatts) + enclosure.OtherWatts;
            return new EnclosureBalance(new HeatedEnclosure(enclosure, watts, at.BoxCelsius, at.SunWattsPerSquareMeter, altitudeMeters),
                [.. each.Select((l, i) => l.Beside([.. each.Where((_, other) => other != i)]))]);
        }
    }
}
