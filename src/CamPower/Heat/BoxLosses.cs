using System;
using System.Collections.Generic;
using System.Linq;
using UnitsNet;
using static CamPower.DerivationStep;

namespace CamPower.Heat;

/// <summary>The heat lost in the enclosure of a box: by its supply, by the protective devices of its outputs, by other boxes of its
/// cabinet, by what else runs in it.</summary>
/// <remarks>
/// Immutable. The supply gives its highest voltage, to its load and to the battery that it charges: that takes hours.
/// Below the first point of its efficiency curve it is taken to lose as much as there, for its losses grow with its load; beyond the last
/// point it loses at least as much as there.
/// A device counts with its greatest resistance, one that is not stated with none; wires in the box do not count, and of a
/// fuse the cold resistance does. What depends on the temperature inside is the resistance of a resettable fuse alone
/// (<see cref="ResettableFuse.MaximumResistanceIn"/>); data sheets state efficiency at one temperature.
/// </remarks>
public sealed class BoxLosses
{
    private readonly double _volts, _amperes, _efficiency, _ratedAmperes;
    private readonly List<(double Amperes, ProtectiveDevice Device)> _devices;

    private BoxLosses(SupplyOutput output, double load, double efficiency, List<(double Amperes, ProtectiveDevice Device)> devices)
    {
        _ratedAmperes = output.RatedAmperes;
        _amperes = load * output.RatedAmperes;
        _volts = output.HighestVoltsAt(_amperes);
        _efficiency = efficiency;
        _devices = devices;
        AirCelsius = ResettableFuse.SheetCelsius;
    }

    private BoxLosses(BoxLosses from)
    {
        _volts = from._volts;
        _ratedAmperes = from._ratedAmperes;
        _amperes = from._amperes;
        _efficiency = from._efficiency;
        _devices = from._devices;
        AreOwnAtLeast = from.AreOwnAtLeast;
        IsAtLeast = from.IsAtLeast;
        AirCelsius = from.AirCelsius;
        NeighborWatts = from.NeighborWatts;
        OtherWatts = from.OtherWatts;
    }

    /// <summary>Lost in the supply: what it gives times (1/efficiency − 1). [W]</summary>
    public Power Supply => Power.FromWatts(SupplyWatts);

    /// <summary>Lost in the protective devices: I²R of each output in use, a resettable fuse as warm as the air inside. [W]</summary>
    public Power Devices => Power.FromWatts(DeviceWatts);

    /// <summary>Lost by the supplies and the protective devices of the other boxes of the cabinet; none where the box is alone.
    /// [W]</summary>
    public Power Neighbors => Power.FromWatts(NeighborWatts);

    /// <summary>Given off by what else runs in the enclosure; with it, where the box has a reserve, what is lost in the diode and what the
    /// reserve takes in at rest. [W]</summary>
    public Power Other => Power.FromWatts(OtherWatts);

    /// <summary>All of it. [W]</summary>
    public Power Total => Power.FromWatts(TotalWatts);

    /// <summary>Whether the supply, or that of another box in the cabinet, is loaded beyond the last point of its efficiency curve: at
    /// least this is lost.</summary>
    public bool IsAtLeast { get; private init; }

    /// <summary>Whether it is the supply of the box itself.</summary>
    internal bool AreOwnAtLeast { get; private init; }

    private double TotalWatts => OwnWatts + NeighborWatts + OtherWatts;

    /// <summary>Losses of the box itself. [W]</summary>
    internal double OwnWatts => SupplyWatts + DeviceWatts;

    /// <summary>The hottest air that still makes a difference; the coldest that there is where none does. [°C]</summary>
    internal double DependsUpToCelsius =>
        _devices.Select(d => d.Device.ResistanceGrowsUpToCelsius).DefaultIfEmpty(double.NegativeInfinity).Max();

    private double SupplyWatts => _volts * _amperes * ((1 / _efficiency) - 1);

    private double DeviceWatts =>
        _devices.Sum(d => d.Amperes * d.Amperes * d.Device.GreatestOhms * d.Device.ResistanceGrowthIn(AirCelsius));

    private double NeighborWatts { get; init; }

    private double OtherWatts { get; init; }

    private double AirCelsius { get; init; }

