namespace CamPower.Commissioning;

/// <summary>What a meter reads: it decides how the reading is compared and which of the meter's ranges errs.</summary>
internal enum MeterQuantity
{
    /// <summary>A voltage. [V]</summary>
    Volts,

    /// <summary>A current. [A]</summary>
    Amperes,

    /// <summary>A resistance. [Ω]</summary>
    Ohms,
}
