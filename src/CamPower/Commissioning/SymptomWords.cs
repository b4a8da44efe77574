using System.Linq;

namespace CamPower.Commissioning;

/// <summary>Symptoms as people write them.</summary>
internal static class SymptomWords
{
    internal static SymptomKind[] OfDevices { get; } =
    [
        SymptomKind.Works, SymptomKind.Dark, SymptomKind.Restarts, SymptomKind.FlickersAtDusk, SymptomKind.HumBars, SymptomKind.DimInfrared,
        SymptomKind.WorksOnTheBench,
    ];

    internal static string All => string.Join(", ", OfDevices.Select(Of));

    internal static string Of(SymptomKind kind) => kind switch
    {
        SymptomKind.Works => "works",
        SymptomKind.Dark => "dark",
        SymptomKind.Restarts => "restarts",
        SymptomKind.FlickersAtDusk => "flickers at dusk",
        SymptomKind.HumBars => "hum bars",
        SymptomKind.DimInfrared => "dim infrared",
        SymptomKind.WorksOnTheBench => "works on the bench",
        _ => "several at once",
    };
}
