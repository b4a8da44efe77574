using System;
using System.Linq;
using UnitsNet;

namespace CamPower.Tests.Circuits;

/// <summary>Every inverse question, solved back: the answer holds, a hair beyond it does not, and what is said to limit it does.</summary>
public class RunLimitPropertyTests
{
    private const double Hair = 1e-7;

    [SeededProperty(Arbitrary = [typeof(LimitCases)], MaxTest = 1500)]
    public void LongestLength_HoldsAndNoMore(LimitCase c)
    {
        RunAnswer<Length> answer = c.Run.LongestLength(c.Load, c.From, c.Accepted, c.At);
        if (!answer.TryGetValue(out Length length))
        {
            Assert.False(c.Meets(Fed(c, Lengthened(c.Run, 0)), slack: -1e-12), c.ToString());
            return;
        }

        double last = answer.AtLimit.Run.Segments.Last().OneWayLength.Meters;
        Assert.Equal(length.Meters, c.Run.Segments.First().OneWayLength.Meters + last, 1e-12 * length.Meters);
        AssertAtLimit(c, answer, Fed(c, Lengthened(c.Run, last)));
        if (answer.LimitedBy == BindingLimit.CalculatedRange)
        {
            Assert.Equal(1e6, last, 1e-3);
            return;
        }

        double perMeter = Runs.Eighteen.LoopResistancePerLengthAt(c.At).OhmsPerMeter;
        Assert.False(c.Meets(Fed(c, Lengthened(c.Run, last + (Hair * answer.AtLimit.LoopResistance.Ohms / perMeter)))), c.ToString());
    }

    [SeededProperty(Arbitrary = [typeof(LimitCases)], MaxTest = 1000)]
    public void SmallestArea_HoldsAndNoLess(LimitCase c)
    {
        RunAnswer<Area> answer = c.Run.SmallestArea(c.Load, c.From, c.Accepted, c.At);
        if (!answer.TryGetValue(out Area area))
        {
            Assert.False(c.Meets(Fed(c, Resized(c.Run, WireSize.SquareMillimeters(1e6))), slack: -1e-9), c.ToString());
            return;
        }

        AssertAtLimit(c, answer, Fed(c, Resized(c.Run, WireSize.SquareMillimeters(area.SquareMillimeters))));
        if (answer.LimitedBy == BindingLimit.CalculatedRange) Assert.Equal(0.001, area.SquareMillimeters, 1e-12);
        else
        {
            // The joints take a share of the resistance that no area changes.
            double cableShare = 1 - (c.Feeding.Ohms * c.JointShare / answer.AtLimit.LoopResistance.Ohms);
            double thinner = area.SquareMillimeters * (1 - Math.Min(0.5, Hair / cableShare));
            Assert.False(c.Meets(Fed(c, Resized(c.Run, WireSize.SquareMillimeters(thinner)))), c.ToString());
        }
    }

    [SeededProperty(Arbitrary = [typeof(LimitCases)], MaxTest = 1000)]
    public void SmallestSize_DoesAndTheNextSmallerDoesNot(LimitCase c)
    {
        WireSize[] gauges = [.. Enumerable.Range(0, 48).Select(n => WireSize.Awg(44 - n))];
        RunAnswer<WireSize> answer = c.Run.SmallestSize(WireSizeSeries.Awg, c.Load, c.From, c.Accepted, c.At);
        int index = answer.HasValue ? Array.IndexOf(gauges, answer.Value) : gauges.Length;
        if (answer.HasValue) Assert.True(c.Meets(Fed(c, Resized(c.Run, answer.Value))) && c.Meets(answer.AtLimit), c.ToString());
        if (index > 0) Assert.False(c.Meets(Fed(c, Resized(c.Run, gauges[index - 1]))), c.ToString());
        if (index == 0) Assert.Equal(BindingLimit.SeriesEnd, answer.LimitedBy);
        if (index == gauges.Length)
        {
            bool noneWouldDo = !c.Run.SmallestArea(c.Load, c.From, c.Accepted, c.At).HasValue;
            Assert.Equal(noneWouldDo, answer.LimitedBy != BindingLimit.SeriesEnd);
        }
    }

    [SeededProperty(Arbitrary = [typeof(LimitCases)], MaxTest = 1500)]
    public void LargestPower_HoldsAndNoMore(LimitCase c)
    {
        RunAnswer<Power> answer = c.Run.LargestPower(c.Load, c.From, c.Accepted, c.At);
        if (!answer.TryGetValue(out Power power))
        {
            Assert.False(c.Meets(Fed(c, c.Run, WithPower(c.Load, 0)), slack: -1e-12), c.ToString());
            return;
        }

        double watts = (double)power.Watts;
        AssertAtLimit(c, answer, Fed(c, c.Run, WithPower(c.Load, watts)));
        if (answer.LimitedBy == BindingLimit.CalculatedRange) Assert.Equal(1e9, watts);
        else Assert.False(c.Meets(Fed(c, c.Run, WithPower(c.Load, watts + (Hair * c.Volts * c.Volts / answer.AtLimit.LoopResistance.Ohms)))), c.ToString());
    }

