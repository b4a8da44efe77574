using System.Collections.Generic;
using CamPower.Checks;

namespace CamPower;

/// <summary>The rules of this package. A rule with a limit of its own is a method that takes the limit.</summary>
/// <remarks><see cref="RuleSet.Standard"/> holds all of them. The identifier of a rule is the name of its member, in small letters with
/// hyphens.</remarks>
/// <example>
/// <code>
/// var few = new RuleSet([Rules.ReversedPolarity, Rules.Undervoltage, Rules.ThinVoltageMargin(Ratio.FromPercent(5))]);
/// </code>
/// </example>
public static partial class Rules
{
    /// <summary>All rules with their default limits: causes before their consequences.</summary>
    internal static IReadOnlyList<Rule> Standard() =>
    [
        AcIntoDcDevice, ReversedPolarity, DcIntoAcDevice, VoltageAboveExtraLow(), OutputsTiedTogether, RectifiersShareACommon,
        MixedVoltagesInOneCabinet,
        SupplyVoltageTooHigh, NoOperatingPoint, UnloadedVoltageBelowTurnOn, SettlesBelowDropOut, TurnOnBelowUnstableVoltage,
        Undervoltage, OvervoltageAtLightLoad, PowerLimitExceeded,
        ProtectionMissing, ProtectionVoltageRatingExceeded, BreakingCapacityExceeded, LetThroughAboveConductorWithstand,
        ShortMayNotBeInterrupted, NuisanceTrip, OutputOverloaded, ConductorOverAmpacity, ProtectionAboveConductorAmpacity,
        ProtectionAboveOutputLimit, SupplyNotProtected, JointOverloaded,
        ConnectorOverloaded, VoltageOutsideConnectorClass, TerminalWrongSize,
        BatteryFuseMissing, BatteryFuseRatingExceeded, BatteryChargedTooCold, BatteryChargedTooHard, FloatVoltageWrong, BatteryFuseMayOpen,
        BatteryCutOffTooLow,
        SupplyTooHot, SupplyTooCold, EnclosureTemperatureUnknown, FaultsUnknown, ReceptacleVoltageOutsideSupplyRange,
        ReceptacleOverloaded, BreakerOverloaded, StartMayTripBreaker, LeakageMayTripResidualDevice, UninterruptibleSupplyOverloaded,
        UninterruptibleRuntimeTooShort,
        ReserveDoesNotCarryLoad,
        SupplyAboveDeratedRating, SplitAdapterBeyondRating, StartBeyondSupplyLimit, SupplyAboveHeadroomPolicy(),
        OutputOverloadedOnBattery, BatteryBackupTooShort, ThinBatteryBackup, UndervoltageOnBattery, ChargingAboveDeratedRating,
        ShortCollapsesSupplyVoltage(), InrushBelowDropOut, FuseAboveContinuousPolicy(), VoltageAboveAccessible,
        ThinHeatMargin, ThinVoltageMargin(), OvervoltageAtNoLoad, GroundLoopHum(), MoreCamerasThanOutputs,
        RecorderOnCameraOutput, PreTerminatedCableExtended,
        ReserveCarriesInService,
        CopperCladAluminum, SunOnBoxWithoutEnclosure, AcInputNotStated, MixedResistanceBases, ReceptacleLoadUnknown,
        GroundLoopHumUnknown, ValueOutsideValidatedRange,
    ];
}
