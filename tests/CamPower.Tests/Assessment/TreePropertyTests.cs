using System;
using System.Linq;
using CamPower.Tests.Sites;

namespace CamPower.Tests.Assessment;

/// <summary>Random trees against a sweep that shares nothing with the solver.</summary>
public class TreePropertyTests
{
    private const double Close = 1e-7;

    [SeededProperty(Arbitrary = [typeof(TreeCases)], MaxTest = 400)]
    public void SolvedVoltage_IsThatOfTheSweep_OrNeitherHasOne(TreeCase tree)
    {
        double[]? expected = tree.Sweep(All(tree));
        SiteAssessment assessment = tree.Site().Assess();
        Assert.All(Enumerable.Range(0, tree.Devices.Count), d =>
        {
            DeviceInCondition found = assessment.Devices[d].Worst;
            if (expected is null) Assert.Equal(expected is null, found.SolvedVoltage is null && assessment.Boxes[0].Worst.IsDemandOnly);
            else Assert.Equal(expected[tree.Devices[d].Node], found.SolvedVoltage!.Value.Volts, Close);
        });
    }

    // At the end of every run on the way stands the voltage of the sweep's node.
    [SeededProperty(Arbitrary = [typeof(TreeCases)], MaxTest = 300)]
    public void Profile_PassesThroughTheVoltagesOfTheSweep(TreeCase tree)
    {
        double[]? expected = tree.Sweep(All(tree));
        foreach (DeviceAssessment device in tree.Site().Assess().Devices)
        {
            VoltageProfile? profile = device.Worst.Profile();
            Assert.Equal(expected is null, profile is null);
            if (profile is null) continue;
            Assert.Equal(tree.Volts, profile.Points[0].Voltage.Volts, Close);
            int point = tree.ProtectionOhms > 0 ? 1 : 0;
            foreach (SiteRun run in device.Path)
            {
                point += run.Run.Parts.Count;
                int node = Enumerable.Range(0, tree.Parents.Count).Single(i => SmallSite.Place(i) == run.To);
                Assert.Equal(expected![node], profile.Points[point].Voltage.Volts, Close);
            }

            Assert.Equal(point, profile.Points.Count - 1);
        }
    }

    [SeededProperty(Arbitrary = [typeof(TreeCases)], MaxTest = 300)]
    public void UnloadedVoltage_IsThatOfTheSweepWithTheDeviceOff(TreeCase tree)
    {
        SiteAssessment assessment = tree.Site().Assess();
        for (int d = 0; d < tree.Devices.Count && tree.Devices.Count > 1; d++)
        {
            int off = d;
            double[]? expected = tree.Sweep([.. Enumerable.Range(0, tree.Devices.Count).Select(i => i != off)]);
            Assert.Equal(expected?[tree.Devices[d].Node] ?? 0, assessment.Devices[d].Worst.UnloadedVoltage?.Volts ?? 0, Close);
        }
    }

    // Every ampere that leaves the output arrives at a device.
    [SeededProperty(Arbitrary = [typeof(TreeCases)], MaxTest = 300)]
    public void OutputCurrent_IsTheSumOfTheSweepsDevices(TreeCase tree)
    {
        OutputAssessment output = tree.Site().Assess().Boxes[0].Outputs.Single();
        double[]? volts = tree.Sweep(All(tree));
        double expected = tree.Devices.Sum(d => (d.Watts / (volts?[d.Node] ?? tree.Volts)) + d.Amperes);
        Assert.Equal(volts is null, output.Worst.IsDemandOnly);
        Assert.Equal(expected, output.Worst.Current.Amperes, Close * (1 + expected));
    }

    // A device under its drop-out voltage is off, whatever else is said of it.
    [SeededProperty(Arbitrary = [typeof(TreeCases)], MaxTest = 2000)]
    public void Up_MeansAtOrAboveTheDropOutVoltage(TreeCase tree) => Assert.All(Found(tree.Site()), found =>
    {
        if (found.State != DeviceState.Up) return;
        Assert.True(found.Voltage.Volts > 0 && found.Voltage.Volts <= tree.Volts, found.ToString());
        Assert.True(found.Device.Model.Starting is not Starting starting || found.Voltage.Volts >= starting.DropOut.Volts, found.ToString());
        Assert.True(double.IsFinite(found.Current.Amperes), found.ToString());
    });

