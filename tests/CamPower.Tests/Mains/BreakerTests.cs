using System;
using System.Linq;
using CamPower.Mains;
using UnitsNet;

namespace CamPower.Tests.Mains;

public class BreakerTests
{
    private static readonly ElectricCurrent Sixteen = ElectricCurrent.FromAmperes(16);

    // IEC 60898-1, ranges of instantaneous tripping (from memory): B above 3 to 5, C above 5 to 10, D above 10 to 20 times the rated current.
    [Fact]
    public void Types_HaveTheBandsOfTheStandard()
    {
        static (double, double) Band(CircuitBreaker b) => (b.InstantaneousFrom * b.Rating.Amperes, b.InstantaneousTo * b.Rating.Amperes);
        Assert.Equal((48, 80), Band(CircuitBreaker.TypeB("b", Sixteen)));
        Assert.Equal((80, 160), Band(CircuitBreaker.TypeC("c", Sixteen)));
        Assert.Equal((160, 320), Band(CircuitBreaker.TypeD("d", Sixteen)));
    }

    // By hand: 16 A of type B hold a crest of 48·√2 = 67.9 A: one or two supplies of 30 A, and not three. Type C holds 113.1 A: three.
    [Theory]
    [InlineData('B', 1, Verdict.Holds, 1)]
    [InlineData('B', 2, Verdict.Holds, 2)]
    [InlineData('B', 3, Verdict.Unknown, 2)]
    [InlineData('C', 3, Verdict.Holds, 3)]
    [InlineData('C', 4, Verdict.Unknown, 3)]
    public void Supplies_OfThirtyAmperes_StartTogetherUpToTheBand(char type, int supplies, Verdict verdict, int most)
    {
        CircuitBreaker breaker = type == 'B' ? Breakers.B16 : CircuitBreaker.TypeC("breaker", Sixteen);
        StartTogether cold = Breakers.Together(breaker, [.. Enumerable.Repeat<double?>(30, supplies)]).Cold;
        Assert.Equal(verdict, cold.Holds.Verdict);
        Assert.Equal(most, cold.MostAtOnce);
        Assert.Equal(30.0 * supplies, cold.Peak!.Value.Amperes, 1e-9);
    }

    // Whichever they are: 60 A and 20 A exceed 67.9 A, 20 A and 20 A would not.
    [Fact]
    public void MostAtOnce_CountsTheLargestFirst() => Assert.Equal(1, Breakers.Together(Breakers.B16, 20, 60, 20).Cold.MostAtOnce);

    // A sine's crest is √2 of its RMS: 67 A of crest are 47.4 A, and a comparison of crest with band would say 67 A of 48 A.
    [Fact]
    public void Peak_IsHeldAgainstTheBandAsASine() =>
        Assert.Equal(67 / Math.Sqrt(2), ((ElectricCurrent)Breakers.Together(Breakers.B16, 67).Cold.Holds.Value!).Amperes, 1e-9);

    // 120 A of crest are 84.9 A, above 80 A. 120 A for 10 ms are 144 A²s; for 9.9 ms only the maker knows.
    [Theory]
    [InlineData(144.0, Verdict.Violated)]
    [InlineData(142.5, Verdict.Unknown)]
    [InlineData(null, Verdict.Unknown)]
    public void AboveTheBand_ItTripsForCertainFromHalfACycleOn(double? integral, Verdict verdict)
    {
        StartTogether cold = Breakers.On(Breakers.B16, peak: 120, integral: integral).Assess().StudyBreakers()[0].Cold;
        Assert.Equal(verdict, cold.Holds.Verdict);
        Assert.True(verdict == Verdict.Violated || cold.Holds.NotStated!.Contains("half a cycle", StringComparison.Ordinal));
        Assert.Equal(verdict == Verdict.Violated ? Severity.Failure : Severity.Note,
            Rules.StartMayTripBreaker.Check(new Evidence(Breakers.On(Breakers.B16, peak: 120, integral: integral).Assess())).Single().Severity);
    }

    // Inside the band nothing is certain however long it lasts: 100 A of crest are 70.7 A, between 48 A and 80 A.
    [Fact]
    public void InsideTheBand_NothingIsCertain() =>
        Assert.Equal(Verdict.Unknown, Breakers.On(Breakers.B16, peak: 100, integral: 1000).Assess().StudyBreakers()[0].Cold.Holds.Verdict);

    // Two alike: ∫(2i)² = 4∫i².
    [Fact]
    public void Integral_OfTwoAlike_IsFourTimesOne()
    {
        DistributionBox[] boxes = [Breakers.Plugged(Breakers.B16, 1, 30, integral: 0.5), Breakers.Plugged(Breakers.B16, 2, 30, integral: 0.5)];
        StartTogether cold = new Site("site", [Condition.Day(Sites.SmallSite.At())], boxes, [], []).Assess().StudyBreakers()[0].Cold;
        Assert.Equal(2.0, cold.Integral!.Value.AmpereSquaredSeconds, 1e-12);
    }

    [Fact]
    public void PeakThatIsNotStated_LeavesTheStartUnknown_UnlessTheOthersAreTooMuchAlready()
    {
        StartTogether unknown = Breakers.Together(Breakers.B16, 30, null).Cold;
        Assert.Null(unknown.Peak);
        Assert.Null(unknown.MostAtOnce);
        Assert.Contains("cold inrush current", unknown.Holds.NotStated, StringComparison.Ordinal);
        Assert.Throws<InvalidOperationException>(unknown.Explain);
        Evidence evidence = new(new Site("site", [Condition.Day(Sites.SmallSite.At())], [Breakers.Plugged(Breakers.B16, 1, 70), Breakers.Plugged(Breakers.B16, 2, null)], [], []).Assess());
        Finding finding = Rules.StartMayTripBreaker.Check(evidence).Single();
        Assert.Contains("at least 70 A", finding.Message, StringComparison.Ordinal);
        Assert.Contains("cold inrush current of the supply", evidence.NotStated.Select(g => g.Key));
    }

