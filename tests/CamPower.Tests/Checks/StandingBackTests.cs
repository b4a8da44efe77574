using System;
using System.Collections.Generic;
using System.Linq;
using CamPower.Tests.Sites;
using UnitsNet;
using static CamPower.Tests.Sites.SmallSite;

namespace CamPower.Tests.Checks;

/// <summary>A rule stands back for those of its own set alone: whoever drops a rule still hears of its cause where another rule judges it.</summary>
public class StandingBackTests
{
    private static readonly Condition Day = Condition.Day(At()), Night = Condition.Night(At()), Hot = Condition.Day(At(box: 75)), Cold = Condition.Night(At(box: -25));

    public static TheoryData<string> RuleIds => [.. RuleSet.Standard.Rules.Select(r => r.Id)];

    // What each rule leaves to another one, and who speaks when that one is dropped.
    public static TheoryData<string, string, string> Pairs => new()
    {
        { "24 V on 9 V to 14 V", "supply-voltage-too-high", "overvoltage-at-light-load" },
        { "trimmed to 14 V on 9 V to 13 V", "overvoltage-at-light-load", "overvoltage-at-no-load" },
        { "130 V", "voltage-above-extra-low", "voltage-above-accessible" },
        { "1.5 A twice on an adapter of 2 A", "split-adapter-beyond-rating", "supply-above-derated-rating" },
        { "2.5 A on an adapter of 2 A", "supply-above-derated-rating", "output-overloaded" },
        { "12 A on a box of 10 A", "supply-above-derated-rating", "supply-above-headroom-policy" },
        { "75 °C", "supply-too-hot", "supply-above-derated-rating" },
        { "-25 °C", "supply-too-cold", "supply-above-derated-rating" },
        { "11 V of 11.5 V", "undervoltage", "thin-voltage-margin" },
        { "13 W over 3 ohm", "no-operating-point", "settles-below-drop-out" },
    };

    [Theory]
    [MemberData(nameof(Pairs))]
    public void WhoDropsARule_HearsOfItsCauseFromTheOneThatStoodBack(string site, string dropped, string next)
    {
        SiteAssessment solved = SiteOf(site).Assess();
        Finding first = Assert.Single(WithoutFaultsUnknown.Check(solved), f => f.Rule == dropped || f.Rule == next);
        Assert.Equal(dropped, first.Rule);
        Finding second = Assert.Single(WithoutFaultsUnknown.Without(dropped).Check(solved), f => f.Rule == next);
        Assert.Equal((first.About.Kind, first.About.Name), (second.About.Kind, second.About.Name));
    }

    // Every site on which a rule of the standard set speaks, with what each rule would say alone.
    private static readonly Lazy<(SiteAssessment Solved, Finding[] Alone)[]> Spoken = new(() =>
    [
        .. RuleCases.All.Select(c => c.Fires).Concat(Pairs.Select(p => SiteOf((string)p[0]))).Select(s => s.Assess())
            .Select(solved => (solved, RuleSet.Standard.Rules.SelectMany(rule => new RuleSet([rule]).Check(solved)).ToArray())),
    ]);

    // What stood back for a rule alone speaks once that is dropped.
    [Theory]
    [MemberData(nameof(RuleIds))]
    public void Without_LosesNoCauseThatAnotherRuleJudges(string id)
    {
        RuleSet without = RuleSet.Standard.Without(id);
        foreach ((SiteAssessment solved, Finding[] ofEachAlone) in Spoken.Value)
        {
            IReadOnlyList<Finding> found = without.Check(solved);
            foreach (Finding alone in ofEachAlone.Where(f => f.Rule != id))
            {
                Rule rule = without.Rules.Single(r => r.Id == alone.Rule);
                Assert.Contains(found, f => f.About.Kind == alone.About.Kind && f.About.Name == alone.About.Name
                    && (f.Rule == rule.Id || rule.YieldsTo.Contains(f.Rule) || rule.YieldsInConditionsOf.Contains(f.Rule)));
            }
        }
    }

    [Fact]
    public void StandardRules_StandBackForRulesThatThereAre() => Assert.All(
        RuleSet.Standard.Rules.SelectMany(r => r.YieldsTo.Concat(r.YieldsInConditionsOf)), id => Assert.Contains(RuleSet.Standard.Rules, r => r.Id == id));

    // Who is silent silences nobody: too hot by day speaks for the rating there, and the rating of the day for nothing at night.
    [Fact]
    public void ASilentRule_SilencesNobody()
    {
        Site site = Star(Box(Dc(amperes: 10)), [Hot, Night], (0, Camera(new ComponentDraw(Amperes(1), infrared: Amperes(7.5)))));
        Assert.Equal([("supply-too-hot", "day"), ("supply-above-headroom-policy", "night")], WithoutFaultsUnknown.Check(site.Assess()).Select(f => (f.Rule, f.Condition!.Name)));
        Assert.Equal([("supply-above-derated-rating", "day")], WithoutFaultsUnknown.Without("supply-too-hot").Check(site.Assess()).Select(f => (f.Rule, f.Condition!.Name)));
    }

