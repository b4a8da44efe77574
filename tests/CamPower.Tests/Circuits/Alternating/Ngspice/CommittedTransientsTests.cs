using System;
using System.Collections.Generic;
using System.Linq;
using CamPower.Circuits;
using CamPower.Tests.Repository;

namespace CamPower.Tests.Circuits.Alternating.Ngspice;

/// <summary>The package against the committed transients of the circuit simulator.</summary>
public class CommittedTransientsTests
{
    private static readonly IReadOnlyDictionary<(string Case, string Value), double> Committed = AlternatingDecks.Read();

    public static TheoryData<string> Names => [.. AlternatingCases.All.Select(c => c.Name)];

    [Fact]
    public void Cases_AreAtLeastSixty() => Assert.True(AlternatingCases.All.Count >= 60);

    [Theory]
    [MemberData(nameof(Names))]
    public void CommittedNetlist_IsThatOfItsCase(string name) => GeneratedPage.AssertCurrent(AlternatingDecks.PathOf(name), AlternatingDecks.Of(Named(name)));

    // RMS currents within 2 %, crests and valleys within 1 %.
    [Theory]
    [MemberData(nameof(Names))]
    public void Transient_AgreesWithThePackage(string name)
    {
        AlternatingCase of = Named(name);
        AlternatingSolution solution = of.Solve()!;
        Assert.All(AlternatingDecks.ValuesOf(of), value =>
        {
            double simulated = Committed[(name, value)], tolerance = value.StartsWith("rms", StringComparison.Ordinal) ? 0.02 : 0.01;
            Assert.InRange(AlternatingDecks.Answer(of, solution, value), simulated * (1 - tolerance), simulated * (1 + tolerance));
        });
    }

    private static AlternatingCase Named(string name) => AlternatingCases.All.Single(c => c.Name == name);
}
