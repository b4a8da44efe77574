using System;
using System.Linq;
using CamPower.Tests.Assessment;
using CamPower.Tests.Sites;
using UnitsNet;

namespace CamPower.Tests.Studies;

/// <summary>Sites whose box can be trimmed, and the judgment of one set point that is made without searching.</summary>
internal static class TrimSites
{
    internal static Supply Trimmable(double percent, double from, double to) => new("supply",
        new DcOutput(SmallSite.Volts(from), ElectricCurrent.FromAmperes(100), Ratio.FromPercent(percent), SmallSite.Range(from, to)), Derating.GenericEnclosed);

    internal static Site Star(Supply supply, params (double Ohms, Device Device)[] feeds) =>
        SmallSite.Star(SmallSite.Box(supply), [Condition.Day(SmallSite.At()), Condition.Night(SmallSite.At())], feeds);

    /// <summary>The tree with a window for each device and a supply that can be trimmed around its voltage.</summary>
    internal static Site Of(TreeCase tree)
    {
        var random = new Random((int)(1e6 * tree.Ohms.Sum()));
        Site site = tree.Site();
        return new Site(site.Name, site.Conditions, [tree.Box(Trimmable(2, 0.9 * tree.Volts, 1.3 * tree.Volts))], site.Runs,
            site.Devices.Select(d => new SiteDevice(d.Name, SmallSite.Camera(d.Model.Draw, SmallSite.Range(Share(0.3, 0.95), Share(1, 1.35)), d.Model.Starting), d.At)));

        double Share(double from, double to) => tree.Volts * (from + ((to - from) * random.NextDouble()));
    }

    /// <summary>Whether every device of the box is up, starts and is inside its range with the box set to a voltage.</summary>
    internal static bool AllAreIn(Site site, ElectricPotential setPoint) => Solved(site, setPoint).Devices.Where(d => d.Box.Name == SmallSite.BoxName).All(IsIn);

    internal static SiteAssessment Solved(Site site, ElectricPotential setPoint) => site.With(site.Boxes[0].WithSetPoint(setPoint)).Assess();

    internal static bool IsIn(DeviceAssessment device) =>
        device.InConditions.All(IsIn) && IsNotTooHigh(device);

    internal static bool IsNotTooHigh(DeviceAssessment device) => device.LightLoadVoltage.Volts <= device.Worst.Accepted!.Highest.Volts * (1 + 1e-9);

    internal static bool IsIn(DeviceInCondition device) => device.State == DeviceState.Up && device.Start is StartVerdict.Starts or StartVerdict.Unknown
        && device.Voltage.Volts >= device.Accepted!.Lowest.Volts * (1 - 1e-9);
}
