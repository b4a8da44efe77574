using System;
using CamPower;
using Classroom.Bench;

namespace Classroom.Tests;

public class ShownTests
{
    // docs/constant-power-run.md: 250 ft of 18 AWG copper-clad aluminum at 20 °C from 12 V carries 6.954 W at most.
    [Fact]
    public void NoOperatingPoint_IsAnAnswerWithTheMaximumPower()
    {
        var entry = new RunEntry { Material = ConductorMaterial.CopperCladAluminum10 };
        entry.Length.Text = "250";
        entry.Temperature.Text = "20";
        Assert.Equal("No operating point: from this supply the run carries at most 6.95 W, and the load asks for 9.00 W.", Shown.Sentence(entry.Solve()!.Value));
    }

    [Fact]
    public void CurrentThatTakesAllOfTheVoltage_SaysWhatTheRunCouldCarryInstead()
    {
        var entry = new RunEntry { LoadKind = LoadKind.ConstantCurrent };
        entry.Load.Text = "30";
        RunResult result = entry.Solve()!.Value;
        double most = Math.Pow(result.SourceVoltage.Volts, 2) / (4 * result.LoopResistance.Ohms);
        Assert.False(result.HasOperatingPoint);
        Assert.Contains(FormattableString.Invariant($"at most {most:0.00} W"), Shown.Sentence(result), StringComparison.Ordinal);
    }

    [Fact]
    public void RunWithoutResistance_HasNoMaximumPower()
    {
        var entry = new RunEntry();
        entry.Length.Text = "0";
        Assert.StartsWith("no limit", Shown.MaximumPower(entry.Solve()!.Value), StringComparison.Ordinal);
        Assert.Equal("cannot collapse", Shown.Margin(entry.Solve()!.Value));
    }
}
