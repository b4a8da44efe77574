using System.Globalization;
using UnitsNet;

namespace CamPower.Reports.Verdicts;

/// <summary>A quantity as a number of the one unit that the JSON has for it.</summary>
internal readonly record struct UnitNumber(double Number, string Unit)
{
    /// <remarks>A quantity that no rule of the package measures keeps its own unit.</remarks>
    internal static UnitNumber Of(IQuantity quantity) => quantity switch
    {
        ElectricPotential voltage => new(voltage.Volts, "V"),
        ElectricCurrent current => new(current.Amperes, "A"),
        Power power => new((double)power.Watts, "W"),
        ElectricApparentPower apparent => new(apparent.Voltamperes, "VA"),
        Temperature temperature => new(temperature.DegreesCelsius, "°C"),
        Ratio share => new(share.Percent, "%"),
        Length length => new(length.Meters, "m"),
        Area area => new(area.SquareMillimeters, "mm²"),
        Duration time => new(time.Seconds, "s"),
        ElectricResistance resistance => new(resistance.Ohms, "Ω"),
        Irradiance sun => new(sun.WattsPerSquareMeter, "W/m²"),
        Scalar number => new(number.Amount, ""),
        _ => new((double)quantity.Value, quantity.ToString("a", CultureInfo.InvariantCulture)),
    };
}
