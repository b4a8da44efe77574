using System;
using System.Collections.Generic;
using System.Linq;
using System.Text.RegularExpressions;
using CamPower.Commissioning;
using CamPower.Tests.Backup;
using CamPower.Tests.Sites;
using CamPower.Tolerance;

namespace CamPower.Tests.Commissioning;

/// <summary>No step talks anybody into danger, and each is in short sentences.</summary>
public partial class ReadingStepsTests
{
    private const int MostWords = 20;

    // Every kind in every state, on a box, an adapter, a box on a battery and one of alternating current.
    private static IEnumerable<ExpectedReading> All()
    {
        DistributionBox[] boxes =
        [
            SmallSite.Box(), SmallSite.Adapter(), SmallSite.Box(SmallSite.Dc(24, kind: CurrentKind.Ac)),
            SmallSite.Box().WithBattery(Batteries.Of(6.5, full: 13, empty: 11.5, ohms: 0.15), ProtectiveDevice.None),
        ];
        var model = new Device("dome", DeviceKind.Camera, new ComponentDraw(SmallSite.Watts(4), infrared: SmallSite.Watts(5)),
            dcInput: SmallSite.Range(10.8, 13.2), acInput: SmallSite.Range(21.6, 26.4));
        foreach (DistributionBox box in boxes)
        {
            Site site = SmallSite.Star(box, [Condition.Night(CommissioningSamples.Mild)], (1, model));
            var sheet = new CommissioningSheet(site, SiteTolerance.Standard, Meter.Handheld, CommissioningSamples.Mild);
            foreach (ReadingPoint point in PointsOf()) yield return sheet.Expect(point);
        }
    }

    private static IEnumerable<ReadingPoint> PointsOf()
    {
        foreach (ReadingKind kind in Enum.GetValues<ReadingKind>())
        {
            foreach (ReadingState state in Enum.GetValues<ReadingState>().Where(s => ReadingWords.Suits(kind, s)))
            {
                yield return kind switch
                {
                    ReadingKind.SupplyVoltage => ReadingPoint.AtSupply(SmallSite.BoxName, state),
                    ReadingKind.PlugVoltage or ReadingKind.LoopResistance => ReadingPoint.AtDevice(kind, SmallSite.Name(0), state),
                    ReadingKind.JunctionVoltage or ReadingKind.JunctionLoopResistance => ReadingPoint.AtJunction(kind, SmallSite.Place(0), state),
                    _ => ReadingPoint.AtOutput(kind, SmallSite.BoxName, 1, state),
                };
            }
        }
    }

    [Fact]
    public void Steps_CoverEveryKindAndState() => Assert.Equal(4 * 19, All().Count());

    // A sentence with mains in it pulls the plug, isolates it, or keeps the cover closed: it never puts a lead there.
    [Fact]
    public void NoText_SendsALeadToTheMains() => Assert.All(Sentences(), s =>
    {
        if (!s.Contains("mains", StringComparison.OrdinalIgnoreCase) && !s.Contains("receptacle", StringComparison.OrdinalIgnoreCase)) return;
        Assert.Matches("^(Keep the cover of the mains side closed|Unplug .* from its receptacle)", s);
        Assert.DoesNotMatch("(?i)read|measure|touch", s);
    });

    // A battery is disconnected without load, or not at all.
    [Fact]
    public void NoText_OpensABatteryCircuitUnderLoad()
    {
        Assert.All(Sentences(), s =>
        {
            if (!s.Contains("battery", StringComparison.OrdinalIgnoreCase)) return;
            Assert.Equal("Disconnect the battery only after every output is switched off and every device is unplugged", s);
        });
        Assert.Contains(Sentences(), s => s.Contains("battery", StringComparison.Ordinal));
    }

    // Whatever is done at a device may be up a ladder.
    [Fact]
    public void EveryReadingAtADevice_HasASecondPerson() => Assert.All(
        All().Where(r => r.Point.Kind is ReadingKind.PlugVoltage or ReadingKind.LoopResistance or ReadingKind.JunctionVoltage or ReadingKind.JunctionLoopResistance),
        r => Assert.Contains("second person", r.Safety, StringComparison.Ordinal));

    [Fact]
    public void NoCircuitIsOpenedForACurrent_AndNoResistanceIsReadOnALiveOne()
    {
        Assert.All(All().Where(r => r.Point.Kind == ReadingKind.OutputCurrent), r => Assert.StartsWith("Leave the circuit closed", r.Safety, StringComparison.Ordinal));
        Assert.All(All().Where(r => ReadingWords.UnitOf(r.Point.Kind) == "Ω"), r => Assert.True(r.Point.IsDead));
    }

    [Fact]
    public void Sentences_AreShort() => Assert.All(Sentences(), s => Assert.InRange(s.Split(' ').Length, 1, MostWords));

    private static IEnumerable<string> Sentences() => All().SelectMany(r => SentenceEnd().Split(r.Step + " " + r.Safety))
        .Select(s => s.Trim().TrimEnd('.')).Where(s => s.Length > 0);

    [GeneratedRegex(@"(?<=\.)\s")]
    private static partial Regex SentenceEnd();
}
