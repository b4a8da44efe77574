using System.Linq;
using CamPower.Backup;
using CamPower.Supplies;
using UnitsNet;
using static CamPower.Tests.Sites.SmallSite;

namespace CamPower.Tests.Backup;

/// <summary>Batteries of bare numbers, and boxes that run on them.</summary>
internal static class Batteries
{
    internal const double Hour = 3600;

    internal static readonly Condition Night = Condition.Night(At());

    /// <summary>One cell whose open-circuit voltage is straight between empty and full, at any temperature and age.</summary>
    internal static Battery Of(double ampereHours, double hours = 20, double exponent = 1, double full = 12, double empty = 12,
        double ohms = 1e-6, double cutOff = 0.5) => new("battery", Chemistry(full, empty, exponent, cutOff), cells: 1,
        ElectricCharge.FromAmpereHours(ampereHours), Duration.FromHours(hours), ElectricResistance.FromOhms(ohms));

    internal static BatteryChemistry Chemistry(double full, double empty, double exponent, double cutOff, double? coldestCharging = null,
        double cold = 1, double floating = 13.65, double? highestCharging = null) => new("straight", Sources.CommonPractice,
        [new(Ratio.Zero, Volts(empty), Ratio.FromDecimalFractions(1)), new(Ratio.FromPercent(100), Volts(full), Ratio.FromDecimalFractions(1))],
        Curve(cold), Curve(1), exponent, Volts(cutOff), Volts(floating), Volts(0), 1,
        coldestCharging is double celsius ? Temperature.FromDegreesCelsius(celsius) : null,
        highestCharging: highestCharging is double volts ? Volts(volts) : null);

    /// <summary>Charge that two constant currents take one after the other. [A·s]</summary>
    internal static double Used(double standbyAmperes, double standbyHours, double alarmAmperes, double alarmMinutes)
    {
        const double capacity = 100;
        Condition standby = new("standby", LoadComponents.None, At(), duration: Duration.FromHours(standbyHours)),
            alarm = new("alarm", LoadComponents.Infrared, At(), duration: Duration.FromMinutes(alarmMinutes)),
            after = new("after", LoadComponents.None, At());
        Device panel = Camera(new ComponentDraw(Amperes(standbyAmperes), infrared: Amperes(alarmAmperes - standbyAmperes)));
        BatteryRun run = Star(Box().WithBattery(Of(capacity)), [standby], (0.001, panel)).RunOnBattery(BoxName, standby, alarm, after);
        double seconds = (standbyHours * Hour) + (alarmMinutes * 60);
        BatteryRunPoint end = run.Points.First(p => p.After.Seconds > seconds - 1e-6);
        return (1 - end.Charge.DecimalFractions) * capacity * Hour;
    }

    // All of it at 0 °C and colder, the share of it; in between a straight line to 1 at 25 °C.
    private static ShareCurve<Temperature> Curve(double cold) => new(
        new(Temperature.FromDegreesCelsius(-40), Ratio.FromDecimalFractions(cold)), new(Temperature.FromDegreesCelsius(0), Ratio.FromDecimalFractions(cold)),
        new(Temperature.FromDegreesCelsius(25), Ratio.FromDecimalFractions(1)), new(Temperature.FromDegreesCelsius(80), Ratio.FromDecimalFractions(1)));
}
