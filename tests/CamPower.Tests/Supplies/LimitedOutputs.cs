using System;
using System.Linq;
using CamPower.Supplies;
using CamPower.Tests.Protection;
using UnitsNet;

namespace CamPower.Tests.Supplies;

/// <summary>Outputs to hold against the tables of power limits, built from bare numbers in SI units.</summary>
internal static class LimitedOutputs
{
    internal static ElectricPotential Volts(double volts) => ElectricPotential.FromVolts(volts);

    internal static ElectricCurrent Amps(double amperes) => ElectricCurrent.FromAmperes(amperes);

    /// <summary>A supply that says nothing of overload.</summary>
    internal static Supply Rated(double volts, double amperes, CurrentKind kind = CurrentKind.Dc) => Of(volts, amperes, kind, 0, null);

    /// <summary>A supply that holds a current in overload.</summary>
    internal static Supply Holding(double volts, double amperes, double limitAmperes, CurrentKind kind = CurrentKind.Dc, double percent = 0) =>
        Of(volts, amperes, kind, percent, OverloadBehavior.ConstantCurrent(Amps(limitAmperes)));

    internal static DistributionBox Box(Supply supply, ProtectiveDevice? protection = null) =>
        new("box", supply, [new BoxOutput(1, supply.Output.RatedCurrent, protection ?? ProtectiveDevice.None)]);

    internal static Fuse FuseOf(double amperes) => new("fuse", Amps(amperes), FuseCharacteristic.UlFast, Volts(250), Amps(100), ElectricResistance.FromOhms(0.05));

    /// <summary>The limit that an output without tolerance is held against.</summary>
    internal static double LimitOf(PowerLimitClass limitClass, PowerLimiting limiting, PowerLimitQuantity quantity, CurrentKind kind, double volts)
    {
        PowerLimitAssessment assessment = Box(Rated(volts, 1e-3, kind), FuseOf(0.1)).AssessPowerLimit(1, limitClass);
        IQuantity limit = FigureOf(assessment.Routes.Single(r => r.Limiting == limiting), quantity).Limit;
        return limit is ElectricApparentPower power ? power.Voltamperes : ((ElectricCurrent)limit).Amperes;
    }

    internal static PowerLimitFigure FigureOf(PowerLimitAssessment assessment, PowerLimitQuantity quantity) => FigureOf(assessment.Routes[0], quantity);

    internal static PowerLimitFigure FigureOf(PowerLimitRoute route, PowerLimitQuantity quantity) => route.Figures.Single(f => f.Quantity == quantity);

    private static Supply Of(double volts, double amperes, CurrentKind kind, double percent, OverloadBehavior? overload) => new("supply", kind == CurrentKind.Dc
        ? new DcOutput(Volts(volts), Amps(amperes), Ratio.FromPercent(percent), ripple: Ratio.Zero, overload: overload)
        : new AcOutput(Volts(volts), Amps(amperes), Ratio.FromPercent(percent), overload: overload), Derating.GenericEnclosed);
}