    // Of a box that is too cold on one night the load of the other days is judged as ever (common practice: 80 % of 10 A).
    [Fact]
    public void ABoxThatIsTooCold_SpeaksForThatConditionAlone()
    {
        Site site = Star(Box(Dc(amperes: 10), limit: 8), [Condition.Day(At()), Cold], (0, Camera(Amperes(8.5))));
        Assert.Equal([("output-overloaded", "day"), ("supply-above-headroom-policy", "day"), ("supply-too-cold", "night")],
            WithoutFaultsUnknown.Check(site.Assess()).Select(f => (f.Rule, f.Condition!.Name)).Order());
    }

    // Of two hot conditions the hotter is told, and the other one is spoken for as well.
    [Fact]
    public void AFindingSpeaksForAllConditionsInWhichItWasFound()
    {
        Site site = Star(Box(), [Hot, Condition.Night(At(box: 72))], (0, Camera(Amperes(1))));
        Assert.Equal([("supply-too-hot", "day")], WithoutFaultsUnknown.Check(site.Assess()).Select(f => (f.Rule, f.Condition!.Name)));
    }

    [Fact]
    public void TheOrderOfTheRules_DoesNotMatter()
    {
        SiteAssessment solved = SiteOf("24 V on 9 V to 14 V").Assess();
        Assert.Equal(WithoutFaultsUnknown.Check(solved).Select(f => f.Rule), new RuleSet(WithoutFaultsUnknown.Rules.Reverse()).Check(solved).Select(f => f.Rule));
    }

    [Fact]
    public void RulesThatStandBackForEachOther_AreRefused()
    {
        var circle = new[] { new Modest("a", "b"), new Modest("b", "c"), new Modest("c", "a") };
        Assert.Contains("each other", Assert.Throws<ArgumentException>(() => new RuleSet(circle)).Message, StringComparison.Ordinal);
        Assert.Throws<ArgumentException>(() => new RuleSet([new Modest("a", "a")]));
        SiteAssessment solved = SiteOf("75 °C").Assess();
        Assert.Equal(["c"], new RuleSet([new Modest("a", "c"), new Modest("b", "c"), new Modest("c")]).Check(solved).Select(f => f.Rule));
        Assert.Equal(["a", "b"], new RuleSet([new Modest("a", "c"), new Modest("b", "c")]).Check(solved).Select(f => f.Rule));
    }

    // One finding may be milder or more pressing than its rule, with a remedy of its own.
    [Fact]
    public void AFinding_MayHaveASeverityAndARemedyOfItsOwn()
    {
        Finding finding = Assert.Single(new RuleSet([new Modest("a") { Severity = Severity.Danger, Own = "Switch it off." }]).Check(SiteOf("75 °C").Assess()));
        Assert.Equal((Severity.Danger, "Switch it off."), (finding.Severity, finding.Remedy));
        Assert.Throws<ArgumentOutOfRangeException>(() => new Modest("a") { Severity = (Severity)7 }.Check(new Evidence(SiteOf("75 °C").Assess())).ToList());
        Assert.Throws<ArgumentException>(() => new Modest("a") { Own = " " }.Check(new Evidence(SiteOf("75 °C").Assess())).ToList());
    }

    private static Site SiteOf(string name) => name switch
    {
        "24 V on 9 V to 14 V" => Single(0, Camera(Watts(3), Range(9, 14)), Dc(24)),
        "trimmed to 14 V on 9 V to 13 V" => Single(0.1, Camera(Watts(3), Range(9, 13)),
            new Supply("trimmed", new DcOutput(Volts(12), ElectricCurrent.FromAmperes(9), Ratio.Zero, Range(11, 15), Volts(14)), Derating.GenericEnclosed)),
        "130 V" => Single(0, Camera(Watts(3), Range(9, 200)), Dc(130)),
        "1.5 A twice on an adapter of 2 A" => Shared(0, Adapter(Dc(amperes: 2)), [Day], Camera(Amperes(1.5)), Camera(Amperes(1.5))),
        "2.5 A on an adapter of 2 A" => Star(Adapter(Dc(amperes: 2)), [Day], (0, Camera(Amperes(2.5)))),
        "12 A on a box of 10 A" => Star(Box(Dc(amperes: 10)), [Day], (0, Camera(Amperes(12)))),
        "75 °C" => Star(Box(), [Hot], (0, Camera(Amperes(1)))),
        "-25 °C" => Star(Box(), [Cold], (0, Camera(Amperes(1)))),
        "11 V of 11.5 V" => Single(1, Camera(Amperes(1), Range(11.5, 20))),
        _ => Single(3, Camera(Watts(13), starting: Starts(9, 8))),
    };

    private sealed class Modest(string id, params string[] speakers) : Rule(id, CamPower.Severity.Note, "p", "r", Sources.CommonPractice)
    {
        internal new Severity? Severity { get; init; }

        internal string? Own { get; init; }

        public override IReadOnlyList<string> YieldsTo => speakers;

        public override IEnumerable<Finding> Check(Evidence evidence) =>
            [Find(new Subject(SubjectKind.Site, evidence.Assessment.Site.Name), "m", severity: Severity, remedy: Own)];
    }
}
