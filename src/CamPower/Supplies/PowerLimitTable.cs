using System.Collections.Generic;
using System.Linq;
using static CamPower.Supplies.PowerLimitConstants;
using static CamPower.Supplies.PowerLimitTerm;

namespace CamPower.Supplies;

/// <summary>A table of power limits by open-circuit voltage.</summary>
internal sealed class PowerLimitTable
{
    private static readonly PowerLimitTable LimitedPowerDc = new(
    [
        new(LimitedPowerLowBand, Constant(LimitedPowerCurrent), TimesVoltage(LimitedPowerPerVolt)),
        new(LimitedPowerMiddleBand, Constant(LimitedPowerCurrent), Constant(LimitedPowerMost)),
        new(LimitedPowerHighBand, OverVoltage(LimitedPowerHighCurrent), Constant(LimitedPowerMost)),
    ]);

    private static readonly PowerLimitTable LimitedPowerAc = LimitedPowerDc.UpTo(LimitedPowerMiddleBand);

    private static readonly PowerLimitTable LimitedPowerIec62368Dc = new(
    [
        new(LimitedPowerMiddleBand, Constant(LimitedPowerIec62368Current), Constant(LimitedPowerIec62368Most)),
        new(LimitedPowerHighBand, OverVoltage(LimitedPowerHighCurrent), Constant(LimitedPowerIec62368Most)),
    ]);

    private static readonly PowerLimitTable LimitedPowerIec62368Ac = LimitedPowerIec62368Dc.UpTo(LimitedPowerMiddleBand);

    private static readonly PowerLimitTable LimitedPowerBypassedDc = new(
    [
        new(LimitedPowerLowBand, OverVoltage(LimitedPowerBypassedCurrent), Constant(LimitedPowerBypassedPower),
            DeviceRating: Constant(LimitedPowerDevice)),
        new(LimitedPowerMiddleBand, OverVoltage(LimitedPowerBypassedCurrent), Constant(LimitedPowerBypassedPower),
            DeviceRating: OverVoltage(LimitedPowerHighDevice)),
        new(LimitedPowerHighBand, OverVoltage(LimitedPowerBypassedCurrent), Constant(LimitedPowerBypassedPower),
            DeviceRating: OverVoltage(LimitedPowerHighDevice)),
    ]);

    private static readonly PowerLimitTable LimitedPowerBypassedAc = LimitedPowerBypassedDc.UpTo(LimitedPowerMiddleBand);

    private static readonly PowerLimitBand Class2Low =
        new(Class2LowBand, Constant(Class2Current), Nameplate: TimesVoltage(Class2NameplatePerVolt));

    private static readonly PowerLimitBand Class2Middle =
        new(Class2MiddleBand, Constant(Class2Current), Nameplate: Constant(Class2Nameplate));

    private static readonly PowerLimitBand Class2SmallCurrents =
        new(Class2SmallCurrentBand, Constant(Class2SmallCurrent), Nameplate: TimesVoltage(Class2SmallCurrent));

    private static readonly PowerLimitTable Class2Ac = new([Class2Low, Class2Middle, Class2SmallCurrents]);

    private static readonly PowerLimitTable Class2Dc = new(
    [
        Class2Low, Class2Middle,
        new(Class2HighBand, OverVoltage(Class2HighCurrent), Nameplate: Constant(Class2OtherNameplate)),
        Class2SmallCurrents,
    ]);

    private static readonly PowerLimitTable Class2BypassedDc = new(
    [
        new(Class2LowBand, OverVoltage(Class2BypassedCurrent), Constant(Class2BypassedPower), TimesVoltage(Class2NameplatePerVolt),
            Constant(Class2Device)),
        new(Class2MiddleBand, OverVoltage(Class2BypassedCurrent), Constant(Class2BypassedPower), Constant(Class2OtherNameplate),
            OverVoltage(Class2HighDevice)),
        new(Class2HighBand, OverVoltage(Class2BypassedCurrent), Constant(Class2BypassedPower), Constant(Class2OtherNameplate),
            OverVoltage(Class2HighDevice)),
    ]);

    // What gives alternating current is a transformer.
    private static readonly PowerLimitTable Class2BypassedAc = new(
    [
        new(Class2TransformerBand, OverVoltage(Class2BypassedCurrent), Constant(Class2TransformerPower),
            TimesVoltage(Class2NameplatePerVolt), Constant(Class2Device)),
        .. Class2BypassedDc.UpTo(Class2MiddleBand)._bands,
    ]);

    private readonly IReadOnlyList<PowerLimitBand> _bands;

    private PowerLimitTable(IReadOnlyList<PowerLimitBand> bands) => _bands = bands;

    /// <summary>The highest voltage that the table knows.</summary>
    internal CitedValue HighestVoltage => _bands[_bands.Count - 1].UpTo;

    /// <summary>The table of a class that names its standard.</summary>
    internal static PowerLimitTable Of(PowerLimitClass limitClass, PowerLimiting limiting, CurrentKind kind) =>
        (limitClass, limiting, kind) switch
    {
        (PowerLimitClass.LimitedPowerSourceIec60950, PowerLimiting.Inherent, CurrentKind.Dc) => LimitedPowerDc,
        (PowerLimitClass.LimitedPowerSourceIec60950, PowerLimiting.Inherent, _) => LimitedPowerAc,
        (PowerLimitClass.LimitedPowerSourceIec62368, PowerLimiting.Inherent, CurrentKind.Dc) => LimitedPowerIec62368Dc,
        (PowerLimitClass.LimitedPowerSourceIec62368, PowerLimiting.Inherent, _) => LimitedPowerIec62368Ac,
        (PowerLimitClass.Class2, PowerLimiting.Inherent, CurrentKind.Dc) => Class2Dc,
        (PowerLimitClass.Class2, PowerLimiting.Inherent, _) => Class2Ac,
        (PowerLimitClass.Class2, _, CurrentKind.Dc) => Class2BypassedDc,
        (PowerLimitClass.Class2, _, _) => Class2BypassedAc,
        (_, _, CurrentKind.Dc) => LimitedPowerBypassedDc,
        _ => LimitedPowerBypassedAc,
    };

    /// <summary>The row for a voltage, or null above the highest.</summary>
    internal PowerLimitBand? BandAt(double volts) => _bands.FirstOrDefault(b => !Limits.IsAbove(volts, b.UpTo.Value));

    private PowerLimitTable UpTo(CitedValue volts) => new([.. _bands.Where(b => b.UpTo.Value <= volts.Value)]);
}
