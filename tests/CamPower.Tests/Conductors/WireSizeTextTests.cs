namespace CamPower.Tests.Conductors;

public class WireSizeTextTests
{
    [Theory]
    [InlineData(1e-5)]
    [InlineData(1e-9)]
    [InlineData(1.5)]
    [InlineData(1e20)]
    public void AnyCrossSection_IsReadBackFromItsText(double squareMillimeters)
    {
        WireSize size = WireSize.SquareMillimeters(squareMillimeters);
        Assert.Equal(size, WireSize.Parse(size.ToString()));
    }
}
