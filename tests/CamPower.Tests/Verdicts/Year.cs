using UnitsNet;

namespace CamPower.Tests.Verdicts;

/// <summary>What the year brings: shares of the draw, and air around cable and box that differ from one condition to the next.</summary>
internal static class Year
{
    internal static Condition SummerDay { get; } = At("summer day", DrawShares.None, cable: 45, box: 40);

    internal static Condition SummerNight { get; } = At("summer night", DrawShares.Infrared, cable: 30, box: 35);

    internal static Condition WinterNight { get; } = At("winter night", DrawShares.Infrared | DrawShares.Heater, cable: -10, box: 10);

    internal static Condition ColdStart { get; } = At("power comes back", DrawShares.Infrared | DrawShares.StartUp, cable: 20, box: 25);

    /// <summary>Power comes back, and what starts takes five seconds.</summary>
    internal static Condition BriefStart { get; } = At("start of 5 s", DrawShares.Infrared | DrawShares.StartUp, cable: 30, box: 35,
        seconds: 5);

    internal static Condition At(string name, DrawShares on, double cable, double box, double sun = 0, double? seconds = null) =>
        new(name, on, new Surroundings(
        Temperature.FromDegreesCelsius(cable), Temperature.FromDegreesCelsius(box), Temperature.FromDegreesCelsius(cable),
        sun > 0 ? Irradiance.FromWattsPerSquareMeter(sun) : null), duration: seconds is double lasts
            ? Duration.FromSeconds(lasts) : null);
}
