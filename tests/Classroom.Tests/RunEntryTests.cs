using System;
using CamPower;
using Classroom.Bench;
using UnitsNet;

namespace Classroom.Tests;

public class RunEntryTests
{
    [Fact]
    public void AsItOpens_AnswersAsTheLibraryDoes()
    {
        var cable = Cable.Pair(WireSize.Awg(18), Stranding.ClassB, ConductorMaterial.AnnealedCopper);
        RunResult asked = new CableRun(cable, Length.FromFeet(120)).Feed(Load.ConstantPower(Power.FromWatts(9)),
            ElectricPotential.FromVolts(12), Temperature.FromDegreesCelsius(40));
        Assert.Equal(asked.LoadVoltage.Volts, new RunEntry().Solve()!.Value.LoadVoltage.Volts);
    }

    [Fact]
    public void EveryFaultyField_SaysSoAtOnce_InItsOwnNameAndUnit()
    {
        var entry = new RunEntry();
        entry.Length.Text = "-5";
        entry.Temperature.Text = "900";
        entry.Supply.Text = "0";
        entry.Load.Text = "-1";

        Assert.Null(entry.Solve());
        Assert.Equal("Length, one way must be 0 ft or more, but is -5 ft.", entry.Length.Fault);
        Assert.Equal("Load must be 0 W or more, but is -1 W.", entry.Load.Fault);
        Assert.EndsWith("°C, but is 900 °C.", entry.Temperature.Fault, StringComparison.Ordinal);
        Assert.Equal("Supply voltage must be more than 0 V, but is 0 V.", entry.Supply.Fault);
    }

    [Fact]
    public void Fault_IsInTheUnitThatIsChosen()
    {
        var entry = new RunEntry();
        entry.Use(LengthScale.Meters);
        entry.Use(TemperatureScale.Fahrenheit);
        entry.Length.Text = "-5";
        entry.Temperature.Text = "9999";
        entry.Supply.Text = "12,5";
        Assert.Null(entry.Solve());
        Assert.Equal("Length, one way must be 0 m or more, but is -5 m.", entry.Length.Fault);
        Assert.EndsWith("°F, but is 9999 °F.", entry.Temperature.Fault, StringComparison.Ordinal);
        Assert.StartsWith("Supply voltage: write a plain number in V with a decimal point", entry.Supply.Fault, StringComparison.Ordinal);
    }

    // What the field lets through the library takes too: the ends of the range are the library's own.
    [Fact]
    public void TemperatureRange_IsThatOfTheMaterial()
    {
        var entry = new RunEntry();
        foreach (Temperature end in new[] { entry.Material.ValidFrom, entry.Material.ValidTo })
        {
            entry.Temperature.Text = end.DegreesCelsius.ToString("R", System.Globalization.CultureInfo.InvariantCulture);
            Assert.NotNull(entry.Solve());
        }
    }

    [Fact]
    public void WindowUpsideDown_IsAFaultOfItsUpperEnd()
    {
        var entry = new RunEntry();
        foreach (string highest in new[] { "11", "13" })
        {
            (entry.Lowest.Text, entry.Highest.Text) = ("13", highest);
            Assert.Null(entry.Solve());
            Assert.Equal($"Camera accepts to must be more than 13 V, but is {highest} V.", entry.Highest.Fault);
        }
    }

    [Fact]
    public void OtherUnits_AreTheSameQuestion()
    {
        var entry = new RunEntry();
        double before = entry.Solve()!.Value.LoadVoltage.Volts;
        entry.Use(LengthScale.Meters);
        entry.Use(TemperatureScale.Fahrenheit);
        Assert.Equal("36.576", entry.Length.Text);
        Assert.Equal("104", entry.Temperature.Text);
        Assert.Equal(before, entry.Solve()!.Value.LoadVoltage.Volts, 1e-12);
    }

    [Theory]
    [InlineData(LoadKind.ConstantPower, "9", 9)]
    [InlineData(LoadKind.ConstantCurrent, "0.75", 0.75)]
    [InlineData(LoadKind.ConstantResistance, "16", 16)]
    public void EachKindOfLoad_KeepsItsOwnNumber(LoadKind kind, string text, double number)
    {
        var entry = new RunEntry { LoadKind = kind };
        Assert.Equal(text, entry.Load.Text);
        RunResult result = entry.Solve()!.Value;
        double found = kind switch
        {
            LoadKind.ConstantPower => (double)result.LoadPower.Watts,
            LoadKind.ConstantCurrent => result.Current.Amperes,
            _ => result.LoadVoltage.Volts / result.Current.Amperes,
        };
        Assert.Equal(number, found, 1e-9);
    }
}
