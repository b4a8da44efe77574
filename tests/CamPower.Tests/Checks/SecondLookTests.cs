using System;
using System.Linq;
using CamPower.Sites;
using CamPower.Tests.Protection;
using CamPower.Tests.Sites;
using CamPower.Tests.Verdicts;
using UnitsNet;
using static CamPower.Tests.Sites.SmallSite;

namespace CamPower.Tests.Checks;

/// <summary>What one fact is held against: an output that opens is no output that works, and a share of a code binds where the code does. Numbers by hand.</summary>
public class SecondLookTests
{
    // 0.53 A through a limit that is certain to carry 0.45 A and opens within 50 ms above 0.55 A: between them it may. 0.6 A open it for certain.
    [Theory]
    [InlineData(0.44, Verdict.Holds, false)]
    [InlineData(0.50, Verdict.Holds, false)]
    [InlineData(0.60, Verdict.Violated, true)]
    public void ADeviceBehindAnOutputThatOpens_DoesNotWork(double amperes, Verdict verdict, bool isOpened)
    {
        DeviceAssessment camera = Installation.Star(1).WithBox(b => b with { Protection = Parts.Electronic(0.5) })
            .EachDrop(d => d.Drawing(amperes) with { Inrush = null }).ToSite().Assess().Devices[0];
        Assert.Equal((verdict, isOpened), (camera.Verdict, camera.Worst.IsOpenedInService));
        Assert.Equal(DeviceState.Up, camera.Worst.State);
    }

    // 3 A for 4 ms are 12 mAs: held to the least 1.35 A of 1.5 A, 8.9 ms. A sheet that promises 10 ms holds it, one that promises 5 ms does not, and one that promises nothing says nothing.
    [Theory]
    [InlineData(10.0, Verdict.Holds)]
    [InlineData(8.88, Verdict.Violated)]
    [InlineData(null, Verdict.Unknown)]
    public void TheShortestTimeOfALimit_DecidesOnAnInrush(double? milliseconds, Verdict verdict)
    {
        var limit = new ElectronicLimit("limit", ElectricCurrent.FromAmperes(1.5), Ratio.FromPercent(10), Duration.FromMilliseconds(50), ElectricResistance.Zero, Volts(30),
            opensNotBefore: milliseconds is double stated ? Duration.FromMilliseconds(stated) : null);
        Installation one = Installation.Star(1).WithBox(b => b with { Protection = limit })
            .EachDrop(d => d with { Inrush = new Inrush(ElectricCurrent.FromAmperes(3), Duration.FromMilliseconds(4)) });
        SiteAssessment solved = one.ToSite().Assess();
        ProtectionInCondition found = new Evidence(solved).Faults[0].InConditions[0];
        Assert.Equal(verdict, found.Start!.Value.Verdict);
        if (verdict == Verdict.Violated) Assert.Equal(8.888888888888889 / 8.88, ((Ratio)found.Start.Value.Value!).DecimalFractions, 1e-9);
        Assert.Equal(milliseconds is null, RuleSet.Standard.Check(solved).Any(f => f.IsNotStated));
        string? said = RuleSet.Standard.Check(solved).FirstOrDefault(f => f.Rule == "nuisance-trip")?.Message;
        Assert.Equal(verdict == Verdict.Violated, said?.Contains("the inrush lasts 8.89 ms; its protective device (limit) may open after 8.88 ms.", StringComparison.Ordinal) == true);
    }

    [Fact]
    public void TheShortestTime_IsTheEarliestOpening_AndNoLongerThanTheLongest()
    {
        ElectronicLimit Limit(double milliseconds) => new("limit", ElectricCurrent.FromAmperes(1.5), Ratio.FromPercent(10), Duration.FromMilliseconds(50), ElectricResistance.Zero, Volts(30),
            opensNotBefore: Duration.FromMilliseconds(milliseconds));
        OpeningTimes opening = Limit(20).OpeningAt(ElectricCurrent.FromAmperes(4), Temperature.FromDegreesCelsius(20));
        Assert.Equal((0.02, 0.05), (opening.Earliest!.Value.Seconds, opening.Latest!.Value.Seconds));
        Assert.Equal("opensNotBefore", Assert.Throws<ArgumentOutOfRangeException>(() => Limit(50.1)).ParamName);
    }

    // 120 W at 85 % and 0.95: the 80 % are a rule of the NEC for its own voltages (Table 210.21(B)(2)); 230 V sockets carry their rating, and above that everything burns.
    [Theory]
    [InlineData(120, 0.79, null, Severity.Failure)]
    [InlineData(120, 1.01, null, Severity.Danger)]
    [InlineData(230, 0.79, null, Severity.Caution)]
    [InlineData(230, 1.01, null, Severity.Danger)]
    [InlineData(230, 0.69, 70.0, Severity.Failure)]
    public void TheShareOfAReceptacle_BindsAtTheVoltagesOfItsCode(double volts, double overShare, double? percent, Severity expected)
    {
        double drawn = 12 * 5 / (0.85 * 0.95 * volts), rating = drawn / (overShare > 1 ? overShare : overShare == 0.79 ? 0.81 : 0.71);
        var receptacle = new Receptacle("receptacle", Volts(volts), ElectricCurrent.FromAmperes(rating), percent is double share ? Ratio.FromPercent(share) : null);
        DistributionBox box = Box(Mains.Receptacles.Sheet()).WithReceptacle(receptacle);
        Site site = Star(box, [Condition.Day(At())], (0, Camera(Amperes(5))));
        Assert.Equal(expected, RuleSet.Standard.Check(site.Assess()).Single(f => f.Rule == "receptacle-overloaded").Severity);
    }

    // A barrel plug is rated for 5 A at most by any maker; a joint of one's own is rated as one says.
    [Theory]
    [InlineData(5.001, false, 5.0)]
    [InlineData(4.999, false, null)]
    [InlineData(1.5, true, 1.2)]
    public void AJoint_IsHeldAgainstItsRatedCurrent(double amperes, bool isOwn, double? limit)
    {
        Joint joint = isOwn ? new Joint("plug of the mast", ElectricResistance.FromOhms(0.01), ratedCurrent: ElectricCurrent.FromAmperes(1.2)) : JointCatalog.BarrelConnector;
        var run = new CableRun(new CableSegment(Runs.Eighteen, Length.FromMeters(1)), joint);
        var site = new Site("site", [Condition.Day(At())], [Box()], [new SiteRun(RunOrigin.Output(BoxName, 1), "end", run)], [new SiteDevice("camera 1", Camera(Amperes(amperes)), "end")]);
        Finding? found = RuleSet.Standard.Check(site.Assess()).SingleOrDefault(f => f.Rule == "joint-overloaded");
        Assert.Equal(limit, ((ElectricCurrent?)found?.Limit)?.Amperes);
        if (limit is not null) Assert.Equal((Severity.Failure, amperes), (found!.Severity, ((ElectricCurrent)found.Measured!).Amperes));
    }

    // Half of a joint is in each pole: 2 A out through 1 Ω, and 3 A back through the other half where another camera joins its return there. No run has both here; a start counts not at all.
    [Fact]
    public void AJoint_DoesNotHeatInAStart()
    {
        Device camera = Camera(new ComponentDraw(Amperes(0.5), startUp: Amperes(3)));
        Condition[] conditions = [Condition.Day(At()), new Condition("start", LoadComponents.StartUp, At())];
        Site site = Star(Box(), conditions, (2, camera));
        Assert.DoesNotContain(RuleSet.Standard.Check(site.Assess()), f => f.Rule == "joint-overloaded");
    }
}
