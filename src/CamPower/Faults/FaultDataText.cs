using System.Collections.Generic;
using System.Linq;

namespace CamPower.Faults;

/// <summary>What is missing, in words.</summary>
internal static class FaultDataText
{
    private const string Interruption = "interruption of shorts", Current = "current of shorts";

    /// <summary>What leaves a verdict unknown, and what it would allow to say.</summary>
    internal static IReadOnlyList<(FaultData Data, string Words, string Decides)> ForVerdicts { get; } =
    [
        (FaultData.Protection, "protective device", Interruption),
        (FaultData.Overload, "overload behavior of the supply", Current),
        (FaultData.SourceResistance, "source resistance of the supply", Current),
        (FaultData.DeviceTemperature, "re-rating of the protective device for the air in the box", Interruption),
        (FaultData.MaximumCurrent, "largest current that the resettable fuse interrupts", Interruption),
        (FaultData.DcVoltageRating, "DC voltage rating of the fuse", Interruption),
        (FaultData.Insulation, "cable insulation", "conductors in a short"),
        (FaultData.InstallationMethod, "installation method of the cable", "heat of a lasting short"),
    ];

    internal static string Words(FaultData missing)
    {
        IEnumerable<string> words = ForVerdicts.Where(item => missing.HasFlag(item.Data)).Select(item => item.Words);
        return string.Join(", ", missing.HasFlag(FaultData.OutputCapacitance) ? words.Append("output capacitance of the supply") : words);
    }
}
