using System.Collections.Generic;

namespace CamPower.Faults;

/// <summary>Conductors that a fault heats together.</summary>
/// <param name="Cases">The currents that may flow through them.</param>
/// <param name="Conductors">The conductors.</param>
internal readonly record struct HeatedPiece(IReadOnlyList<FaultCase> Cases, IReadOnlyList<LaidConductor> Conductors);