    /// <summary>The losses at a total current and the current of each output, in air of 20 °C; null where no efficiency is
    /// declared.</summary>
    internal static BoxLosses? Of(DistributionBox box, double totalAmperes, IEnumerable<(BoxOutput Output, double Amperes)> outputs)
    {
        SupplyOutput output = box.Supply.Output;
        if (box.Supply.Input?.Efficiency is not ShareCurve<Ratio> curve) return null;
        double asked = totalAmperes / output.RatedAmperes, load = Math.Min(Math.Max(asked, curve.Lowest), curve.Highest);
        double efficiency = curve.ShareAt(load)!.Value;
        List<(double, ProtectiveDevice)> devices = [.. outputs
            .Select(o => (o.Amperes, Protection: o.Output.Protection ?? ProtectiveDevice.None)).Where(d => d.Protection.GreatestOhms > 0)];
        bool isBeyond = Limits.IsAbove(asked, curve.Highest);
        return new BoxLosses(output, load, efficiency, devices) { AreOwnAtLeast = isBeyond, IsAtLeast = isBeyond,
            OtherWatts = (box.Enclosure?.OtherWatts ?? 0) + box.ReserveWattsAt(totalAmperes) };
    }

    /// <summary>The same losses in air of a temperature.</summary>
    internal BoxLosses InAirOf(double celsius) => new(this) { AirCelsius = celsius };

    /// <summary>The same losses beside those of the other boxes of a cabinet.</summary>
    internal BoxLosses Beside(IReadOnlyList<BoxLosses> neighbors) =>
        new(this) { NeighborWatts = neighbors.Sum(n => n.OwnWatts), IsAtLeast = AreOwnAtLeast || neighbors.Any(n => n.AreOwnAtLeast) };

    /// <summary>How it was worked out.</summary>
    public Derivation Explain() => new("losses in the box", Steps(), ToString());

    /// <summary>The parts and their sum in the invariant culture; never throws.</summary>
    public override string ToString()
    {
        string neighbors = NeighborWatts > 0 ? FormattableString.Invariant($", neighbors {NeighborWatts:0.00} W") : string.Empty;
        string atLeast = IsAtLeast ? "at least " : string.Empty;
        return FormattableString.Invariant($"{atLeast}{TotalWatts:0.00} W: supply {SupplyWatts:0.00} W, devices {DeviceWatts:0.00} W")
            + neighbors + FormattableString.Invariant($", other {OtherWatts:0.00} W");
    }

    internal IEnumerable<DerivationStep> Steps()
    {
        string load = FormattableString.Invariant($"{100 * _amperes / _ratedAmperes:0.#} % of its rating");
        yield return new("Ps", AreOwnAtLeast
            ? $"Lost in the supply at least: at {load}, where its declared efficiency ends"
            : $"Lost in the supply, loaded to {load}", "V*I*(1/eta - 1)",
            @"P_s = V\,I\left(\frac{1}{\eta} - 1\right)", $"{Number(_volts)}*{Number(_amperes)}*(1/{Number(_efficiency)} - 1)", SupplyWatts,
                "W", Sources.EfficiencyLoss);
        foreach (double growth in _devices.Select(d => d.Device.ResistanceGrowthIn(AirCelsius)).Where(g => g > 1).Distinct())
        {
            yield return GrowthStep(growth);
        }

        if (_devices.Count > 0)
        {
            yield return new("Pd", "Lost in the devices of the outputs", "sum of I^2*R*g", @"P_d = \sum I^2 R\,g",
                string.Join(" + ", _devices.Select(
                    d => $"{Number(d.Amperes)}^2*{Number(d.Device.GreatestOhms)}*{Number(d.Device.ResistanceGrowthIn(AirCelsius))}")),
                DeviceWatts, "W", Sources.Kirchhoff);
        }

        yield return new("Q", NeighborWatts > 0
            ? "Heat lost in the cabinet, Pn of it by the other boxes"
            : "Heat lost in the box", "Ps + Pd + Pn + Po", "Q = P_s + P_d + P_n + P_o",
            $"{Number(SupplyWatts)} + {Number(DeviceWatts)} + {Number(NeighborWatts)} + {Number(OtherWatts)}", TotalWatts, "W",
                Sources.EnclosureHeatBalance);
    }

    private static DerivationStep GrowthStep(double growth)
    {
        double perKelvin = ResettableFuse.GrowthPerKelvin;
        double celsius = ResettableFuse.SheetCelsius + ((growth - 1) / perKelvin);
        return new("g", FormattableString.Invariant(
            $"Resistance of a resettable fuse in air of {celsius:0.0} °C over that at {ResettableFuse.SheetCelsius} °C"),
            "1 + alpha*(T - T0)",
            @"g = 1 + \alpha\,(T - T_0)", $"1 + {Number(perKelvin)}*({Number(celsius)} - {Number(ResettableFuse.SheetCelsius)})", growth,
                string.Empty, Sources.GenericResettableResistance);
    }
}
