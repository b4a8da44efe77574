using System;
using System.Collections.Generic;
using System.Globalization;
using CamPower.Circuits;
using UnitsNet;

namespace CamPower.Tests.Circuits.Networks;

/// <summary>Invented networks of the shapes that the trade wires, the same for the same seed.</summary>
/// <remarks>System.Random with a seed gives the same numbers in every version of .NET, as its documentation of the
/// seeded algorithm promises for compatibility. Values are rounded to six digits, so that they are the same in a netlist.</remarks>
internal sealed class RandomNetworks(int seed)
{
    private readonly Random _random = new(seed);

    /// <summary>The shapes, by name.</summary>
    internal static readonly string[] Shapes =
        ["radial", "chain", "single-ended", "shared return", "tied returns", "grid", "two sources", "floating heaters"];

    /// <summary>A network of a shape whose constant power is a share of what would collapse it.</summary>
    internal DcNetwork Create(string shape, int loads, double shareOfCollapse, bool mixedShares, bool largerOf = false)
    {
        DcNetwork network = Describe(shape, loads, mixedShares, largerOf);
        double margin = network.MarginToCollapse()?.DecimalFractions ?? 1;
        return Scale(network, shareOfCollapse * margin, Round);
    }

    /// <summary>The same network with every constant-power component scaled.</summary>
    internal static DcNetwork Scale(DcNetwork network, double factor) => Scale(network, factor, watts => watts);

    private static DcNetwork Scale(DcNetwork network, double factor, Func<double, double> rounded)
    {
        var loads = new Dictionary<string, Load>(StringComparer.Ordinal);
        foreach (NetworkLoad load in network.Loads)
        {
            Power power = Power.FromWatts(rounded((double)load.Load.PowerComponent.Watts * factor));
            loads[load.Name] = load.Load.IsLargerOf
                ? Load.LargerOf(power, load.Load.CurrentComponent)
                : Shares((double)power.Watts, load.Load.CurrentComponent.Amperes, load.Load.ResistanceComponent?.Ohms);
        }

        return network.WithLoads(loads);
    }

    internal static Load Shares(double watts, double amperes, double? ohms)
    {
        Load load = Load.ConstantPower(Power.FromWatts(watts)) + Load.ConstantCurrent(ElectricCurrent.FromAmperes(amperes));
        return ohms is double r ? load + Load.ConstantResistance(ElectricResistance.FromOhms(r)) : load;
    }

    private static double Round(double value) =>
        double.Parse(value.ToString("E5", CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);

    private DcNetwork Describe(string shape, int loads, bool mixedShares, bool largerOf)
    {
        var builder = new DcNetworkBuilder();
        builder.AddSource("supply", "p0", "n0", Volts(shape == "two sources" ? 13 : Pick(12, 24, 48)),
            shape is "radial" or "two sources" ? Ohms(0.01, 0.1) : ElectricResistance.Zero);
        for (int i = 1; i <= loads; i++)
        {
            int from = shape switch
            {
                "chain" or "tied returns" => i - 1,
                "grid" => Math.Max(0, i - 1),
                _ => _random.Next(i),
            };
            AddPoles(builder, shape, i, from);
            builder.AddLoad($"load {i}", $"p{i}", shape == "single-ended" ? "n0" : $"n{i}", NewLoad(mixedShares, largerOf));
        }

        for (int h = 1; shape == "floating heaters" && h <= 1 + (loads / 4); h++)
        {
            // From one camera's positive to another's negative: neither is held at a voltage.
            string from = $"p{_random.Next(1, loads + 1)}", to = $"n{_random.Next(1, loads + 1)}";
            builder.AddLoad($"heater {h}", from, to, Load.ConstantResistance(Ohms(2, 60)));
        }

        if (shape == "two sources") builder.AddSource("second", $"p{loads}", $"n{loads}", Volts(12.9), Ohms(0.01, 0.1));
        return builder.Build("n0");
    }

    private void AddPoles(DcNetworkBuilder builder, string shape, int i, int from)
    {
        builder.AddBranch($"out {i}", $"p{from}", $"p{i}", Ohms(0.05, 0.8));
        if (shape == "single-ended") return;
        string back = shape is "shared return" or "floating heaters" ? $"n{_random.Next(i)}" : $"n{from}";

        // A conductor described from its far end now and then: its current is then negative.
        if (_random.Next(4) == 0) builder.AddBranch($"back {i}", $"n{i}", back, Ohms(0.05, 0.8));
        else builder.AddBranch($"back {i}", back, $"n{i}", Ohms(0.05, 0.8));

        if (shape == "tied returns")
        {
            // The video shield from the camera to the recorder, where all shields meet.
            builder.AddBranch($"shield {i}", $"n{i}", "recorder", Ohms(0.5, 3));
            if (i == 1) builder.AddBranch("recorder earth", "recorder", "n0", Ohms(0.01, 0.5));
        }

        if (shape != "grid" || i < 4) return;
        builder.AddBranch($"tie out {i}", $"p{i - 4}", $"p{i}", Ohms(0.05, 0.8));
        builder.AddBranch($"tie back {i}", $"n{i - 4}", $"n{i}", Ohms(0.05, 0.8));
    }

    private Load NewLoad(bool mixedShares, bool largerOf)
    {
        double watts = Between(0.5, 3);
        if (largerOf && _random.Next(3) == 0) return Load.LargerOf(Power.FromWatts(watts), ElectricCurrent.FromAmperes(Round(watts / 12)));
        if (!mixedShares) return Load.ConstantPower(Power.FromWatts(watts));
        double amperes = _random.Next(2) == 0 ? 0 : Between(0.001, 0.03), ohms = Between(200, 2000);
        return Shares(watts, amperes, _random.Next(2) == 0 ? null : ohms);
    }

    private double Between(double low, double high) => Round(low * Math.Pow(high / low, _random.NextDouble()));

    private ElectricResistance Ohms(double low, double high) => ElectricResistance.FromOhms(Between(low, high));

    private static ElectricPotential Volts(double volts) => ElectricPotential.FromVolts(volts);

    private double Pick(params double[] values) => values[_random.Next(values.Length)];
}
