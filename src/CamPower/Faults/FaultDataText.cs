using System.Collections.Generic;

namespace CamPower.Faults;

/// <summary>What is missing, in words.</summary>
internal static class FaultDataText
{
    private static readonly (FaultData Data, string Words)[] All =
    [
        (FaultData.Protection, "protective device"),
        (FaultData.Overload, "overload behavior of the supply"),
        (FaultData.SourceResistance, "source resistance of the supply"),
        (FaultData.DeviceTemperature, "what the protective device carries at the temperature of the box"),
        (FaultData.Insulation, "insulation"),
        (FaultData.InstallationMethod, "installation method"),
        (FaultData.OutputCapacitance, "output capacitance of the supply"),
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
