using System.Collections.Generic;
using System.Linq;

namespace CamPower.Tests.Checks;

/// <summary>A rule as a user writes one, from the example in the documentation of <see cref="Rule"/>.</summary>
internal sealed class NoMotorsRule() : Rule("no-motors", Severity.Note, "Motors are not allowed here.", "Choose a fixed camera.", Sources.CommonPractice)
{
    public override IEnumerable<Finding> Check(Evidence evidence) =>
        from device in evidence.Assessment.Devices
        where device.Device.Model.Draw.HasMotor
        select Find(Subject.Of(device.Device), "It has a motor.");
}
