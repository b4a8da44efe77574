namespace CamPower.Tolerance;

/// <summary>The cited ranges of what a site does not state.</summary>
internal static class ToleranceConstants
{
    /// <summary>How far the conductors are off the temperature that somebody took for them. [K]</summary>
    internal static CitedValue Temperature { get; } =
        new("Temperature of conductors off the stated one, up or down", 10, "K", Sources.CommonPractice);

    /// <summary>Resistance of a conductor of nominal area off its size: wire is drawn to 1 % of its diameter. [%]</summary>
    internal static CitedValue NominalResistance { get; } =
        new("Resistance of a conductor off its nominal area, up or down", 2, "%", Sources.WireDiameter);

    /// <summary>Resistance of a conductor below the most that its standard allows. [%]</summary>
    internal static CitedValue BelowMaximum { get; } =
        new("Resistance of a conductor below the maximum of its standard", 12, "%", Sources.CommonPractice);

    /// <summary>Length of a run off the drawn one. [%]</summary>
    internal static CitedValue Length { get; } = new("Length of a run off the drawn one, up or down", 5, "%", Sources.CommonPractice);

    /// <summary>Resistance of sound joints below the stated one. [%]</summary>
    internal static CitedValue JointBelow { get; } =
        new("Resistance of sound joints below the stated one", 50, "%", Sources.CommonPractice);

    /// <summary>Resistance of sound joints above the stated one. [%]</summary>
    internal static CitedValue JointAbove { get; } =
        new("Resistance of sound joints above the stated one", 100, "%", Sources.CommonPractice);

    /// <summary>What a device draws below its data sheet. [%]</summary>
    internal static CitedValue DrawBelow { get; } = new("Draw of a device below its data sheet", 30, "%", Sources.CommonPractice);

    /// <summary>What a device draws above its data sheet. [%]</summary>
    internal static CitedValue DrawAbove { get; } = new("Draw of a device above its data sheet", 5, "%", Sources.CommonPractice);

    /// <summary>What a device draws below its label, which is a total in the worst condition. [%]</summary>
    internal static CitedValue DrawBelowLabel { get; } = new("Draw of a device below its label", 70, "%", Sources.CommonPractice);
}
