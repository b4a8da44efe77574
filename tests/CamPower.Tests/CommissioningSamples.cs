using System.Collections.Generic;
using CamPower.Commissioning;
using CamPower.Tests.Sites;
using CamPower.Tolerance;
using UnitsNet;

namespace CamPower.Tests;

/// <summary>One of each public type of tolerances and commissioning.</summary>
internal static class CommissioningSamples
{
    internal static Surroundings Mild { get; } = new(
        Temperature.FromDegreesCelsius(15.5), Temperature.FromDegreesCelsius(15), Temperature.FromDegreesCelsius(15));

    internal static IEnumerable<object> All()
    {
        Site site = SmallSite.Star(SmallSite.Box(), [Condition.Night(Mild)], (1.25, SmallSite.Camera(SmallSite.Watts(9))));
        UncertainRange range = UncertainRange.OfShare(Ratio.FromPercent(-2.5), Ratio.FromPercent(2.5), UncertaintyShape.Normal);
        SiteTolerance tolerance = SiteTolerance.Standard.With(UncertainQuantity.RunLength, range);
        var study = new ToleranceStudy(site, tolerance);
        UncertainValue value = study.DeviceVoltage(site.Devices[0].Name, site.Conditions[0]);
        var sheet = new CommissioningSheet(site, tolerance, Meter.Handheld, Mild);
        var reading = new MeterReading(sheet.Lines[0].Point, null, time: "12:30", remark: "dry");
        var record = new CommissioningRecord(sheet, [reading]);
        return
        [
            range, tolerance, study, value, value.Shares[0], study.BelowWindow(site.Devices[0].Name, site.Conditions[0], draws: 1000),
            Meter.Handheld, Meter.Handheld.Volts, sheet, sheet.Lines[0].Point, sheet.Lines[0], reading, record, record.Lines[0],
        ];
    }
}
