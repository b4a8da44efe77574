namespace CamPower.Commissioning;

/// <summary>The cited numbers of commissioning.</summary>
internal static class CommissioningConstants
{
    /// <summary>The resistance above which a pair without devices and jumpers is open. [MΩ]</summary>
    internal static CitedValue OpenPair { get; } =
        new("Resistance above which a pair without devices and jumpers is open", 1, "MΩ", Sources.CommonPractice);

    /// <summary>How many times its highest voltage no supply gives. [1]</summary>
    internal static CitedValue ImpossibleVoltage { get; } =
        new("Voltage that no supply gives, over its highest", 3, "1", Sources.CommonPractice);

    /// <summary>How many times its rated current no supply gives for as long as a meter reads. [1]</summary>
    internal static CitedValue ImpossibleCurrent { get; } =
        new("Current that no supply gives while a meter reads, over its rated one", 5, "1", Sources.CommonPractice);
}
