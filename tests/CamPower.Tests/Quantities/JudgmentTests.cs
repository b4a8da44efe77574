using UnitsNet;
using Xunit;

namespace CamPower.Tests.Quantities;

public class JudgmentTests
{
    // The verdicts follow from the words alone: at a limit it holds, a hair (1 part in 10^6) beyond it does not.
    [Theory]
    [InlineData(13.2, Verdict.ThinMargin)]
    [InlineData(13.2 * (1 + 1e-6), Verdict.Violated)]
    [InlineData(13.2 * (1 - 1e-6), Verdict.ThinMargin)]
    [InlineData(12.9, Verdict.Holds)]
    [InlineData(12.9 * (1 + 1e-6), Verdict.ThinMargin)]
    public void AValueThatMayBeAtMostItsLimit_IsHeldAgainstLimitAndPolicy(double volts, Verdict expected) =>
        Assert.Equal(expected, Judgment.AtMost(volts, 13.2, 12.9, v => ElectricPotential.FromVolts(v)).Verdict);

    [Theory]
    [InlineData(10.8, Verdict.ThinMargin)]
    [InlineData(10.8 * (1 - 1e-6), Verdict.Violated)]
    [InlineData(11.016, Verdict.Holds)]
    [InlineData(11.016 * (1 - 1e-6), Verdict.ThinMargin)]
    public void AValueThatMustBeAtLeastItsLimit_IsHeldAgainstLimitAndPolicy(double volts, Verdict expected) =>
        Assert.Equal(expected, Judgment.AtLeast(volts, 10.8, 11.016, v => ElectricPotential.FromVolts(v)).Verdict);

    // 12 V x 1.1 is 13.200000000000001 in binary: the limit 13.2 V is met, not exceeded.
    [Fact]
    public void RoundingInTheLastPlaceBreaksNoLimit() =>
        Assert.False(Judgment.AtMost(12 * 1.1, 13.2, 13.2, v => ElectricPotential.FromVolts(v)).IsViolated);

    // A supply that is rated down to -10 °C may run at -10 °C.
    [Theory]
    [InlineData(-10, Verdict.Holds)]
    [InlineData(-10.00001, Verdict.Violated)]
    public void ALimitBelowZeroIsKeptExactlyAtIt(double celsius, Verdict expected) =>
        Assert.Equal(expected, Judgment.AtLeast(celsius, -10, -10, c => Temperature.FromDegreesCelsius(c)).Verdict);

    [Fact]
    public void AnUnknownJudgmentSaysWhatIsNotStated()
    {
        var unknown = Judgment.Unknown("efficiency of the supply");
        Assert.Equal(Verdict.Unknown, unknown.Verdict);
        Assert.Equal("efficiency of the supply", unknown.NotStated);
        Assert.Null(unknown.Value);
        Assert.Equal("Unknown: not stated: efficiency of the supply", unknown.ToString());
    }
}
