using System;
using System.Collections.Generic;

namespace CamPower.Tests.Reference;

/// <summary>The units that the sources print, as multiples of the SI unit, written down apart from the library's own conversions.</summary>
internal static class SiUnits
{
    private const double Foot = 0.3048, Inch = 0.0254, CircularMil = Math.PI / 4 * 2.54e-5 * 2.54e-5;

    private static readonly Dictionary<string, double> InSi = new()
    {
        ["1"] = 1, ["AWG"] = 1, ["%"] = 0.01, ["% of Vs"] = 0.01, ["% of rating"] = 0.01,
        ["m"] = 1, ["mm"] = 1e-3, ["ft"] = Foot, ["in"] = Inch,
        ["mm2"] = 1e-6, ["cmil"] = CircularMil,
        ["V"] = 1, ["A"] = 1, ["mA"] = 1e-3, ["W"] = 1, ["VA"] = 1,
        ["A s^0.5/mm2"] = 1e6, ["s"] = 1, ["min"] = 60, ["h"] = 3600, ["Ah"] = 3600,
        ["ohm"] = 1, ["microohm"] = 1e-6,
        ["ohm/km"] = 1e-3, ["ohm/kft"] = 1e-3 / Foot, ["ohm/100 m"] = 1e-2,
        ["ohm/km per ohm/kft"] = 1e-3 / (1e-3 / Foot) / Foot,
        ["ohm m"] = 1, ["ohm mm2/m"] = 1e-6, ["microohm cm"] = 1e-8, ["ohm cmil/ft"] = CircularMil / Foot,
        ["ohm g/m2"] = 1e-3, ["lb/kft"] = 0.45359237 / (1000 * Foot),
        ["g/cm3"] = 1e3, ["lb/in3"] = 0.45359237 / (Inch * Inch * Inch), ["J/(g K)"] = 1e3,
        ["MS/m"] = 1e6, ["% IACS"] = 58e4, ["1/K"] = 1, ["°C"] = 1,
    };

    internal static double Factor(string unit) =>
        InSi.TryGetValue(unit, out double factor) ? factor : throw new ArgumentException($"'{unit}' is no unit of the reference tables.", nameof(unit));
}