    [SeededProperty(Arbitrary = [typeof(TreeCases)], MaxTest = 1000)]
    public void Starts_MeansUp(TreeCase tree) => Assert.All(Found(tree.Site()), found =>
        Assert.True(found.Start != StartVerdict.Starts || found.State == DeviceState.Up, found.ToString()));

    [SeededProperty(Arbitrary = [typeof(TreeCases)], MaxTest = 1000)]
    public void WhatIsNotUp_IsNamedByAFailure(TreeCase tree)
    {
        SiteAssessment assessment = tree.Site().Assess();
        var named = RuleSet.Standard.Check(assessment).Where(f => f.Severity == Severity.Failure).Select(f => f.About.Name).ToHashSet();
        Assert.All(assessment.Devices.Where(d => d.Worst.State != DeviceState.Up), d => Assert.Contains(d.Device.Name, named));
    }

    // A device that does not start is told a voltage that it has and a higher one that it needs.
    [SeededProperty(Arbitrary = [typeof(TreeCases)], MaxTest = 1000)]
    public void StartFindings_MeasureLessThanTheirLimit(TreeCase tree) => Assert.All(
        RuleSet.Standard.Check(tree.Site().Assess()).Where(f => f.Rule == Rules.UnloadedVoltageBelowTurnOn.Id || f.Rule == Rules.SettlesBelowDropOut.Id || f.Rule == Rules.TurnOnBelowUnstableVoltage.Id),
        f => Assert.True((double)f.Measured!.Value < (double)f.Limit!.Value, f.ToString()));

    // Where nothing restarts, who is up must hold by itself: at the sweep's voltage with just those drawing, above every
    // drop-out voltage, and under the turn-on voltage of whoever stayed off.
    [SeededProperty(Arbitrary = [typeof(TreeCases)], MaxTest = 1500)]
    public void SteadyStates_HoldByThemselves(TreeCase tree)
    {
        DeviceInCondition[] found = Found(tree.Site());
        if (found.Any(f => f.State is DeviceState.Restarting or DeviceState.NoOperatingPoint)) return;

        bool[] up = [.. found.Select(f => f.State == DeviceState.Up)];
        double[] volts = tree.Sweep(up)!;
        for (int d = 0; d < found.Length; d++)
        {
            TreeDevice device = tree.Devices[d];
            if (up[d]) Assert.Equal(volts[device.Node], found[d].Voltage.Volts, Close);
            if (up[d] && device.IsDeclared) Assert.True(volts[device.Node] > device.DropOut - Close);
            if (!up[d]) Assert.True(device.IsDeclared && volts[device.Node] < device.TurnOn + Close, found[d].ToString());
        }
    }

    [SeededProperty(Arbitrary = [typeof(TreeCases)], MaxTest = 600)]
    public void States_DoNotDependOnTheOrderOfTheLists(TreeCase tree)
    {
        DeviceInCondition[] found = Found(tree.Site());
        foreach (Site other in new[] { tree.Site(d => -d, r => -r), tree.Site(d => (d * 7) % 11, r => (r * 3) % 7) })
        {
            foreach (DeviceInCondition again in Found(other))
            {
                DeviceInCondition first = found.Single(f => f.Device.Name == again.Device.Name);
                Assert.Equal(first.State, again.State);
                Assert.Equal(first.Start, again.Start);
                if (first.State == DeviceState.Up) Assert.Equal(first.Voltage.Volts, again.Voltage.Volts, Close);
            }
        }
    }

    private static DeviceInCondition[] Found(Site site) => [.. site.Assess().Devices.Select(d => d.Worst)];

    private static bool[] All(TreeCase tree) => [.. Enumerable.Repeat(true, tree.Devices.Count)];
}
