namespace CamPower.Supplies;

/// <summary>Quantity that a table of power limits limits.</summary>
internal enum PowerLimitQuantity
{
    /// <summary>Voltage with nothing connected; RMS if alternating.</summary>
    OpenCircuitVoltage,

    /// <summary>Peak of a direct voltage whose ripple is more than a tenth of it.</summary>
    PeakVoltage,

    /// <summary>The most current into any load, a short included.</summary>
    Current,

    /// <summary>The most apparent power into any load.</summary>
    ApparentPower,

    /// <summary>Rated current of the overcurrent device.</summary>
    DeviceRating,

    /// <summary>Time in which the overcurrent device of a limited power source opens at 210 % of the limit of its rating.</summary>
    DeviceOpening,

    /// <summary>Rated current of the output: the limit of the nameplate's apparent power over the open-circuit voltage.</summary>
    NameplateCurrent,
}
