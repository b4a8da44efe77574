using System;
using System.Collections.Generic;

namespace CamPower.Circuits;

/// <summary>The loads of a network as columns of SI doubles, the form that the solvers read.</summary>
/// <remarks>
/// A load that draws the larger of two shares stands in the columns with the share that is the larger at the
/// voltages last given to <see cref="ChooseLarger"/>; so one formula serves every load.
/// </remarks>
internal sealed class LoadShares
{
    private readonly double _powerScale;
    private readonly int[] _largerOf;
    private readonly double[] _largerWatts, _largerAmperes;

    /// <summary>The loads, each in the row that <paramref name="rowOf"/> gives for it; the other rows stay empty.</summary>
    internal LoadShares(IReadOnlyList<Load> loads, int[] rowOf, int rows, double powerScale = 1, double otherScale = 1)
    {
        _powerScale = powerScale;
        WattsPerScale = new double[rows];
        Watts = powerScale == 1 ? WattsPerScale : new double[rows];
        Amperes = new double[rows];
        Siemens = new double[rows];
        var largerOf = new List<int>();
        for (int k = 0; k < loads.Count; k++)
        {
            Load load = loads[k];
            int row = rowOf[k];
            WattsPerScale[row] = load.Watts;
            Watts[row] = load.Watts * powerScale;
            Amperes[row] = load.Amperes * otherScale;
            Siemens[row] = load.Siemens * otherScale;
            if (load.IsLargerOf) largerOf.Add(row);
        }

        _largerOf = [.. largerOf];
        _largerWatts = Array.ConvertAll(_largerOf, row => WattsPerScale[row]);
        _largerAmperes = Array.ConvertAll(_largerOf, row => Amperes[row]);
    }

    /// <summary>Constant-power share of each row before it is scaled. [W]</summary>
    internal double[] WattsPerScale { get; }

    internal double[] Watts { get; }

    internal double[] Amperes { get; }

    internal double[] Siemens { get; }

    /// <summary>Puts the share that is the larger at these voltages in place, for the loads that draw the larger of two.</summary>
    internal void ChooseLarger(double[] volts)
    {
        for (int k = 0; k < _largerOf.Length; k++)
        {
            int row = _largerOf[k];
            bool power = _largerWatts[k] * _powerScale > _largerAmperes[k] * volts[row];
            WattsPerScale[row] = power ? _largerWatts[k] : 0;
            Watts[row] = WattsPerScale[row] * _powerScale;
            Amperes[row] = power ? 0 : _largerAmperes[k];
        }
    }

    /// <summary>Current of the row at its voltage. [A]</summary>
    internal double AmperesAt(int row, double volts) => (Watts[row] / volts) + Amperes[row] + (Siemens[row] * volts);
}
