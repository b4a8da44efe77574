using System;
using System.Collections.Generic;
using System.IO;
using System.Linq;
using CamPower;
using CamPower.Files;
using CamPower.Tests.Repository;

namespace SiteCheck.Tests;

/// <summary>One thing wrong in the yard as designed is found as that, and as nothing else.</summary>
public class SingleFaultTests
{
    private static readonly string Designed = File.ReadAllText(RepositoryFiles.PathOf("samples/SiteCheck/sites/boatyard.json"));

    public static TheoryData<string> Faults => [.. SingleFaults.All.Select(fault => fault.What)];

    [Theory]
    [MemberData(nameof(Faults))]
    public void Fault_AddsTheFindingsOfItsRow_AndNoOther(string what)
    {
        SingleFault fault = SingleFaults.All.Single(f => f.What == what);
        Assert.Equal(fault.Found.Order(), FindingsIn(fault.In(Designed)).Order());
    }

    [Fact]
    public void EveryRule_IsBroughtOutByAFault() =>
        Assert.Equal(RuleSet.Standard.Rules.Select(r => r.Id).Order(), SingleFaults.All.SelectMany(fault => fault.Rules).Distinct().Order());

    [Theory]
    [InlineData("""devices/gate plate/leadsReversed = nothing""")]
    [InlineData("""devices/no such camera/leadsReversed = true""")]
    [InlineData("""boxes/yard box/no such member/limit = "1 A" """)]
    [InlineData("""boxes/yard box/supply/setPoint = "13 V" """)]
    public void AChangeThatChangesNothing_Throws(string change) =>
        Assert.Throws<ArgumentException>(() => new SingleFault("nothing", change).In(Designed));

    private static IReadOnlyList<string> FindingsIn(string site)
    {
        SiteFileResult read = SiteFile.Read(site);
        Assert.Empty(read.Errors);
        return [.. RuleSet.Standard.Check(read.Site!.Assess()).Select(f => $"{f.Rule}: {f.About.Name}")];
    }
}
