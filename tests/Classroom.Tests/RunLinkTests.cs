using CamPower;
using Classroom.Bench;

namespace Classroom.Tests;

/// <summary>A link carries every entry, and nothing in one can stop the page.</summary>
public class RunLinkTests
{
    [Fact]
    public void Link_OpensTheSameRun()
    {
        var entry = new RunEntry();
        entry.Use(LengthScale.Meters);
        entry.Use(TemperatureScale.Fahrenheit);
        (entry.Size, entry.Stranding, entry.Material) = (WireSize.SquareMillimeters(1.5), Stranding.Solid, ConductorMaterial.CopperCladAluminum10);
        entry.LoadKind = LoadKind.ConstantCurrent;
        (entry.Length.Text, entry.Temperature.Text, entry.Supply.Text, entry.Load.Text) = ("33.5", "77", "13.8", "0.4");
        (entry.Lowest.Text, entry.Highest.Text) = ("9", "15");

        var opened = new RunEntry();
        RunLink.Read(RunLink.Of(entry), opened);
        Assert.Equal(entry.ToString(), opened.ToString());
        Assert.Equal(RunLink.Of(entry), RunLink.Of(opened));
        Assert.Equal(entry.Solve()!.Value.LoadVoltage.Volts, opened.Solve()!.Value.LoadVoltage.Volts);
        Assert.Equal((9, 15), (opened.Window!.Lowest.Volts, opened.Window.Highest.Volts));
    }

    [Theory]
    [InlineData("")]
    [InlineData("?")]
    [InlineData("?size=7 elephants&stranding=loose&material=gold&keeps=7&lengths=miles&temperatures=K&other=1&size")]
    [InlineData("?=&&==&length")]
    public void LinkOfNothingThatThereIs_OpensThePageAsItIs(string query)
    {
        var opened = new RunEntry();
        RunLink.Read(query, opened);
        Assert.Equal(RunLink.Of(new RunEntry()), RunLink.Of(opened));
    }

    [Fact]
    public void NumberThatIsNone_IsShownWithItsFault()
    {
        var opened = new RunEntry();
        RunLink.Read("?length=far%20away&supply=%ZZ", opened);
        Assert.Null(opened.Solve());
        Assert.Equal("far away", opened.Length.Text);
        Assert.NotNull(opened.Length.Fault);
    }
}
