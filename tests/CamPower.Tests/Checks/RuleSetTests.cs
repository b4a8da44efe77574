using System;
using System.Collections.Generic;
using System.Linq;
using CamPower.Tests.Sites;
using UnitsNet;
using static CamPower.Tests.Sites.SmallSite;

namespace CamPower.Tests.Checks;

public class RuleSetTests
{
    private static readonly RuleSet Empty = new([]);

    // Much at once: a wrong current, an overload of output and supply, a restart, copper-clad aluminum, a recorder, a motor.
    private static readonly SiteAssessment Troubled = TroubledSite().Assess();

    // Whatever subset of the rules is asked, each finds what it finds alone, or a rule of the subset for which it stands back speaks of the same thing.
    [SeededProperty(MaxTest = 300)]
    public void EveryRule_FindsTheSameInAnySubset_OrIsSpokenFor(int seed)
    {
        var random = new Random(seed);
        Rule[] rules = [.. RuleSet.Standard.Rules.Where(_ => random.Next(2) == 1)];
        IReadOnlyList<Finding> found = new RuleSet(rules).Check(Troubled);
        List<Finding> alone = [.. rules.SelectMany(r => new RuleSet([r]).Check(Troubled))];
        Assert.Empty(Say(found).Except(Say(alone), StringComparer.Ordinal));
        foreach (Finding silent in alone.Where(f => !Say(found).Contains(Say([f]).Single(), StringComparer.Ordinal)))
        {
            Rule rule = rules.Single(r => r.Id == silent.Rule);
            Assert.Contains(found, f => rule.YieldsTo.Concat(rule.YieldsInConditionsOf).Contains(f.Rule) && f.About.Kind == silent.About.Kind && f.About.Name == silent.About.Name);
        }
    }

    [Fact]
    public void Troubled_IsATrial() => Assert.True(RuleSet.Standard.Check(Troubled).Select(f => f.Rule).Distinct().Count() >= 9);

    [Fact]
    public void Findings_AreWorstFirst_ThenInTheOrderOfTheRules()
    {
        IReadOnlyList<Finding> found = RuleSet.Standard.Check(Troubled);
        List<string> order = [.. RuleSet.Standard.Rules.Select(r => r.Id)];
        Assert.Equal(found.OrderByDescending(f => f.Severity).ThenBy(f => order.IndexOf(f.Rule)), found);
        Assert.Equal(Severity.Danger, found[0].Severity);
        Assert.Equal(Severity.Note, found[^1].Severity);
    }

    [Fact]
    public void With_PutsANewRuleLast_AndReplacesOneInItsPlace()
    {
        RuleSet more = RuleSet.Standard.With(new NoMotorsRule());
        Assert.Equal("no-motors", more.Rules[^1].Id);
        Assert.Equal(RuleSet.Standard.Rules.Count + 1, more.Rules.Count);

        var stricter = Rules.SupplyAboveHeadroomPolicy(Ratio.FromPercent(50));
        RuleSet changed = RuleSet.Standard.With(stricter);
        Assert.Equal(RuleSet.Standard.Rules.Select(r => r.Id), changed.Rules.Select(r => r.Id));
        Assert.Same(stricter, changed.Rules.Single(r => r.Id == stricter.Id));
        Assert.DoesNotContain(stricter, RuleSet.Standard.Rules);
    }

    [Fact]
    public void Without_DropsOne_AndLeavesTheOld()
    {
        int before = RuleSet.Standard.Rules.Count;
        RuleSet fewer = RuleSet.Standard.Without("copper-clad-aluminum");
        Assert.Equal(before - 1, fewer.Rules.Count);
        Assert.Equal(before, RuleSet.Standard.Rules.Count);
        Assert.DoesNotContain(fewer.Check(Troubled), f => f.Rule == "copper-clad-aluminum");
        Assert.Contains(RuleSet.Standard.Check(Troubled), f => f.Rule == "copper-clad-aluminum");
        Assert.Contains("copper-clad", Assert.Throws<ArgumentException>(() => fewer.Without("copper-clad-aluminum")).Message, StringComparison.Ordinal);
        Assert.Throws<ArgumentException>(() => fewer.Without("Undervoltage"));
        Assert.Throws<ArgumentNullException>(() => fewer.Without(null!));
    }

