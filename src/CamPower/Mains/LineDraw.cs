using System;
using System.Collections.Generic;
using System.Linq;
using CamPower.Heat;
using UnitsNet;
using static CamPower.DerivationStep;

namespace CamPower.Mains;

/// <summary>What a box takes from the line in a condition.</summary>
/// <remarks>
/// Immutable. The supply gives its highest voltage, to its load and to the battery that it charges.
/// Below the first point of its curves it is taken to draw as much as there; beyond the last, or without curves, what it draws is not
/// known. What else runs in the enclosure does not count.
/// </remarks>
/// <example>
/// <code>
/// ReceptacleAssessment receptacle = assessment.StudyReceptacles()[0];
/// Console.WriteLine(receptacle.Worst.Draws[0].Explain().ToMarkdown());
/// </code>
/// </example>
public sealed class LineDraw
{
    private readonly double _outVolts, _outAmperes, _shareOfFirstPoint;
    private readonly double? _lineVolts, _efficiency, _powerFactor, _standbyWatts;

    internal LineDraw(DistributionBox box, double amperes, double? lineVolts)
    {
        SupplyOutput output = box.Supply.Output;
        ShareCurve<Ratio>? efficiency = box.Supply.Input?.Efficiency, powerFactor = box.Supply.Input?.PowerFactor;
        double load = Math.Max(amperes / output.RatedAmperes, Math.Max(efficiency?.Lowest ?? 0, powerFactor?.Lowest ?? 0));
        Box = box;
        _lineVolts = lineVolts;
        _outAmperes = load * output.RatedAmperes;
        _outVolts = output.HighestVoltsAt(_outAmperes);
        _efficiency = efficiency?.ShareAt(load);
        _standbyWatts = box.Supply.Input?.StandbyWatts;
        _shareOfFirstPoint = load > 0 ? amperes / _outAmperes : 0;
        _powerFactor = powerFactor?.ShareAt(load);
    }

    /// <summary>The box.</summary>
    public DistributionBox Box { get; }

    /// <summary>Power from the line; null where the efficiency of the supply is not known at its load. [W]</summary>
    /// <remarks>Power out over efficiency. Source: <see cref="Sources.EfficiencyLoss"/>.</remarks>
    public Power? Power => Watts is double watts ? UnitsNet.Power.FromWatts(watts) : null;

    /// <summary>Apparent power from the line; null where the efficiency or the power factor is not known at the load. [VA]</summary>
    /// <remarks>Power over power factor. Source: <see cref="Sources.PowerFactor"/>.</remarks>
    public ElectricApparentPower? ApparentPower => Voltamperes is double apparent ? ElectricApparentPower.FromVoltamperes(apparent) : null;

    /// <summary>Current from the line, RMS; null where the efficiency or the power factor is not known at the load. [A]</summary>
    public ElectricCurrent? Current => Amperes is double amperes ? ElectricCurrent.FromAmperes(amperes) : null;

    /// <summary>The voltage of the line against the highest that its supply accepts; a judgment of nothing where that is not
    /// stated.</summary>
    internal Judgment HighestLine => Box.Supply.Input?.Highest(_lineVolts!.Value) ?? default;

    /// <summary>The voltage of the line against the lowest that its supply accepts; a judgment of nothing where that is not
    /// stated.</summary>
    internal Judgment LowestLine => Box.Supply.Input?.Lowest(_lineVolts!.Value) ?? default;

    internal double? Amperes => Voltamperes / _lineVolts;

    /// <summary>Power from the line over time. Below the first point of the curves it falls to the standby power, where that is stated.
    /// [W]</summary>
    internal double? MeanWatts => _shareOfFirstPoint < 1 && _standbyWatts is double standby
        ? _shareOfFirstPoint > 0 ? standby + ((Watts - standby) * _shareOfFirstPoint) : standby
        : Watts;

    private double OutWatts => _outVolts * _outAmperes;

    private double? Watts => OutWatts / _efficiency;

    private double? Voltamperes => Watts / _powerFactor;

    /// <summary>How it was worked out.</summary>
    /// <exception cref="InvalidOperationException">The current is not known.</exception>
    public Derivation Explain() => new($"what {Box} takes from the line", Steps(), ToString());

    /// <summary>The current and power, or what is not known, in the invariant culture; never throws.</summary>
    public override string ToString() => Amperes is double amperes
        ? FormattableString.Invariant($"{Box}: {amperes:0.000} A, {Watts!.Value:0.0} W")
        : $"{Box}: current unknown; not stated: {Missing}";

    /// <summary>What is not stated of its supply, in words.</summary>
    internal string Missing =>
        string.Join(" and ", new[] { _efficiency is null ? "efficiency" : null, _powerFactor is null ? "power factor" : null }
        .Where(part => part is not null)) + " at its load";

    private IEnumerable<DerivationStep> Steps()
    {
        if (Amperes is not double amperes) throw new InvalidOperationException($"There is nothing to explain: {this}.");
        yield return new("Po", FormattableString.Invariant(
            $"What the supply gives, loaded to {100 * _outAmperes / Box.Supply.Output.RatedAmperes:0.#} % of its rating"), "V*I",
            @"P_o = V\,I", $"{Number(_outVolts)}*{Number(_outAmperes)}", OutWatts, "W", Sources.Kirchhoff);
        yield return new("P", "Power from the line", "Po/eta", @"P = \frac{P_o}{\eta}",
            $"{Number(OutWatts)}/{Number(_efficiency!.Value)}", Watts!.Value, "W", Sources.EfficiencyLoss);
        yield return new("S", "Apparent power from the line", "P/PF", @"S = \frac{P}{\mathit{PF}}",
            $"{Number(Watts.Value)}/{Number(_powerFactor!.Value)}", Voltamperes!.Value, "VA", Sources.PowerFactor);
        yield return new("I", "Current from the line", "S/Vl", @"I = \frac{S}{V_l}",
            $"{Number(Voltamperes.Value)}/{Number(_lineVolts!.Value)}", amperes, "A", Sources.PowerFactor);
    }
}
