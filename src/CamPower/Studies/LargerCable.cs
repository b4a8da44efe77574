using System.Collections.Generic;
using System.Linq;
using static System.FormattableString;

namespace CamPower.Studies;

/// <summary>A cable of more copper in the place of another one: a larger size that is sold, or the same once more in parallel.</summary>
internal static class LargerCable
{
    /// <summary>The run with every smaller cable of it in a size; the same run where it has none.</summary>
    internal static CableRun InSize(CableRun run, WireSize size) =>
        new([.. run.Parts.Select(part => part is CableSegment segment && IsSmaller(segment.Cable, size)
            ? new CableSegment(InSize(segment.Cable, size), segment.OneWayLength)
            : part)]);

    /// <summary>The run with every cable of it twice.</summary>
    internal static CableRun Doubled(CableRun run) =>
        new([.. run.Parts.Select(part => part is CableSegment segment
            ? new CableSegment(Doubled(segment.Cable), segment.OneWayLength)
            : part)]);

    /// <summary>The run with what is of aluminum in copper of the same size.</summary>
    internal static CableRun InCopper(CableRun run) =>
        new([.. run.Parts.Select(part => part is CableSegment segment && IsNotOfCopper(segment.Cable)
            ? new CableSegment(InSize(segment.Cable, segment.Cable.Outgoing.Size), segment.OneWayLength)
            : part)]);

    internal static bool IsNotOfCopper(CableRun run) => run.Segments.Any(segment => IsNotOfCopper(segment.Cable));

    /// <summary>The sizes of a list that are larger than some cable of the run and of its series, the smallest first.</summary>
    internal static IEnumerable<WireSize> SizesFor(CableRun run, IEnumerable<WireSize> sold) =>
        sold.Where(size => run.Segments.Any(s => IsSmaller(s.Cable, size) && size.Series == s.Cable.Outgoing.Size.Series));

    /// <summary>The lengths of cable that are new.</summary>
    internal static IEnumerable<CableSegment> NewIn(CableRun changed, CableRun old) =>
        changed.Segments.Zip(old.Segments, (now, before) => (now, before)).Where(x => x.now.Cable != x.before.Cable).Select(x => x.now);

    // What a table states of one size says nothing of another.
    private static bool IsSmaller(Cable cable, WireSize size) =>
        cable.Conductors.All(c => c.Basis is not TabulatedResistance && c.SquareMeters * (1 + 1e-9) < size.SquareMeters);

    private static bool IsNotOfCopper(Cable cable) => cable.Conductors.Any(c => c.Material.IsCopperCladAluminum)
        && cable.Conductors.All(c => c.Basis is not TabulatedResistance);

    private static Cable InSize(Cable cable, WireSize size)
    {
        ConductorMaterial material = cable.Conductors.Any(c => c.Material.IsCopperCladAluminum)
            ? ConductorMaterial.AnnealedCopper
            : cable.Outgoing.Material;
        var conductor = new Conductor(size, cable.Outgoing.Stranding, material);
        return new Cable(conductor, conductor, name: $"{size} pair", insulation: cable.Insulation, coax: cable.Coax);
    }

    private static Cable Doubled(Cable cable) => new(cable.Outgoing.InParallel(2), cable.Return.InParallel(2), cable.IsPreTerminated,
        Invariant($"2 × {cable}"), cable.Insulation, cable.Coax, cable.Source);
}
