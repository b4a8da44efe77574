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
}
