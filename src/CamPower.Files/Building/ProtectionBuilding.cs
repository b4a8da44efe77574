using CamPower.Files.Entries;
using UnitsNet;

namespace CamPower.Files.Building;

/// <summary>From entries to protective devices.</summary>
internal static class ProtectionBuilding
{
    internal static ProtectiveDevice Build(ProtectiveDeviceEntry entry, Place at)
    {
        string name = at.Name("name", entry.Name);
        if (entry.Fuse is not null) return Build(entry.Fuse, name, at.Member("fuse"));
        if (entry.ElectronicLimit is not null) return Build(entry.ElectronicLimit, name, at.Member("electronicLimit"));
        return entry.Resettable is null ? ProtectiveDevice.None : Build(entry.Resettable, name, at.Member("resettable"));
    }

    private static Fuse Build(FuseEntry entry, string name, Place at)
    {
        FuseCharacteristic characteristic = at.Value("characteristic", entry.Characteristic, StandIn.Characteristic);
        AmbientCurve? rerating = CurveBuilding.Build(entry.Rerating, at.Member("rerating"));
        return at.Build(() => new Fuse(
            name,
            at.Value("ratedCurrent", entry.RatedCurrent, characteristic.RatedFrom),
            characteristic,
            at.Value("voltageRating", entry.VoltageRating, StandIn.Voltage),
            at.Value("breakingCapacity", entry.BreakingCapacity, StandIn.Current),
            at.Value("coldResistance", entry.ColdResistance, ElectricResistance.Zero),
            at.Optional("leastMeltingIntegral", entry.LeastMeltingIntegral),
            rerating));
    }

    private static ElectronicLimit Build(ElectronicLimitEntry entry, string name, Place at) => at.Build(() => new ElectronicLimit(
        name,
        at.Value("limit", entry.Limit, StandIn.Current),
        at.Value("tolerance", entry.Tolerance, Ratio.Zero),
        at.Value("opensWithin", entry.OpensWithin, StandIn.LongTime),
        at.Value("resistance", entry.Resistance, ElectricResistance.Zero),
        at.Value("voltageRating", entry.VoltageRating, StandIn.Voltage),
        at.Optional("retriesAfter", entry.RetriesAfter)), standIn: null, ("limit", "limit"));

    private static ProtectiveDevice Build(ResettableFuseEntry entry, string name, Place at)
    {
        AmbientCurve thermal = CurveBuilding.Build(entry.Thermal, at.Member("thermal")) ?? AmbientCurve.GenericResettable;
        return at.Build<ProtectiveDevice>(() =>
        {
            ElectricCurrent timed = at.Value("timedCurrent", entry.TimedCurrent, StandIn.HighCurrent);
            return new ResettableFuse(
                name,
                at.Value("holdCurrent", entry.HoldCurrent, StandIn.LowCurrent),
                at.Value("tripCurrent", entry.TripCurrent, timed),
                timed,
                at.Value("longestTimeToTrip", entry.LongestTimeToTrip, StandIn.LongTime),
                at.Value("leastResistance", entry.LeastResistance, ElectricResistance.Zero),
                at.Value("greatestResistance", entry.GreatestResistance, StandIn.HighResistance),
                thermal,
                at.Value("maximumVoltage", entry.MaximumVoltage, StandIn.Voltage),
                at.Optional("maximumCurrent", entry.MaximumCurrent),
                at.Optional("trippedPower", entry.TrippedPower));
        }, ProtectiveDevice.None, ("voltageRating", "maximumVoltage"), ("breakingCapacity", "maximumCurrent"));
    }
}
