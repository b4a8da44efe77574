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
    public void EveryFaultyField_SaysSoAtOnce_InTheLibrarysWords()
    {
        var entry = new RunEntry();
        entry.Length.Text = "-5";
        entry.Temperature.Text = "900";
        entry.Supply.Text = "0";
        entry.Load.Text = "-1";

        Assert.Null(entry.Solve());
        Assert.Equal(LibrarysWords(() => CableOf(entry, Length.FromFeet(-5))), entry.Length.Fault);
        Assert.Equal(LibrarysWords(() => Load.ConstantPower(Power.FromWatts(-1))), entry.Load.Fault);
        Assert.Contains("900 °C", entry.Temperature.Fault, StringComparison.Ordinal);
        Assert.Contains("0 V", entry.Supply.Fault, StringComparison.Ordinal);

        static CableRun CableOf(RunEntry entry, Length length) => new(Cable.Pair(entry.Size, entry.Stranding, entry.Material), length);

        static string LibrarysWords(Func<object> act) => Assert.Throws<ArgumentOutOfRangeException>(act).Message.Split(" (Parameter")[0];
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
