using System;

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
    public void Parse_AndPrint_LoseNothing(string text) => Cultures.ForEach(_ => Assert.Equal(text, WireSize.Parse(text).ToString()));

    [Theory]
    [InlineData("18awg", "18 AWG")]
    [InlineData("  2/0 awg ", "2/0 AWG")]
    [InlineData("0 AWG", "1/0 AWG")]
    [InlineData("1.5mm²", "1.5 mm2")]
    [InlineData("1.50 MM2", "1.5 mm2")]
    public void Parse_AsPeopleWriteIt_IsTheSameSize(string text, string printed) => Cultures.ForEach(_ => Assert.Equal(printed, WireSize.Parse(text).ToString()));

    [Theory]
    [InlineData("")]
    [InlineData("AWG")]
    [InlineData("18")]
    [InlineData("45 AWG")]
    [InlineData("5/0 AWG")]
    [InlineData("0/0 AWG")]
    [InlineData("-1 AWG")]
    [InlineData("18.5 AWG")]
    [InlineData("1,5 mm2")]
    [InlineData("1e3 mm2")]
    [InlineData("0 mm2")]
    [InlineData("-1 mm2")]
    [InlineData("NaN mm2")]
    [InlineData("1.5 mm")]
    public void Parse_OfWhatIsNoSize_SaysSo(string text) => Cultures.ForEach(_ =>
    {
        Assert.False(WireSize.TryParse(text, out WireSize size));
        Assert.Equal(default, size);
        Assert.Contains(text, Assert.Throws<FormatException>(() => WireSize.Parse(text)).Message, StringComparison.Ordinal);
    });

    [Fact]
    public void Order_IsByArea()
    {
        for (int gauge = -3; gauge < 44; gauge++) Assert.True(WireSize.Awg(gauge) > WireSize.Awg(gauge + 1));
        Assert.True(WireSize.SquareMillimeters(0.75) < WireSize.Awg(18) && WireSize.Awg(18) < WireSize.SquareMillimeters(1));
        Assert.True(WireSize.SquareMillimeters(1) >= WireSize.SquareMillimeters(1) && WireSize.SquareMillimeters(1) <= WireSize.SquareMillimeters(1));
        Assert.True(default(WireSize) < WireSize.Awg(44));
    }
}
