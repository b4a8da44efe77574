using System;
using System.Collections.Generic;
using System.Linq;
using UnitsNet;
using static CamPower.DerivationStep;

namespace CamPower.Heat;

/// <summary>The heat lost in a box: by its supply, by the protective devices of its outputs, by what else runs in it.</summary>
/// <remarks>
/// Immutable. The supply gives its highest voltage. Below the first point of its efficiency curve it is taken to lose as
/// much as there, for its losses grow with its load; beyond the last point it loses at least as much as there.
/// A device counts with its greatest resistance, one that nobody declares with none; wires in the box do not count.
/// Nothing of this depends on the temperature: data sheets state efficiency at one, and the greatest resistance of a
/// resettable fuse covers a warm one. So the heat gives the temperature in one step.
/// </remarks>
public sealed class BoxLosses
{
    private readonly double _volts, _amperes, _efficiency, _ratedAmperes;
    private readonly List<(double Amperes, double Ohms)> _devices;

    private BoxLosses(SupplyOutput output, double amperes, double efficiency, bool isAtLeast, List<(double Amperes, double Ohms)> devices, double otherWatts)
    {
        IsAtLeast = isAtLeast;
        _volts = output.HighestVolts;
        _ratedAmperes = output.RatedAmperes;
        _amperes = amperes;
        _efficiency = efficiency;
        _devices = devices;
        SupplyWatts = _volts * amperes * ((1 / efficiency) - 1);
        DeviceWatts = devices.Sum(d => d.Amperes * d.Amperes * d.Ohms);
        OtherWatts = otherWatts;
    }

    /// <summary>Lost in the supply: what it gives times (1/efficiency − 1). [W]</summary>
    public Power Supply => Power.FromWatts(SupplyWatts);

    /// <summary>Lost in the protective devices: I²R of each output in use. [W]</summary>
    public Power Devices => Power.FromWatts(DeviceWatts);

    /// <summary>Given off by what else runs in the enclosure. [W]</summary>
    public Power Other => Power.FromWatts(OtherWatts);

    /// <summary>All of it. [W]</summary>
    public Power Total => Power.FromWatts(TotalWatts);

    /// <summary>Whether the supply is loaded beyond the last point of its efficiency curve: it loses at least this.</summary>
    public bool IsAtLeast { get; }

    internal double TotalWatts => SupplyWatts + DeviceWatts + OtherWatts;

    private double SupplyWatts { get; }

    private double DeviceWatts { get; }

    private double OtherWatts { get; }

    /// <summary>The losses at a total current and the current of each output; null where no efficiency is declared.</summary>
    internal static BoxLosses? Of(DistributionBox box, double totalAmperes, IEnumerable<(BoxOutput Output, double Amperes)> outputs)
    {
        SupplyOutput output = box.Supply.Output;
        if (box.Supply.Inlet?.Efficiency is not ShareCurve<Ratio> curve) return null;
        double asked = totalAmperes / output.RatedAmperes, load = Math.Min(Math.Max(asked, curve.Lowest), curve.Highest);
        double efficiency = curve.ShareAt(load)!.Value;
        List<(double, double)> devices = [.. outputs.Select(o => (o.Amperes, o.Output.Protection?.GreatestOhms ?? 0)).Where(d => d.Item2 > 0)];
        return new BoxLosses(output, load * output.RatedAmperes, efficiency, Limits.IsAbove(asked, curve.Highest), devices, box.Enclosure?.OtherWatts ?? 0);
    }

    /// <summary>How it was worked out.</summary>
    public Derivation Explain() => new("losses in the box", Steps(), ToString());

    /// <summary>The three parts and their sum in the invariant culture; never throws.</summary>
    public override string ToString() => FormattableString.Invariant(
        $"{(IsAtLeast ? "at least " : "")}{TotalWatts:0.00} W: supply {SupplyWatts:0.00} W, devices {DeviceWatts:0.00} W, other {OtherWatts:0.00} W");

    internal IEnumerable<DerivationStep> Steps()
    {
        string load = FormattableString.Invariant($"{100 * _amperes / _ratedAmperes:0.#} % of its rating");
        yield return new("Ps", IsAtLeast ? $"Lost in the supply at least: at {load}, where its declared efficiency ends" : $"Lost in the supply, loaded to {load}", "V*I*(1/eta - 1)",
            @"P_s = V\,I\left(\frac{1}{\eta} - 1\right)", $"{Number(_volts)}*{Number(_amperes)}*(1/{Number(_efficiency)} - 1)", SupplyWatts, "W", Sources.EfficiencyLoss);
        if (_devices.Count > 0)
        {
            yield return new("Pd", "Lost in the devices of the outputs", "sum of I^2*R", @"P_d = \sum I^2 R",
                string.Join(" + ", _devices.Select(d => $"{Number(d.Amperes)}^2*{Number(d.Ohms)}")), DeviceWatts, "W", Sources.Kirchhoff);
        }

        yield return new("Q", "Heat lost in the box", "Ps + Pd + Po", "Q = P_s + P_d + P_o",
            $"{Number(SupplyWatts)} + {Number(DeviceWatts)} + {Number(OtherWatts)}", TotalWatts, "W", Sources.EnclosureHeatBalance);
    }
}
