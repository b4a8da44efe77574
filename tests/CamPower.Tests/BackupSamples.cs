using System.Collections.Generic;
using CamPower.Backup;
using CamPower.Tests.Backup;
using CamPower.Tests.Sites;
using UnitsNet;

namespace CamPower.Tests;

/// <summary>One of each public type that a box on battery is made of and answers with.</summary>
internal static class BackupSamples
{
    internal static IEnumerable<object> All()
    {
        Battery battery = Batteries.Of(6.5, full: 13, empty: 11.5, ohms: 0.15);
        Device camera = SmallSite.Camera(SmallSite.Amperes(2.5), starting: SmallSite.Starts(12.5, 11.25));
        Site site = SmallSite.Star(SmallSite.Box().WithBattery(battery, ProtectiveDevice.None, Duration.FromHours(1.5)), [Batteries.Night], (0.25, camera));
        BackupAssessment backup = site.Assess().StudyBackup()[0];
        BatteryRun run = backup.Worst!.New;
        Supply reserve = new("reserve", new DcOutput(SmallSite.Volts(11.5), ElectricCurrent.FromAmperes(3.5), Ratio.FromPercent(1)), Derating.GenericEnclosed);
        ReserveAssessment doubled = SmallSite.Star(SmallSite.Box().WithReserve(reserve, SmallSite.Volts(0.25)), [Batteries.Night], (0.25, camera)).Assess().StudyReserves()[0];
        return [doubled, doubled.Worst, battery, battery.Chemistry, battery.Chemistry.Charge[0], BackupPolicy.CommonPractice, backup, backup.Worst, run, run.Points[0], run.DropOuts[0], run.Outputs[0]];
    }
}
