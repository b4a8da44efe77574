namespace CamPower.Circuits;

/// <summary>The cited numbers behind what takes alternating current.</summary>
internal static class AlternatingConstants
{
    /// <summary>Saturation current of a silicon rectifier. [A]</summary>
    internal static CitedValue DiodeSaturation { get; } =
        new("Saturation current of a silicon rectifier", 1e-8, "A", Sources.SiliconRectifier);

    /// <summary>Emission coefficient of a silicon rectifier. [1]</summary>
    internal static CitedValue DiodeEmission { get; } =
        new("Emission coefficient of a silicon rectifier", 1.9, "1", Sources.SiliconRectifier);

    /// <summary>Series resistance of a silicon rectifier. [Ω]</summary>
    internal static CitedValue DiodeResistance { get; } =
        new("Series resistance of a silicon rectifier", 0.03, "Ω", Sources.SiliconRectifier);

    /// <summary>The least usual capacitance behind a full-wave rectifier, for each watt. [µF/W]</summary>
    internal static CitedValue LeastFullWave { get; } =
        new("Least usual capacitance behind a full-wave rectifier", 20, "µF/W", Sources.CommonPractice);

    /// <summary>The largest usual capacitance behind a full-wave rectifier, for each watt. [µF/W]</summary>
    internal static CitedValue MostFullWave { get; } =
        new("Largest usual capacitance behind a full-wave rectifier", 250, "µF/W", Sources.CommonPractice);

    /// <summary>The least usual capacitance behind a half-wave rectifier, for each watt. [µF/W]</summary>
    internal static CitedValue LeastHalfWave { get; } =
        new("Least usual capacitance behind a half-wave rectifier", 50, "µF/W", Sources.CommonPractice);

    /// <summary>The largest usual capacitance behind a half-wave rectifier, for each watt. [µF/W]</summary>
    internal static CitedValue MostHalfWave { get; } =
        new("Largest usual capacitance behind a half-wave rectifier", 500, "µF/W", Sources.CommonPractice);
}
