using UnitsNet;

namespace CamPower.Tests.Verdicts;

/// <summary>What the year brings: shares of the draw, and air around cable and box that differ from one condition to the next.</summary>
internal static class Year
{
    internal static Condition SummerDay { get; } = At("summer day", LoadComponents.None, cable: 45, box: 40);

    internal static Condition SummerNight { get; } = At("summer night", LoadComponents.Infrared, cable: 30, box: 35);

    internal static Condition WinterNight { get; } = At("winter night", LoadComponents.Infrared | LoadComponents.Heater, cable: -10, box: 10);

    internal static Condition ColdStart { get; } = At("power comes back", LoadComponents.Infrared | LoadComponents.StartUp, cable: 20, box: 25);

    /// <summary>Power comes back, and what starts takes five seconds.</summary>
    internal static Condition BriefStart { get; } = At("start of 5 s", LoadComponents.Infrared | LoadComponents.StartUp, cable: 30, box: 35,
        seconds: 5);

    internal static Condition At(string name, LoadComponents on, double cable, double box, double sun = 0, double? seconds = null) =>
        new(name, on, new Surroundings(
        Temperature.FromDegreesCelsius(cable), Temperature.FromDegreesCelsius(box), Temperature.FromDegreesCelsius(cable),
        sun > 0 ? Irradiance.FromWattsPerSquareMeter(sun) : null), duration: seconds is double lasts
            ? Duration.FromSeconds(lasts) : null);
}
