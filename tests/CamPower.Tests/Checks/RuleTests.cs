using System.Collections.Generic;
using System.Linq;
using CamPower.Tests.Repository;
using CamPower.Tests.Sites;
using UnitsNet;

namespace CamPower.Tests.Checks;

public class RuleTests
{
    public static TheoryData<string> Rules => [.. RuleSet.Standard.Rules.Select(r => r.Id)];

    // A rule without a case fails here, by name.
    [Theory]
    [MemberData(nameof(Rules))]
    public void Rule_SpeaksOfItsFaultAndOfNothingElse(string id)
    {
        RuleCase expected = CaseOf(id);
        Finding finding = Assert.Single((id is "faults-unknown" or "joint-overloaded" ? RuleSet.Standard : SmallSite.WithoutFaultsUnknown).Check(expected.Fires.Assess()), f => f.Severity > Severity.Note || expected.Severity == Severity.Note);
        Assert.Equal(id, finding.Rule);
        Assert.Equal(expected.Severity, finding.Severity);
        Assert.Equal(expected.About, finding.About.Name);
        Assert.Equal(expected.Condition, finding.Condition?.Name);
        AssertValue(expected.Measured, finding.Measured, expected.Unit);
        AssertValue(expected.Limit, finding.Limit, expected.Unit);
        Rule rule = RuleSet.Standard.Rules.Single(r => r.Id == id);
        Assert.NotEmpty(finding.Remedy);
        Assert.Same(rule.Source, finding.Source);
        Assert.Contains(finding.Message, finding.ToString(), System.StringComparison.Ordinal);
    }

    [Theory]
    [MemberData(nameof(Rules))]
    public void Rule_IsSilentAHairInside(string id) =>
        Assert.DoesNotContain(RuleSet.Standard.Check(CaseOf(id).Neighbor.Assess()), f => f.Rule == id);

    [Fact]
    public void Cases_AreOfRulesThatThereAre() =>
        Assert.Equal(RuleSet.Standard.Rules.Select(r => r.Id).Order(), RuleCases.All.Select(c => c.Rule).Order());

    // The one name of a rule: supply-too-hot is Rules.SupplyTooHot. Every member is in the standard set, and the set has no other rule.
    [Fact]
    public void Members_AreNamedLikeTheirRules_AndMakeTheStandardSet()
    {
        Assert.All(RuleMembers.All, m => Assert.Equal(m.Rule.Id.Replace("-", "", System.StringComparison.Ordinal), m.Member.ToLowerInvariant()));
        Assert.Equal(RuleSet.Standard.Rules.Select(r => r.Id).Order(), RuleMembers.All.Select(m => m.Rule.Id).Order());
    }

    [Theory]
    [MemberData(nameof(Rules))]
    public void Rule_SaysTheSameInEveryCulture(string id) =>
        Cultures.AssertSame(() => string.Join("|", RuleSet.Standard.Check(CaseOf(id).Fires.Assess()).Select(f => f + " " + f.Condition)));

    [Theory]
    [MemberData(nameof(Rules))]
    public void Rule_RefusesNoEvidence(string id) =>
        Assert.Throws<System.ArgumentNullException>(() => RuleSet.Standard.Rules.Single(r => r.Id == id).Check(null!).ToList());

    private static RuleCase CaseOf(string id) => RuleCases.All.Single(c => c.Rule == id);

    private static void AssertValue(double? expected, IQuantity? found, string unit)
    {
        Assert.Equal(expected is null, found is null);
        if (found is null) return;
        double value = unit switch
        {
            "V" => Assert.IsType<ElectricPotential>(found).Volts,
            "A" => Assert.IsType<ElectricCurrent>(found).Amperes,
            "°C" => Assert.IsType<Temperature>(found).DegreesCelsius,
            "m" => Assert.IsType<Length>(found).Meters,
            "mm²" => Assert.IsType<Area>(found).SquareMillimeters,
            "W" => (double)Assert.IsType<Power>(found).Watts,
            "s" => Assert.IsType<Duration>(found).Seconds,
            "VA" => Assert.IsType<ElectricApparentPower>(found).Voltamperes,
            _ => Assert.IsType<Scalar>(found).Amount,
        };
        Assert.Equal(expected!.Value, value, 2e-8);
    }
}
