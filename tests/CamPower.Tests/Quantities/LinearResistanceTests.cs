using UnitsNet;

namespace CamPower.Tests.Quantities;

public class LinearResistanceTests
{
    // A foot is 0.3048 m (exact, by international agreement): 6.385 Ω/1000 ft is 6.385/0.3048 Ω/km.
    [Fact]
    public void EveryUnit_SaysTheSame()
    {
        LinearResistance r = LinearResistance.FromOhmsPer1000Feet(6.385);
        Assert.Equal(20.948163, r.OhmsPerKilometer, 5e-7);
        Assert.Equal(0.6385, r.OhmsPer100Feet, 1e-15);
        Assert.Equal(6.385, r.OhmsPer1000Feet, 1e-14);
        Assert.Equal(2.0948163, r.OhmsPer100Meters, 5e-8);
        Assert.Equal(0.7662, r.Over(Length.FromFeet(120)).Ohms, 1e-12);
        Assert.Equal(r.OhmsPerMeter, LinearResistance.FromOhmsPerKilometer(r.OhmsPerKilometer).OhmsPerMeter, 1e-17);
        Assert.Equal(r.OhmsPerMeter, LinearResistance.FromOhmsPer100Meters(r.OhmsPer100Meters).OhmsPerMeter, 1e-17);
        Assert.Equal(r.OhmsPerMeter, LinearResistance.FromOhmsPer100Feet(r.OhmsPer100Feet).OhmsPerMeter, 1e-17);
    }

    [Fact]
    public void Order_FollowsTheValue()
    {
        LinearResistance low = LinearResistance.FromOhmsPerKilometer(1), high = LinearResistance.FromOhmsPerKilometer(2), same = LinearResistance.FromOhmsPerMeter(0.001);
        Assert.True(low < high && high > low && low <= same && low >= same && low == same && low != high);
        Assert.Equal(low.GetHashCode(), same.GetHashCode());
        Assert.True(low.CompareTo(high) < 0);
        Assert.True(low.Equals((object)same));
        Assert.False(low.Equals("1 Ω/km"));
    }
}
