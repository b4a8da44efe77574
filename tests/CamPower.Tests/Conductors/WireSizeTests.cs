using System;
using FsCheck;

namespace CamPower.Tests.Conductors;

public class WireSizeTests
{
    [Theory]
    [InlineData("18 AWG")]
    [InlineData("1 AWG")]
    [InlineData("1/0 AWG")]
    [InlineData("4/0 AWG")]
    [InlineData("44 AWG")]
    [InlineData("1.5 mm2")]
    [InlineData("0.823 mm2")]
    [InlineData("0.00001 mm2")]
    [InlineData("123456789012345680000 mm2")]
    [InlineData("250 kcmil")]
    [InlineData("1.62 kcmil")]
    [InlineData("0.8 mm wire")]
    [InlineData("0.0000315 mm wire")]
    public void Parse_AndPrint_LoseNothing(string text) => Cultures.ForEach(_ => Assert.Equal(text, WireSize.Parse(text).ToString()));

    [Theory]
    [InlineData("18awg", "18 AWG")]
    [InlineData("  2/0 awg ", "2/0 AWG")]
    [InlineData("0 AWG", "1/0 AWG")]
    [InlineData("00 AWG", "2/0 AWG")]
    [InlineData("000awg", "3/0 AWG")]
    [InlineData("0000 AWG", "4/0 AWG")]
    [InlineData("1.5mm²", "1.5 mm2")]
    [InlineData("1.50 MM2", "1.5 mm2")]
    [InlineData("250MCM", "250 kcmil")]
    [InlineData(" 250.0 KCMIL", "250 kcmil")]
    [InlineData("0.80mm WIRE", "0.8 mm wire")]
    public void Parse_AsPeopleWriteIt_IsTheSameSize(string text, string printed) => Cultures.ForEach(_ => Assert.Equal(printed, WireSize.Parse(text).ToString()));

    [Theory]
    [InlineData("")]
    [InlineData("AWG")]
    [InlineData("18")]
    [InlineData("45 AWG")]
    [InlineData("5/0 AWG")]
    [InlineData("0/0 AWG")]
    [InlineData("00000 AWG")]
    [InlineData("00/0 AWG")]
    [InlineData("-1 AWG")]
    [InlineData("18.5 AWG")]
    [InlineData("1,5 mm2")]
    [InlineData("1e3 mm2")]
    [InlineData("0 mm2")]
    [InlineData("-1 mm2")]
    [InlineData("NaN mm2")]
    [InlineData("1.5 mm")]
    [InlineData("wire")]
    [InlineData("mm wire")]
    [InlineData("0 mm wire")]
    [InlineData("-250 kcmil")]
    [InlineData("18 AWG wire")]
    public void Parse_OfWhatIsNoSize_SaysSo(string text) => Cultures.ForEach(_ =>
    {
        Assert.False(WireSize.TryParse(text, out WireSize size));
        Assert.Equal(default, size);
        Assert.Contains(text, Assert.Throws<FormatException>(() => WireSize.Parse(text)).Message, StringComparison.Ordinal);
    });

    // ASTM B258: 4/0 is 0.4600 in across, by definition of the gauge; 0.46²·π/4 in² = 107.2 mm².
    [Fact]
    public void Parse_OfFourNoughts_IsFourOught() => Assert.Equal(107.2, WireSize.Parse("0000 AWG").Area.SquareMillimeters, 0.05);

    [Fact]
    public void Order_IsByArea()
    {
        for (int gauge = -3; gauge < 44; gauge++) Assert.True(WireSize.Awg(gauge) > WireSize.Awg(gauge + 1));
        Assert.True(WireSize.SquareMillimeters(0.75) < WireSize.Awg(18) && WireSize.Awg(18) < WireSize.SquareMillimeters(1));
        Assert.True(WireSize.SquareMillimeters(1) >= WireSize.SquareMillimeters(1) && WireSize.SquareMillimeters(1) <= WireSize.SquareMillimeters(1));
        Assert.True(WireSize.Kcmil(250) > WireSize.Awg(-3) && WireSize.Diameter(1) < WireSize.Awg(18) && WireSize.Diameter(1.05) > WireSize.Awg(18));
        Assert.True(default(WireSize) < WireSize.Awg(44));
    }

    // GNU units 2.22: 1 cmil is 0.00050670748 mm². A wire of 0.8 mm has π/4·0.64 = 0.502655 mm², by hand.
    [Fact]
    public void Area_OfKcmilAndDiameter_IsTheDefinition()
    {
        Assert.Equal(126.67687, WireSize.Kcmil(250).Area.SquareMillimeters, 1e-5);
        Assert.Equal(0.502655, WireSize.Diameter(0.8).Area.SquareMillimeters, 5e-7);
        Assert.Equal(0.8, WireSize.Diameter(0.8).SolidDiameter.Millimeters, 1e-15);
    }

    // The same area named in two series is not the same size: it prints otherwise.
    [Fact]
    public void Equality_IsOfSizeAndSeries() => Assert.NotEqual(WireSize.SquareMillimeters(4), WireSize.Kcmil(4 / 0.506707479));

    [SeededProperty(MaxTest = 500)]
    public void Parse_AndPrint_LoseNothing_OfAnyNumber(PositiveInt digits, byte shift)
    {
        double number = digits.Get * Math.Pow(10, (shift % 20) - 12);
        foreach (WireSize size in new[] { WireSize.SquareMillimeters(number), WireSize.Kcmil(number), WireSize.Diameter(number) })
        {
            Assert.Equal(size, WireSize.Parse(size.ToString()));
            Assert.DoesNotContain("E", size.ToString(), StringComparison.Ordinal);
        }
    }
}
