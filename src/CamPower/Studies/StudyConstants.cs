namespace CamPower.Studies;

/// <summary>The cited numbers behind the choice of parts.</summary>
internal static class StudyConstants
{
    /// <summary>Spare outputs of a box, as a share of those in use. [%]</summary>
    internal static CitedValue SpareOutputs { get; } =
        new("Spare outputs of a box, share of those in use", 25, "%", Sources.SparePolicy);

    /// <summary>Continuous current of an output of a generic box, by its resettable fuse. [A]</summary>
    internal static CitedValue GenericOutputLimit { get; } =
        new("Limit of an output of a generic box", 1.1, "A", Sources.GenericBoxes);

    /// <summary>Lowest voltage that a generic box can be trimmed to, and its nominal one. [V]</summary>
    internal static CitedValue GenericTrimFrom { get; } =
        new("Lowest trim of a generic 12 V box", 12, "V", Sources.GenericBoxes);

    /// <summary>Highest voltage that a generic box can be trimmed to. [V]</summary>
    internal static CitedValue GenericTrimTo { get; } =
        new("Highest trim of a generic 12 V box", 14, "V", Sources.GenericBoxes);

    /// <summary>How far the output of a generic box may be off its set point. [%]</summary>
    internal static CitedValue GenericTolerance { get; } =
        new("Tolerance of a generic 12 V box", 2, "%", Sources.GenericBoxes);

    /// <summary>Efficiency of a generic box at a tenth of its rating. [%]</summary>
    internal static CitedValue GenericEfficiencyAtTenth { get; } =
        new("Efficiency of a generic box at a tenth of its rating", 75, "%", Sources.GenericBoxes);

    /// <summary>Efficiency of a generic box at half its rating. [%]</summary>
    internal static CitedValue GenericEfficiencyAtHalf { get; } =
        new("Efficiency of a generic box at half its rating", 85, "%", Sources.GenericBoxes);

    /// <summary>Efficiency of a generic box at its rating. [%]</summary>
    internal static CitedValue GenericEfficiencyAtRating { get; } =
        new("Efficiency of a generic box at its rating", 85, "%", Sources.GenericBoxes);

    /// <summary>Power factor of a generic box at a tenth of its rating. [%]</summary>
    internal static CitedValue GenericPowerFactorAtTenth { get; } =
        new("Power factor of a generic box at a tenth of its rating", 45, "%", Sources.GenericBoxes);

    /// <summary>Power factor of a generic box at half its rating. [%]</summary>
    internal static CitedValue GenericPowerFactorAtHalf { get; } =
        new("Power factor of a generic box at half its rating", 55, "%", Sources.GenericBoxes);

    /// <summary>Power factor of a generic box at its rating. [%]</summary>
    internal static CitedValue GenericPowerFactorAtRating { get; } =
        new("Power factor of a generic box at its rating", 60, "%", Sources.GenericBoxes);

    /// <summary>The work of one change, whatever it is. [points]</summary>
    internal static CitedValue NeutralVisit { get; } =
        new("Work of one change, neutral price", 5, "points", Sources.NeutralPrices);

    /// <summary>The work of pulling a meter of cable. [points/m]</summary>
    internal static CitedValue NeutralPulling { get; } =
        new("Pulling a meter of cable, neutral price", 1, "points/m", Sources.NeutralPrices);

    /// <summary>A meter of cable without its copper. [points/m]</summary>
    internal static CitedValue NeutralCable { get; } =
        new("Meter of cable without its copper, neutral price", 0.2, "points/m", Sources.NeutralPrices);

    /// <summary>The copper of a meter of cable. [points/(m·mm²)]</summary>
    internal static CitedValue NeutralSquareMillimeter { get; } =
        new("Meter of a square millimeter of conductor, neutral price", 0.1, "points/(m·mm²)", Sources.NeutralPrices);

    /// <summary>A supply, whatever its rating. [points]</summary>
    internal static CitedValue NeutralSupply { get; } =
        new("Supply without its rating, neutral price", 10, "points", Sources.NeutralPrices);

    /// <summary>What a supply costs more for each ampere of its rating. [points/A]</summary>
    internal static CitedValue NeutralAmpere { get; } =
        new("Ampere of supply, neutral price", 2, "points/A", Sources.NeutralPrices);

    /// <summary>An output of a box. [points]</summary>
    internal static CitedValue NeutralOutput { get; } =
        new("Output of a box, neutral price", 1, "points", Sources.NeutralPrices);

    /// <summary>A protective device. [points]</summary>
    internal static CitedValue NeutralProtection { get; } =
        new("Protective device, neutral price", 2, "points", Sources.NeutralPrices);

    /// <summary>A joint or a connector. [points]</summary>
    internal static CitedValue NeutralJoint { get; } =
        new("Joint or connector, neutral price", 1, "points", Sources.NeutralPrices);

    /// <summary>How far a generic electronic limit may be off. [%]</summary>
    internal static CitedValue NeutralLimitTolerance { get; } =
        new("Tolerance of a generic electronic limit", 10, "%", Sources.GenericElectronicLimits);

    /// <summary>When a generic electronic limit has opened. [ms]</summary>
    internal static CitedValue NeutralLimitTime { get; } =
        new("Longest opening time of a generic electronic limit", 5, "ms", Sources.GenericElectronicLimits);

    /// <summary>Resistance of a generic electronic limit. [mΩ]</summary>
    internal static CitedValue NeutralLimitResistance { get; } =
        new("Resistance of a generic electronic limit", 50, "mΩ", Sources.GenericElectronicLimits);

    /// <summary>The highest voltage that a generic electronic limit interrupts. [V]</summary>
    internal static CitedValue NeutralLimitVoltage { get; } =
        new("Voltage rating of a generic electronic limit", 30, "V", Sources.GenericElectronicLimits);

    /// <summary>Spare fuses, as a share of those in use. [%]</summary>
    internal static CitedValue SpareFuses { get; } =
        new("Spare fuses, share of those in use", 20, "%", Sources.MaterialPractice);

    /// <summary>Slack of a cable, as a share of its route. [%]</summary>
    internal static CitedValue CableSlack { get; } =
        new("Slack of a cable, share of its route", 10, "%", Sources.MaterialPractice);

    /// <summary>Cable that is left at each end to be terminated. [m]</summary>
    internal static CitedValue CableTail { get; } =
        new("Cable left at each end", 0.5, "m", Sources.MaterialPractice);
}
