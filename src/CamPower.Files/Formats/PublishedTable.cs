using System;
using System.Linq;

namespace CamPower.Files.Formats;

/// <summary>A table of the library that states the resistance of conductors, by the name that its figures have.</summary>
internal sealed class PublishedTable(string name, Func<WireSize, Stranding, ConductorMaterial, Conductor> lookUp)
{
    internal static PublishedTable[] All { get; } =
    [
        new("IEC 60228 maximum", Conductor.AtIecMaximum),
        new("IEC 60228 maximum, metal-coated", (size, stranding, _) => Conductor.CoatedAtIecMaximum(size, stranding)),
        new("NEC Chapter 9 Table 8, coated", (size, stranding, _) => Conductor.NecCoatedCopper(size, stranding)),
    ];

    internal string Name => name;

    /// <summary>The table that a conductor's resistance is taken from.</summary>
    /// <exception cref="NotSupportedException">It is taken from a table of the user's own.</exception>
    internal static PublishedTable Of(Conductor conductor) => All.FirstOrDefault(table => table.Holds(conductor))
        ?? throw new NotSupportedException(
            $"A site file cannot express the resistance '{conductor.Basis}' of {conductor}: it knows the tables of the library.");

    /// <summary>A conductor whose resistance is as the table states it.</summary>
    /// <exception cref="ArgumentException">The table has no such conductor.</exception>
    internal Conductor LookUp(WireSize size, Stranding stranding, ConductorMaterial material)
    {
        Conductor found = lookUp(size, stranding, material);
        return found.Material == material
            ? found
            : throw new ArgumentException($"{name} is of {found.Material}, not of {material}.", nameof(material));
    }

    private bool Holds(Conductor conductor)
    {
        if (!string.Equals(conductor.Basis.Name, name, StringComparison.Ordinal)) return false;
        try
        {
            var here = (TabulatedResistance)LookUp(conductor.Size, conductor.Stranding, conductor.Material).Basis;
            var there = (TabulatedResistance)conductor.Basis;
            return here.PerLength == there.PerLength && here.Source == there.Source && here.IsMaximum == there.IsMaximum
                && here.At.DegreesCelsius.Equals(there.At.DegreesCelsius);
        }
        catch (ArgumentException)
        {
            return false;
        }
    }
}
