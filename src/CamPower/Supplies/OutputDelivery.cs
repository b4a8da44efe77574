using System;

namespace CamPower.Supplies;

/// <summary>Voltage, current and power that an output delivers into any load: smallest and largest values from its data. SI doubles;
/// infinite where they set no end.</summary>
/// <remarks>
/// A supply that can be trimmed is set to the top of its range; the ends are those of its tolerance. A fuse is bypassed. A resettable fuse
/// carries its hold current continuously, and at its timed current has tripped by the time stated; both as its data sheet has them. An
/// electronic limit lets through what it holds, within its tolerance: it is the regulating network, or the integrated limiter, of
/// <see cref="Sources.LimitedPowerRegulating"/>, as long as it works. An output whose protection is not stated delivers what it is rated
/// for, and may deliver all that its supply can. A limit without a source resistance is reached at full voltage. A load just under the
/// limit of a supply that pulses, folds back or shuts down can draw that much continuously.
/// </remarks>
internal sealed class OutputDelivery
{
    internal OutputDelivery(SupplyOutput supply, BoxOutput output)
    {
        double top = supply is DcOutput { Trim: VoltageRange trim } ? trim.HighestVolts : supply.SetVolts;
        double share = supply.HighestVolts / supply.SetVolts;
        LeastVolts = top * (1 - supply.Tolerance.DecimalFractions);
        MostVolts = top * share;
        Ripple = (supply as DcOutput)?.Ripple?.DecimalFractions;
        RatedAmperes = Math.Min(supply.RatedAmperes, output.LimitAmperes);

        double ohms = supply.SourceOhms;
        double most = Math.Min(supply.Overload?.Highest.LimitAmperes ?? double.PositiveInfinity, MostThrough(output.Protection));
        double limit = LeastLimit(supply);
        bool isBeyondRating = limit > supply.RatedAmperes;
        double least = Math.Min(limit, LeastThrough(output));
        double ohmsAtLeast = isBeyondRating ? ohms : 0;
        LeastAmperes = PowerLimitKernel.MostAmperes(LeastVolts, ohmsAtLeast, least);
        LeastVoltAmperes = PowerLimitKernel.MostVoltAmperes(LeastVolts, ohmsAtLeast, least);
        MostAmperes = PowerLimitKernel.MostAmperes(MostVolts, ohms, most);
        MostVoltAmperes = PowerLimitKernel.MostVoltAmperes(MostVolts, ohms, most);
    }

    internal double LeastVolts { get; }

    internal double MostVolts { get; }

    /// <summary>RMS ripple over the voltage, or null where it is not stated. [1]</summary>
    internal double? Ripple { get; }

    internal double LeastAmperes { get; }

    internal double MostAmperes { get; }

    internal double LeastVoltAmperes { get; }

    internal double MostVoltAmperes { get; }

    internal double RatedAmperes { get; }

    // Without a word on overload a supply gives its rating; so does one without a limit whose resistance is not known.
    private static double LeastLimit(SupplyOutput supply) => supply.Overload switch
    {
        null => supply.RatedAmperes,
        { Limit: null } when supply.SourceResistance is null => supply.RatedAmperes,
        OverloadBehavior overload => overload.Lowest.LimitAmperes,
    };

    private static double LeastThrough(BoxOutput output) => output.Protection switch
    {
        null => output.LimitAmperes,
        ResettableFuse resettable => resettable.HoldCurrent.Amperes,
        ElectronicLimit limit => limit.CarriedAmperes(currentFactor: 1),
        _ => double.PositiveInfinity,
    };

    private static double MostThrough(ProtectiveDevice? protection) => protection switch
    {
        ElectronicLimit limit => limit.MostAmperes,
        ResettableFuse resettable when resettable.LongestTimeToTrip.Seconds <= PowerLimitConstants.EarliestMeasurement.Value =>
            resettable.TestCurrent.Amperes,
        _ => double.PositiveInfinity,
    };
}
