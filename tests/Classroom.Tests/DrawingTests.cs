using System;
using System.Collections.Generic;
using System.Globalization;
using System.Linq;
using CamPower;
using Classroom.Bench;
using Classroom.Charts;

namespace Classroom.Tests;

public class DrawingTests
{
    public static TheoryData<LoadKind, string, string> Entries => new()
    {
        { LoadKind.ConstantPower, "120", "9" },
        { LoadKind.ConstantPower, "120", "0" },
        { LoadKind.ConstantPower, "120", "21.3" },
        { LoadKind.ConstantPower, "120", "90" },
        { LoadKind.ConstantPower, "5", "900" },
        { LoadKind.ConstantPower, "0", "9" },
        { LoadKind.ConstantCurrent, "120", "0.75" },
        { LoadKind.ConstantCurrent, "120", "30" },
        { LoadKind.ConstantResistance, "120", "16" },
        { LoadKind.ConstantResistance, "3000", "1" },
    };

    [Theory]
    [MemberData(nameof(Entries))]
    public void EveryPoint_LiesInsideTheFrame(LoadKind kind, string feet, string load)
    {
        RunResult result = Solved(kind, feet, load);
        var line = new LoadLineDrawing(result);
        var profile = new ProfileDrawing(result, LengthScale.Feet);
        foreach ((double x, double y) in new[] { line.Brings, line.Draws, profile.Supply, profile.Along ?? profile.Supply }.SelectMany(Points))
        {
            Assert.InRange(x, ChartFrame.Left - 0.01, ChartFrame.Right + 0.01);
            Assert.InRange(y, ChartFrame.Top - 0.01, ChartFrame.Bottom + 0.01);
        }
    }

    [Theory]
    [MemberData(nameof(Entries))]
    public void Roots_AreOnBothLines_AndOnlyWhereThereIsAnOperatingPoint(LoadKind kind, string feet, string load)
    {
        RunResult result = Solved(kind, feet, load);
        var drawing = new LoadLineDrawing(result);
        Assert.Equal(result.HasOperatingPoint, drawing.Upper is not null);
        double vs = result.SourceVoltage.Volts, ohms = result.LoopResistance.Ohms;
        foreach ((double volts, double amperes) in new[] { drawing.Upper, drawing.Lower }.OfType<(double, double)>())
        {
            // Kirchhoff: what is lost in the run is what is missing at the load.
            Assert.Equal(vs - volts, amperes * ohms, 1e-6);
        }

        if (drawing is { Upper: { } upper, Lower: { } lower })
        {
            // Vieta: the roots of V² - Vs·V + R·P add up to Vs.
            Assert.Equal(vs, upper.Volts + lower.Volts, 1e-6);
            Assert.True(drawing.UpperLabel.Y - drawing.LowerLabel.Y >= 15, "The labels must not overlap.");
        }
    }

    [Fact]
    public void LoadThatIsTooMuch_IsDrawnAboveTheLineEverywhere()
    {
        RunResult result = Solved(LoadKind.ConstantPower, "120", "30");
        var drawing = new LoadLineDrawing(result);
        double vs = result.SourceVoltage.Volts, ohms = result.LoopResistance.Ohms;
        foreach ((double x, double y) in Points(drawing.Draws))
        {
            double volts = (x - ChartFrame.Left) / (ChartFrame.Right - ChartFrame.Left) * vs;
            Assert.True(y < drawing.Frame.Y((vs - volts) / ohms), FormattableString.Invariant($"At {volts} V the load's curve must lie above the run's line."));
        }
    }

    [Fact]
    public void Profile_EndsAtTheLoadsVoltage()
    {
        RunResult result = Solved(LoadKind.ConstantPower, "120", "9");
        var drawing = new ProfileDrawing(result, LengthScale.Meters);
        Assert.Equal(36.576, drawing.Frame.Across, 1e-9);
        (double x, double y) = Points(drawing.Along!).Last();
        Assert.Equal(ChartFrame.Right, x, 0.01);
        Assert.Equal(drawing.Frame.Y(result.LoadVoltage.Volts), y, 0.01);
    }

    [Theory]
    [InlineData(12, new[] { 0.0, 5, 10 })]
    [InlineData(7.12, new[] { 0.0, 2, 4, 6 })]
    [InlineData(1, new[] { 0, 0.2, 0.4, 0.6, 0.8, 1 })]
    [InlineData(0.03, new[] { 0, 0.01, 0.02, 0.03 })]
    public void Ticks_AreRoundAndFew(double end, double[] ticks)
    {
        IReadOnlyList<double> found = new ChartFrame(end, 1).AcrossTicks;
        Assert.Equal(ticks.Length, found.Count);
        Assert.All(ticks.Zip(found), pair => Assert.Equal(pair.First, pair.Second, 1e-12));
    }

    private static RunResult Solved(LoadKind kind, string feet, string load)
    {
        var entry = new RunEntry { LoadKind = kind };
        entry.Length.Text = feet;
        entry.Load.Text = load;
        return entry.Solve()!.Value;
    }

    private static IEnumerable<(double X, double Y)> Points(string path) => path.Split(' ').Select(p => p[1..].Split(','))
        .Select(p => (double.Parse(p[0], CultureInfo.InvariantCulture), double.Parse(p[1], CultureInfo.InvariantCulture)));

    // 10.56 V of 9 W over 120 ft from 12 V: the README works it out by hand; the window begins at 10.8 V.
    [Fact]
    public void Profile_ShowsTheWindowOfTheCamera_AndSaysWhatIsMissing()
    {
        var entry = new RunEntry();
        RunResult result = entry.Solve()!.Value;
        var drawing = new ProfileDrawing(result, LengthScale.Feet, entry.Window);
        Assert.Equal([10.8, 13.2], drawing.Accepted.Select(a => a.Volts));
        Assert.EndsWith("10.80 V to 13.20 V: it gets 0.24 V too little.", drawing.Description, StringComparison.Ordinal);
        Assert.True(drawing.Frame.Up > 13.2);
    }

    [Fact]
    public void Profile_DrawsTheKeptRunOnTheSameAxes()
    {
        var entry = new RunEntry();
        RunResult kept = entry.Solve()!.Value;
        entry.Length.Text = "60";
        var drawing = new ProfileDrawing(entry.Solve()!.Value, LengthScale.Feet, entry.Window, kept);
        Assert.Equal(120, drawing.Frame.Across, 1e-9);
        Assert.NotNull(drawing.Kept);
        Assert.Equal(drawing.Frame.X(60), drawing.End, 1e-9);
    }
}
