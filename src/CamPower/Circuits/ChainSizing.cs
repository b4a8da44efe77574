using System;
using System.Collections.Generic;
using System.Linq;
using UnitsNet;

namespace CamPower.Circuits;

/// <summary>Chooses sizes for the pieces of a chain by the voltage at its cameras.</summary>
internal sealed class ChainSizing
{
    private readonly CameraChain _chain;
    private readonly WireSize[] _sizes;
    private readonly ElectricPotential _from;
    private readonly double _lowestVolts;
    private readonly Temperature _conductorAt;
    private readonly double[] _meters;
    private WireSize[]? _best;
    private double _leastVolume = double.PositiveInfinity;

    internal ChainSizing(
        CameraChain chain, IEnumerable<WireSize> sizes, ElectricPotential from, ElectricPotential lowest, Temperature conductorAt)
    {
        _chain = chain;
        _sizes = [.. Require.NotNull(sizes, nameof(sizes)).OrderBy(size => size)];
        if (_sizes.Length == 0) throw new ArgumentException("There is no size to choose from.", nameof(sizes));
        Require.Positive(_sizes[0].SquareMeters, nameof(sizes), "m²");
        Require.SourceVolts(from.Volts, nameof(from));
        _from = from;
        _lowestVolts = Require.SourceVolts(lowest.Volts, nameof(lowest));
        _conductorAt = conductorAt;
        _meters = [.. chain.Links.Select(link => link.Run.OneWayMeters)];
    }

    internal WireSize? OneForAll() => _sizes.Select(size => (WireSize?)size)
        .FirstOrDefault(size => IsEnough([.. _chain.Links.Select(_ => size!.Value)]));

    internal IReadOnlyList<WireSize>? OneForEach()
    {
        Choose(new WireSize[_meters.Length], link: 0, largest: _sizes.Length - 1, volume: 0);
        return _best;
    }

    // From the source on, no piece larger than the one before it. What is left open counts as the size before for the voltage, the best
    // that it can be, and as the smallest for the volume.
    private void Choose(WireSize[] chosen, int link, int largest, double volume)
    {
        if (link == _meters.Length)
        {
            _best = [.. chosen];
            _leastVolume = volume;
            return;
        }

        for (int s = 0; s <= largest; s++)
        {
            double least = volume + (_meters[link] * _sizes[s].SquareMeters) + (_meters.Skip(link + 1).Sum() * _sizes[0].SquareMeters);
            if (least >= _leastVolume) break;
            for (int open = link; open < chosen.Length; open++) chosen[open] = _sizes[s];
            if (IsEnough(chosen)) Choose(chosen, link + 1, s, volume + (_meters[link] * _sizes[s].SquareMeters));
        }
    }

    private bool IsEnough(IReadOnlyList<WireSize> sizes)
    {
        var chain = new CameraChain([.. _chain.Links.Select((link, i) => new ChainLink(link.Run.WithSize(sizes[i]), link.Load))]);
        ChainResult result = chain.Feed(_from, _conductorAt);
        return result.HasOperatingPoint && result.Taps.All(tap => !Limits.IsBelow(tap.Volts, _lowestVolts));
    }
}
