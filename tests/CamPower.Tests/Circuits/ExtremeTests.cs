using System;
using System.Collections.Generic;
using UnitsNet;

namespace CamPower.Tests.Circuits;

/// <summary>Everything that the guards let through, however absurd: an answer can be read, no number is lost, nothing else is thrown.</summary>
public class ExtremeTests
{
    public static TheoryData<double, double, double, double> Cases
    {
        get
        {
            var data = new TheoryData<double, double, double, double>();
            foreach (double volts in new[] { 1e-6, 12, 1e6 })
            {
                foreach (double ohms in new[] { 0, 1e-30, 1e-12, 1, 1e12, 1e300 })
                {
                    foreach (double watts in new[] { 0, 1e-20, 9, 1e9 })
                    {
                        foreach (double amperes in new[] { 0, 1e9 }) data.Add(volts, ohms, watts, amperes);
                    }
                }
            }

            return data;
        }
    }

    [Theory]
    [MemberData(nameof(Cases))]
    public void Feed_OfAnyExtreme_GivesAnAnswerThatCanBeRead(double volts, double ohms, double watts, double amperes)
    {
        Load sum = Load.ConstantPower(Power.FromWatts(watts)) + Load.ConstantCurrent(ElectricCurrent.FromAmperes(amperes));
        foreach (Load load in new[] { sum, Load.LargerOf(sum.PowerComponent, sum.CurrentComponent) })
        {
            RunResult result = new FeedCase(volts, ohms, load).Feed();
            Assert.All(Numbers(result), number => Assert.True(double.IsFinite(number) && number >= 0, FormattableString.Invariant($"{number:R} of {result}")));
            Assert.NotEmpty(result.ToString());
            Assert.NotEmpty(result.Explain().ToMarkdown());
            if (result.HasOperatingPoint) Assert.InRange(result.LoadVoltage.Volts, 0, volts);
        }
    }

    private static IEnumerable<double> Numbers(RunResult result)
    {
        if (result.MaximumPower is { } most) yield return (double)most.Watts;
        if (result.MarginToCollapse is { } margin) yield return margin.DecimalFractions;
        if (!result.HasOperatingPoint) yield break;
        yield return result.LoadVoltage.Volts;
        yield return result.Current.Amperes;
        yield return result.Drop.Volts;
        yield return result.DropRatio.DecimalFractions;
        yield return (double)result.LoadPower.Watts;
        yield return (double)result.SourcePower.Watts;
        yield return (double)result.Loss.Watts;
        yield return result.UnstableVoltage.Volts;
    }
}
