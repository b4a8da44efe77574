using System;
using UnitsNet;
using static CamPower.Tests.Sites.SmallSite;

namespace CamPower.Tests.Assessment;

/// <summary>The voltage under which a camera of 20 W pulls itself down beside one of 1 A: the lower root of V² − E·V + R·P = 0.</summary>
public class UnstableVoltageTests
{
    // Both at the end of 1 Ω: V = 12 − 1·(1 + 20/V), so E = 11 V: 8.70 V and 2.30 V.
    [Theory]
    [InlineData(2.2, true)]
    [InlineData(2.4, false)]
    public void OnATree(double turnOn, bool isUnstable)
    {
        double lower = (11 - Math.Sqrt((11 * 11) - (4 * 20))) / 2;
        AssertUnstable(isUnstable ? lower : null, Shared(1, Camera(Amperes(1), Range(1, 60)), TwentyWatts(turnOn)));
    }

    // It comes back over the other's negative of 0.5 Ω: V = 12 − 0.3·I − 0.5·(I + 1), so E = 11.5 V and R = 0.8 Ω: 9.88 V and 1.62 V.
    [Theory]
    [InlineData(1.5, true)]
    [InlineData(1.7, false)]
    public void OnASharedNegative(double turnOn, bool isUnstable)
    {
        double lower = (11.5 - Math.Sqrt((11.5 * 11.5) - (4 * 0.8 * 20))) / 2;
        AssertUnstable(isUnstable ? lower : null, new Site("site", [Condition.Day(At())], [Box()],
            [
                new SiteRun(RunOrigin.Output(BoxName, 1), "a", Runs.OfOhms(1)),
                new SiteRun(RunOrigin.Output(BoxName, 2), "b", Runs.OfOhms(0.6), returnAt: "a"),
            ],
            [new SiteDevice("a", Camera(Amperes(1), Range(1, 60)), "a"), new SiteDevice("b", TwentyWatts(turnOn), "b")]));
    }

    private static Device TwentyWatts(double turnOn) => Camera(Watts(20), Range(1, 60), Starts(turnOn, 1, false));

    private static void AssertUnstable(double? expected, Site site)
    {
        DeviceInCondition found = site.Assess().Devices[1].Worst;
        Assert.Equal(expected is null ? StartVerdict.Starts : StartVerdict.TurnOnBelowUnstableVoltage, found.Start);
        Assert.Equal(expected is null, found.UnstableVoltage is null);
        if (expected is double volts) Assert.Equal(volts, found.UnstableVoltage!.Value.Volts, 1e-9);
    }
}
