using CamPower.Checks;

namespace CamPower.Tests.Checks;

/// <summary>Two numbers that a finding compares never read alike.</summary>
public class DigitsTests
{
    [Theory]
    [InlineData(9.2, 10, "0.00", "9.20")]
    [InlineData(9.9996, 10, "0.00", "9.9996")]
    [InlineData(10.004, 10.006, "0.00", "10.00")]
    [InlineData(13.2000004, 13.2, "0.##", "13.2000004")]
    [InlineData(0.4, 0, "0", "0.4")]
    [InlineData(24, 13.2, "0.##", "24")]
    public void ANumber_HasDigitsUntilItDiffersFromItsLimit(double value, double limit, string format, string text) =>
        Assert.Equal(text, Digits.Of(value, limit, format));
}
