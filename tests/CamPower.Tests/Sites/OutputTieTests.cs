using System;
using System.Linq;
using CamPower.Sites;
using UnitsNet;
using static CamPower.Tests.Sites.SmallSite;

namespace CamPower.Tests.Sites;

/// <summary>Outputs that somebody joined are named, and counted on by nothing.</summary>
public class OutputTieTests
{
    private static readonly DistributionBox Old = DistributionBox.Adapter("old adapter", Dc(13, percent: 10));

    [Fact]
    public void TieToNothing_IsAFaultOfTheSite()
    {
        var faults = ErrorsOf([], [Box(), Old], [], [], [], [], [new OutputTie("box", 5, "older adapter", 1), new OutputTie("box", 4, "old adapter", 1)]);
        Assert.Equal([("ties", 0, "One", "box has 4 outputs, there is no output 5"), ("ties", 0, "Other", "there is no box named older adapter")],
            faults.Select(f => (f.List, f.Index, f.Member, f.Message)));
    }

    [Fact]
    public void ImpossibleTie_IsRefused()
    {
        Assert.Throws<ArgumentException>(() => new OutputTie("box", 1, "box", 1));
        Assert.Throws<ArgumentException>(() => new OutputTie(" ", 1, "box", 1));
        Assert.Throws<ArgumentNullException>(() => new OutputTie("box", 1, null!, 1));
        Assert.Throws<ArgumentOutOfRangeException>(() => new OutputTie("box", 0, "box", 1));
        Assert.Throws<ArgumentOutOfRangeException>(() => new OutputTie("box", 1, "other", -1));
        Assert.Equal("tie of box output 1 and box output 2", new OutputTie("box", 1, "box", 2).ToString());
    }

    [Fact]
    public void Tie_ChangesNothingThatIsWorkedOut()
    {
        Site alone = With(), tied = With(new OutputTie("box", 2, "old adapter", 1));
        Assert.Equal(alone.Assess().Devices[0].Worst.ToString(), tied.Assess().Devices[0].Worst.ToString());
        Assert.Same(tied.Ties[0], tied.With(Box()).Ties[0]);
    }

    // 13 V and 10 % against 12 V: 2.3 V, whichever end the tie is named from.
    [Theory]
    [InlineData("box", 2, "old adapter", 1)]
    [InlineData("old adapter", 1, "box", 2)]
    public void BackFeed_IsFromTheHigherSupply(string one, int oneOutput, string other, int otherOutput)
    {
        Finding finding = Assert.Single(Found(new OutputTie(one, oneOutput, other, otherOutput)));
        Assert.Contains("old adapter can be 2.3 V higher and feed back", finding.Message, StringComparison.Ordinal);
        Assert.Equal(2.3, ((ElectricPotential)finding.Measured!).Volts, 1e-9);
    }

    [Fact]
    public void OutputsOfOneBox_AreNoBackFeed()
    {
        Finding finding = Assert.Single(Found(new OutputTie("box", 1, "box", 2)));
        Assert.Contains("both protective devices", finding.Message, StringComparison.Ordinal);
        Assert.Null(finding.Measured);
    }

    [Fact]
    public void AlternatingAndDirectCurrent_AreNamed()
    {
        var site = new Site("site", [Condition.Day(At())], [Box(), DistributionBox.Adapter("transformer", Dc(kind: CurrentKind.Ac))], [], [], ties: [new OutputTie("box", 1, "transformer", 1)]);
        Assert.Contains("AC and DC", Assert.Single(Rules.OutputsTiedTogether.Check(new Evidence(site.Assess()))).Message, StringComparison.Ordinal);
    }

    private static Finding[] Found(params OutputTie[] ties) => [.. Rules.OutputsTiedTogether.Check(new Evidence(With(ties).Assess()))];

    private static Site With(params OutputTie[] ties) => new("site", [Condition.Day(At())], [Box(), Old],
        [new SiteRun(RunOrigin.Output(BoxName, 1), "end", Runs.OfOhms(0.1))], [new SiteDevice("camera 1", Camera(Watts(3)), "end")], ties: ties);
}
