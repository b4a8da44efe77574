using System.Collections.Generic;

namespace CamPower.Faults;

/// <summary>What is missing, in words.</summary>
internal static class FaultDataText
{
    private static readonly (FaultData Data, string Words)[] All =
    [
        (FaultData.Protection, "what protects the output"),
        (FaultData.Overload, "what the supply does in overload"),
        (FaultData.SourceResistance, "the supply's source resistance"),
        (FaultData.DeviceTemperature, "what the device does at the temperature of the box"),
        (FaultData.Insulation, "what the insulation stands"),
        (FaultData.Laying, "how the cable lies"),
        (FaultData.OutputCapacitance, "the supply's output capacitance"),
    ];

    internal static string Words(FaultData missing)
    {
        var words = new List<string>();
        foreach ((FaultData data, string text) in All)
        {
            if (missing.HasFlag(data)) words.Add(text);
        }

        return string.Join(", ", words);
    }
}
