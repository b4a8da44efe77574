using System.Collections.Generic;
using System.Linq;
using CamPower.Tests.Verdicts;

namespace CamPower.Tests.Checks;

/// <summary>Every text of the rules and inspections is in the words of the trade, and in short sentences.</summary>
public class RuleWordsTests
{
    private const int InAFinding = 20, Elsewhere = 25, Title = 10;

    public static TheoryData<string> RuleIds => [.. RuleSet.Standard.Rules.Select(r => r.Id)];

    public static TheoryData<string> Installations => [.. VerdictTable.All.Select(c => c.Name)];

    [Theory]
    [MemberData(nameof(RuleIds))]
    public void RuleAndItsFinding_KeepTheWords(string id)
    {
        Rule rule = RuleSet.Standard.Rules.Single(r => r.Id == id);
        // A thin margin is the term; nothing else is thin.
        AssertNone(Wording.Faults($"Rule {rule.Id.Replace('-', ' ').Replace("thin ", "small ", System.StringComparison.Ordinal)}.", Elsewhere));
        AssertNone(Wording.Faults($"It is {rule.Title}.", Title));
        AssertNone(Wording.Faults(rule.Purpose, Elsewhere));
        AssertNone(Wording.Faults(rule.Remedy, InAFinding));
        AssertNone(FaultsOf(RuleCases.All.Single(c => c.Rule == id).Fires));
    }

    [Theory]
    [MemberData(nameof(Installations))]
    public void FindingsOfAnInstallation_KeepTheWords(string name) =>
        AssertNone(FaultsOf(VerdictTable.All.Single(c => c.Name == name).Installation.ToSite()));

    [Fact]
    public void Inspections_KeepTheWords() => AssertNone(InspectionList.Standard.Items
        .SelectMany(item => new[] { item.Look, item.Why, item.Caution }).SelectMany(text => Wording.Faults(text, Elsewhere)));

    [Theory]
    [InlineData("The device opens.", "device opens")]
    [InlineData("Use a thicker conductor.", "thicker")]
    [InlineData("It has 1 outputs.", "1 outputs")]
    [InlineData("It draws one two three four five six seven eight nine ten eleven twelve " +
        "thirteen fourteen fifteen sixteen seventeen eighteen A.", "21 words")]
    [InlineData("It has no end", "no full stop")]
    public void Wording_NamesWhatIsWrong(string text, string fault) =>
        Assert.Contains(Wording.Faults(text, InAFinding), found => found.Contains(fault, System.StringComparison.Ordinal));

    [Theory]
    [InlineData("Its protective device opens within 1.4 s at 11 A.")]
    [InlineData("It draws 1.50 A in \"a night with a very long name that somebody declares\"; its limit is 1.1 A (as the sheet says).")]
    public void Wording_TakesWhatIsRight(string text) => AssertNone(Wording.Faults(text, InAFinding));

    private static void AssertNone(IEnumerable<string> faults) => Assert.Equal(string.Empty, string.Join("\n", faults));

    private static IEnumerable<string> FaultsOf(Site site) => Wording.FaultsOf(RuleSet.Standard.Check(site.Assess()), site);
}
