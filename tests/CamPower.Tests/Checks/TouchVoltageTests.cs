using System.Linq;
using CamPower.Tests.Sites;
using UnitsNet;
using static CamPower.Tests.Sites.SmallSite;

namespace CamPower.Tests.Checks;

/// <summary>Where a voltage stops being one for everybody: IEC 60335-1, 3.4.2, and IEC 61140 with IEC 61558-1, 3.7.16, as an entry of the IEC's terminology has them.</summary>
public class TouchVoltageTests
{
    // 24 V AC and 10 % are 37.3 V at the crest; 28 V AC and 10 % are 30.8 V, 43.6 V at the crest: more than 42.4 V, and far from the 50 V where extra-low
    // voltage ends. 45.5 V and 10 % are 50.05 V. 48 V DC and 10 % are 52.8 V, 60 V DC and 10 % 66 V, 110 V DC and 10 % 121 V.
    [Theory]
    [InlineData(CurrentKind.Ac, 24, null)]
    [InlineData(CurrentKind.Ac, 28, "voltage-above-accessible")]
    [InlineData(CurrentKind.Ac, 45.4, "voltage-above-accessible")]
    [InlineData(CurrentKind.Ac, 45.5, "voltage-above-extra-low")]
    [InlineData(CurrentKind.Dc, 48, null)]
    [InlineData(CurrentKind.Dc, 60, "voltage-above-accessible")]
    [InlineData(CurrentKind.Dc, 110, "voltage-above-extra-low")]
    public void EachLimit_HasItsRule(CurrentKind kind, double volts, string? rule)
    {
        var camera = new Device("camera", DeviceKind.Camera, new ComponentDraw(Watts(3)), Range(2, 200), Range(2, 200));
        Site site = Single(0, camera, Dc(volts, percent: 10, kind: kind));
        Assert.Equal(rule is null ? [] : new[] { rule }, RuleSet.Standard.Check(site.Assess()).Select(f => f.Rule).Where(id => id.StartsWith("voltage-above", System.StringComparison.Ordinal)));
    }
}
