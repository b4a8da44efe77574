using System;
using System.Linq;
using UnitsNet;

namespace CamPower.Tests.Circuits;

/// <summary>Inverse questions worked out by hand, one for each way of being limited and of having no answer.</summary>
public class RunLimitTests
{
    private static readonly Temperature Twenty = Temperature.FromDegreesCelsius(20);

    private static readonly Load Nine = Load.ConstantPower(Power.FromWatts(9));

    private static readonly CableRun Hundred = new(Runs.Eighteen, oneWayLength: Length.FromFeet(100));

    // By hand: at 10 V the camera draws 0.9 A, so the loop may have (12 − 10)/0.9 = 2.2222 Ω; 18 AWG has 2·6.385 Ω/1000 ft
    // (NBS Handbook 100), which makes 2.2222/12.77·1000 = 174.02 ft. At 250 ft it gets 8.70 V: that much is collapse-free.
    [Fact]
    public void LongestLength_ToTenVolts()
    {
        RunAnswer<Length> answer = Hundred.LongestLength(Nine, Volts(12), VoltageLimit.AtLeast(Volts(10)), Twenty);
        Assert.Equal(174.02, answer.Value.Feet, 0.02);
        Assert.Equal(BindingLimit.LowestVoltage, answer.LimitedBy);
        Assert.Equal(10, answer.AtLimit.LoadVoltage.Volts, 1e-12);
    }

    // The same as one object twice or as two equal ones: only the last length grows. 174.02 ft in all, as above.
    [Fact]
    public void LongestLength_OfARunWithOnePieceTwice_IsThatOfTwoEqualPieces()
    {
        var piece = new CableSegment(Runs.Eighteen, Length.FromFeet(50));
        RunAnswer<Length> answer = new CableRun(piece, piece).LongestLength(Nine, Volts(12), VoltageLimit.AtLeast(Volts(10)), Twenty);
        Assert.Equal(174.02, answer.Value.Feet, 0.02);
        Assert.Equal(50, answer.AtLimit.Run.Segments.First().OneWayLength.Feet, 1e-9);
        Assert.Contains("L_{run} = L + L_{rest}", answer.Explain().ToMarkdown(), StringComparison.Ordinal);
    }

    // By hand: 12 V over 10 Ω drive at most 1.2 A, and that into a short; no power is at fault.
    [Fact]
    public void Feed_OfMoreCurrentThanTheRunLets_SaysAmperes()
    {
        RunResult result = Runs.OfOhms(10).Feed(Load.ConstantCurrent(ElectricCurrent.FromAmperes(2)), Volts(12), Twenty);
        string refused = Assert.Throws<InvalidOperationException>(() => result.LoadVoltage).Message;
        Assert.All(new[] { result.ToString(), refused, result.Explain().Conclusion }, text =>
        {
            Assert.Contains("less than 1.2 A", text, StringComparison.Ordinal);
            Assert.DoesNotContain(" 0 W", text, StringComparison.Ordinal);
        });
        Assert.Contains("asks for 2 A", result.Explain().Conclusion, StringComparison.Ordinal);
    }

    // By hand: 9 W collapse at Vs/2 = 6 V and 1.5 A: 4 Ω, whatever lower voltage is accepted.
    [Fact]
    public void LongestLength_BeyondCollapse_IsThatOfCollapse()
    {
        RunAnswer<Length> answer = Hundred.LongestLength(Nine, Volts(12), VoltageLimit.AtLeast(Volts(5)), Twenty);
        Assert.Equal(BindingLimit.Collapse, answer.LimitedBy);
        Assert.Equal(4, answer.AtLimit.LoopResistance.Ohms, 1e-9);

        // A hair inside, by 1e-13: the voltage there changes with the square root of it.
        Assert.InRange(answer.AtLimit.LoadVoltage.Volts, 6, 6 + 1e-5);
    }

