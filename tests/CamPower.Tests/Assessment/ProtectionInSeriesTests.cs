using System;
using System.Linq;
using CamPower.Tests.Protection;
using UnitsNet;
using static CamPower.Tests.Sites.SmallSite;

namespace CamPower.Tests.Assessment;

/// <summary>The protective device of an output is in series with all that it feeds: its greatest resistance where voltage is short, its least where it is too much.</summary>
public class ProtectionInSeriesTests
{
    // Reference row S09-048: 0.05 Ω new, 0.14 Ω after a trip.
    private static readonly ResettableFuse Resettable = SmallDevices.Printed(1.10);

    // NBS Handbook 100: 18 AWG solid, 6.385 Ω/1000 ft at 20 °C; 26 m out and back are 1.0893 Ω. The device has 1 % more for each of 5 K: 0.147 Ω. With it
    // 1.2363 Ω, and from 12 V less 2 % 9 W get (11.76 + √(11.76² − 4·1.2363·9))/2 = 10.722 V; without it 10.857 V, which would be enough.
    [Fact]
    public void Voltage_IsBehindTheMaximumResistance_AndTooLowForTheCamera()
    {
        SiteAssessment assessment = WithRun(Resettable).Assess();
        DeviceInCondition found = assessment.Devices[0].Worst;
        Assert.Equal(10.7223, found.Voltage.Volts, 1e-3);
        Assert.Contains(RuleSet.Standard.Check(assessment), f => f.Rule == "undervoltage" && f.Severity == Severity.Failure);

        SiteAssessment bare = WithRun(ProtectiveDevice.None).Assess();
        Assert.Equal(10.857, bare.Devices[0].Worst.Voltage.Volts, 1e-3);
        Assert.DoesNotContain(RuleSet.Standard.Check(bare), f => f.Rule == "undervoltage");
    }

    // From 12 V and 2 % more, and least: (12.24 + √(12.24² − 4·1.1393·9))/2 = 11.336 V.
    [Fact]
    public void LightLoadVoltage_IsBehindTheMinimumResistance() =>
        Assert.Equal(11.336, WithRun(Resettable).Assess().Devices[0].LightLoadVoltage.Volts, 1e-3);

    // 1 A and 0.5 A share 0.2 Ω: 0.3 V less for both. Their runs lose 1 V and 0.5·0.6 = 0.3 V.
    [Fact]
    public void Tree_SharesTheDeviceOfItsOutput()
    {
        Site site = Tree(SeriesOhms(0.2));
        SiteAssessment assessment = site.Assess();
        Assert.Equal([10.7, 11.4], assessment.Devices.Select(d => Math.Round(d.Worst.Voltage.Volts, 9)));
        VoltageProfile profile = assessment.Devices[0].Worst.Profile()!;
        Assert.Equal(11.7, profile.Points[1].Voltage.Volts, 1e-9);
        Assert.Equal("limit at box output 1", ((Joint)profile.Points[1].After!).Name);
        Assert.Equal(10.7, profile.Points[^1].Voltage.Volts, 1e-9);
    }

    // As before, and the second comes back over the first one's negative: 1.5 A in its 0.5 Ω. The positives lose 0.3 V, then
    // 1·0.5 and 0.5·0.3 V; the negative 0.75 V.
    [Fact]
    public void SharedNegative_HasTheDeviceOfEachOutput()
    {
        Site site = new("site", [Condition.Day(At())], [Box(protection: SeriesOhms(0.2))],
            [new SiteRun(RunOrigin.Output(BoxName, 1), "a", Runs.OfOhms(1)), new SiteRun(RunOrigin.Output(BoxName, 2), "b", Runs.OfOhms(0.6), returnAt: "a")],
            [new SiteDevice("a", Camera(Amperes(1)), "a"), new SiteDevice("b", Camera(Amperes(0.5)), "b")]);
        SiteAssessment assessment = site.Assess();
        Assert.Equal(12 - 0.2 - 0.5 - 0.75, assessment.Devices[0].Worst.Voltage.Volts, 1e-9);
        Assert.Equal(12 - 0.1 - 0.15 - 0.75, assessment.Devices[1].Worst.Voltage.Volts, 1e-9);
        Assert.Contains(assessment.Devices[0].Worst.Explain().Steps, s => s.Meaning.Contains("limit at box output 2", StringComparison.Ordinal));
    }

    // The camera needs 10 V at 1 A over 1 Ω and 0.2 Ω: 11.2 V of the lowest, 11.2/0.98 = 11.43 V set.
    [Fact]
    public void TrimWindow_StartsHigher() => Assert.Equal(11.2 / 0.98, new Site("site", [Condition.Day(At())],
        [Box(new Supply("supply", new DcOutput(Volts(12), ElectricCurrent.FromAmperes(10), Ratio.FromPercent(2), Range(10, 14)), Derating.GenericEnclosed), protection: SeriesOhms(0.2))],
        [new SiteRun(RunOrigin.Output(BoxName, 1), "a", Runs.OfOhms(1))], [new SiteDevice("a", Camera(Amperes(1), Range(10, 16)), "a")]).TrimWindowOf(BoxName).Lowest.SetPoint.Volts, 1e-8);

    [Fact]
    public void Working_NamesTheDevice()
    {
        Derivation single = WithRun(Resettable).Assess().Devices[0].Worst.Explain();
        Assert.Contains(single.Steps, s => s.Formula.Contains("R(printed resettable fuse, 1.10 A at box output 1)", StringComparison.Ordinal));
        Assert.Contains(Tree(SeriesOhms(0.2)).Assess().Devices[0].Worst.Explain().Steps, s => s.Meaning.Contains("limit at box output 1", StringComparison.Ordinal));
    }

    // Nothing, or nobody's word, is no resistance: to the last bit.
    [Fact]
    public void NoDevice_AndAnUndeclaredOne_ChangeNothing()
    {
        Assert.Equal(WithRun(null).Assess().Devices[0].Worst.Voltage.Volts, WithRun(ProtectiveDevice.None).Assess().Devices[0].Worst.Voltage.Volts);
        Assert.Equal(Tree(null).Assess().Devices[0].Worst.Voltage.Volts, Tree(SeriesOhms(0)).Assess().Devices[0].Worst.Voltage.Volts);
        Assert.Null(WithRun(null).Assess().Devices[0].Worst.Profile()!.Points[1].After as Joint);
    }

    private static Site WithRun(ProtectiveDevice? protection) => new("site", [Condition.Night(At())], [Box(Dc(percent: 2), protection: protection)],
        [new SiteRun(RunOrigin.Output(BoxName, 1), "a", new CableRun(Runs.Eighteen, Length.FromMeters(26)))],
        [new SiteDevice("a", Camera(Watts(9), Range(10.8, 13.2)), "a")]);

    private static Site Tree(ProtectiveDevice? protection) => new("site", [Condition.Day(At())], [Box(protection: protection)],
        [new SiteRun(RunOrigin.Output(BoxName, 1), "a", Runs.OfOhms(1)), new SiteRun(RunOrigin.Output(BoxName, 1), "b", Runs.OfOhms(0.6))],
        [new SiteDevice("a", Camera(Amperes(1)), "a"), new SiteDevice("b", Camera(Amperes(0.5)), "b")]);
}
