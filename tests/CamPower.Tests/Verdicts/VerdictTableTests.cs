using System;
using System.Collections.Generic;
using System.Linq;

namespace CamPower.Tests.Verdicts;

public class VerdictTableTests
{
    public static TheoryData<string> Names => [.. VerdictTable.All.Select(c => c.Name)];

    [Theory]
    [MemberData(nameof(Names))]
    public void Installation_GetsTheVerdictsThatAnEngineerWouldSign(string name)
    {
        VerdictCase expected = VerdictTable.All.Single(c => c.Name == name);
        var found = RuleSet.Standard.Check(expected.Installation.ToSite().Assess()).ToList();
        List<Finding> above = [.. found
            .Where(f => f.Severity > Severity.Note || expected.Findings.Any(e => e.Severity == Severity.Note && e.IsMetBy(f)))];
        List<Expected> missing = [.. expected.Findings.Where(e => !above.Any(e.IsMetBy))];
        List<Finding> unexpected = [.. above.Where(f => !expected.Findings.Any(e => e.IsMetBy(f)))];
        Assert.True(missing.Count + unexpected.Count == 0,
            $"{name}: {expected.Why}\n{Lines("missing", missing)}{Lines("not expected", unexpected.Select(Words))}");
    }

    [Fact]
    public void Table_HoldsSixtyInstallationsAndHalfOfThemAreSound()
    {
        Assert.True(VerdictTable.All.Count >= 60, $"{VerdictTable.All.Count}");
        Assert.True(2 * VerdictTable.All.Count(c => c.IsSound) >= VerdictTable.All.Count - 1,
            $"{VerdictTable.All.Count(c => c.IsSound)} of {VerdictTable.All.Count}");
        Assert.Equal(VerdictTable.All.Count, VerdictTable.All.Select(c => c.Name).Distinct().Count());
    }

    private static string Words(Finding finding) =>
        $"{finding.Severity}: {finding.Rule} about {finding.About.Name}, measured {finding.Measured}, limit {finding.Limit} ({finding.Condition}): {finding.Message}";

    private static string Lines(string title, IEnumerable<object> items) =>
        string.Concat(items.Select(item => FormattableString.Invariant($"  {title}: {item}\n")));
}