    // By hand, the shares together: P 6 W, I₀ 0.5 A, G 1/24 S from 12 V end where (I₀ + G·Vs)V² + 2PV − PVs = 0:
    // V² + 12V − 72 = 0, V = −6 + √108 = 4.3923 V, where they draw 1.36603 + 0.5 + 0.18301 = 2.04904 A: R = 7.6077/2.04904 = 3.71281 Ω.
    [Fact]
    public void LongestLength_OfMixedShares_CollapsesBelowHalf()
    {
        Load mixed = Load.ConstantPower(Power.FromWatts(6)) + Load.ConstantCurrent(ElectricCurrent.FromAmperes(0.5)) + Load.ConstantResistance(ElectricResistance.FromOhms(24));
        RunAnswer<Length> answer = Hundred.LongestLength(mixed, Volts(12), VoltageLimit.AtLeast(Volts(1)), Twenty);
        Assert.Equal(BindingLimit.Collapse, answer.LimitedBy);
        Assert.Equal(3.71281, answer.AtLimit.LoopResistance.Ohms, 1e-4);
        Assert.Equal(4.3923, answer.AtLimit.LoadVoltage.Volts, 1e-4);
    }

    // Of 5 % of 12 V and 11.6 V the voltage is the stricter, of 5 % of 24 V and 11.6 V the drop.
    [Theory]
    [InlineData(12, BindingLimit.LowestVoltage, 11.6)]
    [InlineData(24, BindingLimit.LargestDrop, 22.8)]
    public void TwoLimits_TheStricterBinds(double source, BindingLimit expected, double atLoad)
    {
        VoltageLimit both = VoltageLimit.AtLeast(Volts(11.6)).And(VoltageLimit.DropAtMost(Ratio.FromPercent(5)));
        RunAnswer<Length> answer = Hundred.LongestLength(Nine, Volts(source), both, Twenty);
        Assert.Equal(expected, answer.LimitedBy);
        Assert.Equal(atLoad, answer.AtLimit.LoadVoltage.Volts, 1e-9);
    }

    // By hand: over 2 Ω from 12 V, 10 V leave 1 A: 10 W. Beside 0.4 A, 0.6 A: 6 W. Beside 1.1 A nothing is left. Never more than 18 W.
    [Theory]
    [InlineData(0, 10, 10.0, BindingLimit.LowestVoltage)]
    [InlineData(0.4, 10, 6.0, BindingLimit.LowestVoltage)]
    [InlineData(1.1, 10, null, BindingLimit.LowestVoltage)]
    [InlineData(0, 5, 18.0, BindingLimit.Collapse)]
    public void LargestPower_OverTwoOhm(double besideAmperes, double lowest, double? expected, BindingLimit limit)
    {
        RunAnswer<Power> answer = Runs.OfOhms(2).LargestPower(Load.ConstantCurrent(ElectricCurrent.FromAmperes(besideAmperes)), Volts(12), VoltageLimit.AtLeast(Volts(lowest)), Twenty);
        Assert.Equal(expected.HasValue, answer.TryGetValue(out Power power));
        if (expected is double watts) Assert.Equal(watts, (double)power.Watts, 1e-9);
        Assert.Equal(limit, answer.LimitedBy);
    }

    // By hand: 0.5 A through 10 Ω leaves 7 V of 12 V; the power component shows only from 3.5 W on and reaches 3.6 W at 6 V.
    // 1 A leaves 2 V: the power component can become 2 W, where the load falls off at once.
    [Theory]
    [InlineData(0.5, 3.6)]
    [InlineData(1, 2)]
    public void LargestPower_OfALargerOfLoad(double amperes, double expected)
    {
        var label = Load.LargerOf(Power.Zero, ElectricCurrent.FromAmperes(amperes));
        RunAnswer<Power> answer = Runs.OfOhms(10).LargestPower(label, Volts(12), VoltageLimit.AtLeast(Volts(1)), Twenty);
        Assert.Equal(expected, (double)answer.Value.Watts, 1e-9);
        Assert.Equal(BindingLimit.Collapse, answer.LimitedBy);
    }

    // By hand: 9 W at 10 V is 0.9 A, over 2 Ω 1.8 V: 11.8 V. The same with at most 10 % drop: R·I ≤ V/9, V² ≥ 9·2·9, V = 12.7279 V,
    // Vs = V/0.9 = 14.1421 V. With 4 V accepted the run collapses first, at V = √(2·9) = 4.24264 V and Vs = 8.48528 V.
    [Theory]
    [InlineData(10, 99, 11.8, BindingLimit.LowestVoltage)]
    [InlineData(10, 10, 14.142136, BindingLimit.LargestDrop)]
    [InlineData(4, 99, 8.485281, BindingLimit.Collapse)]
    public void NeededSourceVoltage_OverTwoOhm(double lowest, double dropPercent, double expected, BindingLimit limit)
    {
        VoltageLimit accepted = VoltageLimit.AtLeast(Volts(lowest)).And(VoltageLimit.DropAtMost(Ratio.FromPercent(dropPercent)));
        RunAnswer<ElectricPotential> answer = Runs.OfOhms(2).NeededSourceVoltage(Nine, accepted, Twenty);
        Assert.Equal(expected, answer.Value.Volts, 1e-6);
        Assert.Equal(limit, answer.LimitedBy);
    }

