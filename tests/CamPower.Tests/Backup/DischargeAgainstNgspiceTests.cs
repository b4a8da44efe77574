using System.Linq;
using CamPower.Backup;
using UnitsNet;
using static CamPower.Tests.Backup.Batteries;
using static CamPower.Tests.Sites.SmallSite;

namespace CamPower.Tests.Backup;

/// <summary>A discharge against a general circuit simulator, ngspice 39, on a deck written by hand: the battery is a source and a resistance that follow its
/// charge.</summary>
public class DischargeAgainstNgspiceTests
{
    // The measurements hold seven digits, and the simulator steps in time.
    private const double Digits = 1e-5;

    [Fact]
    public void TwoCameras_RunAsSimulated()
    {
        BatteryRun run = Star(Box().WithBattery(BatteryCatalog.Generic12Volt[0]), [Night], (2, Camera(Watts(4))), (5, Camera(Watts(3), Range(9.7, 15), Starts(4, 3))))
            .RunOnBattery(BoxName, Night);
        Assert.Equal(BatteryRunEnd.CutOff, run.End);
        AssertSimulated("end", run.Length.Seconds);
        AssertSimulated("low", Assert.Single(run.BelowAccepted).After.Seconds);
        AssertSimulated("start", run.Points[0].SupplyVoltage.Volts);
        BatteryRunPoint half = run.Points.First(p => p.Charge.DecimalFractions <= 0.5 + 1e-12);
        AssertSimulated("half", half.After.Seconds);
        AssertSimulated("voltage", half.SupplyVoltage.Volts);
    }

    private static void AssertSimulated(string value, double ours)
    {
        double simulated = BackupDecks.All.Read("two-cameras-to-the-cut-off", value);
        Assert.Equal(simulated, ours, Digits * simulated);
    }
}
