using System;
using System.Linq;

namespace CamPower.Commissioning;

/// <summary>Which causes cannot be told apart by which readings: from the physics, whatever the numbers are.</summary>
/// <remarks>
/// <list type="bullet">
/// <item>More resistance in series is one number, whatever makes it, and wherever in a chain of runs it lies between two readings.</item>
/// <item>Without the loop and the current, more resistance and more current lose the same volts where one junction hangs on the
/// chain.</item>
/// <item>Without a voltage at the output or a reading of the dead run, an output that feeds nothing looks the same whether its protective
/// device, its run or a short is the reason.</item>
/// <item>Water between the conductors at one place of a feed or another is one conductance; without the insulation it is a larger
/// draw.</item>
/// <item>Without the supply's voltage at no load, a low set point, a sag, a limit and a low battery are one low voltage.</item>
/// </list>
/// </remarks>
internal static class CauseGrouping
{
    internal static GroupKey KeyOf(DiagnosisModel model, Hypothesis hypothesis, Func<int, SheetScope> scopeOf)
    {
        int unit = hypothesis.Unit, place = hypothesis.Place;
        if (unit == model.Meter) return new GroupKey(Cause.MeterWrong, unit, place);
        SheetScope scope = scopeOf(unit);
        if (model.IsBox(unit)) return SupplyKey(hypothesis.Cause, unit, scope);
        FeedModel feed = model.Feeds[unit];
        return hypothesis.Cause switch
        {
            Cause.WrongConductor or Cause.LongerRun or Cause.PoorJoint => new GroupKey(Cause.PoorJoint, unit, feed.StandIn(place, scope)),
            Cause.WaterInJoint => WaterKey(feed, scope),
            Cause.OpenConductor => scope.HasOutputVolts || scope.HasDeadReadings || !feed.IsBehind[place].All(behind => behind)
                ? new GroupKey(Cause.OpenConductor, unit, feed.StandIn(place, scope))
                : new GroupKey(Cause.ProtectiveDeviceOpen, unit, 0),
            Cause.ShortCircuit when scope.HasDeadReadings => new GroupKey(Cause.ShortCircuit, unit, 0),
            Cause.ShortCircuit when hypothesis.Second is int box => SupplyKey(Cause.SupplyInLimit, box, scopeOf(box)),
            Cause.ShortCircuit or Cause.ProtectiveDeviceOpen or Cause.ProtectiveDeviceHot => new GroupKey(Cause.ProtectiveDeviceOpen,
                unit, 0),
            Cause.LoadTooLarge or Cause.WrongDevice => DrawKey(feed, feed.Feed.Devices[place].RunIndex, scope),
            _ => new GroupKey(hypothesis.Cause, unit, place),
        };
    }

    private static GroupKey SupplyKey(Cause cause, int box, SheetScope scope) => new(
        scope.HasUnloaded && cause is (Cause.SupplySags or Cause.SupplyInLimit) ? Cause.SupplySags : Cause.SupplySetWrong, box, 0);

    private static GroupKey WaterKey(FeedModel feed, SheetScope scope)
    {
        bool isOneJunction = feed.Feed.Devices.All(d => d.RunIndex == feed.Feed.Devices[0].RunIndex);
        return scope.HasInsulation || !isOneJunction
            ? new GroupKey(Cause.WaterInJoint, feed.Unit, 0)
            : DrawKey(feed, feed.Feed.Devices[0].RunIndex, scope);
    }

    private static GroupKey DrawKey(FeedModel feed, int junction, SheetScope scope)
    {
        if (!scope.HasDeadReadings && !scope.HasAmperes)
        {
            foreach (int run in HypothesisList.RunsOf(feed).Reverse())
            {
                if (Enumerable.Range(0, feed.Devices).All(d => feed.IsBehind[run][d] == (feed.Feed.Devices[d].RunIndex == junction)))
                {
                    return new GroupKey(Cause.PoorJoint, feed.Unit, feed.StandIn(run, scope));
                }
            }
        }

        return new GroupKey(Cause.LoadTooLarge, feed.Unit, junction);
    }
}