    [Fact]
    public void RuleOfOnesOwn_SpeaksBesideTheOthers()
    {
        Site site = Star((0, Camera(new ComponentDraw(Watts(3), motor: Watts(1)))), (0, Camera(Watts(3))));
        Finding finding = Assert.Single(WithoutFaultsUnknown.With(new NoMotorsRule()).Check(site.Assess()));
        Assert.Equal("no-motors", finding.Rule);
        Assert.Equal("camera 1", finding.About.Name);
        Assert.Equal("Choose a fixed camera.", finding.Remedy);
        Assert.Null(finding.Measured);
    }

    [Fact]
    public void Policies_AreTheirLimits()
    {
        Assert.Equal(80, Assert.IsType<Ratio>(Rules.SupplyAboveHeadroomPolicy().Limit).Percent);
        Assert.Equal(2, Assert.IsType<Ratio>(Rules.ThinVoltageMargin().Limit).Percent);
        Assert.Null(Rules.Undervoltage.Limit);

        // 5 A of 10 A; 12 V of 10 V to 20 V.
        SiteAssessment half = Star(Box(Dc(amperes: 10)), [Condition.Day(At())], (0, Camera(Amperes(5), Range(10, 20)))).Assess();
        Assert.Empty(WithoutFaultsUnknown.Check(half));
        Assert.Single(Empty.With(Rules.SupplyAboveHeadroomPolicy(Ratio.FromPercent(49.9))).Check(half));
        Assert.Empty(Empty.With(Rules.SupplyAboveHeadroomPolicy(Ratio.FromPercent(50))).Check(half));
        Assert.Single(Empty.With(Rules.ThinVoltageMargin(Ratio.FromPercent(20.1))).Check(half));
        Assert.Empty(Empty.With(Rules.ThinVoltageMargin(Ratio.FromPercent(19.9))).Check(half));
    }

    [Fact]
    public void Sets_RefuseNothingAndTheSameTwice()
    {
        Assert.Throws<ArgumentNullException>(() => new RuleSet(null!));
        Assert.Throws<ArgumentNullException>(() => new RuleSet([null!]));
        Assert.Contains("no-motors", Assert.Throws<ArgumentException>(() => new RuleSet([new NoMotorsRule(), new NoMotorsRule()])).Message, StringComparison.Ordinal);
        Assert.Throws<ArgumentNullException>(() => Empty.With(null!));
        Assert.Throws<ArgumentNullException>(() => Empty.Check((SiteAssessment)null!));
        Assert.Throws<ArgumentNullException>(() => Empty.Check((Evidence)null!));
        Assert.Throws<ArgumentNullException>(() => new Evidence(null!));
    }

    [Fact]
    public void Rules_RefuseBadWords()
    {
        Assert.All(new[] { "", " ", "Upper", "under_score", "two words", "ümlaut" }, id => Assert.Throws<ArgumentException>(() => new NamedRule(id)));
        Assert.Throws<ArgumentNullException>(() => new NamedRule(null!));
        Assert.Throws<ArgumentException>(() => new NamedRule("a", purpose: ""));
        Assert.Throws<ArgumentException>(() => new NamedRule("a", remedy: ""));
        Assert.Throws<ArgumentException>(() => new NamedRule("a", message: " ").Check(new Evidence(Troubled)));
        Assert.Equal("a-1", new NamedRule("a-1").ToString());
        Assert.Throws<ArgumentOutOfRangeException>(() => new NamedRule("a", (Severity)7));
        Assert.Throws<ArgumentOutOfRangeException>(() => new Subject((SubjectKind)99, "x"));
        Assert.Throws<ArgumentException>(() => new Subject(SubjectKind.Site, ""));
        Assert.Throws<ArgumentNullException>(() => Subject.Of((SiteDevice)null!));
        Assert.Throws<ArgumentNullException>(() => Subject.Of((SiteRun)null!));
        Assert.Throws<ArgumentNullException>(() => Subject.Of((DistributionBox)null!));
        Assert.Throws<ArgumentNullException>(() => Subject.Of(null!, Box().Outputs[0]));
        Assert.Throws<ArgumentNullException>(() => Subject.Of(Box(), null!));
    }

