using System;
using UnitsNet;

namespace CamPower.Tests.Circuits;

/// <summary>A limit that allows no drop at all: only no load and no resistance meet it.</summary>
public class NoDropAllowedTests
{
    [Theory]
    [InlineData(9, 0)]
    [InlineData(0, 1)]
    [InlineData(9, 1)]
    public void NeededSourceVoltage_OfALabelWithoutDrop_IsNone_AndSaysSoInNumbers(double watts, double amperes)
    {
        RunAnswer<ElectricPotential> answer = Runs.OfOhms(1).NeededSourceVoltage(
            Load.LargerOf(Power.FromWatts(watts), ElectricCurrent.FromAmperes(amperes)), VoltageLimit.DropAtMost(Ratio.Zero), Temperature.FromDegreesCelsius(20));
        Assert.False(answer.HasValue);
        Assert.Equal(BindingLimit.LargestDrop, answer.LimitedBy);
        Assert.DoesNotContain("NaN", answer.Explain().ToString(), StringComparison.Ordinal);
    }
}
