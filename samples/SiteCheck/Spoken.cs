using System;
using System.Collections.Generic;
using System.Linq;
using CamPower;
using UnitsNet;
using UnitsNet.Units;
using static System.FormattableString;

namespace SiteCheck;

/// <summary>Numbers as people say them. No meter in the field shows millivolts.</summary>
/// <remarks>UnitsNet's own texts need the names of all its units, and reading those takes longer than all the rest.</remarks>
internal static class Spoken
{
    public static string Celsius(Temperature temperature) => Invariant($"{temperature.DegreesCelsius:0} °C");

    public static string Volts(ElectricPotential volts) => Invariant($"{volts.Volts:0.00}");

    /// <summary>A length in the unit that it was measured in.</summary>
    public static string Length(Length length) =>
        length.Unit is LengthUnit.Foot or LengthUnit.Inch ? Invariant($"{length.Feet:0.#} ft") : Invariant($"{length.Meters:0.#} m");

    /// <summary>A length with every digit, as a schedule has it.</summary>
    public static string Exact(Length length) => length.Unit switch
    {
        LengthUnit.Foot => Invariant($"{length.Feet:R} ft"),
        LengthUnit.Inch => Invariant($"{length.Inches:R} in"),
        LengthUnit.Yard => Invariant($"{length.Yards:R} yd"),
        _ => Invariant($"{length.Meters:R} m"),
    };

    /// <summary>What a rule measured, as far as it is of a kind that is short to say; else nothing.</summary>
    public static string Short(IQuantity? quantity) => quantity switch
    {
        ElectricPotential volts => Invariant($"{volts.Volts:0.00} V"),
        ElectricCurrent amperes => Invariant($"{amperes.Amperes:0.00} A"),
        Power watts => Invariant($"{watts.Watts:0.##} W"),
        Temperature temperature => Celsius(temperature),
        _ => "",
    };

    /// <summary>Numbers in rising order, those in a row joined: 3, 4, 5 and 8 are 3-5, 8.</summary>
    public static string Numbers(IEnumerable<int> numbers)
    {
        IEnumerable<IGrouping<int, int>> rows = numbers.Select((number, place) => (number, place)).GroupBy(x => x.number - x.place, x => x.number);
        return string.Join(", ", rows.Select(row => row.Count() == 1 ? Invariant($"{row.First()}") : Invariant($"{row.First()}-{row.Last()}")));
    }

    /// <summary>Names, each of them whole; those above the most that are named are counted.</summary>
    public static string Names(IReadOnlyList<string> names, int most) =>
        names.Count <= most ? string.Join(", ", names) : Invariant($"{string.Join(", ", names.Take(most))} and {names.Count - most} more");

    /// <summary>The sizes on a way; several of one system share its name, as in "16 + 18 AWG".</summary>
    public static string Cable(IReadOnlyList<SiteRun> path)
    {
        IEnumerable<string> conductors = path.SelectMany(run => run.Run.Segments).Select(s => s.Cable.Outgoing)
            .Select(c => c.Size + (c.Material.IsCopperCladAluminum ? " copper-clad aluminum" : "")).Distinct();
        return string.Join(" + ", conductors).Replace(" AWG + ", " + ", StringComparison.Ordinal);
    }

    /// <summary>The whole length of a way, one way, in the unit of its first part.</summary>
    public static string Distance(IReadOnlyList<SiteRun> path) =>
        Length(path.SelectMany(run => run.Run.Segments).Select(s => s.OneWayLength).Aggregate((a, b) => a + b));
}
