using System;
using System.Collections.Generic;
using System.Linq;
using System.Threading.Tasks;
using CamPower.Tests.Assessment;

namespace CamPower.Tests.Sites;

/// <summary>Same site, same bits and same words, whatever the culture and the number of threads.</summary>
public class SameSiteTests
{
    private const int Threads = 8;

    private static readonly Site[] Sites = [.. Enumerable.Range(1, 40).Select(seed => TreeCases.Make(new Random(seed)).Site())];

    [Fact]
    public void Assessment_IsTheSameInEveryCulture()
    {
        List<string> expected = Everything();
        Assert.True(expected.Count > 1000);
        Cultures.ForEach(_ => Assert.Equal(expected, Everything()));
    }

    [Fact]
    public async Task Assessment_IsTheSameOnManyThreads()
    {
        List<string> expected = Everything();
        List<string>[] all = await Task.WhenAll(Enumerable.Range(0, Threads)
            .Select(_ => Task.Factory.StartNew(Everything, default, TaskCreationOptions.LongRunning, TaskScheduler.Default)));
        Assert.All(all, found => Assert.Equal(expected, found));
    }

    // A voltage is written as its bits: a last digit that differs would show.
    private static List<string> Everything()
    {
        var said = new List<string>();
        foreach (SiteAssessment assessment in Sites.Select(site => site.Assess()))
        {
            foreach (DeviceAssessment device in assessment.Devices)
            {
                said.AddRange([Bits(device.LightLoadVoltage.Volts), device.ToString(), $"{device.Worst.State} {device.Worst.Start}"]);
                said.Add(device.Worst.TryGetVoltage(out UnitsNet.ElectricPotential voltage) ? Bits(voltage.Volts) : "none");
            }

            said.AddRange(assessment.Boxes.SelectMany(b => new[] { b.ToString(), b.Outputs[0].ToString(), Bits(b.Worst.TotalCurrent.Amperes) }));
            said.AddRange(RuleSet.Standard.Check(assessment).Select(f => $"{f.Rule}: {f}"));
        }

        return said;
    }

    private static string Bits(double value) => BitConverter.DoubleToInt64Bits(value).ToString("x", System.Globalization.CultureInfo.InvariantCulture);
}
