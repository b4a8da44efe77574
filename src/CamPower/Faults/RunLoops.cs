using System.Collections.Generic;
using System.Linq;

namespace CamPower.Faults;

/// <summary>Where along a run it may be shorted: before each of its parts, and at its end.</summary>
internal sealed class RunLoops
{
    private readonly IReadOnlyList<RunPart> _parts;
    private readonly FaultLoop[] _before;

    /// <param name="start">The loop to the origin of the run.</param>
    /// <param name="run">The run.</param>
    /// <param name="installationMethod">The installation method; null where it is not stated.</param>
    /// <param name="air">The conditions.</param>
    internal RunLoops(FaultLoop start, CableRun run, InstallationMethod? installationMethod, IReadOnlyList<FaultAir> air)
    {
        _parts = run.Parts;
        _before = new FaultLoop[_parts.Count + 1];
        _before[0] = start;
        for (int i = 0; i < _parts.Count; i++) _before[i + 1] = _before[i].Then(_parts[i], installationMethod, air);
    }

    internal FaultLoop End => _before[_parts.Count];

    /// <summary>The end of the first piece of cable; none where the run has none.</summary>
    internal IReadOnlyList<FaultLoop> FirstPiece => PieceFrom(0);

    /// <summary>Every joint, before its own resistance, and every change from one cable to another.</summary>
    internal IEnumerable<FaultLoop> Within()
    {
        for (int i = 0; i < _parts.Count; i++)
        {
            if (_parts[i] is Joint joint) yield return _before[i].EndingAt(joint.Name, PieceFrom(i));
            else if (i > 0 && IsPiece(_parts[i - 1]) && IsPiece(_parts[i]))
                yield return _before[i].EndingAt("change of cable", PieceFrom(i));
        }
    }

    private IReadOnlyList<FaultLoop> PieceFrom(int first) =>
        [.. Enumerable.Range(first, _parts.Count - first).Where(i => IsPiece(_parts[i])).Take(1).Select(i => _before[i + 1])];

    private static bool IsPiece(RunPart part) => part is CableSegment && part.OneWayLength.Meters > 0;
}
