using System;
using System.Linq;
using UnitsNet;
using UnitsNet.Units;

namespace CamPower.Tests.Circuits;

/// <summary>An answer read in any unit and handed back still holds: it lies a hair inside what limits it.</summary>
public class RunLimitUnitTests
{
    [SeededProperty(Arbitrary = [typeof(LimitCases)], MaxTest = 1000)]
    public void LongestLength(LimitCase c)
    {
        if (!c.Run.LongestLength(c.Load, c.From, c.Accepted, c.At).TryGetValue(out Length longest)) return;
        double trunk = c.Run.Segments.First().OneWayLength.Meters;
        foreach (var unit in Length.Units)
        {
            double meters = new Length(longest.As(unit), unit).Meters;
            Holds(c, unit, Feed(c, new CableRun(c.Run.Parts[0], new CableSegment(Runs.Eighteen, Length.FromMeters(Math.Max(0, meters - trunk))), c.Run.Parts[2]), c.Load));
        }
    }

    [SeededProperty(Arbitrary = [typeof(LimitCases)], MaxTest = 1000)]
    public void SmallestArea(LimitCase c)
    {
        if (!c.Run.SmallestArea(c.Load, c.From, c.Accepted, c.At).TryGetValue(out Area smallest)) return;
        foreach (var unit in Area.Units)
        {
            WireSize size = WireSize.SquareMillimeters(new Area(smallest.As(unit), unit).SquareMillimeters);
            Holds(c, unit, Feed(c, new CableRun([.. c.Run.Parts.Select(p => Resized(p, size))]), c.Load));
        }
    }

    [SeededProperty(Arbitrary = [typeof(LimitCases)], MaxTest = 1000)]
    public void LargestPower(LimitCase c)
    {
        Load none = Load.ConstantCurrent(c.Load.CurrentComponent) + (c.Load.ResistanceComponent is ElectricResistance ohms ? Load.ConstantResistance(ohms) : Load.None);
        Load beside = c.Load.IsLargerOf ? c.Load : none;
        RunAnswer<Power> answer = c.Run.LargestPower(beside, c.From, c.Accepted, c.At);
        if (!answer.TryGetValue(out Power largest) || largest < Power.FromMicrowatts(1)) return;
        foreach (var unit in new[] { PowerUnit.Watt, PowerUnit.Milliwatt, PowerUnit.Kilowatt, PowerUnit.MechanicalHorsepower, PowerUnit.BritishThermalUnitPerHour, PowerUnit.JoulePerHour })
        {
            Power power = Power.From((double)largest.As(unit), unit);
            Holds(c, unit, Feed(c, c.Run, c.Load.IsLargerOf ? Load.LargerOf(power, c.Load.CurrentComponent) : Load.ConstantPower(power) + none));
        }
    }

    [SeededProperty(Arbitrary = [typeof(LimitCases)], MaxTest = 1000)]
    public void NeededSourceVoltage(LimitCase c)
    {
        if (!c.Run.NeededSourceVoltage(c.Load, c.Accepted, c.At).TryGetValue(out ElectricPotential needed)) return;
        foreach (var unit in ElectricPotential.Units) Holds(c, unit, c.Run.Feed(c.Load, new ElectricPotential(needed.As(unit), unit), c.At));
    }

    [SeededProperty(Arbitrary = [typeof(LimitCases)], MaxTest = 1000)]
    public void HighestTemperature(LimitCase c)
    {
        if (!c.Run.HighestTemperature(c.Load, c.From, c.Accepted).TryGetValue(out Temperature highest)) return;
        foreach (var unit in Temperature.Units.Where(u => u != TemperatureUnit.SolarTemperature))
        {
            Holds(c, unit, c.Run.Feed(c.Load, c.From, new Temperature(highest.As(unit), unit)));
        }
    }

    private static RunResult Feed(LimitCase c, CableRun run, Load load) => run.Feed(load, c.From, c.At);

    private static RunPart Resized(RunPart part, WireSize size) => part is CableSegment s
        ? new CableSegment(new Cable(Of(s.Cable.Outgoing, size), Of(s.Cable.Return, size)), s.OneWayLength)
        : part;

    private static Conductor Of(Conductor conductor, WireSize size) => new(size, conductor.Stranding, conductor.Material);

    private static void Holds(LimitCase c, Enum unit, RunResult result) => Assert.True(c.Meets(result), $"{unit}: {c}");
}
