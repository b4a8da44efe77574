using System.Linq;
using CamPower.Tests.Sites;
using UnitsNet;

namespace CamPower.Tests.Supplies;

public class SupplyTests
{
    // Reference rows S10-001 to S10-007, common practice, no source: full rating to 50 °C, then 2.5 % less a kelvin; the ends
    // of the curve, -20 °C and 70 °C, are common practice as well. ±0.1 % of rating.
    [Theory]
    [InlineData(-20, 100)]
    [InlineData(25, 100)]
    [InlineData(40, 100)]
    [InlineData(50, 100)]
    [InlineData(55, 87.5)]
    [InlineData(60, 75)]
    [InlineData(65, 62.5)]
    [InlineData(70, 50)]
    [InlineData(-20.001, 0)]
    [InlineData(70.001, 0)]
    [InlineData(-273.15, 0)]
    [InlineData(1000, 0)]
    public void GenericCurve_IsTheTradesOwn(double celsius, double percent) =>
        Assert.Equal(percent, Derating.GenericEnclosed.ShareAt(Temperature.FromDegreesCelsius(celsius)).Percent, 0.1);

    // Reference row S10-019, computed from the generic curve: 0.75 × 12.5 A. ±0.0005 A.
    [Fact]
    public void DeratedCurrent_At60C_IsThreeQuarters() =>
        Assert.Equal(9.375, SmallSite.Dc(amperes: 12.5).DeratedCurrentAt(Temperature.FromDegreesCelsius(60)).Amperes, 0.0005);

    [Fact]
    public void Fahrenheit_IsTheSameTemperature() =>
        Assert.Equal(9.375, SmallSite.Dc(amperes: 12.5).DeratedCurrentAt(Temperature.FromDegreesFahrenheit(140)).Amperes, 1e-9);

    // Reference rows S15-012, -014, -015, -016, common practice, no source: what a box has for each output when all take the
    // same, 18 outputs of 20 A, 4 of 5 A, 16 of 10 A, and 18 of 20 A loaded to 80 %. Half a unit of the last digit printed.
    [Theory]
    [InlineData(18, 20, 100, 1.11, 0.005)]
    [InlineData(4, 5, 100, 1.25, 0.005)]
    [InlineData(16, 10, 100, 0.625, 0.0005)]
    [InlineData(18, 20, 80, 0.889, 0.0005)]
    public void PerOutputShare_IsWhereTheWholeBoxBinds(int outputs, double rating, double loadingPercent, double printed, double halfLastDigit)
    {
        Assert.Empty(Findings(printed - halfLastDigit));
        Assert.Equal(loadingPercent < 100 ? "supply-above-headroom-policy" : "supply-above-derated-rating", Assert.Single(Findings(printed + halfLastDigit)));

        string[] Findings(double each)
        {
            DistributionBox box = SmallSite.Box(SmallSite.Dc(amperes: rating), outputs, limit: 5);
            Site site = SmallSite.Star(box, [Condition.Day(SmallSite.At())], [.. Enumerable.Repeat((0.0, SmallSite.Camera(SmallSite.Amperes(each))), outputs)]);
            RuleSet rules = loadingPercent < 100 ? SmallSite.WithoutFaultsUnknown : SmallSite.WithoutFaultsUnknown.Without("supply-above-headroom-policy");
            return [.. rules.Check(site.Assess()).Select(f => f.Rule)];
        }
    }

    // Straight between the points, however steep: by hand, also at the points themselves.
    [Theory]
    [InlineData(0, 0.2)]
    [InlineData(5, 0.6)]
    [InlineData(10, 1)]
    [InlineData(40, 1)]
    [InlineData(40.0005, 0.75)]
    [InlineData(40.001, 0.5)]
    [InlineData(50.0005, 0.25)]
    [InlineData(60, 0)]
    [InlineData(-1e-9, 0)]
    [InlineData(60.0001, 0)]
    public void Curve_IsStraightBetweenItsPoints(double celsius, double share)
    {
        var curve = new ShareCurve<Temperature>(Point(0, 0.2), Point(10, 1), Point(40, 1), Point(40.001, 0.5), Point(60, 0));
        Assert.Equal(share, new Derating(curve).ShareAt(Temperature.FromDegreesCelsius(celsius)).DecimalFractions, 1e-7);
        Assert.Equal(celsius is < 0 or > 60, curve.ShareAt(Temperature.FromDegreesCelsius(celsius)) is null);
    }

    [Fact]
    public void Voltages_AreTheToleranceAroundTheSetPoint()
    {
        var fixedSupply = (DcOutput)SmallSite.Dc(12, percent: 5).Output;
        Assert.Equal([11.4, 12.6, 12.0], new[] { fixedSupply.LowestVoltage.Volts, fixedSupply.HighestVoltage.Volts, fixedSupply.SetPoint.Volts }.Select(v => System.Math.Round(v, 12)));
        SupplyOutput transformer = SmallSite.Dc(24, percent: 10, kind: CurrentKind.Ac).Output;
        Assert.Equal([21.6, 26.4], new[] { transformer.LowestVoltage.Volts, transformer.HighestVoltage.Volts }.Select(v => System.Math.Round(v, 12)));
        var trimmed = new DcOutput(SmallSite.Volts(12), ElectricCurrent.FromAmperes(1), Ratio.FromPercent(5), SmallSite.Range(11, 15), SmallSite.Volts(14));
        Assert.Equal([13.3, 14.7, 14.0], new[] { trimmed.LowestVoltage.Volts, trimmed.HighestVoltage.Volts, trimmed.SetPoint.Volts }.Select(v => System.Math.Round(v, 12)));
    }

    [Fact]
    public void Adapter_IsABoxOfOneOutputAsStrongAsItsSupply()
    {
        DistributionBox adapter = DistributionBox.Adapter("lead", SmallSite.Dc(amperes: 2));
        Assert.True(adapter.IsAdapter);
        Assert.Equal(2, Assert.Single(adapter.Outputs).Limit.Amperes);
        DistributionBox box = SmallSite.Box(outputs: 18, limit: 1.1);
        Assert.False(box.IsAdapter);
        Assert.Equal(Enumerable.Range(1, 18), box.Outputs.Select(o => o.Number));
        Assert.All(box.Outputs, o => Assert.Equal(1.1, o.Limit.Amperes));
    }

    private static SharePoint<Temperature> Point(double celsius, double share) => new(Temperature.FromDegreesCelsius(celsius), Ratio.FromDecimalFractions(share));
}
