using System;
using System.Linq;
using CamPower.Backup;
using UnitsNet;
using static CamPower.Tests.Sites.SmallSite;

namespace CamPower.Tests.Backup;

/// <summary>The sheet of one whole night in docs/battery.md, worked by hand in steps of hours.</summary>
public class NightSheetTests
{
    // Hours from the loss of the mains, charge in percent, voltage of the box, voltage of the lower gate (0 once it is off).
    [Theory]
    [InlineData(0, 100, 12.69, 9.96)]
    [InlineData(2, 82.5, 12.47, 9.66)]
    [InlineData(4, 64.4, 12.25, 9.33)]
    [InlineData(8, 44.1, 12.01, 0)]
    [InlineData(12, 27.7, 11.71, 0)]
    [InlineData(16, 10.7, 11.34, 0)]
    [InlineData(17, 6.2, 11.00, 0)]
    [InlineData(18, 1.6, 10.60, 0)]
    public void Night_AtEachHour_IsAsOnTheSheet(double hours, double charge, double boxVolts, double lowerGateVolts)
    {
        BatteryRunPoint[] points = [.. Night().Points];
        int next = Array.FindIndex(points, p => p.After.Hours > hours);
        BatteryRunPoint from = points[next - 1], to = points[next];
        double along = (hours - from.After.Hours) / (to.After.Hours - from.After.Hours);
        Assert.Equal(charge, Between(p => p.Charge.Percent), 0.5);
        Assert.Equal(boxVolts, Between(p => p.SupplyVoltage.Volts), 0.05);
        Assert.Equal(lowerGateVolts, Between(p => p.VoltageOf(Name(1))?.Volts ?? 0), 0.05);

        double Between(Func<BatteryRunPoint, double> value) => value(from) + (along * (value(to) - value(from)));
    }

    [Fact]
    public void Night_EndsAsOnTheSheet()
    {
        BatteryRun run = Night();
        Assert.Equal(4.8, run.DropOuts.Single().After.Hours, 0.05);
        Assert.Equal(18.3, run.Length.Hours, 0.1);
    }

    // 1.21 Ω and 3.02 Ω of 18 AWG at 5 °C, 9 W each; 26 Ah.
    private static BatteryRun Night()
    {
        Condition night = Condition.Night(At(box: 5));
        Starting starting = Starts(10.5, 9.2);
        return Star(Box().WithBattery(BatteryCatalog.Generic12Volt[3]), [night],
            (1.21, Camera(Watts(9), starting: starting)), (3.02, Camera(Watts(9), starting: starting))).RunOnBattery(BoxName, night);
    }
}
