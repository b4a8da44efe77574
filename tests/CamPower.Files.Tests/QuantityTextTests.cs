using System;
using System.Globalization;
using UnitsNet;
using UnitsNet.Units;

namespace CamPower.Files.Tests;

/// <summary>Programs read quantities as site files do.</summary>
public class QuantityTextTests
{
    [Fact]
    public void Quantity_KeepsItsNumberAndUnit()
    {
        Length length = QuantityText.Read<Length>("30.5 ft");
        Assert.Equal((30.5, LengthUnit.Foot), (length.Value, length.Unit));
        Assert.Equal(6m, QuantityText.Read<Power>("6 W").Watts);
        Assert.Equal(-4, QuantityText.Read<Temperature>("-4 F").DegreesFahrenheit);
    }

    [Theory]
    [InlineData("30,5 m", "'30,5 m' has a comma: write a decimal point, as in 1.5 m, and nothing between thousands")]
    [InlineData("30", "'30' has no unit: a length is written in m, cm, mm, km, ft, in or yd")]
    [InlineData("30 meters", "'30 meters' has the wrong unit: a length is written in m, cm, mm, km, ft, in or yd; write '30 m'")]
    [InlineData("far", "'far' is not a length: write a number with a decimal point, and a unit: m, cm, mm, km, ft, in or yd")]
    public void WhatIsNoLength_IsRefusedWithTheAcceptedUnits(string text, string message) =>
        Assert.Equal(message, Assert.Throws<FormatException>(() => QuantityText.Read<Length>(text)).Message);

    // In these cultures a framework's own parser takes the comma, or the point, for something else.
    [Theory]
    [InlineData("de-DE")]
    [InlineData("fr-CH")]
    [InlineData("fa-IR")]
    public void CultureOfTheComputer_ChangesNothing(string culture)
    {
        CultureInfo before = CultureInfo.CurrentCulture;
        try
        {
            CultureInfo.CurrentCulture = CultureInfo.GetCultureInfo(culture);
            Assert.Equal(30.5, QuantityText.Read<Length>("30.5 m").Meters);
            Assert.Throws<FormatException>(() => QuantityText.Read<Length>("30,5 m"));
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    [Fact]
    public void EveryQuantityOfASiteFile_IsRead()
    {
        Assert.Equal(12, QuantityText.Read<ElectricPotential>("12 V").Volts);
        Assert.Equal(1.5, QuantityText.Read<ElectricCurrent>("1500 mA").Amperes);
        Assert.Equal(0.03, QuantityText.Read<ElectricResistance>("30 mohm").Ohms, 12);
        Assert.Equal(80, QuantityText.Read<Ratio>("80 %").Percent);
        Assert.Equal(90, QuantityText.Read<Duration>("1.5 min").Seconds);
        Assert.Equal(2200, QuantityText.Read<ElectricCapacitance>("2200 uF").Microfarads);
        Assert.Equal(5, QuantityText.Read<TemperatureDelta>("5 K").Kelvins);
        Assert.Equal(0.075, QuantityText.Read<Area>("750 cm2").SquareMeters, 12);
        Assert.Equal(600, QuantityText.Read<Irradiance>("600 W/m2").WattsPerSquareMeter);
        Assert.Equal(0.5, QuantityText.Read<ThermalResistance>("0.5 m2K/W").SquareMeterKelvinsPerWatt);
    }

    [Fact]
    public void QuantityThatNoSiteFileHolds_IsRefusedByItsType() =>
        Assert.Contains("Mass", Assert.Throws<NotSupportedException>(() => QuantityText.Read<Mass>("1 kg")).Message, StringComparison.Ordinal);
}
