using System;
using System.Collections.Generic;
using System.IO;
using System.Linq;
using CamPower.Tests.Checks;
using CamPower.Tests.Repository;

namespace CamPower.Tests.Verdicts;

/// <summary>
/// What the findings of every installation of the table, and of every rule's own site, say word for word. Whether they are right the table and the rules' cases ask; this page
/// shows a change of words or numbers to whoever reviews it. Made anew with the switch of the other pages.
/// </summary>
public class FindingsPageTests
{
    private const string Page = "tests/CamPower.Tests/Verdicts/findings.txt", Heading = "== ";

    private static readonly Lazy<Dictionary<string, string>> Committed = new(() => File.ReadAllText(RepositoryFiles.PathOf(Page)).ReplaceLineEndings("\n")
        .Split(Heading, StringSplitOptions.RemoveEmptyEntries).ToDictionary(section => section.Split('\n')[0], section => Heading + section));

    public static TheoryData<string> Names => [.. Sites().Select(site => site.Name)];

    [Theory]
    [MemberData(nameof(Names))]
    public void Findings_AreThoseOfThePage(string name)
    {
        string section = Section(name, Sites().Single(site => site.Name == name).Make());
        Assert.Equal(GeneratedPage.IsRegenerating ? section : Committed.Value.GetValueOrDefault(name), section);
    }

    [Fact]
    public void Page_HasASectionForEachInOrder()
    {
        if (GeneratedPage.IsRegenerating) GeneratedPage.AssertCurrent(Page, string.Concat(Sites().Select(site => Section(site.Name, site.Make()))));
        Assert.Equal(Sites().Select(site => site.Name), Committed.Value.Keys);
    }

    private static IEnumerable<(string Name, Func<Site> Make)> Sites() =>
        VerdictTable.All.Select(c => (c.Name, (Func<Site>)c.Installation.ToSite)).Concat(RuleCases.All.Select(c => ($"site of {c.Rule}", (Func<Site>)(() => c.Fires))));

    private static string Section(string name, Site site) =>
        $"{Heading}{name}\n{string.Concat(RuleSet.Standard.Check(site.Assess()).Select(Line))}\n";

    // A remedy of its own is said as well; the others are in docs/rules.md.
    private static string Line(Finding f) => FormattableString.Invariant(
        $"{f.Severity}, {f.Rule}, {f.About.Name}: {f.Message}{OwnRemedy(f)} [{f.Measured:G4} / {f.Limit:G4} / {f.Condition}]\n");

    private static string OwnRemedy(Finding f) => RuleSet.Standard.Rules.Single(r => r.Id == f.Rule).Remedy == f.Remedy ? string.Empty : $" To do: {f.Remedy}";
}
