using System;
using System.Collections.Generic;
using System.Linq;

namespace CamPower;

/// <summary>Straight lines between points: the one interpolation. Outside its ends it says nothing.</summary>
internal sealed class PiecewiseLinear
{
    private readonly double[] _at, _value;

    /// <summary>States the points.</summary>
    /// <exception cref="ArgumentException">There are fewer than two, or they do not rise.</exception>
    internal PiecewiseLinear(IEnumerable<double> at, IEnumerable<double> value, string parameter)
    {
        _at = [.. at];
        _value = [.. value];
        if (_at.Length < 2) throw new ArgumentException("A curve needs at least two points.", parameter);
        if (_at.Zip(_at.Skip(1), (low, high) => high > low).Contains(false))
        {
            throw new ArgumentException("The points of a curve must rise, each beyond the one before it.", parameter);
        }
    }

    internal double Lowest => _at[0];

    internal double Highest => _at[_at.Length - 1];

    /// <summary>The value between the points, exactly theirs at them; null outside.</summary>
    internal double? At(double at)
    {
        if (!(at >= Lowest && at <= Highest)) return null;
        int above = 1;
        while (_at[above] < at) above++;
        double along = (at - _at[above - 1]) / (_at[above] - _at[above - 1]);
        return ((1 - along) * _value[above - 1]) + (along * _value[above]);
    }
}
