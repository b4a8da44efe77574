namespace CamPower.Supplies;

/// <summary>The cited numbers behind the ready batteries.</summary>
internal static class BatteryConstants
{
    /// <summary>Temperature at which capacity, resistance and float voltage are stated. [°C]</summary>
    internal static CitedValue ReferenceTemperature { get; } =
        new("Reference temperature of a battery", 25, "°C", Sources.Ieee485Temperature);

    /// <summary>Share of its capacity with which a battery is replaced. [%]</summary>
    internal static CitedValue EndOfLife { get; } =
        new("Capacity left at the end of a battery's life", 80, "%", Sources.Ieee485Aging);

    /// <summary>How far a set point may be from the float voltage of a battery. [%]</summary>
    internal static CitedValue FloatBand { get; } =
        new("Band of the set point about the float voltage of a battery", 2, "%", Sources.CommonPractice);

    /// <summary>Breaking capacity of a battery's fuse over the largest short that is worked out. [1]</summary>
    internal static CitedValue BreakingMargin { get; } =
        new("Breaking capacity of a battery's fuse over its largest short", 1.25, "1", Sources.CommonPractice);

    /// <summary>Capacity set aside, over what is needed. [%]</summary>
    internal static CitedValue Margin { get; } =
        new("Margin of a battery's capacity", 20, "%", Sources.Nfpa72Margin);

    /// <summary>Voltage of an empty lead-acid cell at rest: density 1.10 plus 0.84. [V]</summary>
    internal static CitedValue LeadAcidEmpty { get; } =
        new("Open-circuit voltage of an empty lead-acid cell", 1.94, "V", Sources.LeadAcidBattery);

    /// <summary>Voltage of a full lead-acid cell at rest: density 1.30 plus 0.84. [V]</summary>
    internal static CitedValue LeadAcidFull { get; } =
        new("Open-circuit voltage of a full lead-acid cell", 2.14, "V", Sources.LeadAcidBattery);

    /// <summary>Voltage that a lead-acid cell loses under a load of hours, beside its resistance. [V]</summary>
    internal static CitedValue LeadAcidLost { get; } =
        new("Polarization of a lead-acid cell that is more than half full", 0.014, "V", Sources.LeadAcidDischarge);

    /// <summary>The same with a fifth of the charge left. [V]</summary>
    internal static CitedValue LeadAcidLostAtFifth { get; } =
        new("Polarization of a lead-acid cell at 20 % of its charge", 0.042, "V", Sources.LeadAcidDischarge);

    /// <summary>The same with a tenth of the charge left. [V]</summary>
    internal static CitedValue LeadAcidLostNearlyEmpty { get; } =
        new("Polarization of a lead-acid cell at 10 % of its charge", 0.06, "V", Sources.LeadAcidDischarge);

    /// <summary>The same at the end: 1.94 V at rest are 1.75 V at the rated current. [V]</summary>
    internal static CitedValue LeadAcidLostWhenEmpty { get; } =
        new("Polarization of an empty lead-acid cell", 0.18, "V", Sources.LeadAcidDischarge);

    /// <summary>Resistance of a lead-acid cell under a load of hours over that measured at 1 kHz. [1]</summary>
    internal static CitedValue LeadAcidLastingResistance { get; } =
        new("Resistance of a lead-acid cell under a load of hours over that of its data sheet", 3, "1", Sources.LeadAcidDischarge);

    /// <summary>Highest charging voltage of a lead-acid cell at 25 °C. [V]</summary>
    internal static CitedValue LeadAcidHighestCharging { get; } =
        new("Highest charging voltage of a lead-acid cell at 25 °C", 2.45, "V", Sources.LeadAcidBattery);

    /// <summary>Largest charging current of a lead-acid battery over its capacity. [1/h]</summary>
    internal static CitedValue LeadAcidHighestChargingRate { get; } =
        new("Largest charging current of a lead-acid battery over its capacity", 0.3, "1/h", Sources.LeadAcidBattery);

    /// <summary>Peukert exponent of a sealed lead-acid battery, within 5 % of its usual capacities at 10 h, 5 h and 1 h. [1]</summary>
    internal static CitedValue LeadAcidRateExponent { get; } =
        new("Peukert exponent of a sealed lead-acid battery", 1.17, "1", Sources.LeadAcidBattery);

    /// <summary>End of discharge of a lead-acid cell. [V]</summary>
    internal static CitedValue LeadAcidCutOff { get; } =
        new("End of discharge of a lead-acid cell", 1.75, "V", Sources.LeadAcidBattery);

    /// <summary>Float voltage of a lead-acid cell at 25 °C. [V]</summary>
    internal static CitedValue LeadAcidFloat { get; } =
        new("Float voltage of a lead-acid cell at 25 °C", 2.275, "V", Sources.LeadAcidBattery);

    /// <summary>Change of the float voltage of a lead-acid cell. [V/K]</summary>
    internal static CitedValue LeadAcidFloatPerKelvin { get; } =
        new("Change of the float voltage of a lead-acid cell", -0.003, "V/K", Sources.LeadAcidBattery);

    /// <summary>Charge put into a lead-acid battery over that taken out. [1]</summary>
    internal static CitedValue LeadAcidChargeFactor { get; } =
        new("Charge factor of a lead-acid battery", 1.2, "1", Sources.LeadAcidBattery);

    /// <summary>Peukert exponent of lithium iron phosphate. [1]</summary>
    internal static CitedValue LithiumRateExponent { get; } =
        new("Peukert exponent of lithium iron phosphate", 1.03, "1", Sources.LithiumIronPhosphateBattery);

    /// <summary>End of discharge of a lithium iron phosphate cell. [V]</summary>
    internal static CitedValue LithiumCutOff { get; } =
        new("End of discharge of a lithium iron phosphate cell", 2.5, "V", Sources.LithiumIronPhosphateBattery);

    /// <summary>Float voltage of a lithium iron phosphate cell. [V]</summary>
    internal static CitedValue LithiumFloat { get; } =
        new("Float voltage of a lithium iron phosphate cell", 3.4, "V", Sources.LithiumIronPhosphateBattery);

    /// <summary>Charge put into lithium iron phosphate over that taken out. [1]</summary>
    internal static CitedValue LithiumChargeFactor { get; } =
        new("Charge factor of lithium iron phosphate", 1.05, "1", Sources.LithiumIronPhosphateBattery);

    /// <summary>Highest charging voltage of a lithium iron phosphate cell. [V]</summary>
    internal static CitedValue LithiumHighestCharging { get; } =
        new("Highest charging voltage of a lithium iron phosphate cell", 3.65, "V", Sources.LithiumIronPhosphateBattery);

    /// <summary>Largest charging current of lithium iron phosphate over its capacity. [1/h]</summary>
    internal static CitedValue LithiumHighestChargingRate { get; } =
        new("Largest charging current of lithium iron phosphate over its capacity", 1, "1/h", Sources.LithiumIronPhosphateBattery);

    /// <summary>Lowest temperature at which lithium iron phosphate may be charged. [°C]</summary>
    internal static CitedValue LithiumColdestCharging { get; } =
        new("Lowest charging temperature of lithium iron phosphate", 0, "°C", Sources.LithiumIronPhosphateBattery);

    /// <summary>Highest temperature at which lithium iron phosphate may be charged. [°C]</summary>
    internal static CitedValue LithiumHottestCharging { get; } =
        new("Highest charging temperature of lithium iron phosphate", 45, "°C", Sources.LithiumIronPhosphateBattery);
}
