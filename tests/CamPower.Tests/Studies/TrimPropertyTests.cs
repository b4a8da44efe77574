using System;
using System.Collections.Generic;
using System.Linq;
using CamPower.Tests.Assessment;
using CamPower.Tests.Sites;
using UnitsNet;

namespace CamPower.Tests.Studies;

/// <summary>Trim windows of random trees, and of shared returns, against set points tried one by one.</summary>
public class TrimPropertyTests
{
    private const double Millivolt = 1e-3;

    [SeededProperty(Arbitrary = [typeof(TreeCases)], MaxTest = 300)]
    public void SetPoint_IsInTheWindow_WhereEveryDeviceIsIn(TreeCase tree) => AssertAgreesWithTrying(TrimSites.Of(tree));

    [SeededProperty(Arbitrary = [typeof(TreeCases)], MaxTest = 300)]
    public void Ends_AreTight(TreeCase tree) => AssertTight(TrimSites.Of(tree));

    [Fact]
    public void Cases_HoldWindowsOfEveryKind()
    {
        TrimWindow[] windows = [.. Enumerable.Range(0, 300).Select(seed => TrimSites.Of(TreeCases.Make(new Random(seed))).TrimWindowOf(SmallSite.BoxName))];
        Assert.InRange(windows.Count(w => w.IsEmpty), 50, 250);
        Assert.Equal(Enum.GetValues<TrimBound>().Where(b => b != TrimBound.SupplyOverloaded), windows.SelectMany(w => new[] { w.Lowest.Bound, w.Highest.Bound, w.HighestBeforeLoad.Bound }).Distinct().Order());
    }

    // Two cameras whose shields meet at the recorder, and a shared negative: the range is walked before it is narrowed.
    [Theory]
    [InlineData(0.5)]
    [InlineData(1.5)]
    [InlineData(2.5)]
    public void SharedReturns_AgreeWithTrying(double farOhms)
    {
        Device camera = SmallSite.Camera(new ComponentDraw(SmallSite.Watts(3), infrared: SmallSite.Watts(5)), SmallSite.Range(10.8, 13.2), SmallSite.Starts(9, 8));
        Site star = TrimSites.Star(TrimSites.Trimmable(1, 10, 16), (0.3, camera), (farOhms, camera));
        Site site = new("site", star.Conditions, star.Boxes, star.Runs, star.Devices,
            [.. star.Devices.Select(d => new VideoLink(d.Name, "recorder", ElectricResistance.FromOhms(2)))]);
        TrimWindow window = AssertAgreesWithTrying(site);
        Assert.Equal(TrimBound.LowestVoltage, window.Lowest.Bound);
        Assert.Equal("camera 2", window.Lowest.Device!.Name);
        AssertTight(site);

        // The shields carry part of the return current: the far camera needs less than over its own cable alone.
        Assert.True(window.Lowest.SetPoint.Volts < star.TrimWindowOf(SmallSite.BoxName).Lowest.SetPoint.Volts);
    }

    private static TrimWindow AssertAgreesWithTrying(Site site)
    {
        TrimWindow window = site.TrimWindowOf(SmallSite.BoxName);
        VoltageRange range = ((DcOutput)site.Boxes[0].Supply.Output).Trim!;
        for (int i = 0; i <= 40; i++)
        {
            ElectricPotential setPoint = SmallSite.Volts(Math.Min(range.Lowest.Volts + ((range.Highest - range.Lowest).Volts * i / 40), range.Highest.Volts));
            if (Math.Abs(setPoint.Volts - window.Lowest.SetPoint.Volts) < 1e-6 || Math.Abs(setPoint.Volts - window.Highest.SetPoint.Volts) < 1e-6) continue;
            Assert.True(window.Contains(setPoint) == TrimSites.AllAreIn(site, setPoint), $"{window} at {setPoint}");
        }

        return window;
    }

    // Of an empty window as well: each end is tight for its own side.
    private static void AssertTight(Site site)
    {
        TrimWindow window = site.TrimWindowOf(SmallSite.BoxName);
        AssertTight(site, window.Lowest, -Millivolt, d => d.InConditions.All(TrimSites.IsIn));
        AssertTight(site, window.Highest, Millivolt, TrimSites.IsNotTooHigh);
    }

    // At the end all are in; a millivolt beyond it one is out; and just beyond it the one that is named is, in the condition that
    // is named. A millivolt is too far to look at that one alone: once another has dropped out it may be well again.
    private static void AssertTight(Site site, TrimLimit limit, double step, Func<DeviceAssessment, bool> isIn)
    {
        VoltageRange range = ((DcOutput)site.Boxes[0].Supply.Output).Trim!;
        double end = limit.SetPoint.Volts, justBeyond = end + (1e-5 * step);
        Assert.Equal(limit.Bound == TrimBound.SupplyRange, limit.Device is null);
        if (CanBeSet(end)) Assert.All(Devices(end), d => Assert.True(isIn(d), limit.ToString()));
        if (limit.Device is null) Assert.False(CanBeSet(justBeyond), limit.ToString());
        if (limit.Device is null || !CanBeSet(justBeyond) || !CanBeSet(end + step)) return;

        Assert.Contains(Devices(end + step), d => !isIn(d));
        DeviceAssessment named = Devices(justBeyond).Single(d => d.Device == limit.Device);
        DeviceInCondition? inCondition = named.InConditions.SingleOrDefault(c => c.Condition == limit.Condition);
        Assert.True(limit.Bound switch
        {
            TrimBound.HighestVoltage => !isIn(named) && inCondition is null,
            TrimBound.Collapse => inCondition!.SolvedVoltage is null,
            _ => !TrimSites.IsIn(inCondition!),
        }, limit.ToString());

        IReadOnlyList<DeviceAssessment> Devices(double volts) => TrimSites.Solved(site, SmallSite.Volts(volts)).Devices;

        bool CanBeSet(double volts) => volts >= range.Lowest.Volts && volts <= range.Highest.Volts;
    }
}
