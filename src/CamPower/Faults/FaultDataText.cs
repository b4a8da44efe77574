using System.Collections.Generic;
using System.Linq;

namespace CamPower.Faults;

/// <summary>What is missing, in words.</summary>
internal static class FaultDataText
{
    private const string WhetherInterrupted = "whether a short is interrupted", HowMuch = "the current of a short";

    /// <summary>What leaves a verdict unknown, and what it would allow to say.</summary>
    internal static IReadOnlyList<(FaultData Data, string Words, string Decides)> ForVerdicts { get; } =
    [
        (FaultData.Protection, "protective device", WhetherInterrupted),
        (FaultData.Overload, "overload behavior of the supply", HowMuch),
        (FaultData.SourceResistance, "source resistance of the supply", HowMuch),
        (FaultData.DeviceTemperature, "re-rating of the protective device for the air in the box", WhetherInterrupted),
        (FaultData.MaximumCurrent, "largest current that the resettable fuse interrupts", WhetherInterrupted),
        (FaultData.DcVoltageRating, "DC voltage rating of the fuse", WhetherInterrupted),
        (FaultData.Insulation, "cable insulation", "whether the conductors withstand a short"),
        (FaultData.InstallationMethod, "installation method of the cable", "how hot a lasting short makes the conductors"),
    ];

    internal static string Words(FaultData missing)
    {
        IEnumerable<string> words = ForVerdicts.Where(item => missing.HasFlag(item.Data)).Select(item => item.Words);
        return string.Join(", ", missing.HasFlag(FaultData.OutputCapacitance) ? words.Append("output capacitance of the supply") : words);
    }
}
