using System;
using UnitsNet;

namespace Classroom.Bench;

/// <summary>The unit that temperatures are typed and shown in.</summary>
public sealed class TemperatureScale
{
    private readonly Func<double, Temperature> _from;
    private readonly Func<Temperature, double> _to;

    private TemperatureScale(string symbol, string name, double coldest, double hottest, Func<double, Temperature> from, Func<Temperature, double> to)
    {
        Symbol = symbol;
        Name = name;
        Coldest = coldest;
        Hottest = hottest;
        _from = from;
        _to = to;
    }

    public static TemperatureScale Celsius { get; } =
        new("°C", "degrees Celsius", -40, 90, v => Temperature.FromDegreesCelsius(v), t => t.DegreesCelsius);

    public static TemperatureScale Fahrenheit { get; } =
        new("°F", "degrees Fahrenheit", -40, 194, v => Temperature.FromDegreesFahrenheit(v), t => t.DegreesFahrenheit);

    public string Symbol { get; }

    public string Name { get; }

    /// <summary>The lower end of the slider. A lower temperature can be typed.</summary>
    public double Coldest { get; }

    /// <summary>The upper end of the slider. A higher temperature can be typed.</summary>
    public double Hottest { get; }

    public Temperature From(double value) => _from(value);

    public double In(Temperature temperature) => _to(temperature);
}
