using System;
using System.Collections.Generic;
using System.Linq;
using CamPower.Conductors;
using UnitsNet;

namespace CamPower.Circuits;

/// <summary>The same run with other lengths or sizes in it.</summary>
internal static class RunResizing
{
    /// <summary>The last length of cable in a run: the one that grows when a run is made longer.</summary>
    internal static CableSegment LastSegment(this CableRun run) => run.Segments.Last();

    /// <summary>All parts but the last length of cable, which may be in the run twice.</summary>
    internal static IEnumerable<RunPart> OtherParts(this CableRun run)
    {
        int last = run.LastSegmentIndex();
        return run.Parts.Where((_, i) => i != last);
    }

    /// <summary>The run with its last length of cable as long as asked.</summary>
    internal static CableRun WithLastSegment(this CableRun run, double oneWayMeters)
    {
        int last = run.LastSegmentIndex();
        var changed = new CableSegment(run.LastSegment().Cable, Length.FromMeters(oneWayMeters));
        return new CableRun([.. run.Parts.Select((p, i) => i == last ? changed : p)]);
    }

    /// <summary>The run with every conductor of every cable of one size; strandings, materials, lengths, joints and wires in parallel
    /// stay.</summary>
    /// <exception cref="ArgumentException">A conductor's resistance comes from a table, which says nothing of other sizes.</exception>
    internal static CableRun WithSize(this CableRun run, WireSize size) => new([.. run.Parts.Select(p => p is CableSegment s
        ? new CableSegment(Resized(s.Cable, size), s.OneWayLength)
        : p)]);

    /// <summary>Resistance of the joints alone. [Ω]</summary>
    internal static double JointOhms(this CableRun run) => run.Parts.OfType<Joint>().Sum(j => j.OhmsAt20C);

    /// <summary>Resistance of the cables alone times the area of every conductor, were they all of one. [Ω·m²]</summary>
    internal static double OhmSquareMeters(this CableRun run, double celsius)
    {
        var unit = WireSize.SquareMillimeters(1);
        return run.WithSize(unit).Segments.Sum(s => s.OhmsAt(celsius)) * unit.SquareMeters;
    }

    private static int LastSegmentIndex(this CableRun run) => Enumerable.Range(0, run.Parts.Count).Last(i => run.Parts[i] is CableSegment);

    private static Cable Resized(Cable cable, WireSize size)
    {
        Conductor outgoing = Resized(cable.Outgoing, size);
        return new Cable(outgoing, ReferenceEquals(cable.Outgoing, cable.Return)
            ? outgoing
            : Resized(cable.Return, size), cable.IsPreTerminated);
    }

    private static Conductor Resized(Conductor conductor, WireSize size) => conductor.Basis is NominalArea
        ? new Conductor(size, conductor.Stranding, conductor.Material).InParallel(conductor.Count)
        : throw new ArgumentException(
            $"Other sizes can be asked for only where resistance follows from the nominal area: {conductor} has its own from a table.",
            nameof(conductor));
}
