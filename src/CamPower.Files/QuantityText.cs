using System;
using System.Linq;
using CamPower.Files.Formats;
using UnitsNet;

namespace CamPower.Files;

/// <summary>Reads a quantity as site files write it, for the arguments of programs and the fields of forms.</summary>
/// <remarks>Stateless; it may be called from many threads at once, in any culture.</remarks>
/// <example>
/// <code>
/// Length length = QuantityText.Read&lt;Length&gt;("120 ft");
/// </code>
/// </example>
public static class QuantityText
{
    private static readonly object[] Formats =
    [
        Quantities.Length, Quantities.Voltage, Quantities.Current, Quantities.Resistance, Quantities.Power, Quantities.Temperature,
        Quantities.Share, Quantities.Duration, Quantities.Capacitance, Quantities.Rise, Quantities.Area, Quantities.Sunlight,
            Quantities.Insulance,
    ];

    /// <summary>Reads a quantity: a number with a decimal point, at most one space, and a unit.</summary>
    /// <typeparam name="T">What is read: a length, voltage, current, resistance, power, temperature, ratio (in percent), duration,
    /// capacitance, temperature difference, area, irradiance or thermal resistance.</typeparam>
    /// <param name="text">The text, such as <c>30.5 m</c>.</param>
    /// <returns>The quantity in the unit that is written, of any sign: the range is for who takes it to check.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="text"/> is null.</exception>
    /// <exception cref="FormatException">The text is no such quantity: it has a comma, no unit or another unit. The message says what is
    /// wrong and names the accepted units, and is meant for the author of the text.</exception>
    /// <exception cref="NotSupportedException">Site files hold no quantity of this type.</exception>
    public static T Read<T>(string text)
        where T : struct, IQuantity
    {
        ArgumentNullException.ThrowIfNull(text);
        TextFormat<T> format = Formats.OfType<TextFormat<T>>().FirstOrDefault()
            ?? throw new NotSupportedException($"A site file holds no {typeof(T).Name}.");
        return format.Parse(text);
    }
}