    // IEC 61008-1 (from memory): at half of the rated residual current a device must not trip. 15.1 mA of 30 mA.
    [Fact]
    public void Leakage_AboveHalfOfTheResidualCurrent_IsAFailure()
    {
        Evidence evidence = new(Breakers.On(Breakers.B16, leakage: 0.0151).Assess());
        Finding finding = Rules.LeakageMayTripResidualDevice.Check(evidence).Single();
        Assert.Equal(Severity.Failure, finding.Severity);
        Assert.Equal(15, ((ElectricCurrent)finding.Limit!).Milliamperes, 1e-9);
    }

    [Fact]
    public void Leakage_WithoutAResidualCurrentDevice_IsSummedAndNotJudged()
    {
        BreakerAssessment breaker = Breakers.Together(CircuitBreaker.TypeC("breaker", Sixteen), 30, 30, 30);
        Assert.Equal(3, breaker.KnownLeakage.Milliamperes, 1e-9);
        Assert.Equal(default, breaker.Leakage);
    }

    [Fact]
    public void Explain_EvaluatesToItsAnswer()
    {
        StartTogether cold = Breakers.Together(Breakers.B16, 30, 40).Cold;
        Assert.Equal([70, 70 / Math.Sqrt(2), 48, 80], cold.Explain().Steps.Select(s => s.Value), (a, b) => Math.Abs(a - b) < 1e-9);
    }

    [Theory]
    [InlineData(0, 3, 5, "rating")]
    [InlineData(16, 0.9, 5, "instantaneousFrom")]
    [InlineData(16, 5, 4.9, "instantaneousTo")]
    [InlineData(16, 5, 101, "instantaneousTo")]
    public void Breaker_RefusesWhatNoneIs(double rating, double from, double to, string parameter) => Assert.Equal(parameter,
        Assert.Throws<ArgumentOutOfRangeException>(() => new CircuitBreaker("breaker", ElectricCurrent.FromAmperes(rating), from, to)).ParamName);

    [Fact]
    public void Site_RefusesTwoBreakersOfOneName()
    {
        DistributionBox[] boxes = [Breakers.Plugged(Breakers.B16, 1, 30), Breakers.Plugged(CircuitBreaker.TypeC("breaker", Sixteen), 2, 30)];
        var refused = Assert.Throws<ArgumentException>(() => new Site("site", [Condition.Day(Sites.SmallSite.At())], boxes, [], []));
        Assert.Contains("another breaker is named breaker already", refused.Message, StringComparison.Ordinal);
    }

    // 70 A of crest are 49.5 A, inside the band of 48 A to 80 A. For 10 ms (49 A²s) the band holds, and the breaker may trip.
    [Theory]
    [InlineData(49.0, Severity.Caution)]
    [InlineData(48.9, Severity.Note)]
    [InlineData(null, Severity.Note)]
    public void InsideTheBand_ItIsACautionFromHalfACycleOn(double? integral, Severity severity) => Assert.Equal(
        severity, Rules.StartMayTripBreaker.Check(new Evidence(Breakers.On(Breakers.B16, peak: 70, integral: integral).Assess())).Single().Severity);

    // IEC 60898-1 (from memory): 1.45 times the rating trips within the hour; NEC 210.20(A): 80 % of it may be continuous.
    // 12 V and 10 A at 85 % and 0.95 take 148.6 VA, 1.238 A at 120 V: two of them 2.477 A.
    [Theory]
    [InlineData(3.2, true, Verdict.Holds)]
    [InlineData(3, false, Verdict.Violated)]
    [InlineData(2.4, false, Verdict.Violated)]
    public void ReceptaclesOfABreaker_AreAddedUp(double rating, bool isSilent, Verdict allowed)
    {
        var breaker = CircuitBreaker.TypeC("breaker", ElectricCurrent.FromAmperes(rating));
        Receptacle On(string name) => new(name, ElectricPotential.FromVolts(120), ElectricCurrent.FromAmperes(15), breaker: breaker);
        SiteAssessment assessment = Receptacles.Boxes((On("left"), 10), (On("right"), 10)).Assess();
        BreakerAssessment both = Assert.Single(assessment.StudyBreakers());
        Assert.Equal(2 * 12 * 10 / (0.85 * 0.95 * 120), ((ElectricCurrent)both.Load.Value!).Amperes, 1e-9);
        Assert.Equal(allowed == Verdict.Holds, !both.Load.IsViolated && !both.Load.IsThin);
        Assert.Equal(isSilent, !Rules.BreakerOverloaded.Check(new Evidence(assessment)).Any());
    }

    // One receptacle that is overloaded itself says it; its breaker does not repeat it.
    [Fact]
    public void BreakerOfOneOverloadedReceptacle_IsNotNamedAgain()
    {
        var breaker = CircuitBreaker.TypeC("breaker", ElectricCurrent.FromAmperes(1.2));
        var receptacle = new Receptacle("socket", ElectricPotential.FromVolts(120), ElectricCurrent.FromAmperes(1.2), breaker: breaker);
        var evidence = new Evidence(Receptacles.Boxes((receptacle, 10)).Assess());
        Assert.Single(Rules.ReceptacleOverloaded.Check(evidence));
        Assert.Empty(Rules.BreakerOverloaded.Check(evidence));
    }
}
