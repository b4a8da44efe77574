using System;
using System.Reflection;
using System.Runtime.Versioning;
using CamPower.Tests.Repository;
using Consumers.NetStandard;

namespace CamPower.Consumers.Tests;

public class NetStandardTests
{
    public const string Expected = "tests/Consumers/gate-plan.txt";

    [Fact]
    public void LibraryAndPackage_AreTheirNetStandardBuilds()
    {
        Assert.Equal(".NETStandard,Version=v2.0", FrameworkOf(typeof(GatePlan)));
        Assert.Equal(".NETStandard,Version=v2.0", FrameworkOf(typeof(Load)));
    }

    [Fact]
    public void GatePlan_IsWhatItWas() => GeneratedPage.AssertCurrent(Expected, string.Join('\n', GatePlan.Lines()) + "\n");

    // The README works this run out by hand: 10.56 V.
    [Fact]
    public void GatePlan_BeginsWithTheRunOfTheReadme() =>
        Assert.Contains(GatePlan.Lines(), l => l.StartsWith("10.564 V, 0.852 A from 12 V", StringComparison.Ordinal));

    private static string FrameworkOf(Type type) => type.Assembly.GetCustomAttribute<TargetFrameworkAttribute>()!.FrameworkName;
}
