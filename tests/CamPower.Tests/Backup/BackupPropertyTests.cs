using System;
using System.Linq;
using FsCheck;
using FsCheck.Fluent;
using UnitsNet;
using static CamPower.Tests.Sites.SmallSite;

namespace CamPower.Tests.Backup;

/// <summary>What holds of any box on any lead-acid battery.</summary>
public class BackupPropertyTests
{
    private const double Rounding = 1e-6;

    // More capacity, all else the same, never shortens.
    [SeededProperty(Arbitrary = [typeof(BackupCases)], MaxTest = 50)]
    public bool MoreCapacity_NeverShortens(BackupCase c) =>
        First(c, c.AmpereHours * 1.3, c.Milliohms, c.Celsius) >= First(c, c.AmpereHours, c.Milliohms, c.Celsius) * (1 - Rounding);

    // A colder battery has less capacity and more resistance.
    [SeededProperty(Arbitrary = [typeof(BackupCases)], MaxTest = 50)]
    public bool ColderBattery_NeverLengthens(BackupCase c) =>
        First(c, c.AmpereHours, c.Milliohms, c.Celsius - 10) <= First(c, c.AmpereHours, c.Milliohms, c.Celsius) * (1 + Rounding);

    [SeededProperty(Arbitrary = [typeof(BackupCases)], MaxTest = 50)]
    public bool MoreResistance_NeverLengthens(BackupCase c) =>
        First(c, c.AmpereHours, c.Milliohms * 3, c.Celsius) <= First(c, c.AmpereHours, c.Milliohms, c.Celsius) * (1 + Rounding);

    // At every moment: what leaves the battery is in its cameras, in their cables and in its own resistance.
    [SeededProperty(Arbitrary = [typeof(BackupCases)], MaxTest = 50)]
    public bool Energy_IsInLoadsCablesAndTheBatteryItself(BackupCase c)
    {
        BatteryRun run = Run(c, c.AmpereHours, c.Milliohms, c.Celsius);
        Battery battery = run.Box.Battery!;
        double cold = battery.Chemistry.Resistance.ShareAt(c.Celsius)!.Value;
        return run.Points.Where(p => p.Current.Amperes > 0).All(p =>
        {
            double charge = p.Charge.DecimalFractions, amperes = p.Current.Amperes, given = amperes * battery.VoltsUnderLoad(charge);
            double taken = amperes * amperes * battery.OhmsAt(charge, cold);
            for (int i = 0; i < c.Cameras.Length; i++)
            {
                if (p.VoltageOf(Name(i)) is not ElectricPotential at) continue;
                double own = c.Cameras[i].Watts / at.Volts;
                taken += c.Cameras[i].Watts + (own * own * c.Cameras[i].Ohms);
            }

            return Math.Abs(given - taken) <= Rounding * given;
        });
    }

    // No device comes on again, the charge only falls, and time only goes on.
    [SeededProperty(Arbitrary = [typeof(BackupCases)], MaxTest = 50)]
    public bool Run_OnlyGoesDown(BackupCase c)
    {
        BatteryRun run = Run(c, c.AmpereHours, c.Milliohms, c.Celsius);
        return run.Points.Zip(run.Points.Skip(1)).All(p => p.First.Charge >= p.Second.Charge && p.First.After <= p.Second.After)
            && run.DropOuts.Select(d => d.Device.Name).Distinct().Count() == run.DropOuts.Count
            && run.DropOuts.All(d => run.Points.Where(p => p.After > d.After).All(p => p.VoltageOf(d.Device.Name) is null));
    }

    private static double First(BackupCase c, double ampereHours, double milliohms, double celsius) =>
        Run(c, ampereHours, milliohms, celsius).ToFirstDropOut.Seconds;

    private static BatteryRun Run(BackupCase c, double ampereHours, double milliohms, double celsius)
    {
        var battery = new Battery("battery", BatteryChemistry.ValveRegulatedLeadAcid, cells: 6, ElectricCharge.FromAmpereHours(ampereHours),
            Duration.FromHours(20), ElectricResistance.FromMilliohms(milliohms));
        Condition night = Condition.Night(At(box: celsius));
        return Star(Box().WithBattery(battery), [night], [.. c.Cameras.Select(x => (x.Ohms, Camera(Watts(x.Watts), starting: Starts(11, x.DropOut))))])
            .RunOnBattery(BoxName, night);
    }

    public sealed record BackupCamera(double Ohms, double Watts, double DropOut);

    public sealed record BackupCase(double AmpereHours, double Milliohms, double Celsius, BackupCamera[] Cameras);

    public static class BackupCases
    {
        public static Arbitrary<BackupCase> Case() => (
            from ampereHours in Gen.Choose(5, 100)
            from milliohms in Gen.Choose(3, 60)
            from celsius in Gen.Choose(-10, 45)
            from cameras in Cameras().ArrayOf(3)
            select new BackupCase(ampereHours, milliohms, celsius, cameras)).ToArbitrary();

        private static Gen<BackupCamera> Cameras() =>
            from milliohms in Gen.Choose(1, 2500)
            from tenths in Gen.Choose(10, 90)
            from dropOut in Gen.Choose(80, 108)
            select new BackupCamera(milliohms / 1e3, tenths / 10.0, dropOut / 10.0);
    }
}
