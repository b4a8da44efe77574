using System.Collections.Generic;
using System.Linq;

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

    // Every limit is as strict or stricter at more voltage, so that the two ends of the voltage decide.
    private IEnumerable<PowerLimitFigure> Figures(PowerLimitTable table)
    {
        List<PowerLimitFigure?> figures = [OpenCircuitVoltage(table), Peak()];
        if (table.BandAt(delivery.LeastVolts) is PowerLimitBand low)
        {
            PowerLimitBand high = table.BandAt(delivery.MostVolts) ?? low;
            figures.AddRange(
                [Current(low, high), ApparentPower(low, high), FuseRating(low, high), Opening(low, high), Nameplate(low, high)]);
        }

        return figures.OfType<PowerLimitFigure>();
    }

    private PowerLimitFigure OpenCircuitVoltage(PowerLimitTable table) => new(PowerLimitQuantity.OpenCircuitVoltage, delivery.LeastVolts,
        delivery.MostVolts, table.HighestVoltage.Value, table.HighestVoltage.Value, table.HighestVoltage.Source);

    private PowerLimitFigure Current(PowerLimitBand low, PowerLimitBand high) =>
        Figure(PowerLimitQuantity.Current, delivery.LeastAmperes, delivery.MostAmperes, low.Current, high.Current);

    private PowerLimitFigure? ApparentPower(PowerLimitBand low, PowerLimitBand high) =>
        low.ApparentPower is null || high.ApparentPower is null
            ? null
            : Figure(PowerLimitQuantity.ApparentPower, delivery.LeastVoltAmperes, delivery.MostVoltAmperes, low.ApparentPower,
                high.ApparentPower);

    // Of a fuse that is not stated nothing is known.
    private PowerLimitFigure? FuseRating(PowerLimitBand low, PowerLimitBand high)
    {
        if (low.DeviceRating is null || high.DeviceRating is null) return null;
        double? rating = (protection as Fuse)?.RatedCurrent.Amperes;
        return Figure(PowerLimitQuantity.DeviceRating, rating ?? 0, rating ?? double.PositiveInfinity, low.DeviceRating, high.DeviceRating);
    }

    private PowerLimitFigure? Nameplate(PowerLimitBand low, PowerLimitBand high) => low.Nameplate is null || high.Nameplate is null
        ? null
        : new PowerLimitFigure(PowerLimitQuantity.NameplateCurrent, delivery.RatedAmperes, delivery.RatedAmperes,
            low.Nameplate.At(delivery.LeastVolts) / delivery.LeastVolts, high.Nameplate.At(delivery.MostVolts) / delivery.MostVolts,
            high.Nameplate.Source);

    // The ratings of limited power sources are those of fuses that are fast enough.
    private PowerLimitFigure? Opening(PowerLimitBand low, PowerLimitBand high)
    {
        if (limitClass == PowerLimitClass.Class2 || protection is not Fuse fuse) return null;
        if (low.DeviceRating is null || high.DeviceRating is not PowerLimitTerm rating) return null;
        double amperes = PowerLimitConstants.LimitedPowerOpeningCurrent.Value / 100 * rating.At(delivery.MostVolts),
            limit = PowerLimitConstants.LimitedPowerOpeningTime.Value;
        return new PowerLimitFigure(
            PowerLimitQuantity.DeviceOpening, 0, fuse.OpeningAt(amperes, currentFactor: 1).LatestSeconds, limit, limit,
            PowerLimitConstants.LimitedPowerOpeningTime.Source);
    }

    // The tables of limited power sources are for direct voltage free of ripple. A ripple that is not stated matters above 30 V only.
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
