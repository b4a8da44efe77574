using System;
using System.Collections.Generic;
using System.Linq;
using System.Text.RegularExpressions;
using CamPower.Commissioning;
using UnitsNet;

namespace CamPower.Tests.Commissioning;

/// <summary>The diagnosis talks nobody into danger, and in short sentences.</summary>
public partial class CauseWordsTests
{
    private static readonly Cause[] Causes = Enum.GetValues<Cause>();

    private static IEnumerable<string> Texts =>
    [
        .. Causes.Select(CauseWords.ToDo), .. Causes.Select(CauseWords.Safety), CauseWords.Danger, CauseWords.NotSettled, CauseWords.NoReadingLeft,
        .. Causes.SelectMany(one => Causes, (one, other) => CauseWords.Separates([one, other])),
    ];

    [Fact]
    public void Sentences_HaveAtMost20Words() => Assert.All(
        Texts.SelectMany(t => t.Split(['.', ':', ';'], StringSplitOptions.RemoveEmptyEntries)),
        s => Assert.InRange(s.Split(' ', StringSplitOptions.RemoveEmptyEntries).Length, 0, 20));

    // The mains are named only to say who works on them; a ladder only with a second person; a battery only with its load off.
    [Fact]
    public void Mains_AreForALicensedElectrician() =>
        Assert.All(Texts.Where(t => t.Contains("mains", StringComparison.OrdinalIgnoreCase)), t => Assert.Contains("licensed electrician", t, StringComparison.Ordinal));

    [Fact]
    public void Ladder_IsNeverClimbedAlone() =>
        Assert.All(Texts.Where(t => t.Contains("ladder", StringComparison.OrdinalIgnoreCase)), t => Assert.Contains("second person", t, StringComparison.Ordinal));

    [Fact]
    public void BatteryCircuit_IsOpenedWithoutLoadOnly() => Assert.All(
        Texts.Where(t => OpensABattery().IsMatch(t)), t => Assert.Matches("(?i)no load on it|load off|switch the load off", t));

    [Fact]
    public void NoText_AsksToMeasureEnergizedMainsOrBridgeAProtectiveDevice()
    {
        Assert.DoesNotContain(Texts, t => MeasuresMains().IsMatch(t));
        Assert.DoesNotContain(Texts, t => Bridges().IsMatch(t));
    }

    [Fact]
    public void Dangers_AskToIsolateFirst()
    {
        Assert.Equal([Cause.WaterInJoint, Cause.ShortCircuit], Causes.Where(CauseWords.IsDanger));
        Assert.All(Causes.Where(CauseWords.IsDanger), c => Assert.StartsWith("Isolate first", CauseWords.Safety(c), StringComparison.Ordinal));
    }

    [Fact]
    public void EveryCause_HasAName_SomethingToDoAndASafetyStep()
    {
        Assert.Equal(Causes.Length, Causes.Select(CauseWords.NameOf).Distinct(StringComparer.Ordinal).Count());
        Assert.All(Causes, c => Assert.NotEmpty(CauseWords.ToDo(c)));
        Assert.All(Causes, c => Assert.NotEmpty(CauseWords.Safety(c)));
    }

    [Fact]
    public void Priors_AreReplacedAndRefused()
    {
        CausePriors priors = CausePriors.CommonPractice.With(Cause.WaterInJoint, 30).WithSound(Ratio.FromPercent(10));
        Assert.Equal(30, priors.WeightOf(Cause.WaterInJoint));
        Assert.Equal(10, priors.Sound.Percent, 1e-9);
        Assert.Equal(0, priors.WeightOf(Cause.None));
        Assert.Throws<ArgumentException>("cause", () => priors.With(Cause.None, 1));
        Assert.Throws<ArgumentOutOfRangeException>("weight", () => priors.With(Cause.PoorJoint, -1));
        Assert.Throws<ArgumentOutOfRangeException>("cause", () => priors.WeightOf((Cause)99));
        Assert.Throws<ArgumentOutOfRangeException>("share", () => priors.WithSound(Ratio.FromPercent(100)));
    }

    [Theory]
    [InlineData("gate: plate: restarts", "gate: plate", "gate: plate: restarts")]
    [InlineData(" mast :  Flickers at dusk ", "mast", "mast: flickers at dusk")]
    [InlineData("several at once", null, "several at once")]
    public void Symptom_IsReadAsItIsWritten(string text, string? device, string written)
    {
        Assert.Equal(device, Symptom.Parse(text).Device);
        Assert.Equal(written, Symptom.Parse(text).ToString());
    }

    [Theory]
    [InlineData("mast: sulks")]
    [InlineData("dark")]
    [InlineData("")]
    public void OtherWords_AreRefused(string text) => Assert.Throws<FormatException>(() => Symptom.Parse(text));

    [GeneratedRegex("(?i)(disconnect|open|touch)[^.]*battery")]
    private static partial Regex OpensABattery();

    [GeneratedRegex("(?i)(measure|read|probe|check)[^.]*(mains|receptacle|line voltage|primary)")]
    private static partial Regex MeasuresMains();

    [GeneratedRegex("(?i)(?<!never )bridge")]
    private static partial Regex Bridges();
}
