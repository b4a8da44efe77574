using System;
using UnitsNet;

namespace CamPower.Tests.Loads;

public class LabelDrawLimitTests
{
    [Theory]
    [InlineData(12, 1e300)]
    [InlineData(1e200, 1e200)]
    [InlineData(2e9, 1)]
    public void ALabelOfMorePowerThanAnyLoad_IsRefusedByName(double volts, double amperes)
    {
        var e = Assert.Throws<ArgumentOutOfRangeException>(() => new LabelDraw(ElectricPotential.FromVolts(volts), ElectricCurrent.FromAmperes(amperes), InputStage.Unknown));
        Assert.Equal("current", e.ParamName);
    }
}
