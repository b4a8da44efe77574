using System.Collections.Generic;
using System.Linq;
using CamPower.Reports.Sections;

namespace CamPower.Reports.Verdicts;

/// <summary>Every verdict on a site, device by device, box by box, output by output.</summary>
internal static class VerdictLines
{
    internal static IEnumerable<VerdictLine> Of(Evidence evidence) => evidence.Assessment.Devices.SelectMany(OfDevice);

    private static IEnumerable<VerdictLine> OfDevice(DeviceAssessment device)
    {
        yield return new VerdictLine("device-works", Subject.Of(device.Device), Condition: null, DeviceRow.IsWell(device) ? Verdict.Holds : Verdict.Violated);
    }
}
