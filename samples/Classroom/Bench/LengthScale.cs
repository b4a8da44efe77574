using System;
using UnitsNet;

namespace Classroom.Bench;

/// <summary>The unit that lengths are typed and shown in.</summary>
public sealed class LengthScale
{
    private readonly Func<double, Length> _from;
    private readonly Func<Length, double> _to;

    private LengthScale(string symbol, string name, double longest, int roundStep, Func<double, Length> from, Func<Length, double> to)
    {
        Symbol = symbol;
        Name = name;
        Longest = longest;
        RoundStep = roundStep;
        _from = from;
        _to = to;
    }

    public static LengthScale Feet { get; } = new("ft", "feet", 500, 10, v => Length.FromFeet(v), l => l.Feet);

    public static LengthScale Meters { get; } = new("m", "meters", 150, 3, v => Length.FromMeters(v), l => l.Meters);

    public string Symbol { get; }

    public string Name { get; }

    /// <summary>The far end of the slider. A longer length can be typed.</summary>
    public double Longest { get; }

    /// <summary>Lengths in exercises are multiples of this.</summary>
    public int RoundStep { get; }

    public Length From(double value) => _from(value);

    public double In(Length length) => _to(length);
}
