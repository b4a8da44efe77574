using System.Collections.Generic;
using System.Linq;

namespace CamPower.Tolerance;

/// <summary>A run whose resistance depends on the deviations of its reel, its length, its joints and its temperature. SI doubles.</summary>
internal sealed class UncertainRun
{
    private readonly Piece[] _pieces;
    private readonly double _jointOhms;
    private readonly int _length, _joints, _temperature;
    private readonly double _celsius;

    internal UncertainRun(SiteRun run, UncertainParts parts, double celsius)
    {
        _pieces = [.. run.Run.Segments.Select(s => new Piece(s, parts.ReelOf(s.Cable)))];
        _jointOhms = run.Run.Parts.OfType<Joint>().Sum(j => j.OhmsAt20C);
        _length = parts.LengthOf(run);
        _joints = parts.JointsOf(run);
        _temperature = parts.Temperature;
        _celsius = celsius;
    }

    /// <summary>The places of what it depends on.</summary>
    internal IEnumerable<int> Places => _pieces.Select(p => p.Reel).Concat([_temperature, _length, _joints])
        .Where(place => place != UncertainParts.None);

    /// <summary>Resistance out and back. [Ω]</summary>
    internal double Ohms(double[] deviations) => OutgoingOhms(deviations) + ReturnOhms(deviations);

    /// <summary>Resistance of the outgoing pole alone; a joint counts half in each pole. [Ω]</summary>
    internal double OutgoingOhms(double[] deviations)
    {
        double above20 = _celsius + deviations[_temperature] - Celsius.Reference, ohms = 0;
        foreach (Piece piece in _pieces)
        {
            ohms += (piece.OutgoingAt20C + (piece.OutgoingPerKelvin * above20)) * (1 + deviations[piece.Reel]);
        }

        return (ohms * (1 + deviations[_length])) + HalfOfJoints(deviations);
    }

    /// <summary>Resistance of the return pole alone. [Ω]</summary>
    internal double ReturnOhms(double[] deviations)
    {
        double above20 = _celsius + deviations[_temperature] - Celsius.Reference, ohms = 0;
        foreach (Piece piece in _pieces)
        {
            ohms += (piece.ReturnAt20C + (piece.ReturnPerKelvin * above20)) * (1 + deviations[piece.Reel]);
        }

        return (ohms * (1 + deviations[_length])) + HalfOfJoints(deviations);
    }

    private double HalfOfJoints(double[] deviations) =>
        _joints == UncertainParts.None ? 0 : _jointOhms / 2 * (1 + deviations[_joints]);

    // A length of cable: ohms at 20 °C and their growth, and the place of its reel.
    private sealed class Piece(CableSegment segment, int reel)
    {
        internal readonly double OutgoingAt20C = segment.OneWayLength.Meters * segment.Cable.Outgoing.OhmsPerMeterAt20C,
            OutgoingPerKelvin = segment.OneWayLength.Meters * segment.Cable.Outgoing.OhmsPerMeterPerKelvin,
            ReturnAt20C = segment.OneWayLength.Meters * segment.Cable.Return.OhmsPerMeterAt20C,
            ReturnPerKelvin = segment.OneWayLength.Meters * segment.Cable.Return.OhmsPerMeterPerKelvin;

        internal readonly int Reel = reel;
    }
}
