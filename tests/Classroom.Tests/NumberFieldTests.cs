using System;
using System.Globalization;
using Classroom.Bench;

namespace Classroom.Tests;

public class NumberFieldTests
{
    [Theory]
    [InlineData("")]
    [InlineData("twelve")]
    [InlineData("12 V")]
    [InlineData("1,5")]
    [InlineData("NaN")]
    [InlineData("1e999")]
    public void TextThatIsNoNumber_HasAFaultAndMakesNothing(string text)
    {
        var field = new NumberField(text);
        Assert.False(field.TryMake(v => v, out double _));
        Assert.NotNull(field.Fault);
    }

    [Fact]
    public void NumberThatIsRefused_ShowsTheRefusalWithoutTheFrameworksPart()
    {
        var field = new NumberField("-3");
        Assert.False(field.TryMake<double>(v => throw new ArgumentOutOfRangeException("depth", v, "depth must be at least 0 m, but is -3 m."), out double _));
        Assert.Equal("depth must be at least 0 m, but is -3 m.", field.Fault);
    }

    [Fact]
    public void CorrectedNumber_LosesItsFault()
    {
        var field = new NumberField("x");
        field.TryMake(v => v, out double _);
        field.Text = " 12.5 ";
        Assert.True(field.TryMake(v => v, out double made));
        Assert.Equal(12.5, made);
        Assert.Null(field.Fault);
    }

    [Theory]
    [InlineData("120", "36.576")]
    [InlineData("123.45", "37.6276")]
    [InlineData("x", "x")]
    public void Convert_ThereAndBack_IsTheSameNumber(string feet, string meters)
    {
        var field = new NumberField(feet);
        field.Convert(v => v * 0.3048);
        Assert.Equal(meters, field.Text);
        field.Convert(v => v / 0.3048);
        Assert.Equal(feet, field.Text);
    }

    [Fact]
    public void CultureOfTheMachine_ChangesNothing()
    {
        CultureInfo before = CultureInfo.CurrentCulture;
        try
        {
            CultureInfo.CurrentCulture = new CultureInfo("de-DE");
            var field = new NumberField("12.5");
            field.Convert(v => v * 2.1);
            Assert.Equal("26.25", field.Text);
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }
}