    // 2 Ω and a heater of 8 Ω divide the voltage 1 to 4 at every source voltage: a drop of 10 % cannot be had.
    [Fact]
    public void NeededSourceVoltage_OfAHeaterWhoseDropIsTooLarge_IsNone()
    {
        Load heater = Load.ConstantResistance(ElectricResistance.FromOhms(8));
        RunAnswer<ElectricPotential> answer = Runs.OfOhms(2).NeededSourceVoltage(heater, VoltageLimit.DropAtMost(Ratio.FromPercent(10)), Twenty);
        Assert.False(answer.HasValue);
        Assert.Equal(BindingLimit.LargestDrop, answer.LimitedBy);
        Assert.Equal(BindingLimit.CalculatedRange, Runs.OfOhms(2).NeededSourceVoltage(heater, VoltageLimit.DropAtMost(Ratio.FromPercent(30)), Twenty).LimitedBy);
    }

    // By hand: 100 ft of 18 AWG have 1.277 Ω at 20 °C and grow by 0.00393 of it a kelvin. 9 W at 10.5 V allow 1.5/0.857143 = 1.75 Ω:
    // 20 + (1.75/1.277 − 1)/0.00393 = 114.25 °C.
    [Fact]
    public void HighestTemperature_ToTenAndAHalfVolts()
    {
        RunAnswer<Temperature> answer = Hundred.HighestTemperature(Nine, Volts(12), VoltageLimit.AtLeast(Volts(10.5)));
        Assert.Equal(114.25, answer.Value.DegreesCelsius, 0.05);
        Assert.Equal(BindingLimit.LowestVoltage, answer.LimitedBy);
    }

    [Fact]
    public void HighestTemperature_MayBeTheEndOfTheMaterial_OrNone()
    {
        RunAnswer<Temperature> any = Hundred.HighestTemperature(Nine, Volts(12), VoltageLimit.AtLeast(Volts(7)));
        Assert.Equal(250, any.Value.DegreesCelsius);
        Assert.Equal(BindingLimit.TemperatureRange, any.LimitedBy);
        RunAnswer<Temperature> none = Hundred.HighestTemperature(Nine, Volts(12), VoltageLimit.AtLeast(Volts(11.9)));
        Assert.False(none.HasValue);
        Assert.Equal(BindingLimit.LowestVoltage, none.LimitedBy);
    }

    // By hand: 18 AWG does at 100 ft to 10.5 V (1.277 of 1.75 Ω), 20 AWG does not (10.15 Ω/1000 ft: 2.03 Ω). At 20 °C in mm²:
    // 2·30.48/58/1.75 = 0.6006 mm², so 0.75 and not 0.5.
    [Theory]
    [InlineData(WireSizeSeries.Awg, 10.5, "19 AWG", BindingLimit.LowestVoltage)]
    [InlineData(WireSizeSeries.SquareMillimeters, 10.5, "0.75 mm2", BindingLimit.LowestVoltage)]
    [InlineData(WireSizeSeries.SquareMillimeters, 7, "0.5 mm2", BindingLimit.SeriesEnd)]
    [InlineData(WireSizeSeries.Awg, 11.999, null, BindingLimit.SeriesEnd)]
    [InlineData(WireSizeSeries.Awg, 12.001, null, BindingLimit.LowestVoltage)]
    public void SmallestSize_OfAHundredFeet(WireSizeSeries series, double lowest, string? expected, BindingLimit limit)
    {
        RunAnswer<WireSize> answer = Hundred.SmallestSize(series, Nine, Volts(12), VoltageLimit.AtLeast(Volts(lowest)), Twenty);
        Assert.Equal(expected, answer.HasValue ? answer.Value.ToString() : null);
        Assert.Equal(limit, answer.LimitedBy);
    }