    [SeededProperty(Arbitrary = [typeof(LimitCases)], MaxTest = 1500)]
    public void NeededSourceVoltage_HoldsAndNoLess(LimitCase c)
    {
        RunAnswer<ElectricPotential> answer = c.Run.NeededSourceVoltage(c.Load, c.Accepted, c.At);
        if (!answer.TryGetValue(out ElectricPotential source))
        {
            Assert.False(c.Meets(c.Run.Feed(c.Load, ElectricPotential.FromVolts(1e6), c.At)), c.ToString());
            return;
        }

        AssertAtLimit(c, answer, c.Run.Feed(c.Load, source, c.At));
        if (answer.LimitedBy == BindingLimit.CalculatedRange) Assert.Equal(1e-9, source.Volts, 1e-20);
        else Assert.False(c.Meets(c.Run.Feed(c.Load, ElectricPotential.FromVolts(source.Volts * (1 - Hair)), c.At)), c.ToString());
    }

    [SeededProperty(Arbitrary = [typeof(LimitCases)], MaxTest = 1500)]
    public void HighestTemperature_HoldsAndNoMore(LimitCase c)
    {
        RunAnswer<Temperature> answer = c.Run.HighestTemperature(c.Load, c.From, c.Accepted);
        if (!answer.TryGetValue(out Temperature highest))
        {
            Assert.False(c.Meets(c.Run.Feed(c.Load, c.From, Temperature.FromDegreesCelsius(-60)), slack: -1e-12), c.ToString());
            return;
        }

        double celsius = highest.DegreesCelsius;
        AssertAtLimit(c, answer, c.Run.Feed(c.Load, c.From, Temperature.FromDegreesCelsius(celsius)));
        if (answer.LimitedBy == BindingLimit.TemperatureRange) Assert.Equal(250, celsius);
        else if (celsius < 249.9)
        {
            double cableShare = 1 - (c.Feeding.Ohms * c.JointShare / answer.AtLimit.LoopResistance.Ohms);
            double hotter = Math.Min(250, celsius + (Hair / cableShare * 600));
            Assert.False(c.Meets(c.Run.Feed(c.Load, c.From, Temperature.FromDegreesCelsius(hotter))), c.ToString());
        }
    }

    // The answer itself holds to the last bit, and stands where it is said to stand.
    private static void AssertAtLimit<T>(LimitCase c, RunAnswer<T> answer, RunResult forward) where T : struct
    {
        Assert.True(c.Meets(answer.AtLimit), c.ToString());
        Assert.True(c.Meets(forward), c.ToString());
        double source = answer.AtLimit.SourceVoltage.Volts, volts = answer.AtLimit.LoadVoltage.Volts;
        switch (answer.LimitedBy)
        {
            case BindingLimit.LowestVoltage:
                Assert.Equal(c.LowestVolts, volts, 1e-7 * source);
                break;
            case BindingLimit.LargestDrop:
                Assert.Equal(c.DropShare, answer.AtLimit.DropRatio.DecimalFractions, 1e-7);
                break;
            case BindingLimit.Collapse:
                Assert.True(volts >= c.AcceptedFrom(source), c.ToString());
                Assert.Equal(1, answer.AtLimit.MarginToCollapse!.Value.DecimalFractions, 1e-6);
                break;
            default:
                Assert.True(volts >= c.AcceptedFrom(source), c.ToString());
                break;
        }
    }

    private static RunResult Fed(LimitCase c, CableRun run) => run.Feed(c.Load, c.From, c.At);

    private static RunResult Fed(LimitCase c, CableRun run, Load load) => run.Feed(load, c.From, c.At);

    private static CableRun Lengthened(CableRun run, double lastMeters) =>
        new(run.Parts[0], new CableSegment(Runs.Eighteen, Length.FromMeters(lastMeters)), run.Parts[2]);

    // Every conductor of the size, each with its own metal and make-up.
    private static CableRun Resized(CableRun run, WireSize size) => new([.. run.Parts.Select(p => p is CableSegment s
        ? new CableSegment(new Cable(Of(s.Cable.Outgoing, size), Of(s.Cable.Return, size)), s.OneWayLength)
        : p)]);

    private static Conductor Of(Conductor conductor, WireSize size) => new(size, conductor.Stranding, conductor.Material);

    private static Load WithPower(Load load, double watts)
    {
        Power power = Power.FromWatts(watts);
        if (load.IsLargerOf) return Load.LargerOf(power, load.CurrentComponent);
        Load rest = Load.ConstantPower(power) + Load.ConstantCurrent(load.CurrentComponent);
        return load.ResistanceComponent is ElectricResistance ohms ? rest + Load.ConstantResistance(ohms) : rest;
    }
}