    [Theory]
    [InlineData(0)]
    [InlineData(-0.1)]
    [InlineData(1.01)]
    public void Headroom_IsAboveZeroAndAtMostOne(double share) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Rules.SupplyAboveHeadroomPolicy(Ratio.FromDecimalFractions(share)));

    [Theory]
    [InlineData(-0.1)]
    [InlineData(1.01)]
    public void Margin_IsFromZeroToOne(double share) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Rules.ThinVoltageMargin(Ratio.FromDecimalFractions(share)));

    private static Site TroubledSite()
    {
        Condition night = Condition.Night(At()), cold = Condition.ColdStart(At(box: 60));
        CableRun clad = new(Cable.Pair(WireSize.Awg(24), Stranding.Solid, ConductorMaterial.CopperCladAluminum10, isPreTerminated: true), Length.FromMeters(20));
        return new Site("troubled", [night, cold], [Box(Dc(12, 4, 10), 2, 1), DistributionBox.Adapter("lead", Dc(24, 1)), DistributionBox.Adapter("ac", Dc(24, kind: CurrentKind.Ac))],
            [
                new SiteRun(RunOrigin.Output(BoxName, 1), "a", clad), new SiteRun(RunOrigin.Junction("a"), "b", Runs.OfOhms(2)), new SiteRun(RunOrigin.Output(BoxName, 2), "c", Runs.OfOhms(0.1)),
                new SiteRun(RunOrigin.Output("lead", 1), "d", Runs.OfOhms(0)), new SiteRun(RunOrigin.Output("ac", 1), "e", Runs.OfOhms(0)),
            ],
            [
                new SiteDevice("one", Camera(new ComponentDraw(Watts(4), infrared: Watts(3)), Range(10.8, 13), Starts(10, 9)), "a"),
                new SiteDevice("two", Camera(Watts(6), Range(10.8, 13), Starts(11.5, 8, soft: false)), "b"),
                new SiteDevice("recorder", Camera(new ComponentDraw(Watts(30), motor: Watts(5)), Range(10, 13.5), kind: DeviceKind.Recorder), "c"),
                new SiteDevice("three", Camera(Watts(15), Range(10.8, 13)), "d"), new SiteDevice("four", Camera(Watts(15), Range(20, 30)), "d"),
                new SiteDevice("five", Camera(Watts(15)), "e"),
            ]);
    }

    private static IEnumerable<string> Say(IEnumerable<Finding> findings) => findings.Select(f => $"{f.Rule} {f} {f.Measured?.Value} {f.Limit?.Value} {f.Condition}");

    // A supply of ±10 % and a device that accepts ±10 %: 12 V × 1.1 and 13.2 V differ in the last bit only. Three times 0.1 A too.
    [Theory]
    [InlineData(12, 10)]
    [InlineData(24, 10)]
    [InlineData(12, 5)]
    [InlineData(24, 5)]
    [InlineData(13.8, 5)]
    [InlineData(48, 10)]
    public void Limits_AreNotPassedByRounding(double volts, double percent)
    {
        double lowest = Math.Round(volts * (100 - percent) / 100, 6), highest = Math.Round(volts * (100 + percent) / 100, 6);
        var label = new LabelDraw(Volts(volts), ElectricCurrent.FromAmperes(1), InputStage.Linear);
        RuleSet withoutMargin = SmallSite.WithoutFaultsUnknown.Without("thin-voltage-margin");
        Assert.Empty(withoutMargin.Check(Single(0, Camera(label, Range(lowest, highest)), Dc(volts, percent: percent), Condition.Day(At())).Assess()));
        Assert.Empty(withoutMargin.Check(Shared(0, Box(limit: 0.3), [Condition.Day(At())], Camera(Amperes(0.1)), Camera(Amperes(0.1)), Camera(Amperes(0.1))).Assess()));
    }
}
