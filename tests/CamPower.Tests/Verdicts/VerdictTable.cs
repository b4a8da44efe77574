using System.Collections.Generic;

namespace CamPower.Tests.Verdicts;

/// <summary>Whole installations, and what an engineer would sign of each.</summary>
internal static class VerdictTable
{
    internal static IReadOnlyList<VerdictCase> All { get; } =
    [
        .. SoundBoxes.All, .. SoundProtection.All, .. SoundNeighbors.All, .. SoundYards.All, .. SoundMixtures.All,
        .. VoltageCases.All, .. StartCases.All, .. LoadCases.All, .. HeatCases.All, .. ConductorCases.All, .. ShortCases.All,
            .. InrushCases.All, .. WiringCases.All,
        .. PowerLimitCases.All, .. YardCases.All, .. MixtureCases.All, .. SecondLookCases.All,
    ];
}
