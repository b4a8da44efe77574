using System;

namespace CamPower.Tests.Repository;

public class RulesPageTests
{
    [Fact]
    public void PageOfRules_IsCurrent() => GeneratedPage.AssertCurrent("docs/rules.md", RulesPage.Text());

    [Fact]
    public void EveryRule_IsOnThePage() =>
        Assert.All(RuleSet.Standard.Rules, rule => Assert.Contains($"### {rule.Id}\n", RulesPage.Text(), StringComparison.Ordinal));

    [Fact]
    public void EveryInspection_IsOnThePage() =>
        Assert.All(InspectionList.Standard.Items, item => Assert.Contains($"### {item.Id}\n\n{item.Look}", RulesPage.Text(), StringComparison.Ordinal));
}
