using System;
using System.Collections.Generic;
using System.Linq;
using UnitsNet;
using static CamPower.DerivationStep;

namespace CamPower.Mains;

/// <summary>What the boxes of a site take from the mains in each condition and in a year.</summary>
/// <remarks>Immutable. The hours of the conditions in a year decide: what no condition states is not in the sum, and
/// <see cref="HoursNotStated"/> says how much of the year that is.</remarks>
/// <example>
/// <code>
/// EnergyAssessment energy = site.Assess().StudyEnergy();
/// Console.WriteLine($"{energy.Year?.KilowattHours:0} kWh, {energy.CostOfYear:0} {site.EnergyPrice?.Currency}");
/// </code>
/// </example>
public sealed class EnergyAssessment
{
    private const double HoursOfAYear = 8760;

    private readonly EnergyPrice? _price;

    internal EnergyAssessment(SiteAssessment assessment)
    {
        _price = assessment.Site.EnergyPrice;
        InConditions = Array.AsReadOnly([.. assessment.Site.Conditions.Select((condition, c) => new EnergyInCondition(condition,
            [.. assessment.Boxes.Where(box => box.Box.FedFrom is null)
                .Select(box => new LineDraw(box.Box, box.InConditions[c].Amperes, condition.LineVolts))]))]);
    }

    /// <summary>Every condition, in the site's order.</summary>
    public IReadOnlyList<EnergyInCondition> InConditions { get; }

    /// <summary>Energy of the hours that conditions state, in a year; null where none does, or the power of one that does is not known.
    /// [kWh]</summary>
    public Energy? Year => Yearly.Count > 0 && Yearly.TrueForAll(c => c.IsKnown) ? Energy.FromKilowattHours(KilowattHours) : null;

    /// <summary>The hours of a year of 365 days of which no condition says anything. [h]</summary>
    public Duration HoursNotStated => Duration.FromHours(Math.Max(0, HoursOfAYear - Yearly.Sum(c => c.Condition.HoursAYear!.Value.Hours)));

    /// <summary>Cost of <see cref="Year"/> in the currency of the site's price; null where either is not known.</summary>
    public double? CostOfYear => Year is Energy year ? year.KilowattHours * _price?.PerKilowattHour : null;

    private List<EnergyInCondition> Yearly => [.. InConditions.Where(c => c.Condition.HoursAYear is not null)];

    private double KilowattHours => Yearly.Sum(c => c.EnergyAYear!.Value.KilowattHours);

    /// <summary>How the energy of a year was worked out.</summary>
    /// <exception cref="InvalidOperationException">It is not known.</exception>
    public Derivation Explain() => new("energy from the mains in a year", Steps(), ToString());

    /// <summary>Energy and cost of a year, or that it is not known, in the invariant culture; never throws.</summary>
    public override string ToString()
    {
        if (Year is not Energy year) return "energy of a year: not known";
        string cost = CostOfYear is double price ? FormattableString.Invariant($", {price:0.00} {_price!.Currency}") : string.Empty;
        string rest = HoursNotStated.Hours > 0
            ? FormattableString.Invariant($"; of {HoursNotStated.Hours:0.#} h no condition says anything")
            : string.Empty;
        return FormattableString.Invariant($"energy of a year: {year.KilowattHours:0.0} kWh{cost}{rest}");
    }

    private IEnumerable<DerivationStep> Steps()
    {
        if (Year is not Energy year) throw new InvalidOperationException("There is nothing to explain: the energy of a year is not known.");
        int number = 0;
        foreach (EnergyInCondition c in Yearly)
        {
            number++;
            string symbol = FormattableString.Invariant($"W{number}");
            yield return new(symbol, $"Energy of \"{c.Condition}\": power from the line times its hours", "P*t/1000",
                FormattableString.Invariant($@"W_{{{number}}} = \frac{{P\,t}}{{1000}}"),
                $"{Number(c.KnownWatts)}*{Number(c.Condition.HoursAYear!.Value.Hours)}/1000",
                c.EnergyAYear!.Value.KilowattHours, "kWh", Sources.EnergyOverTime);
        }

        yield return new("W", "Energy of all of them", "sum of the energies", @"W = \sum W_k",
            string.Join(" + ", Yearly.Select(c => Number(c.EnergyAYear!.Value.KilowattHours))), year.KilowattHours, "kWh",
            Sources.EnergyOverTime);
        if (CostOfYear is double cost)
        {
            yield return new("K", "Cost of it", "W*p", @"K = W\,p", $"{Number(year.KilowattHours)}*{Number(_price!.PerKilowattHour)}",
                cost, _price.Currency, Sources.EnergyOverTime);
        }
    }
}
