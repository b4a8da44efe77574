using System.Collections.Generic;

namespace CamPower.Supplies;

/// <summary>Holds what an output delivers against the two tables of a power-limit class that names its standard.</summary>
internal sealed class PowerLimitTrial(PowerLimitClass limitClass, CurrentKind kind, OutputDelivery delivery, ProtectiveDevice? protection)
{
    /// <summary>One route for each table that the output can meet: the second only where its device is a fuse, or may be.</summary>
    internal IEnumerable<PowerLimitRoute> Routes()
    {
        yield return Along(PowerLimiting.Inherent);
        if (protection is null or Fuse) yield return Along(PowerLimiting.OvercurrentDevice);
    }

    private PowerLimitRoute Along(PowerLimiting limiting) =>
        new(limitClass, limiting, Figures(PowerLimitTable.Of(limitClass, limiting, kind)));

    // Every limit is as strict or stricter at more voltage, so that the two ends of it decide.
    private IEnumerable<PowerLimitFigure> Figures(PowerLimitTable table)
    {
        double highest = table.HighestVoltage.Value;
        yield return new PowerLimitFigure(
            PowerLimitQuantity.OpenCircuitVoltage, delivery.LeastVolts, delivery.MostVolts, highest, highest, table.HighestVoltage.Source);
        if (Peak() is PowerLimitFigure peak) yield return peak;
        if (table.BandAt(delivery.LeastVolts) is not PowerLimitBand low) yield break;
        PowerLimitBand high = table.BandAt(delivery.MostVolts) ?? low;

        yield return Figure(PowerLimitQuantity.Current, delivery.LeastAmperes, delivery.MostAmperes, low.Current, high.Current);
        if (low.ApparentPower is not null && high.ApparentPower is not null)
        {
            yield return Figure(PowerLimitQuantity.ApparentPower, delivery.LeastVoltAmperes, delivery.MostVoltAmperes, low.ApparentPower,
                high.ApparentPower);
        }

        if (low.DeviceRating is not null && high.DeviceRating is not null)
        {
            double? rating = (protection as Fuse)?.RatedCurrent.Amperes;
            yield return Figure(PowerLimitQuantity.DeviceRating, rating ?? 0, rating
                ?? double.PositiveInfinity, low.DeviceRating, high.DeviceRating);
            if (Opening(high.DeviceRating) is PowerLimitFigure opening) yield return opening;
        }

        if (low.Nameplate is not null && high.Nameplate is not null)
        {
            double amperes = delivery.RatedAmperes;
            yield return new PowerLimitFigure(PowerLimitQuantity.NameplateCurrent, amperes, amperes,
                low.Nameplate.At(delivery.LeastVolts) / delivery.LeastVolts, high.Nameplate.At(delivery.MostVolts) / delivery.MostVolts,
                    high.Nameplate.Source);
        }
    }

    // The ratings of limited power sources are those of devices that are fast enough. Of an undeclared device its rating says as much.
    private PowerLimitFigure? Opening(PowerLimitTerm rating)
    {
        if (limitClass == PowerLimitClass.Class2 || protection is not Fuse fuse) return null;
        double amperes = PowerLimitConstants.LimitedPowerOpeningCurrent.Value / 100 * rating.At(delivery.MostVolts),
            limit = PowerLimitConstants.LimitedPowerOpeningTime.Value;
        return new PowerLimitFigure(
            PowerLimitQuantity.DeviceOpening, 0, fuse.OpeningAt(amperes, currentFactor: 1).LatestSeconds, limit, limit,
            PowerLimitConstants.LimitedPowerOpeningTime.Source);
    }

    // The tables of limited power sources are for direct voltage free of ripple; nobody's word on it matters above 30 V.
    private PowerLimitFigure? Peak()
    {
        if (limitClass == PowerLimitClass.Class2 || kind != CurrentKind.Dc) return null;
        double limit = PowerLimitConstants.LimitedPowerPeak.Value;
        if (delivery.Ripple is double ripple)
        {
            return ripple <= PowerLimitConstants.RippleFree.Value / 100
                ? null
                : Of(PowerLimitKernel.PeakVolts(delivery.LeastVolts, ripple), PowerLimitKernel.PeakVolts(delivery.MostVolts, ripple));
        }

        return delivery.MostVolts <= PowerLimitConstants.LimitedPowerMiddleBand.Value
            ? null
            : Of(delivery.LeastVolts, double.PositiveInfinity);

        PowerLimitFigure Of(double least, double most) =>
            new(PowerLimitQuantity.PeakVoltage, least, most, double.IsInfinity(most)
                ? double.PositiveInfinity
                : limit, limit, PowerLimitConstants.LimitedPowerPeak.Source);
    }

    private PowerLimitFigure Figure(PowerLimitQuantity quantity, double least, double most, PowerLimitTerm low, PowerLimitTerm high) =>
        new(quantity, least, most, low.At(delivery.LeastVolts), high.At(delivery.MostVolts), high.Source);
}