    // The same hundred feet with the even gauges that are sold, in any order: 19 AWG is not among them, 20 AWG does not do.
    [Theory]
    [InlineData(10.5, new[] { 14, 20, 18, 16, 22 }, "18 AWG", BindingLimit.LowestVoltage)]
    [InlineData(10.5, new[] { 18, 16 }, "18 AWG", BindingLimit.SeriesEnd)]
    [InlineData(10.5, new[] { 22, 20 }, null, BindingLimit.SeriesEnd)]
    public void SmallestSize_OfThoseThatAreSold(double lowest, int[] sold, string? expected, BindingLimit limit)
    {
        RunAnswer<WireSize> answer = Hundred.SmallestSize(sold.Select(WireSize.Awg), Nine, Volts(12), VoltageLimit.AtLeast(Volts(lowest)), Twenty);
        Assert.Equal(expected, answer.HasValue ? answer.Value.ToString() : null);
        Assert.Equal(limit, answer.LimitedBy);
    }

    [Fact]
    public void SmallestSize_OfImpossibleSizes_Throws()
    {
        Assert.Throws<ArgumentException>("sizes", () => Hundred.SmallestSize([], Nine, Volts(12), VoltageLimit.AtLeast(Volts(10)), Twenty));
        Assert.Throws<ArgumentOutOfRangeException>("sizes", () => Hundred.SmallestSize([default], Nine, Volts(12), VoltageLimit.AtLeast(Volts(10)), Twenty));
        Assert.Throws<ArgumentNullException>("sizes", () => Hundred.SmallestSize(null!, Nine, Volts(12), VoltageLimit.AtLeast(Volts(10)), Twenty));
    }

    [Fact]
    public void NoLoad_IsLimitedByNothingPhysical()
    {
        VoltageLimit accepted = VoltageLimit.AtLeast(Volts(11));
        Assert.Equal(1000, Hundred.LongestLength(Load.None, Volts(12), accepted, Twenty).Value.Kilometers);
        Assert.Equal(BindingLimit.CalculatedRange, Hundred.SmallestArea(Load.None, Volts(12), accepted, Twenty).LimitedBy);
        Assert.Equal(1e9, (double)Runs.OfOhms(0).LargestPower(Load.None, Volts(12), accepted, Twenty).Value.Watts);
        Assert.Equal(11, Hundred.NeededSourceVoltage(Load.None, accepted, Twenty).Value.Volts, 1e-11);
    }

    [Fact]
    public void NoAnswer_SaysWhyInEveryCulture()
    {
        RunAnswer<Length> none = Hundred.LongestLength(Nine, Volts(12), VoltageLimit.AtLeast(Volts(12.5)), Twenty);
        Assert.False(none.HasValue);
        Assert.False(none.TryGetValue(out Length value));
        Assert.Equal(default, value);
        Assert.Equal(default, none.AtLimit);
        Assert.Equal("none: the lowest accepted voltage is the limit", none.ToString());
        Assert.Contains("the lowest accepted voltage", Assert.Throws<InvalidOperationException>(() => none.Value).Message, StringComparison.Ordinal);
        Cultures.AssertSame(() => none.Explain().ToMarkdown());
    }

    // Negative coefficients of temperature exist: such a run is at its worst when cold.
    [Fact]
    public void HighestTemperature_OfAFallingResistance_IsTheEndOrNone()
    {
        var falling = new ConductorMaterial("falling", ElectricResistivity.FromOhmMeters(1.7e-8), -0.001, Temperature.FromDegreesCelsius(-40), Temperature.FromDegreesCelsius(100),
            new Citation("made up", CitationKind.Declared));
        var run = new CableRun(Cable.Pair(WireSize.Awg(18), Stranding.Solid, falling), oneWayLength: Length.FromFeet(100));
        double hot = run.LoopResistanceAt(Temperature.FromDegreesCelsius(100)).Ohms, cold = run.LoopResistanceAt(Temperature.FromDegreesCelsius(-40)).Ohms;
        double At(double ohms) => new FeedCase(12, ohms, Nine).Feed().LoadVoltage.Volts;
        Assert.Equal(100, run.HighestTemperature(Nine, Volts(12), VoltageLimit.AtLeast(Volts((At(hot) + At(cold)) / 2))).Value.DegreesCelsius);
        RunAnswer<Temperature> none = run.HighestTemperature(Nine, Volts(12), VoltageLimit.AtLeast(Volts(At(hot) + 0.01)));
        Assert.False(none.HasValue);
        Assert.Equal(BindingLimit.LowestVoltage, none.LimitedBy);
    }

    private static ElectricPotential Volts(double volts) => ElectricPotential.FromVolts(volts);
}
