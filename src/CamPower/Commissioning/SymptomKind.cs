namespace CamPower.Commissioning;

/// <summary>What was seen.</summary>
internal enum SymptomKind
{
    Works,
    Dark,
    Restarts,
    FlickersAtDusk,
    HumBars,
    DimInfrared,
    WorksOnTheBench,
    SeveralAtOnce,
}
