using System;
using System.Linq;
using UnitsNet;

namespace CamPower.Circuits;

/// <summary>The same run with other lengths or sizes in it.</summary>
internal static class RunResizing
{
    /// <summary>The last length of cable in a run: the one that grows when a run is made longer.</summary>
    internal static CableSegment LastSegment(this CableRun run) => run.Segments.Last();

    /// <summary>The run with its last length of cable as long as asked.</summary>
    internal static CableRun WithLastSegment(this CableRun run, double oneWayMeters)
    {
        CableSegment last = run.LastSegment();
        var changed = new CableSegment(last.Cable, Length.FromMeters(oneWayMeters));
        return new CableRun([.. run.Parts.Select(p => ReferenceEquals(p, last) ? changed : p)]);
    }

    /// <summary>The run with every conductor of every cable of one size; strandings, materials, lengths, joints and wires in parallel stay.</summary>
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

    private static Cable Resized(Cable cable, WireSize size)
    {
        Conductor outgoing = Resized(cable.Outgoing, size);
        return new Cable(outgoing, ReferenceEquals(cable.Outgoing, cable.Return) ? outgoing : Resized(cable.Return, size), cable.IsPreTerminated);
    }

    private static Conductor Resized(Conductor conductor, WireSize size) => conductor.Basis is NominalArea
        ? new Conductor(size, conductor.Stranding, conductor.Material).InParallel(conductor.Count)
        : throw new ArgumentException($"Other sizes can be asked for only where resistance follows from the nominal area: {conductor} has its own from a table.", nameof(conductor));
}
