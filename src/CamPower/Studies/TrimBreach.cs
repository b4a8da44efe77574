using System.Collections.Generic;
using System.Linq;
using UnitsNet;

namespace CamPower.Studies;

/// <summary>A device that is out at some set point, and the bound that it breaks.</summary>
internal sealed class TrimBreach(DeviceAssessment device, TrimBound bound, Condition? condition = null)
{
    /// <summary>The bound as a limit at the set point beyond which it is broken.</summary>
    internal TrimLimit At(double volts) => new(volts, bound, device.Device, condition);

    /// <summary>Which of several at once is named: too low, the device behind the most resistance, which pulls the others down; too high,
    /// the one behind the least.</summary>
    internal double RankAt(double celsius)
    {
        double ohms = (device.Output.Protection?.GreatestOhms ?? 0) + device.Path.Sum(run => run.Run.OhmsAt(celsius));
        return bound == TrimBound.HighestVoltage ? -ohms : ohms;
    }

    /// <summary>Where a device is not up, does not start or is under the voltage that it accepts, and a higher set point may
    /// help.</summary>
    /// <param name="device">The device.</param>
    /// <param name="overloaded">The conditions in which its supply is overloaded because it is set too high.</param>
    internal static IEnumerable<TrimBreach> TooLow(DeviceAssessment device, ICollection<Condition> overloaded) =>
        from inCondition in device.InConditions
        where !overloaded.Contains(inCondition.Condition)
        let bound = BoundUnder(inCondition)
        where bound is not null
        select new TrimBreach(device, bound.Value, inCondition.Condition);

    /// <summary>Where a device sees more than it accepts at light load, or suffers from a supply that a lower set point would
    /// relieve.</summary>
    /// <param name="device">The device.</param>
    /// <param name="overloaded">The conditions in which its supply is overloaded because it is set too high.</param>
    internal static IEnumerable<TrimBreach> TooHigh(DeviceAssessment device, ICollection<Condition> overloaded)
    {
        if (device.AtLightLoad.IsViolated) yield return new TrimBreach(device, TrimBound.HighestVoltage);
        foreach (DeviceInCondition suffering in device.InConditions.Where(
            c => overloaded.Contains(c.Condition) && BoundUnder(c) is not null))
        {
            yield return new TrimBreach(device, TrimBound.SupplyOverloaded, suffering.Condition);
        }
    }

    private static TrimBound? BoundUnder(DeviceInCondition device)
    {
        if (device.State == DeviceState.WrongCurrent) return null;
        if (device.State == DeviceState.SupplyOverloaded) return TrimBound.SupplyOverloaded;
        if (device.SolvedVoltage is null) return TrimBound.Collapse;
        if (device.Start == StartVerdict.SettlesBelowDropOut) return TrimBound.DropOut;
        if (device.Start is StartVerdict.UnloadedBelowTurnOn or StartVerdict.TurnOnBelowUnstableVoltage or StartVerdict.HeldDownBySupply)
        {
            return TrimBound.Starting;
        }

        if (device.State != DeviceState.Up) return TrimBound.DropOut;
        return device.LowestVoltage(Ratio.Zero).IsViolated ? TrimBound.LowestVoltage : null;
    }
}
