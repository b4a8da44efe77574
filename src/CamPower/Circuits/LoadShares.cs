using System;
using System.Collections.Generic;

namespace CamPower.Circuits;

/// <summary>The loads of a network as rows of SI doubles, the form that the solvers read.</summary>
/// <remarks>
/// A load that draws the larger of two components is in its row with the share that is the larger at the
/// voltages last given to <see cref="ChooseLarger"/>; so one formula serves every load.
/// </remarks>
internal sealed class LoadShares
{
    private readonly double _powerScale;
    private readonly int[] _largerOf;
    private readonly LoadRow[] _larger;

    /// <summary>The loads, each in the row that <paramref name="rowOf"/> gives for it; the other rows stay empty.</summary>
    internal LoadShares(IReadOnlyList<Load> loads, int[] rowOf, int rows, double powerScale = 1, double otherScale = 1)
    {
        _powerScale = powerScale;
        Rows = new LoadRow[rows];
        var largerOf = new List<int>();
        for (int k = 0; k < loads.Count; k++)
        {
            Load load = loads[k];
            Rows[rowOf[k]] = new LoadRow
            {
                Watts = load.Watts * powerScale,
                Amperes = load.Amperes * otherScale,
                Siemens = load.Siemens * otherScale,
                WattsPerScale = load.Watts,
            };
            if (load.IsLargerOf) largerOf.Add(rowOf[k]);
        }

        _largerOf = [.. largerOf];
        _larger = Array.ConvertAll(_largerOf, row => Rows[row]);
    }

    /// <summary>Rows that are at hand already, none of which draws the larger of two.</summary>
    internal LoadShares(LoadRow[] rows)
    {
        _powerScale = 1;
        Rows = rows;
        _largerOf = [];
        _larger = [];
    }

    internal LoadRow[] Rows { get; }

    /// <summary>Puts the share that is the larger at these voltages in place, for the loads that draw the larger of two.</summary>
    internal void ChooseLarger(double[] volts)
    {
        for (int k = 0; k < _largerOf.Length; k++)
        {
            LoadRow both = _larger[k];
            bool power = both.WattsPerScale * _powerScale > both.Amperes * volts[_largerOf[k]];
            Rows[_largerOf[k]] = power
                ? new LoadRow { Watts = both.WattsPerScale * _powerScale, WattsPerScale = both.WattsPerScale }
                : new LoadRow { Amperes = both.Amperes };
        }
    }
}
